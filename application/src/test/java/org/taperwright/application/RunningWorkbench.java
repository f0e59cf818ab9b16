package org.taperwright.application;

import java.awt.Frame;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JMenuBar;

/**
 * Starts the real workbench inside the test's own JVM, with the platform's own module system, on a user folder and a
 * library of its own. Test code cannot see the modules' classes, only their components and what those show.
 */
final class RunningWorkbench {
    private static final Path BUILT = Path.of(System.getProperty("workbench", "target/taperwright"));

    private RunningWorkbench() {}

    /** Starts it, waits for its main window, and reads the cautions that a first start shows. */
    static Hands start() throws IOException, ReflectiveOperationException {
        Path home = Files.createTempDirectory("workbench");
        System.setProperty(
                "netbeans.home", BUILT.resolve("platform").toAbsolutePath().toString());
        System.setProperty(
                "netbeans.dirs", BUILT.resolve("taperwright").toAbsolutePath().toString());
        System.setProperty("taperwright.library", home.resolve("library.sqlite").toString());
        List<URL> jars = new ArrayList<>();
        try (Stream<Path> files = Files.list(BUILT.resolve("platform/lib"))) {
            for (Path jar :
                    files.filter(file -> file.toString().endsWith(".jar")).toList()) {
                jars.add(url(jar));
            }
        }
        ClassLoader boot = new URLClassLoader(jars.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
        Thread.currentThread().setContextClassLoader(boot);
        String[] options = {
            "--nosplash",
            "--branding",
            "taperwright",
            "--laf",
            "com.formdev.flatlaf.FlatLightLaf",
            "--userdir",
            home.resolve("user").toString(),
            "--cachedir",
            home.resolve("cache").toString()
        };
        try {
            boot.loadClass("org.netbeans.Main")
                    .getMethod("main", String[].class)
                    .invoke(null, (Object) options);
        } catch (InvocationTargetException failed) {
            throw new IllegalStateException("the workbench did not start", failed.getCause());
        }
        Hands hands = new Hands();
        hands.await("the main window", RunningWorkbench::mainWindowShows);
        hands.clickUntil(
                hands.find("cautionRead", JButton.class), "the cautions to go", () -> !hands.shows("cautionText"));
        // without a window manager, the first click after a dialog only brings the focus back
        hands.click(hands.find("the menu bar", JMenuBar.class, any -> true));
        return hands;
    }

    private static boolean mainWindowShows() {
        return Stream.of(Frame.getFrames())
                .anyMatch(frame -> frame.isShowing() && frame.getTitle().startsWith("Taperwright"));
    }

    private static URL url(Path jar) throws MalformedURLException {
        return jar.toUri().toURL();
    }
}
