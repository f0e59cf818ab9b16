package org.taperwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.history.Change;
import org.taperwright.library.history.EditHistory;
import org.taperwright.library.search.InstrumentMatch;
import org.taperwright.library.store.Contents;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.SearchColumns;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Window;

/**
 * A large library: opened by a program just started (a single shot in a fork of its own, as it is used), filtered by words
 * and ranges, and edited one instrument at a time on the calling thread.
 */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 3,
        jvmArgs = {"-Xms64m", "-Xmx1g", "-XX:+UseSerialGC"})
public class LibraryBenchmark {
    private static final ThingId MOTOR = new ThingId("motor");

    @Param("100000")
    private int count;

    private Path file;
    private EditHistory history;
    private Snapshot library;
    private List<Sought> sought;
    private int edits;

    /** An instrument and its words, worked out once, as a table has them. */
    private record Sought(Instrument instrument, String words) {}

    /** Makes the library, or opens the one made in the fork before. */
    @Setup(Level.Trial)
    public void fill() throws IOException {
        file = Path.of(System.getProperty("java.io.tmpdir"), "taperwright-" + count + ".sqlite");
        if (!Files.exists(file)) {
            try (LibraryStore store = open()) {
                store.append("Import", "someone", Instant.EPOCH, ManyInstruments.drafts(count));
            }
        }
    }

    private LibraryStore open() {
        return ((OpenResult.Opened) LibraryStore.open(file, JsonForms.forStore())).store();
    }

    /** Opens it and reads every form. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public int opening() {
        try (LibraryStore store = open()) {
            Contents contents = store.contents();
            return contents.snapshot().entries().size();
        }
    }

    private void begin() {
        if (history == null) {
            history = new EditHistory(open(), "someone", run -> {}, Clock.systemUTC());
            Motor motor = new Motor(
                    "Bench motor", "", new Window(100, 400), new Window(2, 50), Optional.empty(), true, false, "");
            library = history.snapshot().with(1, List.of(new Entry(MOTOR, motor, 1, Instant.EPOCH, "Add")), List.of());
            sought = library.ofKind(ThingKind.INSTRUMENT).stream()
                    .map(entry -> new Sought(
                            (Instrument) entry.thing(),
                            SearchColumns.of(entry.thing()).text()))
                    .toList();
        }
    }

    /** Two words, a range of sizes and a motor over every instrument. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 3, time = 1)
    @Measurement(iterations = 5, time = 1)
    public long filtering() {
        begin();
        InstrumentFilter filter =
                InstrumentFilter.ALL.withSize(Optional.of(new Window(15, 80))).withMotor(Optional.of(MOTOR));
        List<String> words = List.of("marshlight", "reed", "17");
        InstrumentMatch match = new InstrumentMatch(filter, library);
        return sought.stream()
                .filter(each -> match.test(each.instrument()) && words.stream().allMatch(each.words()::contains))
                .count();
    }

    /** One instrument renamed. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 3, time = 1)
    @Measurement(iterations = 5, time = 1)
    public int editing() {
        begin();
        edits++;
        int which = edits * 7919 % count;
        history.edit(
                "Rename",
                List.of(new Change.Put(
                        ManyInstruments.id(which),
                        ManyInstruments.instrument(which)
                                .draft()
                                .name("Renamed " + edits)
                                .instrument())));
        return history.snapshot().entries().size();
    }

    /** Lets the file lie for the next fork; whoever measures deletes it. */
    @TearDown(Level.Trial)
    public void end() {
        history = null;
        library = new Snapshot(0, Map.of());
        sought = List.of();
    }
}
