package org.taperwright.shaping.passage;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.taperwright.shaping.canal.CanalGeometry;

/**
 * One step against what was there before it: the canal's opening (an ellipse) joined with the circles of earlier steps,
 * all about the centreline.
 *
 * <p>Every diameter is linear between known depths. Cut there, and where two diameters cross, the canal falls into pieces
 * in which their order does not change: stretches are exact, and volumes are Gauss-Legendre integrals of a smooth area.
 * Every section is symmetric about the centreline, so volume is area times length along it in a curve too (Pappus).
 */
final class Widening {
    /** Differences of diameter below this are rounding, not widening, mm. */
    private static final double NOTHING_MM = 1e-9;

    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(16);

    private final CanalGeometry canal;
    private final List<Silhouette> before;
    private final Silhouette step;

    Widening(CanalGeometry canal, List<Silhouette> before, Silhouette step) {
        this.canal = canal;
        this.before = List.copyOf(before);
        this.step = step;
    }

    StepGeometry geometry() {
        List<StepGeometry.Stretch> engaged = new ArrayList<>();
        Map<Third, Double> volumeMm3 = zeros();
        Map<Third, Double> lengthMm = zeros();
        double greatest = 0;
        for (StepGeometry.Stretch piece : pieces()) {
            double middle = (piece.fromMm() + piece.toMm()) / 2;
            if (excessMm(middle) > NOTHING_MM) {
                append(engaged, piece);
                greatest = Math.max(greatest, greatestExcessMm(piece));
                Third third = Third.at(middle, canal);
                volumeMm3.merge(third, volumeMm3(piece), Double::sum);
                if (middle < canal.endDepthMm()) {
                    lengthMm.merge(third, piece.toMm() - piece.fromMm(), Double::sum);
                }
            }
        }
        lengthMm.replaceAll((third, mm) -> Math.min(1, mm / (third.toMm(canal) - third.fromMm(canal))));
        return new StepGeometry(engaged, volumeMm3, lengthMm, greatest);
    }

    private List<StepGeometry.Stretch> pieces() {
        List<Double> knots = new ArrayList<>(canal.knotsMm());
        List<DoubleUnaryOperator> diameters = new ArrayList<>(List.of(canal::wideMm, canal::narrowMm));
        List<Silhouette> all = new ArrayList<>(before);
        all.add(step);
        for (Silhouette silhouette : all) {
            knots.addAll(silhouette.knotsMm());
            diameters.add(silhouette::diameterMm);
        }
        for (Third third : Third.values()) {
            knots.add(third.toMm(canal));
        }
        return new Pieces(knots, diameters)
                .of(Math.max(0, step.fromMm()), Math.min(canal.lengthMm(), step.tipDepthMm()));
    }

    private double earlierMm(double depth) {
        return before.stream().mapToDouble(b -> b.diameterMm(depth)).max().orElse(0);
    }

    private double excessMm(double depth) {
        return step.diameterMm(depth) - Math.max(earlierMm(depth), canal.narrowMm(depth));
    }

    /** The excess is linear in a piece; carried from inside to its borders, where a working part may begin with a jump. */
    private double greatestExcessMm(StepGeometry.Stretch piece) {
        double quarter = (piece.toMm() - piece.fromMm()) / 4;
        double low = excessMm(piece.fromMm() + quarter);
        double high = excessMm(piece.toMm() - quarter);
        return Math.max(low, high) + Math.abs(high - low) / 2;
    }

    private double volumeMm3(StepGeometry.Stretch piece) {
        double half = (piece.toMm() - piece.fromMm()) / 2;
        double middle = (piece.fromMm() + piece.toMm()) / 2;
        return half * GAUSS.integrate(t -> areaMm2(middle + half * t));
    }

    private double areaMm2(double depth) {
        double wide = canal.wideMm(depth);
        double narrow = canal.narrowMm(depth);
        return OvalOverlap.beyond(step.diameterMm(depth), wide, narrow)
                - OvalOverlap.beyond(earlierMm(depth), wide, narrow);
    }

    private static void append(List<StepGeometry.Stretch> engaged, StepGeometry.Stretch piece) {
        int last = engaged.size() - 1;
        if (last >= 0 && engaged.get(last).toMm() == piece.fromMm()) {
            engaged.set(last, new StepGeometry.Stretch(engaged.get(last).fromMm(), piece.toMm()));
        } else {
            engaged.add(piece);
        }
    }

    private static Map<Third, Double> zeros() {
        Map<Third, Double> zeros = new EnumMap<>(Third.class);
        for (Third third : Third.values()) {
            zeros.put(third, 0.0);
        }
        return zeros;
    }
}
