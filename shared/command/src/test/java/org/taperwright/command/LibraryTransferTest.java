package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Things in and out of a library's file. */
class LibraryTransferTest {
    private static final String TABLE = "id,name,size,taper,length,stock\n"
            + "a-25,Avocet 25/.04,25,.04,25,3\n"
            + "a-30,Avocet 30/.04,30,.04,25,none\n";

    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private Ran run(String verb, Object... words) {
        String[] all = new String[words.length + 2];
        all[0] = "library";
        all[1] = verb;
        for (int i = 0; i < words.length; i++) {
            all[i + 2] = words[i].toString();
        }
        return Ran.with(all);
    }

    private Path library() {
        return folder.resolve("my.db");
    }

    @Test
    void aRowWithAFaultStopsTheImportUnlessToldWhereItGoes() throws IOException {
        Path table = file("t.csv", TABLE);
        Ran ran = run("import", table, "--into", library());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("t.csv:3:30: Stock: found \"none\"; expected a number", "nothing was stored");
        Path rejects = folder.resolve("rejects.csv");
        Ran again = run("import", table, "--into", library(), "--rejects", rejects);
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.out()).contains("1 new, 0 the same, 0 changed, 1 row with faults", "Stored as one edit");
        Path mended = file("mended.csv", Files.readString(rejects).replace("none", "4"));
        Ran last = run("import", mended, "--into", library());
        assertThat(last.err()).isEmpty();
        assertThat(last.code()).isZero();
        assertThat(run("import", file("t2.csv", TABLE.replace("none", "4")), "--into", library())
                        .out())
                .contains("0 new, 2 the same, 0 changed");
    }

    @Test
    void theFileOfRejectsMayBeTheOneThatWasMended() throws IOException {
        Path table = file("t.csv", TABLE.replace("25,3", "25,few"));
        Ran ran = run("import", table, "--into", library(), "--rejects", table);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).contains("0 new, 0 the same, 0 changed, 2 rows with faults");
        Files.writeString(table, Files.readString(table).replace("25,few", "25,3"));
        Ran again = run("import", table, "--into", library(), "--rejects", table);
        assertThat(again.out()).contains("1 new", "1 row with faults", "Stored as one edit");
        assertThat(Files.readString(table)).contains("a-30").doesNotContain("a-25");
    }

    @Test
    void whereRejectsCannotGoNothingIsStored() throws IOException {
        Path table = file("t.csv", TABLE);
        Ran folderThere = run("import", table, "--into", library(), "--rejects", folder);
        assertThat(folderThere.code()).isEqualTo(2);
        assertThat(folderThere.err()).contains("--rejects: " + folder + " is a folder; expected a file");
        Ran nowhere = run("import", table, "--into", library(), "--rejects", folder.resolve("none/r.csv"));
        assertThat(nowhere.code()).isEqualTo(2);
        assertThat(nowhere.err()).contains("cannot be written; expected a file in a folder that is there");
        assertThat(library()).doesNotExist();
    }

    @Test
    void aTableOfTabsIsATableAndWhatIsNoneHasNoColumns() throws IOException {
        Path table = file("t.tsv", "size\ttaper\tname\n25\t.04\tAvocet\n");
        assertThat(run("import", table, "--into", library()).out()).contains("1 new");
        assertThat(run("import", table, "--into", library()).out())
                .contains("1 the same", "Nothing came in; the library is as it was.");
        assertThat(run("check", library()).out()).contains("1 revision,");
        Ran ran = run("import", file("t.json", "{}"), "--into", library(), "--columns");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains(
                        "t.json: is read as JSON, for which there is no --columns; expected a table, whose name ends in"
                                + " .csv, .tsv, .txt");
    }

    @Test
    void aFileThatIsRefusedMakesNoLibrary() throws IOException {
        assertThat(run("import", file("t.json", "{}"), "--into", library()).code())
                .isEqualTo(2);
        assertThat(run("import", file("t.csv", TABLE), "--into", library()).err())
                .contains("1 row with faults; nothing was stored");
        assertThat(library()).doesNotExist();
    }

    @Test
    void whatTheLibraryHasOtherwiseStopsTheImportUntilSomeoneChooses() throws IOException {
        String good = TABLE.replace("none", "4");
        run("import", file("t.csv", good), "--into", library());
        Path changed = file("changed.csv", good.replace(",3\n", ",9\n"));
        Ran ran = run("import", changed, "--into", library());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).contains("instrument a-25 (Avocet 25/.04): supply.stock: 3 \u2192 9", "1 changed");
        assertThat(ran.err()).contains("expected --changed ours, theirs or both");
        assertThat(run("import", changed, "--into", library(), "--changed", "theirs")
                        .code())
                .isZero();
        assertThat(run("import", changed, "--into", library()).out()).contains("2 the same");
    }

    @Test
    void aPlanStoresNothingAndMakesNoLibrary() throws IOException {
        Ran ran = run("import", file("t.csv", TABLE.replace("none", "4")), "--into", library(), "--plan");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("2 new");
        assertThat(library()).doesNotExist();
    }

    @Test
    void columnsArePrintedAndTakenAsAMapping() throws IOException {
        Path table = file("t.csv", "Größe;Konus\n25;0,04\n");
        Ran ran = run("import", table, "--into", library(), "--columns");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("headings: name no field of instruments");
        Path map = file(
                "map.json",
                "{\"form\": \"taperwright/columns\", \"version\": 1, \"mappings\": [{\"kind\": \"instrument\", \"columns\": ["
                        + "{\"heading\": \"Größe\", \"field\": \"Size\"}, {\"heading\": \"Konus\", \"field\": \"Taper\"}]}]}");
        assertThat(run("import", table, "--into", library(), "--map", map).out())
                .contains("1 new");
        Ran other = run("import", file("o.csv", "size,taper\n25,.04\n"), "--into", library(), "--map", map);
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err()).contains("no mapping in it has the headings of");
    }

    @Test
    void anotherEncodingIsReadWhenNamed() throws IOException {
        Path table = Files.write(
                folder.resolve("l.csv"), "name,size,taper\nHöhe,25,.04\n".getBytes(StandardCharsets.ISO_8859_1));
        Ran ran = run("import", table, "--into", library());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("first byte 18; expected UTF-8");
        assertThat(run("import", table, "--into", library(), "--encoding", "ISO-8859-1")
                        .code())
                .isZero();
        assertThat(run("import", table, "--into", library(), "--encoding", "runes")
                        .err())
                .contains("--encoding: \"runes\" is no encoding");
    }

    @Test
    void whatIsExportedComesIntoAnotherLibraryWhole() throws IOException {
        run("import", file("t.csv", TABLE.replace("none", "4")), "--into", library());
        Path all = folder.resolve("all.json");
        assertThat(run("export", "--from", library(), "--to", all).out()).contains("Wrote 2 things");
        Path other = folder.resolve("other.db");
        assertThat(run("import", all, "--into", other).out()).contains("2 new");
        assertThat(run("import", all, "--into", library()).out()).contains("2 the same");
        Path one = folder.resolve("one.json");
        assertThat(run("export", "--from", other, "--to", one, "avocet 25/.04").out())
                .contains("Wrote 1 thing to");
        Path table = folder.resolve("out.csv");
        assertThat(run("export", "--from", other, "--to", table).out()).contains("Wrote 2 things");
        assertThat(run("import", table, "--into", other).out()).contains("2 the same");
    }

    @Test
    void whatCannotBeExportedIsBadInput() throws IOException {
        run("import", file("t.csv", TABLE.replace("none", "4")), "--into", library());
        assertThat(run("export", "--from", library(), "--to", folder.resolve("x.txt"))
                        .err())
                .contains("neither .json nor .csv");
        assertThat(run("export", "--from", library(), "--to", folder.resolve("x.json"), "Nobody")
                        .err())
                .contains("\"Nobody\" names nothing in the library");
        assertThat(run("export", "--from", folder.resolve("none.db"), "--to", folder.resolve("x.json"))
                        .err())
                .contains("none.db: is no file");
        assertThat(folder.resolve("x.json")).doesNotExist();
        assertThat(folder.resolve("none.db")).doesNotExist();
    }
}
