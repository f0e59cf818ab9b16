package org.taperwright.library.exchange.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Vector;

class CanalTablesTest {
    private static final List<CanalPiece> PIECES =
            List.of(new CanalPiece(6, 0, 0), new CanalPiece(4, 30, 0), new CanalPiece(3, 0, 0));

    /** Rows of a canal 0.9 mm wide at the orifice and 0.2 mm at its end, 13 mm deep, its root given at three rows. */
    private static String table(List<CanalPiece> pieces, double orificeMm, double endMm) {
        Centreline line = Centreline.of(pieces);
        double length = line.lengthMm();
        StringBuilder text = new StringBuilder("x (mm),y (mm),z (mm),diameter,root wide,root narrow\n");
        int rows = (int) Math.round(length / 0.5);
        for (int i = 0; i <= rows; i++) {
            double s = length * i / rows;
            Vector at = line.at(s).place();
            String diameter = i % 4 == 0 || i == rows ? number(orificeMm + (endMm - orificeMm) * s / length) : "";
            String root = i % 13 == 0 ? number(5 - 3 * s / length) + ',' + number(4 - 2.5 * s / length) : ",";
            text.append(number(at.x()))
                    .append(',')
                    .append(number(at.y()))
                    .append(',')
                    .append(number(at.z()));
            text.append(',').append(diameter).append(',').append(root).append('\n');
        }
        return text.toString();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    private static CanalTable read(String text) {
        return CanalTables.read(text, CsvFormat.USUAL, "canal", length -> 20.5 - length);
    }

    private static List<PlacedFault> faults(String text) {
        return ((CanalTable.Refused) read(text)).faults();
    }

    @Test
    void courseOpeningsAndRootOfATableAreThoseItWasWrittenFrom() {
        CanalTable.Read read = (CanalTable.Read) read(table(PIECES, 0.9, 0.2));
        Canal canal = read.canal();
        assertThat(read.bends()).isEqualTo(1);
        assertThat(canal.pieces().get(1).angleDeg()).isEqualTo(30, within(1e-2));
        assertThat(canal.lengthMm()).isEqualTo(13, within(1e-4));
        assertThat(canal.workingLengthMm()).isEqualTo(20, within(1e-4));
        assertThat(canal.coronalReferenceMm()).isEqualTo(7.5, within(1e-4));
        assertThat(canal.openings()).hasSize(8);
        assertThat(canal.openings().get(7).wideMm()).isEqualTo(0.2, within(1e-6));
        assertThat(canal.root()).hasSize(3);
        assertThat(canal.root().get(1).depthMm()).isEqualTo(6.5, within(1e-3));
        assertThat(canal.source()).contains("27 points of a table");
    }

    @Test
    void aCellThatIsNoNumberIsNamedByLineAndColumn() {
        String spoilt = table(PIECES, 0.9, 0.2).replaceFirst("\n0.000000,", "\nnowhere,");
        assertThat(faults(spoilt)).singleElement().satisfies(fault -> {
            assertThat(fault.place().line()).isEqualTo(2);
            assertThat(fault.place().column()).isEqualTo(1);
            assertThat(fault.fault().where()).isEqualTo("x");
        });
    }

    @Test
    void aPlaceThatIsMissingIsNamed() {
        assertThat(faults("x,y,diameter\n1,,0.5\n")).singleElement().satisfies(fault -> {
            assertThat(fault.place().line()).isEqualTo(2);
            assertThat(fault.fault().sentence()).isEqualTo("y: is missing; expected a number, mm");
        });
    }

    @Test
    void headingsThatDoNotSayWhereOrHowWideAreRefused() {
        assertThat(faults("").get(0).fault().what()).isEqualTo("is empty");
        assertThat(faults("a,b\n1,2\n").get(0).fault().what()).isEqualTo("do not say where the points are");
        assertThat(faults("x,y\n1,2\n").get(0).fault().what()).isEqualTo("do not say how wide the canal is");
    }

    @Test
    void fewPointsAndAPointTwiceAreRefused() {
        assertThat(faults("x,y,diameter\n0,0,0.9\n0,1,0.8\n").get(0).fault().what())
                .isEqualTo("there are 2 points");
        String twice = table(PIECES, 0.9, 0.2);
        String row = twice.split("\n")[4];
        assertThat(faults(twice.replace(row, row + '\n' + row))).singleElement().satisfies(fault -> {
            assertThat(fault.place().line()).isEqualTo(6);
            assertThat(fault.fault().what()).isEqualTo("the point is the one before it");
        });
    }

    @Test
    void aCanalThatFoldsBackIsRefusedWithLevelAndReason() {
        List<CanalPiece> folded = List.of(new CanalPiece(5, 0, 0), new CanalPiece(6, 170, 0), new CanalPiece(4, 0, 0));
        assertThat(faults(table(folded, 0.9, 0.2)).get(0).fault().what())
                .contains("below the orifice the canal has turned by", "and folds back");
    }

    @Test
    void aBendNarrowerThanItsOpeningIsRefusedWithLevelAndReason() {
        List<CanalPiece> tight = List.of(new CanalPiece(6, 0, 0), new CanalPiece(0.8, 60, 0), new CanalPiece(5, 0, 0));
        assertThat(faults(table(tight, 2.4, 1.8)).get(0).fault().what())
                .contains("the radius is", "no more than half the opening", "below the orifice");
    }

    @Test
    void openingsThatDoNotNarrowAreRemarkedAtTheirRow() {
        CanalTable.Read read = (CanalTable.Read) read(table(PIECES, 0.4, 0.6));
        assertThat(read.remarks())
                .allSatisfy(remark -> assertThat(remark.fault().what()).startsWith("the canal widens towards its end"));
        assertThat(read.remarks())
                .hasSize(7)
                .first()
                .satisfies(remark -> assertThat(remark.place().line()).isEqualTo(6));
    }

    @Test
    void aRootNarrowerThanItsCanalIsRefusedAtItsRow() {
        String text = table(PIECES, 0.9, 0.2).replace("5.000000,4.000000", "0.800000,0.700000");
        assertThat(faults(text)).singleElement().satisfies(fault -> {
            assertThat(fault.place().line()).isEqualTo(2);
            assertThat(fault.fault().what()).isEqualTo("the root is no wider than the canal inside it");
        });
    }
}
