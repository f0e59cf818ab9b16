package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Walks whole results and looks at every number in them. */
class EveryQuantityTest {
    /** Numbers that are no results: the form, how bands are sampled, places that results stand at, limits of the standard. */
    private static final Set<String> GIVEN = Set.of(
            "version",
            "samples",
            "seed",
            "lowPercent",
            "highPercent",
            "levelMm",
            "atAngleDeg",
            "atMostNmm",
            "atLeastNmm",
            "angleDeg",
            "radiusMm",
            "middleMm",
            "speedRpm");

    private static final Set<String> STANDINGS = Set.of("computed", "estimate", "index");

    private final List<String> seen = new ArrayList<>();

    @Test
    void everyQuantityOfAnAssessmentHasUnitStandingAndSourceAndABandUnlessItIsComputed() {
        JsonNode json = Ran.with(
                        "assess", "--demo", "--json", "marram-25-04", "teasel-25-04", "fescue-25-04", "lovage-25-04")
                .json();
        walk("", json, json.get("sources"));
        assertThat(seen).hasSizeGreaterThan(500);
        assertThat(seen)
                .anyMatch(place -> place.endsWith("/bending/set45"))
                .anyMatch(place -> place.endsWith("/twisting/angleAtFracture"))
                .anyMatch(place -> place.endsWith("/metrics/torsional-reserve"))
                .anyMatch(place -> place.contains("/blade/") && place.endsWith("/plasticTorque"));
    }

    @Test
    void everyValueAndEveryRatioOfAComparisonHasABandUnlessItIsComputed() {
        for (JsonNode metric : Ran.with("compare", "--demo", "--json").json().get("metrics")) {
            String id = metric.get("id").asText();
            assertThat(metric.get("unit").asText()).as(id).isNotEmpty();
            assertThat(metric.get("source").asText()).as(id).isNotEmpty();
            boolean computed = metric.get("standing").asText().equals("computed");
            for (JsonNode cell : metric.get("cells")) {
                assertThat(cell.has("band")).as(id).isEqualTo(!computed);
                assertThat(cell.has("ratioBand")).as(id).isEqualTo(!computed && cell.has("ratio"));
                if (!computed) {
                    holds(id, cell.get("band"), cell.get("value").asDouble());
                }
                if (cell.has("ratioBand")) {
                    holds(id, cell.get("ratioBand"), cell.get("ratio").asDouble());
                }
            }
        }
    }

    private void walk(String place, JsonNode node, JsonNode sources) {
        if (node.has("value")) {
            quantity(place, node, sources);
            return;
        }
        assertThat(node.isNumber() && !GIVEN.contains(place.substring(place.lastIndexOf('/') + 1)))
                .as(place + " is a number without unit and standing")
                .isFalse();
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            walk(place + "/" + field.getKey(), field.getValue(), sources);
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            walk(place + "/" + i, node.get(i), sources);
        }
    }

    private void quantity(String place, JsonNode quantity, JsonNode sources) {
        seen.add(place);
        assertThat(quantity.get("value").isNumber()).as(place).isTrue();
        assertThat(quantity.path("unit").asText()).as(place + ": unit").isNotEmpty();
        assertThat(quantity.path("standing").asText()).as(place + ": standing").isIn(STANDINGS);
        assertThat(quantity.path("source").asText()).as(place + ": source").isNotEmpty();
        assertThat(sources.path(quantity.get("source").asText()).asText())
                .as(place + ": the source's text")
                .isNotEmpty();
        if (quantity.get("standing").asText().equals("computed")) {
            assertThat(quantity.has("band"))
                    .as(place + ": band of a computed value")
                    .isFalse();
        } else {
            assertThat(quantity.path("band")).as(place + ": band").hasSize(2);
            holds(place, quantity.get("band"), quantity.get("value").asDouble());
        }
    }

    private static void holds(String place, JsonNode band, double value) {
        assertThat(value)
                .as(place)
                .isBetween(band.get(0).asDouble(), band.get(1).asDouble());
    }
}
