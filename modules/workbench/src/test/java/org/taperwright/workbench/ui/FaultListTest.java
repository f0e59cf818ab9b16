package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;

class FaultListTest {
    private final List<Fault> visited = new ArrayList<>();
    private final Fault unusual = Fault.unusual("making", "a twisted superelastic blank", "such blanks are ground");
    private final Fault impossible = Fault.impossible("taper", "the diameter falls to 0.03 mm", "more than 0.05 mm");
    private FaultList list;

    @BeforeEach
    void open() {
        Shots.theme(false);
        list = Shots.onEventThread(
                () -> new FaultList("faults", "Nothing to remark.", where -> "Field " + where).onGo(visited::add));
    }

    @Test
    void without_faults_it_says_so() {
        assertThat(Gestures.named(list, "faults.none", Prose.class).getText()).isEqualTo("Nothing to remark.");
    }

    @Test
    void impossible_things_stand_before_unusual_ones_with_place_and_reason() {
        Shots.onEventThread(() -> {
            list.setFaults(List.of(unusual, impossible));
            return list;
        });

        assertThat(list.getComponent(0).getAccessibleContext().getAccessibleName())
                .isEqualTo("Impossible. Field taper: the diameter falls to 0.03 mm. more than 0.05 mm");
        assertThat(list.getComponent(1).getAccessibleContext().getAccessibleName())
                .startsWith("Unusual.");
    }

    @Test
    void enter_on_a_fault_goes_to_its_field() {
        Shots.onEventThread(() -> {
            list.setFaults(List.of(unusual));
            return list;
        });

        Gestures.press(Gestures.named(list, "fault.making", JComponent.class), KeyEvent.VK_ENTER);

        assertThat(visited).containsExactly(unusual);
    }
}
