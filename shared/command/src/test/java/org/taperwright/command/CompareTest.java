package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.comparison.score.Weights;
import org.taperwright.mechanics.design.ThingId;

class CompareTest {
    @Test
    void theDemoLibrarysFirstComparisonIsComparedWithoutNames() {
        Ran ran = Ran.with("compare", "--demo");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .startsWith("Six ways to make a 25/.04\n")
                .contains("Marram 25/.04 (datum)", "Ratios to A, the datum", "certainly undominated", "B  For: ")
                .contains("They do not replace the manufacturer's instructions");
    }

    @Test
    void theFirstComparisonIsWorthLookingAt() {
        JsonNode designs = Ran.with("compare", "--demo", "--json").json().get("designs");
        long undominated = 0;
        for (JsonNode design : designs) {
            undominated += design.get("undominated").asBoolean() ? 1 : 0;
        }
        assertThat(designs).hasSize(6);
        assertThat(undominated)
                .as("several undominated, at least one dominated")
                .isBetween(2L, 5L);
    }

    @Test
    void estimatesShowTheirBandsBesideTheirValues() {
        String text = Ran.with("compare", "--demo").out();
        String bands = text.substring(text.indexOf("From 5 to 95 %"), text.indexOf("Ratios to"));
        assertThat(bands).containsPattern("Bending moment at 45° +[0-9.]+ to [0-9.]+");
        assertThat(bands).doesNotContain("Wedge angle");
    }

    @Test
    void ratiosOfTheDatumAreOne() {
        JsonNode json = Ran.with(
                        "compare", "--demo", "--json", "marram-25-04", "teasel-25-04", "--datum", "Teasel 25/.04")
                .json();
        assertThat(json.get("datum").asText()).isEqualTo("teasel-25-04");
        assertThat(json.get("metrics")).isNotEmpty();
        for (JsonNode metric : json.get("metrics")) {
            JsonNode cells = metric.get("cells");
            if (cells.get(1).get("value").asDouble() > 0) {
                assertThat(cells.get(1).get("ratio").asDouble()).isEqualTo(1);
            }
            if (cells.get(0).has("ratio")) {
                double ratio = cells.get(0).get("value").asDouble()
                        / cells.get(1).get("value").asDouble();
                assertThat(cells.get(0).get("ratio").asDouble()).isEqualTo(ratio, within(1e-12));
            }
        }
    }

    @Test
    void aPurposeGivesAScoreWithAllItIsMadeOf() {
        JsonNode score = Ran.with("compare", "--demo", "--json", "--purpose", "teaching", "--weight", "cutting=2")
                .json()
                .get("score");
        assertThat(score.get("weights").get("cutting").asDouble()).isEqualTo(2);
        for (JsonNode design : score.get("designs")) {
            double sum = 0;
            for (JsonNode contribution : design.get("contributions")) {
                sum += contribution.asDouble();
            }
            assertThat(design.get("total").asDouble()).isEqualTo(sum, within(1e-12));
        }
        assertThat(Ran.with("compare", "--demo", "--purpose", "teaching").out())
                .contains(
                        "Score by your weights",
                        "as one ratio to the datum",
                        "stays while no weight moves by more than");
    }

    @Test
    void aWeightOfNoMetricAndAnUnknownPurposeAreRefusedWithWhatWouldDo() {
        assertThat(Ran.with("compare", "--demo", "--weight", "speed=1").err())
                .startsWith("--weight: \"speed\" is no metric that can count")
                .contains("flexibility");
        assertThat(Ran.with("compare", "--demo", "--weight", "cutting=-1").err())
                .contains("not below zero");
        assertThat(Ran.with("compare", "--demo", "--purpose", "racing").err()).contains("narrow-curve");
    }

    @Test
    void sentencesSayForAndAgainstWithTheRatioOfTheTable() {
        JsonNode json = Ran.with("compare", "--demo", "--json", "marram-25-04", "teasel-25-04")
                .json();
        assertThat(json.get("designs").get(0).has("gives")).isFalse();
        JsonNode other = json.get("designs").get(1);
        assertThat(other.get("gives").size() + other.get("takes").size()).isPositive();
        assertThat(other.get("dominance").asText()).isIn("certainly undominated", "possibly undominated", "dominated");
    }

    @Test
    void aSavedComparisonIsScoredByItsOwnWeightsAndSaysWhetherKeptResultsWouldDiffer(@TempDir Path folder)
            throws IOException {
        ThingId fine = new ThingId("fine");
        ThingId wide = new ThingId("wide");
        KeptResults kept = new KeptResults(
                "1",
                List.of(new KeptResults.KeptDesign(fine, "0")),
                List.of(new KeptResults.KeptRow("flexibility", List.of(1e-9))));
        SavedComparison saved = new SavedComparison("Two", List.of(fine, wide), fine, "")
                .weighed(new Weights(Map.of("flexibility", 2.0)))
                .keeping(kept);
        Path file = folder.resolve("two.json");
        Files.writeString(
                file,
                JsonForms.write(new LibraryBundle(List.of(
                        new LibraryBundle.Item(fine, org.taperwright.mechanics.design.Designs.standard(20, 0.02)),
                        new LibraryBundle.Item(wide, org.taperwright.mechanics.design.Designs.standard(25, 0.02)),
                        new LibraryBundle.Item(new ThingId("two"), saved)))));

        Ran ran = Ran.with("compare", "--from", file.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("Score by your weights", "Kept results", "Kept with model 1; the present one is")
                .contains("1 of 1 numbers differ now");
        JsonNode json = Ran.with("compare", "--json", "--from", file.toString()).json();
        assertThat(json.get("score").get("weights").get("flexibility").asDouble())
                .isEqualTo(2);
        JsonNode wideScore = json.get("score").get("designs").get(1);
        assertThat(wideScore.at("/contributions/flexibility").asDouble())
                .isBetween(
                        wideScore.at("/contributionBands/flexibility/0").asDouble(),
                        wideScore.at("/contributionBands/flexibility/1").asDouble());
        assertThat(json.get("kept").get("changed").asInt()).isEqualTo(1);
    }

    @Test
    void anUnknownDatumIsRefusedWithTheNamesThatWouldDo() {
        Ran ran = Ran.with("compare", "--demo", "marram-25-04", "teasel-25-04", "--datum", "Tansy");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .startsWith("--datum: \"Tansy\" is not among the designs compared")
                .contains("Marram 25/.04, Teasel 25/.04");
    }

    @Test
    void oneDesignOrSevenAreRefused() {
        assertThat(Ran.with("compare", "--demo", "marram-25-04").err()).contains("only one design", "two to six");
        assertThat(Ran.with(
                                "compare",
                                "--demo",
                                "marram-20-04",
                                "marram-25-04",
                                "marram-30-04",
                                "marram-35-04",
                                "teasel-25-04",
                                "fescue-25-04",
                                "lovage-25-04")
                        .err())
                .contains("7 designs", "two to six");
    }

    @Test
    void withoutDesignsAndWithoutTheDemoLibraryTheInputIsIncomplete() {
        Ran ran = Ran.with("compare");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("no design is named", "--demo");
    }
}
