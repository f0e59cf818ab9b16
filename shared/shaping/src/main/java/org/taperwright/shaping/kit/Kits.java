package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;

/**
 * Edits of a kit as pure functions: each returns a new kit and leaves the old one as it was. An identifier that no piece
 * has is passed over.
 */
public final class Kits {
    private static final int LONGEST_STEM = 70;

    private Kits() {}

    /** New pieces of a catalogue entry, with its lot and expiry. */
    public static Kit added(Kit kit, ThingId id, Instrument instrument, int count) {
        List<Piece> pieces = new ArrayList<>(kit.pieces());
        Set<String> taken = new HashSet<>(pieces.stream().map(Piece::id).toList());
        for (int i = 0; i < count; i++) {
            pieces.add(new Piece(
                    freshId(instrument.name(), taken),
                    id,
                    instrument.name(),
                    instrument.supply().lot(),
                    instrument.supply().expiry(),
                    0,
                    0,
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    ""));
        }
        return withPieces(kit, pieces);
    }

    /** A use logged of some pieces. */
    public static Kit used(Kit kit, Collection<String> pieces, Use use) {
        return changed(kit, pieces, piece -> {
            List<Use> log = new ArrayList<>(piece.log());
            log.add(use);
            return piece.draft().log(log).piece();
        });
    }

    /** Some pieces sterilised once more. */
    public static Kit sterilised(Kit kit, Collection<String> pieces) {
        return changed(
                kit,
                pieces,
                piece ->
                        piece.draft().sterilisations(piece.sterilisations() + 1).piece());
    }

    /** Damage seen on a piece, besides what was seen before. */
    public static Kit damaged(Kit kit, String piece, Damage damage) {
        return changed(kit, Set.of(piece), each -> {
            List<Damage> seen = new ArrayList<>(each.damage());
            seen.add(damage);
            return each.draft().damage(seen).piece();
        });
    }

    /** Some pieces discarded; a new piece is wanted for each. */
    public static Kit discarded(Kit kit, Collection<String> pieces, LocalDate date, String reason) {
        return changed(
                kit,
                pieces,
                piece -> piece.draft()
                        .discarded(Optional.of(new Discarding(date, reason, true)))
                        .piece());
    }

    /** A discarded piece replaced by a new one of a catalogue entry. */
    public static Kit replaced(Kit kit, String piece, ThingId id, Instrument instrument) {
        Kit settled = changed(
                kit,
                Set.of(piece),
                each -> each.draft()
                        .discarded(each.discarded().map(gone -> new Discarding(gone.date(), gone.reason(), false)))
                        .piece());
        return added(settled, id, instrument, 1);
    }

    /** Another piece in the place of the one with its identifier. */
    public static Kit withPiece(Kit kit, Piece piece) {
        return changed(kit, Set.of(piece.id()), each -> piece);
    }

    /** Some pieces taken out of the kit, their log with them. */
    public static Kit removed(Kit kit, Collection<String> pieces) {
        Set<String> gone = Set.copyOf(pieces);
        return withPieces(
                kit,
                kit.pieces().stream()
                        .filter(piece -> !gone.contains(piece.id()))
                        .toList());
    }

    /** What is impossible or unusual in logging a use; it can be logged when nothing is impossible. */
    public static List<Fault> faults(Kit kit, Collection<String> pieces, Use use, LocalDate today) {
        List<Fault> faults = new ArrayList<>();
        if (pieces.isEmpty()) {
            faults.add(Fault.impossible("pieces", "no piece is chosen", "expected those that were used"));
        }
        if (use.date().isAfter(today)) {
            faults.add(Fault.unusual("date", use.date() + " has not come yet", "expected today or earlier"));
        }
        if (use.canals() == 0) {
            faults.add(Fault.unusual("canals", "no canal was shaped", "expected at least one"));
        }
        for (String id : pieces) {
            Optional<Piece> found = kit.piece(id);
            if (found.isEmpty()) {
                faults.add(Fault.impossible("pieces", "the kit has no piece " + id, "expected one of the kit"));
            }
            found.ifPresent(piece -> check(piece, use, faults));
        }
        return faults;
    }

    private static void check(Piece piece, Use use, List<Fault> faults) {
        piece.discarded()
                .ifPresent(gone -> faults.add(Fault.impossible(
                        "pieces",
                        piece.id() + " was discarded on " + gone.date(),
                        "expected a piece in use; bring this one back first if it was used")));
        if (!piece.log().isEmpty()) {
            LocalDate last = piece.log().get(piece.log().size() - 1).date();
            if (use.date().isBefore(last)) {
                faults.add(Fault.unusual(
                        "date", piece.id() + " was last used on " + last, "expected that day or a later one"));
            }
        }
    }

    private static Kit changed(Kit kit, Collection<String> pieces, UnaryOperator<Piece> change) {
        Set<String> chosen = Set.copyOf(pieces);
        return withPieces(
                kit,
                kit.pieces().stream()
                        .map(piece -> chosen.contains(piece.id()) ? change.apply(piece) : piece)
                        .toList());
    }

    private static Kit withPieces(Kit kit, List<Piece> pieces) {
        return new Kit(kit.name(), kit.purpose(), kit.motor(), pieces, kit.note());
    }

    /** An identifier made of the name's letters and digits and the first number that is free. */
    private static String freshId(String name, Set<String> taken) {
        String letters =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String stem = letters.isEmpty() ? "piece" : letters.substring(0, Math.min(LONGEST_STEM, letters.length()));
        int number = 1;
        while (!taken.add(stem + '-' + number)) {
            number++;
        }
        return stem + '-' + number;
    }
}
