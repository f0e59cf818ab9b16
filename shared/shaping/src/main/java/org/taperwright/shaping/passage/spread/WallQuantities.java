package org.taperwright.shaping.passage.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.stroke.LeastDentine;
import org.taperwright.shaping.passage.stroke.StepOutcome;

/**
 * What each step removed by third, and what had become of the wall by then, by third and on the whole: beyond the {@link ShapedQuantity
 * numbers of a sequence}, for those who look at a step closely.
 */
public final class WallQuantities {
    /** Volume removed in the step. */
    public static final String REMOVED = "removedMm3";
    /** Share of wall worn so far. */
    public static final String TOUCHED = "touchedShare";
    /** Largest transportation so far. */
    public static final String TRANSPORTED = "transportedMm";
    /** Least dentine left. */
    public static final String DENTINE = "leastDentineMm";

    private WallQuantities() {}

    /** The name of a quantity in a third, in the words of the JSON form. */
    public static String in(Third third, String name) {
        return name + "." + third.name().toLowerCase(Locale.ROOT);
    }

    /** All of a sequence of a number of steps, step by step. */
    public static List<ShapedQuantity> of(int steps) {
        List<ShapedQuantity> all = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            all.add(quantity(
                    i,
                    TOUCHED,
                    "wall worn so far",
                    "",
                    Standing.ESTIMATE,
                    step -> step.wall().touchedShare()));
            all.add(quantity(
                    i,
                    TRANSPORTED,
                    "largest transportation so far",
                    "mm",
                    Standing.INDEX,
                    step -> step.wall().transportedMm()));
            all.add(quantity(
                    i,
                    DENTINE,
                    "least dentine left",
                    "mm",
                    Standing.ESTIMATE,
                    step -> thickness(step.wall().leastDentine())));
            for (Third third : Third.values()) {
                all.addAll(of(i, third));
            }
        }
        return all;
    }

    private static List<ShapedQuantity> of(int place, Third third) {
        String where = ", " + third.word() + " third";
        return List.of(
                quantity(
                        place,
                        in(third, REMOVED),
                        "dentine removed" + where,
                        "mm³",
                        Standing.COMPUTED,
                        step -> step.removedMm3().getOrDefault(third, 0.0)),
                quantity(
                        place,
                        in(third, TOUCHED),
                        "wall worn so far" + where,
                        "",
                        Standing.ESTIMATE,
                        step -> step.wall().touchedShare(third)),
                quantity(
                        place,
                        in(third, TRANSPORTED),
                        "largest transportation so far" + where,
                        "mm",
                        Standing.INDEX,
                        step -> step.wall().transportedMm(third)),
                quantity(
                        place,
                        in(third, DENTINE),
                        "least dentine left" + where,
                        "mm",
                        Standing.ESTIMATE,
                        step -> thickness(step.wall().leastDentine(third))));
    }

    private static double thickness(Optional<LeastDentine> least) {
        return least.map(LeastDentine::thicknessMm).orElse(Double.NaN);
    }

    private static ShapedQuantity quantity(
            int place, String name, String label, String unit, Standing standing, ToDoubleFunction<StepOutcome> value) {
        return new ShapedQuantity(Optional.of(place), name, label, unit, standing, shaped -> {
            double number = Optional.ofNullable(shaped.byPlace().get(place))
                    .map(value::applyAsDouble)
                    .orElse(Double.NaN);
            return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
        });
    }
}
