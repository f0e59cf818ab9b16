package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.fatigue.LifeConstant;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/** The constants of an alloy that can be fitted: those of its stress law to bench curves, those of its strain-life law to lives. */
public final class FitConstants {
    private FitConstants() {}

    /** Those that bench curves hang on and that have a band of some width. */
    public static List<AlloyConstant> ofCurves(Alloy alloy) {
        return AlloyConstant.uncertain(alloy);
    }

    /** Those of the strain-life law that have a band of some width. */
    public static List<AlloyConstant> ofLife(Alloy alloy) {
        return allOfLife(alloy).stream().filter(AlloyConstant::isUncertain).toList();
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

    /** All constants of an alloy, those of its strain-life law last, with or without a band of any width. */
    public static List<AlloyConstant> inOrder(Alloy alloy) {
        return Stream.concat(AlloyConstant.all(alloy).stream(), allOfLife(alloy).stream())
                .toList();
    }

    /** A constant by its key as an alloy has it; one that no law knows stands for itself. */
    public static AlloyConstant described(Alloy alloy, String name) {
        return inOrder(alloy).stream()
                .filter(constant -> constant.name().equals(name))
                .findFirst()
                .orElseGet(() -> new AlloyConstant(name, name, "", 0, new Band(0, 0)));
    }

    /** The alloy with a constant at another value, known within another band. */
    static Alloy set(Alloy alloy, AlloyConstant constant, double other, Band otherBand) {
        if (LifeConstant.named(constant.name()).isEmpty()) {
            return constant.in(alloy, other, otherBand);
        }
        Map<String, Reading> life = new TreeMap<>(alloy.life());
        life.put(constant.name(), new Reading(other, Optional.of(otherBand)));
        return alloy.withLife(life);
    }
}
