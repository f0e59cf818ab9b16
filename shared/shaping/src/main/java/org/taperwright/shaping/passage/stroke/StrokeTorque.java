package org.taperwright.shaping.passage.stroke;

import java.util.Arrays;

/**
 * Torque of a stroke, N mm, by level: what acts apical of it,
 *
 * <pre>T(x) = sum [u_c dV / (2 pi n) + mu |p| R ds + k_e edges share R ds]</pre>
 *
 * with the volume dV cut in n turns, the load p per length, and the share of directions in which the wall is engaged. Only what is
 * cut for each turn counts, not how fast. Standing: index; the size lies within a factor of three either way, most of it by the
 * energy of cutting.
 */
public final class StrokeTorque {
    /** Level below which a torsional reserve says nothing, mm. */
    public static final double RESERVE_FROM_MM = 0.5;

    /** No torque. */
    static final StrokeTorque NONE = new StrokeTorque(new double[0], new double[0], 0, 0, Double.POSITIVE_INFINITY);

    private final double[] level;
    private final double[] apical;
    private final double cuttingNmm;
    private final double frictionNmm;
    private final double reserve;

    StrokeTorque(double[] level, double[] apical, double cuttingNmm, double frictionNmm, double reserve) {
        this.level = level;
        this.apical = apical;
        this.cuttingNmm = cuttingNmm;
        this.frictionNmm = frictionNmm;
        this.reserve = reserve;
    }

    /** Torque that cutting takes: energy of a volume spread over turns, N mm. */
    public static double cuttingNmm(double energyMpa, double volumeMm3, double turns) {
        return energyMpa * volumeMm3 / (2 * Math.PI * turns);
    }

    /** All of it, N mm. */
    public double totalNmm() {
        return apical.length == 0 ? 0 : apical[apical.length - 1];
    }

    /** What cutting takes, N mm. */
    public double cuttingNmm() {
        return cuttingNmm;
    }

    /** What friction takes, N mm. */
    public double frictionNmm() {
        return frictionNmm;
    }

    /** Least ratio of the torque borne to the torque that acts, from 0.5 mm on; infinite where none acts. */
    public double reserve() {
        return reserve;
    }

    /** Levels, mm from the tip, rising. */
    public double[] levelsMm() {
        return level.clone();
    }

    /** Torque apical of each level, N mm. */
    public double[] apicalNmm() {
        return Arrays.copyOf(apical, apical.length);
    }
}
