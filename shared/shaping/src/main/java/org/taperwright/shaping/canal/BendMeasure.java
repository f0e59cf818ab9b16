package org.taperwright.shaping.canal;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A bend as it is measured on a picture.
 *
 * @param startMm depth at which the canal leaves its coronal axis, mm
 * @param pruettDeg angle between the two straight parts, degrees (Pruett and others, J Endod 1997;23:77)
 * @param radiusMm radius of the arc between them, mm
 * @param schneiderDeg angle between the coronal axis and the line from the bend's start to the canal's end, degrees
 *     (Schneider, Oral Surg 1971;32:271)
 */
public record BendMeasure(double startMm, double pruettDeg, double radiusMm, double schneiderDeg) {
    private static final double CLOSE = 1e-13;
    private static final int MOST_STEPS = 200;

    /**
     * The first bend of a centreline; empty where it is straight. The radius is the first curved piece's, the angle between
     * the straight parts is that between the tangents at the bend's start and at the canal's end.
     */
    public static Optional<BendMeasure> of(List<CanalPiece> pieces) {
        Centreline line = Centreline.of(pieces);
        double start = 0;
        for (CanalPiece piece : pieces) {
            if (piece.angleDeg() != 0) {
                Frame from = line.at(start);
                Frame end = line.at(line.lengthMm());
                return Optional.of(new BendMeasure(
                        start,
                        Math.toDegrees(from.tangent().angleTo(end.tangent())),
                        piece.lengthMm() / Math.toRadians(Math.abs(piece.angleDeg())),
                        Math.toDegrees(from.tangent().angleTo(end.place().minus(from.place())))));
            }
            start += piece.lengthMm();
        }
        return Optional.empty();
    }

    /** Straight, an arc of an angle and a radius, straight again to the length; empty where the arc does not fit. */
    public static Optional<List<CanalPiece>> pieces(
            double lengthMm, double startMm, double pruettDeg, double radiusMm) {
        double arc = radiusMm * Math.toRadians(pruettDeg);
        double rest = lengthMm - startMm - arc;
        if (!(startMm > 0 && arc > 0 && rest >= 0)) {
            return Optional.empty();
        }
        List<CanalPiece> bent = List.of(new CanalPiece(startMm, 0, 0), new CanalPiece(arc, pruettDeg, 0));
        return Optional.of(rest == 0 ? bent : List.of(bent.get(0), bent.get(1), new CanalPiece(rest, 0, 0)));
    }

    /**
     * The pieces whose Schneider angle is given: it rises with the angle of the arc, so there is one or none. Empty where
     * even an arc to the canal's end does not reach it.
     */
    public static Optional<List<CanalPiece>> piecesBySchneider(
            double lengthMm, double startMm, double schneiderDeg, double radiusMm) {
        double most = Math.min(179, Math.toDegrees((lengthMm - startMm) / radiusMm));
        if (!(startMm > 0 && schneiderDeg > 0 && most > 0)
                || schneider(lengthMm, startMm, most, radiusMm) < schneiderDeg) {
            return Optional.empty();
        }
        double angle = new BrentSolver(CLOSE)
                .solve(
                        MOST_STEPS,
                        deg -> schneider(lengthMm, startMm, deg, radiusMm) - schneiderDeg,
                        schneiderDeg / 2,
                        most);
        return pieces(lengthMm, startMm, angle, radiusMm);
    }

    /** In closed form: the end lies {@code (sin a R + r cos a, (1 - cos a) R + r sin a)} from the bend's start. */
    private static double schneider(double lengthMm, double startMm, double pruettDeg, double radiusMm) {
        double angle = Math.toRadians(pruettDeg);
        double rest = lengthMm - startMm - radiusMm * angle;
        double along = radiusMm * Math.sin(angle) + rest * Math.cos(angle);
        double aside = radiusMm * (1 - Math.cos(angle)) + rest * Math.sin(angle);
        return Math.toDegrees(Math.atan2(aside, along));
    }
}
