package org.taperwright.shaping.canal.preset;

import java.util.List;
import java.util.Optional;

/**
 * A canal as it is on average.
 *
 * @param id identifier
 * @param label tooth and canal
 * @param buccolingualMm median diameters 1, 2 and 5 mm from the canal's end, mm
 * @param mesiodistalMm likewise across
 * @param toothLengthMm average length of the tooth, mm
 * @param angleDeg average angle of the bend, degrees
 * @param angleSpreadDeg its standard deviation
 * @param dentine least dentine of the root, if it is known
 * @param source where the numbers come from and how they are known
 */
public record CanalPreset(
        String id,
        String label,
        List<Double> buccolingualMm,
        List<Double> mesiodistalMm,
        double toothLengthMm,
        double angleDeg,
        double angleSpreadDeg,
        Optional<Dentine> dentine,
        String source) {
    /** Distances from the canal's end of the diameters, mm. */
    public static final List<Double> FROM_END_MM = List.of(1.0, 2.0, 5.0);

    public CanalPreset {
        buccolingualMm = List.copyOf(buccolingualMm);
        mesiodistalMm = List.copyOf(mesiodistalMm);
        if (buccolingualMm.size() != FROM_END_MM.size() || mesiodistalMm.size() != FROM_END_MM.size()) {
            throw new IllegalArgumentException(id + ": a diameter for each of " + FROM_END_MM);
        }
    }

    /** Least dentine below the furcation, mm: mean and standard deviation. */
    public record Dentine(double meanMm, double spreadMm) {}
}
