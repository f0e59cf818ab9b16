package org.taperwright.shaping.finish;

import org.taperwright.shaping.canal.Lumen;

/** The largest circle inside each section of an open space, wherever its centre; its radius is linear between stations. */
public final class InscribedCircles {
    private static final double FIRST_STEP_SHARE = 0.25;
    private static final double LAST_STEP_MM = 1e-6;

    private final double spacingMm;
    private final double[] radius;

    private InscribedCircles(double spacingMm, double[] radius) {
        this.spacingMm = spacingMm;
        this.radius = radius;
    }

    /** The circles of an open space. */
    public static InscribedCircles of(Lumen lumen) {
        double[] radius = new double[lumen.stations()];
        for (int j = 0; j < radius.length; j++) {
            radius[j] = new Section(lumen, j).largest();
        }
        return new InscribedCircles(lumen.spacingMm(), radius);
    }

    /** Depth to which they are known, mm. */
    public double endMm() {
        return spacingMm * (radius.length - 1);
    }

    /** Radius at a depth, mm. */
    public double radiusMm(double depthMm) {
        double place = Math.max(0, Math.min(radius.length - 1, depthMm / spacingMm));
        int below = Math.min((int) place, radius.length - 2);
        return radius[below] + (place - below) * (radius[below + 1] - radius[below]);
    }

    /** One section by its points; the least distance to them rises towards the circle's centre, so going uphill finds that. */
    private static final class Section {
        private final double[] x;
        private final double[] y;

        Section(Lumen lumen, int station) {
            int count = lumen.directions().count();
            x = new double[count];
            y = new double[count];
            for (int k = 0; k < count; k++) {
                x[k] = lumen.radiusMm(station, k) * lumen.directions().cos(k);
                y[k] = lumen.radiusMm(station, k) * lumen.directions().sin(k);
            }
        }

        double largest() {
            double cx = 0;
            double cy = 0;
            double best = distance(cx, cy);
            for (double step = FIRST_STEP_SHARE * best; step > LAST_STEP_MM; step /= 2) {
                boolean better = true;
                while (better) {
                    better = false;
                    for (int d = 0; d < 8; d++) {
                        double nx = cx + step * Math.cos(d * Math.PI / 4);
                        double ny = cy + step * Math.sin(d * Math.PI / 4);
                        double there = distance(nx, ny);
                        if (there > best + LAST_STEP_MM * LAST_STEP_MM) {
                            best = there;
                            cx = nx;
                            cy = ny;
                            better = true;
                        }
                    }
                }
            }
            return best;
        }

        private double distance(double px, double py) {
            double least = Double.MAX_VALUE;
            for (int k = 0; k < x.length; k++) {
                double dx = px - x[k];
                double dy = py - y[k];
                least = Math.min(least, dx * dx + dy * dy);
            }
            return Math.sqrt(least);
        }
    }
}
