package org.taperwright.mechanics.bench.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.uncertainty.Sampled;

/** A point of a bench curve with its band: angle in degrees, moment or torque in N mm, and 5 to 95 % of it. */
public record CurveBand(double angleDeg, double momentNmm, Band band) {
    /**
     * The bands along a curve. Every draw's curve rises, and so do the edges of the band.
     *
     * @param curve at the alloy's constants
     * @param sampled moment or torque at each of its points
     */
    static List<CurveBand> along(List<CurvePoint> curve, IntFunction<Sampled> sampled) {
        List<CurveBand> bands = new ArrayList<>();
        double low = 0;
        double high = 0;
        for (int i = 0; i < curve.size(); i++) {
            double moment = curve.get(i).momentNmm();
            Band band = sampled.apply(i).band().orElseGet(() -> new Band(moment, moment));
            low = Math.min(moment, Math.max(low, band.low()));
            high = Math.max(high, band.high());
            bands.add(new CurveBand(curve.get(i).angleDeg(), moment, new Band(low, high)));
        }
        return List.copyOf(bands);
    }
}
