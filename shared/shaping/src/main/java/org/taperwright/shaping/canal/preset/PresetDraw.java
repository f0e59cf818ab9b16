package org.taperwright.shaping.canal.preset;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.canal.RootOutline;

/**
 * Canals drawn from a preset. What the preset does not say is assumed, no source: all diameters of a canal are wider or narrower
 * together, 5 to 95 % within a factor of 1.3 of the medians; the tooth's length has a standard deviation of 1.5 mm; the orifice lies
 * 8 mm below the reference point; from 5 mm on the canal widens by 0.06 mm/mm; radius of the bend 5 to 20 mm, all ratios alike, or what
 * fits; the bend lies in the mesiodistal plane (azimuth 0) and ends 1.5 mm before the canal's end; instrumentation ends 0.5 mm before
 * it; the furcation is 3 mm below the orifice and the dentine is least from there over 7 mm.
 */
public final class PresetDraw {
    private static final double SIZE_LOG = Math.log(1.3) / 1.645;
    private static final double LENGTH_SPREAD_MM = 1.5;
    private static final double ORIFICE_MM = 8;
    private static final double WIDENING = 0.06;
    private static final double LEAST_RADIUS_MM = 5;
    private static final double GREATEST_RADIUS_MM = 20;
    private static final double APICAL_STRAIGHT_MM = 1.5;
    private static final double CORONAL_STRAIGHT_MM = 1;
    private static final double SHORT_OF_END_MM = 0.5;
    private static final double FURCATION_MM = 3;
    private static final double THIN_OVER_MM = 7;
    /** How much thicker the wall is at the orifice, and buccolingually. */
    private static final double THICKER = 1.4;

    private static final double LEAST_DENTINE_MM = 0.3;
    /** Steepest angle seen in 1163 canals (Schäfer and others, J Endod 2002;28:211-216, abstract). */
    private static final double GREATEST_ANGLE_DEG = 75;

    private static final double DEVIATIONS = 2.5;
    private static final int TRIES = 50;

    private PresetDraw() {}

    /** The canal with every number in the middle. */
    public static Canal average(CanalPreset preset) {
        return canal(preset, preset.label(), new double[] {0, 0, 0, 0, 0});
    }

    /** A number of canals; the same seed draws the same. */
    public static List<Canal> population(CanalPreset preset, int count, int seed) {
        RandomGenerator random = new Well19937c(new int[] {seed, preset.id().hashCode()});
        List<Canal> canals = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            canals.add(possible(preset, preset.label() + ", no. " + (i + 1), random));
        }
        return canals;
    }

    private static Canal possible(CanalPreset preset, String name, RandomGenerator random) {
        for (int attempt = 0; attempt < TRIES; attempt++) {
            double[] deviations = new double[5];
            for (int d = 0; d < deviations.length; d++) {
                deviations[d] = Math.max(-DEVIATIONS, Math.min(DEVIATIONS, random.nextGaussian()));
            }
            Canal canal = canal(preset, name, deviations);
            if (CanalGeometry.possible(canal)) {
                return canal;
            }
        }
        return canal(preset, name, new double[] {0, 0, 0, 0, 0});
    }

    /** By standard deviations from the middle of size, length, angle, radius and dentine. */
    private static Canal canal(CanalPreset preset, String name, double[] deviations) {
        double size = Math.exp(SIZE_LOG * deviations[0]);
        double length = preset.toothLengthMm() - ORIFICE_MM + LENGTH_SPREAD_MM * deviations[1];
        double angle =
                Math.max(0, Math.min(GREATEST_ANGLE_DEG, preset.angleDeg() + preset.angleSpreadDeg() * deviations[2]));
        double middle = Math.sqrt(LEAST_RADIUS_MM * GREATEST_RADIUS_MM);
        double radius = middle * Math.pow(GREATEST_RADIUS_MM / LEAST_RADIUS_MM, deviations[3] / (2 * DEVIATIONS));
        List<Opening> openings = openings(preset, size, length);
        List<RootOutline> root = preset.dentine()
                .map(known -> root(
                        openings,
                        Math.max(LEAST_DENTINE_MM, known.meanMm() + known.spreadMm() * deviations[4]),
                        length))
                .orElse(List.of());
        return new Canal(
                name,
                pieces(length, angle, radius),
                openings,
                root,
                ORIFICE_MM,
                ORIFICE_MM + length - SHORT_OF_END_MM,
                preset.source(),
                "Drawn from published averages; what they do not say is assumed.");
    }

    private static List<CanalPiece> pieces(double length, double angle, double radius) {
        double room = length - APICAL_STRAIGHT_MM - CORONAL_STRAIGHT_MM;
        double arc = Math.min(room, radius * Math.toRadians(angle));
        if (arc < 1e-6) {
            return List.of(new CanalPiece(length, 0, 0));
        }
        return List.of(
                new CanalPiece(length - APICAL_STRAIGHT_MM - arc, 0, 0),
                new CanalPiece(arc, angle, 0),
                new CanalPiece(APICAL_STRAIGHT_MM, 0, 0));
    }

    private static List<Opening> openings(CanalPreset preset, double size, double length) {
        int last = CanalPreset.FROM_END_MM.size() - 1;
        double wider = WIDENING * (length - CanalPreset.FROM_END_MM.get(last));
        List<Opening> openings = new ArrayList<>();
        openings.add(opening(
                0,
                size * preset.buccolingualMm().get(last) + wider,
                size * preset.mesiodistalMm().get(last) + wider));
        for (int i = last; i >= 0; i--) {
            openings.add(opening(
                    length - CanalPreset.FROM_END_MM.get(i),
                    size * preset.buccolingualMm().get(i),
                    size * preset.mesiodistalMm().get(i)));
        }
        return openings;
    }

    private static Opening opening(double depth, double buccolingual, double mesiodistal) {
        return buccolingual >= mesiodistal
                ? new Opening(depth, buccolingual, mesiodistal, 90)
                : new Opening(depth, mesiodistal, buccolingual, 0);
    }

    private static List<RootOutline> root(List<Opening> openings, double dentine, double length) {
        Canal bare = new Canal("", List.of(), openings, List.of(), 0, length, "", "");
        CanalGeometry geometry = new CanalGeometry(bare);
        List<RootOutline> root = new ArrayList<>();
        for (double depth : List.of(0.0, FURCATION_MM, FURCATION_MM + THIN_OVER_MM)) {
            double thick = depth == 0 ? THICKER * dentine : dentine;
            Opening at = geometry.at(Math.min(depth, length));
            root.add(new RootOutline(
                    depth, at.wideMm() + 2 * THICKER * thick, at.narrowMm() + 2 * thick, at.azimuthDeg()));
        }
        return root;
    }
}
