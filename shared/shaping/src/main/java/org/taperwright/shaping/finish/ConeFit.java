package org.taperwright.shaping.finish;

/**
 * How a cone fills a canal, standing computed, given the space.
 *
 * @param cone which
 * @param nominal how it fits as named
 * @param wide how it fits when it is as wide as the standard allows
 * @param thin likewise as thin
 * @param endGapMm from its tip to the depth to be filled, mm, as named
 * @param shareFilled its volume over the canal's to that depth, as named
 */
public record ConeFit(Cone cone, Fit nominal, Fit wide, Fit thin, double endGapMm, double shareFilled) {
    /** How a cone fits to a depth. */
    static ConeFit of(Cone cone, InscribedCircles circles, double endMm, double volumeMm3) {
        double tip = cone.tipMm();
        Fit nominal = Fit.of(circles, tip, cone.taper(), endMm);
        return new ConeFit(
                cone,
                nominal,
                Fit.of(circles, tip + cone.toleranceMm(), cone.taper(), endMm),
                Fit.of(circles, tip - cone.toleranceMm(), cone.taper(), endMm),
                endMm - nominal.depthMm(),
                Fit.volumeMm3(tip, cone.taper(), nominal.depthMm()) / volumeMm3);
    }
}
