package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;

/** The rules by which pieces are discarded, and the list they make. */
public final class DiscardRules {
    /**
     * Share of the estimated fatigue life at which a piece is discarded, unless a person sets another: half, so that an
     * error of a factor of two in the estimate is covered. Common practice, no source.
     */
    public static final double USUAL_LIFE_SHARE = 0.5;

    private DiscardRules() {}

    /**
     * All rules.
     *
     * @param lifeShare limit of the estimated share of fatigue life spent, above 0, 1 for the whole
     */
    public static List<DiscardRule> all(double lifeShare) {
        if (!(lifeShare > 0)) {
            throw new IllegalArgumentException("no limit: " + lifeShare);
        }
        return List.of(new UsesReached(), new LifeShareSpent(lifeShare), new DamageSeen(), new Expired());
    }

    /** The pieces in use that some rule would have discarded, as of a day. */
    public static DiscardList list(
            Kit kit, Map<ThingId, Instrument> catalogue, List<DiscardRule> rules, LocalDate today) {
        List<DiscardList.Item> items = new ArrayList<>();
        List<Fault> remarks = new ArrayList<>();
        for (Piece piece : kit.inUse()) {
            Optional<Instrument> entry = Optional.ofNullable(catalogue.get(piece.instrument()));
            if (entry.isEmpty()) {
                remarks.add(Fault.unusual(
                        "pieces",
                        "the entry of " + piece.id() + " is not in the catalogue, so the uses allowed are not known",
                        "expected its entry"));
            }
            List<DiscardReason> reasons = rules.stream()
                    .flatMap(rule -> rule.check(piece, entry, today).stream())
                    .toList();
            if (!reasons.isEmpty()) {
                items.add(new DiscardList.Item(piece, reasons));
            }
        }
        return new DiscardList(items, remarks);
    }
}
