package org.taperwright.mechanics.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ComparisonsTest {
    @Test
    void aPointWithAGreaterOneInBothIsDominated() {
        assertThat(Comparisons.undominated(new double[] {1, 2, 3, 1}, new double[] {3, 2, 1, 1}))
                .containsExactly(true, true, true, false);
    }

    @Test
    void twoEqualPointsDoNotDominateEachOther() {
        assertThat(Comparisons.undominated(new double[] {2, 2}, new double[] {1, 1}))
                .containsExactly(true, true);
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
        assertThat(Comparisons.undominated(x, y).get(best)).isTrue();
    }

    @Property
    void whoeverIsDominatedIsDominatedByAnUndominatedOne(
            @ForAll @Size(5) List<@DoubleRange(min = 0, max = 5) Double> first,
            @ForAll @Size(5) List<@DoubleRange(min = 0, max = 5) Double> second) {
        double[] x = first.stream().mapToDouble(Double::doubleValue).toArray();
        double[] y = second.stream().mapToDouble(Double::doubleValue).toArray();
        List<Boolean> marks = Comparisons.undominated(x, y);
        for (int i = 0; i < 5; i++) {
            boolean beaten = false;
            for (int j = 0; j < 5; j++) {
                beaten |= marks.get(j) && x[j] >= x[i] && y[j] >= y[i] && (x[j] > x[i] || y[j] > y[i]);
            }
            assertThat(beaten).isEqualTo(!marks.get(i));
        }
    }
}
