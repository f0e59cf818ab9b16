package org.taperwright.mechanics.bench.response;

import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.alloy.StressCurve.Branch;
import org.taperwright.mechanics.section.Outline;

/**
 * Bending of a section of unit diameter about one direction of the neutral axis by a stress-strain curve of straight
 * stretches: plane sections stay plane, {@code eps = kappa (eta - eta0)}, and the neutral axis eta0 is where the normal
 * force vanishes. Every stretch of the curve adds the integrals beyond a height, which {@link Slabs} holds; nothing is
 * summed over fibres. An instance holds its last answer, so it is not for use by two threads at once.
 */
public final class FibreBending {
    private static final int STEPS = 60;

    private final Slabs slabs;
    private final StressCurve curve;
    private final double[] beyond = new double[Slabs.COUNT];
    /** Integrals of the tangent modulus with 1, eta, eta^2, xi, xi eta. */
    private final double[] tangent = new double[Slabs.COUNT];

    private double force;
    private double along;
    private double across;
    private double neutral;

    FibreBending(Slabs slabs, StressCurve curve) {
        this.slabs = slabs;
        this.curve = curve;
        this.neutral = slabs.whole(Slabs.FIRST) / slabs.whole(Slabs.AREA);
    }

    /** The bending of a section about an axis at an angle from x, rad. */
    public static FibreBending of(Outline outline, double axis, StressCurve curve) {
        return new FibreBending(Slabs.of(outline, axis), curve);
    }

    /** Bends the section to a curvature (kappa d); the neutral axis starts from where it was last. */
    public void bend(double curvature) {
        double low = slabs.bottom();
        double high = slabs.top();
        double scale = curve.youngMpa() * curvature * slabs.whole(Slabs.AREA);
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < STEPS; i++) {
            sum(curvature);
            if (force > 0) {
                low = neutral;
            } else {
                high = neutral;
            }
            if (Math.abs(force) <= 1e-13 * scale || Math.abs(neutral - last) < 1e-15) {
                return;
            }
            last = neutral;
            double newton = neutral + force / (curvature * tangent[Slabs.AREA]);
            neutral = newton > low && newton < high ? newton : (low + high) / 2;
        }
    }

    private void sum(double curvature) {
        double young = curve.youngMpa();
        for (int k = 0; k < Slabs.COUNT; k++) {
            tangent[k] = young * slabs.whole(k);
        }
        double offsetForce = 0;
        double offsetAlong = 0;
        double offsetAcross = 0;
        Branch tension = curve.tension();
        for (int k = 0; k < tension.count(); k++) {
            double change = tension.change(k, young);
            slabs.beyond(neutral + tension.strain(k) / curvature, beyond);
            for (int i = 0; i < Slabs.COUNT; i++) {
                tangent[i] += change * beyond[i];
            }
            offsetForce -= change * tension.strain(k) * beyond[Slabs.AREA];
            offsetAlong -= change * tension.strain(k) * beyond[Slabs.FIRST];
            offsetAcross -= change * tension.strain(k) * beyond[Slabs.ACROSS];
        }
        Branch compression = curve.compression();
        for (int k = 0; k < compression.count(); k++) {
            double change = compression.change(k, young);
            slabs.beyond(neutral - compression.strain(k) / curvature, beyond);
            for (int i = 0; i < Slabs.COUNT; i++) {
                beyond[i] = slabs.whole(i) - beyond[i];
                tangent[i] += change * beyond[i];
            }
            offsetForce += change * compression.strain(k) * beyond[Slabs.AREA];
            offsetAlong += change * compression.strain(k) * beyond[Slabs.FIRST];
            offsetAcross += change * compression.strain(k) * beyond[Slabs.ACROSS];
        }
        force = curvature * (tangent[Slabs.FIRST] - neutral * tangent[Slabs.AREA]) + offsetForce;
        along = curvature * (tangent[Slabs.SECOND] - neutral * tangent[Slabs.FIRST]) + offsetAlong;
        across = curvature * (tangent[Slabs.PRODUCT] - neutral * tangent[Slabs.ACROSS]) + offsetAcross;
    }

    /** Moment about the direction of the neutral axis, over d^3, MPa. */
    public double momentAlong() {
        return along;
    }

    /** Moment about the direction across it, over d^3, MPa; not zero where that direction is none of symmetry. */
    public double momentAcross() {
        return across;
    }

    /** Derivative of the moment along by the curvature, while the normal force stays zero. */
    double stiffnessAlong() {
        return tangent[Slabs.SECOND] - tangent[Slabs.FIRST] * tangent[Slabs.FIRST] / tangent[Slabs.AREA];
    }

    /** Derivative of the moment across by the curvature, while the normal force stays zero. */
    double stiffnessAcross() {
        return tangent[Slabs.PRODUCT] - tangent[Slabs.ACROSS] * tangent[Slabs.FIRST] / tangent[Slabs.AREA];
    }

    /** Height of the neutral axis over the instrument's axis, in diameters. */
    public double neutralAxis() {
        return neutral;
    }

    /** Greatest strain in tension at a curvature (kappa d). */
    public double greatestTension(double curvature) {
        return curvature * (slabs.top() - neutral);
    }

    /** Greatest strain in compression at a curvature (kappa d), taken positive. */
    public double greatestCompression(double curvature) {
        return curvature * (neutral - slabs.bottom());
    }
}
