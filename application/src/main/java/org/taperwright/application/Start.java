package org.taperwright.application;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Opens the built workbench and waits until it is closed. Where there is no display it says so and prints the command
 * line's comparison of the demo designs instead.
 *
 * <p>Arguments: the folder of the built workbench, then options handed on to it.
 */
public final class Start {
    private Start() {}

    /** Starts the workbench or its stand-in, and ends with the exit code of what was started. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        List<String> options = new ArrayList<>(List.of(arguments));
        Path workbench = Path.of(options.remove(0));
        List<String> command = new ArrayList<>();
        if (hasDisplay()) {
            command.add(launcher(workbench).toString());
            command.add("--jdkhome");
            command.add(System.getProperty("java.home"));
            command.addAll(options);
        } else {
            System.out.println("There is no display here, so the workbench cannot open;"
                    + " this is the command line's comparison of the demo designs instead.");
            command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            command.addAll(List.of("-cp", System.getProperty("java.class.path")));
            command.addAll(List.of("org.taperwright.command.Main", "compare", "--demo"));
        }
        System.out.flush();
        System.exit(new ProcessBuilder(command).inheritIO().start().waitFor());
    }

    private static Path launcher(Path workbench) {
        boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        return workbench.resolve("bin").resolve(windows ? "taperwright64.exe" : "taperwright");
    }

    /** Whether a window can be shown: asked of the system itself, since a variable may name a display that is gone. */
    private static boolean hasDisplay() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (HeadlessException | AWTError none) {
            return false;
        }
    }
}
