package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.ArbitraryThings.day;
import static org.taperwright.library.exchange.ArbitraryThings.id;
import static org.taperwright.library.exchange.ArbitraryThings.number;
import static org.taperwright.library.exchange.ArbitraryThings.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.kit.Damage;
import org.taperwright.shaping.kit.Discarding;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.kit.Use;

/** Kits within the limits of their form. */
final class ArbitraryKits {
    private static final Arbitrary<Integer> COUNT = Arbitraries.integers().between(0, 1_000_000);

    private ArbitraryKits() {}

    static Arbitrary<Kit> kit() {
        Arbitrary<Piece> piece = piece();
        return Combinators.combine(
                        text(1, 9),
                        text(0, 20),
                        id().optional(),
                        piece.list().ofMaxSize(4).uniqueElements(Piece::id),
                        text(0, 9))
                .as(Kit::new);
    }

    private static Arbitrary<LifeSpent> lifeSpent() {
        Arbitrary<Double> share = number(0, LifeSpent.MOST);
        return Combinators.combine(share, share, share).as((one, two, three) -> {
            double[] rising = DoubleStream.of(one, two, three).sorted().toArray();
            return new LifeSpent(rising[0], rising[1], rising[2]);
        });
    }

    private static Arbitrary<Use> use() {
        return Combinators.combine(day(), COUNT, id().optional(), lifeSpent().optional(), text(0, 9))
                .as(Use::new);
    }

    private static Arbitrary<Piece> piece() {
        Arbitrary<Piece> plain = Combinators.combine(
                        id().map(ThingId::value),
                        id(),
                        text(0, 9),
                        day().optional(),
                        COUNT,
                        COUNT,
                        lifeSpent().optional(),
                        use().list().ofMaxSize(3))
                .as((id, instrument, words, expiry, uses, sterilisations, life, log) -> new Piece(
                        id,
                        instrument,
                        words,
                        words,
                        expiry,
                        uses,
                        sterilisations,
                        life,
                        List.of(),
                        Optional.empty(),
                        log,
                        words));
        return Combinators.combine(
                        plain,
                        Arbitraries.of(Damage.values()).list().ofMaxSize(3).uniqueElements(),
                        Combinators.combine(day(), text(0, 9), Arbitraries.of(true, false))
                                .as(Discarding::new)
                                .optional())
                .as((piece, damage, discarded) ->
                        piece.draft().damage(damage).discarded(discarded).piece());
    }
}
