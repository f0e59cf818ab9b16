package org.taperwright.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.taperwright.command.input.BadInput;
import org.taperwright.command.input.Shelf;
import org.taperwright.command.print.CarriedKit;
import org.taperwright.command.print.PassageJson;
import org.taperwright.command.print.PassageText;
import org.taperwright.command.print.PopulationJson;
import org.taperwright.command.print.PopulationText;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.ReadThing;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.preset.CanalPreset;
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

    @Mixin
    private CanalChoice canal = new CanalChoice();

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
        if (!chosen.isEmpty() && kit.isEmpty()) {
            throw BadInput.of("--piece without --kit", "expected --kit with a file or a name");
        }
        Shelf shelf = given.shelf();
        ReadThing read = shelf.one(sequence, ThingKind.SEQUENCE);
        Optional<Canal> own = ((Sequence) read.thing())
                .canal()
                .flatMap(id -> shelf.thing(id, ThingKind.CANAL))
                .map(thing -> (Canal) thing.thing());
        Canal used = canal.of(read, shelf, own);
        ArrangedSequence arranged = arranged(read, used, own, shelf);
        if (population.isPresent()) {
            spec.commandLine().getOut().print(population(arranged, CanalChoice.preset(population.get())));
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

    private ArrangedSequence arranged(ReadThing read, Canal tried, Optional<Canal> own, Shelf shelf) {
        Sequence given = (Sequence) read.thing();
        Sequence sequence = canal.moved(given, tried, own);
        List<FileFault> faults = new ArrayList<>();
        List<Optional<Instrument>> instruments = new ArrayList<>();
        for (int i = 0; i < sequence.steps().size(); i++) {
            String where = "steps[" + i + "].instrument";
            Optional<ThingId> used = sequence.steps().get(i).uses();
            Optional<Instrument> found =
                    used.flatMap(id -> shelf.thing(id, ThingKind.INSTRUMENT)).map(thing -> (Instrument) thing.thing());
            if (used.isPresent() && found.isEmpty()) {
                faults.add(CanalChoice.absent(read, where, used.get(), ThingKind.INSTRUMENT));
            }
            instruments.add(found);
        }
        Optional<Motor> motor =
                sequence.motor().flatMap(id -> shelf.thing(id, ThingKind.MOTOR)).map(thing -> (Motor) thing.thing());
        if (sequence.motor().isPresent() && motor.isEmpty()) {
            faults.add(CanalChoice.absent(read, "motor", sequence.motor().get(), ThingKind.MOTOR));
        }
        if (!faults.isEmpty()) {
            throw BadInput.in(faults);
        }
        return new ArrangedSequence(sequence, tried, motor, instruments, shelf.alloys());
    }
}
