package org.taperwright.mechanics.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What a sweep came across: how many designs, and the slowest. */
final class SweepRecord {
    private static final int SLOWEST = 12;

    private final int cold;
    private final List<Taken> taken = new ArrayList<>();
    private int refused;

    private record Taken(AnyDesign any, long assessed, long read) {}

    SweepRecord(int cold) {
        this.cold = cold;
    }

    synchronized void refused(AnyDesign any, long nanos) {
        refused++;
        taken.add(new Taken(any, nanos, nanos));
    }

    synchronized void assessed(AnyDesign any, long assessed, long read) {
        taken.add(new Taken(any, assessed, read));
    }

    @Override
    public synchronized String toString() {
        List<Taken> warm = taken.subList(Math.min(cold, taken.size()), taken.size());
        StringBuilder text =
                new StringBuilder(taken.size() + " designs, " + refused + " of them refused; slowest after " + cold
                        + " by processor time (ms assessed, with all metrics and bands):");
        warm.stream()
                .sorted(Comparator.comparingLong(Taken::read).reversed())
                .limit(SLOWEST)
                .forEach(slow -> text.append(String.format(
                        Locale.ROOT, "%n%6d %6d %s", slow.assessed / 1_000_000, slow.read / 1_000_000, slow.any)));
        long[] sorted = warm.stream().mapToLong(Taken::read).sorted().toArray();
        if (sorted.length > 0) {
            text.append(String.format(
                    Locale.ROOT,
                    "%nmedian %d ms, 99 %% %d ms",
                    sorted[sorted.length / 2] / 1_000_000,
                    sorted[(int) (0.99 * sorted.length)] / 1_000_000));
        }
        return text.toString();
    }
}
