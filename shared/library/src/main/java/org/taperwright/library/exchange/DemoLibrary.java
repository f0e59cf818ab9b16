package org.taperwright.library.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Findings;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.Forms;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.exchange.json.JsonText;
import org.taperwright.library.exchange.json.Limits;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.work.Fault;

/**
 * The demo library: JSON forms among the resources of the module demo-data, named by an index
 * {@code {"form": "taperwright/index", "version": 1, "files": ["designs.json", …]}}, which are read as one bundle.
 */
public final class DemoLibrary {
    /** Where the index lies among the resources; the files it names lie beside it or in folders below. */
    public static final String INDEX = "org/taperwright/demo/index.json";

    private static final String INDEX_FORM = "taperwright/index";
    private static final Form<String> FORM_NAME = Forms.word(new String[] {INDEX_FORM}, name -> name);
    private static final Field<Index, String> FORM_FIELD =
            Field.required("form", FORM_NAME, '"' + INDEX_FORM + '"', index -> INDEX_FORM);
    private static final Field<Index, Integer> VERSION = Field.required("version", Forms.whole(1, 1), "1", index -> 1);
    private static final Field<Index, List<String>> FILES =
            Field.required("files", Forms.list(Forms.line(), 1, 1000), "names of files beside it", Index::files);
    private static final RecordForm<Index> FORM = new RecordForm<>(
            "index",
            "The files of a library.",
            false,
            List.of(FORM_FIELD, VERSION, FILES),
            values -> new Index(values.of(FILES)));

    private record Index(List<String> files) {}

    private DemoLibrary() {}

    /** Reads the demo library that stands beside this class. */
    public static ReadResult load() {
        return load(DemoLibrary.class.getClassLoader());
    }

    /** Reads the demo library among the resources of a class loader. */
    public static ReadResult load(ClassLoader loader) {
        Optional<String> index = text(loader, INDEX);
        if (index.isEmpty()) {
            return refused(INDEX, Place.START, Fault.impossible("file", "is not here", "expected the demo library"));
        }
        Findings findings = new Findings();
        JsonText.Parsed parsed = JsonText.parse(index.get(), Limits.USUAL);
        parsed.faults().forEach(each -> findings.note(each.place(), each.fault()));
        Optional<Index> files = parsed.root().flatMap(root -> FORM.read(root, "", findings));
        if (files.isEmpty()) {
            PlacedFault first = findings.faults().get(0);
            return refused(INDEX, first.place(), first.fault());
        }
        return load(loader, files.get().files());
    }

    private static ReadResult load(ClassLoader loader, List<String> files) {
        String folder = INDEX.substring(0, INDEX.lastIndexOf('/') + 1);
        Map<String, String> texts = new LinkedHashMap<>();
        List<FileFault> absent = new ArrayList<>();
        for (String file : files) {
            Optional<String> text = text(loader, folder + file);
            if (text.isPresent()) {
                texts.put(file, text.get());
            } else {
                absent.add(FileFault.at(
                        INDEX,
                        Place.START,
                        Fault.impossible("files", "names " + file, "expected a file that is there")));
            }
        }
        return absent.isEmpty() ? JsonForms.readTogether(texts) : new ReadResult.Refused(absent);
    }

    private static Optional<String> text(ClassLoader loader, String resource) {
        try (InputStream in = loader.getResourceAsStream(resource)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException("cannot read " + resource, broken);
        }
    }

    private static ReadResult refused(String source, Place place, Fault fault) {
        return new ReadResult.Refused(List.of(FileFault.at(source, place, fault)));
    }
}
