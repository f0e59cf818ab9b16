package org.taperwright.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.taperwright.command.input.BadInput;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.ColumnMappings;
import org.taperwright.library.exchange.table.Known;
import org.taperwright.library.exchange.table.TablePreview;
import org.taperwright.library.exchange.table.TableReading;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.library.exchange.transfer.ImportPlan;
import org.taperwright.library.exchange.transfer.Offer;
import org.taperwright.library.exchange.transfer.PlannedThing;
import org.taperwright.library.exchange.transfer.Resolution;
import org.taperwright.library.exchange.transfer.Standing;
import org.taperwright.library.exchange.transfer.TableOffer;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.work.Progress;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code library import}: takes the things of a file into a library, as one edit. */
@Command(
        name = "import",
        description = {
            "Takes the things of a file into a library, as one edit: a file in JSON form, or a table (.csv, .tsv, .txt) of "
                    + "instruments or motors. Says what is new, the same or changed.",
            "Ends with 2 when anything was wrong with the file. Rows of a table with faults then stand in the file given "
                    + "with --rejects, and the others are stored; without --rejects nothing is.",
            ""
        })
final class ImportIntoLibrary implements Callable<Integer> {
    private static final int MOST_TOLD = 50;
    private static final List<String> TABLES = List.of(".csv", ".tsv", ".txt");
    private static final CsvFormat NO_TABLE = CsvFormat.USUAL;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help and end.")
    private boolean help;

    @Parameters(arity = "1", paramLabel = "FILE", description = "The file whose things are taken.")
    private Path file = Path.of("");

    @Option(
            names = "--into",
            required = true,
            paramLabel = "LIBRARY",
            description = "The library's file; made where there is none.")
    private Path library = Path.of("");

    @Option(
            names = "--rejects",
            paramLabel = "FILE",
            description =
                    "Where the rows of a table that cannot be read go, each with the reason before it, to be mended "
                            + "and imported again.")
    private Optional<Path> rejects = Optional.empty();

    @Option(
            names = "--changed",
            paramLabel = "WHOSE",
            description =
                    "What becomes of things that the library has otherwise: ours stay, theirs take their place, or "
                            + "both are kept. Unless given, such things stop the import.")
    private Optional<String> changed = Optional.empty();

    @Option(names = "--plan", description = "Say what would be done, and store nothing.")
    private boolean onlyPlan;

    @Option(
            names = "--columns",
            description = "Print which column of the table means which field, as --map takes it, and store nothing.")
    private boolean onlyColumns;

    @Mixin
    private TableChoices table = new TableChoices();

    @Override
    public Integer call() {
        if (!Files.isRegularFile(file)) {
            throw BadInput.of(file + ": is no file", "expected a file in JSON form or a table");
        }
        String name = file.toString().toLowerCase(Locale.ROOT);
        boolean csv = TABLES.stream().anyMatch(name::endsWith);
        if (!csv && (onlyColumns || rejects.isPresent())) {
            throw BadInput.of(
                    file + ": is read as JSON, for which there is no " + (onlyColumns ? "--columns" : "--rejects"),
                    "expected a table, whose name ends in " + String.join(", ", TABLES));
        }
        if (onlyColumns) {
            TablePreview.Shown shown = preview(Known.NOTHING);
            spec.commandLine()
                    .getOut()
                    .print(ColumnMappings.NONE.keeping(shown.mapping()).text());
            return Main.DONE;
        }
        try (OpenLibrary open = OpenLibrary.orNew(library)) {
            return csv ? table(open) : forms(open);
        }
    }

    private int forms(OpenLibrary open) {
        try (RejectsFile none = new RejectsFile(Optional.empty(), NO_TABLE)) {
            return run(open, Offer.ofForms(TextSource.of(file)), none);
        }
    }

    private int table(OpenLibrary open) {
        Known known = Known.of(open.snapshot());
        TablePreview.Shown shown = preview(known);
        TableReading reading = new TableReading(TextSource.of(file), shown.format(), known);
        try (RejectsFile bad = new RejectsFile(onlyPlan ? Optional.empty() : rejects, shown.format())) {
            return run(open, new TableOffer(reading, shown.mapping(), bad), bad);
        }
    }

    private TablePreview.Shown preview(Known known) {
        ColumnMappings kept = table.mappings();
        TablePreview preview = TablePreview.of(TextSource.of(file), table.kind(), table.charset(), kept, known, 1);
        if (preview instanceof TablePreview.Refused refused) {
            throw BadInput.in(List.of(refused.fault()));
        }
        TablePreview.Shown shown = (TablePreview.Shown) preview;
        if (table.mapped() && !kept.mappings().contains(shown.mapping())) {
            throw BadInput.of(
                    "--map: no mapping in it has the headings of " + file,
                    "expected one for "
                            + String.join(
                                    ", ",
                                    shown.mapping().columns().stream()
                                            .map(column -> column.heading())
                                            .toList()));
        }
        return shown;
    }

    private int run(OpenLibrary open, Offer offer, RejectsFile bad) {
        ImportPlan.Result result = ImportPlan.of(offer, open.snapshot(), Progress.NONE);
        if (result instanceof ImportPlan.Refused refused) {
            throw BadInput.in(refused.faults());
        }
        ImportPlan plan = ((ImportPlan.Planned) result).plan();
        plan = choice().map(plan::withAll).orElse(plan);
        tell(plan);
        bad.told().forEach(spec.commandLine().getErr()::println);
        boolean faulty = plan.bad() > 0;
        if (onlyPlan) {
            return faulty ? Main.BAD_INPUT : Main.DONE;
        }
        if (faulty && rejects.isEmpty()) {
            throw BadInput.of(
                    Counted.of(plan.bad(), "row") + " with faults; nothing was stored",
                    "expected a table without, or --rejects FILE to store the others");
        }
        if (!plan.open().isEmpty()) {
            throw BadInput.of(
                    "the library has " + Counted.of(plan.open().size(), "thing") + " of these otherwise; nothing was"
                            + " stored",
                    "expected --changed ours, theirs or both");
        }
        List<Change> changes = changes(plan, bad);
        if (!changes.isEmpty()) {
            open.store(plan.editName(), changes);
        }
        bad.put();
        spec.commandLine()
                .getOut()
                .println(
                        changes.isEmpty()
                                ? "Nothing came in; the library is as it was."
                                : "Stored as one edit: " + plan.editName() + ".");
        if (faulty) {
            spec.commandLine()
                    .getErr()
                    .println(Counted.of(plan.bad(), "row") + " with faults; to be mended in " + rejects.get());
        }
        return faulty ? Main.BAD_INPUT : Main.DONE;
    }

    /** All that can go wrong with the files is behind us when this returns: only then is anything stored. */
    private List<Change> changes(ImportPlan plan, RejectsFile bad) {
        bad.settle();
        List<Change> changes = new ArrayList<>();
        List<FileFault> faults = plan.changes(changes::add, Progress.NONE);
        if (!faults.isEmpty()) {
            throw BadInput.of(
                    file + ": changed while it was read (" + faults.get(0).sentence() + "); nothing was stored",
                    "expected it to stay as it is: try again");
        }
        return changes;
    }

    private Optional<Resolution> choice() {
        return changed.map(word -> Arrays.stream(Resolution.values())
                .filter(each -> each.word().equals(word))
                .findFirst()
                .orElseThrow(() -> BadInput.of("--changed: \"" + word + "\"", "expected ours, theirs or both")));
    }

    private void tell(ImportPlan plan) {
        PrintWriter out = spec.commandLine().getOut();
        plan.things().values().stream()
                .filter(PlannedThing::contested)
                .limit(MOST_TOLD)
                .forEach(thing -> out.println(told(thing)));
        plan.remarks().stream().limit(MOST_TOLD).map(FileFault::sentence).forEach(out::println);
        long contested = plan.count(Standing.Changed.class) + plan.count(Standing.Other.class);
        out.println(plan.count(Standing.New.class) + " new, " + plan.count(Standing.Same.class) + " the same, "
                + contested + " changed, " + Counted.of(plan.bad(), "row") + " with faults.");
    }

    private static String told(PlannedThing thing) {
        String head = thing.kind().word() + " " + thing.id() + " (" + thing.name() + "): ";
        if (thing.standing() instanceof Standing.Other other) {
            return head + "the library has " + other.ours().one() + " of this identifier";
        }
        List<FieldChange> changes = ((Standing.Changed) thing.standing()).changes();
        return head
                + String.join("; ", changes.stream().map(FieldChange::sentence).toList());
    }
}
