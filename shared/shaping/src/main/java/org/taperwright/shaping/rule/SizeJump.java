package org.taperwright.shaping.rule;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.SequenceRule;

/**
 * At the working length a step that is more than one size of the ISO 3630-1 series above what was there (the canal's
 * lesser diameter or an earlier step) by hand, more than two when powered.
 */
public final class SizeJump implements SequenceRule {
    @Override
    public String id() {
        return "size-jump";
    }

    @Override
    public String explanation() {
        return "Sizes at the working length rise by one step of the standard's series by hand, by two when powered.";
    }

    @Override
    public String source() {
        return "series of sizes: ISO 3630-1; how many steps: common practice, no source";
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged) {
        List<Fault> faults = new ArrayList<>();
        if (!CanalGeometry.possible(arranged.canal())) {
            return faults;
        }
        CanalGeometry canal = new CanalGeometry(arranged.canal());
        double thereMm = canal.narrowMm(canal.endDepthMm());
        for (Working working : AtTheEnd.workings(arranged)) {
            Instrument instrument = working.instrument();
            int largest = largestAfter(thereMm, instrument.drive() == Drive.HAND ? 1 : 2);
            if (instrument.size() > largest) {
                faults.add(Fault.unusual(
                        working.where() + ".instrument",
                        "the end of the canal is widened from " + Shown.diameter(thereMm) + " to "
                                + Shown.diameter(instrument.design().tipDiameterMm()) + " in one step",
                        "put size " + IsoSizes.text(largest) + " or smaller before it"));
            }
            thereMm = Math.max(thereMm, instrument.design().tipDiameterMm());
        }
        return faults;
    }

    /** The size so many steps of the series above a diameter; the series' last where it ends. */
    private static int largestAfter(double diameterMm, int steps) {
        List<Integer> above = IsoSizes.sizes().stream()
                .filter(size -> size > Math.round(diameterMm * 100))
                .limit(steps)
                .toList();
        return above.isEmpty() ? Integer.MAX_VALUE : above.get(above.size() - 1);
    }
}
