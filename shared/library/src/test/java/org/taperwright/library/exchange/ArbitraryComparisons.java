package org.taperwright.library.exchange;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.library.store.MetricRows;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.comparison.score.Weights;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.measured.BenchCurve;
import org.taperwright.mechanics.measured.Measured;
import org.taperwright.mechanics.measured.MeasuredCurve;
import org.taperwright.mechanics.measured.MeasuredLives;

/** Parts of comparisons of any kind. */
final class ArbitraryComparisons {
    private ArbitraryComparisons() {}

    static Arbitrary<Weights> weights() {
        return Arbitraries.maps(metric(), Arbitraries.doubles().between(0.01, 1000))
                .ofMaxSize(4)
                .map(Weights::new);
    }

    static Arbitrary<MetricRows> rows() {
        return Combinators.combine(metric().list().ofMaxSize(3), metric().list().ofMaxSize(3))
                .as(MetricRows::new);
    }

    static Arbitrary<KeptResults> kept() {
        Arbitrary<KeptResults.KeptDesign> design =
                Combinators.combine(ArbitraryThings.id(), metric()).as(KeptResults.KeptDesign::new);
        return Combinators.combine(
                        metric(), design.list().ofMaxSize(4), metric().list().ofMaxSize(3))
                .flatAs((model, designs, metrics) -> values(designs.size())
                        .list()
                        .ofSize(metrics.size())
                        .map(values -> {
                            List<KeptResults.KeptRow> rows = new ArrayList<>();
                            for (int i = 0; i < metrics.size(); i++) {
                                rows.add(new KeptResults.KeptRow(metrics.get(i), values.get(i)));
                            }
                            return new KeptResults(model, designs, rows);
                        }));
    }

    static Arbitrary<MeasuredOn> measured() {
        Arbitrary<Double> number = Arbitraries.doubles().between(0, 150).ofScale(6);
        Arbitrary<Measured> curve = Combinators.combine(
                        Arbitraries.of(BenchCurve.values()),
                        ArbitraryThings.text(0, 9),
                        Combinators.combine(number, number)
                                .as(CurvePoint::new)
                                .list()
                                .ofMaxSize(3))
                .as(MeasuredCurve::new);
        Arbitrary<Measured> lives = Combinators.combine(
                        ArbitraryThings.text(0, 9),
                        number.map(value -> new MeasuredLives.Life(
                                        new Tube(1 + value, 1 + value, value, value / 20), value))
                                .list()
                                .ofMaxSize(3))
                .as(MeasuredLives::new);
        return Combinators.combine(ArbitraryThings.id(), Arbitraries.oneOf(curve, lives))
                .as(MeasuredOn::new);
    }

    private static Arbitrary<List<Double>> values(int count) {
        return Arbitraries.doubles().between(-1e6, 1e6).ofScale(9).list().ofSize(count);
    }

    private static Arbitrary<String> metric() {
        return Arbitraries.strings().withCharRange('a', 'z').ofMinLength(1).ofMaxLength(20);
    }
}
