package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;

/** A piece being changed: starts from another, changes some of it, ends as a new one. */
public final class PieceDraft {
    private String id;
    private ThingId instrument;
    private String designation;
    private String lot;
    private Optional<LocalDate> expiry;
    private int usesBefore;
    private int sterilisations;
    private Optional<LifeSpent> lifeSpentBefore;
    private List<Damage> damage;
    private Optional<Discarding> discarded;
    private List<Use> log;
    private String note;

    PieceDraft(Piece from) {
        id = from.id();
        instrument = from.instrument();
        designation = from.designation();
        lot = from.lot();
        expiry = from.expiry();
        usesBefore = from.usesBefore();
        sterilisations = from.sterilisations();
        lifeSpentBefore = from.lifeSpentBefore();
        damage = from.damage();
        discarded = from.discarded();
        log = from.log();
        note = from.note();
    }

    /** Changes the identifier. */
    public PieceDraft id(String value) {
        id = value;
        return this;
    }

    /** Changes the catalogue entry. */
    public PieceDraft instrument(ThingId value) {
        instrument = value;
        return this;
    }

    /** Changes the copy of the entry's name. */
    public PieceDraft designation(String value) {
        designation = value;
        return this;
    }

    /** Changes the lot. */
    public PieceDraft lot(String value) {
        lot = value;
        return this;
    }

    /** Changes the expiry. */
    public PieceDraft expiry(Optional<LocalDate> value) {
        expiry = value;
        return this;
    }

    /** Changes the uses before the log began. */
    public PieceDraft usesBefore(int value) {
        usesBefore = value;
        return this;
    }

    /** Changes the sterilisations. */
    public PieceDraft sterilisations(int value) {
        sterilisations = value;
        return this;
    }

    /** Changes the life spent before the log began. */
    public PieceDraft lifeSpentBefore(Optional<LifeSpent> value) {
        lifeSpentBefore = value;
        return this;
    }

    /** Changes the damage seen. */
    public PieceDraft damage(List<Damage> value) {
        damage = value;
        return this;
    }

    /** Changes whether it is discarded. */
    public PieceDraft discarded(Optional<Discarding> value) {
        discarded = value;
        return this;
    }

    /** Changes the log of uses. */
    public PieceDraft log(List<Use> value) {
        log = value;
        return this;
    }

    /** Changes the note. */
    public PieceDraft note(String value) {
        note = value;
        return this;
    }

    /** The piece as changed. */
    public Piece piece() {
        return new Piece(
                id,
                instrument,
                designation,
                lot,
                expiry,
                usesBefore,
                sterilisations,
                lifeSpentBefore,
                damage,
                discarded,
                log,
                note);
    }
}
