package org.taperwright.mechanics.bench.response;

import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.alloy.StressCurve.Branch;
import org.taperwright.mechanics.properties.SectionProperties;

/**
 * Torque against twist of a section of unit diameter by a shear curve of straight stretches. Shear strain over the section
 * is taken as {@code gamma = theta g u^q} over an area {@code a} with u from 0 to 1, the power law that has
 *
 * <pre>int gamma^2 dA = J theta^2,   int gamma dA = t_p theta,   gamma_max = c J theta</pre>
 *
 * with the torsion constant J, the fully plastic factor t_p and the peak-shear factor c of the section; so
 * {@code q = (r - 1) / (2 - r)} with {@code r = c t_p}, {@code g = c J} and {@code a = t_p (q + 1) / g}. It is exact for a
 * circle under any law (q = 1/2), and for any section in the elastic range, at first yield and when fully plastic; between
 * them it lies up to 4 % below the elastic-plastic solution of a square (obstacle problem of the stress function). Where
 * the peak is so local that r would exceed {@value #STEEPEST}, the peak is lowered to that.
 *
 * <p>For a diameter d: {@code T = d^3 t(phi' d)}.
 */
public final class TorqueTwist {
    private static final int POINTS = 40;
    private static final double STEEPEST = 1.9;

    private final StressCurve shear;
    private final double power;
    private final double peak;
    private final double area;
    private final double fractureTorque;
    private final MonotoneCurve twist;

    private TorqueTwist(StressCurve shear, double power, double peak, double area, double fractureStrain) {
        this.shear = shear;
        this.power = power;
        this.peak = peak;
        this.area = area;
        double[] theta = twists(shear, fractureStrain / peak);
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
        double ratio = Math.min(section.peakShear() * section.plasticTorque(), STEEPEST);
        double power = (ratio - 1) / (2 - ratio);
        double peak = ratio / section.plasticTorque() * section.torsionConstant();
        double area = section.plasticTorque() * (power + 1) / peak;
        return new TorqueTwist(shear, power, peak, area, fractureStrain);
    }

    /** The elastic range in one, then by a constant ratio up to fracture. */
    private double[] twists(StressCurve curve, double last) {
        Branch branch = curve.tension();
        double first = branch.count() == 0 ? last / 2 : Math.min(branch.strain(0) / peak, last / 2);
        double[] theta = new double[POINTS];
        for (int i = 1; i < POINTS; i++) {
            theta[i] = first * Math.pow(last / first, (i - 1.0) / (POINTS - 2));
        }
        return theta;
    }

    /** Torque over d^3 at a twist (phi' d), MPa. */
    double torque(double theta) {
        double sum = shear.youngMpa() * theta * peak / (2 * power + 1);
        Branch branch = shear.tension();
        for (int k = 0; k < branch.count(); k++) {
            double u = within(branch.strain(k), theta);
            sum += branch.change(k, shear.youngMpa())
                    * (theta * peak * (1 - Math.pow(u, 2 * power + 1)) / (2 * power + 1)
                            - branch.strain(k) * (1 - Math.pow(u, power + 1)) / (power + 1));
        }
        return area * peak * sum;
    }

    private double stiffness(double theta) {
        double sum = shear.youngMpa();
        Branch branch = shear.tension();
        for (int k = 0; k < branch.count(); k++) {
            double u = within(branch.strain(k), theta);
            sum += branch.change(k, shear.youngMpa()) * (1 - Math.pow(u, 2 * power + 1));
        }
        return area * peak * peak / (2 * power + 1) * sum;
    }

    /** Share of the area that a strain is not yet reached in. */
    private double within(double strain, double theta) {
        double share = strain / (theta * peak);
        return share < 1 ? Math.pow(share, 1 / power) : 1;
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
