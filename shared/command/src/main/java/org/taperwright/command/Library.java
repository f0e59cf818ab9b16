package org.taperwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The verb {@code library}: work on a library's file, named by the verb after it. */
@Command(
        name = "library",
        description = {"Works on the file of a library; the verb that follows says what.", ""},
        subcommands = {ImportIntoLibrary.class, ExportFromLibrary.class, CheckLibrary.class},
        synopsisSubcommandLabel = "VERB",
        commandListHeading = "%nVerbs:%n")
final class Library implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help and end.")
    private boolean help;

    @Override
    public Integer call() {
        throw new ParameterException(
                spec.commandLine(),
                "a verb is missing; expected one of "
                        + String.join(", ", spec.subcommands().keySet()));
    }
}
