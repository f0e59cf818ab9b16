package org.taperwright.shaping.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.taperwright.shaping.kit.GivenKit.GONE;
import static org.taperwright.shaping.kit.GivenKit.HAND;
import static org.taperwright.shaping.kit.GivenKit.ROTARY;
import static org.taperwright.shaping.kit.GivenKit.TODAY;
import static org.taperwright.shaping.kit.GivenKit.kit;
import static org.taperwright.shaping.kit.GivenKit.piece;
import static org.taperwright.shaping.kit.GivenKit.use;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.kit.DiscardReason.Weight;

class DiscardRulesTest {
    private static final List<DiscardRule> RULES = DiscardRules.all(DiscardRules.USUAL_LIFE_SHARE);

    private static DiscardList list(Piece... pieces) {
        return DiscardRules.list(kit(pieces), GivenKit.catalogue(), RULES, TODAY);
    }

    /** The one reason for a piece. */
    private static DiscardReason reason(Piece piece) {
        assertThat(list(piece).items()).hasSize(1);
        assertThat(list(piece).items().get(0).reasons()).hasSize(1);
        return list(piece).items().get(0).reasons().get(0);
    }

    private static Piece spent(double low, double central, double high) {
        return piece("p", ROTARY)
                .draft()
                .usesBefore(1)
                .lifeSpentBefore(Optional.of(new LifeSpent(low, central, high)))
                .piece();
    }

    @Test
    void aNewPieceIsKept() {
        assertThat(list(piece("p", ROTARY), piece("q", HAND))).isEqualTo(new DiscardList(List.of(), List.of()));
    }

    @Test
    void aPieceUsedAsOftenAsAllowedIsDiscarded() {
        Piece nearly = piece("p", ROTARY).draft().usesBefore(3).piece();
        assertThat(list(nearly).items()).isEmpty();
        Piece spent = nearly.draft().log(List.of(use(TODAY, 1))).piece();
        assertThat(reason(spent))
                .isEqualTo(new DiscardReason(
                        "uses-reached",
                        Weight.DISCARD,
                        "Used 4 times; its maker allows 4.",
                        Optional.empty(),
                        "the maker's instructions, as entered with the instrument"));
    }

    @Test
    void whereTheMakerStatesNoNumberOfUsesNoneIsReached() {
        assertThat(list(piece("p", HAND).draft().usesBefore(900).piece()).items())
                .isEmpty();
    }

    @Test
    void aPieceWhoseEstimateReachesTheLimitIsDiscarded() {
        assertThat(reason(spent(0.2, 0.5, 1.1)))
                .isEqualTo(new DiscardReason(
                        "life-share",
                        Weight.DISCARD,
                        "An estimated 50 % (20 to 110 %) of its fatigue life is spent; it reaches the limit of 50 %.",
                        Optional.of(Standing.ESTIMATE),
                        "common practice, no source"));
    }

    @Test
    void aPieceWhoseBandReachesTheLimitIsConsidered() {
        DiscardReason reason = reason(spent(0.1, 0.3, 0.6));
        assertThat(reason.weight()).isEqualTo(Weight.CONSIDER);
        assertThat(reason.sentence())
                .isEqualTo("An estimated 30 % (10 to 60 %) of its fatigue life is spent;"
                        + " its band reaches the limit of 50 %.");
        assertThat(list(spent(0.1, 0.3, 0.6)).items().get(0).due()).isFalse();
        assertThat(list(spent(0.1, 0.3, 0.499)).items()).isEmpty();
    }

    @Test
    void usesThatNoEstimateCoversAreSaid() {
        Piece piece = spent(0.2, 0.6, 1).draft().log(List.of(use(TODAY, 1))).piece();
        assertThat(reason(piece).sentence()).endsWith(" Of its uses, 1 of 2 are not in the estimate.");
    }

    @Test
    void anotherLimitMayBeSet() {
        DiscardList strict =
                DiscardRules.list(kit(spent(0.1, 0.3, 0.4)), GivenKit.catalogue(), DiscardRules.all(0.25), TODAY);
        assertThat(strict.items()).hasSize(1);
        assertThatIllegalArgumentException().isThrownBy(() -> DiscardRules.all(0));
        assertThatIllegalArgumentException().isThrownBy(() -> DiscardRules.all(Double.NaN));
    }

    @Test
    void anyDamageSeenIsAReason() {
        for (Damage damage : Damage.values()) {
            Piece piece = piece("p", ROTARY).draft().damage(List.of(damage)).piece();
            assertThat(reason(piece).sentence()).isEqualTo("Damage was seen on it: " + damage.word() + ".");
            assertThat(reason(piece).rule()).isEqualTo("damage-seen");
            assertThat(reason(piece).source()).isEqualTo("common practice, no source");
        }
    }

    @Test
    void aPieceIsUsedUpToItsLastDayAndNoLonger() {
        Piece today = piece("p", ROTARY).draft().expiry(Optional.of(TODAY)).piece();
        assertThat(list(today).items()).isEmpty();
        Piece over = today.draft().expiry(Optional.of(TODAY.minusDays(1))).piece();
        assertThat(reason(over))
                .isEqualTo(new DiscardReason(
                        "expired",
                        Weight.DISCARD,
                        "Expired on 2026-06-14.",
                        Optional.empty(),
                        "the maker's label, as entered with the piece"));
    }

    @Test
    void severalReasonsStandTogetherAndDiscardedPiecesAreNotListedAgain() {
        Piece worn = piece("p", ROTARY)
                .draft()
                .usesBefore(4)
                .damage(List.of(Damage.BENT))
                .expiry(Optional.of(TODAY.minusYears(1)))
                .piece();
        assertThat(list(worn).items().get(0).reasons())
                .extracting(DiscardReason::rule)
                .containsExactly("uses-reached", "damage-seen", "expired");
        assertThat(list(worn).items().get(0).due()).isTrue();
        Piece gone = worn.draft()
                .discarded(Optional.of(new Discarding(TODAY, "bent", true)))
                .piece();
        assertThat(list(gone).items()).isEmpty();
    }

    @Test
    void aPieceWithoutAnEntryIsCheckedAsFarAsItCanBe() {
        DiscardList list = list(piece("p", GONE)
                .draft()
                .usesBefore(99)
                .damage(List.of(Damage.BLUNT))
                .piece());
        assertThat(list.items().get(0).reasons())
                .extracting(DiscardReason::rule)
                .containsExactly("damage-seen");
        assertThat(list.remarks())
                .extracting(Fault::sentence)
                .containsExactly("pieces: the entry of p is not in the catalogue, so the uses allowed are not known;"
                        + " expected its entry");
    }

    @Test
    void eachRuleExplainsItselfAndNamesItsSource() {
        assertThat(RULES).extracting(DiscardRule::id).doesNotHaveDuplicates().hasSize(4);
        assertThat(RULES).allSatisfy(rule -> {
            assertThat(rule.explanation())
                    .startsWith("A piece is discarded once ")
                    .endsWith(".");
            assertThat(rule.source()).isNotBlank();
        });
        assertThat(RULES.get(1).explanation()).contains("reaches 50 %");
    }
}
