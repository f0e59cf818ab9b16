package org.taperwright.shaping.sequence;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;

/**
 * An instrument brought back to the working length after wider ones, to see that the way is free.
 *
 * @param instrument the catalogue entry used
 * @param strokes number of strokes
 * @param note free text
 */
public record Recapitulation(ThingId instrument, int strokes, String note) implements Step {
    @Override
    public String word() {
        return "recapitulation";
    }

    @Override
    public Optional<ThingId> uses() {
        return Optional.of(instrument);
    }

    @Override
    public double depthMm(double workingLengthMm) {
        return workingLengthMm;
    }

    @Override
    public Recapitulation at(double depthMm) {
        return this;
    }

    @Override
    public Recapitulation deeper(double mm) {
        return this;
    }

    @Override
    public Recapitulation using(UnaryOperator<ThingId> other) {
        return new Recapitulation(other.apply(instrument), strokes, note);
    }

    @Override
    public Optional<InstrumentStep> worked(double workingLengthMm, Motion motion) {
        return Optional.of(new InstrumentStep(
                instrument, workingLengthMm, motion, Optional.empty(), Optional.empty(), strokes, note));
    }
}
