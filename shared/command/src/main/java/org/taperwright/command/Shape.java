package org.taperwright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.taperwright.command.input.BadInput;
import org.taperwright.command.input.CanalPoints;
import org.taperwright.command.input.Shelf;
import org.taperwright.command.print.CarriedKit;
import org.taperwright.command.print.PassageJson;
import org.taperwright.command.print.PassageText;
import org.taperwright.command.print.PopulationJson;
import org.taperwright.command.print.PopulationText;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.ReadThing;
import org.taperwright.library.exchange.text.WholeFile;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.preset.CanalPreset;
import org.taperwright.shaping.canal.preset.CanalPresets;
import org.taperwright.shaping.canal.preset.PresetDraw;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.NeedleWatch;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.CarriedLives;
import org.taperwright.shaping.kit.DiscardRules;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.kit.UseEstimates;
import org.taperwright.shaping.passage.GeometricPassage;
import org.taperwright.shaping.passage.GeometricPassages;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.passage.stroke.Mesh;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.StrokePlan;
import org.taperwright.shaping.population.PopulationShaping;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Sequences;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code shape}: what each step of a sequence does in a canal, and what becomes of the canal. */
@Command(
        name = "shape",
        description = {
            "Says what each step of a sequence does in a canal and what becomes of the canal, stroke by stroke with the "
                    + "instruments bending, and where each step is wider than what was there before it; checks the sequence.",
            ""
        })
final class Shape implements Callable<Integer> {
    private static final int MOST_CANALS = 100_000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private Given given = new Given();

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

    @Option(
            names = "--bands",
            description =
                    "Also which of the constants that are not known each number hangs on most, and bands by all samples "
                            + "rather than a few; takes some seconds.")
    private boolean bands;

    @Option(
            names = "--computed-only",
            description = "Leaves out estimates and indices, which are not shown without their bands; quick.")
    private boolean computedOnly;

    @Option(
            names = "--kit",
            paramLabel = "KIT",
            description = "Makes the steps with the pieces of a kit: a file, or with --demo or --from a name or "
                    + "identifier. Says what of each piece's fatigue life is spent and when it comes to its limit; of "
                    + "several alike that of which least is spent is taken.")
    private Optional<String> kit = Optional.empty();

    @Option(
            names = "--piece",
            paramLabel = "PIECE",
            description = "With --kit: takes this piece for the steps of its entry; may be repeated.")
    private List<String> chosen = List.of();

    @Option(
            names = "--population",
            paramLabel = "PRESET",
            description =
                    "Runs the sequence over canals drawn from a preset by tooth and canal, such as lower-molar-mb, each "
                            + "step as far from the end as in its own canal: how the outcomes are distributed, and the worst.")
    private Optional<String> population = Optional.empty();

    @Option(names = "--canals", paramLabel = "NUMBER", description = "How many canals are drawn; 100 unless given.")
    private int canals = 100;

    @Parameters(
            arity = "1",
            paramLabel = "SEQUENCE",
            description =
                    "The sequence: a file, or with --demo or --from a name or identifier. Its instruments and motor "
                            + "are those of the same file, of --from or of --demo.")
    private String sequence = "";

    @Override
    public Integer call() {
        if (bands && computedOnly) {
            throw BadInput.of("--bands and --computed-only together", "expected one of them");
        }
        if (kit.isPresent() && computedOnly) {
            throw BadInput.of(
                    "--kit and --computed-only together", "expected one of them: the life of a piece is an index");
        }
        if (preset.isPresent() && canal.isPresent()) {
            throw BadInput.of("--preset and --canal together", "expected one of them");
        }
        if (!chosen.isEmpty() && kit.isEmpty()) {
            throw BadInput.of("--piece without --kit", "expected --kit with a file or a name");
        }
        Shelf shelf = given.shelf();
        ReadThing read = shelf.one(sequence, ThingKind.SEQUENCE);
        Optional<Canal> own = ((Sequence) read.thing())
                .canal()
                .flatMap(id -> shelf.thing(id, ThingKind.CANAL))
                .map(thing -> (Canal) thing.thing());
        Canal used = canal(read, shelf, own);
        saved.ifPresent(file -> save(file, used));
        ArrangedSequence arranged = arranged(read, used, own, shelf);
        if (population.isPresent()) {
            spec.commandLine().getOut().print(population(arranged, preset(population.get())));
            return Main.DONE;
        }
        GeometricPassage passage = GeometricPassages.of(arranged);
        PreparedSequence prepared = PreparedSequence.of(arranged);
        CanalInWork work = CanalInWork.of(arranged.canal(), Mesh.FINE.spacingMm(), Mesh.FINE.directions());
        NeedleWatch needles = new NeedleWatch(arranged);
        ShapedSequence shaped = SequenceShaping.run(
                prepared, work, ShapingConstants.USUAL, StrokePlan.USUAL, Mesh.FINE, needles, Progress.NONE);
        Finish finish = Finish.of(work, finishedTo(work, arranged, shaped), Progress.NONE);
        int samples = bands ? LatinHypercube.SAMPLES : ShapingBands.FEW;
        Optional<ShapingBands> known = computedOnly
                ? Optional.empty()
                : Optional.of(ShapingBands.of(prepared, shaped, samples, Progress.NONE));
        Optional<CarriedKit> carried = kit.flatMap(words ->
                known.map(found -> carried((Kit) shelf.one(words, ThingKind.KIT).thing(), arranged, found, shelf)));
        String text = given.json()
                ? PassageJson.of(arranged, passage, shaped, needles.reaches(), finish, known, carried)
                : PassageText.of(arranged, passage, shaped, needles.reaches(), finish, known, carried);
        spec.commandLine().getOut().print(text);
        return Main.DONE;
    }

    private CarriedKit carried(Kit pieces, ArrangedSequence arranged, ShapingBands bands, Shelf shelf) {
        Map<ThingId, Instrument> catalogue = new HashMap<>();
        shelf.all(ThingKind.INSTRUMENT).forEach(thing -> catalogue.put(thing.id(), (Instrument) thing.thing()));
        Map<ThingId, String> taken = new HashMap<>();
        for (String id : chosen) {
            Piece piece = pieces.piece(id)
                    .filter(each -> each.discarded().isEmpty())
                    .orElseThrow(() -> BadInput.of(
                            "the kit has no piece in use \"" + id + "\"",
                            "expected one of "
                                    + pieces.inUse().stream().map(Piece::id).collect(Collectors.joining(", "))));
            taken.put(piece.instrument(), id);
        }
        return new CarriedKit(
                pieces.name(),
                CarriedLives.of(
                        pieces, arranged, catalogue, taken, UseEstimates.byStep(bands), DiscardRules.USUAL_LIFE_SHARE));
    }

    /** Depth of the last step that was made; where none was, that at which instrumentation is to end. */
    private static double finishedTo(CanalInWork work, ArrangedSequence arranged, ShapedSequence shaped) {
        return shaped.byPlace().isEmpty()
                ? work.geometry().endDepthMm()
                : work.geometry()
                        .depthOfMm(Math.min(
                                arranged.canal().workingLengthMm(),
                                arranged.depthMm(shaped.byPlace().lastKey())));
    }

    private String population(ArrangedSequence arranged, CanalPreset preset) {
        if (canals < 1 || canals > MOST_CANALS) {
            throw BadInput.of("--canals is " + canals, "expected 1 to " + MOST_CANALS);
        }
        PopulationShaping found = PopulationShaping.of(
                PreparedSequence.of(arranged),
                PresetDraw.population(preset, canals, LatinHypercube.SEED),
                Progress.NONE);
        String name = arranged.sequence().name();
        return given.json()
                ? PopulationJson.of(name, preset, LatinHypercube.SEED, found)
                : PopulationText.of(name, preset, found);
    }

    private static CanalPreset preset(String id) {
        return CanalPresets.find(id)
                .orElseThrow(() -> BadInput.of(
                        "there is no preset \"" + id + "\"",
                        "expected one of "
                                + CanalPresets.all().stream()
                                        .map(CanalPreset::id)
                                        .collect(Collectors.joining(", "))));
    }

    /** The canal asked for or the sequence's own, refused where it is impossible. */
    private Canal canal(ReadThing read, Shelf shelf, Optional<Canal> own) {
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
            String form = JsonForms.write(new ThingId(id.isEmpty() ? "canal" : id), canal);
            WholeFile.write(file, out -> out.write(form));
        } catch (IOException unwritable) {
            throw BadInput.of(
                    file + ": cannot be written (" + unwritable.getMessage() + ")", "expected a place for a file");
        }
    }

    private ArrangedSequence arranged(ReadThing read, Canal canal, Optional<Canal> own, Shelf shelf) {
        Sequence given = (Sequence) read.thing();
        double further = preset.isPresent()
                ? own.map(tried -> canal.workingLengthMm() - tried.workingLengthMm())
                        .orElse(0.0)
                : 0;
        Sequence sequence = Sequences.deeper(given, further);
        List<FileFault> faults = new ArrayList<>();
        List<Optional<Instrument>> instruments = new ArrayList<>();
        for (int i = 0; i < sequence.steps().size(); i++) {
            String where = "steps[" + i + "].instrument";
            Optional<ThingId> used = sequence.steps().get(i).uses();
            Optional<Instrument> found =
                    used.flatMap(id -> shelf.thing(id, ThingKind.INSTRUMENT)).map(thing -> (Instrument) thing.thing());
            if (used.isPresent() && found.isEmpty()) {
                faults.add(absent(read, where, used.get(), ThingKind.INSTRUMENT));
            }
            instruments.add(found);
        }
        Optional<Motor> motor =
                sequence.motor().flatMap(id -> shelf.thing(id, ThingKind.MOTOR)).map(thing -> (Motor) thing.thing());
        if (sequence.motor().isPresent() && motor.isEmpty()) {
            faults.add(absent(read, "motor", sequence.motor().get(), ThingKind.MOTOR));
        }
        if (!faults.isEmpty()) {
            throw BadInput.in(faults);
        }
        return new ArrangedSequence(sequence, canal, motor, instruments, shelf.alloys());
    }

    private static FileFault absent(ReadThing read, String where, ThingId id, ThingKind kind) {
        return read.origin()
                .place(Fault.impossible(
                        where,
                        "refers to \"" + id + "\", which is not at hand",
                        "expected an identifier of a " + kind.word()
                                + " in the same file, in a file of --from, or with --demo in the demo library"));
    }
}
