package org.taperwright.mechanics.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;

/**
 * Steps along a rod from its loaded end down to its clamp, short against the length {@code d / taper} over which the
 * stiffness changes. No step crosses a place where the diameter or the section
 * changes abruptly, so the fields within a step are smooth. Each step has three nodes (its upper end, middle and lower
 * end); node {@code 3 i + j} is node j of step i.
 */
final class RodGrid {
    /** How far end nodes stand inside their step, mm, so that a jump belongs to the right side. */
    private static final double INSIDE_MM = 1e-10;

    /** Longest step, mm, and as a share of {@code d / taper}: both for a relative error of about 1e-7 in the moment. */
    private static final double LONGEST_MM = 0.25;

    private static final double TAPER_SHARE = 1.0 / 40;

    private final double[] length;
    private final double[] level;

    private RodGrid(double[] length, double[] level) {
        this.length = length;
        this.level = level;
    }

    /** Steps between a clamp and a load on a design. */
    static RodGrid between(Design design, double clampMm, double loadMm) {
        return between(design, clampMm, loadMm, LONGEST_MM);
    }

    /** Steps between a clamp and a load on a design, none longer than the given length. */
    static RodGrid between(Design design, double clampMm, double loadMm, double longestMm) {
        TreeSet<Double> breaks = breaks(design);
        List<Double> ends = new ArrayList<>(breaks.subSet(clampMm, false, loadMm, false));
        ends.add(0, clampMm);
        ends.add(loadMm);
        List<Double> lengths = new ArrayList<>();
        for (int i = ends.size() - 1; i > 0; i--) {
            double stretch = ends.get(i) - ends.get(i - 1);
            double step = Math.min(longestMm, taperedStepMm(design, ends.get(i - 1), ends.get(i)));
            int steps = (int) Math.ceil(stretch / step - 1e-9);
            for (int k = 0; k < steps; k++) {
                lengths.add(stretch / steps);
            }
        }
        return laidOut(lengths, loadMm);
    }

    /** Between two breaks the taper is constant; the thinner end asks for the shorter step. */
    private static double taperedStepMm(Design design, double fromMm, double toMm) {
        double from = design.diameterMm(fromMm + INSIDE_MM);
        double to = design.diameterMm(toMm - INSIDE_MM);
        double taper = Math.abs(to - from) / (toMm - fromMm);
        return TAPER_SHARE * Math.min(from, to) / Math.max(taper, 1e-9);
    }

    private static RodGrid laidOut(List<Double> lengths, double loadMm) {
        double[] length = new double[lengths.size()];
        double[] level = new double[3 * lengths.size()];
        double top = loadMm;
        for (int i = 0; i < length.length; i++) {
            length[i] = lengths.get(i);
            level[3 * i] = top - INSIDE_MM;
            level[3 * i + 1] = top - length[i] / 2;
            top -= length[i];
            level[3 * i + 2] = top + INSIDE_MM;
        }
        return new RodGrid(length, level);
    }

    private static TreeSet<Double> breaks(Design design) {
        TreeSet<Double> breaks = new TreeSet<>();
        design.taper().stream().map(TaperSegment::toMm).forEach(breaks::add);
        design.sections().stream().map(SectionStation::levelMm).forEach(breaks::add);
        design.flutes().stream().map(FluteStation::levelMm).forEach(breaks::add);
        return breaks;
    }

    int steps() {
        return length.length;
    }

    /** Length of the whole rod, mm. */
    double lengthMm() {
        return java.util.Arrays.stream(length).sum();
    }

    int nodes() {
        return level.length;
    }

    double lengthMm(int step) {
        return length[step];
    }

    /** Distance of a node from the instrument's tip, mm. */
    double levelMm(int node) {
        return level[node];
    }
}
