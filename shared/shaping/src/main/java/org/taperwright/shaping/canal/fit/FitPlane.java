package org.taperwright.shaping.canal.fit;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.taperwright.shaping.canal.Vector;

/**
 * The plane nearest to points: through their mean, along the first two principal directions.
 *
 * @param origin the mean
 * @param along the direction in which they reach furthest, from the first towards the last
 * @param across the next, square to it
 * @param flatnessMm root mean square distance of the points from the plane, mm
 */
record FitPlane(Vector origin, Vector along, Vector across, double flatnessMm) {
    static FitPlane of(List<Vector> points) {
        Vector mean = new Vector(0, 0, 0);
        for (Vector point : points) {
            mean = mean.plus(1.0 / points.size(), point);
        }
        double[][] rows = new double[points.size()][];
        for (int i = 0; i < rows.length; i++) {
            Vector from = points.get(i).minus(mean);
            rows[i] = new double[] {from.x(), from.y(), from.z()};
        }
        SingularValueDecomposition parts = new SingularValueDecomposition(new Array2DRowRealMatrix(rows));
        Vector along = column(parts, 0);
        if (points.get(points.size() - 1).minus(points.get(0)).dot(along) < 0) {
            along = along.times(-1);
        }
        double flatness = parts.getSingularValues()[2] / Math.sqrt(points.size());
        return new FitPlane(mean, along, column(parts, 1), flatness);
    }

    private static Vector column(SingularValueDecomposition parts, int at) {
        double[] column = parts.getV().getColumn(at);
        return new Vector(column[0], column[1], column[2]);
    }

    double[] inPlane(Vector point) {
        Vector from = point.minus(origin);
        return new double[] {from.dot(along), from.dot(across)};
    }
}
