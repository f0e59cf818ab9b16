package org.taperwright.kit.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Damage;
import org.taperwright.shaping.kit.DiscardList;
import org.taperwright.shaping.kit.DiscardReason;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.Kits;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.kit.Use;
import org.taperwright.workbench.api.Desk;

/** The edits of the kit shown, each with a name. */
final class KitEdits {
    private final Desk desk;
    private final Consumer<List<Fault>> refused;
    private Optional<ThingId> shown = Optional.empty();

    /**
     * @param refused receives why an edit was not made; nothing when it was
     */
    KitEdits(Desk desk, Consumer<List<Fault>> refused) {
        this.desk = desk;
        this.refused = refused;
    }

    /** Takes up a kit. */
    void open(ThingId id) {
        shown = Optional.of(id);
    }

    /** The edits of the kit taken up now, whichever is taken up later. */
    KitEdits here() {
        KitEdits same = new KitEdits(desk, refused);
        same.shown = shown;
        return same;
    }

    /** The kit taken up. */
    Optional<Kit> kit() {
        return shown.flatMap(id -> desk.snapshot().thing(id, Kit.class));
    }

    /** Makes a new kit and selects it. */
    void create() {
        List<String> taken =
                desk.snapshot().ofKind(ThingKind.KIT).stream().map(Entry::name).toList();
        int number = taken.size() + 1;
        while (taken.contains("Kit " + number)) {
            number++;
        }
        ThingId id = ThingId.fresh();
        Kit made = new Kit("Kit " + number, "", Optional.empty(), List.of(), "");
        if (desk.edit("Add " + made.name(), List.of(new Change.Put(id, made)))) {
            desk.select(id);
        }
    }

    void rename(String name) {
        if (!name.isBlank()) {
            change(
                    "Name of the kit to " + name,
                    kit -> new Kit(name, kit.purpose(), kit.motor(), kit.pieces(), kit.note()));
        }
    }

    void purpose(String purpose) {
        change("Purpose of " + name(), kit -> new Kit(kit.name(), purpose, kit.motor(), kit.pieces(), kit.note()));
    }

    void motor(Optional<ThingId> motor) {
        String words =
                motor.flatMap(id -> desk.snapshot().entry(id)).map(Entry::name).orElse("none");
        change(
                "Motor of " + name() + " to " + words,
                kit -> new Kit(kit.name(), kit.purpose(), motor, kit.pieces(), kit.note()));
    }

    void note(String note) {
        change("Note of " + name(), kit -> new Kit(kit.name(), kit.purpose(), kit.motor(), kit.pieces(), note));
    }

    /** Takes things of the library in: a piece of each instrument, a motor as the kit's; whether any was taken. */
    boolean add(List<ThingId> ids) {
        List<ThingId> instruments = ids.stream()
                .filter(id -> desk.snapshot().thing(id, Instrument.class).isPresent())
                .toList();
        ids.stream()
                .filter(id -> desk.snapshot().thing(id, Motor.class).isPresent())
                .findFirst()
                .ifPresent(id -> motor(Optional.of(id)));
        if (!instruments.isEmpty()) {
            String what = instruments.size() == 1
                    ? desk.snapshot().entry(instruments.get(0)).map(Entry::name).orElse("a piece")
                    : instruments.size() + " pieces";
            change("Add " + what + " to " + name(), kit -> {
                Kit filled = kit;
                for (ThingId id : instruments) {
                    filled = Kits.added(
                            filled,
                            id,
                            desk.snapshot().thing(id, Instrument.class).orElseThrow(),
                            1);
                }
                return filled;
            });
        }
        return !instruments.isEmpty();
    }

    /**
     * Logs a use of today; what is impossible about it when it was not logged, and what is unusual when it was.
     *
     * @param perCanal share of life that one canal takes from a piece of each instrument, where estimated
     */
    List<Fault> use(List<String> pieces, int canals, Optional<ThingId> sequence, Map<ThingId, LifeSpent> perCanal) {
        List<Fault> faults = kit().map(
                        kit -> Kits.faults(kit, pieces, use(canals, sequence, Optional.empty()), LocalDate.now()))
                .orElse(List.of());
        if (faults.stream().noneMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)) {
            change("Log a use of " + counted(pieces), kit -> {
                Kit used = kit;
                for (String id : pieces) {
                    Optional<LifeSpent> spent = kit.piece(id)
                            .flatMap(piece -> Optional.ofNullable(perCanal.get(piece.instrument())))
                            .map(one -> one.times(canals));
                    used = Kits.used(used, List.of(id), use(canals, sequence, spent));
                }
                return used;
            });
        }
        return faults;
    }

    private static Use use(int canals, Optional<ThingId> sequence, Optional<LifeSpent> spent) {
        return new Use(LocalDate.now(), canals, sequence, spent, "");
    }

    void sterilised(List<String> pieces) {
        change("Log a sterilisation of " + counted(pieces), kit -> Kits.sterilised(kit, pieces));
    }

    void damaged(List<String> pieces, Damage damage) {
        change("Note that " + counted(pieces) + " is " + damage.word(), kit -> {
            Kit noted = kit;
            for (String piece : pieces) {
                noted = Kits.damaged(noted, piece, damage);
            }
            return noted;
        });
    }

    void discard(List<String> pieces, String reason) {
        change("Discard " + counted(pieces), kit -> Kits.discarded(kit, pieces, LocalDate.now(), reason));
    }

    /** Discards pieces for the reasons the rules give, as one edit. */
    void discard(List<DiscardList.Item> items) {
        List<String> ids = items.stream().map(item -> item.piece().id()).toList();
        change("Discard " + counted(ids), kit -> {
            Kit left = kit;
            for (DiscardList.Item item : items) {
                List<String> sentences =
                        item.reasons().stream().map(DiscardReason::sentence).toList();
                left = Kits.discarded(left, List.of(item.piece().id()), LocalDate.now(), String.join(" ", sentences));
            }
            return left;
        });
    }

    /** Puts a new piece of the same entry in the place of each discarded one. */
    void replace(List<String> pieces) {
        change("Replace " + counted(pieces), kit -> {
            Kit replaced = kit;
            for (String piece : pieces) {
                Optional<Piece> old =
                        kit.piece(piece).filter(each -> each.discarded().isPresent());
                Optional<Instrument> entry =
                        old.flatMap(each -> desk.snapshot().thing(each.instrument(), Instrument.class));
                if (entry.isPresent()) {
                    replaced = Kits.replaced(replaced, piece, old.get().instrument(), entry.get());
                }
            }
            return replaced;
        });
    }

    /** Takes pieces out of the kit, their logs with them. */
    void remove(List<String> pieces) {
        change("Take " + counted(pieces) + " out of " + name(), kit -> Kits.removed(kit, pieces));
    }

    private String name() {
        return kit().map(Kit::name).orElse("the kit");
    }

    private static String counted(List<String> pieces) {
        return pieces.size() == 1 ? pieces.get(0) : pieces.size() + " pieces";
    }

    private void change(String name, UnaryOperator<Kit> change) {
        kit().ifPresent(before -> {
            Kit after = change.apply(before);
            if (!after.equals(before)) {
                refused.accept(desk.tryEdit(name, List.of(new Change.Put(shown.orElseThrow(), after))));
            }
        });
    }
}
