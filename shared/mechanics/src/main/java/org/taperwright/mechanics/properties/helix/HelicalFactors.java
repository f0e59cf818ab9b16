package org.taperwright.mechanics.properties.helix;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.jspecify.annotations.Nullable;

/**
 * What the stiffness and the peak stress of a straight bar are multiplied by when its section turns along the axis, as
 * functions of {@code t = 2 pi d / pitch}. Even in t, as a left-handed bar is the mirror image of a right-handed one. Known
 * for t up to {@link #LIMIT} and held at their values there beyond, where {@link #covers} says no.
 */
public final class HelicalFactors {
    /** Greatest t that the factors are computed for. */
    public static final double LIMIT = 4;

    private static final double STEP = 0.2;
    /** Between such twists a peak runs straight to 0.1 %. */
    private static final double PEAK_STEP = 0.1;

    /** Table points before t = 0, mirrored, so that the curves leave it level, and beyond the limit. */
    private static final int MORE = 3;

    private final TwistedBar bar;
    private final TwistedBar.Stress straight;
    private final PolynomialSplineFunction bending;
    private final PolynomialSplineFunction torsion;
    private final PolynomialSplineFunction torsionHeld;
    private final PolynomialSplineFunction extension;
    private final PolynomialSplineFunction coupling;
    /** Peak stress at even steps, filled as they are asked for. */
    private final AtomicReferenceArray<@Nullable PeakStressFactors> peaks =
            new AtomicReferenceArray<>((int) Math.round(LIMIT / PEAK_STEP) + 2);

    private HelicalFactors(TwistedBar bar, TwistedBar.Stiffness[] table, TwistedBar.Stress straight) {
        this.bar = bar;
        this.straight = straight;
        TwistedBar.Stiffness none = table[0];
        bending = curve(table, 1, s -> s.bending() / none.bending());
        torsion = curve(table, 1, s -> s.torsion() / none.torsion());
        torsionHeld = curve(table, 1, s -> s.torsionHeld() / none.torsion());
        extension = curve(table, 1, s -> s.extension() / none.extensionUnbent());
        coupling = curve(table, -1, TwistedBar.Stiffness::coupling);
    }

    /** The factors of a bar; nothing where rounding spoils its small systems. */
    static Optional<HelicalFactors> of(TwistedBar bar) {
        TwistedBar.Stiffness[] table = new TwistedBar.Stiffness[(int) Math.round(LIMIT / STEP) + 1 + MORE];
        for (int k = 0; k < table.length; k++) {
            Optional<TwistedBar.Stiffness> stiffness = bar.stiffness(k * STEP);
            if (stiffness.isEmpty() || !sound(stiffness.get())) {
                return Optional.empty();
            }
            table[k] = stiffness.get();
        }
        return bar.stress(0).map(straight -> new HelicalFactors(bar, table, straight));
    }

    private static boolean sound(TwistedBar.Stiffness s) {
        return s.bending() > 0 && s.torsion() > 0 && s.extension() > 0 && Double.isFinite(s.coupling());
    }

    private static PolynomialSplineFunction curve(
            TwistedBar.Stiffness[] table, double mirror, ToDoubleFunction<TwistedBar.Stiffness> value) {
        double[] t = new double[table.length + MORE];
        double[] v = new double[t.length];
        for (int k = 0; k < t.length; k++) {
            int at = k - MORE;
            t[k] = at * STEP;
            v[k] = value.applyAsDouble(table[Math.abs(at)]) * (at < 0 ? mirror : 1);
        }
        return new SplineInterpolator().interpolate(t, v);
    }

    private static double within(double t) {
        return Math.min(Math.abs(t), LIMIT);
    }

    /** Whether t is within the range that the factors are computed for. */
    public static boolean covers(double t) {
        return Math.abs(t) <= LIMIT;
    }

    /** Factor on the bending stiffness, E times the harmonic mean of the principal second moments. */
    public double bending(double t) {
        return bending.value(within(t));
    }

    /** Factor on the torsional stiffness G J at no axial force. */
    public double torsion(double t) {
        return torsion.value(within(t));
    }

    /** Factor on the torsional stiffness G J at held length. */
    public double torsionHeld(double t) {
        return torsionHeld.value(within(t));
    }

    /**
     * Factor on the stiffness E A against extension with the ends kept from turning; below one even at little twist where
     * the centroid is off the axis, because a helix straightens.
     */
    public double extension(double t) {
        return extension.value(within(t));
    }

    /** Torque per extension with the ends kept from turning, over E d^3; odd in t. */
    public double coupling(double t) {
        return Math.signum(t) * coupling.value(within(t));
    }

    /** Factors on the peak stress, straight between even steps of t that are kept. */
    public PeakStressFactors peakStressNear(double t) {
        double place = within(t) / PEAK_STEP;
        int below = (int) place;
        double share = place - below;
        PeakStressFactors low = peakAtStep(below);
        return share == 0 ? low : low.towards(peakAtStep(below + 1), share);
    }

    private PeakStressFactors peakAtStep(int step) {
        PeakStressFactors peak = peaks.get(step);
        if (peak == null) {
            peak = peakStress(step * PEAK_STEP);
            peaks.set(step, peak);
        }
        return peak;
    }

    /** Factors on the peak stress, computed anew. */
    public PeakStressFactors peakStress(double t) {
        return bar.stress(within(t))
                .map(stress -> new PeakStressFactors(
                        stress.bendingAxial() / straight.bendingAxial(),
                        stress.bendingVonMises() / straight.bendingVonMises(),
                        stress.torsionShear() / straight.torsionShear()))
                .orElse(PeakStressFactors.STRAIGHT);
    }
}
