package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.uncertainty.Spread;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.passage.stroke.Movement;
import org.taperwright.shaping.passage.stroke.StrokeTorque;

/** The elementary sums behind torque and damage, and one circle united with another, in closed form. */
class ShapingIndexTest {
    private static final String DIGITS = "closed form, the seven digits that the reference writes";
    private static final String POLYGON = "0.2 % at 72 angles, as the reference asks";

    @Test
    void cuttingTorqueAndDamageAreTheReferences() {
        JsonNode row = ReferenceCanals.only("F1-elementary");
        JsonNode input = row.get("input");
        double turns = Movement.turned(
                        input.get("rpm").asDouble(), input.get("seconds").asDouble())
                .bendingTurns();
        double exponent = -input.get("b").asDouble();
        double atPoint = Math.pow(StrainLife.POINT / input.get("a").asDouble(), -1 / exponent);
        StrainLife life = new StrainLife(
                Spread.exactly(atPoint),
                Spread.exactly(exponent),
                Spread.exactly(0),
                Spread.exactly(0),
                Spread.exactly(1),
                0,
                1,
                "reference");
        double cycles = life.cycles(input.get("eps").asDouble());
        ReferenceCanals.hold(row, "/N_f", cycles, 1e-6, 0, DIGITS);
        ReferenceCanals.hold(row, "/damage", turns / cycles, 1e-6, 0, DIGITS);
        double torque = StrokeTorque.cuttingNmm(
                input.get("uc").asDouble(),
                input.get("dV").asDouble(),
                input.get("rev").asDouble());
        ReferenceCanals.hold(row, "/T_cut_Ncm", torque / 10, 1e-6, 0, DIGITS);
    }

    @Test
    void aCircleUnitedWithAnotherIsAsPlaneGeometrySays() {
        JsonNode row = ReferenceCanals.only("V1-two-circles");
        double d = 2 * row.at("/input/r_canal").asDouble();
        Canal canal = new Canal(
                "tube",
                List.of(new CanalPiece(1, 0, 0)),
                List.of(new Opening(0, d, d, 0), new Opening(1, d, d, 0)),
                List.of(),
                0,
                1,
                "",
                "");
        Lumen lumen = Lumen.of(canal, 0.1, 72);
        lumen.unite(
                5,
                row.at("/input/offset").asDouble(),
                0,
                row.at("/input/r_instrument").asDouble());
        double inner = lumen.radiusMm(5, 0) - d / 2;
        double outer = lumen.radiusMm(5, 36) - d / 2;
        ReferenceCanals.hold(row, "/union_area", lumen.areaMm2(5), 2e-3, 0, POLYGON);
        ReferenceCanals.hold(row, "/inner_advance", inner, 2e-3, 0, POLYGON);
        ReferenceCanals.hold(row, "/transport", inner - outer, 2e-3, 0, POLYGON);
        ReferenceCanals.hold(row, "/ratio", outer / inner, 2e-3, 1e-12, POLYGON);
    }
}
