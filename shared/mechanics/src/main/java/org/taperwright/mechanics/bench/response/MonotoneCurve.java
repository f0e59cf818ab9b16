package org.taperwright.mechanics.bench.response;

import java.util.Arrays;

/**
 * A rising curve through given points that starts at the origin and goes on straight beyond its end: cubics whose slopes at
 * the points are limited so that they rise (Fritsch and Carlson, SIAM J Numer Anal 17 (1980)).
 */
final class MonotoneCurve {
    private static final int BUCKETS_PER_POINT = 4;

    private final double[] x;
    private final double[] y;
    private final double[] slope;
    private final double bucketsPerPlace;
    /** The panel in which each of many equal buckets begins: a place is looked up from there. */
    private final int[] firstPanel;

    private MonotoneCurve(double[] x, double[] y, double[] slope) {
        this.x = x;
        this.y = y;
        this.slope = slope;
        int buckets = BUCKETS_PER_POINT * x.length;
        bucketsPerPlace = buckets / (x[x.length - 1] - x[0]);
        firstPanel = new int[buckets + 1];
        int panel = 0;
        for (int bucket = 0; bucket <= buckets; bucket++) {
            while (panel < x.length - 2 && x[panel + 1] <= x[0] + bucket / bucketsPerPlace) {
                panel++;
            }
            firstPanel[bucket] = panel;
        }
    }

    /** A curve through points with the slopes there. */
    static MonotoneCurve through(double[] x, double[] y, double[] slope) {
        double[] limited = slope.clone();
        for (int i = 0; i < x.length - 1; i++) {
            double most = 3 * (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
            limited[i] = Math.min(limited[i], most);
            limited[i + 1] = Math.min(limited[i + 1], most);
        }
        return new MonotoneCurve(x, y, limited);
    }

    double at(double place) {
        double[] answer = new double[2];
        at(place, answer);
        return answer[0];
    }

    /** Writes the value and the slope at a place. */
    void at(double place, double[] answer) {
        int i = panel(place);
        double width = x[i + 1] - x[i];
        double t = (place - x[i]) / width;
        if (t > 1) {
            answer[0] = y[i + 1] + slope[i + 1] * (place - x[i + 1]);
            answer[1] = slope[i + 1];
            return;
        }
        double u = 1 - t;
        answer[0] = u * u * (1 + 2 * t) * y[i]
                + t * t * (1 + 2 * u) * y[i + 1]
                + width * t * u * (u * slope[i] - t * slope[i + 1]);
        answer[1] = 6 * t * u * (y[i + 1] - y[i]) / width + u * (1 - 3 * t) * slope[i] + t * (3 * t - 2) * slope[i + 1];
    }

    /** Straight between points, constant beyond them. */
    static double linear(double[] x, double[] y, double place) {
        int i = panel(x, place);
        double t = Math.max(0, Math.min(1, (place - x[i]) / (x[i + 1] - x[i])));
        return y[i] + t * (y[i + 1] - y[i]);
    }

    private int panel(double place) {
        double bucket = (place - x[0]) * bucketsPerPlace;
        if (!(bucket > 0)) {
            return 0;
        }
        int i = firstPanel[bucket < firstPanel.length ? (int) bucket : firstPanel.length - 1];
        while (i < x.length - 2 && x[i + 1] <= place) {
            i++;
        }
        // rounding may have put a bucket's first panel one too far
        return i > 0 && x[i] > place ? i - 1 : i;
    }

    private static int panel(double[] x, double place) {
        int found = Arrays.binarySearch(x, place);
        int below = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(x.length - 2, below));
    }
}
