package org.taperwright.shaping.passage.stroke;

/**
 * How finely a canal and an instrument are divided.
 *
 * @param spacingMm distance of nodes and of stations, mm
 * @param directions number of the wall's directions
 */
public record Mesh(double spacingMm, int directions) {
    /** That with which the method was tried. */
    public static final Mesh FINE = new Mesh(0.1, 72);
    /** For many samples: in the trials 2.5 times faster, transportation within 0.004 mm and the rest within 5 % of the fine. */
    public static final Mesh COARSE = new Mesh(0.2, 36);
}
