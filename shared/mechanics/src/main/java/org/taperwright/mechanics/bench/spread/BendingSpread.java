package org.taperwright.mechanics.bench.spread;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.uncertainty.Sensitivity;
import org.taperwright.mechanics.work.BoundedCache;

/**
 * The bending test at 45 degrees with the alloy's modulus, its yield or plateau and all constants of its law drawn within
 * their bands.
 *
 * @param momentNmm moment at the clamp, N mm
 * @param forceN force, N
 * @param endSlopeDeg slope at the loaded point, degrees
 * @param greatestStrain greatest strain of any fibre
 * @param strainLevelMm where that is, mm from the tip
 * @param setDeg angle of the chord that stays when the load is taken away, degrees; 0 of alloys that spring back
 * @param curve moment against the chord's angle
 */
public record BendingSpread(
        Sampled momentNmm,
        Sampled forceN,
        Sampled endSlopeDeg,
        Sampled greatestStrain,
        Sampled strainLevelMm,
        Sampled setDeg,
        List<CurveBand> curve) {
    private static final BoundedCache<Bent, BendingSpread> KNOWN = new BoundedCache<>(16);
    private static final int FIRST_OF_CURVE = 6;

    public BendingSpread {
        curve = List.copyOf(curve);
    }

    private record Bent(Design design, Alloy alloy) {}

    /** The spread of a test that has been run. */
    public static BendingSpread of(Design design, Alloy alloy, BendingResult result) {
        return KNOWN.get(new Bent(design, alloy), bent -> around(bent, result));
    }

    private static BendingSpread around(Bent bent, BendingResult result) {
        BladeSections sections = BladeSections.of(bent.design());
        Sensitivity surface = Sensitivity.of(
                AlloyConstant.drawn(bent.alloy()),
                numbers(result),
                values -> test(bent.design(), AlloyConstant.with(bent.alloy(), values), sections));
        return new BendingSpread(
                surface.byRatio(0),
                surface.byRatio(1),
                surface.byRatio(2),
                surface.byRatio(3),
                surface.byDifference(4),
                surface.byDifference(5),
                CurveBand.along(result.curve(), i -> surface.byRatio(FIRST_OF_CURVE + i)));
    }

    private static Optional<double[]> test(Design design, Alloy alloy, BladeSections sections) {
        try {
            return Optional.of(numbers(BendingTest.runOrGiveUp(design, alloy, sections)));
        } catch (Unsolved unsolved) {
            return Optional.empty();
        }
    }

    private static double[] numbers(BendingResult result) {
        return DoubleStream.concat(
                        DoubleStream.of(
                                result.momentNmm(),
                                result.forceN(),
                                result.endSlopeDeg(),
                                result.greatestStrain(),
                                result.strainLevelMm(),
                                result.setDeg().orElse(0)),
                        result.curve().stream().mapToDouble(CurvePoint::momentNmm))
                .toArray();
    }
}
