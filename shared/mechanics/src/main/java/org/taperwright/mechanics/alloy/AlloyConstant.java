package org.taperwright.mechanics.alloy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.UncertainConstant;

/**
 * A constant that an alloy's stress-strain curves hang on: Young's modulus, the yield or plateau stress, or a constant of
 * its law.
 *
 * @param name key in the JSON form
 * @param label name for people
 * @param unit unit, empty for a plain number
 * @param value the alloy's value
 * @param band its 5 to 95 %, within which it is drawn or fitted; of no width where it is known
 */
public record AlloyConstant(String name, String label, String unit, double value, Band band) {
    /** Key of Young's modulus. */
    public static final String YOUNG = "youngMpa";

    /** Key of the yield or plateau stress. */
    public static final String YIELD = "yieldMpa";

    /** All constants of an alloy. */
    public static List<AlloyConstant> all(Alloy alloy) {
        List<AlloyConstant> all = new ArrayList<>();
        all.add(new AlloyConstant(YOUNG, "Young's modulus", "MPa", alloy.youngMpa(), alloy.youngBand()));
        all.add(new AlloyConstant(YIELD, "Yield or plateau stress", "MPa", alloy.yieldMpa(), alloy.yieldBand()));
        StressLaws.find(alloy.law())
                .ifPresent(law -> law.constants()
                        .forEach(constant -> Optional.ofNullable(
                                        alloy.constants().get(constant.name()))
                                .ifPresent(known -> all.add(ofLaw(constant, known)))));
        return all;
    }

    private static AlloyConstant ofLaw(LawConstant constant, Reading known) {
        Band band = known.band().orElseGet(() -> new Band(known.value(), known.value()));
        return new AlloyConstant(constant.name(), constant.label(), constant.unit(), known.value(), band);
    }

    /** Those that have a band of some width. */
    public static List<AlloyConstant> uncertain(Alloy alloy) {
        return all(alloy).stream().filter(AlloyConstant::isUncertain).toList();
    }

    /** Whether its band has some width. */
    public boolean isUncertain() {
        return band.high() > band.low();
    }

    /** All of them as they are drawn, under the alloy's name: two alloys independently, one alloy always alike. */
    public static List<UncertainConstant> drawn(Alloy alloy) {
        return all(alloy).stream()
                .map(each -> new UncertainConstant(
                        alloy.id() + "." + each.name,
                        each.value,
                        Optional.of(each.band).filter(band -> each.isUncertain())))
                .toList();
    }

    /** The alloy with other values of all its constants, in the order of {@link #all}, known as they were. */
    public static Alloy with(Alloy alloy, double[] values) {
        List<AlloyConstant> all = all(alloy);
        Alloy changed = alloy;
        for (int k = 0; k < values.length; k++) {
            changed = all.get(k).in(changed, values[k], all.get(k).band);
        }
        return changed;
    }

    /** The alloy with this constant at another value, known within another band. */
    public Alloy in(Alloy alloy, double other, Band otherBand) {
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
                alloy.validity(),
                alloy.kin(),
                alloy.life());
    }
}
