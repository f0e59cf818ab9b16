package org.taperwright.command.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.NeedleReach;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.passage.GeometricPassage;
import org.taperwright.shaping.passage.ShapingLimits;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;

/** What each step of a sequence does, by geometry and stroke by stroke, as text for people. */
public final class PassageText {
    private static final String NONE = "–";

    private PassageText() {}

    /** The passage, the caution at the end. */
    public static String of(
            ArrangedSequence arranged,
            GeometricPassage passage,
            ShapedSequence shaped,
            SortedMap<Integer, NeedleReach> needles,
            Finish finish,
            Optional<ShapingBands> bands,
            Optional<CarriedKit> kit) {
        Canal canal = arranged.canal();
        Page page = new Page();
        page.title(arranged.sequence().name());
        page.line("Canal: " + canal.name() + ", " + Shown.number(canal.lengthMm())
                + " mm long from the orifice, which is "
                + Shown.number(canal.coronalReferenceMm()) + " mm from the reference point; working length "
                + Shown.number(canal.workingLengthMm()) + " mm");
        if (!canal.source().isBlank()) {
            page.line("Where the canal's numbers come from: " + canal.source());
        }
        page.line("Motor: " + arranged.motor().map(Motor::name).orElse("none"));
        page.remarks(passage.remarks());
        page.part("Steps as set");
        page.table(settings(arranged));
        page.part(
                "Where each step is wider than what was there before it, instruments centred (computed, by geometry)");
        page.table(widening(arranged, passage));
        Banded banded = new Banded(bands);
        ShapedText.parts(page, arranged, shaped, banded);
        kit.ifPresent(carried -> PiecesText.parts(page, carried.name(), carried.life()));
        BetweenText.parts(page, arranged, shaped, needles, banded);
        FinishText.parts(page, finish, banded);
        bands.filter(ShapingBands::whole).ifPresent(found -> BandsText.parts(page, found));
        page.part("What these numbers leave out, and how large it is (the whole list: LIMITS.md of shared/shaping)");
        ShapingLimits.LEFT_OUT.forEach(limit -> page.line(limit.what() + ": " + limit.size()));
        return page.finished();
    }

    private static Table settings(ArrangedSequence arranged) {
        Table table = Table.of(
                Column.numbers("step"),
                Column.words("kind"),
                Column.words("instrument"),
                Column.words("size"),
                Column.numbers("depth", "mm"),
                Column.words("motion"),
                Column.numbers("speed", "rpm"),
                Column.numbers("torque limit", "N·cm"),
                Column.numbers("strokes"),
                Column.words("note"));
        for (int i = 0; i < arranged.instruments().size(); i++) {
            table.row(setting(arranged, i));
        }
        return table;
    }

    private static List<String> setting(ArrangedSequence arranged, int place) {
        List<String> cells = new ArrayList<>(
                List.of(String.valueOf(place + 1), arranged.step(place).word()));
        if (arranged.step(place) instanceof Irrigation rinse) {
            cells.addAll(List.of(
                    rinse.irrigant() + ", " + Shown.number(rinse.volumeMl()) + " ml",
                    rinse.needle().word(),
                    Shown.number(rinse.depthMm(), 1, 1),
                    NONE,
                    NONE,
                    NONE,
                    NONE));
        }
        arranged.working(place).ifPresent(working -> {
            InstrumentStep step = working.step();
            cells.addAll(List.of(
                    working.instrument().name(),
                    Designation.of(working.instrument()).text(),
                    Shown.number(step.depthMm(), 1, 1),
                    motion(step),
                    step.speedRpm().map(rpm -> Shown.number(rpm, 0, 0)).orElse(NONE),
                    step.torqueNmm().map(nmm -> Shown.number(nmm / 10)).orElse(NONE),
                    String.valueOf(step.strokes())));
        });
        cells.add(arranged.step(place).note());
        return cells;
    }

    private static String motion(InstrumentStep step) {
        return step.motion().word()
                + step.angles()
                        .map(set ->
                                " " + Shown.number(set.cuttingDeg()) + "°/" + Shown.number(set.releasingDeg()) + "°")
                        .orElse("");
    }

    private static Table widening(ArrangedSequence arranged, GeometricPassage passage) {
        Table table = Table.of(
                Column.numbers("step"),
                Column.words("size"),
                Column.words("wider from the orifice", "mm"),
                Column.numbers("by at most", "mm"),
                Column.numbers("coronal", "mm³"),
                Column.numbers("middle", "mm³"),
                Column.numbers("apical", "mm³"),
                Column.numbers("coronal", "% of length"),
                Column.numbers("middle", "% of length"),
                Column.numbers("apical", "% of length"));
        for (Working working : arranged.workings()) {
            if (passage.steps().isEmpty()) {
                break;
            }
            StepGeometry step = passage.steps().get(working.place()).orElseThrow();
            List<String> cells = new ArrayList<>(List.of(
                    String.valueOf(working.place() + 1),
                    Designation.of(working.instrument()).text(),
                    stretches(step),
                    Shown.number(step.greatestExcessMm(), 2, 2)));
            cells.addAll(thirds(step.enlargedMm3(), mm3 -> Shown.number(mm3, 3, 3)));
            cells.addAll(thirds(step.engagedShare(), share -> Shown.number(share * 100, 0, 0)));
            table.row(cells);
        }
        List<String> sum = new ArrayList<>(List.of("", "all", "", ""));
        sum.addAll(thirds(sums(passage), mm3 -> Shown.number(mm3, 3, 3)));
        sum.addAll(List.of("", "", ""));
        return table.row(sum);
    }

    private static Map<Third, Double> sums(GeometricPassage passage) {
        return Arrays.stream(Third.values())
                .collect(Collectors.toMap(
                        third -> third,
                        third -> passage.steps().stream()
                                .flatMap(Optional::stream)
                                .mapToDouble(step -> step.enlargedMm3().get(third))
                                .sum()));
    }

    private static List<String> thirds(Map<Third, Double> values, DoubleFunction<String> written) {
        return Arrays.stream(Third.values())
                .map(third -> written.apply(values.get(third)))
                .toList();
    }

    private static String stretches(StepGeometry step) {
        return step.engaged().isEmpty()
                ? "nowhere"
                : step.engaged().stream()
                        .map(stretch ->
                                Shown.number(stretch.fromMm(), 1, 1) + " to " + Shown.number(stretch.toMm(), 1, 1))
                        .collect(Collectors.joining(", "));
    }
}
