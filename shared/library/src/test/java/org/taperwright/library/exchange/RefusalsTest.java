package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.library.Examples;
import org.taperwright.library.store.ThingKind;

/** Each message that a spoilt form gets, word for word. */
class RefusalsTest {
    private static final String DESIGN = JsonForms.write(Examples.DESIGN_ID, Examples.plainDesign("Plain"));

    /**
     * A design spoilt in one place.
     *
     * @param part what is replaced
     * @param by by what; § marks where the fault is to be found, else it is where the object begins
     * @param sentence what is then said, after file, line and column
     */
    private record Spoilt(String part, String by, String sentence) {
        String text() {
            assertThat(DESIGN).contains(part);
            return DESIGN.replace(part, by);
        }

        /** Line and column of the mark, counted here on the text itself. */
        String place() {
            int mark = text().indexOf('§');
            String before = mark >= 0 ? text().substring(0, mark) : objectBefore();
            int line = (int) before.chars().filter(sign -> sign == '\n').count() + 1;
            int column = before.length() - before.lastIndexOf('\n');
            return line + ":" + column;
        }

        private String objectBefore() {
            return sentence.startsWith("tip.") ? DESIGN.substring(0, DESIGN.indexOf("{ \"kind\"")) : "";
        }
    }

    static Stream<Spoilt> typesAndRanges() {
        return Stream.of(
                new Spoilt(
                        "\"taper\": 0.02",
                        "\"taper\": §\"abc\"",
                        "taper[0].taper: found \"abc\"; expected a number, mm per mm"),
                new Spoilt(
                        "\"taper\": 0.02",
                        "\"taper\": §1e999",
                        "taper[0].taper: found 1e999; expected a number, mm per mm, from -10 to 10"),
                new Spoilt(
                        "\"taper\": 0.02",
                        "\"taper\": §NaN",
                        "taper[0].taper: found NaN; expected a number, mm per mm"),
                new Spoilt(
                        "\"taper\": 0.02",
                        "\"taper\": §-Infinity",
                        "taper[0].taper: found -Infinity; expected a number, mm per mm, from -10 to 10"),
                new Spoilt(
                        "\"tipDiameterMm\": 0.25",
                        "\"tipDiameterMm\": §-0.25",
                        "tipDiameterMm: found -0.25; expected a number, mm, from 0 to 20"),
                new Spoilt(
                        "\"tipDiameterMm\": 0.25",
                        "\"tipDiameterMm\": §null",
                        "tipDiameterMm: found null; expected a number, mm"),
                new Spoilt(
                        "\"tipDiameterMm\": 0.25",
                        "\"tipDiameterMm\": §true",
                        "tipDiameterMm: found true; expected a number, mm"),
                new Spoilt(
                        "\"tipDiameterMm\": 0.25",
                        "\"tipDiameterMm\": §{}",
                        "tipDiameterMm: found an object {…}; expected a number, mm"),
                new Spoilt(
                        "\"alloy\": \"stainless-steel\"",
                        "\"alloy\": §[1]",
                        "alloy: found a list […]; expected an identifier: letters, digits, dots and hyphens, at most 80, in double quotes"),
                new Spoilt(
                        "\"alloy\": \"stainless-steel\"",
                        "\"alloy\": §\"stainless steel\"",
                        "alloy: found \"stainless steel\"; expected an identifier: letters, digits, dots and hyphens, at most 80, in double quotes"),
                new Spoilt("\"name\": \"Plain\"", "\"name\": §7", "name: found 7; expected text in double quotes"),
                new Spoilt(
                        "\"name\": \"Plain\"",
                        "\"name\": §\"\"",
                        "name: found text of 0 characters; expected 1 to 200"),
                new Spoilt(
                        "\"name\": \"Plain\"",
                        "\"name\": §\"a\\u0007\"",
                        "name: found text with control or broken characters; expected plain text"),
                new Spoilt(
                        "\"name\": \"Plain\"",
                        "\"name\": §\"a\\ud800\"",
                        "name: found text with control or broken characters; expected plain text"),
                new Spoilt(
                        "\"flutesPerMm\": 1.5",
                        "\"flutesPerMm\": §101",
                        "flutes[0].flutesPerMm: found 101; expected a number, per mm, from 0 to 100"),
                new Spoilt(
                        "\"family\": \"square\"",
                        "\"family\": \"square\", \"parameters\": §[]",
                        "sections[0].shape.parameters: found a list […]; expected an object of numbers by name {…}"),
                new Spoilt(
                        "\"family\": \"square\"",
                        "\"family\": \"square\", \"parameters\": {\"sagitta\": §\"x\"}",
                        "sections[0].shape.parameters.sagitta: found \"x\"; expected a number"),
                new Spoilt(
                        "\"family\": \"square\"",
                        "\"family\": \"square\", \"parameters\": {§\"a b\": 1}",
                        "sections[0].shape.parameters.a b: is no name of a parameter; expected letters and digits, at most 40"));
    }

    static Stream<Spoilt> words() {
        return Stream.of(
                new Spoilt(
                        "\"hand\": \"clockwise\"",
                        "\"hand\": §\"clockwize\"",
                        "hand: found \"clockwize\"; expected \"clockwise\" or \"anticlockwise\" (perhaps \"clockwise\")"),
                new Spoilt(
                        "\"motion\": \"reaming\"",
                        "\"motion\": §\"hovering\"",
                        "motion: found \"hovering\"; expected \"filing\", \"reaming\", \"rotation\" or \"reciprocation\""),
                new Spoilt(
                        "\"motion\": \"reaming\"",
                        "\"motion\": §3",
                        "motion: found 3; expected \"filing\", \"reaming\", \"rotation\" or \"reciprocation\""));
    }

    static Stream<Spoilt> fields() {
        return Stream.of(
                new Spoilt("\"alloy\"", "§\"aloy\"", "aloy: is no field here; perhaps \"alloy\" was meant"),
                new Spoilt(
                        "\"angleDeg\": 75",
                        "\"angleDeg\": 75, §\"colour\": \"red\"",
                        "tip.colour: is no field here; expected one of kind, angleDeg"),
                new Spoilt(
                        "\"lengthMm\": 25,",
                        "",
                        "lengthMm: is missing; expected length from the tip to the handle, mm"),
                new Spoilt(
                        ", \"angleDeg\": 75",
                        "",
                        "tip.angleDeg: is missing; expected included angle of the tip, degrees"),
                new Spoilt(
                        "\"lengthMm\": 25,",
                        "\"lengthMm\": 25, §\"lengthMm\": 21,",
                        "lengthMm: stands twice, first at line 10; expected each field once"));
    }

    static Stream<Spoilt> theEnvelope() {
        return Stream.of(
                new Spoilt(
                        "\"version\": 1",
                        "\"version\": §2",
                        "version: found 2, written by a newer program; expected at most 1"),
                new Spoilt(
                        "\"version\": 1",
                        "\"version\": §0",
                        "version: found 0; expected a whole number from 1 to 2147483647"),
                new Spoilt(
                        "\"version\": 1",
                        "\"version\": §1.5",
                        "version: found 1.5; expected a whole number from 1 to 2147483647"),
                new Spoilt("\"version\": 1,", "", "version: is missing; expected 1"),
                new Spoilt("\"id\": \"example-design\",", "", "id: is missing; expected the thing's identifier"),
                new Spoilt(
                        "\"id\": \"example-design\"",
                        "\"id\": §\"-\"",
                        "id: found \"-\"; expected an identifier: letters, digits, dots and hyphens, at most 80, in double quotes"),
                new Spoilt(
                        "\"form\": \"taperwright/design\",",
                        "",
                        "form: is missing; expected one of \"taperwright/design\", \"taperwright/instrument\", \"taperwright/motor\", \"taperwright/canal\", \"taperwright/sequence\", \"taperwright/kit\", \"taperwright/comparison\", \"taperwright/filter\", \"taperwright/alloy\", \"taperwright/library\""),
                new Spoilt(
                        "\"form\": \"taperwright/design\"",
                        "\"form\": §7",
                        "form: found 7; expected one of \"taperwright/design\", \"taperwright/instrument\", \"taperwright/motor\", \"taperwright/canal\", \"taperwright/sequence\", \"taperwright/kit\", \"taperwright/comparison\", \"taperwright/filter\", \"taperwright/alloy\", \"taperwright/library\""),
                new Spoilt(
                        "\"form\": \"taperwright/design\"",
                        "\"form\": §\"taperwright/desing\"",
                        "form: found \"taperwright/desing\"; expected one of \"taperwright/design\", \"taperwright/instrument\", \"taperwright/motor\", \"taperwright/canal\", \"taperwright/sequence\", \"taperwright/kit\", \"taperwright/comparison\", \"taperwright/filter\", \"taperwright/alloy\", \"taperwright/library\" (perhaps \"taperwright/design\")"));
    }

    static Stream<Spoilt> malformedJson() {
        return Stream.of(
                new Spoilt(
                        "\"motion\": \"reaming\"\n}",
                        "\"motion\": \"reaming\",\n§}",
                        "file: is malformed here: \"}\" cannot stand in this place (a field name in double quotes must follow); expected well-formed JSON"),
                new Spoilt(
                        "\"stainless-steel\",\n  ",
                        "\"stainless-steel\"\n  §",
                        "file: is malformed here: a double quote cannot stand in this place (a comma is missing before it); expected well-formed JSON"),
                new Spoilt(
                        "\"alloy\": \"stainless-steel\"",
                        "\"alloy\" §\"stainless-steel\"",
                        "file: is malformed here: a double quote cannot stand in this place (a colon must follow the field name); expected well-formed JSON"),
                new Spoilt(
                        "\"alloy\": \"stainless-steel\"",
                        "\"alloy\": §steel",
                        "file: is malformed here: \"steel\" is no JSON value; expected well-formed JSON"),
                new Spoilt(
                        "\"alloy\": \"stainless-steel\"",
                        "\"alloy\": §'steel'",
                        "file: is malformed here: \"'\" cannot stand in this place; expected well-formed JSON"));
    }

    @Test
    void theFormThatTheseTestsSpoilIsGood() {
        assertThat(JsonForms.read(DESIGN, "design.json")).isInstanceOf(ReadResult.Read.class);
    }

    @ParameterizedTest
    @MethodSource({"typesAndRanges", "words", "fields", "theEnvelope", "malformedJson"})
    void theFaultNamesFileLineColumnFieldWhatWasFoundAndWhatWasExpected(Spoilt spoilt) {
        assertThat(sentences(JsonForms.read(spoilt.text().replace("§", ""), "design.json")))
                .containsExactly("design.json:" + spoilt.place() + ": " + spoilt.sentence());
    }

    @Test
    void allFaultsOfAFileAreFoundAtOnce() {
        String text =
                DESIGN.replace("0.25", "\"x\"").replace("reaming", "humming").replace("1.5", "null");
        assertThat(sentences(JsonForms.read(text, "d"))).hasSize(3);
    }

    @Test
    void aFileFullOfFaultsIsGivenUpAfterAHundred() {
        String text = "{\"form\":\"taperwright/library\",\"version\":1,\"things\":[" + "7,".repeat(500) + "7]}";
        assertThat(sentences(JsonForms.read(text, "d"))).hasSize(100);
    }

    @Test
    void aThingOfAnotherKindThanExpectedIsRefused() {
        assertThat(sentences(JsonForms.read(DESIGN, "d", EnumSet.of(ThingKind.CANAL))))
                .containsExactly("d:2:11: form: found \"taperwright/design\"; expected \"taperwright/canal\"");
    }

    @Test
    void theNameOfABundleIsSuggestedForAFileAndNotWithinOne() {
        String text = "{\"form\": \"taperwright/libary\", \"version\": 1, \"things\": []}";
        assertThat(sentences(JsonForms.read(text, "b.json")))
                .singleElement()
                .asString()
                .startsWith("b.json:1:10: form: found \"taperwright/libary\"; expected one of")
                .endsWith("(perhaps \"taperwright/library\")");
        String nested = "{\"form\": \"taperwright/library\", \"version\": 1, \"things\": [" + text + "]}";
        assertThat(sentences(JsonForms.read(nested, "b.json")))
                .singleElement()
                .asString()
                .startsWith("b.json:1:67: things[0].form: found \"taperwright/libary\"")
                .doesNotContain("taperwright/library");
    }

    @Test
    void aRangeUpsideDownIsRefused() {
        String text = JsonForms.write(Examples.MOTOR_ID, Examples.motor()).replace("\"least\": 100", "\"least\": 2000");
        assertThat(sentences(JsonForms.read(text, "motor.json")))
                .containsExactly("motor.json:7:15: speedRpm: has its least above its most;"
                        + " expected values that go together");
    }

    @Test
    void aComparisonOfSevenDesignsIsRefused() {
        String ids = "\"a\", \"b\", \"c\", \"d\", \"e\", \"f\", \"g\"";
        String text = "{\"form\": \"taperwright/comparison\", \"version\": 1, \"id\": \"x\", \"name\": \"N\",\n"
                + "\"designs\": [" + ids + "], \"datum\": \"a\"}";
        assertThat(sentences(JsonForms.read(text, "c.json")))
                .containsExactly("c.json:2:12: designs: found a list of 7; expected 0 to 6");
    }

    private static List<String> sentences(ReadResult result) {
        return result instanceof ReadResult.Refused refused
                ? refused.faults().stream().map(FileFault::sentence).toList()
                : List.of();
    }
}
