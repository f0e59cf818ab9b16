package org.taperwright.mechanics.properties;

import java.util.List;
import java.util.Optional;

/**
 * The helical factors along a blade for one Poisson's ratio: those of the section and of the twist
 * {@code t = 2 pi d turns per mm} at each level. Between two stations factors run through those of five blended sections.
 * Held to be local: the pitch and the diameter change little over a turn.
 */
public final class BladeHelix {
    private final BladeSections sections;
    private final List<List<HelicalAnalysis>> stretches;

    /**
     * Factors of sections.
     *
     * @param stretches for each station the analyses at even shares of the way to the next, one where nothing changes;
     *     none at all for a blade taken as straight
     */
    BladeHelix(BladeSections sections, List<List<HelicalAnalysis>> stretches) {
        this.sections = sections;
        this.stretches = List.copyOf(stretches);
    }

    /** The twist at a level, rad per diameter. */
    public double twistAt(double levelMm) {
        return 2 * Math.tan(sections.helixAngle(levelMm));
    }

    /** The stiffness factors at a level. */
    public HelicalFactors at(double levelMm) {
        Optional<List<HelicalAnalysis>> stretch = stretch(levelMm);
        if (stretch.isEmpty()) {
            return HelicalFactors.STRAIGHT;
        }
        double twist = twistAt(levelMm);
        double[] weights = weights(stretch.get().size(), sections.shareAt(levelMm));
        HelicalFactors sum = stretch.get().get(0).at(twist).times(weights[0]);
        for (int k = 1; k < weights.length; k++) {
            sum = sum.plus(stretch.get().get(k).at(twist).times(weights[k]));
        }
        return sum;
    }

    /** The peak-stress factors at a level, of the nearest section that was analysed. */
    public PeakStressFactors peakStressAt(double levelMm) {
        double share = sections.shareAt(levelMm);
        return stretch(levelMm)
                .map(stretch -> stretch.get((int) Math.round(share * (stretch.size() - 1))))
                .map(analysis -> analysis.peakStressAt(twistAt(levelMm)))
                .orElse(PeakStressFactors.STRAIGHT);
    }

    private Optional<List<HelicalAnalysis>> stretch(double levelMm) {
        return stretches.isEmpty() ? Optional.empty() : Optional.of(stretches.get(sections.stationBelow(levelMm)));
    }

    /** Lagrange's weights of values at even shares. */
    private static double[] weights(int count, double share) {
        double[] weights = new double[count];
        for (int k = 0; k < count; k++) {
            weights[k] = 1;
            for (int j = 0; j < count; j++) {
                if (j != k) {
                    weights[k] *= (share * (count - 1) - j) / (k - j);
                }
            }
        }
        return weights;
    }
}
