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
        int passed = 0;
        double stopped = -1;
        while (passed < steps && stopped < 0) {
            stopped = stopped(circles, tipMm, taper, (passed + 1) * GRID_MM);
            passed += stopped < 0 ? 1 : 0;
        }
        double depth = passed * GRID_MM;
        return new Fit(depth, stopped >= 0, stopped >= 0 ? stopped : depth, circles.radiusMm(depth) - tipMm / 2);
    }

    /** The first depth at which a cone with its tip at a depth is too wide; -1 where there is none. */
    private static double stopped(InscribedCircles circles, double tipMm, double taper, double tipDepthMm) {
        int places = (int) Math.round(tipDepthMm / GRID_MM);
        for (int i = 0; i <= places; i++) {
            double depth = Math.min(tipDepthMm, i * GRID_MM);
            if ((tipMm + taper * (tipDepthMm - depth)) / 2 > circles.radiusMm(depth) + TOUCH_MM) {
                return depth;
            }
        }
        return -1;
    }

    /** Volume of a cone within the canal, its tip at a depth, mm³: {@code pi/12 z (D^2 + D d + d^2)}. */
    public static double volumeMm3(double tipMm, double taper, double depthMm) {
        double wide = tipMm + taper * depthMm;
        return Math.PI / 12 * depthMm * (wide * wide + wide * tipMm + tipMm * tipMm);
    }
}
