package org.taperwright.designer.ui;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.design.TaperSegment;

/**
 * Changes to contiguous taper segments. Each keeps them contiguous, and keeps every other segment's taper, so that what
 * lies beyond a change moves in parallel and the numbers stay as entered.
 */
final class Tapers {
    /** Shortest segment a person can make, mm. */
    static final double SHORTEST = 0.5;

    private Tapers() {}

    static List<TaperSegment> withTaper(List<TaperSegment> taper, int index, double value) {
        TaperSegment old = taper.get(index);
        return Rows.replaced(taper, index, new TaperSegment(old.fromMm(), old.toMm(), value));
    }

    /** Moves the end of a segment between its own beginning and the next one's end; the last may move freely outwards. */
    static List<TaperSegment> withEnd(List<TaperSegment> taper, int index, double end, double farthest) {
        TaperSegment old = taper.get(index);
        boolean last = index == taper.size() - 1;
        double most = last ? farthest : taper.get(index + 1).toMm() - SHORTEST;
        double to = round(Math.max(old.fromMm() + SHORTEST, Math.min(most, end)));
        List<TaperSegment> changed = new ArrayList<>(taper);
        changed.set(index, new TaperSegment(old.fromMm(), to, old.taper()));
        if (!last) {
            TaperSegment next = taper.get(index + 1);
            changed.set(index + 1, new TaperSegment(to, next.toMm(), next.taper()));
        }
        return changed;
    }

    /** Cuts a segment in two halves of the same taper. */
    static List<TaperSegment> split(List<TaperSegment> taper, int index) {
        TaperSegment old = taper.get(index);
        double middle = round((old.fromMm() + old.toMm()) / 2);
        List<TaperSegment> changed = new ArrayList<>(taper);
        changed.set(index, new TaperSegment(old.fromMm(), middle, old.taper()));
        changed.add(index + 1, new TaperSegment(middle, old.toMm(), old.taper()));
        return changed;
    }

    /** Whether a segment is long enough to be cut in two. */
    static boolean canSplit(TaperSegment segment) {
        return segment.toMm() - segment.fromMm() >= 2 * SHORTEST;
    }

    /** Takes a segment out; its neighbour towards the tip, or else towards the handle, reaches over its place. */
    static List<TaperSegment> without(List<TaperSegment> taper, int index) {
        TaperSegment gone = taper.get(index);
        List<TaperSegment> changed = new ArrayList<>(taper);
        changed.remove(index);
        if (index > 0) {
            TaperSegment before = changed.get(index - 1);
            changed.set(index - 1, new TaperSegment(before.fromMm(), gone.toMm(), before.taper()));
        } else {
            TaperSegment after = changed.get(0);
            changed.set(0, new TaperSegment(gone.fromMm(), after.toMm(), after.taper()));
        }
        return changed;
    }

    /** Adds a segment of the last one's taper beyond it. */
    static List<TaperSegment> extended(List<TaperSegment> taper, double by) {
        TaperSegment last = taper.get(taper.size() - 1);
        List<TaperSegment> changed = new ArrayList<>(taper);
        changed.add(new TaperSegment(last.toMm(), round(last.toMm() + by), last.taper()));
        return changed;
    }

    private static double round(double mm) {
        return BigDecimal.valueOf(mm).setScale(3, RoundingMode.HALF_EVEN).doubleValue();
    }
}
