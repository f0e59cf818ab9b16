package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.StressLaws;
import org.taperwright.mechanics.fatigue.LifeConstant;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * A constant of an alloy that can be fitted: Young's modulus, the yield or plateau stress, a constant of its stress law, or one of
 * its strain-life law.
 *
 * @param name key in the JSON form
 * @param label name for people
 * @param unit unit, empty for a plain number
 * @param value the alloy's value
 * @param band its 5 to 95 %, within which it may be fitted
 */
public record AlloyConstant(String name, String label, String unit, double value, Band band) {
    static final String YOUNG = "youngMpa";
    static final String YIELD = "yieldMpa";

    /** The constants of its strain-life law that have a band of some width. */
    public static List<AlloyConstant> ofLife(Alloy alloy) {
        return wide(allOfLife(alloy));
    }

    private static List<AlloyConstant> allOfLife(Alloy alloy) {
        StrainLife law = StrainLives.of(alloy);
        List<AlloyConstant> all = new ArrayList<>();
        for (LifeConstant constant : LifeConstant.values()) {
            Reading known = constant.of(law);
            all.add(new AlloyConstant(
                    constant.id(),
                    constant.label(),
                    "",
                    known.value(),
                    known.band().orElseThrow()));
        }
        return all;
    }

    /** The constants of an alloy that its bench curves hang on and that have a band of some width. */
    public static List<AlloyConstant> of(Alloy alloy) {
        return wide(all(alloy));
    }

    private static List<AlloyConstant> all(Alloy alloy) {
        List<AlloyConstant> all = new ArrayList<>();
        all.add(new AlloyConstant(YOUNG, "Young's modulus", "MPa", alloy.youngMpa(), alloy.youngBand()));
        all.add(new AlloyConstant(YIELD, "Yield or plateau stress", "MPa", alloy.yieldMpa(), alloy.yieldBand()));
        StressLaws.find(alloy.law())
                .ifPresent(law -> law.constants()
                        .forEach(constant -> Optional.ofNullable(
                                        alloy.constants().get(constant.name()))
                                .ifPresent(known -> all.add(new AlloyConstant(
                                        constant.name(),
                                        constant.label(),
                                        constant.unit(),
                                        known.value(),
                                        known.band().orElseGet(() -> new Band(known.value(), known.value())))))));
        return all;
    }

    /** All constants of an alloy, those of its strain-life law last, with or without a band of any width. */
    public static List<AlloyConstant> inOrder(Alloy alloy) {
        return Stream.concat(all(alloy).stream(), allOfLife(alloy).stream()).toList();
    }

    /** A constant by its key as an alloy has it; one that no law knows stands for itself. */
    public static AlloyConstant described(Alloy alloy, String name) {
        return inOrder(alloy).stream()
                .filter(constant -> constant.name().equals(name))
                .findFirst()
                .orElseGet(() -> new AlloyConstant(name, name, "", 0, new Band(0, 0)));
    }

    private static List<AlloyConstant> wide(List<AlloyConstant> all) {
        return all.stream()
                .filter(constant -> constant.band().high() > constant.band().low())
                .toList();
    }

    /** The alloy with this constant at another value, known within another band. */
    Alloy in(Alloy alloy, double other, Band otherBand) {
        Map<String, Reading> constants = new TreeMap<>(alloy.constants());
        boolean young = name.equals(YOUNG);
        boolean yield = name.equals(YIELD);
        boolean ofLife = LifeConstant.named(name).isPresent();
        Map<String, Reading> life = new TreeMap<>(alloy.life());
        if (ofLife) {
            life.put(name, new Reading(other, Optional.of(otherBand)));
        } else if (!young && !yield) {
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
                life);
    }
}
