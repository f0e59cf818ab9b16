package org.taperwright.shaping.finish;

import org.taperwright.mechanics.quantity.Band;
import org.taperwright.shaping.instrument.NeedleGauge;

/**
 * How deep a needle goes.
 *
 * @param gauge which
 * @param flexibleMm depth to which its circle fits, were it to bend freely, mm (computed)
 * @param stiffMm depth to which a steel one is pushed, mm (index)
 * @param stiffBand that depth at the least and the most favourable of the constants assumed, mm
 * @param stop what ends the way of the steel one
 * @param besideMm room beside it at the flexible depth, mm of radius
 */
public record NeedleReach(
        NeedleGauge gauge, double flexibleMm, double stiffMm, Band stiffBand, Stop stop, double besideMm) {
    /** What ends a needle's way. */
    public enum Stop {
        /** Where instrumentation ends. */
        END("the end"),
        /** The canal is too narrow. */
        WIDTH("the canal's width"),
        /** It would take more force. */
        FORCE("the force"),
        /** It would stay bent. */
        STRAIN("the strain");

        private final String word;

        Stop(String word) {
            this.word = word;
        }

        /** In words. */
        public String word() {
            return word;
        }
    }
}
