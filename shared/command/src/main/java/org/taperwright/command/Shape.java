package org.taperwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.taperwright.command.input.BadInput;
import org.taperwright.command.input.Shelf;
import org.taperwright.command.print.PassageJson;
import org.taperwright.command.print.PassageText;
import org.taperwright.command.print.PopulationJson;
import org.taperwright.command.print.PopulationText;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.ReadThing;
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

    @Option(
            names = "--canal",
            paramLabel = "CANAL",
            description = "The canal: a file, or with --demo or --from a name or identifier. The sequence's own unless "
                    + "given.")
    private Optional<String> canal = Optional.empty();

    @Option(
            names = "--bands",
            description =
                    "Also the band of each number over the constants that are not known, and which of them it hangs "
                            + "on most; takes some seconds.")
    private boolean bands;

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
        Shelf shelf = given.shelf();
        ReadThing read = shelf.one(sequence, ThingKind.SEQUENCE);
        ArrangedSequence arranged = arranged(read, canal(read, shelf), shelf);
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
        Optional<ShapingBands> known =
                bands ? Optional.of(ShapingBands.of(prepared, shaped, Progress.NONE)) : Optional.empty();
        String text = given.json()
                ? PassageJson.of(arranged, passage, shaped, needles.reaches(), finish, known)
                : PassageText.of(arranged, passage, shaped, needles.reaches(), finish, known);
        spec.commandLine().getOut().print(text);
        return Main.DONE;
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
    private Canal canal(ReadThing read, Shelf shelf) {
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

    private static ArrangedSequence arranged(ReadThing read, Canal canal, Shelf shelf) {
        Sequence sequence = (Sequence) read.thing();
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
                        "expected an identifier of " + kind.one()
                                + " in the same file, in a file of --from, or with --demo in the demo library"));
    }
}
