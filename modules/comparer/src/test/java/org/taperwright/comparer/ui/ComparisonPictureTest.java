package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Set;
import javax.swing.JTabbedPane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Gestures;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Shots;

/** Pictures of the whole panel in both themes and at both scales, kept for looking at. */
class ComparisonPictureTest {
    /** The bending figure, whose bands lie over each other. */
    @ParameterizedTest
    @CsvSource({"false", "true"})
    void the_bending_figure_draws_its_bands(boolean dark) throws InterruptedException {
        Shots.theme(dark);
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(SampleDesigns.library()))) {
            ComparisonPanel panel = Shots.onEventThread(() -> {
                ComparisonPanel made = new ComparisonPanel(desk);
                made.attach();
                return made;
            });
            desk.settle();
            desk.settle();
            Shots.onEventThread(() -> {
                Gestures.named(panel, "comparison.figures", JTabbedPane.class).setSelectedIndex(3);
                return panel;
            });

            BufferedImage picture = Shots.take("comparison-bending-" + (dark ? "dark" : "light"), panel, 1400, 640, 1);

            assertThat(colours(picture)).hasSizeGreaterThan(50);
        }
    }

    private static Set<Integer> colours(BufferedImage picture) {
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                colours.add(picture.getRGB(x, y));
            }
        }
        return colours;
    }

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

            Set<Integer> colours = colours(picture);
            for (int place = 0; place < 3; place++) {
                assertThat(colours).contains(new SeriesLook(place).colour().getRGB());
            }
        }
    }
}
