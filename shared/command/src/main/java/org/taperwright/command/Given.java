package org.taperwright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.taperwright.command.input.Shelf;
import picocli.CommandLine.Option;

/** Options that every verb has: where things come from and how the result is written. */
final class Given {
    @Option(
            names = "--demo",
            description = "Take things of the demo library by name or identifier, such as \"Marram 25/.04\".")
    private boolean demo;

    @Option(
            names = "--from",
            paramLabel = "FILE",
            description = "Take things of this file by name or identifier. May be given several times.")
    private List<Path> from = new ArrayList<>();

    @Option(names = "--json", description = "Write JSON for programs instead of tables for people.")
    private boolean json;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help and end.")
    private boolean help;

    boolean demo() {
        return demo;
    }

    boolean json() {
        return json;
    }

    Shelf shelf() {
        return Shelf.of(from, demo);
    }
}
