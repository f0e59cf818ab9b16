package org.taperwright.application;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Says in the very last lines of a build that window tests were skipped, if they were. The build runs this in its own
 * JVM; the lines are printed when that JVM ends, after everything else.
 */
public final class LastLines {
    static final String SKIPPED = "The window tests were skipped: there is no display here and Xvfb is not installed.";

    private LastLines() {}

    /** Argument: the file that a skipped window test leaves. */
    public static void main(String[] arguments) throws IOException {
        Path mark = Path.of(arguments[0]);
        if (Files.exists(mark)) {
            String lines = Files.readString(mark);
            Files.delete(mark);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> System.out.println(lines)));
        }
    }
}
