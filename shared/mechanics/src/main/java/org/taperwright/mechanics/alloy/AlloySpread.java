package org.taperwright.mechanics.alloy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.UncertainConstant;

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

    /** Their values with bands, each under the alloy's name: two alloys are drawn independently, one alloy always alike. */
    public List<UncertainConstant> constants() {
        List<UncertainConstant> constants = new ArrayList<>();
        constants.add(constant("youngMpa", alloy.youngMpa(), Optional.of(alloy.youngBand())));
        constants.add(constant("yieldMpa", alloy.yieldMpa(), Optional.of(alloy.yieldBand())));
        for (String name : names) {
            Optional<Reading> known = Optional.ofNullable(alloy.constants().get(name));
            constants.add(constant(name, alloy.constant(name), known.flatMap(Reading::band)));
        }
        return constants;
    }

    private UncertainConstant constant(String name, double value, Optional<Band> band) {
        return new UncertainConstant(alloy.id() + "." + name, value, band);
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
