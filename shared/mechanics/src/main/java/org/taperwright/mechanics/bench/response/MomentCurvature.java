package org.taperwright.mechanics.bench.response;

import org.taperwright.mechanics.alloy.StressCurve;

/**
 * Moment against curvature of a section of unit diameter, averaged over a turn of the flutes: under a moment of one size
 * and direction, the curvature in the moment's direction, averaged over all directions of the section,
 *
 * <pre>k(m) = 1/(2 pi) * int kappa cos(phi - psi) d phi</pre>
 *
 * with the direction phi of the moment and psi of the neutral axis. In the elastic range that is the moment over E times
 * the harmonic mean of the principal second moments. For a diameter d: {@code kappa = k(M / d^3) / d}. Beyond the last
 * point the curve goes on straight.
 */
public final class MomentCurvature {
    private static final int POINTS = 48;
    /** Greatest curvature of the table, kappa d. */
    private static final double GREATEST = 1.5;

    private final MonotoneCurve curvature;
    private final double[] level;
    private final double[] strainPerCurvature;

    private MomentCurvature(MonotoneCurve curvature, double[] level, double[] strainPerCurvature) {
        this.curvature = curvature;
        this.level = level;
        this.strainPerCurvature = strainPerCurvature;
    }

    /** Bends a section in all its directions by a stress-strain curve. */
    public static MomentCurvature of(SectionSlabs section, StressCurve curve) {
        double[] k = curvatures(curve);
        Direction[] directions = new Direction[section.count()];
        double[] level = new double[k.length];
        for (int j = 0; j < directions.length; j++) {
            directions[j] = Direction.of(section.slabs(j), section.lag(j), curve, k);
            for (int i = 0; i < k.length; i++) {
                level[i] += directions[j].moment[i] / directions.length;
            }
        }
        return averaged(directions, level);
    }

    /** From nothing through the elastic range, then by a constant ratio. */
    private static double[] curvatures(StressCurve curve) {
        double first = Math.min(firstBreak(curve.tension()), firstBreak(curve.compression()));
        double start = Math.min(1.6 * first, GREATEST / 2);
        double ratio = Math.pow(GREATEST / start, 1.0 / (POINTS - 2));
        double[] k = new double[POINTS];
        for (int i = 1; i < POINTS; i++) {
            k[i] = start * Math.pow(ratio, i - 1);
        }
        return k;
    }

    private static double firstBreak(StressCurve.Branch branch) {
        return branch.count() == 0 ? Double.POSITIVE_INFINITY : branch.strain(0);
    }

    private static MomentCurvature averaged(Direction[] directions, double[] level) {
        int n = directions.length;
        double[] mean = new double[level.length];
        double[] slope = new double[level.length];
        double[] strain = new double[level.length];
        double[] drift = new double[n];
        double[] along = new double[n];
        double[] rate = new double[n];
        double[] answer = new double[2];
        for (int i = 1; i < level.length; i++) {
            for (int j = 0; j < n; j++) {
                directions[j].curvature.at(level[i], answer);
                drift[j] = directions[j].drift(level[i]);
                double towards = Math.cos(drift[j] - directions[j].lag);
                along[j] = answer[0] * towards;
                rate[j] = answer[1] * towards;
                strain[i] = Math.max(strain[i], answer[0] * directions[j].strain(level[i]));
            }
            for (int j = 0; j < n; j++) {
                double weight = (1 + slope(drift, j)) / n;
                mean[i] += along[j] * weight;
                slope[i] += rate[j] * weight;
            }
            strain[i] /= mean[i];
        }
        strain[0] = strain[1];
        slope[0] = slope[1];
        return new MomentCurvature(MonotoneCurve.through(level, mean, slope), level, strain);
    }

    /** Derivative of a periodic function given at an odd number of even places, exact for its Fourier series. */
    private static double slope(double[] value, int at) {
        int n = value.length;
        double sum = 0;
        for (int j = 0; j < n; j++) {
            if (j != at) {
                double sign = (at - j) % 2 == 0 ? 1 : -1;
                sum += sign * value[j] / (2 * Math.sin(Math.PI * (at - j) / n));
            }
        }
        return sum;
    }

    /** Writes the curvature (kappa d) under a moment over d^3, MPa, and its derivative by that moment, 1/MPa. */
    public void at(double moment, double[] answer) {
        curvature.at(Math.abs(moment), answer);
        answer[0] = Math.copySign(answer[0], moment);
    }

    /** Greatest strain of any fibre in the least favourable direction, over the mean curvature, under a moment. */
    public double strainPerCurvature(double moment) {
        return MonotoneCurve.linear(level, strainPerCurvature, moment);
    }

    /** One direction of the section. */
    private record Direction(double lag, double[] moment, double[] turn, double[] reach, MonotoneCurve curvature) {
        static Direction of(Slabs slabs, double lag, StressCurve curve, double[] k) {
            FibreBending fibres = new FibreBending(slabs, curve);
            double[] moment = new double[k.length];
            double[] turn = new double[k.length];
            double[] reach = new double[k.length];
            double[] compliance = new double[k.length];
            for (int i = 1; i < k.length; i++) {
                fibres.bend(k[i]);
                moment[i] = Math.hypot(fibres.momentAlong(), fibres.momentAcross());
                double rise = fibres.momentAlong() * fibres.stiffnessAlong()
                        + fibres.momentAcross() * fibres.stiffnessAcross();
                compliance[i] = moment[i] / rise;
                turn[i] = Math.atan2(-fibres.momentAcross(), fibres.momentAlong());
                reach[i] = Math.max(fibres.greatestTension(k[i]), fibres.greatestCompression(k[i])) / k[i];
            }
            turn[0] = turn[1];
            reach[0] = reach[1];
            compliance[0] = compliance[1];
            return new Direction(lag, moment, turn, reach, MonotoneCurve.through(moment, k, compliance));
        }

        /** How far the moment's direction has moved from that by Hooke's law, rad. */
        double drift(double level) {
            return MonotoneCurve.linear(moment, turn, level) + lag;
        }

        double strain(double level) {
            return MonotoneCurve.linear(moment, reach, level);
        }
    }
}
