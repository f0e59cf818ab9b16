package org.taperwright.mechanics.bench;

import java.util.ArrayList;
import java.util.Collections;
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
            addSteps(design, ends.get(i - 1), ends.get(i), longestMm, lengths);
        }
        return laidOut(lengths, loadMm);
    }

    /**
     * Steps of a stretch of constant taper, from its upper end down: even where the longest length rules, growing with the
     * diameter where the taper does. So a cone that ends in a needle takes steps by the logarithm of its diameters' ratio.
     */
    private static void addSteps(Design design, double fromMm, double toMm, double longestMm, List<Double> lengths) {
        double from = design.diameterMm(fromMm + INSIDE_MM);
        double to = design.diameterMm(toMm - INSIDE_MM);
        double length = toMm - fromMm;
        double taper = Math.abs(to - from) / length;
        double thin = Math.min(from, to);
        double thick = Math.max(from, to);
        // the diameter up to which the taper asks for shorter steps
        double bound = Math.max(thin, Math.min(thick, taper * longestMm / TAPER_SHARE));
        List<Double> steps = new ArrayList<>();
        int graded = (int) Math.ceil(Math.log(bound / thin) / TAPER_SHARE - 1e-9);
        double reached = 0;
        for (int k = 1; k <= graded; k++) {
            double end = k == graded && bound == thick
                    ? length
                    : (thin * Math.pow(bound / thin, (double) k / graded) - thin) / taper;
            steps.add(end - reached);
            reached = end;
        }
        int even = bound < thick || graded == 0 ? (int) Math.ceil((length - reached) / longestMm - 1e-9) : 0;
        for (int k = 0; k < even; k++) {
            steps.add((length - reached) / even);
        }
        if (to > from) {
            Collections.reverse(steps);
        }
        lengths.addAll(steps);
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
