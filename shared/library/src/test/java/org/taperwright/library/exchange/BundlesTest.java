package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.LibraryBundle.Item;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

class BundlesTest {
    private static ReadResult read(Item... items) {
        return JsonForms.read(JsonForms.write(new LibraryBundle(List.of(items))), "b.json");
    }

    private static List<String> faults(ReadResult result) {
        assertThat(result).isInstanceOf(ReadResult.Refused.class);
        return ((ReadResult.Refused) result)
                .faults().stream().map(FileFault::sentence).toList();
    }

    private static List<String> remarks(ReadResult result) {
        assertThat(result).isInstanceOf(ReadResult.Read.class);
        return ((ReadResult.Read) result)
                .remarks().stream().map(FileFault::sentence).toList();
    }

    @Test
    void aFaultInABundleNamesTheThingByItsPlace() {
        String text =
                JsonForms.write(Examples.bundle()).replace("\"workingLengthMm\": 18.5", "\"workingLengthMm\": -1");
        assertThat(faults(JsonForms.read(text, "b.json")))
                .singleElement()
                .satisfies(sentence -> assertThat(sentence)
                        .endsWith("things[3].workingLengthMm: found -1; expected a number, mm, from 0 to 200"));
    }

    @Test
    void twoThingsWithOneIdentifierAreRefused() {
        assertThat(faults(read(
                        new Item(Examples.DESIGN_ID, Examples.design()),
                        new Item(Examples.DESIGN_ID, Examples.motor()))))
                .singleElement()
                .satisfies(sentence -> assertThat(sentence)
                        .endsWith("id: found \"example-design\", which another design bears;"
                                + " expected an identifier of its own"));
    }

    @Test
    void aReferenceToAThingOfTheWrongKindIsRefused() {
        SavedComparison comparison = new SavedComparison("N", List.of(Examples.MOTOR_ID), Examples.MOTOR_ID, "");
        assertThat(faults(read(
                        new Item(Examples.MOTOR_ID, Examples.motor()), new Item(Examples.COMPARISON_ID, comparison))))
                .hasSize(2)
                .first()
                .satisfies(sentence -> assertThat(sentence)
                        .endsWith("designs[0]: refers to \"example-motor\", which is a motor; expected a design"));
    }

    @Test
    void aReferenceOutOfTheBundleIsARemark() {
        assertThat(remarks(read(
                        new Item(Examples.MOTOR_ID, Examples.motor()),
                        new Item(Examples.COMPARISON_ID, Examples.comparisonOfOld()))))
                .hasSize(2)
                .last()
                .satisfies(sentence -> assertThat(sentence)
                        .endsWith("datum: refers to \"example-design\", which is not in the file;"
                                + " expected a design of the library or of the same file"));
    }

    @Test
    void aDatumThatIsNotComparedIsARemark() {
        SavedComparison comparison = new SavedComparison("N", List.of(Examples.DESIGN_ID), new ThingId("other"), "");
        String text = JsonForms.write(Examples.COMPARISON_ID, comparison);
        assertThat(remarks(JsonForms.read(text, "c.json")))
                .containsExactly("c.json:9:12: datum: refers to \"other\", which is not compared;"
                        + " expected one of the designs");
    }

    @Test
    void aBundleWithoutThingsOrWithMoreSaysSo() {
        String head = "{\"form\": \"taperwright/library\", \"version\": 1";
        assertThat(faults(JsonForms.read(head + "}", "b")))
                .containsExactly("b:1:1: things: is missing; expected a list of things […]");
        assertThat(faults(JsonForms.read(head + ", \"things\": {}}", "b")))
                .containsExactly("b:1:57: things: found an object {…}; expected a list of things […]");
        assertThat(faults(JsonForms.read(head + ", \"things\": [], \"more\": 1}", "b")))
                .containsExactly("b:1:61: more: is no field here; expected one of form, version, things");
        assertThat(faults(JsonForms.read(head.replace("1", "9") + ", \"things\": []}", "b")))
                .containsExactly("b:1:44: version: found 9, written by a newer program; expected at most 1");
    }

    @Test
    void severalFilesAreReadAsOneBundle() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Item item : Examples.bundle().items()) {
            texts.put(item.id() + ".json", JsonForms.write(item.id(), item.thing()));
        }
        assertThat(JsonForms.readTogether(texts)).isInstanceOfSatisfying(ReadResult.Read.class, read -> {
            assertThat(read.bundle()).isEqualTo(Examples.bundle());
            assertThat(read.remarks()).isEmpty();
        });
        texts.put("spoilt.json", "{");
        assertThat(faults(JsonForms.readTogether(texts)))
                .singleElement()
                .satisfies(sentence -> assertThat(sentence).startsWith("spoilt.json:1:"));
    }

    @Test
    void laterFaultsOfAThingAreFoundInItsFile() {
        String text = JsonForms.write(Examples.INSTRUMENT_ID, Examples.instrument());
        ReadThing thing =
                ((ReadResult.Read) JsonForms.read(text, "i.json")).things().get(0);
        List<String> sentences = new ArrayList<>();
        for (String where : List.of("taper[1].taper", "taper[7]", "shaftDiameterMm", "nothing")) {
            sentences.add(thing.origin()
                    .under("design")
                    .place(Fault.impossible(where, "what", "why"))
                    .sentence());
        }
        assertThat(sentences)
                .containsExactly(
                        place(text, "0.035") + "taper[1].taper: what; why",
                        place(text, "[\n      { \"fromMm\"") + "taper[7]: what; why",
                        place(text, "1.02") + "shaftDiameterMm: what; why",
                        place(text, "{\n    \"name\": \"Heron") + "nothing: what; why");
    }

    private static String place(String text, String part) {
        String before = text.substring(0, text.indexOf(part));
        long line = before.chars().filter(sign -> sign == '\n').count() + 1;
        return "i.json:" + line + ":" + (before.length() - before.lastIndexOf('\n')) + ": ";
    }
}
