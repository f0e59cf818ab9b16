package org.taperwright.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.taperwright.command.input.BadInput;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.TableExport;
import org.taperwright.library.exchange.table.TableKind;
import org.taperwright.library.exchange.text.WholeFile;
import org.taperwright.library.exchange.transfer.Selection;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code library export}: writes things of a library with all that they refer to, or a table of them. */
@Command(
        name = "export",
        description = {
            "Writes things of a library to a file: in JSON form (.json) with everything they refer to, or instruments or "
                    + "motors as a table (.csv).",
            ""
        })
final class ExportFromLibrary implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help and end.")
    private boolean help;

    @Option(names = "--from", required = true, paramLabel = "LIBRARY", description = "The library's file.")
    private Path library = Path.of("");

    @Option(
            names = "--to",
            required = true,
            paramLabel = "FILE",
            description = "The file to write; one that is there is replaced.")
    private Path file = Path.of("");

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "What the rows of a table are: instruments or motors. Instruments unless given.")
    private String kind = "instruments";

    @Parameters(
            arity = "0..*",
            paramLabel = "THING",
            description = "A thing's name or identifier. All things unless given.")
    private List<String> things = new ArrayList<>();

    @Override
    public Integer call() {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".json") && !name.endsWith(".csv")) {
            throw BadInput.of("--to: " + file + " ends in neither .json nor .csv", "expected one of them");
        }
        try (OpenLibrary open = OpenLibrary.existing(library)) {
            Snapshot snapshot = open.snapshot();
            List<ThingId> ids =
                    things.stream().map(words -> named(words, snapshot).id()).toList();
            int count = name.endsWith(".csv") ? table(snapshot, ids) : forms(snapshot, ids);
            spec.commandLine().getOut().println("Wrote " + Counted.of(count, "thing") + " to " + file);
            return Main.DONE;
        }
    }

    private static Entry named(String words, Snapshot snapshot) {
        List<Entry> found = snapshot.entries().values().stream()
                .filter(entry ->
                        entry.id().value().equals(words) || entry.name().equalsIgnoreCase(words))
                .toList();
        Optional<Entry> byId =
                found.stream().filter(entry -> entry.id().value().equals(words)).findFirst();
        if (byId.isPresent() || found.size() == 1) {
            return byId.orElseGet(() -> found.get(0));
        }
        if (found.isEmpty()) {
            throw BadInput.of("\"" + words + "\" names nothing in the library", "expected a name or an identifier");
        }
        throw BadInput.of(
                "\"" + words + "\" names " + found.size() + " things",
                "expected one of the identifiers "
                        + found.stream()
                                .map(entry -> entry.id().value())
                                .sorted()
                                .limit(10)
                                .collect(Collectors.joining(", ")));
    }

    private int forms(Snapshot snapshot, List<ThingId> ids) {
        Selection selection = ids.isEmpty() ? Selection.all(snapshot) : Selection.of(snapshot, ids);
        selection.absent().stream()
                .sorted()
                .forEach(id -> spec.commandLine().getErr().println("Not in the library, but referred to: " + id));
        write(out -> JsonForms.write(selection.bundle(), out));
        return selection.bundle().items().size();
    }

    private int table(Snapshot snapshot, List<ThingId> ids) {
        TableKind rows = TableChoices.kind(kind);
        List<Entry> entries = ids.isEmpty()
                ? snapshot.ofKind(rows.thing())
                : ids.stream().flatMap(id -> snapshot.entry(id).stream()).toList();
        for (Entry entry : entries) {
            if (entry.kind() != rows.thing()) {
                throw BadInput.of(
                        "\"" + entry.name() + "\" is " + entry.kind().one(),
                        "expected " + kind + " only, or a file ending in .json");
            }
        }
        write(out -> {
            TableExport export = new TableExport(rows, out, CsvFormat.USUAL);
            export.begin();
            for (Entry entry : entries) {
                export.row(new LibraryBundle.Item(entry.id(), entry.thing()));
            }
        });
        return entries.size();
    }

    private void write(WholeFile.Writing writing) {
        if (Files.isDirectory(file)) {
            throw BadInput.of("--to: " + file + " is a folder", "expected a file");
        }
        if (!Files.isDirectory(file.toAbsolutePath().getParent())) {
            throw BadInput.of("--to: " + file + " is in no folder", "expected a file in a folder that is there");
        }
        try {
            WholeFile.write(file, writing);
        } catch (IOException failure) {
            throw new UncheckedIOException("--to: " + file + " could not be written", failure);
        }
    }
}
