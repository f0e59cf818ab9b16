package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.LibraryBundle.Item;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.mechanics.work.WorkCancelled;

class StreamedFormsTest {
    private static final String BUNDLE = JsonForms.write(Examples.bundle());

    private final List<Item> taken = new ArrayList<>();

    private StreamedForms.Outcome read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8), Progress.NONE);
    }

    private StreamedForms.Outcome read(byte[] bytes, Progress progress) {
        taken.clear();
        return StreamedForms.read(
                Bytes.source("f.json", bytes), thing -> taken.add(new Item(thing.id(), thing.thing())), progress);
    }

    private static List<String> sentences(List<FileFault> faults) {
        return faults.stream().map(FileFault::sentence).toList();
    }

    @Test
    void aBundleIsGivenThingByThing() {
        StreamedForms.Outcome outcome = read(BUNDLE);
        assertThat(sentences(outcome.faults())).isEmpty();
        assertThat(outcome.remarks()).isEmpty();
        assertThat(taken).isEqualTo(Examples.bundle().items());
    }

    @Test
    void aSingleThingIsGivenToo() {
        assertThat(read(JsonForms.write(Examples.DESIGN_ID, Examples.design())).faults())
                .isEmpty();
        assertThat(taken).containsExactly(new Item(Examples.DESIGN_ID, Examples.design()));
    }

    @Test
    void whatIsWrittenThingByThingIsTheTextWrittenAtOnce() throws IOException {
        StringBuilder text = new StringBuilder();
        JsonForms.write(Examples.bundle(), text);
        assertThat(text.toString()).isEqualTo(BUNDLE);
        StringBuilder none = new StringBuilder();
        JsonForms.write(new LibraryBundle(List.of()), none);
        assertThat(none.toString()).isEqualTo(JsonForms.write(new LibraryBundle(List.of())));
    }

    @Test
    void faultsStandWhereTheyDoWhenTheTextIsReadAtOnce() {
        List<String> spoilt = List.of(
                BUNDLE.replace("\"drive\": \"powered\"", "\"drive\": \"pwered\""),
                BUNDLE.replace("\"lengthMm\": 25", "\"lengthMm\": \"long\""),
                BUNDLE.replace("taperwright/library", "taperwright/libary"),
                BUNDLE.replaceFirst("\"version\": 1", "\"version\": 9"),
                BUNDLE.replace("\"things\"", "\"items\""),
                BUNDLE.replaceFirst("\"id\": \"example-motor\"", "\"id\": \"example-design\""),
                "[]",
                "{",
                "",
                "{} {}",
                BUNDLE + "x",
                BUNDLE.substring(0, BUNDLE.length() - 100));
        for (String text : spoilt) {
            List<FileFault> atOnce = ((ReadResult.Refused) JsonForms.read(text, "f.json")).faults();
            List<FileFault> streamed = read(text).faults();
            assertThat(streamed).as(text).isNotEmpty();
            // the last is malformed beyond its end, where only the place is the same
            assertThat(streamed.get(0).line()).as(text).isEqualTo(atOnce.get(0).line());
        }
    }

    @Test
    void aThingThatDoesNotFitIsPlaced() {
        assertThat(sentences(read(BUNDLE.replaceFirst("\"id\": \"example-motor\"", "\"id\": \"example-design\""))
                        .faults()))
                .first()
                .satisfies(sentence -> assertThat(sentence)
                        .endsWith("id: found \"example-design\", which another design bears;"
                                + " expected an identifier of its own"));
        LibraryBundle alone = new LibraryBundle(List.of(
                new Item(Examples.COMPARISON_ID, Examples.comparison()),
                new Item(Examples.MOTOR_ID, Examples.motor())));
        assertThat(sentences(read(JsonForms.write(alone)).remarks()))
                .first()
                .satisfies(sentence -> assertThat(sentence)
                        .startsWith("f.json:11:9: designs[0]: refers to \"example-design\", which is not in the file"));
    }

    @Test
    void aHugeStringOrTooDeepANestingIsRefused() {
        assertThat(sentences(read("{\"things\": [{\"note\": \"" + "x".repeat(200_000) + "\"}]}")
                        .faults()))
                .singleElement()
                .satisfies(sentence ->
                        assertThat(sentence).contains("holds a name, string or number of excessive length"));
        assertThat(sentences(read("{\"things\": [" + "[".repeat(5000)).faults()))
                .singleElement()
                .satisfies(sentence -> assertThat(sentence).contains("goes deeper than 32 levels"));
        assertThat(sentences(read("{\"things\": [[" + "\"y\",".repeat(2_000_000) + "1]]}")
                        .faults()))
                .singleElement()
                .satisfies(sentence ->
                        assertThat(sentence).contains("f.json:1:").contains("holds more than 250000 values"));
    }

    @Test
    void bytesThatAreNoUtf8AreRefusedByTheirNumber() {
        byte[] bytes = BUNDLE.getBytes(StandardCharsets.UTF_8);
        bytes[30] = (byte) 0xFF;
        assertThat(sentences(read(bytes, Progress.NONE).faults()))
                .containsExactly(
                        "f.json:1:1: file: is not UTF-8 text, first at byte 31; expected a JSON form in UTF-8");
    }

    @Test
    void aFileThatIsNotThereSaysSo() {
        StreamedForms.Outcome outcome =
                StreamedForms.read(TextSource.of(Path.of("no-such-file.json")), thing -> {}, Progress.NONE);
        assertThat(sentences(outcome.faults()))
                .containsExactly("no-such-file.json:1:1: file: does not exist; expected a file with a JSON form");
    }

    @Test
    void readingStopsWhenItIsNoLongerWanted() {
        Progress unwanted = new Progress() {
            @Override
            public void at(double fraction, String what) {
                throw new AssertionError("it went on to " + fraction);
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThatThrownBy(() -> read(BUNDLE.getBytes(StandardCharsets.UTF_8), unwanted))
                .isInstanceOf(WorkCancelled.class);
        assertThat(taken).isEmpty();
    }

    @Test
    void identifiersDoNotNeedToComeBeforeWhatRefersToThem() {
        List<Item> items = new ArrayList<>(Examples.bundle().items());
        Collections.reverse(items);
        StreamedForms.Outcome outcome = read(JsonForms.write(new LibraryBundle(items)));
        assertThat(outcome.faults()).isEmpty();
        assertThat(outcome.remarks()).isEmpty();
        assertThat(taken).extracting(Item::id).contains(new ThingId("example-design"));
    }
}
