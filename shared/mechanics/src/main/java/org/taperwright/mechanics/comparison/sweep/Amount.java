package org.taperwright.mechanics.comparison.sweep;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.quantity.Shown;

/**
 * An amount within a range. Nearby is a tenth of its value to either side where the range lies above zero, else a tenth of the
 * range; never beyond the range, and by at least one unit of a whole number.
 *
 * @param id see {@link DesignParameter#id}
 * @param label see {@link DesignParameter#label}
 * @param unit see {@link DesignParameter#unit}
 * @param least smallest value tried
 * @param most greatest value tried
 * @param step how far one click moves it
 * @param whole whether only whole numbers make sense
 * @param value the value in a design
 * @param change the design with another value
 */
public record Amount(
        String id,
        String label,
        String unit,
        double least,
        double most,
        double step,
        boolean whole,
        ToDoubleFunction<Design> value,
        Change change)
        implements DesignParameter {
    private static final double NEAR = 0.1;

    /** Puts a value into a design. */
    @FunctionalInterface
    public interface Change {
        /** The design with the value. */
        Design in(Design design, double value);
    }

    /** The design with a value, held to the range. */
    public Design with(Design design, double wanted) {
        return change.in(design, held(wanted));
    }

    private double held(double wanted) {
        double within = Math.max(least, Math.min(most, wanted));
        return whole ? Math.rint(within) : within;
    }

    @Override
    public String words(Design design) {
        return Shown.number(value.applyAsDouble(design));
    }

    @Override
    public List<Setting> settings(Design design, int count) {
        return distinct(
                design, IntStream.range(0, count).mapToDouble(i -> (least * (count - 1 - i) + most * i) / (count - 1)));
    }

    @Override
    public List<Setting> nearby(Design design) {
        double here = value.applyAsDouble(design);
        double away = least > 0 ? NEAR * here : NEAR * (most - least);
        double reach = whole ? Math.max(1, away) : away;
        return distinct(design, DoubleStream.of(here - reach, here + reach).filter(v -> held(v) != here));
    }

    private List<Setting> distinct(Design design, DoubleStream values) {
        return values.map(this::held)
                .distinct()
                .mapToObj(v -> new Setting(v, Shown.number(v), change.in(design, v)))
                .toList();
    }
}
