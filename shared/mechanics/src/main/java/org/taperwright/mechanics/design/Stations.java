package org.taperwright.mechanics.design;

import org.taperwright.mechanics.quantity.Shown;

/** Levels of stations along the blade. */
final class Stations {
    /** Stations or segments along a blade, of which every one costs at least a step of each rod. */
    static final int MOST = 100;

    private Stations() {}

    /**
     * Notes a level that is no number, off the instrument, or not above the one before.
     *
     * @param before the level before; negative infinity for the first station
     * @return whether the level is sound
     */
    static boolean level(String where, double level, double before, Design design, Findings findings) {
        double most = Math.max(design.workingPartMm(), design.lengthMm());
        if (!(level >= 0 && level <= most)) {
            findings.impossible(
                    where, "the station stands at " + Shown.mm(level), "from 0, the tip, to " + Shown.mm(most));
            return false;
        }
        if (!(level > before)) {
            findings.impossible(
                    where,
                    "the station stands at " + Shown.mm(level),
                    "above the station before, at " + Shown.mm(before));
            return false;
        }
        return true;
    }
}
