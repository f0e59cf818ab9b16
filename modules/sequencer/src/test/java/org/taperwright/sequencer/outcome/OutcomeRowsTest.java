package org.taperwright.sequencer.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Arrangement;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.sequencer.SampleSequence;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.workbench.ui.DataTable;

class OutcomeRowsTest {
    private static final Shaped SHAPED = shaped(SampleSequence.things());

    private static Shaped shaped(Map<ThingId, Record> things) {
        return new ShapingWork(arrangement(things)).run(Progress.NONE);
    }

    private static Arrangement arrangement(Map<ThingId, Record> things) {
        Map<ThingId, Entry> entries = new HashMap<>();
        things.forEach((id, thing) -> entries.put(id, new Entry(id, thing, 1, Instant.EPOCH, "Open")));
        Snapshot snapshot = new Snapshot(1, entries);
        return Arrangement.of(
                snapshot.thing(SampleSequence.SEQUENCE, Sequence.class).orElseThrow(), snapshot);
    }

    private static List<OutcomeRow> all() {
        return OutcomeRows.of(SHAPED, Optional.empty(), place -> true);
    }

    private static double value(OutcomeRow row, OutcomeColumn column) {
        return row.cell(column).value().orElseThrow();
    }

    @Test
    void each_step_has_its_thirds_beneath_it_and_the_whole_canal_stands_last() {
        assertThat(all())
                .extracting(OutcomeRow::label)
                .containsExactly(
                        "1  Ditch hand 10",
                        "coronal",
                        "middle",
                        "apical",
                        "2  Fen rotary 20",
                        "coronal",
                        "middle",
                        "apical",
                        "3  Fen rotary 25",
                        "coronal",
                        "middle",
                        "apical",
                        "Whole canal",
                        "coronal",
                        "middle",
                        "apical");
        assertThat(OutcomeRows.of(SHAPED, Optional.empty(), place -> place == 1))
                .extracting(OutcomeRow::label)
                .containsExactly(
                        "1  Ditch hand 10",
                        "2  Fen rotary 20",
                        "coronal",
                        "middle",
                        "apical",
                        "3  Fen rotary 25",
                        "Whole canal");
    }

    /** Volumes add up: the thirds to the step's, the steps to the canal's. */
    @Test
    void what_the_thirds_lose_is_what_the_step_removes_and_the_steps_add_up_to_the_whole() {
        List<OutcomeRow> rows = all();
        double whole = 0;
        for (int step = 0; step < 3; step++) {
            double thirds = 0;
            for (int third = 1; third <= 3; third++) {
                thirds += value(rows.get(4 * step + third), OutcomeColumn.REMOVED);
            }
            assertThat(thirds).isEqualTo(value(rows.get(4 * step), OutcomeColumn.REMOVED), within(1e-9));
            whole += thirds;
        }
        assertThat(value(rows.get(12), OutcomeColumn.REMOVED)).isEqualTo(whole, within(1e-9));
        double before = SHAPED.run().orElseThrow().sequence().canal().orElseThrow().beforeMm3().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        double after = SHAPED.run().orElseThrow().sequence().canal().orElseThrow().afterMm3().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        assertThat(whole).isEqualTo(after - before, within(1e-6));
    }

    /** The step's limit is 20 N·mm: a torque in N·cm is half of its share of the limit in per cent, less the hundred. */
    @Test
    void torque_is_told_against_the_limit_set_in_the_step() {
        OutcomeRow rotary = all().get(8);
        double torqueNcm = value(rotary, OutcomeColumn.TORQUE);
        assertThat(torqueNcm).isPositive();
        assertThat(value(rotary, OutcomeColumn.LIMIT)).isEqualTo(torqueNcm / 2 * 100, within(1e-9));
        assertThat(all().get(0).cell(OutcomeColumn.LIMIT).value())
                .as("by hand there is no limit")
                .isEmpty();
    }

    @Test
    void of_the_whole_canal_the_step_that_came_out_worst_is_told_and_named() {
        List<OutcomeRow> rows = all();
        OutcomeCell reserve = rows.get(12).cell(OutcomeColumn.RESERVE);
        double least = Math.min(value(rows.get(4), OutcomeColumn.RESERVE), value(rows.get(8), OutcomeColumn.RESERVE));
        assertThat(reserve.value()).contains(least);
        assertThat(reserve.note()).startsWith("The least of all steps: step ");
        assertThat(value(rows.get(12), OutcomeColumn.WORN)).isEqualTo(value(rows.get(8), OutcomeColumn.WORN));
    }

    @Test
    void what_is_told_of_a_step_alone_is_not_told_of_its_thirds() {
        OutcomeRow coronal = all().get(9);
        assertThat(coronal.third()).contains(Third.CORONAL);
        assertThat(coronal.cell(OutcomeColumn.TORQUE).value()).isEmpty();
        assertThat(coronal.cell(OutcomeColumn.WORN).value()).isPresent();
        assertThat(coronal.cell(OutcomeColumn.DENTINE).value())
                .as("the root is not known")
                .isEmpty();
    }

    @Test
    void until_the_bands_are_there_a_number_that_needs_one_is_not_shown() {
        OutcomeRow step = all().get(8);
        assertThat(step.cell(OutcomeColumn.TORQUE).toString()).isEqualTo("… (computing)");
        assertThat(OutcomeData.of(List.of(step)).rows().get(0))
                .as("nor is it copied")
                .doesNotContain(
                        step.cell(OutcomeColumn.TORQUE).value().orElseThrow().toString());
        assertThat(step.cell(OutcomeColumn.STRAIN).bandWords()).isEmpty();
        assertThat(step.cell(OutcomeColumn.STRAIN).valueWords()).matches("[0-9.]+");
    }

    @Test
    void a_step_whose_instrument_is_gone_is_not_made_and_the_others_keep_their_places() {
        Map<ThingId, Record> things = SampleSequence.things();
        things.remove(SampleSequence.HAND);
        Shaped shaped = shaped(things);
        assertThat(shaped.places()).containsExactly(1, 2);
        assertThat(shaped.step(0)).isEmpty();
        assertThat(shaped.step(1)).isPresent();
        List<OutcomeRow> rows = OutcomeRows.of(shaped, Optional.empty(), place -> false);
        assertThat(rows.get(0).detail()).isEqualTo("not made");
        assertThat(rows.get(0).cell(OutcomeColumn.REMOVED)).isEqualTo(OutcomeCell.NONE);
        assertThat(rows.get(1).cell(OutcomeColumn.REMOVED).value()).isPresent();
    }

    /** A tip 0.2 mm wide whose end does not cut stands before a tube 0.06 mm wide. */
    @Test
    void a_step_that_cannot_be_made_says_why_under_its_own_number() {
        Map<ThingId, Record> things = SampleSequence.things();
        things.remove(SampleSequence.HAND);
        things.put(
                SampleSequence.CANAL,
                new Canal(
                        "Narrow",
                        List.of(new CanalPiece(12, 0, 0)),
                        List.of(new Opening(0, 0.06, 0.06, 0), new Opening(12, 0.06, 0.06, 0)),
                        List.of(),
                        6,
                        17.5,
                        "invented",
                        ""));
        Shaped shaped = shaped(things);
        assertThat(shaped.remarksOn(1, false))
                .singleElement()
                .satisfies(fault -> assertThat(fault.what()).contains("below the orifice"));
        assertThat(OutcomeRows.of(shaped, Optional.empty(), place -> false)
                        .get(1)
                        .remarks())
                .hasSize(1);
    }

    @Test
    void without_a_canal_there_is_nothing_to_tell() {
        Map<ThingId, Record> things = SampleSequence.things();
        things.remove(SampleSequence.CANAL);
        assertThat(OutcomeRows.of(shaped(things), Optional.empty(), place -> true))
                .isEmpty();
    }

    @Test
    void the_numbers_for_files_name_unit_and_standing_and_have_a_place_for_each_bands_ends() {
        DataTable data = OutcomeData.of(all());
        assertThat(data.headers())
                .startsWith("Step", "Instrument", "Third", "Dentine removed (mm³, computed)")
                .contains("Torque (N·cm, index)", "Torque, 5 %", "Torque, 95 %");
        assertThat(data.rows()).allSatisfy(row -> assertThat(row).hasSameSizeAs(data.headers()));
        assertThat(data.rows().get(5)).startsWith("2", "Fen rotary 20", "coronal");
        StepOutcome step = SHAPED.step(1).orElseThrow();
        assertThat(Double.parseDouble(data.rows().get(5).get(3)))
                .isEqualTo(step.removedMm3().get(Third.CORONAL));
    }

    @Test
    void numbers_are_written_in_three_digits_and_bands_in_as_many_as_tell_their_ends_apart() {
        assertThat(OutcomeCell.of(1.23456).valueWords()).isEqualTo("1.23");
        assertThat(OutcomeCell.of(0.0061234).valueWords()).isEqualTo("0.0061");
        assertThat(OutcomeCell.of(3e-6).valueWords()).isEqualTo("< 0.0001");
        assertThat(OutcomeCell.of(0).valueWords()).isEqualTo("0");
        assertThat(OutcomeCell.NONE.valueWords()).isEqualTo("–");
        assertThat(OutcomeCell.written(new Band(0.6912, 6.04))).isEqualTo("0.69 to 6");
        assertThat(OutcomeCell.written(new Band(0.541, 0.543))).isEqualTo("0.541 to 0.543");
        assertThat(OutcomeCell.written(new Band(0.54101, 0.54102))).isEqualTo("hardly varies");
        assertThat(OutcomeCell.written(new Band(0, 0))).isEmpty();
    }
}
