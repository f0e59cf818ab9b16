package org.taperwright.library.store;

import java.util.List;

/**
 * What a check of a library came to.
 *
 * @param things how many things the library holds
 * @param revisions how many revisions of them were looked at
 * @param findings what is wrong or odd; after a hundred the check stops listening
 */
public record CheckReport(long things, long revisions, List<Finding> findings) {
    public CheckReport {
        findings = List.copyOf(findings);
    }

    /** Whether nothing grave was found. */
    public boolean sound() {
        return findings.stream().noneMatch(Finding::grave);
    }
}
