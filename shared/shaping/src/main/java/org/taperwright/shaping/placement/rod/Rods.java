package org.taperwright.shaping.placement.rod;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.response.MomentCurvature;
import org.taperwright.mechanics.bench.response.Responses;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.BladeStiffness;

/**
 * The rod that a design is: the blade's stiffness with the turning of its flutes, a round shaft, a conical tip that the wall
 * meets though it stiffens as the taper goes on, and the moment law of the section 4 mm from the tip, near which instruments
 * bend most, for the whole of it. A passive tip cuts only where its cone nears the taper, a semi-active one on its
 * upper half.
 */
public final class Rods {
    private static final double STEP_MM = 0.5;
    private static final double LAW_AT_MM = 4;
    private static final double GREATEST_STRAIN = 0.2;
    private static final int SAMPLES = 401;
    private static final double ROUND = Math.PI / 64;
    /** Shares of the tip's cone that have no edge: the edges run out on it (assumed, no source). */
    private static final double PASSIVE_SHARE = 0.75;

    private static final double SEMI_ACTIVE_SHARE = 0.5;
    /** The wall meets no point, mm. */
    private static final double LEAST_WALL_MM = 0.02;

    private Rods() {}

    /** The rod of a design that has no impossible fault. */
    public static Rod of(Design design, Alloy alloy) {
        BladeSections sections = BladeSections.of(design);
        BladeStiffness stiffness = new BladeStiffness(design, sections, alloy.poisson());
        double end = Math.min(design.workingPartMm(), design.lengthMm());
        List<RodSection> rod = new ArrayList<>();
        for (double level : levels(design, end)) {
            double unit = alloy.youngMpa() * stiffness.bending(level);
            rod.add(new RodSection(level, design.diameterMm(level), unit, wallDiameterMm(design, level)));
        }
        double shaft = design.shaftDiameterMm().orElse(design.diameterMm(end));
        double unit = alloy.youngMpa() * ROUND;
        rod.add(new RodSection(end, shaft, unit, shaft));
        rod.add(new RodSection(design.lengthMm() + 1, shaft, unit, shaft));
        double at = Math.min(LAW_AT_MM, end / 2);
        MomentLaw law = law(alloy, sections, at, stiffness.bendingFactor(at));
        return Rod.of(design.lengthMm(), nonCuttingMm(design), end, rod, law);
    }

    /** Length from the tip over which nothing cuts, mm. */
    public static double nonCuttingMm(Design design) {
        double tip = shoulderMm(design);
        return switch (design.tip().kind()) {
            case ACTIVE -> 0;
            case SEMI_ACTIVE -> SEMI_ACTIVE_SHARE * tip;
            case PASSIVE -> PASSIVE_SHARE * tip;
        };
    }

    /** Level at which the tip's cone is as wide as the taper, mm. */
    private static double shoulderMm(Design design) {
        double rise = tipRise(design);
        double low = 0;
        double high = design.workingPartMm();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (rise * middle < design.diameterMm(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double tipRise(Design design) {
        return 2 * Math.tan(Math.toRadians(Math.min(179.9, design.tip().angleDeg())) / 2);
    }

    private static double wallDiameterMm(Design design, double level) {
        double d = design.diameterMm(level);
        return Math.max(Math.min(LEAST_WALL_MM, d), Math.min(d, tipRise(design) * level));
    }

    private static TreeSet<Double> levels(Design design, double end) {
        TreeSet<Double> levels = new TreeSet<>(List.of(0.0, end, shoulderMm(design)));
        for (int k = 1; k * STEP_MM < end; k++) {
            levels.add(k * STEP_MM);
        }
        design.taper().stream().map(TaperSegment::toMm).forEach(levels::add);
        design.sections().stream().map(SectionStation::levelMm).forEach(levels::add);
        design.flutes().stream().map(FluteStation::levelMm).forEach(levels::add);
        levels.removeIf(level -> level < 0 || level > end);
        return levels;
    }

    /** With the factor n of the turning flutes: {@code f(e) = f0(n e) / n}, f0 that of the straight bar. */
    private static MomentLaw law(Alloy alloy, BladeSections sections, double level, double factor) {
        MomentCurvature bent = Responses.bending(sections.outlineAt(level), alloy.tension());
        double elastic = alloy.youngMpa() * sections.at(level).iMean();
        double[] answer = new double[2];
        return SampledLaw.of(
                (strain, law) -> {
                    double wanted = 2 * strain * factor;
                    double moment = moment(bent, wanted, elastic, answer);
                    law[0] = moment / (2 * elastic * factor);
                    law[1] = strain == 0 ? 1 : 1 / (elastic * answer[1]);
                },
                GREATEST_STRAIN,
                SAMPLES);
    }

    /** The moment over d³ under which a section of unit diameter has a curvature; leaves the slope there in the answer. */
    private static double moment(MomentCurvature bent, double curvature, double elastic, double[] answer) {
        double low = 0;
        double high = elastic * curvature * 1.5 + 1e-9;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            bent.at(middle, answer);
            if (answer[0] < curvature) {
                low = middle;
            } else {
                high = middle;
            }
        }
        bent.at((low + high) / 2, answer);
        return (low + high) / 2;
    }
}
