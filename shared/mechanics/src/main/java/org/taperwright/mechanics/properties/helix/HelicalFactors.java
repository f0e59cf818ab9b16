package org.taperwright.mechanics.properties.helix;

/**
 * What the stiffness of a straight bar is multiplied by when its section turns along the axis, as a function of
 * {@code t = 2 pi d / pitch}. Bending: on E times the harmonic mean of the principal second moments. Torsion: on G J at no
 * axial force. Even in t; both are one at t = 0. Computed for t up to {@link #LIMIT} and held at their value there beyond,
 * where {@link #covers} says no.
 */
public final class HelicalFactors {
    /** Greatest t that the factors are computed for. */
    public static final double LIMIT = 4;

    /** Of the place {@code t^2 / (t^2 + 4)} that the factors are polynomials in. */
    private static final double SOFT = 4;

    private final double[] places;
    private final double[] weights;
    private final double[] bending;
    private final double[] torsion;

    HelicalFactors(double[] twists, double[] bending, double[] torsion) {
        places = new double[twists.length];
        weights = new double[twists.length];
        for (int i = 0; i < twists.length; i++) {
            places[i] = place(twists[i]);
        }
        for (int i = 0; i < twists.length; i++) {
            double product = 1;
            for (int k = 0; k < twists.length; k++) {
                product *= k == i ? 1 : places[i] - places[k];
            }
            weights[i] = 1 / product;
        }
        this.bending = bending.clone();
        this.torsion = torsion.clone();
    }

    /** Twists at which to compute: Chebyshev's points of the place, both ends among them. */
    static double[] twists(int count) {
        double[] twists = new double[count];
        for (int i = 0; i < count; i++) {
            double place = place(LIMIT) * (1 - Math.cos(Math.PI * i / (count - 1))) / 2;
            twists[i] = Math.sqrt(SOFT * place / (1 - place));
        }
        return twists;
    }

    private static double place(double t) {
        return t * t / (t * t + SOFT);
    }

    /** Factor on the bending stiffness. */
    public double bending(double t) {
        return value(bending, t);
    }

    /** Factor on the torsional stiffness at no axial force. */
    public double torsion(double t) {
        return value(torsion, t);
    }

    /** Whether t is within the range that the factors are computed for. */
    public boolean covers(double t) {
        return Math.abs(t) <= LIMIT;
    }

    private double value(double[] values, double t) {
        double place = place(Math.min(LIMIT, Math.abs(t)));
        double above = 0;
        double below = 0;
        for (int i = 0; i < places.length; i++) {
            double apart = place - places[i];
            if (apart == 0) {
                return values[i];
            }
            above += weights[i] / apart * values[i];
            below += weights[i] / apart;
        }
        return above / below;
    }
}
