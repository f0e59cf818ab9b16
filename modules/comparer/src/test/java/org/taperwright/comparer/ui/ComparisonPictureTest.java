package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Shots;

/** Pictures of the whole panel in both themes and at both scales, kept for looking at. */
class ComparisonPictureTest {
    @ParameterizedTest
    @CsvSource({"false, 1", "false, 2", "true, 1", "true, 2"})
    void the_comparison_draws_every_design_in_its_own_colour(boolean dark, double scale) throws InterruptedException {
        Shots.theme(dark);
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(SampleDesigns.library()))) {
            ComparisonPanel panel = Shots.onEventThread(() -> {
                ComparisonPanel made = new ComparisonPanel(desk);
                made.attach();
                return made;
            });
            desk.settle();
            desk.settle();

            BufferedImage picture =
                    Shots.take("comparison-" + (dark ? "dark" : "light") + "-" + (int) scale, panel, 1100, 640, scale);

            Set<Integer> colours = new HashSet<>();
            for (int x = 0; x < picture.getWidth(); x++) {
                for (int y = 0; y < picture.getHeight(); y++) {
                    colours.add(picture.getRGB(x, y));
                }
            }
            for (int place = 0; place < 3; place++) {
                assertThat(colours).contains(new SeriesLook(place).colour().getRGB());
            }
        }
    }
}
