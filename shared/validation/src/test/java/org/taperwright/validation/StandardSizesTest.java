package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.IsoSize;
import org.taperwright.mechanics.design.IsoSizes;

/** Sizes, colours, taper, lengths and tip of ISO 3630-1 as reference/published.json holds them. */
class StandardSizesTest {
    private static final String SOURCE =
            "ISO 3630-1 sizes (from memory, high confidence; see reference/published.json)";
    private static final String EXACT = "nominal values are exact in hundredths of a millimetre";

    @TestFactory
    Stream<DynamicTest> everySizeHasTheTablesDiametersToleranceAndColour() {
        return IsoSizes.all().stream().map(size -> DynamicTest.dynamicTest(size.text(), () -> hold(size)));
    }

    private static void hold(IsoSize size) {
        JsonNode table = ReferenceFile.published(String.format(Locale.ROOT, "iso-size-%03d", size.number()));
        held(size, "d0, mm", table.get("D0").asDouble(), size.d0Mm());
        held(size, "d3, mm", table.get("D3").asDouble(), size.d3Mm());
        held(size, "d16, mm", table.get("D16").asDouble(), size.d16Mm());
        held(size, "tolerance, mm", table.get("tol").asDouble(), size.toleranceMm());
        assertThat(size.colour().word()).isEqualTo(table.get("colour").asText());
        Design design = Designs.standard(size.number(), IsoSizes.STANDARD_TAPER);
        held(size, "design's diameter at 16 mm, mm", table.get("D16").asDouble(), design.diameterMm(16));
    }

    private static void held(IsoSize size, String quantity, double expected, double ours) {
        Findings.hold(SOURCE, "size " + size.text() + ": " + quantity, expected, ours, 1e-12, EXACT);
    }

    @Test
    void theSeriesIsTheStandards() {
        List<Integer> series = new ArrayList<>();
        ReferenceFile.published("iso-sequence").get("list").forEach(number -> series.add(number.asInt()));
        assertThat(IsoSizes.sizes()).isEqualTo(series);
    }

    @Test
    void lengthsTaperWorkingPartAndTipAreTheStandards() {
        List<Double> lengths = new ArrayList<>();
        ReferenceFile.published("iso-lengths").forEach(length -> lengths.add(length.asDouble()));
        // 28 mm is in the standard's list from memory only
        assertThat(IsoSizes.lengthsMm()).containsAll(lengths);
        Findings.hold(
                SOURCE,
                "standard taper, mm/mm",
                ReferenceFile.published("iso-taper-02").asDouble(),
                IsoSizes.STANDARD_TAPER,
                0,
                EXACT);
        Findings.hold(
                SOURCE,
                "least working part, mm",
                ReferenceFile.published("iso-working").asDouble(),
                IsoSizes.WORKING_PART_MM,
                0,
                EXACT);
        JsonNode tip = ReferenceFile.published("iso-tip");
        Findings.hold(SOURCE, "tip angle, °", tip.get("nominal").asDouble(), IsoSizes.TIP_ANGLE_DEG, 0, EXACT);
        Findings.hold(
                SOURCE,
                "tip angle's tolerance, °",
                tip.get("tol").asDouble(),
                IsoSizes.TIP_ANGLE_TOLERANCE_DEG,
                0,
                EXACT);
    }
}
