package org.taperwright.shaping.passage;

import java.util.List;
import java.util.Map;

/**
 * Where a step is wider than what was there before it, by geometry alone: the instrument centred in the canal.
 *
 * @param engaged stretches of depth, from the orifice, where it is wider, by rising depth
 * @param enlargedMm3 volume between the instrument's circle and what was there before, by third
 * @param engagedShare share of each third's length where it is wider
 * @param greatestExcessMm greatest difference of diameters
 */
public record StepGeometry(
        List<Stretch> engaged,
        Map<Third, Double> enlargedMm3,
        Map<Third, Double> engagedShare,
        double greatestExcessMm) {
    public StepGeometry {
        engaged = List.copyOf(engaged);
        enlargedMm3 = Third.ordered(enlargedMm3);
        engagedShare = Third.ordered(engagedShare);
    }

    /** A stretch of depth from the orifice, mm. */
    public record Stretch(double fromMm, double toMm) {}
}
