package org.taperwright.command;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import org.taperwright.command.input.BadInput;
import org.taperwright.library.store.StoreFailure;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line {@code taperwright}. Writes to its two streams and nowhere else. */
@Command(
        name = "taperwright",
        description = {
            "Computes what instruments that shape root canals are made of, side by side and in a canal.",
            "",
            "The values compare and teach. They do not replace the manufacturer's instructions, local rules or licensed "
                    + "clinical judgement."
        },
        subcommands = {Assess.class, Compare.class, Shape.class, Library.class},
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "VERB",
        commandListHeading = "%nVerbs:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Ends with 0 on success, 2 when the input is wrong (the message names file, line, column and field, and what "
                    + "was expected), 1 on a failure of its own.",
            "Try: taperwright compare --demo"
        })
public final class Main {
    /** Exit code on success. */
    static final int DONE = 0;
    /** Exit code on a failure of the program's own. */
    static final int FAILED = 1;
    /** Exit code on bad input. */
    static final int BAD_INPUT = 2;

    /** Runs and ends the virtual machine with the exit code. */
    public static void main(String[] args) {
        Charset charset = Arrays.asList(args).contains("--json") ? StandardCharsets.UTF_8 : terminal();
        PrintWriter out = new PrintWriter(System.out, false, charset);
        PrintWriter err = new PrintWriter(System.err, true, charset);
        int code = run(args, out, err);
        out.flush();
        System.exit(code);
    }

    /** Runs with the words of a command and returns the exit code. */
    public static int run(String[] args, PrintWriter out, PrintWriter err) {
        CommandLine line = new CommandLine(new Main());
        line.setOut(out).setErr(err);
        line.setUsageHelpAutoWidth(false).setUsageHelpWidth(100);
        line.setParameterExceptionHandler(unclear());
        line.setExecutionExceptionHandler(failed());
        if (args.length == 0) {
            line.usage(err);
            err.flush();
            return BAD_INPUT;
        }
        int code = line.execute(args);
        out.flush();
        err.flush();
        return code;
    }

    /** The terminal's characters, or UTF-8 where it names only ASCII, which lacks the units' signs. */
    private static Charset terminal() {
        String named = System.getProperty("native.encoding", "UTF-8");
        Charset charset = Charset.isSupported(named) ? Charset.forName(named) : StandardCharsets.UTF_8;
        return charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset;
    }

    /** Words that are no command of this program. */
    private static IParameterExceptionHandler unclear() {
        return (unclear, args) -> {
            CommandLine at = unclear.getCommandLine();
            at.getErr().println(plain(unclear));
            at.getErr().println("Try: " + at.getCommandSpec().qualifiedName() + " --help");
            return BAD_INPUT;
        };
    }

    private static String plain(ParameterException unclear) {
        if (!(unclear instanceof UnmatchedArgumentException words) || words.isUnknownOption()) {
            return unclear.getMessage();
        }
        String first = words.getUnmatched().get(0);
        Set<String> verbs = unclear.getCommandLine().getSubcommands().keySet();
        return verbs.isEmpty()
                ? "\"" + first + "\" is one word too many"
                : "there is no verb \"" + first + "\"; expected one of " + String.join(", ", verbs);
    }

    /** What the disk or the server did not allow: a fault of neither the input nor the program. */
    private static String reasons(Throwable problem) {
        String cause = problem instanceof UncheckedIOException && problem.getCause() != null
                ? " (" + problem.getCause().getMessage() + ")"
                : "";
        return problem.getMessage() + cause;
    }

    /** What the input did not allow, and what should not happen. */
    private static IExecutionExceptionHandler failed() {
        return (problem, at, parsed) -> {
            if (problem instanceof BadInput bad) {
                bad.sentences().forEach(at.getErr()::println);
                return BAD_INPUT;
            }
            if (problem instanceof StoreFailure || problem instanceof UncheckedIOException) {
                at.getErr().println(reasons(problem));
                return FAILED;
            }
            at.getErr().println("taperwright failed: " + problem);
            problem.printStackTrace(at.getErr());
            return FAILED;
        };
    }
}
