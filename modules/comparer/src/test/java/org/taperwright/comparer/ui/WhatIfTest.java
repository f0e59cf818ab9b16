package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JSlider;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.comparison.sweep.DesignParameter;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;

class WhatIfTest {
    private OpenPanel open;

    @BeforeEach
    void open() throws InterruptedException {
        open = OpenPanel.of(SampleDesigns.library());
        open.perform(
                () -> open.find("comparison.whatif.design", JComboBox.class).setSelectedIndex(0));
    }

    @AfterEach
    void close() {
        open.close();
    }

    /** The plastic torque goes with the cube of the diameter at the weakest level (Nadai). */
    @Test
    void moving_a_parameter_moves_every_row_and_leaves_the_library_alone() throws InterruptedException {
        String before = open.cell("Fully plastic torque", 0).value();
        long revision = open.desk().snapshot().revision();
        parameter("tipDiameterMm");
        slide(0.5);

        assertThat(open.cell("Fully plastic torque", 0).value()).isNotEqualTo(before);
        assertThat(open.find("comparison.table", JTable.class).getColumnName(1))
                .isEqualTo("Marsh steel square (trial)");
        assertThat(open.desk().snapshot().revision()).isEqualTo(revision);
        assertThat(open.desk().nextUndo()).isEmpty();
    }

    @Test
    void the_map_traces_where_the_design_has_been() throws InterruptedException {
        open.perform(
                () -> open.find("comparison.whatif.design", JComboBox.class).setSelectedIndex(1));
        parameter("taper[0].taper");
        slide(0.5);
        slide(0.6);
        slide(0.7);
        TradeOffMap map = open.find("comparison.map", TradeOffMap.class);
        assertThat(map.path()).hasSize(4);
        assertThat(map.path()).isSortedAccordingTo((a, b) -> Double.compare(b.getX(), a.getX()));

        open.perform(
                () -> open.find("comparison.whatif.drop", AbstractButton.class).doClick());

        assertThat(map.path()).isEmpty();
    }

    @Test
    void dropping_brings_the_numbers_back() throws InterruptedException {
        String before = open.cell("Flexibility", 0).value();
        parameter("tipDiameterMm");
        slide(0.6);
        open.perform(
                () -> open.find("comparison.whatif.drop", AbstractButton.class).doClick());

        assertThat(open.cell("Flexibility", 0).value()).isEqualTo(before);
        assertThat(open.find("comparison.whatif.keep", AbstractButton.class).isEnabled())
                .isFalse();
    }

    @Test
    void keeping_puts_a_new_design_beside_the_old_in_one_edit_that_undo_takes_back() throws InterruptedException {
        parameter("flutes[0].flutesPerMm");
        slide(0.5);
        open.perform(
                () -> open.find("comparison.whatif.keep", AbstractButton.class).doClick());

        assertThat(open.comparison().designs()).hasSize(4);
        ThingId fresh = open.comparison().designs().get(3);
        Design kept = open.desk().snapshot().thing(fresh, Design.class).orElseThrow();
        assertThat(kept.name()).isEqualTo("Marsh steel square, flutes per mm 1.55");
        assertThat(kept.flutes().get(0).flutesPerMm()).isCloseTo(1.55, within(1e-9));
        assertThat(open.desk().nextUndo()).contains("Keep " + kept.name());

        open.perform(open.desk()::undo);

        assertThat(open.comparison().designs()).hasSize(3);
        assertThat(open.desk().snapshot().thing(fresh, Design.class)).isEmpty();
    }

    @Test
    void an_alloy_is_chosen_from_a_list() throws InterruptedException {
        String before = open.cell("Flexibility", 0).value();
        parameter("alloy");
        JComboBox<?> alloys = open.find("comparison.whatif.choice", JComboBox.class);
        assertThat(alloys.getItemCount()).isGreaterThan(3);
        open.perform(() -> alloys.setSelectedIndex(alloys.getItemCount() - 1));

        assertThat(open.cell("Flexibility", 0).value()).isNotEqualTo(before);
    }

    @Test
    void an_edit_of_the_design_elsewhere_ends_the_trial() throws InterruptedException {
        parameter("tipDiameterMm");
        slide(0.5);
        Design steel =
                open.desk().snapshot().thing(SampleDesigns.STEEL, Design.class).orElseThrow();
        Design renamed = Designs.with(steel).name("Marsh square").design();
        open.perform(() -> open.desk().edit("Rename", List.of(new Change.Put(SampleDesigns.STEEL, renamed))));

        assertThat(open.find("comparison.table", JTable.class).getColumnName(1)).isEqualTo("Marsh square");
        assertThat(open.find("comparison.whatif.keep", AbstractButton.class).isEnabled())
                .isFalse();
    }

    private void parameter(String id) throws InterruptedException {
        JComboBox<?> box = open.find("comparison.whatif.parameter", JComboBox.class);
        for (int i = 0; i < box.getItemCount(); i++) {
            if (((DesignParameter) box.getItemAt(i)).id().equals(id)) {
                int index = i;
                open.perform(() -> box.setSelectedIndex(index));
                return;
            }
        }
        throw new AssertionError("no parameter " + id);
    }

    private void slide(double share) throws InterruptedException {
        JSlider slider = open.find("comparison.whatif.slider", JSlider.class);
        open.perform(() -> slider.setValue((int) Math.round(share * slider.getMaximum())));
    }
}
