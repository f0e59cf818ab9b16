package org.taperwright.library.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.fatigue.LifeConstant;
import org.taperwright.mechanics.measured.FitAccount;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/** Alloys of a library's own, of any kind. */
final class ArbitraryAlloys {
    private ArbitraryAlloys() {}

    static Arbitrary<OwnAlloy> alloy() {
        Arbitrary<Double> factor = Arbitraries.doubles().between(0.5, 2).ofScale(9);
        return Combinators.combine(
                        Arbitraries.of(Alloys.all()),
                        factor,
                        Arbitraries.of(true, false),
                        Arbitraries.doubles().between(-2, 5).ofScale(6).optional(),
                        fit().optional(),
                        ArbitraryThings.text(1, 60),
                        ArbitraryThings.text(0, 60),
                        ArbitraryThings.text(0, 60))
                .as((kin, times, banded, life, fit, name, words, note) -> new OwnAlloy(
                        name,
                        kin.id(),
                        kin.poisson(),
                        times * kin.ultimateMpa(),
                        constants(kin, times, banded, life),
                        fit,
                        words,
                        words,
                        note));
    }

    private static Map<String, Reading> constants(Alloy kin, double times, boolean banded, Optional<Double> life) {
        Map<String, Reading> all = new TreeMap<>();
        kin.constants().forEach((name, known) -> all.put(name, reading(times * known.value(), banded)));
        all.put("youngMpa", reading(times * kin.youngMpa(), banded));
        all.put("yieldMpa", reading(times * kin.yieldMpa(), !banded));
        life.ifPresent(power -> all.put(LifeConstant.POINT.id(), Reading.of(power)));
        return all;
    }

    private static Reading reading(double value, boolean banded) {
        return banded ? new Reading(value, Optional.of(new Band(0.9 * value, 1.2 * value))) : Reading.of(value);
    }

    private static Arbitrary<FitAccount> fit() {
        Arbitrary<Double> number = Arbitraries.doubles().between(0, 1e6).ofScale(9);
        return Combinators.combine(
                        ArbitraryThings.text(0, 30),
                        Arbitraries.integers().between(0, 20_000),
                        number.list().ofMinSize(1).ofMaxSize(4),
                        number,
                        number.optional())
                .as((design, day, values, share, scatter) -> new FitAccount(
                        design,
                        LocalDate.ofEpochDay(day),
                        values.stream()
                                .map(value -> new FitAccount.Constant("a", value, value, share, value > share))
                                .toList(),
                        values.stream().map(row -> values).toList(),
                        List.of(new FitAccount.Residual(design, day, day, share)),
                        scatter.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                        OptionalDouble.of(share)));
    }
}
