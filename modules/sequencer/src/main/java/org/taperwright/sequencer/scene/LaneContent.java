package org.taperwright.sequencer.scene;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Step;

/**
 * What a step's lane shows.
 *
 * @param index place of the step, from 0
 * @param step the step
 * @param instrument its instrument, absent when it uses none or it is no longer in the library
 * @param depthMm where its tip stands, mm from the coronal reference point
 * @param geometry what it does by geometry, absent until computed
 * @param outdated whether that geometry belongs to an earlier state of the sequence
 */
public record LaneContent(
        int index,
        Step step,
        Optional<Instrument> instrument,
        double depthMm,
        Optional<StepGeometry> geometry,
        boolean outdated) {
    private static final double SHOWN_MM3 = 0.005;

    /** Size and taper as the trade writes them. */
    String designation() {
        if (step instanceof Irrigation rinse) {
            return rinse.needle().word();
        }
        return instrument.map(Designation::of).map(Designation::text).orElse("–");
    }

    /** The instrument's name, or that it is gone; what is given in an irrigation. */
    String name() {
        if (step instanceof Irrigation rinse) {
            return rinse.irrigant();
        }
        return instrument.map(Instrument::name).orElse("no longer in the library");
    }

    /** What a step does that is no instrument's work and is nowhere wider than what was there; empty for any other. */
    String sentence() {
        if (step instanceof Irrigation rinse) {
            return Shown.number(rinse.volumeMl()) + " ml " + rinse.irrigant() + " through a needle of "
                    + rinse.needle().word();
        }
        if (geometry.filter(found -> !found.engaged().isEmpty()).isPresent()) {
            return "";
        }
        if (step instanceof Patency patency) {
            return Shown.mm(patency.beyondMm()) + " beyond the working length, once";
        }
        return step instanceof Recapitulation back
                ? "back to the working length, " + back.strokes() + (back.strokes() == 1 ? " stroke" : " strokes")
                : "";
    }

    /** Whether the instrument that the step uses is no longer in the library. */
    boolean gone() {
        return step.uses().isPresent() && instrument.isEmpty();
    }

    /** Depth, and motion or kind. */
    String setting() {
        String how = step instanceof InstrumentStep work ? work.motion().word() : step.word();
        return String.format(Locale.ROOT, "%.1f mm, %s", depthMm, how);
    }

    /** The whole lane in words, for assistive technology. */
    public String words(int lanes) {
        String does = geometry.map(LaneContent::wider).orElse("not computed yet");
        return "Step " + (index + 1) + " of " + lanes + ": " + designation() + ", " + name() + ", " + setting()
                + (step instanceof Irrigation ? "" : "; " + does);
    }

    /** Where the step is wider than what was there before, in words. */
    static String wider(StepGeometry geometry) {
        if (geometry.engaged().isEmpty()) {
            return "nowhere wider than what was there before";
        }
        return "wider than what was there before over "
                + java.util.Arrays.stream(Third.values())
                        .map(third -> percent(geometry.engagedShare().getOrDefault(third, 0.0)) + " of the "
                                + third.word() + " third ("
                                + cubicMillimetres(geometry.enlargedMm3().getOrDefault(third, 0.0)) + ")")
                        .collect(Collectors.joining(", "));
    }

    /** A volume to a hundredth. */
    static String cubicMillimetres(double volumeMm3) {
        return volumeMm3 < SHOWN_MM3 ? "< 0.01 mm³" : String.format(Locale.ROOT, "%.2f mm³", volumeMm3);
    }

    /** A share in whole per cent. */
    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", share * 100);
    }
}
