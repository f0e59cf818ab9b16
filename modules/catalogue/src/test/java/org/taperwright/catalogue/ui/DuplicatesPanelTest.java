package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Shots;

class DuplicatesPanelTest {
    private static final ThingId TWIN = new ThingId("twin");
    private static final ThingId SEQUENCE = new ThingId("sequence");

    @Test
    void merging_keeps_one_entry_with_the_stock_of_both_and_sequences_follow() throws InterruptedException {
        Shots.theme(false);
        Map<ThingId, Record> things = new LinkedHashMap<>(SampleLibrary.things());
        things.put(SampleLibrary.HAND_25, stocked(SampleLibrary.hand(25), 2));
        things.put(TWIN, stocked(SampleLibrary.hand(25), 3));
        Step step = new InstrumentStep(TWIN, 18, Motion.FILING, Optional.empty(), Optional.empty(), 3, "");
        things.put(SEQUENCE, new Sequence("By hand", Optional.empty(), Optional.empty(), List.of(step), ""));
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(things))) {
            DuplicatesPanel panel = Shots.onEventThread(() -> new DuplicatesPanel(desk));
            desk.settle();
            Shots.take("duplicates-light-1", panel, 760, 420, 1);

            assertThat(((JTable) Panels.find(panel, "duplicates.groups")).getRowCount())
                    .isEqualTo(1);
            Panels.perform(desk, () -> ((AbstractButton) Panels.find(panel, "duplicates.merge")).doClick());

            assertThat(desk.nextUndo()).contains("Merge 2 instruments into K-type file 25");
            assertThat(desk.snapshot().entry(TWIN)).isEmpty();
            assertThat(desk.snapshot()
                            .thing(SampleLibrary.HAND_25, Instrument.class)
                            .orElseThrow()
                            .supply()
                            .stock())
                    .isEqualTo(5);
            assertThat(desk.snapshot()
                            .thing(SEQUENCE, Sequence.class)
                            .orElseThrow()
                            .steps()
                            .get(0)
                            .uses()
                            .orElseThrow())
                    .isEqualTo(SampleLibrary.HAND_25);
            assertThat(desk.snapshot().ofKind(ThingKind.INSTRUMENT)).hasSize(3);
        }
    }

    private static Instrument stocked(Instrument instrument, int stock) {
        return instrument.draft().supply(instrument.supply().withStock(stock)).instrument();
    }
}
