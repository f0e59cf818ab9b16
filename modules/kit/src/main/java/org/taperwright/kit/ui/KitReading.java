package org.taperwright.kit.ui;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Coverages;
import org.taperwright.shaping.kit.DiscardList;
import org.taperwright.shaping.kit.DiscardRules;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.KitCard;
import org.taperwright.shaping.kit.KitCardPage;
import org.taperwright.shaping.kit.KitCards;
import org.taperwright.shaping.kit.MotorChoice;
import org.taperwright.shaping.kit.MotorChoices;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.kit.Reorder;
import org.taperwright.shaping.kit.Reorders;
import org.taperwright.shaping.sequence.Sequence;

/**
 * Everything the window says of a kit, worked out off the event thread.
 *
 * @param id the kit's identifier
 * @param kit the kit
 * @param catalogue the entries of its pieces and of the sequences' steps
 * @param card the card: pieces, what to discard, which sequences it can serve
 * @param extents how many pieces in use it has of each size, taper and length
 * @param wanted the sizes, tapers and lengths that the saved sequences ask for, each with their names
 * @param page the card as an HTML page
 * @param orders what to order for the whole library, by supplier
 * @param motors every motor set against the kit
 */
record KitReading(
        ThingId id,
        Kit kit,
        Map<ThingId, Instrument> catalogue,
        KitCard card,
        Map<Coverages.Extent, Integer> extents,
        Map<Coverages.Extent, List<String>> wanted,
        String page,
        List<Reorder> orders,
        List<MotorChoice> motors) {
    /** Reads a kit as of a day; the share of fatigue life at which a piece is discarded is the usual one. */
    static KitReading of(ThingId id, Kit kit, Snapshot library, LocalDate today, Progress progress) {
        Map<ThingId, Instrument> instruments = things(library, ThingKind.INSTRUMENT, Instrument.class);
        Map<ThingId, Motor> motors = things(library, ThingKind.MOTOR, Motor.class);
        Map<ThingId, Sequence> sequences = things(library, ThingKind.SEQUENCE, Sequence.class);
        progress.check();
        Map<ThingId, Instrument> concerned = new LinkedHashMap<>();
        kit.pieces().stream().map(Piece::instrument).forEach(each -> keep(each, instruments, concerned));
        sequences.values().stream()
                .flatMap(sequence -> sequence.steps().stream())
                .flatMap(step -> step.uses().stream())
                .forEach(each -> keep(each, instruments, concerned));
        KitCard card =
                KitCards.of(kit, concerned, motors, sequences, DiscardRules.all(DiscardRules.USUAL_LIFE_SHARE), today);
        progress.check();
        List<Kit> kits = library.ofKind(ThingKind.KIT).stream()
                .map(entry -> (Kit) entry.thing())
                .toList();
        return new KitReading(
                id,
                kit,
                concerned,
                card,
                Coverages.extents(kit, concerned),
                Coverages.wanted(sequences.values(), concerned),
                KitCardPage.of(card),
                Reorders.of(instruments, kits),
                MotorChoices.of(kit, concerned, motors));
    }

    private static void keep(ThingId id, Map<ThingId, Instrument> from, Map<ThingId, Instrument> into) {
        Instrument found = from.get(id);
        if (found != null) {
            into.put(id, found);
        }
    }

    private static <T extends Record> Map<ThingId, T> things(Snapshot library, ThingKind kind, Class<T> type) {
        Map<ThingId, T> things = new LinkedHashMap<>();
        for (Entry entry : library.ofKind(kind)) {
            things.put(entry.id(), type.cast(entry.thing()));
        }
        return things;
    }

    /** What is said of a piece in use. */
    PieceState state(Piece piece) {
        if (piece.discarded().isPresent()) {
            return PieceState.DISCARDED;
        }
        return card.discard().items().stream()
                .filter(item -> item.piece().id().equals(piece.id()))
                .findFirst()
                .map(DiscardList.Item::due)
                .map(due -> due ? PieceState.DUE : PieceState.CONSIDER)
                .orElse(PieceState.IN_USE);
    }
}
