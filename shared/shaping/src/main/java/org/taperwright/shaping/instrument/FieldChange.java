package org.taperwright.shaping.instrument;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Motion;

/** One field of a catalogue entry set to a value: a part of a {@link ManyEdit}. */
public sealed interface FieldChange {
    /** The field for people, in lower case. */
    String field();

    /** The entry with the field set. */
    Instrument of(Instrument entry);

    private static Instrument supplied(Instrument entry, UnaryOperator<Supply> change) {
        return entry.draft().supply(change.apply(entry.supply())).instrument();
    }

    /** The maker. */
    record Maker(String value) implements FieldChange {
        @Override
        public String field() {
            return "maker";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().maker(value).instrument();
        }
    }

    /** The maker's line. */
    record Line(String value) implements FieldChange {
        @Override
        public String field() {
            return "line";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().line(value).instrument();
        }
    }

    /** The trade's type. */
    record Type(String value) implements FieldChange {
        @Override
        public String field() {
            return "type";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().type(value).instrument();
        }
    }

    /** How it is held. */
    record HeldBy(Drive value) implements FieldChange {
        @Override
        public String field() {
            return "drive";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().drive(value).instrument();
        }
    }

    /** The motion it is meant for. */
    record MovedBy(Motion value) implements FieldChange {
        @Override
        public String field() {
            return "motion";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft()
                    .design(Designs.with(entry.design()).motion(value).design())
                    .instrument();
        }
    }

    /** The length from tip to handle, mm. */
    record Length(double value) implements FieldChange {
        @Override
        public String field() {
            return "length";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft()
                    .design(Designs.with(entry.design()).lengthMm(value).design())
                    .instrument();
        }
    }

    /** Whether the design is assumed by type. */
    record Assumed(boolean value) implements FieldChange {
        @Override
        public String field() {
            return "design assumed";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().designAssumed(value).instrument();
        }
    }

    /** The speed window, rev/min. */
    record Speed(Optional<Window> value) implements FieldChange {
        @Override
        public String field() {
            return "speed";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().speedRpm(value).instrument();
        }
    }

    /** The torque window, N mm. */
    record Torque(Optional<Window> value) implements FieldChange {
        @Override
        public String field() {
            return "torque";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().torqueNmm(value).instrument();
        }
    }

    /** The angles of reciprocation. */
    record Angles(Optional<Reciprocation> value) implements FieldChange {
        @Override
        public String field() {
            return "angles";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().reciprocation(value).instrument();
        }
    }

    /** The uses allowed, 0 when not stated. */
    record UsesAllowed(int value) implements FieldChange {
        @Override
        public String field() {
            return "uses allowed";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().usesAllowed(value).instrument();
        }
    }

    /** Who sells it. */
    record Supplier(String value) implements FieldChange {
        @Override
        public String field() {
            return "supplier";
        }

        @Override
        public Instrument of(Instrument entry) {
            return FieldChange.supplied(entry, supply -> supply.withSupplier(value));
        }
    }

    /** The lot in stock. */
    record Lot(String value) implements FieldChange {
        @Override
        public String field() {
            return "lot";
        }

        @Override
        public Instrument of(Instrument entry) {
            return FieldChange.supplied(entry, supply -> supply.withLot(value));
        }
    }

    /** The last day of use of those in stock. */
    record Expiry(Optional<LocalDate> value) implements FieldChange {
        @Override
        public String field() {
            return "expiry";
        }

        @Override
        public Instrument of(Instrument entry) {
            return FieldChange.supplied(entry, supply -> supply.withExpiry(value));
        }
    }

    /** The price of one piece. */
    record Cost(Optional<Price> value) implements FieldChange {
        @Override
        public String field() {
            return "price";
        }

        @Override
        public Instrument of(Instrument entry) {
            return FieldChange.supplied(entry, supply -> supply.withPrice(value));
        }
    }

    /** The pieces in stock. */
    record Stock(int value) implements FieldChange {
        @Override
        public String field() {
            return "stock";
        }

        @Override
        public Instrument of(Instrument entry) {
            return FieldChange.supplied(entry, supply -> supply.withStock(value));
        }
    }

    /** The fewest that should be in stock. */
    record ReorderLevel(int value) implements FieldChange {
        @Override
        public String field() {
            return "reorder level";
        }

        @Override
        public Instrument of(Instrument entry) {
            return FieldChange.supplied(entry, supply -> supply.withReorderLevel(value));
        }
    }

    /** Free text. */
    record Note(String value) implements FieldChange {
        @Override
        public String field() {
            return "note";
        }

        @Override
        public Instrument of(Instrument entry) {
            return entry.draft().note(value).instrument();
        }
    }
}
