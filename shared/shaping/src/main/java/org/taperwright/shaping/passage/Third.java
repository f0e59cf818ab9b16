package org.taperwright.shaping.passage;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.taperwright.shaping.canal.CanalGeometry;

/** Thirds of the canal's shaped length, from the orifice to where instrumentation ends. */
public enum Third {
    CORONAL("coronal"),
    MIDDLE("middle"),
    APICAL("apical");

    private final String word;

    Third(String word) {
        this.word = word;
    }

    /** The word shown to people. */
    public String word() {
        return word;
    }

    /** Values by third, in order, that nobody can change. */
    public static <T> Map<Third, T> ordered(Map<Third, T> values) {
        return Collections.unmodifiableMap(new EnumMap<>(values));
    }

    /** Depth at which it begins, mm from the orifice. */
    public double fromMm(CanalGeometry canal) {
        return canal.depthAtShareMm(ordinal() / 3.0);
    }

    /** Depth at which it ends, mm from the orifice. */
    public double toMm(CanalGeometry canal) {
        return canal.depthAtShareMm((ordinal() + 1) / 3.0);
    }

    /** The third a depth lies in; what lies beyond the end of instrumentation counts as apical. */
    public static Third at(double depthMm, CanalGeometry canal) {
        if (depthMm >= APICAL.fromMm(canal)) {
            return APICAL;
        }
        return depthMm >= MIDDLE.fromMm(canal) ? MIDDLE : CORONAL;
    }
}
