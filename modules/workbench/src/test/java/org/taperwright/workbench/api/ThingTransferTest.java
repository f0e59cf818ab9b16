package org.taperwright.workbench.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.StringSelection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.ThingId;

class ThingTransferTest {
    @Test
    void whatIsDraggedArrivesInItsOrder() {
        ThingTransfer dragged = new ThingTransfer(List.of(new ThingId("b"), new ThingId("a")));
        assertThat(ThingTransfer.from(dragged)).contains(dragged);
    }

    @Test
    void otherThingsAreLeftAlone() {
        assertThat(ThingTransfer.from(new StringSelection("text"))).isEmpty();
    }
}
