package org.taperwright.sequencer.ui;

import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Step;

/** The kinds of step that stand between the instruments' work, as they are first added (all numbers common practice, no source). */
enum BetweenKind {
    /** A rinse with a fine needle that stops short of the end. */
    IRRIGATION("Add irrigation", 'I', "Adds a rinse behind the selected step") {
        @Override
        Step usual(ThingId file, double workingLengthMm) {
            return new Irrigation(
                    NeedleGauge.G30,
                    Math.max(0, workingLengthMm - NEEDLE_SHORT_MM),
                    1,
                    Irrigation.COMMON_IRRIGANTS.get(1),
                    "");
        }
    },
    /** A small file a little beyond the end. */
    PATENCY("Add patency", 'P', "Adds a pass of the smallest file a little beyond the end") {
        @Override
        Step usual(ThingId file, double workingLengthMm) {
            return new Patency(file, BEYOND_MM, "");
        }
    },
    /** A small file back to the end. */
    RECAPITULATION("Add recapitulation", 'R', "Adds a return of the smallest file to the working length") {
        @Override
        Step usual(ThingId file, double workingLengthMm) {
            return new Recapitulation(file, 2, "");
        }
    };

    private static final double NEEDLE_SHORT_MM = 2;
    private static final double BEYOND_MM = 0.5;

    private final String words;
    private final char key;
    private final String meaning;

    BetweenKind(String words, char key, String meaning) {
        this.words = words;
        this.key = key;
        this.meaning = meaning;
    }

    /** What adding one is called. */
    String words() {
        return words;
    }

    /** The key that adds one while the lanes have the focus. */
    char key() {
        return key;
    }

    /** What adding one does. */
    String meaning() {
        return meaning;
    }

    /**
     * A step of the kind as it usually is.
     *
     * @param file a small instrument, for the kinds that use one
     */
    abstract Step usual(ThingId file, double workingLengthMm);
}
