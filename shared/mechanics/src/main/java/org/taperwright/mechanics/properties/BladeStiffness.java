package org.taperwright.mechanics.properties;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.helix.HelicalAnalysis;
import org.taperwright.mechanics.properties.helix.HelicalFactors;
import org.taperwright.mechanics.properties.helix.PeakStressFactors;

/**
 * What a blade's sections of unit diameter set against bending and twisting, the turning of the flutes counted: the
 * harmonic mean of the principal second moments and J, each times its factor at {@code t = 2 pi d turns per mm}. Scales by
 * d^4 and the modulus. Factors are computed only where the flutes turn; a design without flutes per mm is a straight bar.
 * Between two stations factors are computed at the quarters of the blend and run straight between (between outlines of many
 * pieces at its middle, or not at all). Validity: the diameter
 * changes little over a turn, and the bend is long against the pitch.
 */
public final class BladeStiffness {
    private static final int QUARTERS = 4;
    private static final int MOST_EFFORT = 150;

    private final Design design;
    private final BladeSections sections;
    private final double poisson;
    private final int parts;
    /** By parts of the way from the first station; null until asked for. */
    private final List<@Nullable HelicalFactors> known = new ArrayList<>();

    /** The stiffness of a design's blade for a Poisson's ratio. */
    public BladeStiffness(Design design, BladeSections sections, double poisson) {
        this.design = design;
        this.sections = sections;
        this.poisson = poisson;
        this.parts = sections.parts(QUARTERS, MOST_EFFORT);
        for (int i = 0; i <= parts * design.sections().size(); i++) {
            known.add(null);
        }
    }

    /** {@code t = 2 pi d turns per mm} at a level. */
    public double turning(double levelMm) {
        return 2 * Math.PI * design.diameterMm(levelMm) * sections.turnsPerMm(levelMm);
    }

    /** Second moment that carries bending, of the section of unit diameter. */
    public double bending(double levelMm) {
        return sections.at(levelMm).iMean() * factor(levelMm, true);
    }

    /** Torsion constant at no axial force, of the section of unit diameter. */
    public double torsion(double levelMm) {
        return sections.at(levelMm).torsionConstant() * factor(levelMm, false);
    }

    /** What the turning of the flutes multiplies the bending stiffness by at a level. */
    public double bendingFactor(double levelMm) {
        return factor(levelMm, true);
    }

    /** What the turning of the flutes multiplies the torsional stiffness by at a level. */
    public double torsionFactor(double levelMm) {
        return factor(levelMm, false);
    }

    /** What the turning of the flutes multiplies peak stresses by at a level, of the nearest section worked out. */
    public PeakStressFactors peakStress(double levelMm) {
        double t = turning(levelMm);
        return t == 0
                ? PeakStressFactors.STRAIGHT
                : factors((int) Math.round(parts * sections.place(levelMm))).peakStressNear(t);
    }

    private double factor(double levelMm, boolean bends) {
        double t = turning(levelMm);
        if (t == 0) {
            return 1;
        }
        double place = parts * sections.place(levelMm);
        int below = (int) place;
        double share = place - below;
        double first = value(below, t, bends);
        return share == 0 ? first : first + share * (value(below + 1, t, bends) - first);
    }

    private double value(int part, double t, boolean bends) {
        HelicalFactors factors = factors(part);
        return bends ? factors.bending(t) : factors.torsion(t);
    }

    private HelicalFactors factors(int part) {
        HelicalFactors factors = known.get(part);
        if (factors == null) {
            factors = HelicalAnalysis.of(sections.outlineAtPlace((double) part / parts), poisson);
            known.set(part, factors);
        }
        return factors;
    }

    /**
     * Greatest equivalent strain on the surface of the turning blade over that of a straight bar bent to the same
     * curvature: the stiffness factor times the factor on the peak stress.
     */
    public double strainAtCurvature(double levelMm) {
        return bendingFactor(levelMm) * peakStress(levelMm).bending();
    }
}
