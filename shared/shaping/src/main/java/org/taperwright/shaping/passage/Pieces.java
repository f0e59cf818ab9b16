package org.taperwright.shaping.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * Cuts a stretch of depth into pieces in which the order of several diameters does not change.
 *
 * @param knotsMm depths between which every diameter is linear, in any order
 * @param diametersMm the diameters by depth
 */
record Pieces(List<Double> knotsMm, List<DoubleUnaryOperator> diametersMm) {

    /** The pieces of a stretch, by rising depth; none where it is empty. */
    List<StepGeometry.Stretch> of(double fromMm, double toMm) {
        if (!(fromMm < toMm)) {
            return List.of();
        }
        TreeSet<Double> cuts = new TreeSet<>(new TreeSet<>(knotsMm).subSet(fromMm, true, toMm, true));
        cuts.add(fromMm);
        cuts.add(toMm);
        for (StepGeometry.Stretch piece : between(cuts)) {
            addCrossings(cuts, piece);
        }
        return between(cuts);
    }

    private void addCrossings(TreeSet<Double> cuts, StepGeometry.Stretch piece) {
        // measured inside the piece: a working part may begin or end at its border with a jump
        double span = piece.toMm() - piece.fromMm();
        double low = piece.fromMm() + span / 4;
        double high = piece.toMm() - span / 4;
        double[] atLow =
                diametersMm.stream().mapToDouble(d -> d.applyAsDouble(low)).toArray();
        double[] atHigh =
                diametersMm.stream().mapToDouble(d -> d.applyAsDouble(high)).toArray();
        for (int i = 0; i < atLow.length; i++) {
            for (int j = 0; j < i; j++) {
                double gapLow = atLow[i] - atLow[j];
                double gapHigh = atHigh[i] - atHigh[j];
                if (gapLow != gapHigh) {
                    double crossing = low + (high - low) * gapLow / (gapLow - gapHigh);
                    if (crossing > piece.fromMm() && crossing < piece.toMm()) {
                        cuts.add(crossing);
                    }
                }
            }
        }
    }

    private static List<StepGeometry.Stretch> between(TreeSet<Double> cuts) {
        List<StepGeometry.Stretch> pieces = new ArrayList<>();
        double from = cuts.first();
        for (double to : cuts.tailSet(from, false)) {
            pieces.add(new StepGeometry.Stretch(from, to));
            from = to;
        }
        return pieces;
    }
}
