package org.taperwright.command.print;

import java.util.SortedMap;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.finish.NeedleReach;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.InstrumentStep;

/** What the steps between the instruments do, as parts of a page: irrigation, patency, recapitulation. */
final class BetweenText {
    private BetweenText() {}

    static void parts(
            Page page,
            ArrangedSequence arranged,
            ShapedSequence shaped,
            SortedMap<Integer, NeedleReach> needles,
            Banded banded) {
        if (!needles.isEmpty()) {
            page.part("Irrigation: how deep each needle reaches below the orifice in the canal as it then is"
                    + " (flexible: computed, given the space; steel: index)");
            page.table(needles(arranged, needles, banded));
        }
        boolean any = arranged.workings().stream().anyMatch(working -> between(arranged, working));
        if (any) {
            page.part("Patency and recapitulation (passes: computed; removed: computed, from the wear assumed)");
            page.table(files(arranged, shaped));
        }
    }

    private static Table needles(ArrangedSequence arranged, SortedMap<Integer, NeedleReach> needles, Banded banded) {
        Table table = Table.of(
                Column.numbers("step"),
                Column.words("needle"),
                Column.numbers("wanted", "mm"),
                Column.numbers("flexible reaches", "mm"),
                Column.numbers("room beside", "mm"),
                Column.numbers("steel reaches", "mm"),
                Column.words("steel stopped by"));
        needles.forEach((place, reach) -> table.row(
                String.valueOf(place + 1),
                reach.gauge().word(),
                Shown.number(arranged.depthMm(place) - arranged.canal().coronalReferenceMm(), 1, 1),
                Shown.number(reach.flexibleMm(), 1, 1),
                Shown.number(reach.besideMm(), 3, 3),
                FinishText.steel(reach, banded),
                banded.shown() ? reach.stop().word() : Banded.NONE));
        return table;
    }

    private static boolean between(ArrangedSequence arranged, Working working) {
        return !(arranged.step(working.place()) instanceof InstrumentStep);
    }

    private static Table files(ArrangedSequence arranged, ShapedSequence shaped) {
        Table table = Table.of(
                Column.numbers("step"),
                Column.words("kind"),
                Column.words("size"),
                Column.numbers("to", "mm"),
                Column.words("passes"),
                Column.numbers("removed", "mm³"));
        for (Working working : arranged.workings()) {
            if (between(arranged, working)) {
                boolean passes = shaped.byPlace().containsKey(working.place());
                table.row(
                        String.valueOf(working.place() + 1),
                        arranged.step(working.place()).word(),
                        Designation.of(working.instrument()).text(),
                        Shown.number(working.step().depthMm(), 1, 1),
                        passes ? "yes" : "no",
                        passes
                                ? Shown.number(
                                        shaped.byPlace().get(working.place()).wholeRemovedMm3(), 3, 3)
                                : "–");
            }
        }
        return table;
    }
}
