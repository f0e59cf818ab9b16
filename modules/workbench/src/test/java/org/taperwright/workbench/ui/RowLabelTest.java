package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

class RowLabelTest {
    @Test
    void its_colour_follows_a_change_of_theme() {
        Shots.theme(false);
        RowLabel label = Shots.onEventThread(() -> new RowLabel("3 instruments").tone(Ink::quiet));
        Color light = label.getForeground();
        Shots.theme(true);

        assertThat(label.getForeground()).isEqualTo(Ink.quiet()).isNotEqualTo(light);
    }
}
