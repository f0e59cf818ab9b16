package org.taperwright.library.store;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.work.Fault;

/** The findings of one check and what was looked at; after a hundred it stops listening, for nobody reads more. */
final class CheckFindings {
    private static final int MOST = 100;

    private final List<Finding> findings = new ArrayList<>();
    private long things;
    private long revisions;

    void grave(String where, String what, String expected, String mend) {
        note(new Finding(Fault.impossible(where, what, expected), mend));
    }

    void odd(String where, String what, String expected, String mend) {
        note(new Finding(Fault.unusual(where, what, expected), mend));
    }

    void note(Finding finding) {
        if (findings.size() < MOST) {
            findings.add(finding);
        }
    }

    void countRevision() {
        revisions++;
    }

    void countThings(int present) {
        things = present;
    }

    CheckReport report() {
        return new CheckReport(things, revisions, findings);
    }
}
