package org.taperwright.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Duplicates;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Likeness;
import org.taperwright.shaping.instrument.Supply;

/** Duplicates sought in a large catalogue: the time should grow as the number of entries. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DuplicatesBenchmark {
    /** Number of entries. */
    @Param({"10000", "30000", "100000"})
    public int entries = 10_000;

    /** Whether all entries are of one size, the worst case for a search that compared entries of a size in pairs. */
    @Param({"false", "true"})
    public boolean oneSize;

    private final Map<ThingId, Instrument> catalogue = new HashMap<>();

    /** Makes the catalogue: 50 makers, and lots such that one entry in a hundred is a near-duplicate. */
    @Setup
    public void fill() {
        List<Integer> sizes = IsoSizes.sizes();
        for (int i = 0; i < entries; i++) {
            int size = oneSize ? 25 : sizes.get(i % sizes.size());
            String spelling = i % 100 == 0 ? "FILE %d  " : "File %d ";
            int number = i % 100 == 0 ? i + 1 : i;
            Instrument entry = new Instrument(
                            String.format(Locale.ROOT, spelling, number / 10),
                            "Maker " + number % 50,
                            "Line " + number % 10,
                            "K-type file",
                            Drive.HAND,
                            Designs.standard(size, IsoSizes.STANDARD_TAPER),
                            Optional.empty(),
                            true,
                            Optional.empty(),
                            Optional.empty(),
                            0,
                            "")
                    .draft()
                    .supply(Supply.NONE.withLot("L" + number))
                    .instrument();
            catalogue.put(new ThingId("entry-" + i), entry);
        }
    }

    /** All groups. */
    @Benchmark
    public List<Likeness> all() {
        return Duplicates.in(catalogue).all();
    }
}
