package org.taperwright.command.print;

import java.util.Locale;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.passage.spread.BandedQuantity;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.spread.UncertainInput;

/** The bands of a sequence, as parts of a page: each with the constant of which it is not known most. */
final class BandsText {
    private static final String NONE = "–";

    private static final double NOTHING = 1e-9;

    private BandsText() {}

    static void parts(Page page, ShapingBands bands) {
        page.part("What it is we do not know (5 to 95 % of " + bands.samples()
                + " samples of the uncertain constants; rank: correlation with the strongest, -1 to 1)");
        Table table = Table.of(
                Column.words("step"),
                Column.words("quantity"),
                Column.words("standing"),
                Column.numbers("value"),
                Column.numbers("low"),
                Column.numbers("high"),
                Column.words("unit"),
                Column.words("what we do not know"),
                Column.numbers("rank"));
        bands.quantities().stream().filter(BandsText::something).forEach(quantity -> row(table, quantity));
        page.table(table);
        page.part("The uncertain constants, 5 to 95 %");
        Table inputs = Table.of(
                Column.words("constant"),
                Column.numbers("low"),
                Column.numbers("high"),
                Column.words("unit"),
                Column.words("how it is known"));
        for (UncertainInput input : bands.inputs()) {
            inputs.row(
                    input.label(),
                    String.format(Locale.ROOT, "%.3g", input.low()),
                    String.format(Locale.ROOT, "%.3g", input.high()),
                    input.unit(),
                    input.source());
        }
        page.table(inputs);
    }

    private static void row(Table table, BandedQuantity banded) {
        table.row(
                banded.quantity().step().map(place -> String.valueOf(place + 1)).orElse("all"),
                banded.quantity().label(),
                banded.quantity().standing().word(),
                number(banded.quantity().shown(banded.value())),
                banded.band()
                        .map(band -> number(banded.quantity().shown(band.low())))
                        .orElse(NONE),
                banded.band()
                        .map(band -> number(banded.quantity().shown(band.high())))
                        .orElse(NONE),
                banded.quantity().shownUnit(),
                banded.strongest().map(found -> found.input().label()).orElse(NONE),
                banded.strongest()
                        .map(found -> Shown.number(found.rank(), 2, 2))
                        .orElse(NONE));
    }

    /** Whether there is anything to know: a file that does not turn has no torque in any sample. */
    private static boolean something(BandedQuantity banded) {
        double high = banded.band().map(Band::high).orElse(0.0);
        double low = banded.band().map(Band::low).orElse(0.0);
        return Math.max(Math.abs(banded.value()), Math.max(high, -low)) > NOTHING;
    }

    private static String number(double value) {
        return Math.abs(value) <= NOTHING ? "0" : Shown.number(value);
    }
}
