package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.StressLaws;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * A constant of an alloy that can be fitted: Young's modulus, the yield or plateau stress, or a constant of its law.
 *
 * @param name key in the JSON form
 * @param label name for people
 * @param unit unit, empty for a plain number
 * @param value the alloy's value
 * @param band its 5 to 95 %, within which it may be fitted
 */
public record AlloyConstant(String name, String label, String unit, double value, Band band) {
    private static final String YOUNG = "youngMpa";
    private static final String YIELD = "yieldMpa";

    /** The constants of an alloy that have a band of some width. */
    public static List<AlloyConstant> of(Alloy alloy) {
        List<AlloyConstant> all = new ArrayList<>();
        all.add(new AlloyConstant(YOUNG, "Young's modulus", "MPa", alloy.youngMpa(), alloy.youngBand()));
        all.add(new AlloyConstant(YIELD, "Yield or plateau stress", "MPa", alloy.yieldMpa(), alloy.yieldBand()));
        StressLaws.find(alloy.law())
                .ifPresent(law -> law.constants()
                        .forEach(constant -> Optional.ofNullable(
                                        alloy.constants().get(constant.name()))
                                .filter(known -> known.band().isPresent())
                                .ifPresent(known -> all.add(new AlloyConstant(
                                        constant.name(),
                                        constant.label(),
                                        constant.unit(),
                                        known.value(),
                                        known.band().get())))));
        return all.stream()
                .filter(constant -> constant.band().high() > constant.band().low())
                .toList();
    }

    /** The alloy with this constant at another value, known within another band. */
    Alloy in(Alloy alloy, double other, Band otherBand) {
        Map<String, Reading> constants = new TreeMap<>(alloy.constants());
        boolean young = name.equals(YOUNG);
        boolean yield = name.equals(YIELD);
        if (!young && !yield) {
            constants.put(name, new Reading(other, Optional.of(otherBand)));
        }
        return new Alloy(
                alloy.id(),
                alloy.label(),
                young ? other : alloy.youngMpa(),
                young ? otherBand : alloy.youngBand(),
                alloy.poisson(),
                yield ? other : alloy.yieldMpa(),
                yield ? otherBand : alloy.yieldBand(),
                alloy.ultimateMpa(),
                alloy.law(),
                constants,
                alloy.superelastic(),
                alloy.source(),
                alloy.validity());
    }
}
