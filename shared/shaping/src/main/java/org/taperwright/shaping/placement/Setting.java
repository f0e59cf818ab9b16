package org.taperwright.shaping.placement;

/**
 * How an instrument is held in a canal.
 *
 * @param tipDepthMm depth of the tip from the orifice, mm
 * @param tiltFirst slope of the handle's axis towards azimuth 0, rad
 * @param tiltSecond slope of the handle's axis towards azimuth 90 degrees, rad
 */
public record Setting(double tipDepthMm, double tiltFirst, double tiltSecond) {
    /** The handle on the access axis. */
    public static Setting straight(double tipDepthMm) {
        return new Setting(tipDepthMm, 0, 0);
    }
}
