package org.taperwright.mechanics.properties.contour;

/**
 * Fully plastic bending moments of a section over all directions of the neutral axis, which halves the area:
 * {@code M_p = Y int |z - c| dA}. The moments of the half above the axis are exact line integrals whose integrand
 * vanishes on the axis itself; the extremes are the zeros of {@code dM_p/dtheta = A u_0 - 2 int_above u dA}.
 *
 * @param least smallest {@code M_p / (Y d^3)}
 * @param most largest {@code M_p / (Y d^3)}
 */
public record PlasticMoments(double least, double most) {
    private static final int DIRECTIONS = 90;

    private static final int MOST_STEPS = 40;

    /** The plastic moments of a contour. */
    public static PlasticMoments of(Contour contour, AreaMoments moments) {
        double[] value = new double[DIRECTIONS + 1];
        double[] slope = new double[DIRECTIONS + 1];
        HalfSection half = new HalfSection(contour, moments);
        double step = Math.PI / DIRECTIONS;
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int k = 0; k <= DIRECTIONS; k++) {
            half.balance(k * step);
            value[k] = half.plasticMoment();
            slope[k] = half.slope();
            least = Math.min(least, value[k]);
            most = Math.max(most, value[k]);
        }
        double margin = 0.02 * (most - least) + 1e-6 * most;
        double coarseLeast = least + margin;
        double coarseMost = most - margin;
        for (int k = 0; k < DIRECTIONS; k++) {
            boolean dips = slope[k] < 0 && slope[k + 1] > 0 && Math.min(value[k], value[k + 1]) < coarseLeast;
            boolean peaks = slope[k] > 0 && slope[k + 1] < 0 && Math.max(value[k], value[k + 1]) > coarseMost;
            if (dips || peaks) {
                PlasticMoments between = between(half, k * step, (k + 1) * step, slope[k], slope[k + 1]);
                least = Math.min(least, between.least);
                most = Math.max(most, between.most);
            }
        }
        return new PlasticMoments(least, most);
    }

    /** The least and greatest moment met on the way to a zero of the slope between two directions. */
    private static PlasticMoments between(HalfSection half, double from, double to, double slopeFrom, double slopeTo) {
        double a = from;
        double b = to;
        double fa = slopeFrom;
        double fb = slopeTo;
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int k = 0; k < MOST_STEPS && b - a > 1e-7; k++) {
            // false position, halved in turn with bisection so that both ends close in
            double c = k % 3 == 2 ? (a + b) / 2 : a + (b - a) * fa / (fa - fb);
            half.balance(c);
            least = Math.min(least, half.plasticMoment());
            most = Math.max(most, half.plasticMoment());
            double fc = half.slope();
            if (fc == 0) {
                break;
            }
            if (fc > 0 == fa > 0) {
                a = c;
                fa = fc;
            } else {
                b = c;
                fb = fc;
            }
        }
        return new PlasticMoments(least, most);
    }
}
