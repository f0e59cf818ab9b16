package org.taperwright.library.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** Tables are read as Apache Commons CSV, an independent reader, reads them, and what is written comes back. */
class AgreementProperties {
    /** What begins a formula: a plain number begins none. */
    private static final String FORMULA = "(?s)^([=@]|[+-](?!\\d+([.,]\\d+)?([eE][+-]?\\d+)?$)).*";

    /** With another delimiter a number runs on into what follows it, and numbers have to stay numbers. */
    private static final String SURE_FORMULA = "(?s)^([=@]|[+-](?!\\d)).*";

    @Provide
    Arbitrary<List<List<String>>> tables() {
        Arbitrary<String> cell = Arbitraries.strings()
                .withChars(
                        'a', 'é', '"', ',', ';', '\t', '\n', '\r', ' ', '\'', '=', '-', '+', '@', '1', '.', '\uFEFF',
                        '＝')
                .ofMaxLength(8);
        return cell.list().ofMinSize(1).ofMaxSize(4).list().ofMinSize(1).ofMaxSize(5);
    }

    @Provide
    Arbitrary<String> quoteFreeTexts() {
        return Arbitraries.strings().withChars('a', 'b', ',', '\n', ' ', '1').ofMaxLength(40);
    }

    @Property(tries = 2000)
    void whatIsWrittenIsReadAlikeByBothAndComesBackExactly(@ForAll("tables") List<List<String>> table)
            throws IOException {
        StringBuilder text = new StringBuilder();
        CsvWriter writer = new CsvWriter(text, CsvFormat.USUAL);
        for (List<String> row : table) {
            writer.texts(row);
        }
        List<List<CsvCell>> ours = ours(text.toString());
        assertThat(ours.stream()
                        .map(row -> row.stream().map(CsvText::of).toList())
                        .toList())
                .isEqualTo(table);
        assertThat(ours.stream()
                        .map(row -> row.stream().map(CsvCell::text).toList())
                        .toList())
                .isEqualTo(theirs(text.toString()));
    }

    @Property(tries = 1000)
    void bareTextIsReadAlikeByBoth(@ForAll("quoteFreeTexts") String text) throws IOException {
        assertThat(ours(text).stream()
                        .map(row -> row.stream().map(CsvCell::text).toList())
                        .toList())
                .isEqualTo(theirs(text));
    }

    @Property(tries = 2000)
    void noCellThatIsWrittenBeginsAsAFormula(@ForAll("tables") List<List<String>> table) throws IOException {
        StringBuilder text = new StringBuilder();
        CsvWriter writer = new CsvWriter(text, CsvFormat.USUAL);
        for (List<String> row : table) {
            writer.texts(row);
        }
        // read as a spreadsheet would, whatever it takes for the delimiter
        for (char delimiter : new char[] {',', ';', '\t'}) {
            CsvReader reader = new CsvReader(new StringReader(text.toString()), delimiter, CsvLimits.USUAL);
            for (Optional<CsvRow> row = reader.next(); row.isPresent(); row = reader.next()) {
                if (row.get() instanceof CsvRow.Whole whole) {
                    assertThat(whole.cells())
                            .allSatisfy(cell ->
                                    assertThat(cell.text()).doesNotMatch(delimiter == ',' ? FORMULA : SURE_FORMULA));
                }
            }
        }
    }

    private static List<List<CsvCell>> ours(String text) {
        List<List<CsvCell>> rows = new ArrayList<>();
        CsvReader reader = new CsvReader(new StringReader(text), ',', CsvLimits.USUAL);
        for (Optional<CsvRow> row = reader.next(); row.isPresent(); row = reader.next()) {
            rows.add(((CsvRow.Whole) row.get()).cells());
        }
        return rows;
    }

    private static List<List<String>> theirs(String text) throws IOException {
        try (CSVParser parser = CSVParser.parse(
                text, CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get())) {
            return parser.getRecords().stream().map(each -> each.toList()).toList();
        }
    }
}
