package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.Access;
import org.taperwright.library.store.BackupPolicy;
import org.taperwright.library.store.Backups;
import org.taperwright.library.store.Clash;
import org.taperwright.library.store.ConnectionTest;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Draft;
import org.taperwright.library.store.LibraryCheck;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.ServerSettings;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/** The dialogs about where a library lies and who changed it: connection, conflict, restoring. */
class LibraryDialogsTest {
    private static final ThingId ID = new ThingId("design");

    /** Runs everything at once. */
    private static final class AtOnce implements Background {
        @Override
        public <T> void run(Supplier<T> work, Consumer<T> deliver) {
            deliver.accept(work.get());
        }
    }

    @Test
    void a_test_says_which_setting_is_wrong_and_what_was_reached() {
        Shots.theme(false);
        ConnectionPanel panel = connection((settings, password) -> settings.port() == 5432
                ? new ConnectionTest.Passed("PostgreSQL 15.4", true, Access.READER, 12)
                : new ConnectionTest.Failed(Fault.impossible("port", "nothing answers at 1", "expected the port")));

        press(panel, "connection.test");
        assertThat(said(panel)).isEqualTo("Connected to PostgreSQL 15.4 as reader. The library there holds 12 things.");

        type(panel, "connection.port", "1");
        press(panel, "connection.test");
        assertThat(said(panel)).isEqualTo("port: nothing answers at 1; expected the port.");

        type(panel, "connection.port", "many");
        press(panel, "connection.test");
        assertThat(said(panel)).startsWith("port: found 0");
    }

    @Test
    void a_conflict_shows_both_versions_of_each_field_that_differs() {
        Shots.theme(false);
        ConflictPanel panel = Shots.onEventThread(LibraryDialogsTest::conflict);
        JTable fields = (JTable) find(panel, "conflict.fields");

        assertThat(List.of(fields.getValueAt(0, 1), fields.getValueAt(0, 2), fields.getValueAt(0, 3)))
                .containsExactly("note", "mine", "hers");
        assertThat(((Prose) find(panel, "conflict.told")).getText()).contains("Ada made “Note hers”");
    }

    @Test
    void a_library_that_does_not_open_is_restored_from_its_backup_and_the_damaged_file_is_kept(@TempDir Path folder)
            throws IOException {
        Shots.theme(false);
        RefusalPanel panel = refusal(folder);
        Path library = folder.resolve("library.sqlite");

        JTable found = (JTable) find(panel, "refusal.findings");
        assertThat(String.valueOf(found.getValueAt(0, 1))).containsIgnoringCase("restore a backup");
        press(panel, "refusal.restore");

        assertThat(((Prose) find(panel, "refusal.told")).getText())
                .startsWith("Restored. The file that stood there is now");
        assertThat(LibraryCheck.of(library, JsonForms.forStore()).sound()).isTrue();
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .anyMatch(name -> name.startsWith("library.sqlite.set-aside-"));
        }
    }

    @ParameterizedTest
    @CsvSource({"false, 1", "true, 2"})
    void the_dialogs_draw_in_the_theme(boolean dark, double scale, @TempDir Path folder) throws IOException {
        Shots.theme(dark);
        String look = (dark ? "dark" : "light") + "-" + (int) scale;
        ConnectionPanel connection = connection((settings, password) -> new ConnectionTest.Failed(
                Fault.impossible("host", "found \"lab\"", "expected a server that is known by it")));
        press(connection, "connection.test");
        Shots.take("connection-" + look, connection, 520, 400, scale);
        Shots.take("conflict-" + look, Shots.onEventThread(LibraryDialogsTest::conflict), 700, 300, scale);
        assertThat(Shots.take("refusal-" + look, refusal(folder), 760, 420, scale)
                        .getWidth())
                .isEqualTo((int) (760 * scale));
    }

    private static RefusalPanel refusal(Path folder) throws IOException {
        Path library = folder.resolve("library.sqlite");
        OpenResult opened = LibraryStore.open(library, JsonForms.forStore());
        try (LibraryStore store = ((OpenResult.Opened) opened).store()) {
            Draft draft = new Draft(ID, ThingKind.DESIGN, Optional.of(design("first")), 0);
            store.append("Add", "Ada", Instant.EPOCH, List.of(draft));
        }
        Backups backups = new Backups(library, folder.resolve("backups"), JsonForms.forStore(), BackupPolicy.USUAL);
        backups.take(Instant.parse("2026-03-01T10:00:00Z"));
        Files.writeString(library, "no library any more");
        return Shots.onEventThread(() -> new RefusalPanel(
                "The library does not open. It is no library.",
                () -> LibraryCheck.of(library, JsonForms.forStore()),
                backups,
                new AtOnce(),
                done -> {}));
    }

    private static ConnectionPanel connection(
            java.util.function.BiFunction<ServerSettings, org.taperwright.library.store.Password, ConnectionTest>
                    tester) {
        ServerSettings settings =
                ServerSettings.of(Map.of("host", "lab", "database", "taperwright", "user", "ada", "port", "5432"));
        return Shots.onEventThread(() -> new ConnectionPanel(settings, true, tester, new AtOnce()));
    }

    private static ConflictPanel conflict() {
        Revision hers = new Revision(
                8, ID, ThingKind.DESIGN, new Content.Present(design("hers")), "Note hers", Instant.EPOCH, "Ada");
        Draft mine = new Draft(ID, ThingKind.DESIGN, Optional.of(design("mine")), 7);
        return new ConflictPanel("Note mine", List.of(new Clash(mine, hers)));
    }

    private static Design design(String note) {
        return Designs.with(Designs.standard(25, 0.04)).note(note).design();
    }

    private static String said(Container panel) {
        return ((Prose) find(panel, "connection.told")).getText();
    }

    private static void press(Container panel, String button) {
        Shots.onEventThread(() -> {
            ((AbstractButton) find(panel, button)).doClick();
            return Optional.empty();
        });
    }

    private static void type(Container panel, String field, String text) {
        Shots.onEventThread(() -> {
            ((JTextField) find(panel, field)).setText(text);
            return Optional.empty();
        });
    }

    private static Component find(Container in, String name) {
        return search(in, name).orElseThrow(() -> new AssertionError("no component " + name));
    }

    private static Optional<Component> search(Container in, String name) {
        for (Component child : in.getComponents()) {
            if (name.equals(child.getName())) {
                return Optional.of(child);
            }
            Optional<Component> found = child instanceof Container inner ? search(inner, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
