package org.taperwright.mechanics.bench.spread;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.uncertainty.Sensitivity;
import org.taperwright.mechanics.work.BoundedCache;

/**
 * The twisting test with the alloy's modulus, its yield or plateau and all constants of its law drawn within their bands.
 * First yield and fully plastic torque are proportional to the yield, so their samples are exact.
 *
 * @param yieldTorqueNmm torque at first yield, N mm
 * @param plasticTorqueNmm fully plastic torque, N mm
 * @param fractureTorqueNmm torque at fracture, N mm
 * @param fractureAngleDeg angle turned then, degrees
 * @param weakestLevelMm where it breaks, mm from the tip
 * @param curve torque against angle; where a sample has broken before, with the torque it broke at
 */
public record TwistingSpread(
        Sampled yieldTorqueNmm,
        Sampled plasticTorqueNmm,
        Sampled fractureTorqueNmm,
        Sampled fractureAngleDeg,
        Sampled weakestLevelMm,
        List<CurveBand> curve) {
    private static final BoundedCache<Twisted, TwistingSpread> KNOWN = new BoundedCache<>(16);
    private static final int FIRST_OF_CURVE = 5;

    public TwistingSpread {
        curve = List.copyOf(curve);
    }

    private record Twisted(Design design, Alloy alloy) {}

    /** The spread of a test that has been run. */
    public static TwistingSpread of(Design design, Alloy alloy, TwistingResult result) {
        return KNOWN.get(new Twisted(design, alloy), twisted -> around(twisted, result));
    }

    /** The samples of another torque that is proportional to the yield as the fully plastic torque is. */
    public Sampled likePlastic(double torqueNmm) {
        double plastic = plasticTorqueNmm.value();
        return plasticTorqueNmm.map(sample -> torqueNmm * sample / plastic);
    }

    private static TwistingSpread around(Twisted twisted, TwistingResult result) {
        BladeSections sections = BladeSections.of(twisted.design());
        Sensitivity surface = Sensitivity.of(
                AlloyConstant.drawn(twisted.alloy()),
                numbers(result, result),
                values -> Optional.of(numbers(
                        TwistingTest.run(twisted.design(), AlloyConstant.with(twisted.alloy(), values), sections),
                        result)));
        return new TwistingSpread(
                surface.byDifference(0),
                surface.byDifference(1),
                surface.byRatio(2),
                surface.byRatio(3),
                surface.byDifference(4),
                CurveBand.along(result.curve(), i -> surface.byRatio(FIRST_OF_CURVE + i)));
    }

    private static double[] numbers(TwistingResult result, TwistingResult angles) {
        return DoubleStream.concat(
                        DoubleStream.of(
                                result.yieldTorqueNmm(),
                                result.plasticTorqueNmm(),
                                result.fractureTorqueNmm(),
                                result.fractureAngleDeg(),
                                result.weakestLevelMm()),
                        angles.curve().stream().mapToDouble(point -> torqueAt(result.curve(), point.angleDeg())))
                .toArray();
    }

    /** Torque at an angle by straight lines between the curve's points; beyond its end that of fracture. */
    private static double torqueAt(List<CurvePoint> curve, double angleDeg) {
        for (int i = 1; i < curve.size(); i++) {
            CurvePoint from = curve.get(i - 1);
            CurvePoint to = curve.get(i);
            if (angleDeg <= to.angleDeg()) {
                double share = (angleDeg - from.angleDeg()) / (to.angleDeg() - from.angleDeg());
                return from.momentNmm() + share * (to.momentNmm() - from.momentNmm());
            }
        }
        return curve.get(curve.size() - 1).momentNmm();
    }
}
