package org.taperwright.library.store;

import java.util.Locale;
import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.sequence.Sequence;

/**
 * What a thing is searched by.
 *
 * @param text all its words, in lower case
 * @param size by ISO 3630-1, hundredths of a millimetre
 * @param taper at the tip, mm per mm
 * @param family of the section at the tip
 * @param alloy identifier
 * @param motion word
 */
public record SearchColumns(
        String text,
        Optional<Integer> size,
        Optional<Double> taper,
        Optional<String> family,
        Optional<String> alloy,
        Optional<String> motion) {

    /** The columns of a thing. */
    public static SearchColumns of(Record thing) {
        if (thing instanceof Design design) {
            return of(design, design.name() + ' ' + design.note());
        }
        if (thing instanceof Instrument instrument) {
            return of(
                    instrument.design(),
                    String.join(
                            " ",
                            instrument.name(),
                            instrument.maker(),
                            instrument.line(),
                            instrument.type(),
                            instrument.supply().supplier(),
                            instrument.supply().lot(),
                            instrument.note()));
        }
        return of(words(thing));
    }

    private static String words(Record thing) {
        if (thing instanceof OwnAlloy alloy) {
            return String.join(" ", alloy.name(), alloy.source(), alloy.note());
        }
        if (thing instanceof Motor motor) {
            return String.join(" ", motor.name(), motor.maker(), motor.note());
        }
        if (thing instanceof Canal canal) {
            return String.join(" ", canal.name(), canal.source(), canal.note());
        }
        if (thing instanceof Sequence sequence) {
            return sequence.name() + ' ' + sequence.note();
        }
        if (thing instanceof Kit kit) {
            return String.join(" ", kit.name(), kit.purpose(), kit.note());
        }
        if (thing instanceof SavedComparison comparison) {
            return comparison.name() + ' ' + comparison.note();
        }
        if (thing instanceof SavedFilter filter) {
            return filter.name() + ' ' + filter.note();
        }
        return Names.of(thing);
    }

    /** Columns of a thing that is known by words alone. */
    static SearchColumns of(String words) {
        return new SearchColumns(
                folded(words),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static SearchColumns of(Design design, String words) {
        return new SearchColumns(
                folded(words),
                Optional.of((int) Math.round(design.tipDiameterMm() * 100)),
                design.taper().stream().findFirst().map(segment -> segment.taper()),
                design.sections().stream()
                        .findFirst()
                        .map(station -> station.shape().family()),
                Optional.of(design.alloy()),
                Optional.of(design.motion().word()));
    }

    /** Words as they are compared: databases differ in what they fold, so it is done here. */
    static String folded(String words) {
        return words.toLowerCase(Locale.ROOT);
    }
}
