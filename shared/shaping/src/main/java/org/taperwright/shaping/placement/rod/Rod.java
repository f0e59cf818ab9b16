package org.taperwright.shaping.placement.rod;

import java.util.ArrayList;
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

    /** The same rod, stiffer by a factor. */
    public Rod stiffer(double factor) {
        List<RodSection> sections = new ArrayList<>();
        for (int i = 0; i < level.length; i++) {
            sections.add(new RodSection(level[i], diameter[i], unit[i] * factor, wall[i]));
        }
        return new Rod(lengthMm, cutsFromMm, cutsToMm, sections, law);
    }

    /** What of the rod lies above a level: that level is its tip. */
    public Rod above(double levelMm) {
        int first = section(levelMm, 0);
        double wide = at(diameter, levelMm, first);
        List<RodSection> sections = new ArrayList<>();
        sections.add(new RodSection(0, wide, at(unit, levelMm, first), at(wall, levelMm, first)));
        for (int i = first + 1; i < level.length; i++) {
            sections.add(new RodSection(level[i] - levelMm, diameter[i], unit[i], wall[i]));
        }
        return new Rod(lengthMm - levelMm, cutsFromMm - levelMm, cutsToMm - levelMm, sections, law);
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

    /** The section that a level lies beyond, looked for from another on; the one before a step has the level of the step. */
    public int section(double levelMm, int from) {
        int below = from;
        while (below + 2 < level.length && (level[below + 1] < levelMm || level[below + 1] == level[below])) {
            below++;
        }
        return below;
    }

    /** Radius that the wall meets at a level, mm. */
    public double wallRadiusMm(double levelMm) {
        return wallRadiusMm(levelMm, section(levelMm, 0));
    }

    /** The same, its section known. */
    public double wallRadiusMm(double levelMm, int section) {
        return at(wall, levelMm, section) / 2;
    }

    /** Diameter of the circumscribed circle at a level, mm. */
    public double diameterMm(double levelMm) {
        return diameterMm(levelMm, section(levelMm, 0));
    }

    /** The same, its section known. */
    public double diameterMm(double levelMm, int section) {
        return at(diameter, levelMm, section);
    }

    /** Bending stiffness at a level, N mm². */
    public double stiffnessNmm2(double levelMm) {
        return stiffnessNmm2(levelMm, section(levelMm, 0));
    }

    /** The same, its section known. */
    public double stiffnessNmm2(double levelMm, int section) {
        double d = at(diameter, levelMm, section);
        return at(unit, levelMm, section) * d * d * d * d;
    }

    /** How the radius changes with the level beyond a section, mm/mm. */
    public double radiusSlope(int section) {
        return slope(diameter, section) / 2;
    }

    /** How the bending stiffness changes with a level, its section known, N mm. */
    public double stiffnessSlope(double levelMm, int section) {
        double d = at(diameter, levelMm, section);
        double cube = d * d * d;
        return slope(unit, section) * cube * d + 4 * at(unit, levelMm, section) * cube * slope(diameter, section);
    }

    private double at(double[] values, double levelMm, int section) {
        double share = (levelMm - level[section]) / (level[section + 1] - level[section]);
        double held = Math.max(0, Math.min(1, share));
        return values[section] + held * (values[section + 1] - values[section]);
    }

    private double slope(double[] values, int section) {
        return (values[section + 1] - values[section]) / (level[section + 1] - level[section]);
    }
}
