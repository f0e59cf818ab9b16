package org.taperwright.designer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Shots;

/** Pictures of the whole window for looking at, from the smallest supported size to a large one. */
class DesignPanelPictureTest {
    @ParameterizedTest
    @CsvSource({
        "false, 1000, 650, 1",
        "true, 1000, 650, 2",
        "false, 1600, 1000, 1",
        "true, 1600, 1000, 1",
        "false, 1920, 1080, 2"
    })
    void the_panel_draws_in_light_and_dark_at_small_and_large_sizes(boolean dark, int width, int height, double scale)
            throws InterruptedException {
        Shots.theme(dark);
        try (BareDesk desk = new BareDesk(SampleDesigns.library())) {
            DesignPanel panel = Shots.onEventThread(() -> {
                desk.select(dark ? SampleDesigns.FILE : SampleDesigns.ROTARY);
                return new DesignPanel(desk);
            });
            desk.settle();
            String name = "design-" + (dark ? "dark" : "light") + "-" + width + "-x" + (int) scale;

            BufferedImage picture = Shots.take(name, panel, width, height, scale);

            assertThat(new Color(picture.getRGB(3, 3)).getRed() < 128).isEqualTo(dark);
            assertThat(picture.getWidth()).isEqualTo((int) (width * scale));
        }
    }
}
