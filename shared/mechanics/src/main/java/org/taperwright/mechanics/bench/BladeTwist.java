package org.taperwright.mechanics.bench;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.bench.response.TorqueTwist;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.SectionProperties;

/**
 * The torque-twist of each level of an instrument between two levels, on the nodes of a {@link RodGrid}. The turning of the
 * flutes makes every twist less by the elastic factor of {@link ShaftedBlade}: exact in the elastic range, an assumption
 * beyond it. The peak shear in the elastic range is less or more by the factor on the peak stress, which is not yet
 * confirmed by a solid model; the torque at fracture is that of a straight bar.
 */
final class BladeTwist {
    private final RodGrid grid;
    private final Alloy alloy;
    private final double[] diameterMm;
    private final SectionProperties[] section;
    private final TorqueTwist[] response;
    private final double[] turned;
    private final double[] peak;

    private BladeTwist(RodGrid grid, Alloy alloy) {
        this.grid = grid;
        this.alloy = alloy;
        this.diameterMm = new double[grid.nodes()];
        this.section = new SectionProperties[grid.nodes()];
        this.response = new TorqueTwist[grid.nodes()];
        this.turned = new double[grid.nodes()];
        this.peak = new double[grid.nodes()];
    }

    static BladeTwist of(Design design, Alloy alloy, BladeSections sections, double fromMm, double toMm) {
        BladeTwist blade = new BladeTwist(RodGrid.between(design, fromMm, toMm), alloy);
        StressCurve shear = alloy.shear();
        double fracture = alloy.constant(Fracture.SHEAR_STRAIN.name());
        ShaftedBlade shafted = ShaftedBlade.of(design, alloy, sections);
        Map<SectionProperties, TorqueTwist> known = new HashMap<>();
        for (int node = 0; node < blade.nodes(); node++) {
            double level = blade.levelMm(node);
            SectionProperties here = shafted.section(level);
            blade.diameterMm[node] = shafted.diameterMm(level);
            blade.section[node] = here;
            blade.turned[node] = 1 / shafted.torsionFactor(level);
            blade.peak[node] = shafted.peakStress(level).torsion();
            blade.response[node] = known.computeIfAbsent(here, key -> TorqueTwist.of(key, shear, fracture));
        }
        return blade;
    }

    int nodes() {
        return grid.nodes();
    }

    double levelMm(int node) {
        return grid.levelMm(node);
    }

    double diameterMm(int node) {
        return diameterMm[node];
    }

    SectionProperties section(int node) {
        return section[node];
    }

    /** The c of {@code tau_max = c T / d^3}, the turning of the flutes counted. */
    double peakShear(int node) {
        return section[node].peakShear() * peak[node];
    }

    double fractureTorqueNmm(int node) {
        return response[node].fractureTorque() * Math.pow(diameterMm[node], 3);
    }

    /** The node that breaks at the least torque. */
    int weakestNode() {
        int weakest = 0;
        for (int node = 1; node < nodes(); node++) {
            weakest = fractureTorqueNmm(node) < fractureTorqueNmm(weakest) ? node : weakest;
        }
        return weakest;
    }

    /** Elastic twist per torque, rad per N mm. */
    double elasticTwistRadPerNmm() {
        double[] rate = new double[nodes()];
        for (int node = 0; node < rate.length; node++) {
            double fourth = Math.pow(diameterMm[node], 4);
            rate[node] = turned[node] / (alloy.shearModulusMpa() * section[node].torsionConstant() * fourth);
        }
        return along(rate);
    }

    /** Angle between the ends under a torque up to that at fracture, rad. */
    double angle(double torqueNmm) {
        double[] rate = new double[nodes()];
        for (int node = 0; node < rate.length; node++) {
            double d = diameterMm[node];
            rate[node] = turned[node] * response[node].twist(torqueNmm / (d * d * d)) / d;
        }
        return along(rate);
    }

    /** Torque at an angle between the ends, up to that at fracture, N mm. */
    double torqueNmm(double angle, double fractureNmm) {
        if (angle <= 0) {
            return 0;
        }
        if (angle >= angle(fractureNmm)) {
            return fractureNmm;
        }
        return new BrentSolver(1e-9, 1e-9 * fractureNmm).solve(200, torque -> angle(torque) - angle, 0, fractureNmm);
    }

    /** Simpson's rule on the grid's steps. */
    private double along(double[] rate) {
        double sum = 0;
        for (int step = 0; step < grid.steps(); step++) {
            int node = 3 * step;
            sum += grid.lengthMm(step) / 6 * (rate[node] + 4 * rate[node + 1] + rate[node + 2]);
        }
        return sum;
    }
}
