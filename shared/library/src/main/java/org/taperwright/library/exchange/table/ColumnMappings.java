package org.taperwright.library.exchange.table;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Findings;
import org.taperwright.library.exchange.form.Forms;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.exchange.json.JsonText;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Limits;

/**
 * Mappings that were kept, the newest first. As JSON:
 * {@code {"form": "taperwright/columns", "version": 1, "mappings": [{"kind": "instrument", "columns": [{"heading": "ISO",
 * "field": "Size"}, …]}]}}.
 */
public record ColumnMappings(List<ColumnMapping> mappings) {
    /** None kept. */
    public static final ColumnMappings NONE = new ColumnMappings(List.of());

    private static final int MOST = 200;
    private static final String FORM_NAME = "taperwright/columns";

    private static final Field<MappedColumn, String> HEADING =
            required("heading", Forms.line(), "the column's heading", MappedColumn::heading);
    private static final Field<MappedColumn, Optional<String>> FIELD =
            optional("field", Forms.line(), "the field it holds", MappedColumn::field);
    private static final Field<MappedColumn, Optional<String>> UNIT =
            optional("unit", Forms.line(), "the unit of its numbers", MappedColumn::unit);
    private static final RecordForm<MappedColumn> COLUMN = new RecordForm<>(
            "column",
            "What a column means.",
            true,
            List.of(HEADING, FIELD, UNIT),
            values -> new MappedColumn(values.of(HEADING), values.of(FIELD), values.of(UNIT)));

    private static final Field<ColumnMapping, TableKind> KIND = required(
            "kind",
            Forms.word(TableKind.values(), kind -> kind.thing().word()),
            "what the rows are",
            ColumnMapping::kind);
    private static final Field<ColumnMapping, List<MappedColumn>> COLUMNS =
            required("columns", Forms.list(COLUMN, 1, 500), "the columns in order", ColumnMapping::columns);
    private static final RecordForm<ColumnMapping> MAPPING = new RecordForm<>(
            "mapping",
            "Which column means which field.",
            false,
            List.of(KIND, COLUMNS),
            values -> new ColumnMapping(values.of(KIND), values.of(COLUMNS)));

    private static final Field<ColumnMappings, String> FORM_FIELD = required(
            "form", Forms.word(new String[] {FORM_NAME}, name -> name), '"' + FORM_NAME + '"', each -> FORM_NAME);
    private static final Field<ColumnMappings, Integer> VERSION =
            required("version", Forms.whole(1, 1), "1", each -> 1);
    private static final Field<ColumnMappings, List<ColumnMapping>> MAPPINGS =
            required("mappings", Forms.list(MAPPING, 0, MOST), "the mappings", ColumnMappings::mappings);
    private static final RecordForm<ColumnMappings> FORM = new RecordForm<>(
            "columns",
            "Mappings that were kept.",
            false,
            List.of(FORM_FIELD, VERSION, MAPPINGS),
            values -> new ColumnMappings(values.of(MAPPINGS)));

    public ColumnMappings {
        mappings = List.copyOf(mappings);
    }

    /** What came of reading kept mappings. */
    public sealed interface Result {}

    /** Read. */
    public record Read(ColumnMappings mappings) implements Result {}

    /** Refused; why. */
    public record Refused(List<FileFault> faults) implements Result {
        public Refused {
            faults = List.copyOf(faults);
        }
    }

    /** The mapping that was kept for a table with these headings. */
    public Optional<ColumnMapping> find(TableKind kind, List<String> headings) {
        return mappings.stream()
                .filter(mapping -> mapping.kind() == kind && mapping.fits(headings))
                .findFirst();
    }

    /** With one more mapping, in the place of an older one for the same headings. */
    public ColumnMappings keeping(ColumnMapping mapping) {
        List<ColumnMapping> kept = new ArrayList<>(List.of(mapping));
        mappings.stream()
                .filter(each ->
                        each.kind() != mapping.kind() || !each.fingerprint().equals(mapping.fingerprint()))
                .limit(MOST - 1)
                .forEach(kept::add);
        return new ColumnMappings(kept);
    }

    /** As JSON text. */
    public String text() {
        JsonWriter out = new JsonWriter();
        FORM.write(this, out);
        return out.finished();
    }

    /** Reads JSON text. */
    public static Result read(String text, String source) {
        Findings findings = new Findings();
        JsonText.Parsed parsed = JsonText.parse(text, Limits.USUAL);
        parsed.faults().forEach(each -> findings.note(each.place(), each.fault()));
        Optional<ColumnMappings> read = parsed.root().flatMap(root -> FORM.read(root, "", findings));
        return read.<Result>map(Read::new)
                .orElseGet(() -> new Refused(findings.faults().stream()
                        .map(each -> FileFault.of(source, each))
                        .toList()));
    }
}
