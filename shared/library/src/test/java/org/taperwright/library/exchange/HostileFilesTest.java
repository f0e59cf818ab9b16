package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.json.JsonText;
import org.taperwright.library.exchange.json.Limits;

/** Files that are no forms, or that would exhaust a careless reader. */
class HostileFilesTest {
    private static final String DESIGN = JsonForms.write(Examples.DESIGN_ID, Examples.plainDesign("Plain"));

    @TempDir
    private Path folder;

    private static String only(ReadResult result) {
        assertThat(result).isInstanceOf(ReadResult.Refused.class);
        List<FileFault> faults = ((ReadResult.Refused) result).faults();
        assertThat(faults).hasSize(1);
        return faults.get(0).sentence();
    }

    private static String only(String text) {
        return only(JsonForms.read(text, "f"));
    }

    @Test
    void anEmptyFileSaysSo() {
        String sentence = "f:1:1: file: is empty; expected a JSON form beginning with {";
        assertThat(only("")).isEqualTo(sentence);
        assertThat(only(" \n\t")).isEqualTo(sentence);
        assertThat(only("\uFEFF")).isEqualTo(sentence);
    }

    @Test
    void anythingButAnObjectIsRefused() {
        assertThat(only("[]")).isEqualTo("f:1:1: file: found a list […]; expected an object {…}");
        assertThat(only(" 7 ")).isEqualTo("f:1:2: file: found 7; expected an object {…}");
    }

    @Test
    void aFileThatEndsInTheMiddleSaysSo() {
        assertThat(only(DESIGN.substring(0, DESIGN.length() - 2)))
                .endsWith("file: ends in the middle; expected the closing }, ] or \" of what was opened");
        assertThat(only("{\"form")).contains("ends in the middle");
    }

    @Test
    void textAfterTheFormIsRefused() {
        assertThat(only(DESIGN + "{}"))
                .endsWith("file: goes on after the form has ended; expected nothing after the closing }");
    }

    @Test
    void nestingWithoutEndIsRefused() {
        assertThat(only("{\"a\":".repeat(50_000))).contains("goes deeper than 32 levels; expected a flatter form");
        assertThat(only("[".repeat(50_000))).contains("goes deeper than 32 levels");
    }

    @Test
    void aNumberOrTextWithoutEndIsRefused() {
        assertThat(only("{\"a\": " + "9".repeat(200_000) + "}"))
                .contains("holds a name, string or number of excessive length; expected a shorter one");
        assertThat(only("{\"a\": \"" + "x".repeat(200_000) + "\"}")).contains("excessive length");
        assertThat(only("{\"" + "x".repeat(200_000) + "\": 1}")).contains("excessive length");
    }

    @Test
    void tooManyValuesAreRefused() {
        JsonText.Parsed parsed = JsonText.parse("[" + "1,".repeat(100) + "1]", new Limits(1000, 4, 100, 100));
        assertThat(parsed.root()).isEmpty();
        assertThat(parsed.faults().get(0).fault().sentence())
                .isEqualTo("file: holds more than 100 values; expected fewer: split the file");
    }

    @Test
    void tooLongATextIsRefused() {
        JsonText.Parsed parsed = JsonText.parse("[1,2,3]", new Limits(5, 4, 100, 100));
        assertThat(parsed.faults().get(0).fault().sentence()).isEqualTo("file: holds 7 characters; expected at most 5");
    }

    @Test
    void aLongFoundTextIsShortenedInTheMessage() {
        String sentence = only(DESIGN.replace("0.25", '"' + "y".repeat(5000) + '"'));
        assertThat(sentence).contains("found \"" + "y".repeat(40) + "…\"").hasSizeLessThan(200);
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertThat(JsonForms.read("\uFEFF" + DESIGN, "f")).isInstanceOf(ReadResult.Read.class);
    }

    @Test
    void aFileThatIsNotThereSaysSo() {
        Path file = folder.resolve("absent.json");
        assertThat(only(FormFiles.read(file)))
                .isEqualTo(file + ":1:1: file: does not exist; expected a file with a JSON form");
    }

    @Test
    void aFolderIsNoFile() {
        assertThat(only(FormFiles.read(folder)))
                .isEqualTo(folder + ":1:1: file: is a folder; expected a file with a JSON form");
    }

    @Test
    void aFileThatIsNotUtf8SaysSo() throws IOException {
        Path file = folder.resolve("f.json");
        Files.write(file, DESIGN.replace("Plain", "Pläne").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(only(FormFiles.read(file)))
                .isEqualTo(file + ":1:1: file: is not UTF-8 text; expected a JSON form in UTF-8");
    }

    @Test
    void aHugeFileIsRefusedWithoutBeingRead() throws IOException {
        Path file = folder.resolve("huge.json");
        try (var channel = java.nio.channels.FileChannel.open(
                file, java.nio.file.StandardOpenOption.CREATE, java.nio.file.StandardOpenOption.WRITE)) {
            channel.position(1L << 33);
            channel.write(java.nio.ByteBuffer.wrap(new byte[1]));
        }
        assertThat(only(FormFiles.read(file)))
                .isEqualTo(file + ":1:1: file: is larger than 32 MB; expected a smaller one: split it");
    }
}
