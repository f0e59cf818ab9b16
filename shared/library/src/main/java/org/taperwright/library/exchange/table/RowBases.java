package org.taperwright.library.exchange.table;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.library.exchange.json.TreePath;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.BoundedCache;
import org.taperwright.mechanics.work.Fault;

/**
 * What a row begins with, before its cells are put in: the thing of the library that it names, or a new one. A new
 * instrument has the design of the library that it names, or one assumed by size and taper and marked so.
 */
final class RowBases {
    private static final Pattern IDENTIFIER = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,79}");
    private static final TreePath DESIGN = TreePath.of("design");
    private static final TreePath ASSUMED = TreePath.of("designAssumed");
    private static final TreePath NAME = TreePath.of("name");

    private final TableKind kind;
    private final Known known;
    private final BoundedCache<Standard, Node.ObjectNode> standards = new BoundedCache<>(500);

    private record Standard(double tipDiameterMm, double taper) {}

    RowBases(TableKind kind, Known known) {
        this.kind = kind;
        this.known = known;
    }

    /** What came of looking for a base. */
    sealed interface Found {}

    record Faulty(List<PlacedFault> faults) implements Found {}

    /**
     * A base.
     *
     * @param tree its form
     * @param assumed whether its design is assumed, whatever the table says
     */
    record Base(Node.ObjectNode tree, boolean assumed) implements Found {
        /** The base with the values of a row. */
        Node.ObjectNode with(Map<TableField, Optional<Node>> values) {
            Node.ObjectNode put = tree;
            for (Map.Entry<TableField, Optional<Node>> each : values.entrySet()) {
                Placing placing = each.getKey().placing();
                Node.ObjectNode before = put;
                put = each.getValue().map(value -> placing.put(before, value)).orElseGet(() -> placing.cleared(before));
            }
            Node yes = new Node.FlagNode(tree.place(), true);
            put = PricePlacing.settled(put);
            return assumed ? ASSUMED.put(put, yes) : put;
        }
    }

    Found of(Map<TableField, Optional<Node>> values, Place place) {
        Optional<String> named = text(values, InstrumentFields.IDENTIFIER);
        if (named.isPresent() && IDENTIFIER.matcher(named.get()).matches()) {
            Optional<Record> there = known.thing(new ThingId(named.get()));
            if (there.isPresent()) {
                return existing(new ThingId(named.get()), there.get(), place);
            }
        }
        return kind == TableKind.INSTRUMENTS ? newInstrument(values, place) : newMotor(values, place);
    }

    private Found existing(ThingId id, Record thing, Place place) {
        if (ThingKind.of(thing) != kind.thing()) {
            return faulty(
                    place,
                    InstrumentFields.IDENTIFIER.heading(),
                    "is that of " + ThingKind.of(thing).one() + " of the library",
                    "expected that of one of the " + kind.thing().heading().toLowerCase(Locale.ROOT) + ", or none");
        }
        return new Base(placed(JsonForms.tree(id, thing), place), false);
    }

    private Found newMotor(Map<TableField, Optional<Node>> values, Place place) {
        return new Base(envelope(values, place), false);
    }

    private Found newInstrument(Map<TableField, Optional<Node>> values, Place place) {
        Node.ObjectNode tree = envelope(values, place);
        Optional<Design> design = text(values, InstrumentFields.DESIGN)
                .filter(id -> IDENTIFIER.matcher(id).matches())
                .flatMap(id -> known.thing(new ThingId(id)))
                .filter(Design.class::isInstance)
                .map(Design.class::cast);
        if (design.isPresent()) {
            Node.ObjectNode whole = DESIGN.put(tree, bare(design.get(), place));
            return new Base(named(whole, design.get().name(), place), false);
        }
        Optional<Double> size = number(values, InstrumentFields.SIZE);
        Optional<Double> taper = number(values, InstrumentFields.TAPER);
        if (size.isEmpty() || taper.isEmpty()) {
            List<PlacedFault> faults = new ArrayList<>();
            for (TableField field : List.of(InstrumentFields.SIZE, InstrumentFields.TAPER)) {
                if (number(values, field).isEmpty()) {
                    faults.add(new PlacedFault(
                            place,
                            Fault.impossible(
                                    field.heading(), "is missing", "expected it, or a design of the library")));
                }
            }
            return new Faulty(faults);
        }
        Node.ObjectNode standard = standards.get(new Standard(size.get(), taper.get()), RowBases::standard);
        String designation = Shown.designation((int) Math.round(size.get() * 100), taper.get());
        return new Base(named(DESIGN.put(tree, standard), designation, place), true);
    }

    private static Node.ObjectNode standard(Standard asked) {
        Design design = Designs.standard((int) Math.round(asked.tipDiameterMm() * 100), asked.taper());
        return bare(design, Place.START);
    }

    /** A design as it stands within an instrument. */
    private static Node.ObjectNode bare(Design design, Place place) {
        Node.ObjectNode tree = JsonForms.tree(new ThingId("assumed"), design);
        for (String field : List.of("form", "version", "id")) {
            tree = TreePath.of(field).takenFrom(tree);
        }
        return placed(tree, place);
    }

    private static Node.ObjectNode named(Node.ObjectNode tree, String name, Place place) {
        Node.ObjectNode named = NAME.put(tree, new Node.TextNode(place, name));
        boolean powered = TreePath.of("design.motion")
                .in(tree)
                .map(Node::described)
                .filter(motion -> motion.contains("rot") || motion.contains("recip"))
                .isPresent();
        return TreePath.of("drive").put(named, new Node.TextNode(place, powered ? "powered" : "hand"));
    }

    /** Form, version and identifier; where the row names none, one made of what tells its thing from others. */
    private Node.ObjectNode envelope(Map<TableField, Optional<Node>> values, Place place) {
        Map<String, Node.Member> members = new LinkedHashMap<>();
        int version = JsonForms.version(kind.thing());
        put(members, "form", new Node.TextNode(place, JsonForms.name(kind.thing())));
        put(members, "version", new Node.NumberNode(place, String.valueOf(version), version));
        put(members, "id", new Node.TextNode(place, identity(values)));
        return new Node.ObjectNode(place, members);
    }

    private static void put(Map<String, Node.Member> members, String name, Node value) {
        members.put(name, new Node.Member(value.place(), value));
    }

    private String identity(Map<TableField, Optional<Node>> values) {
        StringBuilder key = new StringBuilder(kind.name());
        for (String name : List.of("Name", "Maker", "Line", "Type", "Size", "Taper", "Length", "Design")) {
            String value = kind.field(name)
                    .flatMap(field -> values.getOrDefault(field, Optional.empty()))
                    .map(RowBases::written)
                    .orElse("");
            key.append('\n').append(value.replace("\n", "\\n"));
        }
        return UUID.nameUUIDFromBytes(key.toString().getBytes(StandardCharsets.UTF_8))
                .toString();
    }

    private static String written(Node node) {
        return node instanceof Node.TextNode text ? text.value() : node.described();
    }

    private static Optional<String> text(Map<TableField, Optional<Node>> values, TableField field) {
        return values.getOrDefault(field, Optional.empty()).map(RowBases::written);
    }

    private static Optional<Double> number(Map<TableField, Optional<Node>> values, TableField field) {
        return values.getOrDefault(field, Optional.empty())
                .filter(Node.NumberNode.class::isInstance)
                .map(node -> ((Node.NumberNode) node).value());
    }

    /** The tree as if it stood where the row does, so that what is wrong with it is shown there. */
    private static Node.ObjectNode placed(Node.ObjectNode tree, Place place) {
        return (Node.ObjectNode) Replaced.at(tree, place);
    }

    private static Found faulty(Place place, String where, String what, String expected) {
        return new Faulty(List.of(new PlacedFault(place, Fault.impossible(where, what, expected))));
    }
}
