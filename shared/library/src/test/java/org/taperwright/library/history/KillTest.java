package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.TestLibrary;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.CheckReport;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.LibraryCheck;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;

/**
 * Kills a program (SIGKILL) at random moments while it edits a library. Whatever it acknowledged must be there, whole, and
 * at most the edit under way may be missing. The profile {@code crash} kills it far more often.
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("kills", 10);
    private static final int HUNDRED = 100;
    private static final int IMPORT = 1500;

    private final long seed = System.nanoTime();
    private final Random random = new Random(seed);

    @TempDir
    private Path folder;

    @Test
    void aLibraryKilledWhileItIsEditedLosesNothingAcknowledged() throws Exception {
        int stored = killedAgainAndAgain(KILLS, HUNDRED, 12);
        assertThat(stored).as("edits between the kills").isGreaterThan(KILLS);
    }

    @Test
    void aLibraryKilledWhileManyThingsAreImportedHasAllOrNoneOfThem() throws Exception {
        killedAgainAndAgain(KILLS, IMPORT, EditingProgram.SEVENTH);
    }

    private int killedAgainAndAgain(int kills, int many, int mostEdits) throws Exception {
        Path file = folder.resolve("edited.db");
        int stored = 0;
        for (int kill = 0; kill < kills; kill++) {
            int acknowledged = Math.max(stored, killedWhileEditing(file, many, mostEdits));
            stored = check(file, many, acknowledged, "kill " + kill + " of seed " + seed);
        }
        CheckReport report = LibraryCheck.of(file, JsonForms.forStore());
        assertThat(report.findings()).as("seed " + seed).isEmpty();
        System.out.println(kills + " kills, " + stored + " edits, " + report.revisions() + " revisions: none lost");
        return stored;
    }

    @Test
    void aLibraryKilledWhileItIsMadeOpensAfterwards() throws Exception {
        for (int kill = 0; kill < Math.max(4, KILLS / 4); kill++) {
            Path file = folder.resolve("made-" + kill + ".db");
            Process program = start(file, HUNDRED);
            anyMoment(200, 1200);
            check(file, HUNDRED, acknowledgedBy(program), "kill " + kill + " of seed " + seed);
        }
    }

    private int killedWhileEditing(Path file, int many, int mostEdits) throws Exception {
        Process program = start(file, many);
        assertThat(program.inputReader().readLine()).isEqualTo("ready");
        int read = 0;
        for (int edits = random.nextInt(mostEdits); edits > 0; edits--) {
            read = Integer.parseInt(program.inputReader().readLine());
        }
        anyMoment(0, 80);
        return Math.max(read, acknowledgedBy(program));
    }

    /** Waits for no condition: that the kill may come at any moment at all is what is tested, so the moment is drawn. */
    private void anyMoment(int fromMs, int toMs) throws InterruptedException {
        Thread.sleep(fromMs + random.nextInt(toMs - fromMs));
    }

    private static Process start(Path file, int many) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xmx128m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        EditingProgram.class.getName(),
                        file.toString(),
                        String.valueOf(many))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Kills the program and returns the last number it wrote as a whole line, 0 when there is none. */
    private static int acknowledgedBy(Process program) throws Exception {
        // by its handle, for the process itself would throw away what it has written but we have not yet read
        program.toHandle().destroyForcibly();
        assertThat(program.waitFor(20, TimeUnit.SECONDS)).isTrue();
        int last = 0;
        try (BufferedReader lines = program.inputReader()) {
            StringBuilder line = new StringBuilder();
            for (int sign = lines.read(); sign >= 0; sign = lines.read()) {
                if (sign != '\n') {
                    line.append((char) sign);
                } else {
                    last = line.toString().equals("ready") ? last : Integer.parseInt(line.toString());
                    line.setLength(0);
                }
            }
        }
        return last;
    }

    private static int check(Path file, int many, int acknowledged, String when) throws SQLException {
        try (LibraryStore store = TestLibrary.open(file)) {
            Snapshot snapshot = store.contents().snapshot();
            int stored = number(snapshot, EditingProgram.THREE.get(0));
            assertThat(stored).as(when).isBetween(acknowledged, acknowledged + 1);
            assertThat(EditingProgram.THREE)
                    .as("one edit is whole, " + when)
                    .allSatisfy(id -> assertThat(number(snapshot, id)).isEqualTo(stored));
            int seventh = stored - stored % EditingProgram.SEVENTH;
            assertThat(IntStream.range(0, many))
                    .as("many things in one edit, " + when)
                    .allSatisfy(i ->
                            assertThat(number(snapshot, EditingProgram.many(i))).isEqualTo(seventh));
            List<String> names = IntStream.rangeClosed(1, stored)
                    .mapToObj(number -> "Edit " + number)
                    .toList();
            assertThat(store.pastOf(EditingProgram.THREE.get(1)))
                    .as("every edit is in the past, " + when)
                    .extracting(Revision::edit)
                    .containsExactlyElementsOf(names);
            assertThat(integrity(file)).as(when).isEqualTo("ok");
            return stored;
        }
    }

    private static int number(Snapshot snapshot, ThingId id) {
        return snapshot.entry(id).map(Entry::name).map(Integer::valueOf).orElse(0);
    }

    private static String integrity(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            return statement.executeQuery("pragma integrity_check").getString(1);
        }
    }
}
