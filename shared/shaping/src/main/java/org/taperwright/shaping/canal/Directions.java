package org.taperwright.shaping.canal;

/** Even directions about the centreline, {@code theta_k = 2 pi k / K} from azimuth 0, with their cosines and sines. */
public final class Directions {
    private final double[] cos;
    private final double[] sin;

    private Directions(int count) {
        cos = new double[count];
        sin = new double[count];
        for (int k = 0; k < count; k++) {
            cos[k] = Math.cos(2 * Math.PI * k / count);
            sin[k] = Math.sin(2 * Math.PI * k / count);
        }
    }

    /** A number of directions that 4 divides, so that both axes are among them. */
    public static Directions of(int count) {
        if (count < 8 || count % 4 != 0) {
            throw new IllegalArgumentException("directions come in fours, at least 8; got " + count);
        }
        return new Directions(count);
    }

    /** How many. */
    public int count() {
        return cos.length;
    }

    /** Angle of a direction, rad. */
    public double angle(int k) {
        return 2 * Math.PI * k / cos.length;
    }

    /** Angle between two neighbours, rad. */
    public double stepRad() {
        return 2 * Math.PI / cos.length;
    }

    /** Cosine of a direction. */
    public double cos(int k) {
        return cos[k];
    }

    /** Sine of a direction. */
    public double sin(int k) {
        return sin[k];
    }
}
