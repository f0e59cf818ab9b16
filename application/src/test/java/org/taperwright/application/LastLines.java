package org.taperwright.application;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
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
            Runtime.getRuntime().addShutdownHook(new Thread(lastingGroup(), () -> print(lines)));
        }
    }

    /** The thread group of the JVM itself: the one this runs in is gone when the JVM ends. */
    private static ThreadGroup lastingGroup() {
        ThreadGroup group = Thread.currentThread().getThreadGroup();
        while (group.getParent() != null) {
            group = group.getParent();
        }
        return group;
    }

    /** Prints past System.out, which the build closes before its JVM ends. */
    private static void print(String lines) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        out.println(lines);
    }
}
