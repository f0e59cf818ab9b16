package org.taperwright.mechanics.properties;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.taperwright.mechanics.properties.contour.PlainOutline;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.work.BoundedCache;

/**
 * The numbers of the outlines between two others: computed at seventeen shares, curves by Akima's splines between
 * them (error below 1e-3 between sections of common families, a few per cent in peak shear); at five between outlines of
 * many points.
 */
final class BlendedProperties {
    private static final int INTERVALS = 16;
    /** Outlines of more pieces are worked on at fewer shares, and made plainer first. */
    private static final int MANY = 60;

    private static final int FEW = 4;
    private static final int MOST_PIECES = 150;
    private static final double SWING = 0.05;
    private static final int VALUES = 15;
    private static final int ANGLE = 5;
    private static final BoundedCache<Ends, BlendedProperties> CACHE = new BoundedCache<>(64);

    private final PolynomialSplineFunction[] curves = new PolynomialSplineFunction[VALUES];
    private final double[] least = new double[VALUES];
    private final double[] most = new double[VALUES];
    private final boolean singular;

    private record Ends(Outline first, Outline second) {}

    /** Between two outlines that have numbers. */
    static BlendedProperties between(Outline first, Outline second) {
        return CACHE.get(new Ends(first, second), BlendedProperties::new);
    }

    private BlendedProperties(Ends ends) {
        List<SectionProperties> samples = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        boolean many = Sections.blend(ends.first, ends.second, 0.5).segments().size() > MANY;
        int intervals = many ? FEW : INTERVALS;
        for (int k = 0; k <= intervals; k++) {
            double share = (double) k / intervals;
            Outline blend = Sections.blend(ends.first, ends.second, share);
            Outline outline = k == 0 || k == intervals ? blend : PlainOutline.ofPieces(blend, MOST_PIECES);
            if (SectionAnalysis.fault(outline).isEmpty()) {
                shares.add(share);
                samples.add(SectionAnalysis.of(outline));
            }
        }
        double[] at = shares.stream().mapToDouble(Double::doubleValue).toArray();
        double[][] values = new double[VALUES][at.length];
        for (int k = 0; k < at.length; k++) {
            double[] sample = values(samples.get(k));
            for (int v = 0; v < VALUES; v++) {
                values[v][k] = sample[v];
            }
        }
        unwind(values[ANGLE]);
        for (int v = 0; v < VALUES; v++) {
            curves[v] = curve(at, values[v]);
            bound(v, values[v]);
        }
        singular = samples.stream().anyMatch(SectionProperties::peakShearSingular);
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
            return new org.apache.commons.math3.analysis.interpolation.LinearInterpolator().interpolate(at, values);
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
