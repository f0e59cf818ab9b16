package org.taperwright.workbench.platform;

import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Test;
import org.taperwright.workbench.desk.WorkDisplay;

class StatusLineWorkTest {
    @Test
    void workThatCountsItsPartsAnewIsShownWithoutFailing() {
        WorkDisplay.Line line = new StatusLineWork().begin("Comparing", () -> {});
        assertThatCode(() -> {
                    line.at(0.9, "the first design");
                    line.at(0.1, "the second design");
                    line.at(1.2, "past the end");
                    line.at(-1, "before the beginning");
                    line.end();
                })
                .doesNotThrowAnyException();
    }
}
