package org.taperwright.shaping.canal.fit;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.shaping.canal.CanalPiece;

/**
 * A centreline found back from points.
 *
 * @param pieces straight, arc, straight; what has no length is left out
 * @param rmsMm root mean square distance of the points from the pieces, in their plane, mm
 * @param flatnessMm root mean square distance of the points from their plane, mm
 */
public record FittedCentreline(List<CanalPiece> pieces, double rmsMm, double flatnessMm) {
    private static final double NOTHING_MM = 1e-6;

    public FittedCentreline {
        pieces = List.copyOf(pieces);
    }

    static FittedCentreline of(LineArcLine curve, List<double[]> points, double rmsMm, double flatnessMm) {
        double[] first = points.get(0);
        double[] last = points.get(points.size() - 1);
        double from = curve.lengthTo(first[0], first[1]);
        double to = curve.lengthTo(last[0], last[1]);
        List<CanalPiece> pieces = new ArrayList<>();
        append(pieces, -from, 0);
        double arcFrom = Math.max(0, from);
        double arcTo = Math.min(curve.arc(), to);
        append(pieces, arcTo - arcFrom, Math.toDegrees(Math.abs(curve.turn())) * (arcTo - arcFrom) / curve.arc());
        append(pieces, to - Math.max(curve.arc(), from), 0);
        return new FittedCentreline(pieces, rmsMm, flatnessMm);
    }

    private static void append(List<CanalPiece> pieces, double lengthMm, double angleDeg) {
        if (lengthMm > NOTHING_MM) {
            pieces.add(new CanalPiece(lengthMm, angleDeg, 0));
        }
    }
}
