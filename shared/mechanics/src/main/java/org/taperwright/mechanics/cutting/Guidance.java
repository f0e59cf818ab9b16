package org.taperwright.mechanics.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.uncertainty.Sampling;

/**
 * How a blade keeps to the canal: two indices, of which only the order means something. Their weights are set, within wide
 * bands, after what the trade holds: a cutting tip attacks what lies ahead, lands and even edges keep the blade in the middle
 * (common practice, no source).
 */
public final class Guidance {
    private static final Reading ACTIVE = about(1, 0.8, 1.2);
    private static final Reading SEMI_ACTIVE = about(0.5, 0.3, 0.7);
    private static final Reading PASSIVE = about(0.1, 0.03, 0.2);
    /** What even edges without lands count for, against lands that carry all. */
    private static final Reading WITHOUT_LANDS = about(0.5, 0.3, 0.7);

    private Guidance() {}

    /**
     * How hard the tip attacks what lies ahead: 1 for a cutting tip, about 0.5 for a semi-active and 0.1 for a passive one,
     * times {@code cot(angle / 2)} over that of the standard's 75 degrees.
     */
    public static Reading tipAggressiveness(Design design) {
        Reading kind = switch (design.tip().kind()) {
            case ACTIVE -> ACTIVE;
            case SEMI_ACTIVE -> SEMI_ACTIVE;
            case PASSIVE -> PASSIVE;
        };
        double sharpness = Math.tan(Math.toRadians(IsoSizes.TIP_ANGLE_DEG) / 2)
                / Math.tan(Math.toRadians(design.tip().angleDeg()) / 2);
        return Sampling.reading(List.of(kind), weight -> weight[0] * sharpness);
    }

    /**
     * How well the blade centres itself: {@code e (s + (1 - s) c)} with the evenness {@code e = 1 - |sum exp(i phi)| / n} of its n
     * edges at angles phi, the share c of the side force that its lands carry while it turns, and a weight s of about 0.5.
     */
    public static Reading selfCentring(CuttingGeometry blade) {
        double evenness = evenness(blade.each());
        List<Reading> constants = new ArrayList<>(Dentine.CONSTANTS);
        constants.add(WITHOUT_LANDS);
        return Sampling.reading(constants, values -> {
            double weight = Math.min(1, values[values.length - 1]);
            double lands = blade.each().isEmpty()
                    ? 1
                    : CuttingTest.run(blade, Motion.ROTATION, Dentine.of(values))
                            .landShare();
            return evenness * (weight + (1 - weight) * lands);
        });
    }

    /** 1 for edges evenly around the axis, 0 for a single edge. */
    static double evenness(List<Edge> edges) {
        double x = 0;
        double y = 0;
        for (Edge edge : edges) {
            x += Math.cos(edge.angle());
            y += Math.sin(edge.angle());
        }
        return edges.isEmpty() ? 1 : Math.max(0, 1 - Math.hypot(x, y) / edges.size());
    }

    private static Reading about(double value, double low, double high) {
        return new Reading(value, Optional.of(new Band(low, high)));
    }
}
