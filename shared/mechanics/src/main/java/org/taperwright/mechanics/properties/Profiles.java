package org.taperwright.mechanics.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;

/**
 * The blade along its length: a section's unit numbers scaled by the diameter there (areas by d^2, I and J by d^4,
 * plastic torque by d^3), the stiffness with the turning of the flutes counted.
 */
public final class Profiles {
    private static final double STEP_MM = 0.25;

    private Profiles() {}

    /** The profile from the tip to the end of the working part, at even steps and wherever something changes. */
    public static BladeProfile of(Design design, Alloy alloy, BladeSections sections) {
        List<ProfilePoint> points = new ArrayList<>();
        BladeStiffness stiffness = new BladeStiffness(design, sections, alloy.poisson());
        for (double level : levels(design)) {
            points.add(point(design, alloy, sections, stiffness, level));
        }
        return new BladeProfile(points);
    }

    private static ProfilePoint point(
            Design design, Alloy alloy, BladeSections sections, BladeStiffness stiffness, double level) {
        SectionProperties section = sections.at(level);
        double d = design.diameterMm(level);
        double square = d * d;
        double fourth = square * square;
        return new ProfilePoint(
                level,
                d,
                section.area() * square,
                alloy.youngMpa() * stiffness.bending(level) * fourth,
                alloy.shearModulusMpa() * stiffness.torsion(level) * fourth,
                alloy.shearYieldMpa() * section.plasticTorque() * square * d,
                section.core() * d,
                section.chipSpace() * square,
                Math.toDegrees(sections.helixAngle(level)));
    }

    private static TreeSet<Double> levels(Design design) {
        double end = design.workingPartMm();
        TreeSet<Double> levels = new TreeSet<>();
        int steps = (int) Math.ceil(end / STEP_MM - 1e-9);
        for (int k = 0; k <= steps; k++) {
            levels.add(Math.min(end, k * STEP_MM));
        }
        design.taper().stream().map(TaperSegment::toMm).forEach(levels::add);
        design.sections().stream().map(SectionStation::levelMm).forEach(levels::add);
        design.flutes().stream().map(FluteStation::levelMm).forEach(levels::add);
        levels.removeIf(level -> level < 0 || level > end);
        return levels;
    }
}
