package org.taperwright.mechanics.measured;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.alloy.LawConstant;
import org.taperwright.mechanics.alloy.StressLaws;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.fatigue.LifeConstant;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * An alloy that a library has of its own, beside those that come with the program. It is of the kind of one of them, whose laws
 * it follows, and holds every constant itself, so that it stays what it is. Its bands are drawn each by itself: how fitted
 * constants hang together is kept in the account of the fit but does not narrow the bands of what is computed.
 *
 * @param name what people call it
 * @param kin identifier of the shipped alloy whose kind it is
 * @param poisson Poisson's ratio
 * @param ultimateMpa tensile strength, MPa
 * @param constants Young's modulus, yield or plateau stress, those of the kin's stress law, and any of {@link LifeConstant} that
 *     are its own, by name; each may have its 5 to 95 % band
 * @param fit how they were found, if by a fit
 * @param source where the numbers come from and how they are known
 * @param validity where they hold
 * @param note free text
 */
public record OwnAlloy(
        String name,
        String kin,
        double poisson,
        double ultimateMpa,
        Map<String, Reading> constants,
        Optional<FitAccount> fit,
        String source,
        String validity,
        String note) {
    public OwnAlloy {
        constants = Collections.unmodifiableMap(new TreeMap<>(constants));
        Alloy of = Alloys.find(kin)
                .orElseThrow(
                        () -> new IllegalArgumentException("is of the kind of no alloy of the program: kin \"" + kin
                                + "\" is none of "
                                + Alloys.all().stream().map(Alloy::id).collect(Collectors.joining(", "))));
        Set<String> missing = new LinkedHashSet<>(needed(of));
        missing.removeAll(constants.keySet());
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("gives no " + String.join(", ", missing));
        }
        Set<String> strange = new LinkedHashSet<>(constants.keySet());
        strange.removeAll(needed(of));
        strange.removeIf(each -> LifeConstant.named(each).isPresent());
        if (!strange.isEmpty()) {
            throw new IllegalArgumentException("gives " + String.join(", ", strange)
                    + ", which the law of its kind does not know; it knows " + String.join(", ", needed(of)));
        }
        constants.forEach((each, reading) -> {
            boolean within = reading.band()
                    .map(band -> band.low() <= reading.value() && reading.value() <= band.high())
                    .orElse(true);
            boolean positive = LifeConstant.named(each).isPresent()
                    || reading.value() > 0
                            && reading.band().map(band -> band.low() > 0).orElse(true);
            if (!within || !positive) {
                throw new IllegalArgumentException("gives " + each
                        + (within ? " at or below zero" : " outside its own band; expected low <= value <= high"));
            }
        });
    }

    private static List<String> needed(Alloy kin) {
        return Stream.concat(
                        Stream.of(AlloyConstant.YOUNG, AlloyConstant.YIELD),
                        StressLaws.find(kin.law()).stream()
                                .flatMap(law -> law.constants().stream())
                                .map(LawConstant::name))
                .toList();
    }

    /** What a fit made, under a name. */
    public static OwnAlloy of(AlloyFit fit, String name, String design, LocalDate day) {
        Alloy alloy = fit.alloy();
        Map<String, Reading> constants = new TreeMap<>(alloy.constants());
        constants.put(AlloyConstant.YOUNG, new Reading(alloy.youngMpa(), Optional.of(alloy.youngBand())));
        constants.put(AlloyConstant.YIELD, new Reading(alloy.yieldMpa(), Optional.of(alloy.yieldBand())));
        constants.putAll(alloy.life());
        return new OwnAlloy(
                name,
                alloy.kin(),
                alloy.poisson(),
                alloy.ultimateMpa(),
                constants,
                Optional.of(FitAccount.of(fit, design, day)),
                alloy.source(),
                alloy.validity() + " Fitted to instruments of the design " + design + ".",
                "");
    }

    /** The same under another name. */
    public OwnAlloy named(String other) {
        return new OwnAlloy(other, kin, poisson, ultimateMpa, constants, fit, source, validity, note);
    }

    /** The same with another note. */
    public OwnAlloy noting(String other) {
        return new OwnAlloy(name, kin, poisson, ultimateMpa, constants, fit, source, validity, other);
    }

    /** The alloy, as a design names it by its identifier in the library. */
    public Alloy alloy(ThingId id) {
        Alloy like = Alloys.find(kin).orElseThrow();
        Map<String, Reading> ofLaw = new TreeMap<>(constants);
        Map<String, Reading> life = new TreeMap<>();
        for (LifeConstant constant : LifeConstant.values()) {
            Optional.ofNullable(ofLaw.remove(constant.id())).ifPresent(own -> life.put(constant.id(), own));
        }
        Reading young = constants.get(AlloyConstant.YOUNG);
        Reading yield = constants.get(AlloyConstant.YIELD);
        ofLaw.remove(AlloyConstant.YOUNG);
        ofLaw.remove(AlloyConstant.YIELD);
        return new Alloy(
                id.value(),
                name,
                young.value(),
                band(young),
                poisson,
                yield.value(),
                band(yield),
                ultimateMpa,
                like.law(),
                ofLaw,
                like.superelastic(),
                source,
                validity,
                kin,
                life);
    }

    private static Band band(Reading reading) {
        return reading.band().orElseGet(() -> new Band(reading.value(), reading.value()));
    }
}
