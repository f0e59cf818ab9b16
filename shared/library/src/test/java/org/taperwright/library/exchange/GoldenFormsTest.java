package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.LibraryBundle.Item;
import org.taperwright.library.store.ThingKind;

class GoldenFormsTest {
    @TestFactory
    List<DynamicTest> eachFormIsWrittenAsItsGoldenFile() {
        return Examples.all().entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(
                        entry.getKey().word(),
                        () -> PublishedFiles.holds(
                                golden(entry.getKey()),
                                JsonForms.write(
                                        entry.getValue().id(), entry.getValue().thing()))))
                .toList();
    }

    @TestFactory
    List<DynamicTest> eachGoldenFileReadsAsItsThing() {
        return Examples.all().entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey().word(), () -> {
                    ReadResult result = JsonForms.read(Files.readString(golden(entry.getKey())), "golden");
                    assertThat(result).isInstanceOfSatisfying(ReadResult.Read.class, read -> {
                        assertThat(read.remarks()).isEmpty();
                        assertThat(read.bundle().items()).containsExactly(entry.getValue());
                    });
                }))
                .toList();
    }

    @Test
    void aBundleIsWrittenAsItsGoldenFileAndReadsBack() throws IOException {
        Path file = PublishedFiles.GOLDEN.resolve("library.json");
        PublishedFiles.holds(file, JsonForms.write(Examples.bundle()));
        assertThat(JsonForms.read(Files.readString(file), "library.json"))
                .isInstanceOfSatisfying(ReadResult.Read.class, read -> {
                    assertThat(read.remarks()).isEmpty();
                    assertThat(read.bundle()).isEqualTo(Examples.bundle());
                });
    }

    /** The first version's file is as that version wrote it; nothing writes it any more. */
    @Test
    void anInstrumentOfTheFirstVersionIsStillRead() throws IOException {
        String old = Files.readString(PublishedFiles.GOLDEN.resolve("instrument.1.json"));
        assertThat(old).contains("\"version\": 1,");
        assertThat(JsonForms.read(old, "golden"))
                .isInstanceOfSatisfying(
                        ReadResult.Read.class,
                        read -> assertThat(read.bundle().items())
                                .containsExactly(new Item(Examples.INSTRUMENT_ID, Examples.instrumentOfOld())));
    }

    @Test
    void aSequenceOfTheFirstVersionIsStillRead() throws IOException {
        String old = Files.readString(PublishedFiles.GOLDEN.resolve("sequence.1.json"));
        assertThat(old).contains("\"version\": 1,");
        assertThat(JsonForms.read(old, "golden"))
                .isInstanceOfSatisfying(
                        ReadResult.Read.class,
                        read -> assertThat(read.bundle().items())
                                .containsExactly(new Item(Examples.SEQUENCE_ID, Examples.sequenceOfOld())));
    }

    @Test
    void aComparisonOfTheFirstVersionIsStillRead() throws IOException {
        String old = Files.readString(PublishedFiles.GOLDEN.resolve("comparison.1.json"));
        assertThat(old).contains("\"version\": 1,");
        assertThat(JsonForms.read(old, "golden"))
                .isInstanceOfSatisfying(
                        ReadResult.Read.class,
                        read -> assertThat(read.bundle().items())
                                .containsExactly(new Item(Examples.COMPARISON_ID, Examples.comparisonOfOld())));
    }

    @Test
    void aComparisonOfTheSecondVersionIsStillRead() throws IOException {
        String old = Files.readString(PublishedFiles.GOLDEN.resolve("comparison.2.json"));
        assertThat(old).contains("\"version\": 2,");
        assertThat(JsonForms.read(old, "golden"))
                .isInstanceOfSatisfying(
                        ReadResult.Read.class,
                        read -> assertThat(read.bundle().items())
                                .containsExactly(
                                        new Item(Examples.COMPARISON_ID, Examples.comparisonOfTheSecondVersion())));
    }

    @Test
    void publishedSchemasAreThoseTheFormsDescribe() throws IOException {
        for (Map.Entry<String, String> schema : PublishedSchema.all().entrySet()) {
            PublishedFiles.holds(PublishedFiles.SCHEMAS.resolve(schema.getKey()), schema.getValue());
        }
    }

    private static Path golden(ThingKind kind) {
        return PublishedFiles.GOLDEN.resolve(kind.word() + ".json");
    }
}
