package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;

class TradeOffTest {
    @Test
    void aPointWithAGreaterOneInBothIsDominated() {
        assertThat(undominated(new double[] {1, 2, 3, 1}, new double[] {3, 2, 1, 1}))
                .containsExactly(true, true, true, false);
    }

    @Test
    void twoEqualPointsDoNotDominateEachOther() {
        assertThat(undominated(new double[] {2, 2}, new double[] {1, 1})).containsExactly(true, true);
    }

    /** Of two values known to a tenth, one that is ahead by less is not surely ahead; in paired samples it may be. */
    @Test
    void aDesignIsSurelyDominatedOnlyWhereTheOtherIsAheadInNearlyAllSamples() {
        LatinHypercube own = LatinHypercube.of("trade-off test, own");
        LatinHypercube shared = LatinHypercube.of("trade-off test, shared");
        Sampled one = Sampled.known(1);
        Sampled apart = own.sample(1.02, shares -> 1.02 * (0.9 + 0.2 * shares[0]));
        Sampled datum = shared.sample(1, shares -> 0.9 + 0.2 * shares[0]);
        Sampled together = shared.sample(1.02, shares -> 1.02 * (0.9 + 0.2 * shares[0]));

        List<TradeOff.Place> unpaired = TradeOff.places(List.of(datum, apart), List.of(one, one));
        List<TradeOff.Place> paired = TradeOff.places(List.of(datum, together), List.of(one, one));

        assertThat(unpaired).extracting(TradeOff.Place::dominance).containsOnly(Dominance.POSSIBLY_UNDOMINATED);
        assertThat(unpaired).extracting(TradeOff.Place::undominated).containsExactly(false, true);
        assertThat(paired)
                .extracting(TradeOff.Place::dominance)
                .containsExactly(Dominance.DOMINATED, Dominance.CERTAINLY_UNDOMINATED);
    }

    /** The difference of two even draws of width w is triangular: the lower is ahead with (1 - gap / w)^2 / 2. */
    @Test
    void theShareIsTheProbabilityOfTheSamples() {
        Sampled first = LatinHypercube.of("trade-off test, a").sample(0, shares -> shares[0]);
        Sampled second = LatinHypercube.of("trade-off test, b").sample(0.3, shares -> shares[0] + 0.3);
        Sampled one = Sampled.known(1);
        TradeOff.Place lower =
                TradeOff.places(List.of(first, second), List.of(one, one)).get(0);
        assertThat(lower.share()).isCloseTo(0.7 * 0.7 / 2, within(0.07));
    }

    private static List<Boolean> undominated(double[] first, double[] second) {
        return TradeOff.places(known(first), known(second)).stream()
                .map(TradeOff.Place::undominated)
                .toList();
    }

    private static List<Sampled> known(double[] values) {
        return Arrays.stream(values).mapToObj(Sampled::known).toList();
    }

    @Property
    void theGreatestInOneThatIsGreatestAmongItsEqualsInTheOtherIsNeverDominated(
            @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0, max = 5) Double> first,
            @ForAll @Size(min = 6, max = 6) List<@DoubleRange(min = 0, max = 5) Double> second) {
        double[] x = first.stream().mapToDouble(Double::doubleValue).toArray();
        double[] y =
                second.stream().limit(x.length).mapToDouble(Double::doubleValue).toArray();
        int best = 0;
        for (int i = 1; i < x.length; i++) {
            best = x[i] > x[best] || x[i] == x[best] && y[i] > y[best] ? i : best;
        }
        assertThat(undominated(x, y).get(best)).isTrue();
    }

    @Property
    void whoeverIsDominatedIsDominatedByAnUndominatedOne(
            @ForAll @Size(5) List<@DoubleRange(min = 0, max = 5) Double> first,
            @ForAll @Size(5) List<@DoubleRange(min = 0, max = 5) Double> second) {
        double[] x = first.stream().mapToDouble(Double::doubleValue).toArray();
        double[] y = second.stream().mapToDouble(Double::doubleValue).toArray();
        List<Boolean> marks = undominated(x, y);
        for (int i = 0; i < 5; i++) {
            boolean beaten = false;
            for (int j = 0; j < 5; j++) {
                beaten |= marks.get(j) && x[j] >= x[i] && y[j] >= y[i] && (x[j] > x[i] || y[j] > y[i]);
            }
            assertThat(beaten).isEqualTo(!marks.get(i));
        }
    }
}
