package org.taperwright.shaping.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.taperwright.shaping.kit.GivenKit.HAND;
import static org.taperwright.shaping.kit.GivenKit.ROTARY;
import static org.taperwright.shaping.kit.GivenKit.TODAY;
import static org.taperwright.shaping.kit.GivenKit.kit;
import static org.taperwright.shaping.kit.GivenKit.piece;
import static org.taperwright.shaping.kit.GivenKit.use;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Supply;

class KitsTest {
    private static final Kit PAIR = kit(piece("a", HAND), piece("b", ROTARY));

    private static List<String> faults(Kit kit, List<String> pieces, Use use) {
        return Kits.faults(kit, pieces, use, TODAY).stream()
                .map(Fault::sentence)
                .toList();
    }

    @Test
    void newPiecesTakeTheEntrysLotAndExpiryAndANameOfTheirOwn() {
        LocalDate expiry = LocalDate.of(2028, 1, 1);
        Instrument fen = GivenKit.catalogue()
                .get(ROTARY)
                .draft()
                .supply(Supply.NONE.withLot("L7").withExpiry(Optional.of(expiry)))
                .instrument();
        Kit kit = Kits.added(Kits.added(kit(piece("fen-30-06-2", HAND)), ROTARY, fen, 2), ROTARY, fen, 1);
        assertThat(kit.pieces())
                .extracting(Piece::id)
                .containsExactly("fen-30-06-2", "fen-30-06-1", "fen-30-06-3", "fen-30-06-4");
        assertThat(kit.pieces().get(1).lot()).isEqualTo("L7");
        assertThat(kit.pieces().get(1).expiry()).contains(expiry);
        assertThat(kit.pieces().get(1).designation()).isEqualTo("Fen 30/.06");
        assertThat(kit.pieces().get(1).uses()).isZero();
    }

    @Test
    void aNameWithoutLettersStillGivesAnIdentifier() {
        Instrument unnamed =
                GivenKit.catalogue().get(ROTARY).draft().name("中 §").instrument();
        assertThat(Kits.added(kit(), ROTARY, unnamed, 1).pieces().get(0).id()).isEqualTo("piece-1");
        Instrument long1 = unnamed.draft().name("x".repeat(200)).instrument();
        assertThat(Kits.added(kit(), ROTARY, long1, 1).pieces().get(0).id()).isEqualTo("x".repeat(70) + "-1");
    }

    @Test
    void aUseIsLoggedOfThePiecesChosenAndOfNoOthers() {
        Kit used = Kits.used(PAIR, Set.of("b"), use(TODAY, 2));
        assertThat(used.piece("a")).isEqualTo(PAIR.piece("a"));
        assertThat(used.piece("b").orElseThrow().log()).containsExactly(use(TODAY, 2));
        assertThat(PAIR.piece("b").orElseThrow().log()).isEmpty();
        assertThat(Kits.used(PAIR, Set.of("z"), use(TODAY, 2))).isEqualTo(PAIR);
    }

    @Test
    void aUseIsCheckedBeforeItIsLogged() {
        assertThat(faults(PAIR, List.of("a", "b"), use(TODAY, 1))).isEmpty();
        assertThat(faults(PAIR, List.of(), use(TODAY.plusDays(1), 0)))
                .containsExactly(
                        "pieces: no piece is chosen; expected those that were used",
                        "date: 2026-06-16 has not come yet; expected today or earlier",
                        "canals: no canal was shaped; expected at least one");
        assertThat(faults(PAIR, List.of("z"), use(TODAY, 1)))
                .containsExactly("pieces: the kit has no piece z; expected one of the kit");
        Kit used = Kits.used(PAIR, Set.of("a"), use(TODAY, 1));
        assertThat(faults(used, List.of("a"), use(TODAY.minusDays(2), 1)))
                .containsExactly("date: a was last used on 2026-06-15; expected that day or a later one");
        Kit discarded = Kits.discarded(PAIR, Set.of("a"), TODAY, "bent");
        assertThat(faults(discarded, List.of("a"), use(TODAY, 1)))
                .containsExactly("pieces: a was discarded on 2026-06-15;"
                        + " expected a piece in use; bring this one back first if it was used");
    }

    @Test
    void sterilisationsAreCountedAndDamageAdded() {
        Kit kit = Kits.sterilised(Kits.sterilised(PAIR, Set.of("a", "b")), Set.of("b"));
        assertThat(kit.pieces()).extracting(Piece::sterilisations).containsExactly(1, 2);
        Kit seen = Kits.damaged(Kits.damaged(kit, "a", Damage.BENT), "a", Damage.UNWOUND);
        assertThat(seen.piece("a").orElseThrow().damage()).containsExactly(Damage.UNWOUND, Damage.BENT);
    }

    @Test
    void aDiscardedPieceStaysInTheKitAndWantsANewOneUntilItIsReplaced() {
        Kit kit = Kits.discarded(PAIR, Set.of("b"), TODAY, "unwound");
        assertThat(kit.inUse()).extracting(Piece::id).containsExactly("a");
        assertThat(kit.piece("b").orElseThrow().discarded()).contains(new Discarding(TODAY, "unwound", true));
        Kit whole = Kits.replaced(kit, "b", ROTARY, GivenKit.catalogue().get(ROTARY));
        assertThat(whole.inUse()).extracting(Piece::id).containsExactly("a", "fen-30-06-1");
        assertThat(whole.piece("b").orElseThrow().discarded()).contains(new Discarding(TODAY, "unwound", false));
    }

    @Test
    void aPieceIsChangedOrTakenOutByItsIdentifier() {
        Piece noted = piece("a", HAND).draft().note("n").piece();
        assertThat(Kits.withPiece(PAIR, noted).pieces()).containsExactly(noted, piece("b", ROTARY));
        assertThat(Kits.removed(PAIR, Set.of("a")).pieces()).containsExactly(piece("b", ROTARY));
    }
}
