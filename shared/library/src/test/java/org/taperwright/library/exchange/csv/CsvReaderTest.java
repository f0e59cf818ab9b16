package org.taperwright.library.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;

/** Rows, their places and what is wrong with them. Expected rows: RFC 4180, section 2, and its examples. */
class CsvReaderTest {
    private static final CsvLimits SMALL = new CsvLimits(60, 20, 4, 5);

    private static List<CsvRow> rows(String text, CsvLimits limits) {
        CsvReader reader = new CsvReader(new StringReader(text), ',', limits);
        List<CsvRow> rows = new ArrayList<>();
        for (Optional<CsvRow> row = reader.next(); row.isPresent(); row = reader.next()) {
            rows.add(row.get());
        }
        return rows;
    }

    private static List<String> texts(CsvRow row) {
        return ((CsvRow.Whole) row).cells().stream().map(CsvCell::text).toList();
    }

    private static String told(PlacedFault fault) {
        return fault.place().line() + ":" + fault.place().column() + ": "
                + fault.fault().sentence();
    }

    private static String told(CsvRow row) {
        if (row instanceof CsvRow.Broken broken) {
            return told(broken.fault());
        }
        return row instanceof CsvRow.Refused refused ? told(refused.fault()) : "no fault";
    }

    @Test
    void theExamplesOfTheRfcAreRead() {
        List<CsvRow> rows =
                rows("aaa,bbb,ccc\r\n\"aaa\",\"b \r\nbb\",\"ccc\"\r\n\"aaa\",\"b\"\"bb\",\"ccc\"", CsvLimits.USUAL);
        assertThat(rows).hasSize(3);
        assertThat(texts(rows.get(0))).containsExactly("aaa", "bbb", "ccc");
        assertThat(texts(rows.get(1))).containsExactly("aaa", "b \r\nbb", "ccc");
        assertThat(texts(rows.get(2))).containsExactly("aaa", "b\"bb", "ccc");
    }

    @Test
    void aCellKnowsItsLineAndColumn() {
        CsvRow row = rows("h\n\"a\r\nb\",c,\"d\ne\",f\n", CsvLimits.USUAL).get(1);
        assertThat(((CsvRow.Whole) row).cells())
                .extracting(CsvCell::place)
                .containsExactly(new Place(2, 1), new Place(3, 4), new Place(3, 6), new Place(4, 4));
        assertThat(((CsvRow.Whole) row).verbatim()).isEqualTo("\"a\r\nb\",c,\"d\ne\",f");
    }

    @Test
    void anyLineEndWillDoAndEmptyLinesArePassedOver() {
        List<CsvRow> rows = rows("a\r\rb\n\n\r\nc", CsvLimits.USUAL);
        assertThat(rows).extracting(CsvReaderTest::texts).containsExactly(List.of("a"), List.of("b"), List.of("c"));
        assertThat(rows).extracting(row -> ((CsvRow.Whole) row).place().line()).containsExactly(1, 3, 6);
    }

    @Test
    void aQuoteThatNeverClosesCostsItsLineOnly() {
        List<CsvRow> rows = rows("a,b\nc,\"d\ne,f\ng,h\n", CsvLimits.USUAL);
        assertThat(told(rows.get(1)))
                .isEqualTo("2:3: cell: opens a double quote that never closes; expected a closing double quote");
        assertThat(((CsvRow.Broken) rows.get(1)).verbatim()).isEqualTo("c,\"d");
        assertThat(texts(rows.get(2))).containsExactly("e", "f");
        assertThat(texts(rows.get(3))).containsExactly("g", "h");
    }

    @Test
    void textAfterAClosingQuoteCostsItsLineOnly() {
        List<CsvRow> rows = rows("\"a\" ,b\nc,d", CsvLimits.USUAL);
        assertThat(told(rows.get(0)))
                .isEqualTo(
                        "1:4: cell: has text after its closing double quote; expected a delimiter or the line's end; "
                                + "a quote within quotes is doubled");
        assertThat(texts(rows.get(1))).containsExactly("c", "d");
    }

    @Test
    void aCellTooLongOrARowOfTooManyCellsCostsItsLineOnly() {
        List<CsvRow> rows = rows("x".repeat(21) + ",b\n1,2,3,4,5\nc,d\n", SMALL);
        assertThat(told(rows.get(0))).isEqualTo("1:1: cell: is longer than 20 characters; expected a shorter cell");
        assertThat(told(rows.get(1)))
                .isEqualTo("2:8: row: holds more than 4 cells; expected fewer, or another delimiter");
        assertThat(texts(rows.get(2))).containsExactly("c", "d");
    }

    @Test
    void aLineTooLongIsRefused() {
        List<CsvRow> rows = rows("a,b\n" + "x".repeat(100) + "\nc,d\n", SMALL);
        assertThat(rows).hasSize(2);
        assertThat(told(rows.get(1)))
                .isEqualTo("2:1: file: holds a line of more than 60 characters; expected a table of shorter lines");
    }

    @Test
    void aRowTooLongOverSeveralLinesCostsItsFirstLineOnly() {
        List<CsvRow> rows =
                rows("\"" + "x\n".repeat(9) + "\",\"" + "y\n".repeat(9) + "\",\"" + "z\n".repeat(9) + "\",1\n", SMALL);
        assertThat(rows.get(0)).isInstanceOf(CsvRow.Broken.class);
        assertThat(((CsvRow.Broken) rows.get(0)).verbatim()).isEqualTo("\"x");
    }

    @Test
    void tooManyRowsAreRefused() {
        List<CsvRow> rows = rows("a\n".repeat(6), SMALL);
        assertThat(rows).hasSize(6);
        assertThat(told(rows.get(5))).isEqualTo("6:1: file: holds more than 5 rows; expected fewer: split the file");
    }

    @Test
    void bytesOfAnotherEncodingAreRefusedByTheirNumber() {
        byte[] bytes = "n,m\nä,b\nHöhe,c\n".getBytes(StandardCharsets.UTF_8);
        bytes[11] = (byte) 0xF6; // "H" is byte 10, so the broken one is byte 11 of a count from 0, 12 of a count from 1
        CsvReader reader = new CsvReader(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8, ',', CsvLimits.USUAL);
        List<CsvRow> rows = new ArrayList<>();
        for (Optional<CsvRow> row = reader.next(); row.isPresent(); row = reader.next()) {
            rows.add(row.get());
        }
        CsvRow last = rows.get(rows.size() - 1);
        assertThat(told(last)).contains("holds bytes that are not of the encoding, first byte");
        int named = Integer.parseInt(told(last).replaceAll(".*first byte (\\d+);.*", "$1"));
        assertThat(named).isEqualTo(firstBad(bytes));
        assertThat(((CsvRow.Refused) last).fault().place().line()).isEqualTo(3);
    }

    /** By the platform's own decoder, a byte more at a time. */
    private static int firstBad(byte[] bytes) {
        for (int length = 1; length <= bytes.length; length++) {
            String text = new String(bytes, 0, length, StandardCharsets.UTF_8);
            boolean cutShort = length < bytes.length;
            if (text.indexOf('\uFFFD') >= 0 && !(cutShort && text.endsWith("\uFFFD"))) {
                return text.substring(0, text.indexOf('\uFFFD')).getBytes(StandardCharsets.UTF_8).length + 1;
            }
        }
        return -1;
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        byte[] bytes = "\uFEFFa,b".getBytes(StandardCharsets.UTF_8);
        CsvReader reader = new CsvReader(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8, ',', CsvLimits.USUAL);
        assertThat(texts(reader.next().orElseThrow())).containsExactly("a", "b");
    }
}
