package org.taperwright.sequencer.outcome;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.passage.spread.ShapedQuantity;
import org.taperwright.shaping.passage.spread.WallQuantities;
import org.taperwright.shaping.passage.stroke.ShapedSequence;

/** All numbers of a shaped sequence by step and name, worked out once: those of the wall take too long for whenever something is drawn. */
public final class StepNumbers {
    /** A quantity's place among the arranged steps, -1 for the whole, and its name. */
    record Key(int arranged, String name) {
        static Key of(ShapedQuantity quantity) {
            return new Key(quantity.step().orElse(-1), quantity.name());
        }
    }

    private final Map<Key, Double> values;

    private StepNumbers(Map<Key, Double> values) {
        this.values = Map.copyOf(values);
    }

    /** The quantities of a sequence of a number of steps that a window tells. */
    static List<ShapedQuantity> asked(int steps) {
        List<ShapedQuantity> asked = new ArrayList<>(ShapedQuantity.of(steps));
        asked.addAll(WallQuantities.of(steps));
        return asked;
    }

    /** The numbers of a sequence of a number of steps. */
    static StepNumbers of(ShapedSequence shaped, int steps, Progress progress) {
        Map<Key, Double> values = new HashMap<>();
        for (ShapedQuantity quantity : asked(steps)) {
            progress.check();
            OptionalDouble value = quantity.value().apply(shaped);
            if (value.isPresent()) {
                values.put(Key.of(quantity), value.getAsDouble());
            }
        }
        return new StepNumbers(values);
    }

    /** A number; empty where there is none. */
    Optional<Double> find(Key key) {
        return Optional.ofNullable(values.get(key));
    }
}
