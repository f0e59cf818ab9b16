package org.taperwright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.taperwright.command.input.BadInput;
import org.taperwright.command.input.CanalPoints;
import org.taperwright.command.input.Shelf;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.ReadThing;
import org.taperwright.library.exchange.text.WholeFile;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.preset.CanalPreset;
import org.taperwright.shaping.canal.preset.CanalPresets;
import org.taperwright.shaping.canal.preset.PresetDraw;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Sequences;
import picocli.CommandLine.Option;

/** Options that say in which canal a sequence is tried. */
final class CanalChoice {
    private static final int LONGEST_ID = 80;

    @Option(
            names = "--canal",
            paramLabel = "CANAL",
            description =
                    "The canal: a file, or with --demo or --from a name or identifier; a file *.csv has a point of the "
                            + "canal in each row (x, y, z, diameter or wide and narrow, root wide and root narrow, mm). The "
                            + "sequence's own unless given.")
    private Optional<String> canal = Optional.empty();

    @Option(
            names = "--preset",
            paramLabel = "PRESET",
            description =
                    "Takes the average canal of a preset by tooth and canal, such as lower-molar-mb, each step as far "
                            + "from the end as in its own canal.")
    private Optional<String> preset = Optional.empty();

    @Option(
            names = "--orifice-at",
            paramLabel = "MM",
            description =
                    "With a canal of points: how far the orifice lies from the coronal reference point, mm; such that "
                            + "the working length is that of the sequence's own canal unless given.")
    private Optional<Double> orificeMm = Optional.empty();

    @Option(
            names = "--save-canal",
            paramLabel = "FILE",
            description = "Writes the canal used as a JSON form, to be kept or imported into a library.")
    private Optional<Path> saved = Optional.empty();

    /** The canal asked for or the sequence's own, refused where it is impossible. */
    Canal of(ReadThing read, Shelf shelf, Optional<Canal> own) {
        if (preset.isPresent() && canal.isPresent()) {
            throw BadInput.of("--preset and --canal together", "expected one of them");
        }
        Canal used = chosen(read, shelf, own);
        saved.ifPresent(file -> save(file, used));
        return used;
    }

    /** The sequence as it is made in a canal: in a preset's each step is as far from the end as in the sequence's own. */
    Sequence moved(Sequence sequence, Canal used, Optional<Canal> own) {
        double further = preset.isPresent()
                ? own.map(tried -> used.workingLengthMm() - tried.workingLengthMm())
                        .orElse(0.0)
                : 0;
        return Sequences.deeper(sequence, further);
    }

    private Canal chosen(ReadThing read, Shelf shelf, Optional<Canal> own) {
        if (preset.isPresent()) {
            return PresetDraw.average(preset(preset.get()));
        }
        if (canal.filter(CanalPoints::names).isPresent()) {
            return CanalPoints.read(Path.of(canal.get()), orificeMm, own);
        }
        ReadThing found;
        if (canal.isPresent()) {
            found = shelf.one(canal.get(), ThingKind.CANAL);
        } else {
            ThingId id = ((Sequence) read.thing())
                    .canal()
                    .orElseThrow(() -> BadInput.of("no canal is named", "expected --canal with a file or a name"));
            found = shelf.thing(id, ThingKind.CANAL)
                    .orElseThrow(() -> BadInput.in(List.of(absent(read, "canal", id, ThingKind.CANAL))));
        }
        Canal there = (Canal) found.thing();
        List<FileFault> faults = CanalGeometry.check(there).stream()
                .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                .map(found.origin()::place)
                .toList();
        if (!faults.isEmpty()) {
            throw BadInput.in(faults);
        }
        return there;
    }

    private static void save(Path file, Canal canal) {
        try {
            String stem = file.getFileName().toString().replaceAll("[^A-Za-z0-9.-]+", "-");
            String id = stem.replaceAll("(\\.json)?$", "").replaceAll("^[^A-Za-z0-9]+", "");
            String form = JsonForms.write(
                    new ThingId(id.isEmpty() ? "canal" : id.substring(0, Math.min(LONGEST_ID, id.length()))), canal);
            WholeFile.write(file, out -> out.write(form));
        } catch (IOException unwritable) {
            throw BadInput.of(
                    file + ": cannot be written (" + unwritable.getMessage() + ")", "expected a place for a file");
        }
    }

    /** The preset of an identifier. */
    static CanalPreset preset(String id) {
        return CanalPresets.find(id)
                .orElseThrow(() -> BadInput.of(
                        "there is no preset \"" + id + "\"",
                        "expected one of "
                                + CanalPresets.all().stream()
                                        .map(CanalPreset::id)
                                        .collect(Collectors.joining(", "))));
    }

    /** Says that something a thing refers to is not there. */
    static FileFault absent(ReadThing read, String where, ThingId id, ThingKind kind) {
        return read.origin()
                .place(Fault.impossible(
                        where,
                        "refers to \"" + id + "\", which is not at hand",
                        "expected an identifier of a " + kind.word()
                                + " in the same file, in a file of --from, or with --demo in the demo library"));
    }
}
