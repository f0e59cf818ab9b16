package org.taperwright.mechanics.bench.response;

import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.alloy.StressCurve.Branch;
import org.taperwright.mechanics.properties.SectionProperties;

/**
 * Torque against twist of a section of unit diameter by a shear curve of straight stretches. A curve of straight stretches
 * is a sum of elastic-perfectly plastic ones, and each of those takes the torque {@code k t_p h(x)}, with the twist x over that
 * at first yield, the fully plastic factor t_p, the torsion constant J and the peak-shear factor c of the section:
 *
 * <pre>h(x) = x / r                            up to first yield,  r = c t_p
 * h(x) = 1 - A / x^2 - C / x^3 + B / x^6    beyond it</pre>
 *
 * The elastic range and the fully plastic torque are exact; A and B make h and its slope run on at first yield. Towards the
 * fully plastic torque what stays elastic lies along the ridges of the sand heap, with a width that goes with 1/x: hence
 * the inverse square. A circle has no ridges; there r = 4/3, A = B = 0 and C = 1/4 are exact (Nadai). C falls with r from there
 * through its value for a square, fitted to the elastic-plastic solution (obstacle problem of the stress function): within
 * 0.6 % of it for a square. Where the peak is so local that r exceeds {@value #STEEPEST}, the shape of h is that for
 * {@value #STEEPEST}.
 *
 * <p>The most strained fibre is followed by the elastic peak, with r up to {@value #STEEPEST_PEAK}. For a diameter d:
 * {@code T = d^3 t(phi' d)}.
 */
public final class TorqueTwist {
    private static final int POINTS = 40;
    /** Above that a curve of this shape would not bend one way only. */
    private static final double STEEPEST = 1.66;

    private static final double STEEPEST_PEAK = 1.9;
    private static final double ROUND = 4.0 / 3;
    /** Fitted to the square. */
    private static final double RIDGES = 0.746;

    private final StressCurve shear;
    private final double torsion;
    private final double plastic;
    private final double ratio;
    private final double square;
    private final double cube;
    private final double sixth;
    private final double fractureTorque;
    private final MonotoneCurve twist;

    private TorqueTwist(SectionProperties section, StressCurve shear, double fractureStrain) {
        this.shear = shear;
        this.torsion = section.torsionConstant();
        this.plastic = section.plasticTorque();
        double whole = section.peakShear() * plastic;
        this.ratio = Math.max(ROUND, Math.min(whole, STEEPEST));
        this.cube = 0.25 * (1 - RIDGES * (ratio - ROUND));
        this.sixth = (2 - 3 / ratio + cube) / 4;
        this.square = 1 - 1 / ratio - cube + sixth;
        double peak = Math.min(whole, STEEPEST_PEAK) / plastic * torsion;
        double[] theta = twists(fractureStrain / peak);
        double[] torque = new double[theta.length];
        double[] compliance = new double[theta.length];
        for (int i = 0; i < theta.length; i++) {
            torque[i] = torque(theta[i]);
            compliance[i] = 1 / stiffness(theta[i]);
        }
        this.fractureTorque = torque[theta.length - 1];
        this.twist = MonotoneCurve.through(torque, theta, compliance);
    }

    /** Twists a section by a shear curve up to a shear strain at which it breaks. */
    public static TorqueTwist of(SectionProperties section, StressCurve shear, double fractureStrain) {
        return new TorqueTwist(section, shear, fractureStrain);
    }

    /** The elastic range in one, then by a constant ratio up to fracture. */
    private double[] twists(double last) {
        Branch branch = shear.tension();
        double first = branch.count() == 0 ? last / 2 : Math.min(firstYield(branch.strain(0)), last / 2);
        double[] theta = new double[POINTS];
        for (int i = 1; i < POINTS; i++) {
            theta[i] = first * Math.pow(last / first, (i - 1.0) / (POINTS - 2));
        }
        return theta;
    }

    /** Twist at which the shape's peak reaches a shear strain. */
    private double firstYield(double strain) {
        return strain * plastic / (ratio * torsion);
    }

    /** Torque over d^3 at a twist (phi' d), MPa. */
    double torque(double theta) {
        double torque = shear.youngMpa() * torsion * theta;
        Branch branch = shear.tension();
        for (int k = 0; k < branch.count(); k++) {
            double x = theta / firstYield(branch.strain(k));
            if (x > 1) {
                double inverse = 1 / (x * x);
                double h = 1 - inverse * (square + cube / x - sixth * inverse * inverse);
                torque += branch.change(k, shear.youngMpa()) * (torsion * theta - plastic * branch.strain(k) * h);
            }
        }
        return torque;
    }

    private double stiffness(double theta) {
        double stiffness = shear.youngMpa() * torsion;
        Branch branch = shear.tension();
        for (int k = 0; k < branch.count(); k++) {
            double x = theta / firstYield(branch.strain(k));
            if (x > 1) {
                double inverse = 1 / (x * x);
                double slope = inverse / x * (2 * square + 3 * cube / x - 6 * sixth * inverse * inverse);
                stiffness += branch.change(k, shear.youngMpa()) * torsion * (1 - ratio * slope);
            }
        }
        return stiffness;
    }

    /** Torque over d^3 at which the most strained fibre breaks, MPa. */
    public double fractureTorque() {
        return fractureTorque;
    }

    /** Twist (phi' d) under a torque over d^3. */
    public double twist(double torque) {
        return twist.at(torque);
    }
}
