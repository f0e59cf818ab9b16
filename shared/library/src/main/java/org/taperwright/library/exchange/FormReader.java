package org.taperwright.library.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.exchange.form.Findings;
import org.taperwright.library.exchange.json.JsonText;
import org.taperwright.library.exchange.json.Limits;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.library.exchange.json.Spelling;
import org.taperwright.library.store.ThingKind;

/** Reads one text: a single thing, or a bundle of them. */
final class FormReader {
    static final String BUNDLE = ThingForm.PREFIX + "library";
    static final int BUNDLE_VERSION = 1;

    private final String source;
    private final Set<ThingKind> expected;
    private final Findings findings = new Findings();

    FormReader(String source, Set<ThingKind> expected) {
        this.source = source;
        this.expected = expected;
    }

    /** The things of the text; when any fault was found, they are not all there. */
    List<ReadThing> read(String text) {
        return read(JsonText.parse(text, Limits.USUAL));
    }

    /** As {@link #read(String)} of a text already parsed. */
    List<ReadThing> read(JsonText.Parsed parsed) {
        for (PlacedFault each : parsed.faults()) {
            findings.note(each.place(), each.fault());
        }
        if (parsed.root().isEmpty()) {
            return List.of();
        }
        if (!(parsed.root().get() instanceof Node.ObjectNode object)) {
            findings.refuse(parsed.root().get(), "file", "expected an object {…}");
            return List.of();
        }
        return root(object);
    }

    /** The things of a whole file's tree. */
    List<ReadThing> root(Node.ObjectNode object) {
        return isBundle(object) ? bundle(object) : given(thing(object, "", expected.size() > 1));
    }

    /** The thing of a tree that holds one; nothing when any fault was found. */
    List<ReadThing> read(Node.ObjectNode tree) {
        return given(thing(tree, "", false));
    }

    private static List<ReadThing> given(Optional<ReadThing> thing) {
        return thing.map(List::of).orElseGet(List::of);
    }

    /** The faults found, placed in the source. */
    List<FileFault> faults() {
        return findings.faults().stream()
                .map(each -> FileFault.at(source, each.place(), each.fault()))
                .toList();
    }

    private static boolean isBundle(Node.ObjectNode object) {
        Node.Member member = object.members().get("form");
        return member != null
                && member.value() instanceof Node.TextNode form
                && form.value().equals(BUNDLE);
    }

    /** Notes what is wrong with a bundle apart from its things; whether it can be read. */
    boolean bundleEnvelope(Node.ObjectNode object) {
        if (!isBundle(object)) {
            String expected = "expected \"" + BUNDLE + "\", as for every file with a list of things";
            Node.Member form = object.members().get("form");
            if (form == null) {
                findings.refuse(object.place(), "form", "is missing", expected);
            } else {
                findings.refuse(form.value(), "form", expected);
            }
            return false;
        }
        if (Versions.read(object, "", BUNDLE_VERSION, findings).isEmpty()) {
            return false;
        }
        for (Map.Entry<String, Node.Member> member : object.members().entrySet()) {
            if (!Set.of("$schema", "form", "version", "things").contains(member.getKey())) {
                findings.refuse(
                        member.getValue().namePlace(),
                        member.getKey(),
                        "is no field here",
                        "expected one of form, version, things");
            }
        }
        return true;
    }

    private List<ReadThing> bundle(Node.ObjectNode object) {
        if (!bundleEnvelope(object)) {
            return List.of();
        }
        Node.Member things = object.members().get("things");
        if (things == null) {
            findings.refuse(object.place(), "things", "is missing", "expected a list of things […]");
            return List.of();
        }
        if (!(things.value() instanceof Node.ArrayNode list)) {
            findings.refuse(things.value(), "things", "expected a list of things […]");
            return List.of();
        }
        List<ReadThing> read = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
            thing(list.items().get(i), "things[" + i + ']').ifPresent(read::add);
        }
        return read;
    }

    /** A thing, or what is wrong with it among the faults. */
    Optional<ReadThing> thing(Node node, String path) {
        return thing(node, path, false);
    }

    /**
     * As {@link #thing(Node, String)}.
     *
     * @param file whether a bundle could stand here as well
     */
    private Optional<ReadThing> thing(Node node, String path, boolean file) {
        if (!(node instanceof Node.ObjectNode object)) {
            findings.refuse(node, path, "expected a thing {…}");
            return Optional.empty();
        }
        String where = path.isEmpty() ? "form" : path + ".form";
        Node.Member member = object.members().get("form");
        if (member == null) {
            findings.refuse(object.place(), where, "is missing", expectedForms(file));
            return Optional.empty();
        }
        if (!(member.value() instanceof Node.TextNode text)) {
            findings.refuse(member.value(), where, expectedForms(file));
            return Optional.empty();
        }
        Optional<ThingForm<?>> form = ThingForm.named(text.value());
        if (form.isEmpty()) {
            String meant = meant(text.value(), file)
                    .map(near -> " (perhaps \"" + near + "\")")
                    .orElse("");
            findings.refuse(text, where, expectedForms(file) + meant);
            return Optional.empty();
        }
        if (!expected.contains(form.get().kind())) {
            findings.refuse(text, where, expectedForms(file));
            return Optional.empty();
        }
        return form.get().read(object, path, source, findings);
    }

    /** The form that was probably meant; what all their names begin with makes none of them more likely. */
    private static Optional<String> meant(String name, boolean file) {
        List<String> words = new ArrayList<>();
        ThingForm.names().forEach(each -> words.add(each.substring(ThingForm.PREFIX.length())));
        if (file) {
            words.add(BUNDLE.substring(ThingForm.PREFIX.length()));
        }
        String word = name.startsWith(ThingForm.PREFIX) ? name.substring(ThingForm.PREFIX.length()) : name;
        return Spelling.nearest(word, words).map(near -> ThingForm.PREFIX + near);
    }

    private String expectedForms(boolean file) {
        List<String> names = new ArrayList<>();
        expected.stream().sorted().forEach(kind -> names.add('"' + ThingForm.PREFIX + kind.word() + '"'));
        if (file) {
            names.add('"' + BUNDLE + '"');
        }
        return "expected " + (names.size() == 1 ? "" : "one of ") + String.join(", ", names);
    }
}
