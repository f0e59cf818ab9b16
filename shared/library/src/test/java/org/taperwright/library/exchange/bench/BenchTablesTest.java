package org.taperwright.library.exchange.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.measured.BenchCurve;
import org.taperwright.mechanics.measured.MeasuredCurve;
import org.taperwright.mechanics.measured.MeasuredLives;

class BenchTablesTest {
    @Test
    void torqueAgainstAngleIsReadInTheUnitsOfItsHeadings() {
        MeasuredCurve curve = (MeasuredCurve)
                read("angle (°),torque (N·cm)\n10,0.05\n20,0.11\n").measured();
        assertThat(curve.test()).isEqualTo(BenchCurve.TWISTING);
        assertThat(curve.points()).containsExactly(new CurvePoint(10, 0.5), new CurvePoint(20, 1.1));
    }

    /** 1 g·cm = 0.0980665 N·mm by standard gravity (definition). */
    @Test
    void oldUnitsAndOtherColumnsAndAnyOrderWillDo() {
        MeasuredCurve curve =
                (MeasuredCurve) read("time,momentGcm,angleDeg\n0.1,100,45\n").measured();
        assertThat(curve.test()).isEqualTo(BenchCurve.BENDING);
        assertThat(curve.points().get(0).angleDeg()).isEqualTo(45);
        assertThat(curve.points().get(0).momentNmm()).isCloseTo(9.80665, within(1e-12));
    }

    @Test
    void cyclesInTubesAreReadWithTheUsualLevelUnlessGiven() {
        MeasuredLives lives = (MeasuredLives)
                read("radius;angle;cycles\n5;60;812\n3;45;401\n", ';').measured();
        assertThat(lives.lives())
                .containsExactly(
                        new MeasuredLives.Life(new Tube(60, 5, Tube.USUAL.middleMm(), Tube.USUAL.playMm()), 812),
                        new MeasuredLives.Life(new Tube(45, 3, Tube.USUAL.middleMm(), Tube.USUAL.playMm()), 401));
        MeasuredLives placed =
                (MeasuredLives) read("level,radius,angle,cycles\n8,5,60,812\n").measured();
        assertThat(placed.lives().get(0).tube().middleMm()).isEqualTo(8);
    }

    @Test
    void aRowThatIsNoMeasurementIsPassedOverAndNamedByLineAndColumn() {
        BenchTable.Read table = read("angle,torque\n10,0.5\n20,n/a\n30\n40,1.2\n");
        assertThat(((MeasuredCurve) table.measured()).points()).hasSize(2);
        assertThat(table.remarks()).hasSize(2);
        assertThat(table.remarks().get(0).place().line()).isEqualTo(3);
        assertThat(table.remarks().get(0).place().column()).isEqualTo(4);
        assertThat(table.remarks().get(0).fault().sentence()).startsWith("torque: \"n/a\" is no number");
        assertThat(table.remarks().get(1).place().line()).isEqualTo(4);
    }

    @Test
    void aTubeThatCannotBeIsPassedOver() {
        BenchTable.Read table = read("radius,angle,cycles\n5,60,812\n5,200,400\n");
        assertThat(((MeasuredLives) table.measured()).lives()).hasSize(1);
        assertThat(table.remarks())
                .singleElement()
                .satisfies(fault -> assertThat(fault.place().line()).isEqualTo(3));
    }

    @Test
    void headingsThatSayNothingAndTablesOfNothingAreRefusedWithWhatWouldDo() {
        assertThat(refused("force,time\n1,2\n").faults().get(0).fault().sentence())
                .contains("do not say what was measured", "moment (N·mm)", "cycles");
        assertThat(refused("").faults().get(0).fault().sentence()).contains("empty");
        BenchTable.Refused empty = refused("angle,torque\nx,y\n");
        assertThat(empty.faults().get(0).fault().what()).isEqualTo("holds no measurement");
        assertThat(empty.faults().get(1).place().line()).isEqualTo(2);
    }

    private static BenchTable.Read read(String text) {
        return read(text, ',');
    }

    private static BenchTable.Read read(String text, char delimiter) {
        BenchTable table = BenchTables.read(text, new CsvFormat(StandardCharsets.UTF_8, delimiter, '.'), "test");
        assertThat(table).isInstanceOf(BenchTable.Read.class);
        return (BenchTable.Read) table;
    }

    private static BenchTable.Refused refused(String text) {
        return (BenchTable.Refused) BenchTables.read(text, CsvFormat.USUAL, "test");
    }
}
