package org.taperwright.shaping.placement.rod;

import java.util.List;

/**
 * An instrument as an elastic rod from its tip (level 0) to the handle: {@code EI = e(x) d(x)^4} with the unit stiffness e and
 * the diameter d, both linear between levels that are given; two sections at one level are a step. Which way it bends does not
 * matter: the stiffness is that averaged over a turn.
 */
public final class Rod {
    private final double lengthMm;
    private final double cutsFromMm;
    private final double cutsToMm;
    private final double[] level;
    private final double[] diameter;
    private final double[] unit;
    private final double[] wall;
    private final MomentLaw law;

    private Rod(double lengthMm, double cutsFromMm, double cutsToMm, List<RodSection> sections, MomentLaw law) {
        this.lengthMm = lengthMm;
        this.cutsFromMm = cutsFromMm;
        this.cutsToMm = cutsToMm;
        this.law = law;
        level = sections.stream().mapToDouble(RodSection::levelMm).toArray();
        diameter = sections.stream().mapToDouble(RodSection::diameterMm).toArray();
        unit = sections.stream().mapToDouble(RodSection::unitStiffnessMpa).toArray();
        wall = sections.stream().mapToDouble(RodSection::wallDiameterMm).toArray();
    }

    /**
     * A rod.
     *
     * @param lengthMm tip to handle
     * @param cutsFromMm level at which it begins to cut
     * @param cutsToMm level at which the working part ends
     * @param sections at least two, by level that does not fall, from 0 to the length or beyond
     * @param law the law of its moment
     */
    public static Rod of(
            double lengthMm, double cutsFromMm, double cutsToMm, List<RodSection> sections, MomentLaw law) {
        if (sections.size() < 2) {
            throw new IllegalArgumentException("a rod has at least two sections");
        }
        return new Rod(lengthMm, cutsFromMm, cutsToMm, sections, law);
    }

    /** Distance from the tip to the handle, mm. */
    public double lengthMm() {
        return lengthMm;
    }

    /** Whether it cuts at a level. */
    public boolean cuts(double levelMm) {
        return levelMm >= cutsFromMm && levelMm <= cutsToMm;
    }

    /** The law of its moment. */
    public MomentLaw law() {
        return law;
    }

    /** Radius that the wall meets at a level, mm. */
    public double wallRadiusMm(double levelMm) {
        return at(wall, levelMm) / 2;
    }

    /** Diameter of the circumscribed circle at a level, mm. */
    public double diameterMm(double levelMm) {
        return at(diameter, levelMm);
    }

    /** Bending stiffness at a level, N mm². */
    public double stiffnessNmm2(double levelMm) {
        double d = at(diameter, levelMm);
        return at(unit, levelMm) * d * d * d * d;
    }

    /** How the radius changes with the level, mm/mm. */
    public double radiusSlope(double levelMm) {
        return slope(diameter, levelMm) / 2;
    }

    /** How the bending stiffness changes with the level, N mm. */
    public double stiffnessSlope(double levelMm) {
        double d = at(diameter, levelMm);
        double cube = d * d * d;
        return slope(unit, levelMm) * cube * d + 4 * at(unit, levelMm) * cube * slope(diameter, levelMm);
    }

    private double at(double[] values, double levelMm) {
        int below = below(levelMm);
        double share = (levelMm - level[below]) / (level[below + 1] - level[below]);
        double held = Math.max(0, Math.min(1, share));
        return values[below] + held * (values[below + 1] - values[below]);
    }

    private double slope(double[] values, double levelMm) {
        int below = below(levelMm);
        return (values[below + 1] - values[below]) / (level[below + 1] - level[below]);
    }

    /** The stretch that a level lies in: the one before a step belongs to the level of the step. */
    private int below(double levelMm) {
        int below = 0;
        while (below + 2 < level.length && (level[below + 1] < levelMm || level[below + 1] == level[below])) {
            below++;
        }
        return below;
    }
}
