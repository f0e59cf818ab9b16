package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.Examples;
import org.taperwright.library.TestLibrary;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.mechanics.design.ThingId;

class LibraryCheckTest {
    private static final int THINGS = Examples.bundle().items().size();
    /** The revision that renames the design. */
    private static final int LAST = THINGS + 1;

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void fill() {
        file = folder.resolve("l.db");
        try (LibraryStore store = TestLibrary.open(file)) {
            List<Draft> drafts = Examples.bundle().items().stream()
                    .map(item -> new Draft(item.id(), ThingKind.of(item.thing()), Optional.of(item.thing()), 0))
                    .toList();
            store.append("Fill", "someone", Instant.EPOCH, drafts);
            put(store, "Rename", Examples.plainDesign("Renamed"), 1);
        }
    }

    private static void put(LibraryStore store, String edit, Record thing, long basedOn) {
        store.append(
                edit,
                "someone",
                Instant.EPOCH,
                List.of(new Draft(Examples.DESIGN_ID, ThingKind.of(thing), Optional.of(thing), basedOn)));
    }

    private CheckReport check() {
        return LibraryCheck.of(file, JsonForms.forStore());
    }

    /** Spoils the file as no program of ours could, the guards taken away first. */
    private void spoil(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("drop trigger if exists revision_stays");
            statement.execute("drop trigger if exists revision_is_kept");
            statement.execute("drop trigger if exists form_is_json");
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    private void finds(String sentence) {
        assertThat(check().findings())
                .allSatisfy(finding -> assertThat(finding.mend()).endsWith("."))
                .extracting(finding -> finding.fault().sentence())
                .contains(sentence);
    }

    @Test
    void aWholeLibraryIsSound() throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertThat(check()).isEqualTo(new CheckReport(THINGS, LAST, List.of()));
        assertThat(Files.readAllBytes(file)).as("left as it was").isEqualTo(before);
    }

    @Test
    void aLibraryInUseIsSoundToo() {
        try (LibraryStore store = TestLibrary.open(file)) {
            put(store, "Rename again", Examples.plainDesign("Again"), LAST);
            assertThat(check()).isEqualTo(new CheckReport(THINGS, LAST + 1, List.of()));
        }
    }

    @Test
    void aFormThatCannotBeReadIsGraveInThePresentAndOddInThePast() throws SQLException {
        spoil("update revision set form = '{}' where revision in (1, 2)");
        finds("revision 2 of example-instrument: cannot be read: form: is missing; expected"
                + " \"taperwright/instrument\"; expected an instrument");
        assertThat(check().findings()).extracting(Finding::grave).containsExactly(false, true);
        assertThat(check().sound()).isFalse();
    }

    @Test
    void columnsThatSayOtherThanTheFormAreFound() throws SQLException {
        spoil("update revision set size = 26 where revision = " + LAST);
        finds("revision " + LAST + " of example-design: is searched by other words or numbers than it holds;"
                + " expected the columns to repeat the form");
    }

    @Test
    void aGapInThePastIsFound() throws SQLException {
        spoil("delete from revision where revision = 1");
        finds("revision 2 of example-instrument: follows revision 0; expected no revision to be missing");
    }

    @Test
    void aThingThatStandsAtAnOldRevisionIsFound() throws SQLException {
        spoil("update head set revision = 1 where thing = 'example-design'");
        finds("example-design: stands at revision 1; expected its last revision, " + LAST);
    }

    @Test
    void aThingThatStandsNowhereIsFound() throws SQLException {
        spoil("delete from head where thing = 'example-canal'");
        finds("example-canal: stands nowhere; expected its last revision, 4");
    }

    @Test
    void referencesToThingsTakenOutOnlyDeserveALook() {
        try (LibraryStore store = TestLibrary.open(file)) {
            store.append(
                    "Take the canal out",
                    "someone",
                    Instant.EPOCH,
                    List.of(new Draft(Examples.CANAL_ID, ThingKind.CANAL, Optional.empty(), 4)));
        }
        finds("sequence example-sequence, canal: refers to \"example-canal\", which is not in the library;"
                + " expected a canal");
        assertThat(check().sound()).isTrue();
    }

    @Test
    void referencesToAThingOfAnotherKindAreGrave() {
        try (LibraryStore store = TestLibrary.open(file)) {
            SavedComparison odd = new SavedComparison("Odd", List.of(Examples.MOTOR_ID), Examples.MOTOR_ID, "");
            store.append(
                    "Compare a motor",
                    "someone",
                    Instant.EPOCH,
                    List.of(new Draft(new ThingId("odd"), ThingKind.COMPARISON, Optional.of(odd), 0)));
        }
        finds("comparison odd, datum: refers to \"example-motor\", which is a motor; expected a design");
        assertThat(check().sound()).isFalse();
    }

    @Test
    void aDamagedFileIsFoundAndLeftAsItWas() throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 4096; i < bytes.length; i += 4096) {
            java.util.Arrays.fill(bytes, i, i + 40, (byte) 0x5a);
        }
        Files.write(file, bytes);
        assertThat(check().sound()).isFalse();
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }

    @Test
    void whatIsNoLibraryIsSaidToBeNone() throws Exception {
        Files.writeString(file, "not a library");
        finds(file + ": is no library; expected a file made by Taperwright");
        Files.write(file, new byte[0]);
        finds(file + ": is empty; expected a library");
        Files.delete(file);
        finds(file + ": is no file; expected a library's file");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("create table recipes (name text)");
        }
        finds(file + ": is a database, but no library; expected a file made by Taperwright");
    }

    @Test
    void aNewerLibraryIsNotJudged() throws SQLException {
        spoil("insert into migration select installed_rank + 1, '99', 'from the future', type, 'V99__x.sql', checksum,"
                + " installed_by, installed_on, execution_time, success from migration"
                + " order by installed_rank desc limit 1");
        finds(file + ": was written by a newer Taperwright; expected tables that this program knows");
    }
}
