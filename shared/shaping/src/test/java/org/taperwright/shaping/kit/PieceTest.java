package org.taperwright.shaping.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PieceTest {
    private static final LocalDate DAY = LocalDate.of(2026, 1, 5);

    /** Linear summing of cycle shares: Miner, Journal of Applied Mechanics 1945. */
    @Test
    void usesCanalsAndSharesOfLifeAreSummed() {
        Piece piece = GivenKit.piece("p", GivenKit.ROTARY)
                .draft()
                .usesBefore(2)
                .lifeSpentBefore(Optional.of(new LifeSpent(0.125, 0.25, 0.5)))
                .log(List.of(
                        GivenKit.use(DAY, 3, new LifeSpent(0.0625, 0.125, 0.25)), GivenKit.use(DAY.plusDays(1), 1)))
                .piece();
        assertThat(piece.uses()).isEqualTo(4);
        assertThat(piece.canals()).isEqualTo(4);
        assertThat(piece.lifeSpent()).contains(new LifeSpent(0.1875, 0.375, 0.75));
        assertThat(piece.usesWithoutEstimate()).isEqualTo(1);
    }

    @Test
    void withoutAnyEstimateNothingIsSaidOfTheLifeSpent() {
        Piece piece = GivenKit.piece("p", GivenKit.ROTARY)
                .draft()
                .usesBefore(2)
                .log(List.of(GivenKit.use(DAY, 1)))
                .piece();
        assertThat(piece.lifeSpent()).isEmpty();
        assertThat(piece.usesWithoutEstimate()).isEqualTo(3);
    }

    @Property
    void theSumOfManyUsesLiesInItsBandAndIsTheSumOfTheirParts(
            @ForAll @Size(max = 20) List<@DoubleRange(min = 0, max = 0.3) Double> shares) {
        Piece piece = GivenKit.piece("p", GivenKit.ROTARY)
                .draft()
                .log(shares.stream()
                        .map(share -> GivenKit.use(DAY, 1, new LifeSpent(share / 2, share, share * 3)))
                        .toList())
                .piece();
        double sum = shares.stream().mapToDouble(share -> share).sum();
        LifeSpent spent = piece.lifeSpent().orElse(new LifeSpent(0, 0, 0));
        assertThat(spent.low()).isCloseTo(sum / 2, within(1e-9));
        assertThat(spent.central()).isCloseTo(sum, within(1e-9));
        assertThat(spent.high()).isCloseTo(sum * 3, within(1e-9));
    }

    @Test
    void damageIsKeptOnceAndInOneOrder() {
        Piece piece = GivenKit.piece("p", GivenKit.ROTARY)
                .draft()
                .damage(List.of(Damage.BROKEN, Damage.UNWOUND, Damage.BROKEN))
                .piece();
        assertThat(piece.damage()).containsExactly(Damage.UNWOUND, Damage.BROKEN);
    }

    @Test
    void whatCannotBeIsRefused() {
        Piece piece = GivenKit.piece("p", GivenKit.ROTARY);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> piece.draft().id("a b").piece())
                .withMessage("has an identifier that is none: \"a b\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> piece.draft().sterilisations(-1).piece());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GivenKit.kit(piece, piece))
                .withMessage("has two pieces called \"p\"");
        assertThatIllegalArgumentException().isThrownBy(() -> new LifeSpent(0.3, 0.2, 0.4));
        assertThatIllegalArgumentException().isThrownBy(() -> new LifeSpent(0, Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new LifeSpent(0, 1, Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> GivenKit.use(DAY, -1));
    }
}
