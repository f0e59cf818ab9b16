package org.taperwright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.taperwright.library.exchange.JsonForms;
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
        CheckReport report = LibraryCheck.of(file, JsonForms.forStore());
        PrintWriter out = spec.commandLine().getOut();
        for (Finding finding : report.findings()) {
            out.println((finding.grave() ? "wrong: " : "look at: ")
                    + finding.fault().sentence());
            out.println("  " + finding.mend());
        }
        out.println((report.sound() ? "Sound: " : "Not sound: ") + report.things() + " things, " + report.revisions()
                + " revisions, " + report.findings().size() + " findings.");
        return report.sound() ? Main.DONE : Main.BAD_INPUT;
    }
}
