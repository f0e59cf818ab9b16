package org.taperwright.mechanics.properties.contour;

/** The largest circle about the instrument's axis inside an outline. */
public final class InnerCircle {
    private InnerCircle() {}

    /** Its diameter, in d; 0 where the axis lies outside the material. */
    public static double core(Contour contour) {
        double least = Double.MAX_VALUE;
        double winding = 0;
        for (int i = 0; i < contour.size(); i++) {
            least = Math.min(least, distance(contour, i));
            winding += turned(contour, i);
        }
        return winding > Math.PI ? 2 * least : 0;
    }

    private static double distance(Contour contour, int i) {
        double x = contour.startX(i);
        double y = contour.startY(i);
        double ends = Math.min(Math.hypot(x, y), Math.hypot(x + contour.deltaX(i), y + contour.deltaY(i)));
        if (contour.circular(i)) {
            double cx = contour.centreX(i);
            double cy = contour.centreY(i);
            double away = Math.hypot(cx, cy);
            // the near and the far point of the circle lie on the line through both centres
            double near = contour.covers(i, Math.atan2(-cy, -cx)) ? Math.abs(contour.radius(i) - away) : ends;
            return Math.min(ends, near);
        }
        double l = contour.length(i);
        double t = -(x * contour.deltaX(i) + y * contour.deltaY(i)) / (l * l);
        return t > 0 && t < 1 ? Math.abs(x * contour.deltaY(i) - y * contour.deltaX(i)) / l : ends;
    }

    /** Angle by which a piece turns about the axis, summed over parts short enough to be told apart from a full turn. */
    private static double turned(Contour contour, int i) {
        int parts = contour.circular(i) ? (int) Math.ceil(Math.abs(contour.sweep(i)) / 0.1) : 1;
        double sum = 0;
        BoundaryPoint a = contour.at(i, 0);
        for (int k = 1; k <= parts; k++) {
            BoundaryPoint b = contour.at(i, (double) k / parts);
            sum += Math.atan2(a.x() * b.y() - a.y() * b.x(), a.x() * b.x() + a.y() * b.y());
            a = b;
        }
        return sum;
    }
}
