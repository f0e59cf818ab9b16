package org.taperwright.workbench.platform;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CautionsTest {
    @Test
    void theyDeferToMakersLocalRulesAndLicensedJudgement() {
        assertThat(Cautions.TEXT).contains("manufacturer's instructions", "rules that hold where you work", "licensed");
    }

    @Test
    void theyNeverCallAnythingSafe() {
        assertThat(Cautions.TEXT.toLowerCase(java.util.Locale.ROOT)).doesNotContain("safe");
    }

    @Test
    void theyKeepPatientsOut() {
        assertThat(Cautions.TEXT).contains("identify a patient");
    }
}
