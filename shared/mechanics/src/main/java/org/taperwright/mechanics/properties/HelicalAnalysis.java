package org.taperwright.mechanics.properties;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.properties.contour.PlainOutline;
import org.taperwright.mechanics.properties.helix.TwistedBar;
import org.taperwright.mechanics.properties.mesh.MeshFineness;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.section.Outline;

/**
 * Helical factors of a section as functions of the twist {@code t = 2 pi d / pitch}, by the exact helically symmetric
 * formulation of a uniformly twisted bar. Stiffness is tabled from 0 to {@link #MOST_TWIST} and held beyond; the factors
 * are even in t, as a left-handed bar is the mirror image of a right-handed one. Accuracy 0.1 % up to t = 2, 0.5 % up to
 * t = 4. An outline of more than sixty corners is made plain first: a jagged line loses nothing by that, dozens of fins
 * do. The last few results are kept by outline and Poisson's ratio.
 */
public final class HelicalAnalysis {
    /** Twist up to which the factors are computed; beyond it they stay. */
    public static final double MOST_TWIST = 5;

    private static final int KEPT = 64;
    private static final double STEP = 0.2;
    /** Table points before t = 0, mirrored, so that the curves leave it level. */
    private static final int MIRRORED = 3;

    private static final int MOST_CORNERS = 60;
    private static final double[] FINER = {1, 0.7, 0.5};
    private static final BoundedCache<Bar, HelicalAnalysis> CACHE = new BoundedCache<>(KEPT);

    private record Bar(Outline outline, double poisson) {}

    private final TwistedBar bar;
    private final TwistedBar.Stress straight;
    private final PolynomialSplineFunction bending;
    private final PolynomialSplineFunction torsion;
    private final PolynomialSplineFunction torsionHeld;
    private final PolynomialSplineFunction extension;
    private final PolynomialSplineFunction coupling;

    private HelicalAnalysis(TwistedBar bar, TwistedBar.Stiffness[] table, TwistedBar.Stress straight) {
        this.bar = bar;
        this.straight = straight;
        TwistedBar.Stiffness none = table[0];
        bending = even(table, s -> s.bending() / none.bending());
        torsion = even(table, s -> s.torsion() / none.torsion());
        torsionHeld = even(table, s -> s.torsionHeld() / none.torsion());
        extension = even(table, s -> s.extension() / none.extensionUnbent());
        coupling = curve(table, TwistedBar.Stiffness::coupling, -1);
    }

    /**
     * The analysis of an outline.
     *
     * @throws IllegalArgumentException for an outline that {@link SectionAnalysis#fault} finds something impossible in
     */
    public static HelicalAnalysis of(Outline outline, double poisson) {
        return CACHE.get(new Bar(outline, poisson), HelicalAnalysis::analyse);
    }

    private static HelicalAnalysis analyse(Bar bar) {
        Contour contour = PlainOutline.of(Contour.of(bar.outline), MOST_CORNERS);
        Optional<HelicalAnalysis> found = Optional.empty();
        for (double factor : FINER) {
            found = found.or(() -> on(contour, factor, true, bar.poisson));
        }
        return found.or(() -> on(contour, FINER[1], false, bar.poisson))
                .orElseThrow(() -> new IllegalArgumentException(
                        "section: the outline crosses or touches itself; a simple outline is needed"));
    }

    private static Optional<HelicalAnalysis> on(Contour contour, double factor, boolean bent, double poisson) {
        return SectionMesh.of(contour, MeshFineness.HELIX.times(factor), bent)
                .flatMap(mesh -> TwistedBar.on(mesh, poisson))
                .flatMap(HelicalAnalysis::tabled);
    }

    private static Optional<HelicalAnalysis> tabled(TwistedBar bar) {
        TwistedBar.Stiffness[] table = new TwistedBar.Stiffness[(int) Math.round(MOST_TWIST / STEP) + 1];
        for (int k = 0; k < table.length; k++) {
            Optional<TwistedBar.Stiffness> stiffness = bar.stiffness(k * STEP);
            if (stiffness.isEmpty() || !sound(stiffness.get())) {
                return Optional.empty();
            }
            table[k] = stiffness.get();
        }
        return bar.stress(0).map(straight -> new HelicalAnalysis(bar, table, straight));
    }

    private static boolean sound(TwistedBar.Stiffness s) {
        return s.bending() > 0 && s.torsion() > 0 && s.extension() > 0 && Double.isFinite(s.coupling());
    }

    private static PolynomialSplineFunction even(
            TwistedBar.Stiffness[] table, ToDoubleFunction<TwistedBar.Stiffness> value) {
        return curve(table, value, 1);
    }

    private static PolynomialSplineFunction curve(
            TwistedBar.Stiffness[] table, ToDoubleFunction<TwistedBar.Stiffness> value, double mirror) {
        double[] t = new double[table.length + MIRRORED];
        double[] v = new double[t.length];
        for (int k = 0; k < t.length; k++) {
            int at = k - MIRRORED;
            t[k] = at * STEP;
            v[k] = value.applyAsDouble(table[Math.abs(at)]) * (at < 0 ? mirror : 1);
        }
        return new SplineInterpolator().interpolate(t, v);
    }

    /** The stiffness factors at a twist. */
    public HelicalFactors at(double twist) {
        double t = Math.min(Math.abs(twist), MOST_TWIST);
        return new HelicalFactors(
                bending.value(t),
                torsion.value(t),
                torsionHeld.value(t),
                extension.value(t),
                Math.signum(twist) * coupling.value(t));
    }

    /** The peak-stress factors at a twist, computed anew. */
    public PeakStressFactors peakStressAt(double twist) {
        return bar.stress(Math.min(Math.abs(twist), MOST_TWIST))
                .map(stress -> new PeakStressFactors(
                        stress.bendingAxial() / straight.bendingAxial(),
                        stress.bendingVonMises() / straight.bendingVonMises(),
                        stress.torsionShear() / straight.torsionShear()))
                .orElse(PeakStressFactors.STRAIGHT);
    }
}
