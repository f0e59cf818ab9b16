package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.TestServer;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.ServerSettings;
import org.taperwright.mechanics.design.ThingId;

/** The link to the server lost and found again. */
class LinkTest {
    private static final ThingId A = new ThingId("a");
    private static final ThingId B = new ThingId("b");

    private final List<StoringEvent> events = new CopyOnWriteArrayList<>();
    private final ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor();
    /** Whoever waits is woken by every event and every change. */
    private final Object news = new Object();

    private TestServer server;
    private ServerSettings settings;
    private EditHistory history;

    @BeforeEach
    void open() {
        server = TestServer.get();
        settings = server.freshDatabase();
        history = begun();
        history.onStoring(event -> {
            events.add(event);
            wake();
        });
        history.onChange(any -> wake());
    }

    private EditHistory begun() {
        LibraryStore store =
                ((OpenResult.Opened) LibraryStore.open(settings, TestServer.password(), JsonForms.forStore())).store();
        return new EditHistory(store, "someone", executor, Clock.systemUTC());
    }

    @AfterEach
    void close() {
        history.close();
        executor.shutdown();
    }

    private static List<Change> put(ThingId id, String name) {
        return List.of(new Change.Put(id, Examples.plainDesign(name)));
    }

    private void wake() {
        synchronized (news) {
            news.notifyAll();
        }
    }

    private void await(BooleanSupplier condition) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        synchronized (news) {
            while (!condition.getAsBoolean() && end > System.nanoTime()) {
                TimeUnit.NANOSECONDS.timedWait(news, end - System.nanoTime());
            }
        }
        assertThat(condition.getAsBoolean()).isTrue();
    }

    private boolean told(Class<? extends StoringEvent> type) {
        return events.stream().anyMatch(type::isInstance);
    }

    @Test
    void anEditOverABrokenLinkIsStoredOnceOverTheNext() {
        history.edit("Add a", put(A, "Alpha"));
        assertThat(history.flush(Duration.ofSeconds(20))).isTrue();
        assertThat(server.breakLinks(settings)).isPositive();
        history.edit("Rename a", put(A, "Omega"));
        history.edit("Add b", put(B, "Beta"));
        history.flush(Duration.ofSeconds(20));
        assertThat(history.flush(Duration.ofSeconds(20))).isTrue();
        assertThat(events)
                .anySatisfy(event -> assertThat(event)
                        .isInstanceOfSatisfying(
                                StoringEvent.Failed.class,
                                failed -> assertThat(failed.reason())
                                        .isEqualTo("the library cannot be reached: the link to the server is lost")));
        assertThat(history.pastOf(A)).extracting(Revision::edit).containsExactly("Add a", "Rename a");
        assertThat(history.pastOf(B)).hasSize(1);
    }

    @Test
    void whileTheServerIsDownEditingGoesOnAndAfterwardsAllIsStored() throws InterruptedException {
        try (Listening watching = history.watch(executor, Duration.ofMillis(100))) {
            assertThat(watching).isNotNull();
            history.edit("Add a", put(A, "Alpha"));
            await(() -> told(StoringEvent.Stored.class));
            server.stop();
            await(() -> told(StoringEvent.LinkLost.class));
            history.edit("Rename a", put(A, "Omega"));
            history.edit("Add b", put(B, "Beta"));
            assertThat(history.snapshot().entry(A).map(Entry::name)).contains("Omega");
            assertThat(told(StoringEvent.LinkFound.class)).isFalse();
            server.start();
            await(() -> told(StoringEvent.LinkFound.class));
            assertThat(history.flush(Duration.ofSeconds(30))).isTrue();
        }
        assertThat(history.pastOf(A)).extracting(Revision::edit).containsExactly("Add a", "Rename a");
        assertThat(history.pastOf(B)).hasSize(1);
    }

    @Test
    void whatAnotherProgramChangesShowsByItself() throws InterruptedException {
        try (EditHistory other = begun();
                Listening watching = history.watch(executor, Duration.ofMillis(100))) {
            assertThat(watching).isNotNull();
            other.edit("Add a", put(A, "Alpha"));
            await(() -> history.snapshot().entry(A).isPresent());
            assertThat(other.flush(Duration.ofSeconds(20))).isTrue();
        }
    }

    @Test
    void theWatchEndsWhenItIsClosed() throws InterruptedException {
        ScheduledExecutorService own = Executors.newSingleThreadScheduledExecutor();
        history.watch(own, Duration.ofMillis(20)).close();
        own.shutdown();
        assertThat(own.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
    }
}
