package org.taperwright.shaping.canal.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Frame;
import org.taperwright.shaping.canal.Vector;

/**
 * A straight part, then arcs with straight parts behind them. Parameters: offset of the beginning (2, mm) and its direction (2, rad)
 * against the base; for each bend the straight way before it (mm), the way round it (mm), and its turn towards two sides (rad).
 */
final class BendChain {
    private static final int FIXED = 4;
    private static final int EACH = 4;
    private static final double SHORTEST_ARC_MM = 0.1;
    private static final double BEYOND_MM = 3;
    private static final double LONGEST_STEP_MM = 1;
    private static final double SETTLED_MM = 1e-10;
    private static final int NEWTON = 12;

    private final Base base;
    private final double[] parameters;
    private final Centreline line;
    private final List<CanalPiece> pieces = new ArrayList<>();

    BendChain(Base base, double[] parameters) {
        this.base = base;
        this.parameters = parameters.clone();
        double length = 0;
        for (int p = FIXED; p < parameters.length; p += EACH) {
            double straight = Math.max(1e-9, parameters[p]);
            double arc = Math.max(1e-9, parameters[p + 1]);
            double turn = Math.hypot(parameters[p + 2], parameters[p + 3]);
            pieces.add(new CanalPiece(straight, 0, 0));
            pieces.add(new CanalPiece(
                    arc, Math.toDegrees(turn), Math.toDegrees(Math.atan2(parameters[p + 3], parameters[p + 2]))));
            length += straight + arc;
        }
        pieces.add(new CanalPiece(Math.max(BEYOND_MM, base.lengthMm() + BEYOND_MM - length), 0, 0));
        line = Centreline.of(pieces);
    }

    /** No straight way is less than nothing, no arc shorter than a tenth of a millimetre. */
    static RealVector mended(RealVector given) {
        RealVector mended = given.copy();
        for (int p = FIXED; p < given.getDimension(); p += EACH) {
            mended.setEntry(p, Math.max(0, given.getEntry(p)));
            mended.setEntry(p + 1, Math.max(SHORTEST_ARC_MM, given.getEntry(p + 1)));
        }
        return mended;
    }

    double[] parameters() {
        return parameters.clone();
    }

    /** The same with one bend more, which does not turn yet, at a way along it; empty where another bend is there. */
    Optional<BendChain> with(double beginMm, double runMm) {
        double passed = 0;
        for (int p = FIXED; p <= parameters.length; p += EACH) {
            boolean last = p == parameters.length;
            double straight = last ? Double.MAX_VALUE : parameters[p];
            double in = beginMm - passed;
            if (in >= 0 && in + runMm <= straight) {
                double[] more = new double[parameters.length + EACH];
                System.arraycopy(parameters, 0, more, 0, p);
                more[p] = in;
                more[p + 1] = runMm;
                System.arraycopy(parameters, p, more, p + EACH, parameters.length - p);
                if (!last) {
                    more[p + EACH] = straight - in - runMm;
                }
                return Optional.of(new BendChain(base, more));
            }
            passed += last ? 0 : straight + parameters[p + 1];
        }
        return Optional.empty();
    }

    /** For each point the two parts of its distance square to the line, mm. */
    double[] distances(List<Vector> points) {
        double[] distances = new double[2 * points.size()];
        double at = 0;
        for (int i = 0; i < points.size(); i++) {
            Vector point = placed(points.get(i));
            at = nearest(
                    point,
                    i == 0 ? 0 : at + points.get(i).minus(points.get(i - 1)).length());
            Frame frame = line.at(at);
            Vector away = point.minus(frame.place());
            distances[2 * i] = away.dot(frame.first());
            distances[2 * i + 1] = away.dot(frame.second());
        }
        return distances;
    }

    /** A point as it stands to a line that begins at the origin along the canal's first direction. */
    private Vector placed(Vector point) {
        Vector local = base.local(point);
        double x = local.x() - parameters[0];
        double y = local.y() - parameters[1];
        double z = local.z();
        double cos = Math.cos(parameters[2]);
        double sin = Math.sin(parameters[2]);
        double turnedX = x * cos - z * sin;
        double turnedZ = x * sin + z * cos;
        double cosY = Math.cos(parameters[3]);
        double sinY = Math.sin(parameters[3]);
        return new Vector(turnedX, y * cosY - turnedZ * sinY, y * sinY + turnedZ * cosY);
    }

    /** Where along the line the nearest place to a point is, from a place that is not far from it. */
    private double nearest(Vector point, double from) {
        double best = from;
        double step = LONGEST_STEP_MM;
        for (int i = 0; i < NEWTON && Math.abs(step) > SETTLED_MM; i++) {
            Frame frame = line.at(best);
            Vector away = point.minus(frame.place());
            double bent = line.firstAt(best) * away.dot(frame.first()) + line.secondAt(best) * away.dot(frame.second());
            double whole = away.dot(frame.tangent()) / Math.max(0.2, 1 - bent);
            step = Math.max(-LONGEST_STEP_MM, Math.min(LONGEST_STEP_MM, whole));
            best += step;
        }
        return best;
    }

    /** The pieces from the place nearest to the first point to that nearest to the last. */
    List<CanalPiece> pieces(List<Vector> points) {
        double from = nearest(placed(points.get(0)), 0);
        double to = from + depthsMm(points).get(points.size() - 1);
        double towards = pieces.stream()
                .filter(piece -> piece.angleDeg() != 0)
                .mapToDouble(CanalPiece::azimuthDeg)
                .findFirst()
                .orElse(0);
        List<CanalPiece> kept = new ArrayList<>();
        double start = Math.min(0, from);
        double begins = 0;
        for (CanalPiece piece : pieces) {
            double ends = begins + piece.lengthMm();
            double first = Math.max(from, kept.isEmpty() ? start : begins);
            double last = Math.min(to, ends);
            if (last - first > 1e-6) {
                double share = (last - first) / piece.lengthMm();
                boolean straight = piece.angleDeg() == 0;
                kept.add(new CanalPiece(
                        last - first,
                        straight ? 0 : piece.angleDeg() * Math.min(1, share),
                        straight ? 0 : Math.IEEEremainder(piece.azimuthDeg() - towards, 360)));
            }
            begins = ends;
        }
        return kept;
    }

    /** Ways along the line, from the first point, to the places nearest to the points, mm. */
    List<Double> depthsMm(List<Vector> points) {
        double from = nearest(placed(points.get(0)), 0);
        List<Double> depths = new ArrayList<>();
        double at = from;
        for (int i = 0; i < points.size(); i++) {
            at = nearest(
                    placed(points.get(i)),
                    i == 0 ? at : at + points.get(i).minus(points.get(i - 1)).length());
            depths.add(at - from);
        }
        return depths;
    }

    /**
     * What points are measured against: the first of them, the direction in which they set out and two square to it.
     *
     * @param lengthMm way from point to point
     */
    record Base(Vector origin, Vector first, Vector second, Vector along, double lengthMm) {
        static Base of(List<Vector> points) {
            double length = 0;
            for (int i = 1; i < points.size(); i++) {
                length += points.get(i).minus(points.get(i - 1)).length();
            }
            int reach = Math.max(1, points.size() / 6);
            Vector way = points.get(reach).minus(points.get(0));
            Vector along = way.times(1 / way.length());
            FitPlane plane = FitPlane.of(points);
            // the side to which they leave the first direction within their plane
            Vector aside = plane.across();
            Vector square = aside.plus(-aside.dot(along), along);
            if (square.length() < 0.1) {
                square = plane.along().plus(-plane.along().dot(along), along);
            }
            Vector first = square.times(1 / square.length());
            return new Base(points.get(0), first, along.cross(first), along, length);
        }

        /** A point by (first, second, along). */
        Vector local(Vector point) {
            Vector from = point.minus(origin);
            return new Vector(from.dot(first), from.dot(second), from.dot(along));
        }

        /** Bends that begin at given ways, turning so as to come nearest to the points where all turns are small. */
        BendChain trial(double[] begins, double runMm, List<Vector> points) {
            int bends = begins.length;
            RealMatrix model = new Array2DRowRealMatrix(points.size(), 2 + bends);
            RealVector x = new ArrayRealVector(points.size());
            RealVector y = new ArrayRealVector(points.size());
            double way = 0;
            for (int i = 0; i < points.size(); i++) {
                way += i == 0 ? 0 : points.get(i).minus(points.get(i - 1)).length();
                Vector local = local(points.get(i));
                x.setEntry(i, local.x());
                y.setEntry(i, local.y());
                model.setEntry(i, 0, 1);
                model.setEntry(i, 1, way);
                for (int b = 0; b < bends; b++) {
                    double in = Math.max(0, Math.min(runMm, way - begins[b]));
                    double after = Math.max(0, way - begins[b] - runMm);
                    model.setEntry(i, 2 + b, in * in / (2 * runMm) + after);
                }
            }
            SingularValueDecomposition parts = new SingularValueDecomposition(model);
            RealVector first = parts.getSolver().solve(x);
            RealVector second = parts.getSolver().solve(y);
            double[] parameters = new double[FIXED + EACH * bends];
            parameters[0] = first.getEntry(0);
            parameters[1] = second.getEntry(0);
            parameters[2] = Math.atan(first.getEntry(1));
            parameters[3] = Math.atan(second.getEntry(1));
            double passed = 0;
            for (int b = 0; b < bends; b++) {
                parameters[FIXED + EACH * b] = Math.max(0.05, begins[b] - passed);
                parameters[FIXED + EACH * b + 1] = runMm;
                parameters[FIXED + EACH * b + 2] = held(first.getEntry(2 + b));
                parameters[FIXED + EACH * b + 3] = held(second.getEntry(2 + b));
                passed = begins[b] + runMm;
            }
            return new BendChain(this, parameters);
        }

        /** A turn of one component, held to what an arc may turn. */
        private static double held(double turn) {
            return Math.max(-1.5, Math.min(1.5, Math.atan(turn)));
        }
    }
}
