package org.taperwright.library.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.taperwright.library.exchange.form.Findings;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.Forms;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.SavedFilter;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.sequence.Sequence;

/**
 * The form of a whole thing: the fields of its record and, before them, which form and version it is and the thing's
 * identifier.
 *
 * @param kind the kind of thing
 * @param type the record
 * @param versions its fields by version, the first first; the last is the one written
 */
record ThingForm<R extends Record>(ThingKind kind, Class<R> type, List<RecordForm<R>> versions) {
    static final String PREFIX = "taperwright/";
    /** The fields of the envelope; the first lets an editor find the published schema and is not kept. */
    static final Set<String> ENVELOPE = Set.of("$schema", "form", "version", "id");

    private static final Form<Integer> VERSION = Forms.whole(1, Integer.MAX_VALUE);

    private static final Map<String, ThingForm<?>> BY_NAME = Arrays.stream(ThingKind.values())
            .map(ThingForm::of)
            .collect(Collectors.toMap(ThingForm::name, form -> form));

    /** The form of a kind. */
    static ThingForm<?> of(ThingKind kind) {
        return switch (kind) {
            case DESIGN -> only(kind, Design.class, DesignForm.FORM);
            case ALLOY -> only(kind, OwnAlloy.class, AlloyForm.FORM);
            case INSTRUMENT ->
                new ThingForm<>(kind, Instrument.class, List.of(InstrumentForm.VERSION_1, InstrumentForm.FORM));
            case MOTOR -> only(kind, Motor.class, MotorForm.FORM);
            case CANAL -> only(kind, Canal.class, CanalForm.FORM);
            case SEQUENCE -> new ThingForm<>(kind, Sequence.class, List.of(SequenceForm.VERSION_1, SequenceForm.FORM));
            case KIT -> only(kind, Kit.class, KitForm.FORM);
            case COMPARISON ->
                new ThingForm<>(
                        kind,
                        SavedComparison.class,
                        List.of(ComparisonForm.VERSION_1, ComparisonForm.VERSION_2, ComparisonForm.FORM));
            case FILTER -> only(kind, SavedFilter.class, FilterForm.FORM);
        };
    }

    private static <R extends Record> ThingForm<R> only(ThingKind kind, Class<R> type, RecordForm<R> form) {
        return new ThingForm<>(kind, type, List.of(form));
    }

    /** The form of a name, such as {@code taperwright/design}. */
    static Optional<ThingForm<?>> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
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

    /** The version written. */
    int version() {
        return versions.size();
    }

    /** The fields written. */
    RecordForm<R> form() {
        return versions.get(versions.size() - 1);
    }

    /** Reads an object whose form is known to be this one. */
    Optional<ReadThing> read(Node.ObjectNode node, String path, String source, Findings findings) {
        Optional<Integer> version = Versions.read(node, path, version(), findings);
        if (version.isEmpty()) {
            return Optional.empty();
        }
        RecordForm<R> form = versions.get(version.get() - 1);
        Optional<ThingId> id = identifier(node, path, findings);
        Optional<R> thing = form.read(node, path, ENVELOPE, findings);
        return id.isPresent() && thing.isPresent()
                ? Optional.of(new ReadThing(id.get(), thing.get(), new Origin(source, node)))
                : Optional.empty();
    }

    /** The thing of a text read without a tree, its envelope in the order in which it is written. */
    Optional<R> straight(JsonTokens in) {
        if (!in.atObject() || !next(in, "form") || !in.atText() || !in.text().equals(name())) {
            return Optional.empty();
        }
        Optional<Integer> version = next(in, "version") ? VERSION.straight(in) : Optional.empty();
        Optional<ThingId> id = next(in, "id") ? Forms.thing().straight(in) : Optional.empty();
        return version.isPresent() && version.get() <= version() && id.isPresent()
                ? versions.get(version.get() - 1).straightFields(in)
                : Optional.empty();
    }

    private static boolean next(JsonTokens in, String field) {
        return in.nextField() && in.name().equals(field);
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
        out.name("form").text(name()).name("version").number(version());
        out.name("id").text(id.value());
        form().writeFields(type.cast(thing), out);
        out.endObject();
    }
}
