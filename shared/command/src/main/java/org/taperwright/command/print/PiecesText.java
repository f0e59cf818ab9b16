package org.taperwright.command.print;

import java.util.stream.Collectors;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.kit.CarriedLife;
import org.taperwright.shaping.kit.CarriedPiece;

/** The pieces of a kit that a sequence takes and their fatigue life, as a part of a page. */
final class PiecesText {
    private static final int MOST = 999;

    private PiecesText() {}

    static void parts(Page page, String kit, CarriedLife life) {
        page.part("Pieces of " + kit + ": share of fatigue life spent, 5 to 95 % in brackets (index)");
        Table table = Table.of(
                Column.words("piece"),
                Column.words("steps"),
                Column.numbers("uses"),
                Column.words("before"),
                Column.words("in this canal"),
                Column.words("after"),
                Column.words("canals left (at the upper end)"));
        for (CarriedPiece carried : life.pieces()) {
            table.row(
                    carried.piece().id(),
                    carried.places().stream()
                            .map(place -> String.valueOf(place + 1))
                            .collect(Collectors.joining(", ")),
                    String.valueOf(carried.piece().uses()),
                    carried.piece()
                            .lifeSpent()
                            .map(any -> carried.before().text())
                            .orElse("not estimated"),
                    carried.inOneCanal().text(),
                    carried.after().text(),
                    left(carried));
        }
        page.table(table);
        life.without()
                .forEach(place -> page.line("unusual     steps[" + place + "]: the kit has no piece in use for it"));
        life.pieces().stream()
                .map(PiecesText::remark)
                .filter(remark -> !remark.isEmpty())
                .forEach(remark -> page.line("unusual     " + remark));
    }

    private static String left(CarriedPiece carried) {
        return carried.canalsLeft(false).map(PiecesText::many).orElse(Banded.NONE)
                + carried.canalsLeft(true)
                        .map(fewest -> " (" + many(fewest) + ")")
                        .orElse("");
    }

    private static String many(int canals) {
        return canals > MOST ? "> " + MOST : String.valueOf(canals);
    }

    /** What is said of a piece whose life comes to its limit; nothing where it does not. */
    static String remark(CarriedPiece carried) {
        String limit = "its limit of " + Shown.percent(carried.limit()) + " of its life";
        int unknown = carried.piece().usesWithoutEstimate();
        String more = unknown == 0 ? "" : "; of its uses, " + unknown + " are not in the estimate";
        return carried.passesIn()
                .map(place -> carried.piece().id() + " comes to " + limit + " in step " + (place + 1) + more
                        + "; take another piece")
                .orElse(
                        carried.mayPass()
                                ? carried.piece().id() + " may come to " + limit + ": the upper end of its band does"
                                        + more
                                : "");
    }
}
