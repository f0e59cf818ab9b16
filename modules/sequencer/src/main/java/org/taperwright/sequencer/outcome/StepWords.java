package org.taperwright.sequencer.outcome;

import java.util.Optional;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.finish.NeedleReach;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Step;

/**
 * A step of a result in a few words.
 *
 * @param shaped the result
 * @param place the step's place in the sequence, from 0
 */
record StepWords(Shaped shaped, int place) {
    /** What is used, after the step's kind where that is no instrument's work. */
    String name() {
        if (step() instanceof Irrigation rinse) {
            return "Irrigation, " + rinse.needle().word();
        }
        String instrument = instrument().map(Instrument::name).orElse("no longer in the library");
        return step() instanceof InstrumentStep
                ? instrument
                : Character.toUpperCase(step().word().charAt(0)) + step().word().substring(1) + ", " + instrument;
    }

    /** Its size, or how far a needle reaches, or that it was not made. */
    String detail() {
        if (step() instanceof Irrigation) {
            return shaped.needle(place).map(this::reach).orElse("");
        }
        return shaped.step(place).isPresent()
                ? instrument().map(Designation::of).map(Designation::text).orElse("")
                : "not made";
    }

    /** From the reference point, as depths of steps are; the flexible reach is computed, that of steel an index. */
    private String reach(NeedleReach reach) {
        double reference =
                shaped.arrangement().canal().map(Canal::coronalReferenceMm).orElse(0.0);
        String low = Shown.number(reference + reach.stiffBand().low(), 1, 1);
        String high = Shown.number(reference + reach.stiffBand().high(), 1, 1);
        return "reaches " + Shown.number(reference + reach.flexibleMm(), 1, 1) + " mm, steel "
                + (low.equals(high) ? low : low + " to " + high);
    }

    /** Whether an instrument works in it. */
    boolean works() {
        return !(step() instanceof Irrigation);
    }

    private Step step() {
        return shaped.arrangement().sequence().steps().get(place);
    }

    private Optional<Instrument> instrument() {
        return shaped.arrangement().instruments().get(place);
    }
}
