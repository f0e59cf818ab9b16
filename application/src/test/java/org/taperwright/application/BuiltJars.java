package org.taperwright.application;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The jars of the built workbench. */
final class BuiltJars {
    private static final Path BUILT = Path.of(System.getProperty("workbench", "target/taperwright"));
    private static final Path OURS = BUILT.resolve("taperwright/modules");

    private BuiltJars() {}

    /** The NetBeans modules of our own. */
    static List<Path> modules() throws IOException {
        try (Stream<Path> files = Files.list(OURS)) {
            return files.filter(BuiltJars::isJar).toList();
        }
    }

    /** The plain jars that the modules carry: the shared ones and those of others. */
    static List<Path> carried() throws IOException {
        try (Stream<Path> files = Files.walk(OURS.resolve("ext"))) {
            return files.filter(BuiltJars::isJar).toList();
        }
    }

    private static boolean isJar(Path file) {
        return file.getFileName().toString().endsWith(".jar");
    }
}
