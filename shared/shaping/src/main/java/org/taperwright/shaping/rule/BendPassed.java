package org.taperwright.shaping.rule;

import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;

/** How far an instrument goes round bends. */
final class BendPassed {
    private BendPassed() {}

    /** Angle that the centreline turns down to a depth from the reference point, bends of all directions added, degrees. */
    static double deg(Canal canal, double depthFromReferenceMm) {
        double left = depthFromReferenceMm - canal.coronalReferenceMm();
        double turned = 0;
        for (CanalPiece piece : canal.pieces()) {
            double share = Math.max(0, Math.min(1, left / piece.lengthMm()));
            turned += share * Math.abs(piece.angleDeg());
            left -= piece.lengthMm();
        }
        return turned;
    }
}
