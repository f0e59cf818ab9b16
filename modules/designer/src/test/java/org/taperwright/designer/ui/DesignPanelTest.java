package org.taperwright.designer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.api.ThingTransfer;
import org.taperwright.workbench.ui.Gestures;
import org.taperwright.workbench.ui.Heading;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.Shots;
import org.taperwright.workbench.ui.XyPlot;

class DesignPanelTest {
    private BareDesk desk;
    private DesignPanel panel;

    @BeforeEach
    void open() throws InterruptedException {
        Shots.theme(false);
        desk = new BareDesk(SampleDesigns.library());
        panel = Shots.onEventThread(() -> {
            desk.select(SampleDesigns.ROTARY);
            return new DesignPanel(desk);
        });
        desk.settle();
        Shots.layOut(panel, 1400, 900);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void entering_the_tip_diameter_makes_one_named_edit_and_undo_puts_it_back() {
        Gestures.enter(text("design.tipDiameter"), "0.3 mm");

        assertThat(design().tipDiameterMm()).isEqualTo(0.3);
        assertThat(desk.nextUndo()).contains("Tip diameter to 0.30 mm");
        undo();
        assertThat(design()).isEqualTo(SampleDesigns.rotary());
        assertThat(text("design.tipDiameter").getText()).isEqualTo("0.25 mm");
        assertThat(desk.nextUndo()).isEmpty();
    }

    @Test
    void a_held_arrow_shows_the_change_before_it_is_stored() {
        JTextField field = text("design.tipDiameter");
        Gestures.press(field, KeyEvent.VK_UP);
        Gestures.press(field, KeyEvent.VK_UP);

        assertThat(design().tipDiameterMm()).isEqualTo(0.25);
        assertThat(plot("design.profile").plot().curves().get(0).spots().get(0).y())
                .isEqualTo(0.27);
        Gestures.release(field, KeyEvent.VK_UP);
        assertThat(desk.nextUndo()).contains("Tip diameter to 0.27 mm");
        undo();
        assertThat(desk.nextUndo()).isEmpty();
    }

    @Test
    void a_taper_entered_in_the_table_is_named_by_its_segment() {
        JTable table = Gestures.named(panel, "design.taper.table", JTable.class);
        Shots.onEventThread(() -> {
            table.setValueAt(0.06, 1, 2);
            return table;
        });

        assertThat(design().taper().get(1).taper()).isEqualTo(0.06);
        assertThat(desk.nextUndo()).contains("Taper segment 2 to 0.06");
    }

    @Test
    void dragging_a_handle_previews_and_makes_one_edit_on_release() {
        XyPlot profile = plot("design.profile");
        Point2D at = Shots.onEventThread(() -> profile.toPixels(8, 0.74));
        Point2D to = Shots.onEventThread(() -> profile.toPixels(8, 0.84));

        Gestures.mouse(profile, MouseEvent.MOUSE_PRESSED, at.getX(), at.getY());
        Gestures.mouse(profile, MouseEvent.MOUSE_DRAGGED, at.getX(), (at.getY() + to.getY()) / 2);
        Gestures.mouse(profile, MouseEvent.MOUSE_DRAGGED, to.getX(), to.getY());
        assertThat(design()).isEqualTo(SampleDesigns.rotary());
        assertThat(profile.plot().curves().get(0).spots().get(2).y()).isGreaterThan(0.8);
        Gestures.mouse(profile, MouseEvent.MOUSE_RELEASED, to.getX(), to.getY());

        assertThat(design().taper().get(1).taper()).isEqualTo(0.07);
        assertThat(design().taper().get(2).taper()).isEqualTo(0.03);
        assertThat(desk.nextUndo()).contains("Taper segment 2 to 0.07");
        undo();
        assertThat(desk.nextUndo()).isEmpty();
    }

    @Test
    void the_profile_is_edited_by_keys_too() {
        XyPlot profile = plot("design.profile");
        Gestures.press(profile, KeyEvent.VK_RIGHT);
        Gestures.press(profile, KeyEvent.VK_UP);
        Gestures.release(profile, KeyEvent.VK_UP);

        assertThat(desk.nextUndo()).contains("Taper segment 2 to 0.055");
    }

    @Test
    void splitting_and_removing_segments_are_edits_that_keep_the_profile() {
        JTable table = Gestures.named(panel, "design.taper.table", JTable.class);
        Shots.onEventThread(() -> {
            table.setRowSelectionInterval(2, 2);
            return table;
        });
        click("design.taper.split");

        assertThat(design().taper()).hasSize(4);
        assertThat(design().diameterMm(16)).isEqualTo(SampleDesigns.rotary().diameterMm(16));
        assertThat(desk.nextUndo()).contains("Split taper segment 3");
        Shots.onEventThread(() -> {
            table.setRowSelectionInterval(3, 3);
            return table;
        });
        click("design.taper.remove");
        assertThat(design()).isEqualTo(SampleDesigns.rotary());
    }

    @Test
    void another_family_brings_its_own_parameters_into_the_form() {
        JComboBox<?> family = Gestures.named(panel, "design.section.family", JComboBox.class);
        Shots.onEventThread(() -> {
            for (int i = 0; i < family.getItemCount(); i++) {
                if (((SectionFamily) family.getItemAt(i)).id().equals("teardrop")) {
                    family.setSelectedIndex(i);
                }
            }
            return family;
        });

        assertThat(design().sections().get(0).shape().family()).isEqualTo("teardrop");
        assertThat(Gestures.named(panel, "design.section.parameters.coreDiameter", QuantityField.class)
                        .isEnabled())
                .isTrue();
    }

    @Test
    void quick_entry_fills_in_size_and_one_taper() {
        Shots.onEventThread(() -> {
            Gestures.named(panel, "design.quick.size", JComboBox.class).setSelectedItem(30);
            return panel;
        });
        Gestures.enter(text("design.quick.taper"), "4 %");
        click("design.quick.fill");

        assertThat(design().tipDiameterMm()).isEqualTo(0.3);
        assertThat(design().taper()).hasSize(1);
        assertThat(design().diameterMm(16)).isEqualTo(0.3 + 16 * 0.04);
        assertThat(desk.nextUndo()).contains("Fill in 30/.04");
    }

    @Test
    void an_impossible_design_says_why_and_marks_the_numbers_outdated() throws InterruptedException {
        JTable table = Gestures.named(panel, "design.taper.table", JTable.class);
        Shots.onEventThread(() -> {
            table.setValueAt(-0.1, 2, 2);
            return table;
        });
        desk.settle();

        assertThat(checks())
                .anySatisfy(words -> assertThat(words).startsWith("Taper").contains("0.05 mm"));
        assertThat(headings()).contains("Numbers (outdated)");
        assertThat(Gestures.named(panel, "design.status", JLabel.class).getText())
                .isEqualTo("Cannot be computed: see the checks");
    }

    /** In both layouts what is drawn of every estimate and index holds the ends of its band. */
    @ParameterizedTest
    @ValueSource(ints = {1000, 1600})
    void no_estimate_or_index_stands_without_its_band(int width) {
        Shots.layOut(panel, width, 1000);
        Shots.layOut(panel, width, 1000);
        JTable numbers = Gestures.named(panel, "design.numbers.table", JTable.class);
        Assessment assessment = ((AssessmentResult.Assessed) Assessments.of(design(), Progress.NONE)).assessment();
        assertThat(numbers.getRowCount()).isEqualTo(Metrics.all().size());
        for (int row = 0; row < numbers.getRowCount(); row++) {
            Metric metric = Metrics.all().get(row);
            String ends = metric.read(assessment).band().map(Shown::band).orElse("");
            assertThat(ends.isEmpty()).isEqualTo(metric.standing() == Standing.COMPUTED);
            assertThat(drawn(numbers, row))
                    .contains(ends, metric.unit(), metric.standing().word());
        }
    }

    @Test
    void the_bench_plots_show_bands_about_their_curves() {
        for (String name : List.of("design.bending.plot", "design.twisting.plot")) {
            Plot plot = Gestures.named(panel, name, XyPlot.class).plot();
            assertThat(plot.bands()).as(name).hasSize(1);
            Plot.Band band = plot.bands().get(0);
            List<Plot.Spot> curve = plot.curves().get(0).spots();
            assertThat(band.lower()).hasSameSizeAs(curve);
            for (int i = 0; i < curve.size(); i++) {
                assertThat(curve.get(i).y())
                        .isBetween(band.lower().get(i).y(), band.upper().get(i).y());
            }
            assertThat(band.upper().get(curve.size() - 1).y())
                    .isGreaterThan(band.lower().get(curve.size() - 1).y());
        }
    }

    private static String drawn(JTable table, int row) {
        StringBuilder words = new StringBuilder();
        for (int column = 0; column < table.getColumnCount(); column++) {
            Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
            words.append(((JLabel) cell).getText()).append(' ');
        }
        return words.toString();
    }

    @Test
    void numbers_of_one_design_never_stand_under_another() {
        JTable numbers = Gestures.named(panel, "design.numbers.table", JTable.class);
        assertThat(numbers.getRowCount()).isPositive();

        // On the event thread nothing can be delivered in between: what stands there now is what a person would see.
        int rows = Shots.onEventThread(() -> {
            desk.select(SampleDesigns.FILE);
            return numbers.getRowCount();
        });

        assertThat(rows).isZero();
    }

    @Test
    void an_edit_made_elsewhere_shows_at_once() {
        Shots.onEventThread(() -> {
            Design changed = Designs.with(design()).motion(Motion.RECIPROCATION).design();
            desk.edit("Motion to reciprocation", List.of(new Change.Put(SampleDesigns.ROTARY, changed)));
            return panel;
        });

        assertThat(Gestures.named(panel, "design.motion", JComboBox.class).getSelectedItem())
                .isEqualTo(Motion.RECIPROCATION);
    }

    @Test
    void a_removed_design_leaves_advice_on_what_to_do_next() {
        Shots.onEventThread(() -> {
            desk.edit("Remove", List.of(new Change.Remove(SampleDesigns.ROTARY)));
            return panel;
        });

        Component advice = Gestures.named(panel, "design.empty", JComponent.class);
        assertThat(advice.isVisible()).isTrue();
        click("design.empty.New design");
        assertThat(advice.isVisible()).isFalse();
        assertThat(desk.nextUndo()).contains("Add design");
    }

    @Test
    void before_anything_is_selected_the_first_comparisons_datum_is_open() {
        Map<ThingId, Record> things = new HashMap<>(SampleDesigns.library());
        List<ThingId> members = List.of(SampleDesigns.FILE, SampleDesigns.ROTARY);
        things.put(new ThingId("pair"), new SavedComparison("Pair", members, SampleDesigns.ROTARY, ""));
        try (BareDesk fresh = new BareDesk(things)) {
            DesignPanel opened = Shots.onEventThread(() -> new DesignPanel(fresh));

            assertThat(Gestures.named(opened, "design.name", JTextField.class).getText())
                    .isEqualTo("Falling taper 25");
        }
    }

    @Test
    void a_design_dropped_on_the_window_opens() {
        boolean taken = Shots.onEventThread(() -> panel.getTransferHandler()
                .importData(
                        new TransferHandler.TransferSupport(panel, new ThingTransfer(List.of(SampleDesigns.FILE)))));

        assertThat(taken).isTrue();
        assertThat(Gestures.named(panel, "design.name", JTextField.class).getText())
                .isEqualTo("Square file 25");
    }

    @Test
    void everything_that_takes_the_focus_has_a_name_to_be_read_out() {
        List<Component> nameless = Gestures.all(panel).stream()
                .filter(part -> part instanceof JTextField
                        || part instanceof JComboBox
                        || part instanceof AbstractButton button && button.isFocusable() && isOurs(button)
                        || part instanceof JTable)
                .filter(part -> part.getAccessibleContext().getAccessibleName() == null)
                .toList();

        assertThat(nameless).isEmpty();
    }

    private static boolean isOurs(AbstractButton button) {
        return button.getName() != null && button.getName().startsWith("design.");
    }

    private Design design() {
        return desk.snapshot().thing(SampleDesigns.ROTARY, Design.class).orElseThrow();
    }

    private JTextField text(String field) {
        return Gestures.named(panel, field + ".text", JTextField.class);
    }

    private XyPlot plot(String name) {
        return Gestures.named(panel, name, XyPlot.class);
    }

    private void click(String button) {
        Shots.onEventThread(() -> {
            Gestures.named(panel, button, AbstractButton.class).doClick();
            return panel;
        });
    }

    private void undo() {
        Shots.onEventThread(() -> {
            desk.undo();
            return panel;
        });
    }

    private List<String> checks() {
        return Gestures.all(panel).stream()
                .filter(part ->
                        part instanceof Prose && String.valueOf(part.getName()).startsWith("fault."))
                .map(part -> ((Prose) part).getText())
                .toList();
    }

    private List<String> headings() {
        return Gestures.all(panel).stream()
                .filter(Heading.class::isInstance)
                .map(part -> ((Heading) part).getText())
                .toList();
    }
}
