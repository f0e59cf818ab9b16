package org.taperwright.mechanics.alloy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.taperwright.mechanics.quantity.Reading;

/** The constants that an alloy's stress-strain curves hang on, and the alloy again with other values of them. */
public final class AlloySpread {
    private final Alloy alloy;
    private final List<String> names;

    private AlloySpread(Alloy alloy, List<String> names) {
        this.alloy = alloy;
        this.names = names;
    }

    /** Young's modulus, the yield or plateau stress and the constants of the alloy's law. */
    public static AlloySpread of(Alloy alloy) {
        return new AlloySpread(
                alloy,
                StressLaws.find(alloy.law()).stream()
                        .flatMap(law -> law.constants().stream())
                        .map(LawConstant::name)
                        .toList());
    }

    /** Their values with bands. */
    public List<Reading> constants() {
        List<Reading> constants = new ArrayList<>();
        constants.add(new Reading(alloy.youngMpa(), Optional.of(alloy.youngBand())));
        constants.add(new Reading(alloy.yieldMpa(), Optional.of(alloy.yieldBand())));
        names.forEach(name -> constants.add(
                Optional.ofNullable(alloy.constants().get(name)).orElseGet(() -> Reading.of(alloy.constant(name)))));
        return constants;
    }

    /** The alloy with other values, in the order of {@link #constants()}. */
    public Alloy with(double[] values) {
        Map<String, Reading> changed = new TreeMap<>(alloy.constants());
        for (int i = 0; i < names.size(); i++) {
            changed.put(names.get(i), Reading.of(values[i + 2]));
        }
        return alloy.with(values[0], values[1], changed);
    }
}
