package org.taperwright.library.store;

import java.util.Optional;

/**
 * What to look for; what is empty does not matter.
 *
 * @param kind the kind of thing
 * @param text words that must all stand in the name, maker, line, type, source or note
 * @param leastSize smallest size by ISO 3630-1, hundredths of a millimetre
 * @param mostSize greatest size
 * @param family identifier of the section's family
 * @param alloy identifier of the alloy
 * @param motion word of the motion
 */
public record Search(
        Optional<ThingKind> kind,
        String text,
        Optional<Integer> leastSize,
        Optional<Integer> mostSize,
        Optional<String> family,
        Optional<String> alloy,
        Optional<String> motion) {
    /** Everything. */
    public static Search all() {
        return new Search(
                Optional.empty(),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Only things of a kind. */
    public Search ofKind(ThingKind wanted) {
        return new Search(Optional.of(wanted), text, leastSize, mostSize, family, alloy, motion);
    }

    /** Only things with these words. */
    public Search withText(String wanted) {
        return new Search(kind, wanted, leastSize, mostSize, family, alloy, motion);
    }

    /** Only sizes in a range, both ends included. */
    public Search withSizes(int least, int most) {
        return new Search(kind, text, Optional.of(least), Optional.of(most), family, alloy, motion);
    }

    /** Only a family of sections. */
    public Search withFamily(String wanted) {
        return new Search(kind, text, leastSize, mostSize, Optional.of(wanted), alloy, motion);
    }

    /** Only an alloy. */
    public Search withAlloy(String wanted) {
        return new Search(kind, text, leastSize, mostSize, family, Optional.of(wanted), motion);
    }

    /** Only a motion. */
    public Search withMotion(String wanted) {
        return new Search(kind, text, leastSize, mostSize, family, alloy, Optional.of(wanted));
    }
}
