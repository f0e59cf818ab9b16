package org.taperwright.shaping.placement;

/**
 * A stretch over which an instrument leans on the wall.
 *
 * @param depthMm centre, weighted by the load, mm from the orifice
 * @param levelMm where on the instrument that is, mm from the tip
 * @param forceN size of the net force
 * @param first net force on the wall towards azimuth 0, N
 * @param second net force on the wall towards azimuth 90 degrees, N
 * @param side which wall of the bend it is
 */
public record ContactZone(double depthMm, double levelMm, double forceN, double first, double second, Side side) {
    /** A wall by the bend nearest to it. */
    public enum Side {
        /** The wall towards the inside of the bend. */
        INNER("inner"),
        /** The wall towards the outside of the bend. */
        OUTER("outer"),
        /** A wall to the side of the bend's plane. */
        ASIDE("aside"),
        /** There is no bend to tell sides by. */
        STRAIGHT("straight");

        private final String word;

        Side(String word) {
            this.word = word;
        }

        /** The word shown to people. */
        public String word() {
            return word;
        }
    }
}
