package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.placement.ContactZone;
import org.taperwright.shaping.placement.ContactZones;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.Springs;
import org.taperwright.shaping.placement.WallSupport;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.RodSection;

/**
 * A straight beam with free ends in an arc tube: loose, on three points or wrapped, by beam theory. Curvature and clearance are a
 * fiftieth of the case's and the beam is fifty times as stiff, so that the exact geometry is the small-displacement one of the
 * closed form: forces stay, curvatures and energies are a fiftieth. The free end towards the handle is a tail a ten-millionth as stiff.
 */
class ArcTubeBeamTest {
    private static final double SMALL = 0.02;
    private static final double RADIUS = 0.2;
    private static final double TAIL = 4;
    private static final String REASON = "1 %, as the reference asks: spacing 0.05 mm, springs of 1e9 MPa/mm";

    static Stream<JsonNode> beams() {
        return ReferenceCanals.cases("closed-form");
    }

    @ParameterizedTest
    @MethodSource("beams")
    void aFreeBeamInAnArcTubeBearsAsBeamTheorySays(JsonNode row) {
        JsonNode input = row.get("input");
        double length = 2 * input.get("straight_free_beam_half_length").asDouble();
        double curvature = SMALL * input.get("arc_tube_curvature").asDouble();
        double tube = 2 * (RADIUS + SMALL * input.get("clearance").asDouble());
        List<CanalPiece> arc = List.of(new CanalPiece(length, Math.toDegrees(length * curvature), 0));
        List<Opening> openings = List.of(new Opening(0, tube, tube, 0), new Opening(length, tube, tube, 0));
        Canal canal = new Canal("arc", arc, openings, List.of(), 0, length, "", "");
        Placement placement = PlacementSolver.of(beam(length, input.get("EI").asDouble() / SMALL), 0.05, 72)
                .place(
                        Centreline.of(arc),
                        WallSupport.of(Lumen.of(canal, 0.05, 72)),
                        Springs.firm(1e9),
                        Setting.straight(length));
        assertThat(placement.settled()).isTrue();
        List<ContactZone> zones = ContactZones.of(placement, Centreline.of(arc));
        double middle = 0;
        double ends = 0;
        for (ContactZone zone : zones) {
            boolean inner = zone.side() == ContactZone.Side.INNER;
            middle += inner ? zone.forceN() : 0;
            ends += inner ? 0 : zone.forceN();
        }
        int half = placement.nodes() - 1 - (int) Math.round(length / 2 / 0.05);
        ReferenceCanals.hold(row, "/curvature_middle", placement.curvature(half) / SMALL, 0.01, 1e-3, REASON);
        ReferenceCanals.hold(row, "/force_middle", middle, 0.01, 1e-3, REASON);
        ReferenceCanals.hold(row, "/force_each_end", ends / 2, 0.01, 1e-3, REASON);
        ReferenceCanals.hold(row, "/E_bend", placement.bendingEnergyMj() / SMALL, 0.01, 1e-3, REASON);
    }

    private static Rod beam(double length, double stiffness) {
        double d = 2 * RADIUS;
        double unit = stiffness / Math.pow(d, 4);
        return Rod.of(
                length + TAIL,
                0,
                length,
                List.of(
                        new RodSection(0, d, unit, d),
                        new RodSection(length, d, unit, d),
                        new RodSection(length, d, unit * 1e-7, d),
                        new RodSection(length + TAIL + 1, d, unit * 1e-7, d)),
                MomentLaw.LINEAR);
    }
}
