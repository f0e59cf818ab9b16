package org.taperwright.catalogue.ui.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.catalogue.ui.Panels;
import org.taperwright.catalogue.ui.SampleLibrary;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.MemorySettings;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Shots;

/** The panel on a desk in memory, without a display. */
class ImportPanelTest {
    private static final String TABLE = """
            Name;Size;Taper;Length;Pieces in the drawer
            Ditch 20;20;.02;25;3
            Ditch 30;thirty;.02;25;4
            Ditch 40;40;.02;31;2
            """;

    @TempDir
    private Path folder;

    private final MemorySettings settings = new MemorySettings();
    private BareDesk desk;
    private ImportPanel panel;

    @BeforeEach
    void open() throws InterruptedException {
        Shots.theme(false);
        desk = Shots.onEventThread(() -> new BareDesk(SampleLibrary.things()));
        panel = Shots.onEventThread(() -> new ImportPanel(desk, settings));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void a_row_that_cannot_be_read_is_listed_with_line_and_reason_and_the_others_come_in_as_one_edit()
            throws IOException, InterruptedException {
        look(write("ditch.csv", TABLE));

        assertThat(column("import.rejected", 0)).containsExactly("3");
        assertThat(column("import.rejected", 2).get(0)).contains("thirty");
        assertThat(said()).startsWith("2 new, 0 the same, 0 changed. 1 row cannot be read");

        press("import.take");

        assertThat(desk.nextUndo()).hasValueSatisfying(name -> assertThat(name).startsWith("Import 2 things from"));
        assertThat(names()).contains("Ditch 20", "Ditch 40").doesNotContain("Ditch 30");

        Panels.perform(desk, desk::undo);
        assertThat(names()).doesNotContain("Ditch 20");
    }

    @Test
    void the_rejected_rows_are_written_as_they_stood_and_read_again_when_mended()
            throws IOException, InterruptedException {
        look(write("ditch.csv", TABLE));
        Path rejected = folder.resolve("rejected.csv");
        Panels.perform(desk, () -> panel.saveRejected(rejected));

        String text = Files.readString(rejected);
        assertThat(text).contains("Ditch 30;thirty;.02;25;4").doesNotContain("Ditch 20");

        Files.writeString(rejected, text.replace("thirty", "30"));
        look(rejected);
        assertThat(said()).startsWith("1 new, 0 the same, 0 changed.");
        assertThat(column("import.rejected", 0)).isEmpty();
    }

    @Test
    void a_mapping_chosen_once_is_remembered_for_the_next_table_with_these_headings()
            throws IOException, InterruptedException {
        look(write("ditch.csv", TABLE));
        JTable mapping = (JTable) Panels.find(panel, "import.mapping");
        assertThat(mapping.getValueAt(4, 1)).isEqualTo("passed over");

        Panels.perform(desk, () -> mapping.setValueAt("Stock", 4, 1));
        press("import.take");
        ImportPanel another = Shots.onEventThread(() -> new ImportPanel(desk, settings));
        panel = another;
        look(write("next.csv", TABLE));

        assertThat(((JTable) Panels.find(another, "import.mapping")).getValueAt(4, 1))
                .isEqualTo("Stock");
        assertThat(said()).startsWith("0 new, 2 the same");
    }

    @Test
    void a_bundle_shows_what_is_the_same_and_what_changed_and_the_choice_decides() throws InterruptedException {
        Path file = folder.resolve("bundle.json");
        new Outgoing(desk.snapshot(), List.of(SampleLibrary.HAND_8, SampleLibrary.HAND_25), file).run(Progress.NONE);
        Panels.perform(
                desk,
                () -> desk.edit(
                        "Line of K-type file 8",
                        List.of(new Change.Put(
                                SampleLibrary.HAND_8,
                                SampleLibrary.hand(8).draft().line("Moor").instrument()))));
        look(file);

        assertThat(said()).startsWith("0 new, 1 the same, 1 changed.");
        assertThat(column("import.things", 4).get(0)).contains("line: Moor → Ditch");

        press("import.theirs");
        press("import.take");

        assertThat(desk.snapshot().thing(SampleLibrary.HAND_8, Instrument.class))
                .contains(SampleLibrary.hand(8));
    }

    @Test
    void choices_made_one_right_after_another_all_stand_even_for_an_import_begun_at_once() throws InterruptedException {
        Path file = folder.resolve("bundle.json");
        List<ThingId> both = List.of(SampleLibrary.HAND_8, SampleLibrary.HAND_25);
        List<ThingId> all = List.of(SampleLibrary.HAND_8, SampleLibrary.HAND_25, SampleLibrary.ROTARY);
        new Outgoing(desk.snapshot(), all, file).run(Progress.NONE);
        Panels.perform(desk, () -> {
            desk.edit("Another line", both.stream().map(this::onMoor).toList());
            desk.edit("Take the rotary out", List.of(new Change.Remove(SampleLibrary.ROTARY)));
        });
        look(file);
        JTable things = (JTable) Panels.find(panel, "import.things");
        Panels.perform(desk, () -> {
            things.setValueAt("take the file's", 0, 3);
            things.setValueAt("take the file's", 1, 3);
            ((AbstractButton) Panels.find(panel, "import.take")).doClick();
        });

        assertThat(both).allSatisfy(id -> assertThat(instrument(id).line()).isEqualTo("Ditch"));
    }

    private Change onMoor(ThingId id) {
        return new Change.Put(id, instrument(id).draft().line("Moor").instrument());
    }

    private Instrument instrument(ThingId id) {
        return desk.snapshot().thing(id, Instrument.class).orElseThrow();
    }

    @Test
    void where_nothing_would_come_in_nothing_can_be_imported() throws InterruptedException {
        Path file = folder.resolve("same.json");
        new Outgoing(desk.snapshot(), List.of(SampleLibrary.HAND_8), file).run(Progress.NONE);
        look(file);

        assertThat(Panels.find(panel, "import.take").isEnabled()).isFalse();
    }

    @Test
    void a_table_of_a_selection_reads_back_as_the_same() throws InterruptedException {
        Path file = folder.resolve("selection.csv");
        String words =
                new Outgoing(desk.snapshot(), List.copyOf(SampleLibrary.things().keySet()), file).run(Progress.NONE);
        assertThat(words).startsWith("3 rows written to");
        look(file);

        assertThat(said()).startsWith("0 new, 3 the same, 0 changed.");
    }

    @Test
    void a_file_that_is_no_text_is_refused_with_the_reason() throws IOException, InterruptedException {
        Path file = folder.resolve("picture.csv");
        Files.write(file, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, (byte) 0xff});
        look(file);

        assertThat(said()).startsWith("Nothing can be taken from this file");
        assertThat(Panels.find(panel, "import.take").isEnabled()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"false, 1", "false, 2", "true, 1", "true, 2"})
    void the_panel_draws_in_the_theme(boolean dark, double scale) throws IOException, InterruptedException {
        Shots.theme(dark);
        panel = Shots.onEventThread(() -> new ImportPanel(desk, settings));
        look(write("ditch.csv", TABLE));

        var picture = Shots.take("import-" + (dark ? "dark" : "light") + "-" + (int) scale, panel, 940, 560, scale);

        assertThat(picture.getWidth()).isEqualTo((int) (940 * scale));
    }

    private Path write(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }

    private void look(Path file) throws InterruptedException {
        Panels.perform(desk, () -> {
            JTextField typed = (JTextField) Panels.find(panel, "import.file");
            typed.setText(file.toString());
            typed.postActionEvent();
        });
    }

    private void press(String button) throws InterruptedException {
        Panels.perform(desk, () -> ((AbstractButton) Panels.find(panel, button)).doClick());
    }

    private String said() {
        return ((Prose) Panels.find(panel, "import.told")).getText();
    }

    private Collection<String> names() {
        return desk.snapshot().ofKind(ThingKind.INSTRUMENT).stream()
                .map(Entry::name)
                .toList();
    }

    private List<String> column(String table, int column) {
        JTable found = (JTable) Panels.find(panel, table);
        return IntStream.range(0, found.getRowCount())
                .mapToObj(row -> String.valueOf(found.getValueAt(row, column)))
                .toList();
    }
}
