package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.date;
import static org.taperwright.library.exchange.form.Forms.flag;
import static org.taperwright.library.exchange.form.Forms.identifier;
import static org.taperwright.library.exchange.form.Forms.line;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.thing;
import static org.taperwright.library.exchange.form.Forms.whole;
import static org.taperwright.library.exchange.form.Forms.word;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.kit.Damage;
import org.taperwright.shaping.kit.Discarding;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.kit.Use;

/** The form of one piece of a kit. */
final class PieceForm {
    private static final int MOST_USES = 10_000;
    private static final Form<Integer> COUNT = whole(0, 1_000_000);
    private static final Form<Double> SHARE = number(0, LifeSpent.MOST, "1 for a whole life");

    private static final Field<LifeSpent, Double> LOW = required("low", SHARE, "lower end of the band", LifeSpent::low);
    private static final Field<LifeSpent, Double> CENTRAL =
            required("central", SHARE, "the estimate", LifeSpent::central);
    private static final Field<LifeSpent, Double> HIGH =
            required("high", SHARE, "upper end of the band", LifeSpent::high);
    private static final RecordForm<LifeSpent> LIFE_SPENT_FORM = new RecordForm<>(
            "lifeSpent",
            "An estimated share of the fatigue life that is spent, 1 for the whole.",
            true,
            List.of(LOW, CENTRAL, HIGH),
            values -> new LifeSpent(values.of(LOW), values.of(CENTRAL), values.of(HIGH)));

    private static final Field<Use, LocalDate> USED_ON = required("date", date(), "when", Use::date);
    private static final Field<Use, Integer> CANALS = required("canals", COUNT, "canals it shaped", Use::canals);
    private static final Field<Use, Optional<ThingId>> SEQUENCE =
            optional("sequence", thing(), "identifier of the sequence followed", Use::sequence);
    private static final Field<Use, Optional<LifeSpent>> LIFE_SPENT =
            optional("lifeSpent", LIFE_SPENT_FORM, "share of the fatigue life spent by it, estimated", Use::lifeSpent);
    private static final Field<Use, String> USE_NOTE =
            standing("note", "", note(), "free text, with nothing about a patient", Use::note);
    private static final RecordForm<Use> USE = new RecordForm<>(
            "use",
            "One use of a piece.",
            true,
            List.of(USED_ON, CANALS, SEQUENCE, LIFE_SPENT, USE_NOTE),
            values -> new Use(
                    values.of(USED_ON),
                    values.of(CANALS),
                    values.of(SEQUENCE),
                    values.of(LIFE_SPENT),
                    values.of(USE_NOTE)));

    private static final Field<Discarding, LocalDate> DISCARDED_ON = required("date", date(), "when", Discarding::date);
    private static final Field<Discarding, String> REASON = required("reason", note(), "why", Discarding::reason);
    private static final Field<Discarding, Boolean> REPLACEMENT = standing(
            "replacementWanted",
            false,
            flag(),
            "whether a new piece is to be ordered in its place",
            Discarding::replacementWanted);
    private static final RecordForm<Discarding> DISCARDING = new RecordForm<>(
            "discarding",
            "That a piece was discarded.",
            true,
            List.of(DISCARDED_ON, REASON, REPLACEMENT),
            values -> new Discarding(values.of(DISCARDED_ON), values.of(REASON), values.of(REPLACEMENT)));

    private static final Field<Piece, String> ID =
            required("id", identifier(), "what tells it from the kit's other pieces", Piece::id);
    private static final Field<Piece, ThingId> INSTRUMENT =
            required("instrument", thing(), "identifier of its catalogue entry", Piece::instrument);
    private static final Field<Piece, String> DESIGNATION =
            standing("designation", "", line(), "a copy of the entry's name", Piece::designation);
    private static final Field<Piece, String> LOT = standing("lot", "", line(), "its lot", Piece::lot);
    private static final Field<Piece, Optional<LocalDate>> EXPIRY =
            optional("expiry", date(), "last day on which it may be used", Piece::expiry);
    private static final Field<Piece, Integer> USES_BEFORE =
            standing("usesBefore", 0, COUNT, "uses before the log began", Piece::usesBefore);
    private static final Field<Piece, Integer> STERILISATIONS =
            standing("sterilisations", 0, COUNT, "how many times it was sterilised", Piece::sterilisations);
    private static final Field<Piece, Optional<LifeSpent>> LIFE_SPENT_BEFORE = optional(
            "lifeSpentBefore",
            LIFE_SPENT_FORM,
            "share of the fatigue life spent before the log began, estimated",
            Piece::lifeSpentBefore);
    private static final Field<Piece, List<Damage>> DAMAGE = standing(
            "damage",
            List.of(),
            list(word(Damage.values(), Damage::word), 0, Damage.values().length),
            "what was seen on it",
            Piece::damage);
    private static final Field<Piece, Optional<Discarding>> DISCARDED =
            optional("discarded", DISCARDING, "when and why; left out while it is in use", Piece::discarded);
    private static final Field<Piece, List<Use>> LOG =
            standing("log", List.of(), list(USE, 0, MOST_USES), "its uses in order", Piece::log);
    private static final Field<Piece, String> NOTE =
            standing("note", "", note(), "free text, with nothing about a patient", Piece::note);

    static final RecordForm<Piece> FORM = new RecordForm<>(
            "piece",
            "One piece of a kit.",
            false,
            List.of(
                    ID,
                    INSTRUMENT,
                    DESIGNATION,
                    LOT,
                    EXPIRY,
                    USES_BEFORE,
                    STERILISATIONS,
                    LIFE_SPENT_BEFORE,
                    DAMAGE,
                    DISCARDED,
                    LOG,
                    NOTE),
            values -> new Piece(
                    values.of(ID),
                    values.of(INSTRUMENT),
                    values.of(DESIGNATION),
                    values.of(LOT),
                    values.of(EXPIRY),
                    values.of(USES_BEFORE),
                    values.of(STERILISATIONS),
                    values.of(LIFE_SPENT_BEFORE),
                    values.of(DAMAGE),
                    values.of(DISCARDED),
                    values.of(LOG),
                    values.of(NOTE)));

    private PieceForm() {}
}
