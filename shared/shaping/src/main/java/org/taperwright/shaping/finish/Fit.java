package org.taperwright.shaping.finish;

/**
 * How deep a round cone or needle passes: to the deepest place at which, there and everywhere before, its radius is within the largest
 * inscribed circle of every section that it passes, {@code R(z - s) <= rho(s)}.
 *
 * @param depthMm how deep its tip goes, mm
 * @param binds whether something stops it there, rather than that it was to go no deeper
 * @param bindDepthMm depth at which it is then held, mm; where it passes, that of its tip
 * @param gapMm room beside the tip, mm of radius
 */
public record Fit(double depthMm, boolean binds, double bindDepthMm, double gapMm) {
    private static final double GRID_MM = 0.01;
    private static final double TOUCH_MM = 1e-6;

    /**
     * How a cone fits.
     *
     * @param tipMm diameter at the tip; for a needle its outer diameter
     * @param taper taper, mm/mm; 0 for a needle
     * @param deepestMm how deep it is to go
     */
    public static Fit of(InscribedCircles circles, double tipMm, double taper, double deepestMm) {
        double end = Math.min(deepestMm, circles.endMm());
        int steps = (int) Math.floor(end / GRID_MM + 1e-9);
        // where it would be too wide at a depth s, its tip may go no deeper than s + (2 rho(s) - tip) / taper
        double furthest = Double.MAX_VALUE;
        double narrow = 0;
        for (int i = 0; i <= steps; i++) {
            double depth = i * GRID_MM;
            double room = 2 * (circles.radiusMm(depth) + TOUCH_MM) - tipMm;
            double tip = taper > 0 && room >= 0 ? depth + room / taper : room >= 0 ? Double.MAX_VALUE : -1;
            if (tip < furthest) {
                furthest = tip;
                narrow = depth;
            }
            if (depth > furthest) {
                double held = Math.max(0, i - 1) * GRID_MM;
                return new Fit(held, true, narrow, circles.radiusMm(held) - tipMm / 2);
            }
        }
        double depth = steps * GRID_MM;
        return new Fit(depth, false, depth, circles.radiusMm(depth) - tipMm / 2);
    }

    /** Volume of a cone within the canal, its tip at a depth, mm³: {@code pi/12 z (D^2 + D d + d^2)}. */
    public static double volumeMm3(double tipMm, double taper, double depthMm) {
        double wide = tipMm + taper * depthMm;
        return Math.PI / 12 * depthMm * (wide * wide + wide * tipMm + tipMm * tipMm);
    }
}
