package org.taperwright.library.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.exchange.form.Findings;
import org.taperwright.library.exchange.form.Forms;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.sequence.Sequence;

/**
 * The form of a whole thing: the fields of its record and, before them, which form and version it is and the thing's
 * identifier.
 *
 * @param kind the kind of thing
 * @param version the version written; a reader for each older one stands in {@link #read}
 * @param type the record
 * @param form its fields
 */
record ThingForm<R extends Record>(ThingKind kind, int version, Class<R> type, RecordForm<R> form) {
    static final String PREFIX = "taperwright/";
    /** The fields of the envelope; the first lets an editor find the published schema and is not kept. */
    static final Set<String> ENVELOPE = Set.of("$schema", "form", "version", "id");

    /** The form of a kind. */
    static ThingForm<?> of(ThingKind kind) {
        return switch (kind) {
            case DESIGN -> new ThingForm<>(kind, 1, Design.class, DesignForm.FORM);
            case INSTRUMENT -> new ThingForm<>(kind, 1, Instrument.class, InstrumentForm.FORM);
            case MOTOR -> new ThingForm<>(kind, 1, Motor.class, MotorForm.FORM);
            case CANAL -> new ThingForm<>(kind, 1, Canal.class, CanalForm.FORM);
            case SEQUENCE -> new ThingForm<>(kind, 1, Sequence.class, SequenceForm.FORM);
            case COMPARISON -> new ThingForm<>(kind, 1, SavedComparison.class, ComparisonForm.FORM);
        };
    }

    /** The form of a name, such as {@code taperwright/design}. */
    static Optional<ThingForm<?>> named(String name) {
        return Arrays.stream(ThingKind.values())
                .filter(kind -> name.equals(PREFIX + kind.word()))
                .findFirst()
                .map(ThingForm::of);
    }

    /** Names of all forms of single things. */
    static List<String> names() {
        return Arrays.stream(ThingKind.values())
                .map(kind -> PREFIX + kind.word())
                .toList();
    }

    String name() {
        return PREFIX + kind.word();
    }

    /** Reads an object whose form is known to be this one. */
    Optional<ReadThing> read(Node.ObjectNode node, String path, String source, Findings findings) {
        if (!Versions.known(node, path, version, findings)) {
            return Optional.empty();
        }
        Optional<ThingId> id = identifier(node, path, findings);
        Optional<R> thing = form.read(node, path, ENVELOPE, findings);
        return id.isPresent() && thing.isPresent()
                ? Optional.of(new ReadThing(id.get(), thing.get(), new Origin(source, node)))
                : Optional.empty();
    }

    private static Optional<ThingId> identifier(Node.ObjectNode node, String path, Findings findings) {
        String where = path.isEmpty() ? "id" : path + ".id";
        Node.Member member = node.members().get("id");
        if (member == null) {
            findings.refuse(node.place(), where, "is missing", "expected the thing's identifier");
            return Optional.empty();
        }
        return Forms.thing().read(member.value(), where, findings);
    }

    /** Writes a thing of this form. */
    void write(ThingId id, Record thing, JsonWriter out) {
        out.beginObject(false);
        out.name("form").text(name()).name("version").number(version);
        out.name("id").text(id.value());
        form.writeFields(type.cast(thing), out);
        out.endObject();
    }
}
