package org.taperwright.shaping.passage.stroke;

import java.util.EnumMap;
import java.util.Map;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.passage.Third;

/** Volumes of what is given per length at even stations, by the trapezoidal rule; a third may begin between two stations. */
final class StationVolumes {
    private StationVolumes() {}

    static Map<Third, Double> byThird(double[] perLength, double spacingMm, CanalGeometry canal) {
        Map<Third, Double> volumes = new EnumMap<>(Third.class);
        double end = spacingMm * (perLength.length - 1);
        for (Third third : Third.values()) {
            double to = third == Third.APICAL ? end : third.toMm(canal);
            volumes.put(third, between(perLength, spacingMm, third.fromMm(canal), to));
        }
        return volumes;
    }

    static double whole(double[] perLength, double spacingMm) {
        return between(perLength, spacingMm, 0, spacingMm * (perLength.length - 1));
    }

    static double to(double[] perLength, double spacingMm, double depthMm) {
        return between(perLength, spacingMm, 0, depthMm);
    }

    private static double between(double[] perLength, double spacingMm, double from, double to) {
        double sum = 0;
        for (int j = 0; j + 1 < perLength.length; j++) {
            double low = Math.max(0, (from - j * spacingMm) / spacingMm);
            double high = Math.min(1, (to - j * spacingMm) / spacingMm);
            if (high > low) {
                double rise = perLength[j + 1] - perLength[j];
                sum += spacingMm * (high - low) * (perLength[j] + rise * (low + high) / 2);
            }
        }
        return sum;
    }
}
