package org.taperwright.mechanics.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.SectionProperties;

/**
 * The twisting test: the tip's last 3 mm held, the instrument turned where its handle begins, up to fracture.
 *
 * <pre>twist per torque = integral of 1 / (G J d^4)
 * first yield      = least of  k d^3 / c      over the free levels
 * fully plastic    = least of  k d^3 t_p      over the free levels
 * fracture         = least of  d^3 t_f        over the free levels
 * angle            = integral of  theta(T / d^3) / d</pre>
 *
 * with the shear yield k by von Mises, the section's peak-shear factor c (times that of the flutes' turning) and its sand-heap factor t_p, and the torque-twist
 * of each level by the alloy's shear curve, up to the torque t_f at which its most strained fibre breaks
 * ({@link org.taperwright.mechanics.bench.response.TorqueTwist}). Validity: no warping restraint, no buckling; twisting
 * with the turning sense of the flutes and against it are not told apart. Source of the idea: ISO 3630-1; of the formulas:
 * Saint-Venant, Nadai.
 */
public final class TwistingTest {
    /** Length held at the tip, mm. */
    public static final double HELD_MM = 3;

    private static final int CURVE_POINTS = 24;

    private TwistingTest() {}

    /** Twists a design to fracture. */
    public static TwistingResult run(Design design, Alloy alloy, BladeSections sections) {
        BladeTwist blade = BladeTwist.of(design, alloy, sections, HELD_MM, handleMm(design));
        double yield = Double.POSITIVE_INFINITY;
        double plastic = Double.POSITIVE_INFINITY;
        for (int node = 0; node < blade.nodes(); node++) {
            SectionProperties section = blade.section(node);
            double strength = alloy.shearYieldMpa() * Math.pow(blade.diameterMm(node), 3);
            yield = Math.min(yield, strength / blade.peakShear(node));
            plastic = Math.min(plastic, strength * section.plasticTorque());
        }
        int weakest = blade.weakestNode();
        double fracture = blade.fractureTorqueNmm(weakest);
        return new TwistingResult(
                blade.elasticTwistRadPerNmm(),
                yield,
                plastic,
                fracture,
                Math.toDegrees(blade.angle(fracture)),
                Math.round(blade.levelMm(weakest) * 1e6) / 1e6,
                curve(blade, fracture),
                StandardLimits.leastTorque(design));
    }

    /** Torque at fracture when the blade is bound up to a level: that of the weakest place from there on, N mm. */
    public static double strengthNmm(Design design, Alloy alloy, BladeSections sections, double boundMm) {
        BladeTwist blade = BladeTwist.of(design, alloy, sections, boundMm, handleMm(design));
        return blade.fractureTorqueNmm(blade.weakestNode());
    }

    /** The torques at angles in degrees, N mm; beyond the angle at fracture, the torque at fracture. */
    public static double[] torquesNmm(Design design, Alloy alloy, BladeSections sections, double... anglesDeg) {
        BladeTwist blade = BladeTwist.of(design, alloy, sections, HELD_MM, handleMm(design));
        double fracture = blade.fractureTorqueNmm(blade.weakestNode());
        return Arrays.stream(anglesDeg)
                .map(angle -> blade.torqueNmm(Math.toRadians(angle), fracture))
                .toArray();
    }

    /** Elastic twist between two levels per torque, rad per N mm. */
    public static double twistRadPerNmm(
            Design design, Alloy alloy, BladeSections sections, double fromMm, double toMm) {
        return BladeTwist.of(design, alloy, sections, fromMm, toMm).elasticTwistRadPerNmm();
    }

    private static double handleMm(Design design) {
        return Math.max(design.lengthMm(), design.workingPartMm());
    }

    private static List<CurvePoint> curve(BladeTwist blade, double fracture) {
        List<CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i <= CURVE_POINTS; i++) {
            // closer together where the angle runs away
            double left = 1 - (double) i / CURVE_POINTS;
            double torque = fracture * (1 - left * left);
            curve.add(new CurvePoint(Math.toDegrees(blade.angle(torque)), torque));
        }
        return curve;
    }
}
