package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssessTest {
    private static final String DESIGN = """
            {
              "form": "taperwright/design",
              "version": 1,
              "id": "plain",
              "name": "Plain 25/.02",
              "tipDiameterMm": 0.25,
              "taper": [ { "fromMm": 0, "toMm": 16, "taper": 0.02 } ],
              "lengthMm": 25,
              "sections": [ { "levelMm": 0, "shape": { "family": "square" } } ],
              "flutes": [ { "levelMm": 0, "flutesPerMm": 1.37 } ],
              "hand": "clockwise",
              "tip": { "kind": "active", "angleDeg": 75 },
              "alloy": "stainless-steel",
              "making": "twisted",
              "motion": "filing"
            }
            """;

    @TempDir
    Path folder;

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("design.json"), text).toString();
    }

    @Test
    void aDesignOfTheDemoLibraryIsFoundByNameInAnyCaseAndByIdentifier() {
        Ran byName = Ran.with("assess", "--demo", "marram 25/.04");
        assertThat(byName.code()).as(byName.err()).isZero();
        assertThat(byName.out()).startsWith("Marram 25/.04\n=============\nSize 25/.04 (red), taper constant");
        assertThat(Ran.with("assess", "--demo", "marram-25-04").out()).isEqualTo(byName.out());
    }

    @Test
    void thePageShowsSectionsEdgesBladeBenchCuttingAndTheCaution() throws IOException {
        Ran ran = Ran.with("assess", file(DESIGN));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains(
                        "Checks\n",
                        "Sections,",
                        "Edges of the sections",
                        "Along the blade",
                        "Bench tests",
                        "The standard's limit")
                .contains(
                        "index",
                        "They do not replace the manufacturer's instructions, local rules or\nlicensed clinical");
    }

    private static final String ALLOY = """
            {
              "form": "taperwright/alloy",
              "version": 1,
              "id": "tern-wire",
              "name": "Tern wire",
              "kin": "stainless-steel",
              "poisson": 0.29,
              "ultimateMpa": 2200,
              "constants": [
                { "name": "youngMpa", "value": 96500, "low": 90000, "high": 100000 },
                { "name": "yieldMpa", "value": 1820 },
                { "name": "hardeningMpa", "value": 15000 },
                { "name": "shearStrengthMpa", "value": 1485 },
                { "name": "fractureShearStrain", "value": 1 }
              ],
              "source": "invented",
              "validity": "nowhere"
            }
            """;

    private static final String OF_OWN_ALLOY = DESIGN.replace("stainless-steel", "tern-wire");

    /** Stiffness is Young's modulus times the second moment: half the modulus of steel, 193 GPa, gives half of it. */
    @Test
    void aDesignOfAnAlloyInTheSameFileOrInAnotherIsComputedInIt() throws IOException {
        String bundle =
                "{\"form\": \"taperwright/library\", \"version\": 1, \"things\": [" + OF_OWN_ALLOY + "," + ALLOY + "]}";
        Path file = Files.writeString(folder.resolve("bundle.json"), bundle);
        Ran own = Ran.with("assess", "--json", file.toString());
        assertThat(own.code()).as(own.err()).isZero();
        assertThat(own.json().at("/assessments/0/alloy").asText()).isEqualTo("tern-wire");
        JsonNode steel = Ran.with("assess", "--json", file(DESIGN)).json();
        String stiffness = "/assessments/0/blade/0/bendingStiffness/value";
        assertThat(own.json().at(stiffness).asDouble())
                .isEqualTo(steel.at(stiffness).asDouble() / 2, within(1e-6));

        Path alloy = Files.writeString(folder.resolve("alloy.json"), ALLOY);
        Ran from = Ran.with("assess", "--json", "--from", alloy.toString(), file(OF_OWN_ALLOY));
        assertThat(from.out().replace("design.json", "bundle.json")).isEqualTo(own.out());
    }

    @Test
    void anAlloyThatNobodyKnowsIsNamedWithItsPlaceAndWhatThereIs() throws IOException {
        Ran ran = Ran.with("assess", file(OF_OWN_ALLOY));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains(
                        "design.json:13:12: alloy: no alloy is called \"tern-wire\"; one of stainless-steel",
                        "or an alloy of the library or the same file by its identifier");
    }

    /**
     * A square has area 0.5 d², second moment d⁴/48 and torsion constant 2.25 a⁴ · k with side a = d/√2, 0.0351443 d⁴
     * (series of the rectangle: Timoshenko and Goodier); rake −45° by geometry; the standard's limits for size 25 are 120
     * and 30 g cm (ISO 3630-1:1992, from memory, medium confidence).
     */
    @Test
    void theNumbersOfASquareAreThoseOfTheHandbook() throws IOException {
        JsonNode result = Ran.with("assess", "--json", file(DESIGN)).json().at("/assessments/0");
        JsonNode section = result.at("/sections/0");
        assertThat(section.at("/area/value").asDouble()).isEqualTo(0.5, within(1e-9));
        assertThat(section.at("/iLeast/value").asDouble()).isEqualTo(1 / 48.0, within(1e-9));
        assertThat(section.at("/torsionConstant/value").asDouble()).isEqualTo(0.0351443, within(1e-5));
        assertThat(section.at("/edges/0/rake/value").asDouble()).isEqualTo(-45, within(0.1));
        assertThat(section.get("edges")).hasSize(4);
        assertThat(result.at("/bending/limit/atMostNmm").asDouble()).isEqualTo(120 * 0.0980665, within(1e-9));
        assertThat(result.at("/twisting/limit/atLeastNmm").asDouble()).isEqualTo(30 * 0.0980665, within(1e-9));
        assertThat(result.at("/bending/moment45/standing").asText()).isEqualTo("estimate");
    }

    @Test
    void jsonCarriesTheCautionAndTheStandingOfTheIndex() throws IOException {
        JsonNode json = Ran.with("assess", "--json", file(DESIGN)).json();
        assertThat(json.get("form").asText()).isEqualTo("taperwright/assessments");
        assertThat(json.get("caution").asText()).contains("do not replace");
        assertThat(json.at("/assessments/0/metrics/cutting/standing").asText()).isEqualTo("index");
    }

    @Test
    void anUnknownSectionIsNamedWithFileLineColumnAndFieldAndWhatIsKnown() throws IOException {
        String file = file(DESIGN.replace("\"square\"", "\"heptagon\""));
        Ran ran = Ran.with("assess", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .startsWith(file + ":9:54: sections[0].shape.family: ")
                .contains("heptagon", "square", "triangle");
    }

    @Test
    void anUnknownAlloyIsNamedAtItsPlace() throws IOException {
        String file = file(DESIGN.replace("\"stainless-steel\"", "\"mithril\""));
        Ran ran = Ran.with("assess", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith(file + ":13:12: alloy: ").contains("mithril", "stainless-steel");
    }

    @Test
    void aNumberThatIsNoneIsNamedAtItsPlace() throws IOException {
        String file = file(DESIGN.replace("0.25,", "\"quarter\","));
        Ran ran = Ran.with("assess", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith(file + ":6:20: tipDiameterMm: ").contains("quarter", "expected a number");
    }

    @Test
    void aBrokenFileIsNamedWithTheLineWhereItBreaks() throws IOException {
        String file = file(DESIGN.substring(0, DESIGN.indexOf("\"lengthMm\"")));
        Ran ran = Ran.with("assess", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith(file + ":8:");
    }

    @Test
    void anEmptyFileIsRefused() throws IOException {
        assertRefused(file(""));
    }

    @Test
    void aFileThatIsNotThereIsRefused() {
        String file = folder.resolve("absent.json").toString();
        assertRefused(file);
        assertThat(Ran.with("assess", file).err()).contains("does not exist");
    }

    @Test
    void aFolderIsRefused() {
        assertRefused(folder.toString());
        assertThat(Ran.with("assess", folder.toString()).err()).contains("is a folder");
    }

    @Test
    void textThatIsNotUtf8IsRefused() throws IOException {
        Path file = Files.write(folder.resolve("latin.json"), new byte[] {'{', (byte) 0xE9, '}'});
        assertRefused(file.toString());
        assertThat(Ran.with("assess", file.toString()).err()).contains("UTF-8");
    }

    @Test
    void aFileOfAnotherKindIsRefused() throws IOException {
        Path file = Files.writeString(
                folder.resolve("motor.json"),
                "{\"form\": \"taperwright/motor\", \"version\": 1, \"id\": \"m\", \"name\": \"M\", "
                        + "\"speedRpm\": {\"least\": 1, \"most\": 2}, \"torqueNmm\": {\"least\": 1, \"most\": 2}}");
        assertRefused(file.toString());
        assertThat(Ran.with("assess", file.toString()).err()).contains("holds no design but motor");
    }

    @Test
    void aNameThatTheDemoLibraryDoesNotHaveIsRefusedWithThoseItHas() {
        Ran ran = Ran.with("assess", "--demo", "no such design");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("\"no such design\" names no design of the demo library", "Marram 25/.04");
    }

    @Test
    void everyWrongDesignIsNamedNotOnlyTheFirst() throws IOException {
        Path one = Files.writeString(folder.resolve("one.json"), DESIGN.replace("\"square\"", "\"heptagon\""));
        Path two = Files.writeString(folder.resolve("two.json"), DESIGN.replace("\"stainless-steel\"", "\"mithril\""));
        Ran ran = Ran.with("assess", one.toString(), two.toString());
        assertThat(ran.err().lines()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(ran.err()).contains("one.json:", "two.json:");
    }

    @Test
    void aThingIsTakenByNameFromAFile() throws IOException {
        Ran ran = Ran.with("assess", "--from", file(DESIGN), "plain 25/.02");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).startsWith("Plain 25/.02\n");
    }

    private static void assertRefused(String file) {
        Ran ran = Ran.with("assess", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith(file);
    }
}
