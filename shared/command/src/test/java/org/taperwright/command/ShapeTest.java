package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShapeTest {
    private static final String CANAL = """
            {
              "form": "taperwright/canal", "version": 1, "id": "tube", "name": "Tube",
              "pieces": [ { "lengthMm": 16, "angleDeg": 0 } ],
              "openings": [
                { "depthMm": 0, "wideMm": 0.45, "narrowMm": 0.45 },
                { "depthMm": 16, "wideMm": 0.45, "narrowMm": 0.45 }
              ],
              "coronalReferenceMm": 6,
              "workingLengthMm": 22
            }
            """;
    private static final String SEQUENCE = """
            {
              "form": "taperwright/sequence", "version": 1, "id": "one", "name": "One step",
              "steps": [
                { "instrument": "marram-25-04-l25", "depthMm": 22, "motion": "rotation", "strokes": 3 }
              ]
            }
            """;

    @TempDir
    Path folder;

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void aSequenceOfTheDemoLibraryIsTriedInItsOwnCanal() {
        Ran ran = Ran.with("shape", "--demo", "--computed-only", "Rotary, moderate curve");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .startsWith("Rotary, moderate curve\n")
                .contains("Canal: Moderately curved", "Motor: Brindle Two", "Nothing impossible or unusual.")
                .contains("They do not replace the manufacturer's instructions");
    }

    @Test
    void bandsSayBetweenWhatAndOfWhichConstantWeDoNotKnow() {
        Ran text = Ran.with("shape", "--demo", "--bands", "Rotary, moderate curve");
        assertThat(text.out()).contains("What it is we do not know", "energy of cutting dentine", "assumed, no source");
        JsonNode bands = Ran.with("shape", "--demo", "--json", "--bands", "rotary-moderate")
                .json()
                .get("bands");
        assertThat(bands.get("samples").asInt()).isEqualTo(200);
        assertThat(bands.get("quantities")).isNotEmpty().allSatisfy(quantity -> {
            assertThat(quantity.get("low").asDouble())
                    .isLessThanOrEqualTo(quantity.get("value").asDouble());
            assertThat(quantity.get("high").asDouble())
                    .isGreaterThanOrEqualTo(quantity.get("value").asDouble());
        });
    }

    @Test
    void everyResultSaysWhatItLeavesOutAndHowLargeThatIs() {
        assertThat(Ran.with("shape", "--demo", "--computed-only", "rotary-moderate")
                        .out())
                .contains("What these numbers leave out", "up to 0.03 N·cm", "LIMITS.md");
        JsonNode json = Ran.with("shape", "--demo", "--computed-only", "--json", "rotary-moderate")
                .json();
        assertThat(json.get("leftOut")).hasSizeGreaterThan(4);
    }

    @Test
    void estimatesAndIndicesAreNotShownWithoutTheirBands() {
        String text = Ran.with("shape", "--demo", "--computed-only", "rotary-moderate")
                .out();
        assertThat(text)
                .contains("they are not shown without their bands", "strain")
                .doesNotContain("torsional reserve", "Transportation", "Wall worn");
        JsonNode step = Ran.with("shape", "--demo", "--json", "--computed-only", "rotary-moderate")
                .json()
                .at("/strokeByStroke/steps/0");
        assertThat(step.has("computed")).isTrue();
        assertThat(step.has("index")).isFalse();
        assertThat(step.has("estimate")).isFalse();
        Ran both = Ran.with("shape", "--demo", "--bands", "--computed-only", "rotary-moderate");
        assertThat(both.code()).isEqualTo(2);
        assertThat(both.err()).contains("--bands and --computed-only together");
    }

    /** Everything that is no more than an estimate or an index stands with low and high about it. */
    @Test
    void everyEstimateAndIndexHasItsBand() {
        JsonNode json = Ran.with("shape", "--demo", "--json", "rotary-moderate").json();
        int banded = 0;
        for (String group : new String[] {"estimate", "index"}) {
            for (JsonNode found : json.findValues(group)) {
                for (JsonNode value : found) {
                    banded += value.has("value") ? 1 : 0;
                    if (value.has("value")) {
                        assertThat(value.get("low").asDouble())
                                .isLessThanOrEqualTo(value.get("value").asDouble());
                        assertThat(value.get("high").asDouble())
                                .isGreaterThanOrEqualTo(value.get("value").asDouble());
                    }
                }
            }
        }
        assertThat(banded).isGreaterThan(50);
        assertThat(json.at("/strokeByStroke/canal/index/transportation/0/centringRatio")
                        .has("low"))
                .isTrue();
    }

    @Test
    void aKitsPiecesCarryTheirFatigueIntoTheSequence() {
        JsonNode json = Ran.with("shape", "--demo", "--json", "--kit", "bench-rotary", "rotary-moderate")
                .json();
        assertThat(json.get("kit").asText()).isEqualTo("Rotary kit, bench 3");
        JsonNode third = json.at("/pieces/3");
        assertThat(third.get("piece").asText()).isEqualTo("m20-1");
        double before = third.at("/index/lifeSpentBefore/value").asDouble();
        double spent = third.at("/index/lifeSpentInThisCanal/value").asDouble();
        assertThat(spent)
                .isEqualTo(
                        json.at("/strokeByStroke/steps/4/index/lifeSpent/value").asDouble(), within(1e-12));
        assertThat(third.at("/index/lifeSpentAfter/value").asDouble()).isEqualTo(before + spent, within(1e-12));
        String text = Ran.with("shape", "--demo", "--kit", "bench-rotary", "rotary-moderate")
                .out();
        assertThat(text)
                .contains("Pieces of Rotary kit, bench 3", "m30-1 may come to its limit of 50 % of its life")
                .contains("k10-1     1, 7, 10, 13, 15");
    }

    @Test
    void aPieceThatTheKitDoesNotHaveIsRefusedWithThoseItHas() {
        Ran ran = Ran.with("shape", "--demo", "--kit", "bench-rotary", "--piece", "no-such", "rotary-moderate");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("no piece in use \"no-such\"", "m20-1");
        assertThat(Ran.with("shape", "--demo", "--piece", "m20-1", "rotary-moderate")
                        .err())
                .contains("--piece without --kit");
        assertThat(Ran.with("shape", "--demo", "--computed-only", "--kit", "bench-rotary", "rotary-moderate")
                        .err())
                .contains("the life of a piece is an index");
    }

    @Test
    void torqueIsShownInTheUnitThatMotorsHave() {
        String text = Ran.with("shape", "--demo", "--bands", "rotary-moderate").out();
        assertThat(text).contains("N·cm").doesNotContain("N·mm");
    }

    @Test
    void theShapedCanalIsTriedWithNeedlesAndCones() {
        JsonNode finish = Ran.with("shape", "--demo", "--computed-only", "--json", "rotary-moderate")
                .json()
                .get("finish");
        assertThat(finish.at("/computed/volumeAfterMm3").asDouble())
                .isGreaterThan(finish.at("/computed/volumeBeforeMm3").asDouble());
        assertThat(finish.get("needles")).hasSize(9);
        assertThat(finish.get("cones"))
                .isNotEmpty()
                .allSatisfy(cone ->
                        assertThat(cone.at("/computed/shareFilled").asDouble()).isBetween(0.1, 1.0));
    }

    @Test
    void aSequenceIsRunOverCanalsDrawnFromAPreset() {
        JsonNode found = Ran.with(
                        "shape",
                        "--demo",
                        "--json",
                        "--population",
                        "lower-molar-mb",
                        "--canals",
                        "10",
                        "rotary-moderate")
                .json();
        assertThat(found.get("canals").asInt()).isEqualTo(10);
        assertThat(found.get("source").asText()).contains("from memory");
        assertThat(found.get("worst")).isNotEmpty();
        Ran unknown = Ran.with("shape", "--demo", "--population", "no-such", "rotary-moderate");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("no-such").contains("lower-molar-mb");
    }

    @Test
    void anotherCanalGivesAnotherOutcome() {
        JsonNode own = Ran.with("shape", "--demo", "--computed-only", "--json", "rotary-moderate")
                .json();
        JsonNode other = Ran.with("shape", "--demo", "--computed-only", "--json", "rotary-moderate", "--canal", "oval")
                .json();
        assertThat(other.get("canal").asText()).isEqualTo("Oval");
        assertThat(other.get("steps")).hasSameSizeAs(own.get("steps"));
        assertThat(other.get("steps")).isNotEqualTo(own.get("steps"));
    }

    /** A cone of 0.25 to 0.89 mm in a tube of 0.45 mm: wider over 11 mm, frustum less cylinder, by hand. */
    @Test
    void aConeInATubeRemovesTheFrustumBeyondIt() throws IOException {
        JsonNode step = Ran.with(
                        "shape",
                        "--demo",
                        "--computed-only",
                        "--json",
                        file("s.json", SEQUENCE),
                        "--canal",
                        file("c.json", CANAL))
                .json()
                .at("/steps/0");
        double frustum = Math.PI * 11 * (0.89 * 0.89 + 0.89 * 0.45 + 0.45 * 0.45) / 12;
        double removed = 0;
        for (JsonNode third : step.get("enlargedMm3")) {
            removed += third.asDouble();
        }
        assertThat(removed).isEqualTo(frustum - Math.PI / 4 * 0.45 * 0.45 * 11, within(1e-9));
        assertThat(step.at("/engagedMm/0/to").asDouble()).isEqualTo(11, within(1e-9));
        assertThat(step.get("designation").asText()).isEqualTo("25/.04");
    }

    @Test
    void everyOutputOfTheStrokesStandsUnderItsStanding() {
        JsonNode json = Ran.with("shape", "--demo", "--json", "rotary-moderate").json();
        JsonNode shaped = json.get("strokeByStroke");
        assertThat(shaped.get("faults")).isEmpty();
        int working = 0;
        for (JsonNode step : json.get("steps")) {
            working += step.get("kind").asText().equals("irrigation") ? 0 : 1;
        }
        assertThat(shaped.get("steps")).hasSize(working);
        for (JsonNode step : shaped.get("steps")) {
            assertThat(step.get("settled").asBoolean()).isTrue();
            assertThat(step.at("/computed/greatestStrain").asDouble()).isBetween(0.0, 0.1);
            assertThat(step.at("/estimate/roomFilled/value").isNumber()).isTrue();
            assertThat(step.at("/index/torqueNmm/low").isNumber()).isTrue();
        }
        double before = sum(shaped.at("/canal/computed/beforeMm3"));
        double removed = 0;
        for (JsonNode step : shaped.get("steps")) {
            removed += sum(step.at("/computed/removedMm3"));
        }
        assertThat(sum(shaped.at("/canal/computed/afterMm3"))).isEqualTo(before + removed, within(1e-9));
        assertThat(shaped.at("/canal/index/transportation")).isNotEmpty();
        assertThat(shaped.at("/canal/estimate/touchedShare/value").asDouble()).isBetween(0.0, 1.0);
    }

    @Test
    void irrigationSaysHowDeepItsNeedleReachesInTheCanalAsItThenIs() {
        JsonNode steps =
                Ran.with("shape", "--demo", "--json", "rotary-moderate").json().get("steps");
        JsonNode first = steps.get(8);
        JsonNode later = steps.get(11);
        assertThat(first.get("kind").asText()).isEqualTo("irrigation");
        assertThat(first.at("/needleReach/gauge").asText()).isEqualTo("30G");
        assertThat(later.at("/needleReach/computed/flexibleMm").asDouble())
                .isGreaterThan(first.at("/needleReach/computed/flexibleMm").asDouble());
        assertThat(first.at("/needleReach/index/stiffMm/high").isNumber()).isTrue();
    }

    @Test
    void theTextSaysWhatTheStepsBetweenDo() {
        String text = Ran.with("shape", "--demo", "--computed-only", "rotary-moderate")
                .out();
        assertThat(text)
                .contains("Irrigation: how deep each needle reaches", "steel stopped by")
                .containsPattern("7  patency +10/.02 +20.5  yes")
                .containsPattern("10  recapitulation +10/.02 +20.0  yes")
                .containsPattern("9  irrigation +sodium hypochlorite 2.5 %, 1 ml  30G +17.0");
    }

    @Test
    void theTextShowsTheStrokesEachPartWithItsStanding() {
        String text = Ran.with("shape", "--demo", "Rotary, moderate curve").out();
        assertThat(text)
                .contains("Stroke by stroke, the instrument bending in the canal (computed")
                .contains("torque, reserve, life: index")
                .contains("Wall worn by more than 0.02 mm")
                .contains("Transportation (sign and order hold; the size is an index");
    }

    @Test
    void anInstrumentThatCannotEnterIsSaidToWithLevelAndReason() throws IOException {
        Ran ran = Ran.with(
                "shape",
                "--demo",
                "--computed-only",
                file("s.json", SEQUENCE),
                "--canal",
                file("c.json", CANAL.replace("0.45", "0.1")));
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("steps[0].depthMm: at ", "from its tip", "does not cut");
    }

    private static double sum(JsonNode thirds) {
        double sum = 0;
        for (JsonNode third : thirds) {
            sum += third.asDouble();
        }
        return sum;
    }

    /** Points of an arc of 5 mm radius and 45 degrees between straight parts, by hand: sines and cosines. */
    private String points() throws IOException {
        StringBuilder rows = new StringBuilder("x,y,diameter\n");
        for (int i = 0; i <= 30; i++) {
            double s = 0.4 * i;
            double angle = Math.max(0, Math.min(Math.PI / 4, (s - 6) / 5));
            double after = Math.max(0, s - 6 - 5 * Math.PI / 4);
            double x = Math.min(s, 6) + 5 * Math.sin(angle) + after * Math.cos(angle);
            double y = 5 * (1 - Math.cos(angle)) + after * Math.sin(angle);
            rows.append(x)
                    .append(',')
                    .append(y)
                    .append(',')
                    .append(0.8 - 0.05 * s)
                    .append('\n');
        }
        return file("traced.csv", rows.toString());
    }

    @Test
    void aCanalOfPointsIsSmoothedTakenAndKept() throws IOException {
        String kept = folder.resolve("kept.json").toString();
        JsonNode own = Ran.with(
                        "shape",
                        "--demo",
                        "--json",
                        "--computed-only",
                        "rotary-moderate",
                        "--canal",
                        points(),
                        "--save-canal",
                        kept)
                .json();
        assertThat(own.get("canal").asText()).isEqualTo("traced");
        String form = Files.readString(Path.of(kept));
        assertThat(form).contains("\"form\": \"taperwright/canal\"", "31 points of a table", "\"workingLengthMm\": 20");
        assertThat(form).containsPattern("\"angleDeg\": (44\\.99|45)");
        JsonNode again = Ran.with("shape", "--demo", "--json", "--computed-only", "rotary-moderate", "--canal", kept)
                .json();
        assertThat(again.get("strokeByStroke")).isEqualTo(own.get("strokeByStroke"));
    }

    @Test
    void aSpoiltTableIsNamedByLineAndColumn() throws IOException {
        String spoilt = file("spoilt.csv", Files.readString(Path.of(points())).replace("\n0.4,", "\nsome,"));
        Ran ran = Ran.with("shape", "--demo", "rotary-moderate", "--canal", spoilt);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith(spoilt + ":3:1: x:");
        Ran absent = Ran.with("shape", "--demo", "rotary-moderate", "--canal", "no-such.csv");
        assertThat(absent.err()).contains("no-such.csv: does not exist");
    }

    @Test
    void thePresetsAverageCanalIsTakenWithItsStepsAsFarFromTheEnd() {
        Ran ran = Ran.with(
                "shape", "--demo", "--json", "--computed-only", "--preset", "lower-molar-mb", "rotary-moderate");
        assertThat(ran.json().get("canal").asText()).isEqualTo("Lower molar, mesiobuccal canal");
        assertThat(ran.json().at("/steps/0/depthMm").asDouble()).isEqualTo(19.9, within(1e-9));
        assertThat(ran.json().at("/steps/4/depthMm").asDouble()).isEqualTo(13.4, within(1e-9));
        assertThat(Ran.with("shape", "--demo", "--preset", "lower-molar-mb", "--canal", "oval", "rotary-moderate")
                        .err())
                .contains("--preset and --canal together");
        String source = Ran.with("shape", "--demo", "--computed-only", "--preset", "lower-molar-mb", "rotary-moderate")
                .out();
        assertThat(source).contains("Where the canal's numbers come from: ", "from memory");
    }

    @Test
    void anInstrumentThatIsNotAtHandIsNamedAtItsPlace() throws IOException {
        String sequence = file("s.json", SEQUENCE);
        Ran ran = Ran.with("shape", sequence, "--canal", file("c.json", CANAL));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .startsWith(sequence + ":4:21: steps[0].instrument: refers to \"marram-25-04-l25\"")
                .contains("--from", "--demo");
    }

    @Test
    void anImpossibleCanalIsNamedAtItsPlace() throws IOException {
        String canal = file("c.json", CANAL.replace("\"workingLengthMm\": 22", "\"workingLengthMm\": 23"));
        Ran ran = Ran.with("shape", "--demo", file("s.json", SEQUENCE), "--canal", canal);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith(canal + ":9:22: workingLengthMm: ").contains("at most 22 mm");
    }

    @Test
    void withoutACanalTheInputIsIncomplete() throws IOException {
        Ran ran = Ran.with("shape", "--demo", file("s.json", SEQUENCE));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("no canal is named", "--canal");
    }

    @Test
    void whatTheRulesRemarkIsShownWithoutRefusingTheSequence() {
        Ran ran = Ran.with("shape", "--demo", "--computed-only", "hand-wide");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("unusual     steps[2].instrument: the end of the canal is widened from 0.30 mm");
    }
}
