package org.taperwright.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.taperwright.command.input.BadInput;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.Backup;
import org.taperwright.library.store.BackupPolicy;
import org.taperwright.library.store.Backups;
import org.taperwright.library.store.CheckReport;
import org.taperwright.library.store.Finding;
import org.taperwright.library.store.LibraryCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code library check}: verifies a library's file and says how to mend it. */
@Command(
        name = "check",
        description = {
            "Verifies a library's file, its past included, and says what is wrong and how to mend it. Changes nothing; the "
                    + "library may be open meanwhile.",
            "Ends with 0 when the library is sound, though something may deserve a look, and with 2 when it is not.",
            ""
        })
final class CheckLibrary implements Callable<Integer> {
    private static final int MOST_BACKUPS = 5;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help and end.")
    private boolean help;

    @Parameters(arity = "1", paramLabel = "FILE", description = "The library's file.")
    private Path file = Path.of("");

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (!Files.isRegularFile(file)) {
            tellBackups(out);
            throw BadInput.of(file + ": is no file", "expected a library's file");
        }
        CheckReport report = LibraryCheck.of(file, JsonForms.forStore());
        for (Finding finding : report.findings()) {
            out.println((finding.grave() ? "wrong: " : "look at: ")
                    + finding.fault().sentence());
            out.println("  " + finding.mend());
        }
        out.println((report.sound() ? "Sound: " : "Not sound: ") + Counted.of(report.things(), "thing") + ", "
                + Counted.of(report.revisions(), "revision") + ", "
                + Counted.of(report.findings().size(), "finding") + ".");
        if (!report.sound()) {
            tellBackups(out);
        }
        return report.sound() ? Main.DONE : Main.BAD_INPUT;
    }

    /** Where the workbench leaves its backups, and what is there. */
    private void tellBackups(PrintWriter out) {
        Path library = file.toAbsolutePath();
        Path folder = library.resolveSibling("backups");
        List<Backup> good = new Backups(library, folder, JsonForms.forStore(), BackupPolicy.USUAL).good();
        if (good.isEmpty()) {
            if (Files.exists(file)) {
                out.println("No whole backup of it lies in " + folder + ".");
            }
            return;
        }
        out.println("Whole backups of it, the newest first:");
        for (Backup backup : good.subList(0, Math.min(MOST_BACKUPS, good.size()))) {
            out.println("  " + backup.file() + ": " + Counted.of(backup.things(), "thing") + ", "
                    + Counted.of(backup.revisions(), "revision"));
        }
        out.println(
                "The workbench restores one when it opens this library. By hand: end every program that uses the library,"
                        + " move it and whatever lies beside it as " + library.getFileName()
                        + "-… away, and copy a backup to its"
                        + " place.");
    }
}
