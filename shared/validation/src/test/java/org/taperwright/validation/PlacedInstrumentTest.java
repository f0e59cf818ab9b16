package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.placement.ContactZone;
import org.taperwright.shaping.placement.ContactZones;
import org.taperwright.shaping.placement.InsertionForce;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.Springs;
import org.taperwright.shaping.placement.WallSupport;

/**
 * Instruments placed in bent canals, linear and superelastic, in plane and space, tilted and wedged, as an independent program
 * of the same formulation places them.
 */
class PlacedInstrumentTest {
    private static final String ENERGY = "energies and forces 0.5 %, insertion force 2 %";
    private static final String SHAPE = "curvature and strain 0.3 %, offsets 0.001 mm";
    private static final String ZONE = "force of a zone 1 % or 0.01 N, its centre 0.1 mm";
    private static final String NOTE = "tolerances as the reference states them, or its own mesh difference";

    static Stream<JsonNode> placements() {
        return ReferenceCanals.cases("place");
    }

    @ParameterizedTest
    @MethodSource("placements")
    void anInstrumentLiesAsTheReferenceSays(JsonNode row) {
        JsonNode input = row.get("input");
        Canal canal = ReferenceCanals.canal(input.get("canal"));
        Centreline line = Centreline.of(canal.pieces());
        WallSupport support = WallSupport.of(Lumen.of(canal, 0.1, 72));
        PlacementSolver solver = PlacementSolver.of(ReferenceCanals.rod(input.get("instrument")), 0.1, 72);
        Setting setting = ReferenceCanals.setting(input, input.get("z").asDouble());
        Placement placement = solver.place(line, support, Springs.FIRM, setting);
        assertThat(placement.settled()).isTrue();
        ReferenceCanals.hold(row, "/E_bend", placement.bendingEnergyMj(), 5e-3, 0, ENERGY);
        ReferenceCanals.hold(row, "/F_total", placement.totalForceN(), 5e-3, 0, ENERGY);
        ReferenceCanals.hold(row, "/min_gap", placement.leastGapMm(), 1e-5, 0, NOTE);
        if (row.get("output").has("F_insert")) {
            double force = InsertionForce.of(solver, placement, line, support, Springs.FIRM, setting);
            ReferenceCanals.hold(row, "/F_insert", force, 0.02, 0, ENERGY);
        }
        shape(row, placement);
        zones(row, ContactZones.of(placement, line));
    }

    private static void shape(JsonNode row, Placement placement) {
        int curved = placement.mostCurvedNode();
        int strained = placement.mostStrainedNode();
        int tip = placement.nodes() - 1;
        ReferenceCanals.hold(row, "/kappa_max", placement.curvature(curved), 3e-3, 0, SHAPE);
        ReferenceCanals.hold(row, "/s_kappa_max", placement.depthMm(curved), 0, 0.1, SHAPE);
        ReferenceCanals.hold(row, "/eps_max", placement.strain(strained), 3e-3, 0, SHAPE);
        ReferenceCanals.hold(row, "/x_eps_max", placement.levelMm(strained), 0, 0.1, SHAPE);
        ReferenceCanals.hold(row, "/u_tip/0", placement.firstMm(tip), 0, 1e-3, SHAPE);
        ReferenceCanals.hold(row, "/u_tip/1", placement.secondMm(tip), 0, 1e-3, SHAPE);
        JsonNode probes = row.at("/input/probe_s");
        for (int i = 0; i < probes.size(); i++) {
            double s = probes.get(i).asDouble();
            ReferenceCanals.hold(row, "/u1/" + i, at(placement, s, placement::firstMm), 0, 1e-3, SHAPE);
            ReferenceCanals.hold(row, "/u2/" + i, at(placement, s, placement::secondMm), 0, 1e-3, SHAPE);
            double curvature = at(placement, s, placement::curvature);
            ReferenceCanals.hold(row, "/kappa/" + i, curvature, 3e-3, 5e-5, SHAPE);
        }
    }

    private static void zones(JsonNode row, List<ContactZone> zones) {
        JsonNode expected = row.at("/output/zones");
        assertThat(zones.stream().map(zone -> zone.side().word()).toList())
                .isEqualTo(expected.findValuesAsText("side"));
        for (int i = 0; i < zones.size(); i++) {
            ReferenceCanals.hold(row, "/zones/" + i + "/s", zones.get(i).depthMm(), 0, 0.1, ZONE);
            ReferenceCanals.hold(row, "/zones/" + i + "/F", zones.get(i).forceN(), 0.01, 0.01, ZONE);
        }
    }

    private static double at(Placement placement, double depth, IntToDoubleFunction value) {
        int above = 1;
        while (above < placement.nodes() - 1 && placement.depthMm(above) < depth) {
            above++;
        }
        double from = placement.depthMm(above - 1);
        double share = (depth - from) / (placement.depthMm(above) - from);
        double first = value.applyAsDouble(above - 1);
        return first + share * (value.applyAsDouble(above) - first);
    }
}
