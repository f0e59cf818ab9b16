package org.taperwright.shaping.sequence;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.NeedleGauge;

/**
 * A rinse through a needle. Nothing of the liquid is computed: only how far the needle reaches in the canal as it then is.
 *
 * @param needle the needle's gauge
 * @param depthMm how far its tip is to go, from the coronal reference point, mm
 * @param volumeMl how much is given, ml
 * @param irrigant what is given, named freely
 * @param note free text
 */
public record Irrigation(NeedleGauge needle, double depthMm, double volumeMl, String irrigant, String note)
        implements Step {
    /** Names to offer; any other may be given. */
    public static final List<String> COMMON_IRRIGANTS = List.of(
            "sodium hypochlorite 1 %",
            "sodium hypochlorite 2.5 %",
            "sodium hypochlorite 5.25 %",
            "EDTA 17 %",
            "citric acid 10 %",
            "chlorhexidine 2 %",
            "saline",
            "distilled water");

    @Override
    public String word() {
        return "irrigation";
    }

    @Override
    public Optional<ThingId> uses() {
        return Optional.empty();
    }

    @Override
    public double depthMm(double workingLengthMm) {
        return depthMm;
    }

    @Override
    public Irrigation at(double depth) {
        return new Irrigation(needle, depth, volumeMl, irrigant, note);
    }

    @Override
    public Irrigation deeper(double mm) {
        return at(depthMm + mm);
    }

    @Override
    public Irrigation using(UnaryOperator<ThingId> other) {
        return this;
    }

    @Override
    public Optional<InstrumentStep> worked(double workingLengthMm, Motion motion) {
        return Optional.empty();
    }
}
