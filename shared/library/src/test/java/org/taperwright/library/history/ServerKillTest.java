package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.TestServer;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.CheckReport;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.ServerSettings;
import org.taperwright.mechanics.design.ThingId;

/**
 * Breaks the link to a server at random moments while a library on it is edited, every tenth time by stopping the server
 * itself as a power cut would. Every edit must be there once, in order, whether or not its answer was lost. The profile
 * {@code crash} breaks it far more often.
 */
class ServerKillTest {
    private static final int KILLS = Integer.getInteger("kills", 10);
    private static final int EDITS_BETWEEN = 6;
    private static final int MANY = 40;
    private static final ThingId NUMBERED = new ThingId("numbered");

    private final long seed = System.nanoTime();
    private final Random random = new Random(seed);
    private final List<String> acknowledged = new CopyOnWriteArrayList<>();

    @Test
    void aLinkBrokenWhileALibraryIsEditedLosesNothingAndStoresNothingTwice() throws Exception {
        TestServer server = TestServer.get();
        ServerSettings settings = server.freshDatabase();
        ExecutorService storing = Executors.newSingleThreadExecutor();
        try (EditHistory history = new EditHistory(open(settings), "someone", storing, Clock.systemUTC());
                Listening listening = history.onStoring(this::note)) {
            assertThat(listening).isNotNull();
            int edits = 0;
            for (int kill = 0; kill < KILLS; kill++) {
                for (int i = 0; i < EDITS_BETWEEN; i++) {
                    edits++;
                    history.edit("Edit " + edits, changes(edits));
                }
                anyMoment();
                breakLink(server, settings, kill);
                assertThat(stored(history))
                        .as("kill " + kill + " of seed " + seed)
                        .isTrue();
            }
            // an edit is told of after it is stored, by the thread that stores
            storing.submit(() -> {}).get();
            check(history, settings, edits);
        } finally {
            storing.shutdown();
        }
    }

    /** Waits for no condition: that the link may break at any moment at all is what is tested, so the moment is drawn. */
    private void anyMoment() throws InterruptedException {
        Thread.sleep(random.nextInt(30));
    }

    private static LibraryStore open(ServerSettings settings) {
        return ((OpenResult.Opened) LibraryStore.open(settings, TestServer.password(), JsonForms.forStore())).store();
    }

    private void note(StoringEvent event) {
        if (event instanceof StoringEvent.Stored stored) {
            acknowledged.add(stored.edit());
        }
    }

    private static void breakLink(TestServer server, ServerSettings settings, int kill) {
        if (kill % 10 == 9) {
            server.stop();
            server.start();
        } else {
            server.breakLinks(settings);
        }
    }

    /** Whether all is stored at last; each asking tries once more at once. */
    private static boolean stored(EditHistory history) {
        for (int i = 0; i < 20; i++) {
            if (history.flush(Duration.ofSeconds(10))) {
                return true;
            }
        }
        return false;
    }

    /** One numbered thing in every edit, and in every fifth many more, as an import has. */
    private static List<Change> changes(int edit) {
        List<Change> changes = new ArrayList<>();
        changes.add(new Change.Put(NUMBERED, Examples.plainDesign("Number " + edit)));
        for (int i = 0; edit % 5 == 0 && i < MANY; i++) {
            changes.add(new Change.Put(new ThingId("many-" + i), Examples.plainDesign("Number " + edit)));
        }
        return changes;
    }

    private void check(EditHistory history, ServerSettings settings, int edits) {
        List<String> names =
                IntStream.rangeClosed(1, edits).mapToObj(i -> "Edit " + i).toList();
        assertThat(acknowledged).as("seed " + seed).containsExactlyElementsOf(names);
        assertThat(history.pastOf(NUMBERED))
                .as("seed " + seed)
                .extracting(Revision::edit)
                .containsExactlyElementsOf(names);
        assertThat(history.pastOf(new ThingId("many-7"))).hasSize(edits / 5);
        try (LibraryStore store = open(settings)) {
            CheckReport report = store.check();
            assertThat(report.findings()).as("seed " + seed).isEmpty();
            assertThat(store.contents().snapshot()).isEqualTo(history.snapshot());
            System.out.println(KILLS + " broken links, " + edits + " edits, " + report.revisions()
                    + " revisions: none lost, none twice");
        }
    }
}
