package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.SectionProperties;

/** Every section of reference/sections.json: all its numbers, on the very outline that the file gives. */
class SectionPropertiesTest {
    private static final String SOURCE = "Independent section properties (reference/sections.json)";
    private static final String CONTOUR =
            "contour quantities: exact but for rounding; the ellipse is 400 circular arcs, which leaves about 1e-10";
    private static final String FIELD = "J: what is wanted of the finite elements";
    private static final String HEAP = "plastic torque: what is wanted; the reference itself is known to 2e-6";
    private static final String PEAK = "peak shear: what is wanted where no corner is re-entrant";
    private static final String MOMENT = "plastic moments: what is wanted over all directions";

    @TestFactory
    Stream<DynamicTest> everySectionsNumbersAreTheReferences() {
        JsonNode sections = ReferenceFile.read("sections.json").get("sections");
        List<String> names = Stream.generate(sections.fieldNames()::next)
                .limit(sections.size())
                .toList();
        return names.stream().map(name -> DynamicTest.dynamicTest(name, () -> hold(name, sections.get(name))));
    }

    private static void hold(String name, JsonNode expected) {
        SectionProperties ours = SectionAnalysis.of(ReferenceOutline.named(name));
        contour(name, expected, ours);
        double j = expected.get("J").asDouble();
        Findings.hold(SOURCE, name + ": J, d⁴", j, ours.torsionConstant(), 1e-4, FIELD);
        double peak = expected.get("c_tau").asDouble();
        Findings.hold(SOURCE, name + ": peak shear c, 1", peak, ours.peakShear(), 1e-2, PEAK);
        assertThat(ours.peakShearSingular())
                .as("no case has a sharp re-entrant corner")
                .isFalse();
        double torque = expected.get("Tp_over_k_d3").asDouble();
        Findings.hold(SOURCE, name + ": fully plastic torque, k d³", torque, ours.plasticTorque(), 1e-4, HEAP);
        double least = expected.get("Mp_min").get(0).asDouble();
        Findings.hold(SOURCE, name + ": least plastic moment, Y d³", least, ours.plasticMomentLeast(), 1e-4, MOMENT);
        double most = expected.get("Mp_max").get(0).asDouble();
        Findings.hold(SOURCE, name + ": greatest plastic moment, Y d³", most, ours.plasticMomentMost(), 1e-4, MOMENT);
    }

    private static void contour(String name, JsonNode expected, SectionProperties ours) {
        exact(name, "area, d²", expected.get("A"), ours.area());
        exact(name, "larger second moment, d⁴", expected.get("I1"), ours.iMax());
        exact(name, "smaller second moment, d⁴", expected.get("I2"), ours.iMin());
        exact(name, "polar second moment, d⁴", expected.get("Ip"), ours.polar());
        exact(name, "core diameter, d", expected.get("core_d_on_axis"), ours.core());
        exact(name, "largest inscribed circle, d", expected.get("largest_inscribed_d"), ours.inscribed());
        assertThat(ours.centroidX()).isCloseTo(expected.get("xc").asDouble(), within(1e-9));
        assertThat(ours.centroidY()).isCloseTo(expected.get("yc").asDouble(), within(1e-9));
        if (expected.get("angle_of_I2_axis_deg").isNumber()) {
            double angle = Math.toRadians(expected.get("angle_of_I2_axis_deg").asDouble());
            assertThat(Math.sin(ours.angleOfIMin() - angle)).isCloseTo(0, within(1e-9));
        }
        assertThat(ours.chipSpace()).isCloseTo(Math.PI / 4 - ours.area(), within(1e-15));
    }

    private static void exact(String name, String quantity, JsonNode expected, double ours) {
        Findings.hold(SOURCE, name + ": " + quantity, expected.asDouble(), ours, 1e-9, CONTOUR);
    }

    private static org.assertj.core.data.Offset<Double> within(double offset) {
        return org.assertj.core.data.Offset.offset(offset);
    }
}
