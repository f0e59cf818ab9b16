package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.canal.RootOutline;
import org.taperwright.shaping.finish.Fit;
import org.taperwright.shaping.finish.InscribedCircles;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.passage.stroke.RootWall;

/** What fits a canal that narrows evenly, by solid geometry: volume, cones, needle, clearance, dentine. */
class FinishedCanalTest {
    private static final JsonNode ROW = ReferenceCanals.only("A1-tapered-canal");
    private static final String DEPTH = "depths 0.02 mm, on a grid of 0.01 mm";
    private static final String VOLUME = "0.2 % at 72 angles";

    /** The volume does not depend on the curve: the canal is bent here by 40 degrees. */
    private static final CanalInWork CANAL = CanalInWork.of(canal(), 0.1, 72);

    private static final InscribedCircles CIRCLES = InscribedCircles.of(CANAL.now());

    @Test
    void theVolumeIsThatOfAConeHoweverItBends() {
        ReferenceCanals.hold(ROW, "/V", CANAL.volumeMm3(), 1e-4, 0, "1e-4, as the reference asks");
    }

    @Test
    void conesGoAsDeepAsTheyFitAndBindWhereTheyAreTooWide() {
        String[] held = {"all", "none", "tip", "orifice"};
        for (int i = 0; i < held.length; i++) {
            ReferenceCanals.hold(ROW, "/cone_z/" + i, fit(i).depthMm(), 0, 0.02, DEPTH);
            assertThat(fit(i).binds()).isEqualTo(i > 1);
            assertThat(ROW.at("/output/cone_bind/" + i).asText()).startsWith(held[i]);
        }
        assertThat(fit(2).bindDepthMm()).isCloseTo(fit(2).depthMm(), within(0.02));
        assertThat(fit(3).bindDepthMm()).isZero();
        assertThat(fit(1).gapMm()).isCloseTo(0.025, within(1e-3));
        double share = Fit.volumeMm3(0.25, 0.06, fit(1).depthMm()) / CANAL.volumeMm3();
        ReferenceCanals.hold(ROW, "/cone_share_2", share, 2e-3, 0, VOLUME);
    }

    @Test
    void aFlexibleNeedleGoesWhereItsCircleFits() {
        double outer = ROW.at("/input/needle_od").asDouble();
        Fit needle = Fit.of(CIRCLES, outer, 0, 12);
        ReferenceCanals.hold(ROW, "/needle_flexible_z", needle.depthMm(), 0, 0.02, DEPTH);
        double clear = CIRCLES.radiusMm(10) - outer / 2;
        ReferenceCanals.hold(ROW, "/side_clear_at_10mm", clear, 0, 1e-3, "0.001 mm");
        JsonNode root = ROW.at("/input/root");
        double d = 2 * root.get("R").asDouble();
        RootWall wall = RootWall.about(
                List.of(new RootOutline(0, d, d, 0)), root.get("centre_u1").asDouble(), 0);
        double left = wall.least(CANAL.now(), 0).thicknessMm();
        ReferenceCanals.hold(ROW, "/min_dentine_orifice", left, 0, 1e-3, "0.001 mm");
    }

    private static Fit fit(int i) {
        JsonNode cone = ROW.at("/input/cones/" + i);
        return Fit.of(CIRCLES, cone.get(0).asDouble(), cone.get(1).asDouble(), 12);
    }

    private static Canal canal() {
        double orifice = ROW.at("/input/D_orifice").asDouble();
        double end = ROW.at("/input/D_apex").asDouble();
        return new Canal(
                "cone",
                List.of(new CanalPiece(6, 0, 0), new CanalPiece(6, 40, 0)),
                List.of(new Opening(0, orifice, orifice, 0), new Opening(12, end, end, 0)),
                List.of(),
                0,
                12,
                "",
                "");
    }
}
