package org.taperwright.shaping.placement;

import java.util.List;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.RodSection;

/** Plain rods and tubes that tests of placement start from. */
final class Tubes {
    private Tubes() {}

    /** A blunt rod of one taper on 16 mm, 25 mm long, round, with a modulus in MPa. */
    static Rod rod(double tipMm, double taper, double youngMpa, MomentLaw law) {
        double unit = youngMpa * Math.PI / 64;
        double end = tipMm + 16 * taper;
        return Rod.of(
                25,
                0,
                16,
                List.of(
                        new RodSection(0, tipMm, unit, tipMm),
                        new RodSection(16, end, unit, end),
                        new RodSection(26, end, unit, end)),
                law);
    }

    /** A round canal that narrows evenly. */
    static Canal canal(double orificeMm, double endMm, CanalPiece... pieces) {
        double length =
                List.of(pieces).stream().mapToDouble(CanalPiece::lengthMm).sum();
        return new Canal(
                "",
                List.of(pieces),
                List.of(new Opening(0, orificeMm, orificeMm, 0), new Opening(length, endMm, endMm, 0)),
                List.of(),
                0,
                length,
                "",
                "");
    }
}
