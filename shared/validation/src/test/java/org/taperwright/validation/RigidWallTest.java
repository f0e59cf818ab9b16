package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.Springs;
import org.taperwright.shaping.placement.WallSupport;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.RodSection;
import org.taperwright.shaping.placement.rod.RoundPlateau;
import org.taperwright.validation.interior.BarrierPlacement;

/**
 * The engine's placement, in canal coordinates against springs, beside an interior point in a rigid wall with the rod's axis as
 * places in space. One diameter throughout, so that neither levels nor axial push enter.
 */
class RigidWallTest {
    private static final String SOURCE = "A second method: rigid wall, Cartesian positions, interior point";
    private static final String REASON =
            "springs of 1e6 MPa/mm for a rigid wall, differences of the second order at 0.2 mm";
    private static final double SPACING = 0.2;
    private static final double LENGTH = 20;
    private static final double YOUNG = 50_000;
    private static final double D = 0.3;

    @Test
    void aLinearRodInAPlaneLiesTheSameByBothMethods() {
        compare("plane, 45° of radius 5 mm", MomentLaw.LINEAR, 0, Setting.straight(11));
    }

    @Test
    void aLinearRodInSpaceWithATiltedHandleLiesTheSameByBothMethods() {
        compare("space, tilted", MomentLaw.LINEAR, 70, new Setting(11, 0.03, -0.02));
    }

    @Test
    void aSuperelasticRodLiesTheSameByBothMethods() {
        MomentLaw law = new RoundPlateau(YOUNG, 1500, 25_000, 0.01, 0.06);
        compare("superelastic", law, 0, Setting.straight(11));
    }

    private static void compare(String what, MomentLaw law, double azimuth, Setting setting) {
        Canal canal = new Canal(
                "",
                List.of(
                        new CanalPiece(6, 0, 0),
                        new CanalPiece(1.96, 22.5, 0),
                        new CanalPiece(1.96, 22.5, azimuth),
                        new CanalPiece(2.08, 0, 0)),
                List.of(new Opening(0, 1.2, 1.2, 0), new Opening(12, 0.45, 0.45, 0)),
                List.of(),
                0,
                12,
                "",
                "");
        double stiffness = YOUNG * Math.PI / 64 * Math.pow(D, 4);
        Centreline line = Centreline.of(canal.pieces());
        WallSupport support = WallSupport.of(Lumen.of(canal, 0.1, 24));
        Placement ours = PlacementSolver.of(rod(law), SPACING, 24).place(line, support, Springs.firm(1e6), setting);
        assertThat(ours.settled()).isTrue();
        double[] answer = new double[3];
        BarrierPlacement other = new BarrierPlacement(line, support, setting, LENGTH, SPACING, D / 2, curvature -> {
            law.at(curvature * D / 2, answer);
            return 4 * stiffness / (D * D) * answer[2];
        });
        other.solve(1e-8);
        Findings.hold(SOURCE, what + ": bending energy, mJ", other.energyMj(), ours.bendingEnergyMj(), 0.005, REASON);
        Findings.hold(SOURCE, what + ": sum of forces, N", other.totalForceN(), ours.totalForceN(), 0.01, REASON);
        Findings.hold(
                SOURCE,
                what + ": greatest curvature, 1/mm",
                other.greatestCurvature(),
                ours.curvature(ours.mostCurvedNode()),
                0.005,
                REASON);
    }

    private static Rod rod(MomentLaw law) {
        double unit = YOUNG * Math.PI / 64;
        return Rod.of(
                LENGTH, 0, 16, List.of(new RodSection(0, D, unit, D), new RodSection(LENGTH + 1, D, unit, D)), law);
    }
}
