package org.taperwright.command.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.remark.ShapedRules;
import org.taperwright.shaping.passage.stroke.CanalOutcome;
import org.taperwright.shaping.passage.stroke.LeastDentine;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.passage.stroke.Transportation;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** What a sequence does stroke by stroke, as parts of a page: each output under its standing. */
final class ShapedText {
    private ShapedText() {}

    static void parts(Page page, ArrangedSequence arranged, ShapedSequence shaped, Banded banded) {
        page.part("Stroke by stroke, the instrument bending in the canal (computed, from the wear assumed)");
        for (Fault fault : shaped.faults()) {
            page.line(fault.sentence());
        }
        if (shaped.steps().isEmpty()) {
            page.line("No step could be made.");
            return;
        }
        page.table(computed(arranged, shaped));
        if (banded.shown()) {
            for (Fault fault : ShapedRules.check(arranged, shaped)) {
                page.line("unusual     " + fault.sentence());
            }
            page.part("What it costs the instrument, 5 to 95 % in brackets"
                    + " (room: estimate; torque, reserve, life: index, torque within a factor of 3)");
            page.table(costs(arranged, shaped, banded));
        } else {
            page.line(Banded.LEFT_OUT);
        }
        shaped.canal().ifPresent(canal -> whole(page, canal, banded));
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

    private static Table costs(ArrangedSequence arranged, ShapedSequence shaped, Banded banded) {
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
            Optional<Integer> at = Optional.of(i);
            table.row(
                    String.valueOf(i + 1),
                    Designation.of(arranged.instruments().get(i).orElseThrow()).text(),
                    banded.cell(at, "roomFilled", step.roomFilled(), 100, 0),
                    banded.cell(at, "torqueNmm", step.torque().totalNmm(), 0.1, 2),
                    banded.cell(at, "torsionalReserve", step.reserve(), 1, 1),
                    banded.cell(at, "lifeSpent", step.damage(), 100, 1),
                    banded.cell(at, "lifeLevelMm", step.damageLevelMm(), 1, 1));
        }
        return table;
    }

    private static void whole(Page page, CanalOutcome canal, Banded banded) {
        page.part("The canal after all steps");
        page.line("Volume before, coronal to apical: " + String.join(", ", thirds(canal.beforeMm3())) + " mm³; after: "
                + String.join(", ", thirds(canal.afterMm3())) + " mm³ (computed, from the wear assumed)");
        if (!banded.shown()) {
            return;
        }
        page.line("Wall worn by more than " + Shown.mm(CanalOutcome.TOUCHED_MM) + ": "
                + banded.cell(Optional.empty(), "touchedShare", canal.touchedShare(), 100, 0) + " % (estimate)");
        page.line(canal.leastDentine()
                .map(least -> dentine(least, banded))
                .orElse("Least dentine: the root's outline is not known"));
        Table table = Table.of(
                Column.numbers("from the end", "mm"),
                Column.numbers("transported, + to the inside", "mm"),
                Column.numbers("centring ratio"));
        for (Transportation moved : canal.transportation()) {
            int from = (int) moved.fromEndMm();
            table.row(
                    Shown.number(moved.fromEndMm(), 0, 0),
                    banded.cell(Optional.empty(), "transportedMm." + from, moved.transportedMm(), 1, 3),
                    moved.centring()
                            .map(ratio -> banded.cell(Optional.empty(), "centringRatio." + from, ratio, 1, 2))
                            .orElse(Banded.NONE));
        }
        page.part("Transportation (sign and order hold; the size is an index, set by the wear assumed)");
        page.table(table);
    }

    private static String dentine(LeastDentine least, Banded banded) {
        return "Least dentine: " + banded.cell(Optional.empty(), "leastDentineMm", least.thicknessMm(), 1, 2) + " mm, "
                + Shown.mm(least.depthMm()) + " below the orifice towards " + Shown.degrees(least.azimuthDeg())
                + " (estimate)";
    }

    private static List<String> thirds(Map<Third, Double> values) {
        return Arrays.stream(Third.values())
                .map(third -> Shown.number(values.get(third), 3, 3))
                .toList();
    }
}
