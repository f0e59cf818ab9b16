package org.taperwright.comparer.ui;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A logarithmic axis of ratios that always shows 1 and some room about what it holds.
 *
 * @param low ratio at its beginning
 * @param high ratio at its end
 */
record LogAxis(double low, double high) {
    private static final double LEAST_REACH = 1.3;
    private static final double MARGIN = 0.12;
    private static final double[] MANTISSAS = {1, 1.2, 1.5, 2, 3, 5, 7};
    private static final int MOST_TICKS = 9;

    /** The axis that fits ratios. */
    static LogAxis of(DoubleStream ratios) {
        double[] logs = ratios.map(Math::log).toArray();
        double least =
                Math.min(-Math.log(LEAST_REACH), DoubleStream.of(logs).min().orElse(0));
        double most =
                Math.max(Math.log(LEAST_REACH), DoubleStream.of(logs).max().orElse(0));
        double margin = MARGIN * (most - least);
        return new LogAxis(Math.exp(least - margin), Math.exp(most + margin));
    }

    /** Share of the axis at which a ratio stands. */
    double share(double ratio) {
        return Math.log(ratio / low) / Math.log(high / low);
    }

    /**
     * Round ratios to mark, so far apart that their labels do not touch; 1 always among them.
     *
     * @param length length of the axis, px
     * @param room room that a label needs along it, px
     */
    List<Double> ticks(double length, double room) {
        List<Double> kept = new ArrayList<>(List.of(1.0));
        for (double tick : ticks()) {
            boolean apart = kept.stream().allMatch(other -> Math.abs(share(tick) - share(other)) * length >= room);
            if (apart) {
                kept.add(tick);
            }
        }
        return kept;
    }

    private List<Double> ticks() {
        List<Double> fine = ticks(MANTISSAS);
        if (fine.size() <= MOST_TICKS) {
            return fine;
        }
        List<Double> coarse = ticks(new double[] {1, 2, 5});
        return coarse.size() <= MOST_TICKS ? coarse : ticks(new double[] {1});
    }

    /** A tick as written. */
    static String words(double tick) {
        return new BigDecimal(tick)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    private List<Double> ticks(double[] mantissas) {
        DoubleStream.Builder ticks = DoubleStream.builder();
        for (int power = (int) Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power++) {
            for (double mantissa : mantissas) {
                double tick = mantissa * Math.pow(10, power);
                if (tick >= low && tick <= high) {
                    ticks.add(tick);
                }
            }
        }
        return ticks.build().boxed().toList();
    }
}
