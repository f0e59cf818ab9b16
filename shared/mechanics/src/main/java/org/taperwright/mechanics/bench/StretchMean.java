package org.taperwright.mechanics.bench;

/**
 * The greatest mean over one diameter of length of what is known at a rod's nodes.
 *
 * @param value the mean
 * @param levelMm middle of that length, mm from the tip
 */
record StretchMean(double value, double levelMm) {
    /** Over stretches about every node, pushed inwards at the rod's ends. */
    static StretchMean greatest(RodGrid grid, double[] value, double[] lengthMm) {
        int steps = grid.steps();
        double top = grid.levelMm(0);
        // integral from the load's end down to the end of each step, by Simpson's rule
        double[] sum = new double[steps + 1];
        double[] at = new double[steps + 1];
        for (int step = 0; step < steps; step++) {
            double h = grid.lengthMm(step);
            int node = 3 * step;
            sum[step + 1] = sum[step] + h / 6 * (value[node] + 4 * value[node + 1] + value[node + 2]);
            at[step + 1] = at[step] + h;
        }
        StretchMean best = new StretchMean(0, top);
        for (int node = 0; node < value.length; node++) {
            double length = Math.min(lengthMm[node], at[steps]);
            double from = Math.max(0, Math.min(at[steps] - length, top - grid.levelMm(node) - length / 2));
            double mean = (within(at, sum, from + length) - within(at, sum, from)) / length;
            if (mean > best.value) {
                best = new StretchMean(mean, top - from - length / 2);
            }
        }
        return best;
    }

    private static double within(double[] at, double[] sum, double place) {
        int found = java.util.Arrays.binarySearch(at, place);
        int step = Math.max(0, Math.min(at.length - 2, found >= 0 ? found : -found - 2));
        double share = Math.max(0, Math.min(1, (place - at[step]) / (at[step + 1] - at[step])));
        return sum[step] + share * (sum[step + 1] - sum[step]);
    }
}
