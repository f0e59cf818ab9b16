package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.taperwright.mechanics.properties.helix.HelicalAnalysis;
import org.taperwright.mechanics.properties.helix.HelicalFactors;
import org.taperwright.mechanics.properties.helix.PeakStressFactors;

/** Every row of reference/helical.json up to a twist of 4. */
class HelicalFactorsTest {
    private static final String STIFFNESS = "Independent helical stiffness factors (reference/helical.json)";
    private static final String STRESS = "Independent helical peak-stress factors (reference/helical.json)";
    private static final String SLIGHT = "stiffness up to t = 2: what is wanted";
    private static final String STRONG =
            "stiffness up to t = 4: what is wanted; few finite elements see less of a tight twist";
    private static final String COUPLING = "coupling is small and only passed on: within 2 % of its own greatest value";
    private static final String PEAK =
            "peak stress: what is wanted; the reference's own two meshes differ by up to 1 %";

    @TestFactory
    Stream<DynamicTest> everyStiffnessFactorIsTheReferences() {
        return names("table")
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    JsonNode section =
                            ReferenceFile.read("helical.json").get("table").get(name);
                    HelicalFactors ours = HelicalAnalysis.of(
                            ReferenceOutline.named(name), section.get("nu").asDouble());
                    for (JsonNode row : section.get("rows")) {
                        double t = row.get("t").asDouble();
                        if (t <= HelicalFactors.LIMIT) {
                            stiffness(name + ", t = " + t, row, ours, t);
                        }
                    }
                }));
    }

    private static void stiffness(String where, JsonNode row, HelicalFactors ours, double t) {
        double tolerance = t <= 2 ? 3e-3 : 1e-2;
        String reason = t <= 2 ? SLIGHT : STRONG;
        hold(where + ": bending", row.get("kEI"), ours.bending(t), tolerance, reason);
        hold(where + ": torsion at free length", row.get("kGJ_free_axial"), ours.torsion(t), tolerance, reason);
        hold(where + ": torsion at held length", row.get("kGJ_fixed_axial"), ours.torsionHeld(t), tolerance, reason);
        hold(where + ": extension", row.get("kEA_fixed_twist"), ours.extension(t), tolerance, reason);
        double coupling = row.get("coupling_EA_twist").asDouble();
        double scale = 0.02 * 0.01 / Math.abs(coupling);
        Findings.hold(STIFFNESS, where + ": coupling, E d³", coupling, ours.coupling(t), scale, COUPLING);
    }

    private static void hold(String quantity, JsonNode expected, double ours, double tolerance, String reason) {
        Findings.hold(STIFFNESS, quantity, expected.asDouble(), ours, tolerance, reason);
    }

    @TestFactory
    Stream<DynamicTest> everyPeakStressFactorIsTheReferences() {
        return names("peak_stress")
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    JsonNode section = ReferenceFile.read("helical.json")
                            .get("peak_stress")
                            .get(name);
                    HelicalFactors ours = HelicalAnalysis.of(ReferenceOutline.named(name), 0.3);
                    for (JsonNode row : section.get("rows")) {
                        double t = row.get("t").asDouble();
                        stress(name + ", t = " + t, row, ours.peakStress(t));
                    }
                }));
    }

    private static void stress(String where, JsonNode row, PeakStressFactors ours) {
        peak(where + ": axial stress in bending", row.get("k_sigma_axial"), ours.bendingAxial());
        peak(where + ": von Mises stress in bending", row.get("k_sigma_vm"), ours.bending());
        peak(where + ": shear in torsion", row.get("k_tau"), ours.torsion());
    }

    private static void peak(String quantity, JsonNode expected, double ours) {
        Findings.hold(STRESS, quantity, expected.asDouble(), ours, 3e-2, PEAK);
    }

    @AfterAll
    static void say() {
        Findings.remark(STRESS, "Not yet confirmed by a solid model; both sides solve the same equations.");
    }

    private static Stream<String> names(String table) {
        List<String> names = new ArrayList<>();
        ReferenceFile.read("helical.json").get(table).fieldNames().forEachRemaining(names::add);
        return names.stream();
    }
}
