package org.taperwright.mechanics.design;

import java.util.List;
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
        Findings findings = new Findings();
        DiameterChecks.check(design, findings);
        LengthChecks.check(design, findings);
        TipChecks.check(design, findings);
        SectionChecks.check(design, findings);
        FluteChecks.check(design, findings);
        MakingChecks.check(design, findings);
        return findings.all();
    }
}
