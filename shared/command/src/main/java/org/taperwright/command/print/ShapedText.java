package org.taperwright.command.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.stroke.CanalOutcome;
import org.taperwright.shaping.passage.stroke.LeastDentine;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.passage.stroke.Transportation;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** What a sequence does stroke by stroke, as parts of a page: each output under its standing. */
final class ShapedText {
    private static final String NONE = "–";

    private ShapedText() {}

    static void parts(Page page, ArrangedSequence arranged, ShapedSequence shaped) {
        page.part("Stroke by stroke, the instrument bending in the canal (computed, from the wear assumed)");
        for (Fault fault : shaped.faults()) {
            page.line(fault.sentence());
        }
        if (shaped.steps().isEmpty()) {
            page.line("No step could be made.");
            return;
        }
        page.table(computed(arranged, shaped));
        page.part(
                "What it costs the instrument (room: estimate; torque, reserve, life: index, torque within a factor of 3)");
        page.table(costs(arranged, shaped));
        shaped.canal().ifPresent(canal -> whole(page, canal));
    }

    private static Table computed(ArrangedSequence arranged, ShapedSequence shaped) {
        Table table = Table.of(
                Column.numbers("step"),
                Column.words("size"),
                Column.numbers("binds at", "mm"),
                Column.numbers("engaged at first", "mm"),
                Column.numbers("coronal", "mm³"),
                Column.numbers("middle", "mm³"),
                Column.numbers("apical", "mm³"),
                Column.numbers("strain", "%"),
                Column.numbers("at level", "mm"),
                Column.numbers("side force at the tip", "N"),
                Column.numbers("tip off the axis", "mm"));
        for (int i : shaped.byPlace().keySet()) {
            StepOutcome step = Objects.requireNonNull(shaped.byPlace().get(i));
            List<String> cells = new ArrayList<>(List.of(
                    String.valueOf(i + 1),
                    Designation.of(arranged.instruments().get(i).orElseThrow()).text(),
                    Shown.number(step.bindDepthMm(), 2, 2),
                    Shown.number(step.engagedFirstMm(), 1, 1)));
            cells.addAll(thirds(step.removedMm3()));
            cells.add(Shown.number(step.greatestStrain() * 100, 2, 2));
            cells.add(Shown.number(step.strainLevelMm(), 1, 1));
            cells.add(Shown.number(step.tipForceN(), 2, 2));
            cells.add(Shown.number(step.tipOffsetMm(), 3, 3));
            table.row(cells);
        }
        return table;
    }

    private static Table costs(ArrangedSequence arranged, ShapedSequence shaped) {
        Table table = Table.of(
                Column.numbers("step"),
                Column.words("size"),
                Column.numbers("flute room filled", "%"),
                Column.numbers("torque", "N·cm"),
                Column.numbers("torsional reserve", "times"),
                Column.numbers("life spent", "%"),
                Column.numbers("at level", "mm"));
        for (int i : shaped.byPlace().keySet()) {
            StepOutcome step = Objects.requireNonNull(shaped.byPlace().get(i));
            table.row(
                    String.valueOf(i + 1),
                    Designation.of(arranged.instruments().get(i).orElseThrow()).text(),
                    Shown.number(step.roomFilled() * 100, 0, 0),
                    Shown.number(step.torque().totalNmm() / 10, 2, 2),
                    Double.isInfinite(step.reserve()) ? NONE : Shown.number(step.reserve(), 1, 1),
                    Shown.number(step.damage() * 100, 1, 1),
                    step.damage() > 0 ? Shown.number(step.damageLevelMm(), 1, 1) : NONE);
        }
        return table;
    }

    private static void whole(Page page, CanalOutcome canal) {
        page.part("The canal after all steps");
        page.line("Volume before, coronal to apical: " + String.join(", ", thirds(canal.beforeMm3())) + " mm³; after: "
                + String.join(", ", thirds(canal.afterMm3())) + " mm³ (computed, from the wear assumed)");
        page.line("Wall worn by more than " + Shown.mm(CanalOutcome.TOUCHED_MM) + ": "
                + Shown.percent(canal.touchedShare()) + " (estimate)");
        page.line(
                canal.leastDentine().map(ShapedText::dentine).orElse("Least dentine: the root's outline is not known"));
        Table table = Table.of(
                Column.numbers("from the end", "mm"),
                Column.numbers("transported, + to the inside", "mm"),
                Column.numbers("centring ratio"));
        for (Transportation moved : canal.transportation()) {
            table.row(
                    Shown.number(moved.fromEndMm(), 0, 0),
                    Shown.number(moved.transportedMm(), 3, 3),
                    moved.centring().map(ratio -> Shown.number(ratio, 2, 2)).orElse(NONE));
        }
        page.part("Transportation (sign and order hold; the size is an index, set by the wear assumed)");
        page.table(table);
    }

    private static String dentine(LeastDentine least) {
        return "Least dentine: " + Shown.mm(least.thicknessMm()) + ", " + Shown.mm(least.depthMm())
                + " below the orifice towards " + Shown.degrees(least.azimuthDeg()) + " (estimate)";
    }

    private static List<String> thirds(Map<Third, Double> values) {
        return Arrays.stream(Third.values())
                .map(third -> Shown.number(values.get(third), 3, 3))
                .toList();
    }
}
