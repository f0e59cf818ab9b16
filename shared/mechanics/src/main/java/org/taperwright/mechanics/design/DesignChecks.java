package org.taperwright.mechanics.design;

import java.util.List;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.work.Fault;

/**
 * What is impossible or unusual in a design, field by field in the words of the JSON form. Impossible ones come first in
 * meaning: with any of them no number of the design is computed. Unusual ones say why they deserve a look, with the
 * source, or that it is common practice without one.
 */
public final class DesignChecks {
    private DesignChecks() {}

    /** All faults of a design; empty when there is nothing to say. */
    public static List<Fault> check(Design design) {
        return check(design, KnownAlloys.SHIPPED);
    }

    /** The same where it may name other alloys than those that come with the program. */
    public static List<Fault> check(Design design, KnownAlloys alloys) {
        Findings findings = new Findings();
        DiameterChecks.check(design, findings);
        LengthChecks.check(design, findings);
        TipChecks.check(design, findings);
        SectionChecks.check(design, findings);
        FluteChecks.check(design, findings);
        MakingChecks.check(design, alloys, findings);
        return findings.all();
    }
}
