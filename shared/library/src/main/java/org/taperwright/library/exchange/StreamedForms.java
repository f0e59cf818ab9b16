package org.taperwright.library.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.taperwright.library.exchange.json.JsonStream;
import org.taperwright.library.exchange.json.Limits;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.library.exchange.text.CountedInput;
import org.taperwright.library.exchange.text.DecodedText;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * Reads a file of any size thing by thing: a bundle, or the form of a single thing. Of the things given only their
 * identifiers are kept, to tell whether they fit each other.
 */
public final class StreamedForms {
    private static final int BETWEEN_REPORTS = 64;

    private StreamedForms() {}

    /**
     * What came of it.
     *
     * @param faults what is wrong; if anything, nothing of the file is to be kept
     * @param remarks what deserves a look
     */
    public record Outcome(List<FileFault> faults, List<FileFault> remarks) {
        public Outcome {
            faults = List.copyOf(faults);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Reads a file.
     *
     * @param taker takes each thing as it is read
     * @throws org.taperwright.mechanics.work.WorkCancelled when the progress says so
     */
    public static Outcome read(TextSource source, Consumer<ReadThing> taker, Progress progress) {
        try (CountedInput in = new CountedInput(source.open());
                DecodedText text = new DecodedText(in, StandardCharsets.UTF_8)) {
            Pass pass = new Pass(source.name(), taker, () -> in.report(source, progress));
            new JsonStream("things", Limits.ONE_OF_MANY, pass).read(text);
            return pass.outcome();
        } catch (NoSuchFileException absent) {
            return refused(source, "does not exist");
        } catch (IOException unreadable) {
            return refused(source, "cannot be read (" + unreadable.getMessage() + ")");
        }
    }

    private static Outcome refused(TextSource source, String what) {
        Fault fault = Fault.impossible("file", what, "expected a file with a JSON form");
        return new Outcome(List.of(FileFault.at(source.name(), Place.START, fault)), List.of());
    }

    /** One reading of one file. */
    private static final class Pass implements JsonStream.Parts {
        private static final int MOST_FAULTS = 100;

        private final String source;
        private final Consumer<ReadThing> taker;
        private final Runnable report;
        private final Map<String, Node.Member> fields = new LinkedHashMap<>();
        private final List<FileFault> faults = new ArrayList<>();
        private final StreamedReferences references = new StreamedReferences();
        private Optional<Place> list = Optional.empty();

        Pass(String source, Consumer<ReadThing> taker, Runnable report) {
            this.source = source;
            this.taker = taker;
            this.report = report;
        }

        @Override
        public void field(String name, Node.Member member) {
            if (fields.putIfAbsent(name, member) != null) {
                note(member.namePlace(), Fault.impossible(name, "stands twice", "expected each field once"));
            }
        }

        @Override
        public void list(Place namePlace) {
            if (list.isPresent()) {
                note(namePlace, Fault.impossible("things", "stands twice", "expected each field once"));
            }
            list = Optional.of(namePlace);
        }

        @Override
        public void item(int index, Node item) {
            if (index % BETWEEN_REPORTS == 0) {
                report.run();
            }
            take(item, "things[" + index + ']');
        }

        private void take(Node item, String path) {
            FormReader reader = new FormReader(source, EnumSet.allOf(ThingKind.class));
            Optional<ReadThing> thing = reader.thing(item, path);
            reader.faults().forEach(this::note);
            thing.ifPresent(read -> {
                references.note(read).forEach(this::note);
                give(read);
            });
        }

        /** A file without a list is the form of a single thing, or a faulty bundle. */
        private void whole(Node.ObjectNode rest) {
            FormReader reader = new FormReader(source, EnumSet.allOf(ThingKind.class));
            List<ReadThing> things = reader.root(rest);
            reader.faults().forEach(this::note);
            things.forEach(this::give);
        }

        private void give(ReadThing thing) {
            if (faults.isEmpty()) {
                taker.accept(thing);
            }
        }

        @Override
        public void broken(PlacedFault fault) {
            note(FileFault.of(source, fault));
        }

        private void note(Place place, Fault fault) {
            note(FileFault.at(source, place, fault));
        }

        private void note(FileFault fault) {
            if (faults.size() < MOST_FAULTS) {
                faults.add(fault);
            }
        }

        Outcome outcome() {
            if (faults.isEmpty()) {
                Node.ObjectNode rest = new Node.ObjectNode(Place.START, new LinkedHashMap<>(fields));
                if (list.isPresent()) {
                    FormReader reader = new FormReader(source, EnumSet.allOf(ThingKind.class));
                    reader.bundleEnvelope(rest);
                    reader.faults().forEach(this::note);
                } else {
                    whole(rest);
                }
            }
            List<FileFault> remarks = new ArrayList<>();
            if (list.isPresent()) {
                for (FileFault each : references.atEnd(source)) {
                    if (each.fault().weight() == Fault.Weight.IMPOSSIBLE) {
                        note(each);
                    } else {
                        remarks.add(each);
                    }
                }
            }
            return new Outcome(faults, remarks);
        }
    }
}
