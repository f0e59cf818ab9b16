package org.taperwright.library.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.library.Examples;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Window;

class InstrumentTableTest {
    private static Tables.Collected read(String text) {
        return Tables.read(TableKind.INSTRUMENTS, text, Known.NOTHING);
    }

    private static Instrument only(String text) {
        Tables.Collected collected = read(text);
        assertThat(collected.faults()).isEmpty();
        return (Instrument) collected.good().get(0).thing();
    }

    @Test
    void aSuppliersListIsRead() {
        Instrument instrument = only("Item;Manufacturer;ISO;Conicity;Length [mm];Rpm;Torque (N·cm);Batch;Use by;"
                + "Price (EUR);Qty;Reorder point;Colour\n"
                + "Heron 25;Marshlight;25;04;25;250-350;1,5–2,5;A-17;31.03.2028;12,50;7;3;red\n");
        assertThat(instrument.name()).isEqualTo("Heron 25");
        assertThat(instrument.maker()).isEqualTo("Marshlight");
        assertThat(instrument.design().tipDiameterMm()).isEqualTo(0.25);
        assertThat(instrument.design().taper().get(0).taper()).isEqualTo(0.04);
        assertThat(instrument.design().lengthMm()).isEqualTo(25);
        assertThat(instrument.speedRpm()).contains(new Window(250, 350));
        // 1 N·cm = 10 N·mm by definition of the units
        assertThat(instrument.torqueNmm()).contains(new Window(15, 25));
        assertThat(instrument.supply().lot()).isEqualTo("A-17");
        assertThat(instrument.supply().expiry()).contains(LocalDate.of(2028, 3, 31));
        assertThat(instrument.supply().price().orElseThrow().amount()).isEqualByComparingTo(new BigDecimal("12.5"));
        assertThat(instrument.supply().price().orElseThrow().currency()).isEqualTo("EUR");
        assertThat(instrument.supply().stock()).isEqualTo(7);
        assertThat(instrument.supply().reorderLevel()).isEqualTo(3);
        assertThat(instrument.drive()).isEqualTo(Drive.POWERED);
        assertThat(instrument.designAssumed()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "25, 0.25",
        "#08, 0.08",
        "ISO 25, 0.25",
        "006, 0.06",
        "0.25 mm, 0.25",
        "29, 0.29",
        "57.5, 0.575",
        "140, 1.4"
    })
    void sizesAreReadAsTheTradeWritesThem(String written, double millimetres) {
        assertThat(only("size,taper\n\"" + written + "\",2 %\n").design().tipDiameterMm())
                .isEqualTo(millimetres);
    }

    @ParameterizedTest
    @CsvSource({"0.04, 0.04", ".04, 0.04", "04, 0.04", "4, 0.04", "4 %, 0.04", "4.5, 0.045", "-2, -0.02", "0, 0"})
    void tapersAreReadAsTheTradeWritesThem(String written, double taper) {
        assertThat(only("size,taper\n25,\"" + written + "\"\n")
                        .design()
                        .taper()
                        .get(0)
                        .taper())
                .isEqualTo(taper, within(0.0));
    }

    @Test
    void aFaultNamesLineColumnFieldAndWhatWasExpected() {
        Tables.Collected collected = read("""
                name,size,taper,length,motion,stock,expiry,torque
                a,0.25,.04,25,rotation,1,2027-01-31,2
                b,25,.04,abc,rotation,1.5,31/01/2027,2 furlongs
                d,25,.04,25,rotatoin,1,2027-01-31,2
                c,25,,25,rotation,1,2027-01-31,2
                """);
        assertThat(collected.faults())
                .containsExactly(
                        "t.csv:2:3: Size: found \"0.25\"; expected a size in hundredths of a millimetre, such as 25,"
                                + " or a tip diameter with its unit, such as 0.25 mm",
                        "t.csv:3:10: Length: found \"abc\"; expected a number, mm",
                        "t.csv:3:27: Expiry: found \"31/01/2027\"; expected a date, year first, such as 2027-03-31",
                        "t.csv:3:38: Torque: found \"2 furlongs\"; expected a number, N·mm, or two with a dash between"
                                + " them",
                        "t.csv:4:13: Motion: found \"rotatoin\"; expected one of filing, reaming, reciprocation,"
                                + " rotation (perhaps \"rotation\")",
                        "t.csv:5:1: Taper: is missing; expected it, or a design of the library");
        assertThat(read("size,taper,stock\n25,.04,1.5\n").faults())
                .containsExactly("t.csv:2:8: Stock: found 1.5; expected a whole number from 0 to 1000000");
        assertThat(read("size,taper,length\n25,.04,900\n").faults())
                .containsExactly("t.csv:2:8: Length: found 900.0; expected a number, mm, from 0 to 200");
    }

    @Test
    void aRowOfAnotherNumberOfCellsIsAFault() {
        Tables.Collected collected = read("name,size,taper,note\na,25,.04\nb,25,.04,x,y\nc,25,.04,x,,\n");
        assertThat(collected.faults())
                .containsExactly(
                        "t.csv:2:6: row: has 3 cells; expected 4, as there are headings",
                        "t.csv:3:12: row: has 5 cells; expected 4, as there are headings");
        assertThat(collected.good()).hasSize(1);
    }

    @Test
    void aDecimalCommaIsNoDecimalPoint() {
        assertThat(read("size;taper;length\n25;0,04;25,5\n25;0,04;25.5\n").faults())
                .containsExactly("t.csv:3:9: Length: found \"25.5\"; expected a number with a decimal comma, mm");
    }

    @Test
    void withoutADrivenMotionItIsAHandInstrument() {
        Instrument instrument = only("size,taper\n25,.02\n");
        assertThat(instrument.name()).isEqualTo("25/.02");
        assertThat(instrument.drive()).isEqualTo(Drive.HAND);
        assertThat(instrument.design().motion()).isEqualTo(Motion.FILING);
    }

    @Test
    void aRowThatNamesAnInstrumentOfTheLibraryChangesOnlyWhatTheTableSays() {
        Known known = Known.of(Examples.snapshotOf(Map.of(Examples.INSTRUMENT_ID, Examples.instrument())));
        Tables.Collected collected = Tables.read(
                TableKind.INSTRUMENTS,
                "identifier,lot,note,speed\n" + Examples.INSTRUMENT_ID + ",New lot,,250-300\n",
                known);
        assertThat(collected.faults()).isEmpty();
        Instrument read = (Instrument) collected.good().get(0).thing();
        Instrument before = Examples.instrument();
        assertThat(collected.good().get(0).id()).isEqualTo(Examples.INSTRUMENT_ID);
        assertThat(read.design()).isEqualTo(before.design());
        assertThat(read.supply().lot()).isEqualTo("New lot");
        assertThat(read.supply().supplier()).isEqualTo(before.supply().supplier());
        assertThat(read.speedRpm()).contains(new Window(250, 300));
        assertThat(read.note()).isEmpty();
        assertThat(read.name()).isEqualTo(before.name());
    }

    @Test
    void aRowThatNamesADesignOfTheLibraryHasIt() {
        Known known = Known.of(Examples.snapshotOf(Map.of(Examples.DESIGN_ID, Examples.design())));
        Tables.Collected collected =
                Tables.read(TableKind.INSTRUMENTS, "name,design\nMy file," + Examples.DESIGN_ID + "\n", known);
        Instrument read = (Instrument) collected.good().get(0).thing();
        assertThat(read.design()).isEqualTo(Examples.design());
        assertThat(read.designId()).contains(Examples.DESIGN_ID);
        assertThat(read.designAssumed()).isFalse();
    }

    @Test
    void aRowThatNamesAThingOfAnotherKindIsAFault() {
        Known known = Known.of(Examples.snapshotOf(Map.of(Examples.MOTOR_ID, Examples.motor())));
        assertThat(Tables.read(TableKind.INSTRUMENTS, "id,size,taper\n" + Examples.MOTOR_ID + ",25,.04\n", known)
                        .faults())
                .containsExactly("t.csv:2:1: Identifier: is that of a motor of the library; expected that of one"
                        + " of the instruments, or none");
    }

    @Test
    void theSameRowHasTheSameIdentifierAndAnotherRowAnother() {
        ThingId once = read("name,size,taper,stock\na,25,.04,1\n").good().get(0).id();
        ThingId again =
                read("name,size,taper,stock\na,25,.04,9\n").good().get(0).id();
        ThingId other =
                read("name,size,taper,stock\na,30,.04,1\n").good().get(0).id();
        assertThat(again).isEqualTo(once);
        assertThat(other).isNotEqualTo(once);
    }

    @Test
    void aDesignTakenFromTheColumnsIsAssumedWhateverTheTableSays() {
        assertThat(only("size,taper,design assumed\n25,.04,no\n").designAssumed())
                .isTrue();
    }

    @Test
    void aTableWithoutAnyKnownHeadingIsRefused() {
        assertThat(((TablePreview.Refused) Tables.preview("foo,bar\n1,2\n"))
                        .fault()
                        .sentence())
                .startsWith("t.csv:1:1: headings: name no field of instruments; expected some of Identifier, Name,");
    }

    @Test
    void anotherEncodingIsReadWhenChosen() {
        byte[] bytes = "name,size,taper\nHöhe,25,.04\n".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThat(((TablePreview.Refused) Tables.preview(Tables.source(bytes), Optional.empty()))
                        .fault()
                        .sentence())
                .contains("first byte 18");
        TablePreview.Shown shown = (TablePreview.Shown)
                Tables.preview(Tables.source(bytes), Optional.of(java.nio.charset.StandardCharsets.ISO_8859_1));
        assertThat(((Instrument) ((TableRow.Good) shown.rows().get(0)).thing()).name())
                .isEqualTo("Höhe");
    }
}
