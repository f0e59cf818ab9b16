package org.taperwright.shaping.canal.fit;

import java.util.List;
import org.taperwright.shaping.canal.CanalPiece;

/**
 * A centreline of any number of bends found back from points.
 *
 * @param pieces straight parts and arcs; the first arc bends towards azimuth 0
 * @param rmsMm root mean square distance of the points from the pieces, mm
 * @param flatnessMm root mean square distance of the points from one plane, mm
 * @param depthsMm way along the pieces to the place nearest to each point, mm
 */
public record FittedBends(List<CanalPiece> pieces, double rmsMm, double flatnessMm, List<Double> depthsMm) {
    public FittedBends {
        pieces = List.copyOf(pieces);
        depthsMm = List.copyOf(depthsMm);
    }

    /** Number of bends. */
    public int bends() {
        return (int) pieces.stream().filter(piece -> piece.angleDeg() != 0).count();
    }
}
