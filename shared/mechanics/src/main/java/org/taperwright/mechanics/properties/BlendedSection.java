package org.taperwright.mechanics.properties;

import java.util.Arrays;
import java.util.TreeMap;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.properties.contour.PlainOutline;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.work.BoundedCache;

/**
 * The section on its way from one outline to another. Its numbers are computed at a few even shares, twice as many until
 * curves by Akima's splines meet the new ones to a thousandth (a few per cent in peak shear) or the work allowed is spent:
 * at most {@value #MOST_INTERVALS} intervals. Outlines of many pieces are made plain first, within 2e-5 of the diameter
 * where they are smooth.
 */
final class BlendedSection {
    static final int MOST_INTERVALS = 16;

    private static final int FIRST_INTERVALS = 4;
    private static final int MOST_PIECES_OF_END = 100;
    private static final int MOST_PIECES = 150;
    /** More are made fewer before a mesh is laid. */
    private static final int MOST_CORNERS = 60;
    /** Share of a number within which a spline must meet it at the middles before its intervals are small enough. */
    private static final double CLOSE = 1e-3;

    private static final double CLOSE_PEAK = 0.02;
    private static final double SWING = 0.05;
    private static final int VALUES = 15;
    private static final int ANGLE = 5;
    private static final int TORSION = 7;
    private static final int PEAK = 8;
    private static final int[] WATCHED = {0, 3, 4, TORSION, 9, PEAK};
    private static final BoundedCache<Ends, BlendedSection> CACHE = new BoundedCache<>(64);

    private final Ends ends;
    private final Outline plainFirst;
    private final Outline plainSecond;
    private final TreeMap<Double, SectionProperties> samples = new TreeMap<>();
    private PolynomialSplineFunction[] curves = {};
    private final double[] least = new double[VALUES];
    private final double[] most = new double[VALUES];
    private final boolean singular;

    private record Ends(Outline first, Outline second, int mostIntervals) {}

    /**
     * Between two outlines that have numbers.
     *
     * @param mostIntervals a power of two up to {@value #MOST_INTERVALS}
     */
    static BlendedSection between(Outline first, Outline second, int mostIntervals) {
        return CACHE.get(new Ends(first, second, mostIntervals), BlendedSection::new);
    }

    /** About how long one analysis of a section halfway takes, in halves of a millisecond: its corners decide. */
    static int effort(Outline first, Outline second) {
        Outline halfway = plain(
                PlainOutline.ofPieces(first, MOST_PIECES_OF_END),
                PlainOutline.ofPieces(second, MOST_PIECES_OF_END),
                0.5);
        return 16 + Math.min(MOST_CORNERS, PlainOutline.corners(Contour.of(halfway)));
    }

    private BlendedSection(Ends ends) {
        this.ends = ends;
        plainFirst = PlainOutline.ofPieces(ends.first, MOST_PIECES_OF_END);
        plainSecond = PlainOutline.ofPieces(ends.second, MOST_PIECES_OF_END);
        int intervals = Math.min(FIRST_INTERVALS, ends.mostIntervals);
        for (int k = 0; k <= intervals; k++) {
            sample((double) k / intervals);
        }
        fit();
        boolean close = false;
        while (!close && intervals < ends.mostIntervals) {
            close = true;
            for (int k = 0; k < intervals; k++) {
                double share = (k + 0.5) / intervals;
                close &= sample(share) && close(share);
            }
            intervals *= 2;
            fit();
        }
        singular = samples.values().stream().anyMatch(SectionProperties::peakShearSingular);
    }

    /** The outline at a share of the way. */
    Outline outline(double share) {
        return share <= 0 || share >= 1
                ? Sections.blend(ends.first, ends.second, share)
                : plain(plainFirst, plainSecond, share);
    }

    private static Outline plain(Outline first, Outline second, double share) {
        return PlainOutline.ofPieces(Sections.blend(first, second, share), MOST_PIECES);
    }

    /** Computes the numbers at a share; whether they can be. */
    private boolean sample(double share) {
        Outline outline = outline(share);
        boolean sound = SectionAnalysis.fault(outline).isEmpty();
        if (sound) {
            samples.put(share, SectionAnalysis.of(outline));
        }
        return sound;
    }

    /** Whether the curves meet the numbers computed at a share since. */
    private boolean close(double share) {
        double[] sample = values(samples.get(share));
        for (int v : WATCHED) {
            double allowed = (v == PEAK ? CLOSE_PEAK : CLOSE) * Math.abs(sample[v]);
            if (Math.abs(curves[v].value(share) - sample[v]) > allowed) {
                return false;
            }
        }
        return true;
    }

    private void fit() {
        double[] at = samples.keySet().stream().mapToDouble(Double::doubleValue).toArray();
        double[][] values = new double[VALUES][at.length];
        for (int k = 0; k < at.length; k++) {
            double[] sample = values(samples.get(at[k]));
            for (int v = 0; v < VALUES; v++) {
                values[v][k] = sample[v];
            }
        }
        unwind(values[ANGLE]);
        curves = new PolynomialSplineFunction[VALUES];
        for (int v = 0; v < VALUES; v++) {
            curves[v] = curve(at, values[v]);
            bound(v, values[v]);
        }
    }

    /** Splines swing beyond their points where those jump; what is never negative stays near what was computed. */
    private void bound(int v, double[] values) {
        double low = Arrays.stream(values).min().orElseThrow();
        double high = Arrays.stream(values).max().orElseThrow();
        boolean free = v == ANGLE || low < 0;
        least[v] = free ? Double.NEGATIVE_INFINITY : (1 - SWING) * low;
        most[v] = free ? Double.POSITIVE_INFINITY : (1 + SWING) * high;
    }

    private static PolynomialSplineFunction curve(double[] at, double[] values) {
        if (at.length < 5) {
            return new LinearInterpolator().interpolate(at, values);
        }
        return new AkimaSplineInterpolator().interpolate(at, values);
    }

    /** A direction of an axis means the same half a turn on; takes the one nearest to the sample before. */
    private static void unwind(double[] angles) {
        for (int k = 1; k < angles.length; k++) {
            angles[k] -= Math.PI * Math.rint((angles[k] - angles[k - 1]) / Math.PI);
        }
    }

    /** The numbers at a share of the blend. */
    SectionProperties at(double share) {
        double[] v = new double[VALUES];
        for (int i = 0; i < VALUES; i++) {
            double value = curves[i].value(Math.max(0, Math.min(1, share)));
            v[i] = Math.max(least[i], Math.min(most[i], value));
        }
        double angle = v[ANGLE] - Math.PI * Math.ceil(v[ANGLE] / Math.PI - 0.5);
        return new SectionProperties(
                v[0], v[1], v[2], v[3], v[4], angle, v[6], v[7], v[8], singular, v[9], v[10], v[11], v[12], v[13],
                v[14]);
    }

    private static double[] values(SectionProperties p) {
        return new double[] {
            p.area(),
            p.centroidX(),
            p.centroidY(),
            p.iMax(),
            p.iMin(),
            p.angleOfIMin(),
            p.polar(),
            p.torsionConstant(),
            p.peakShear(),
            p.plasticTorque(),
            p.plasticMomentLeast(),
            p.plasticMomentMost(),
            p.core(),
            p.inscribed(),
            p.chipSpace()
        };
    }
}
