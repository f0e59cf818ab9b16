package org.taperwright.library.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.taperwright.library.exchange.json.JsonText;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Limits;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.store.ThingForms;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/**
 * The open JSON forms of every thing, for files and for the store. Reading never throws: whatever a file holds, the
 * result is things or faults. The forms are described in {@code FORMS.md} and by the schemas beside this class.
 */
public final class JsonForms {
    private JsonForms() {}

    /** Reads a file's text: the form of one thing or of a bundle. */
    public static ReadResult read(String text, String source) {
        return read(text, source, EnumSet.allOf(ThingKind.class));
    }

    /** As {@link #read(String, String)}, refusing things of other kinds than those expected. */
    public static ReadResult read(String text, String source, Set<ThingKind> expected) {
        FormReader reader = new FormReader(source, expected);
        List<ReadThing> things = reader.read(text);
        return result(reader.faults(), things, things.size() > 1 ? References.check(things) : List.of());
    }

    /**
     * As {@link #read(String, String, Set)} for the tree of a single thing, which need not come from a JSON text: faults
     * are placed where its nodes say.
     */
    public static ReadResult read(Node.ObjectNode tree, String source, Set<ThingKind> expected) {
        FormReader reader = new FormReader(source, expected);
        List<ReadThing> things = reader.read(tree);
        return result(reader.faults(), things, List.of());
    }

    /** The form of one thing as a tree, as its text would be read. */
    public static Node.ObjectNode tree(ThingId id, Record thing) {
        return (Node.ObjectNode)
                JsonText.parse(write(id, thing), Limits.USUAL).root().orElseThrow();
    }

    /** The version in which things of a kind are written. */
    public static int version(ThingKind kind) {
        return ThingForm.of(kind).version();
    }

    /** The name of the form of a kind, such as {@code taperwright/design}. */
    public static String name(ThingKind kind) {
        return ThingForm.of(kind).name();
    }

    /**
     * Reads several files as one bundle.
     *
     * @param texts each file's text by its name, in order
     */
    public static ReadResult readTogether(Map<String, String> texts) {
        List<ReadThing> things = new ArrayList<>();
        List<FileFault> faults = new ArrayList<>();
        texts.forEach((source, text) -> {
            FormReader reader = new FormReader(source, EnumSet.allOf(ThingKind.class));
            things.addAll(reader.read(text));
            faults.addAll(reader.faults());
        });
        return result(faults, things, References.check(things));
    }

    private static ReadResult result(List<FileFault> faults, List<ReadThing> things, List<FileFault> fit) {
        List<FileFault> grave = new ArrayList<>(faults);
        List<FileFault> remarks = new ArrayList<>();
        remarks.addAll(References.within(things));
        for (FileFault each : fit) {
            (each.fault().weight() == Fault.Weight.IMPOSSIBLE ? grave : remarks).add(each);
        }
        return grave.isEmpty() ? new ReadResult.Read(things, remarks) : new ReadResult.Refused(grave);
    }

    /**
     * The form of one thing. Equal things have equal text.
     *
     * @throws IllegalArgumentException if a number is not finite; {@link #faults} tells beforehand
     */
    public static String write(ThingId id, Record thing) {
        JsonWriter out = new JsonWriter();
        ThingForm.of(ThingKind.of(thing)).write(id, thing, out);
        return out.finished();
    }

    /** The form of a bundle, with the same exception as {@link #write(ThingId, Record)}. */
    public static String write(LibraryBundle bundle) {
        JsonWriter out = new JsonWriter();
        writeTo(out, bundle, () -> {});
        return out.finished();
    }

    /** Writes the form of a bundle thing by thing, so that its text is never in memory as a whole. */
    public static void write(LibraryBundle bundle, Appendable to) throws IOException {
        JsonWriter out = new JsonWriter();
        try {
            writeTo(out, bundle, () -> out.drainTo(to));
            to.append(out.finished());
        } catch (UncheckedIOException failure) {
            throw new IOException(failure.getCause());
        }
    }

    private static void writeTo(JsonWriter out, LibraryBundle bundle, Runnable afterEach) {
        out.beginObject(false);
        out.name("form").text(FormReader.BUNDLE).name("version").number(FormReader.BUNDLE_VERSION);
        out.name("things").beginList(false);
        for (LibraryBundle.Item item : bundle.items()) {
            ThingForm.of(ThingKind.of(item.thing())).write(item.id(), item.thing(), out);
            afterEach.run();
        }
        out.endList().endObject();
    }

    /** Why a thing could not be kept, for what is written must be readable again; empty when it can. */
    public static List<Fault> faults(ThingId id, Record thing) {
        JsonWriter out = JsonWriter.lettingThroughWhatIsNotFinite();
        ThingForm.of(ThingKind.of(thing)).write(id, thing, out);
        return read(out.finished(), "") instanceof ReadResult.Refused refused
                ? refused.faults().stream().map(FileFault::fault).toList()
                : List.of();
    }

    /** The forms as the store takes them. */
    public static ThingForms forStore() {
        return new StoredForms();
    }
}
