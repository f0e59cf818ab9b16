package org.taperwright.mechanics.bench;

import java.util.List;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.SectionProperties;

/**
 * The twisting test: the tip's last 3 mm held, the instrument turned where its handle begins.
 *
 * <pre>twist per torque = integral of 1 / (G J d^4)
 * first yield      = least of  k d^3 / c      over the free levels
 * fully plastic    = least of  k d^3 t_p      over the free levels</pre>
 *
 * with the shear yield k by von Mises, the section's peak-shear factor c and its sand-heap factor t_p. Validity: no
 * hardening and no warping restraint; of a superelastic alloy the yield is the start of its plateau, so the fully plastic
 * torque is where the plateau has run through the section, below its strength. Source of the idea: ISO 3630-1; of the
 * formulas: Saint-Venant, Nadai.
 */
public final class TwistingTest {
    /** Length held at the tip, mm. */
    public static final double HELD_MM = 3;

    private TwistingTest() {}

    /** Twists a design. */
    public static TwistingResult run(Design design, Alloy alloy, BladeSections sections) {
        BladeCompliance compliance = new BladeCompliance(design, alloy, sections);
        RodGrid grid = RodGrid.between(design, HELD_MM, Math.max(design.lengthMm(), design.workingPartMm()));
        double twist = twistPerTorque(grid, compliance.twisting(grid));
        double yield = Double.POSITIVE_INFINITY;
        double plastic = Double.POSITIVE_INFINITY;
        double weakest = HELD_MM;
        for (int node = 0; node < grid.nodes(); node++) {
            double level = grid.levelMm(node);
            SectionProperties section = compliance.section(level);
            double strength = alloy.shearYieldMpa() * Math.pow(design.diameterMm(level), 3);
            yield = Math.min(yield, strength / section.peakShear());
            if (strength * section.plasticTorque() < plastic) {
                plastic = strength * section.plasticTorque();
                weakest = Math.round(level * 1e6) / 1e6;
            }
        }
        return new TwistingResult(
                twist, yield, plastic, weakest, curve(twist, yield, plastic), StandardLimits.leastTorque(design));
    }

    /** Elastic twist between two levels per torque, rad per N mm. */
    public static double twistRadPerNmm(
            Design design, Alloy alloy, BladeSections sections, double fromMm, double toMm) {
        RodGrid grid = RodGrid.between(design, fromMm, toMm);
        return twistPerTorque(grid, new BladeCompliance(design, alloy, sections).twisting(grid));
    }

    /** Simpson's rule on the grid's steps. */
    private static double twistPerTorque(RodGrid grid, double[] compliance) {
        double twist = 0;
        for (int step = 0; step < grid.steps(); step++) {
            int node = 3 * step;
            twist += grid.lengthMm(step) / 6 * (compliance[node] + 4 * compliance[node + 1] + compliance[node + 2]);
        }
        return twist;
    }

    /** Elastic up to the fully plastic torque, then level, to one and a half times that angle. */
    private static List<CurvePoint> curve(double twist, double yield, double plastic) {
        double yieldDeg = Math.toDegrees(twist * yield);
        double plasticDeg = Math.toDegrees(twist * plastic);
        return List.of(
                new CurvePoint(0, 0),
                new CurvePoint(yieldDeg, yield),
                new CurvePoint(plasticDeg, plastic),
                new CurvePoint(1.5 * plasticDeg, plastic));
    }
}
