package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.store.Room;

/**
 * Files beyond what the memory has room for, brought into a library by a program with 64 MB: what fits comes in, what does
 * not is refused before anything is stored, and never does the memory end.
 */
class VastImportTest {
    private static final String[] SMALL = {"-Xmx64m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"};
    /** What such a program has room for; a collector keeps a part of the memory for itself. */
    private static final int FITS = 12_000;

    private static final int TOO_MANY = 14_000;

    @TempDir
    private Path folder;

    /** A program that has ended. */
    private record Ended(int code, String said) {}

    private Ended imported(Path file, Path library) throws IOException, InterruptedException {
        List<String> words = Stream.of(
                        Stream.of(Path.of(System.getProperty("java.home"), "bin", "java")
                                .toString()),
                        Arrays.stream(SMALL),
                        Stream.of("-cp", System.getProperty("java.class.path"), Main.class.getName()),
                        Stream.of("library", "import", file.toString(), "--into", library.toString()))
                .flatMap(each -> each)
                .toList();
        Process program = new ProcessBuilder(words).redirectErrorStream(true).start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(program.waitFor(), said);
    }

    private Path written(String name, String head, IntFunction<String> part, int parts, String tail)
            throws IOException {
        Path file = folder.resolve(name);
        try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file))) {
            out.print(head);
            for (int i = 0; i < parts; i++) {
                out.print(part.apply(i));
            }
            out.print(tail);
        }
        return file;
    }

    private Path table(int rows) throws IOException {
        return written(
                "table.csv",
                "id,name,maker,size,taper,length,note\n",
                i -> "t-" + i + ",Avocet " + i + ",Marshlight,25,.04,25,number " + i + "\n",
                rows,
                "");
    }

    private Path bundle(int things) throws IOException {
        Ran one = Ran.with("library", "export", "--from", table(1, "one.db"), "--to", folder.resolve("one.json") + "");
        assertThat(one.code()).as(one.err()).isZero();
        String thing = Files.readString(folder.resolve("one.json"));
        String item = thing.substring(thing.indexOf('[') + 1, thing.lastIndexOf(']'));
        return written(
                "bundle.json",
                "{\"form\": \"taperwright/library\", \"version\": 1, \"things\": [",
                i -> (i == 0 ? "" : ",") + item.replace("\"t-0\"", "\"t-" + i + '"'),
                things,
                "]}");
    }

    private String table(int rows, String library) throws IOException {
        Path into = folder.resolve(library);
        Ran ran = Ran.with("library", "import", table(rows).toString(), "--into", into.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        return into.toString();
    }

    private void holds(Path library, int things) {
        Ran check = Ran.with("library", "check", library.toString());
        assertThat(check.out()).contains("Sound: " + Counted.of(things, "thing"));
    }

    @Test
    void aTableThatFitsComesInWhole() throws Exception {
        Path library = folder.resolve("library.db");
        Ended ended = imported(table(FITS), library);
        assertThat(ended.said()).contains(FITS + " new");
        assertThat(ended.code()).isZero();
        holds(library, FITS);
        Ended more = imported(written("more.csv", "size,taper,name\n", i -> "30,.04,n" + i + "\n", 1500, ""), library);
        assertThat(more.code()).as(more.said()).isEqualTo(2);
        assertThat(more.said()).contains("has room beside its 12,000; expected at most 1", "split the file");
        holds(library, FITS);
    }

    @Test
    void aBundleThatFitsComesInWhole() throws Exception {
        Path library = folder.resolve("library.db");
        Path file = bundle(FITS);
        assertThat(Files.size(file)).as("the file, which has room too").isLessThan(new Room(60 << 20).bytes());
        Ended ended = imported(file, library);
        assertThat(ended.code()).as(ended.said()).isZero();
        holds(library, FITS);
    }

    @Test
    void aTableOfTooManyRowsIsRefusedAndNothingIsStored() throws Exception {
        Path library = folder.resolve("library.db");
        Ended ended = imported(table(TOO_MANY), library);
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.said())
                .contains("table.csv:1:1: file: holds more than the 1", "things for which the library has room")
                .doesNotContain("OutOfMemory")
                .doesNotContain("\tat ");
        assertThat(library).doesNotExist();
    }

    @Test
    void aBundleOfTooManyThingsIsRefusedAndNothingIsStored() throws Exception {
        Path library = folder.resolve("library.db");
        Ended ended = imported(bundle(TOO_MANY), library);
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.said()).contains("split").doesNotContain("OutOfMemory").doesNotContain("\tat ");
        assertThat(library).doesNotExist();
    }

    @Test
    void aFileOfAGigabyteIsRefusedForItsSize() throws Exception {
        for (String name : List.of("vast.csv", "vast.json")) {
            Path file = folder.resolve(name);
            try (RandomAccessFile hollow = new RandomAccessFile(file.toFile(), "rw")) {
                hollow.write(("id,size,taper\n" + "a,25,.04\n".repeat(100_000)).getBytes(StandardCharsets.UTF_8));
                hollow.setLength(1_000_000_000);
            }
            Path library = folder.resolve(name + ".db");
            Ended ended = imported(file, library);
            assertThat(ended.code()).as(ended.said()).isEqualTo(2);
            assertThat(ended.said())
                    .contains("is of 1,000 MB; expected at most 16 MB, for which the memory has room: split it");
            assertThat(library).doesNotExist();
        }
    }

    @Test
    void aLibraryBeyondTheMemoryIsNotOpened() throws Exception {
        Path library = Path.of(table(1, "large.db"));
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + library);
                Statement statement = connection.createStatement()) {
            statement.execute("create temporary table more as with recursive n (i) as"
                    + " (select 2 union all select i + 1 from n where i < 30000) select i from n");
            statement.execute("insert into revision (revision, edit, thing, kind, form, name, search_text)"
                    + " select i, 1, 'x-' || i, kind, form, name, search_text from more, revision where revision = 1");
            statement.execute("insert into head select 'x-' || i, i from more");
        }
        Ended ended = imported(table(1), library);
        assertThat(ended.code()).as(ended.said()).isEqualTo(2);
        assertThat(ended.said()).contains("holds 30,000 things; expected at most", "give the program more");
    }
}
