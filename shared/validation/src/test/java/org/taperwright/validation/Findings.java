package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where the validation classes hold values against their source: each is asserted and noted for the page that users
 * read.
 */
final class Findings {
    /** Noted over the run of all classes; written by {@link ValidationPage} when it ends. */
    private static final List<Finding> NOTED = Collections.synchronizedList(new ArrayList<>());

    private static final List<Remark> REMARKS = Collections.synchronizedList(new ArrayList<>());

    /** A sentence on a source: a rank agreement, a direction that is not reproduced, a looser tolerance explained. */
    record Remark(String source, String text) {}

    private Findings() {}

    /** Asserts that ours is within a relative tolerance of the source's value, and notes it. */
    static void hold(String source, String quantity, double expected, double ours, double tolerance, String reason) {
        Finding finding = new Finding(source, quantity, expected, ours, tolerance, reason);
        NOTED.add(finding);
        assertThat(ours).as("%s, %s: finite", source, quantity).isFinite();
        assertThat(finding.error())
                .as("%s, %s: expected %s, ours %s (%s)", source, quantity, expected, ours, reason)
                .isLessThanOrEqualTo(tolerance);
    }

    /** Notes a sentence beneath the source's table. */
    static void remark(String source, String text) {
        REMARKS.add(new Remark(source, text));
    }

    static List<Finding> noted() {
        synchronized (NOTED) {
            return List.copyOf(NOTED);
        }
    }

    static List<Remark> remarks() {
        synchronized (REMARKS) {
            return List.copyOf(REMARKS);
        }
    }
}
