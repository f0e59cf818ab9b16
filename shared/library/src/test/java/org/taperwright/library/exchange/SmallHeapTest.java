package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Files far larger than the memory are read to their end, and files made to exhaust it are refused. The program that reads
 * them has 64 MB; the files are never on a disk. The profile {@code spoilt} makes them larger.
 */
class SmallHeapTest {
    private static final int MEGABYTES = Integer.getInteger("streamedMegabytes", 8);

    @ParameterizedTest
    @CsvSource({
        "table, read",
        "bundle, read",
        "openQuote, read",
        "longLine, holds a line of more than 1000000 characters",
        "longString, 'holds a name, string or number of excessive length'",
        "deep, goes deeper than 32 levels",
        "wide, holds more than 250000 values"
    })
    void aVastFileIsReadOrRefusedWithSixtyFourMegabytes(String kind, String expected) throws Exception {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx64m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ReadingProgram.class.getName(),
                        kind,
                        String.valueOf(MEGABYTES))
                .redirectErrorStream(true)
                .start();
        List<String> lines = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
        lines.forEach(System.out::println);
        assertThat(program.exitValue()).as(String.join("\n", lines)).isZero();
        assertThat(lines.get(lines.size() - 1)).contains(expected);
    }
}
