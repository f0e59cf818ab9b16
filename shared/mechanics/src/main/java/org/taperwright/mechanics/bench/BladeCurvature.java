package org.taperwright.mechanics.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.bench.response.MomentCurvature;
import org.taperwright.mechanics.bench.response.Responses;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.properties.BladeSections;

/**
 * Curvature along an instrument by the moment-curvature of its sections: {@code kappa = k(M / d^3) / d}. Between two
 * stations the curves of a few blended sections are blended again, in between, by level. The turning of the flutes makes
 * every curvature greater by one over the elastic factor of {@link ShaftedBlade}: exact in the elastic range, an
 * assumption beyond it. Strains are those of a straight bar under the same moment times the factor on the peak von Mises
 * stress, on the same terms; that factor is not yet confirmed by a solid model.
 */
final class BladeCurvature implements CurvatureLaw {
    /** Blended sections whose curves are computed between two stations, counting one of the two. */
    private static final int BLENDS = 4;

    private final MomentCurvature[] below;
    private final MomentCurvature[] above;
    private final double[] share;
    private final double[] diameterMm;
    private final double[] turned;
    private final double[] peak;
    private final double[] other = new double[2];

    private BladeCurvature(int nodes) {
        this.below = new MomentCurvature[nodes];
        this.above = new MomentCurvature[nodes];
        this.share = new double[nodes];
        this.diameterMm = new double[nodes];
        this.turned = new double[nodes];
        this.peak = new double[nodes];
        Arrays.fill(turned, 1);
        Arrays.fill(peak, 1);
    }

    /** The curvature at the nodes of a grid. */
    static BladeCurvature of(RodGrid grid, Design design, Alloy alloy, BladeSections sections) {
        StressCurve curve = alloy.tension();
        BladeCurvature blade = of(grid, design, curve, level -> Responses.bending(sections.outlineAt(level), curve));
        ShaftedBlade shafted = ShaftedBlade.of(design, alloy, sections);
        for (int node = 0; node < grid.nodes(); node++) {
            double level = grid.levelMm(node);
            blade.turned[node] = 1 / shafted.bendingFactor(level);
            blade.peak[node] = shafted.peakStress(level).bending();
        }
        return blade;
    }

    /** The curvature of a blade that does not turn, about one axis of its sections. */
    static BladeCurvature about(double axis, RodGrid grid, Design design, StressCurve curve, BladeSections sections) {
        return of(grid, design, curve, level -> Responses.bendingAbout(sections.outlineAt(level), axis, curve));
    }

    private static BladeCurvature of(
            RodGrid grid, Design design, StressCurve curve, DoubleFunction<MomentCurvature> sectionAt) {
        TreeMap<Double, MomentCurvature> known = new TreeMap<>();
        for (double level : levels(design)) {
            known.put(level, sectionAt.apply(level));
        }
        MomentCurvature shaft = Responses.bending(RoundShaft.OUTLINE, curve);
        BladeCurvature blade = new BladeCurvature(grid.nodes());
        for (int node = 0; node < grid.nodes(); node++) {
            double level = grid.levelMm(node);
            blade.diameterMm[node] = design.diameterMm(level);
            if (level > design.workingPartMm()) {
                blade.below[node] = shaft;
                blade.above[node] = shaft;
            } else {
                blade.place(node, level, known);
            }
        }
        return blade;
    }

    private void place(int node, double level, TreeMap<Double, MomentCurvature> known) {
        var lower = known.floorEntry(level);
        var upper = known.ceilingEntry(level);
        below[node] = lower == null ? known.firstEntry().getValue() : lower.getValue();
        above[node] = upper == null ? known.lastEntry().getValue() : upper.getValue();
        if (lower != null && upper != null && upper.getKey() > lower.getKey()) {
            share[node] = (level - lower.getKey()) / (upper.getKey() - lower.getKey());
        }
    }

    private static List<Double> levels(Design design) {
        List<SectionStation> stations = design.sections();
        List<Double> levels = new ArrayList<>();
        for (int i = 0; i + 1 < stations.size(); i++) {
            double from = stations.get(i).levelMm();
            double to = stations.get(i + 1).levelMm();
            for (int k = 0; k < BLENDS; k++) {
                levels.add(from + (to - from) * k / BLENDS);
            }
        }
        levels.add(stations.get(stations.size() - 1).levelMm());
        return levels;
    }

    @Override
    public void at(int node, double momentNmm, double[] answer) {
        double d = diameterMm[node];
        double cube = d * d * d;
        below[node].at(momentNmm / cube, answer);
        if (above[node] != below[node]) {
            above[node].at(momentNmm / cube, other);
            answer[0] += share[node] * (other[0] - answer[0]);
            answer[1] += share[node] * (other[1] - answer[1]);
        }
        answer[0] *= turned[node] / d;
        answer[1] *= turned[node] / (cube * d);
    }

    double diameterMm(int node) {
        return diameterMm[node];
    }

    /** Greatest strain at a node under a moment that bends it to a curvature. */
    double strain(int node, double momentNmm, double curvature) {
        double d = diameterMm[node];
        double m = Math.abs(momentNmm) / (d * d * d);
        double per = below[node].strainPerCurvature(m);
        per += share[node] * (above[node].strainPerCurvature(m) - per);
        return peak[node] * per * Math.abs(curvature) / turned[node] * d;
    }
}
