package org.taperwright.command.input;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.taperwright.library.exchange.DemoLibrary;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.FormFiles;
import org.taperwright.library.exchange.ReadResult;
import org.taperwright.library.exchange.ReadThing;
import org.taperwright.library.store.Names;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.OwnAlloy;

/**
 * The things that a command may take by name or identifier: those of the files it is given and of the demo library. Words
 * that name none of them are taken as a file.
 */
public final class Shelf {
    private final List<ReadThing> things = new ArrayList<>();
    private final boolean demo;

    private Shelf(boolean demo) {
        this.demo = demo;
    }

    /** Reads the files and, if asked, the demo library; throws {@link BadInput} where one cannot be read. */
    public static Shelf of(List<Path> files, boolean demo) {
        Shelf shelf = new Shelf(demo);
        List<FileFault> faults = new ArrayList<>();
        for (Path file : files) {
            shelf.add(FormFiles.read(file), faults);
        }
        if (demo) {
            shelf.add(DemoLibrary.load(), faults);
        }
        if (!faults.isEmpty()) {
            throw BadInput.in(faults);
        }
        return shelf;
    }

    private void add(ReadResult result, List<FileFault> faults) {
        if (result instanceof ReadResult.Read read) {
            things.addAll(read.things());
        } else if (result instanceof ReadResult.Refused refused) {
            faults.addAll(refused.faults());
        }
    }

    /** All things of a kind, in the order of the files. */
    public List<ReadThing> all(ThingKind kind) {
        return things.stream().filter(thing -> thing.kind() == kind).toList();
    }

    /** The thing of an identifier and kind. */
    public Optional<ReadThing> thing(ThingId id, ThingKind kind) {
        return all(kind).stream().filter(thing -> thing.id().equals(id)).findFirst();
    }

    /** The alloys that designs can name: those that come with the program and those on the shelf. */
    public KnownAlloys alloys() {
        return new KnownAlloys(all(ThingKind.ALLOY).stream()
                .map(thing -> ((OwnAlloy) thing.thing()).alloy(thing.id()))
                .toList());
    }

    /** The designs that words name: a thing of the shelf, or all designs and instruments of a file. */
    public List<FoundDesign> designs(String words) {
        return named(words, List.of(ThingKind.DESIGN, ThingKind.INSTRUMENT)).stream()
                .map(thing -> FoundDesign.of(words, thing))
                .toList();
    }

    /** The one thing of a kind that words name; what else its file holds joins the shelf. */
    public ReadThing one(String words, ThingKind kind) {
        List<ReadThing> found = named(words, List.of(kind));
        if (found.size() > 1) {
            throw BadInput.of(
                    words + ": holds " + found.size() + " things of the kind " + kind.word(),
                    "expected one; take one by name with --from " + words);
        }
        return found.get(0);
    }

    private List<ReadThing> named(String words, List<ThingKind> kinds) {
        for (ThingKind kind : kinds) {
            for (ReadThing thing : all(kind)) {
                if (words.equals(thing.id().value()) || words.equalsIgnoreCase(name(thing))) {
                    return List.of(thing);
                }
            }
        }
        Optional<Path> file = path(words);
        boolean thing = file.isEmpty() || !Files.exists(file.get()) && !things.isEmpty();
        if (thing) {
            String where = demo ? " of the demo library" : "";
            String expected = things.isEmpty() ? "a file" : "one of " + names(kinds.get(0));
            throw BadInput.of(
                    "\"" + words + "\" names no " + kinds.get(0).word() + where + " and no file",
                    "expected " + expected);
        }
        return inFile(file.get(), kinds);
    }

    private List<ReadThing> inFile(Path file, List<ThingKind> kinds) {
        ReadResult result = FormFiles.read(file);
        if (result instanceof ReadResult.Refused refused) {
            throw BadInput.in(refused.faults());
        }
        List<ReadThing> read = ((ReadResult.Read) result).things();
        List<ReadThing> found =
                read.stream().filter(thing -> kinds.contains(thing.kind())).toList();
        if (found.isEmpty()) {
            Set<String> there = read.stream().map(thing -> thing.kind().word()).collect(Collectors.toSet());
            throw BadInput.of(
                    file + ": holds no " + kinds.get(0).word() + " but " + String.join(", ", there),
                    "expected the form of " + kinds.get(0).one());
        }
        things.addAll(read);
        return found;
    }

    private String names(ThingKind kind) {
        return all(kind).stream().map(Shelf::name).distinct().collect(Collectors.joining(", "));
    }

    private static String name(ReadThing thing) {
        return Names.of(thing.thing());
    }

    /** The path that words spell; absent where no file can be called so. */
    private static Optional<Path> path(String words) {
        try {
            return Optional.of(Path.of(words));
        } catch (InvalidPathException unspeakable) {
            return Optional.empty();
        }
    }
}
