package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JSlider;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.workbench.ui.Shots;

/** Pictures of every figure of the comparison in both themes, kept for looking at. */
class FiguresPictureTest {
    @ParameterizedTest
    @CsvSource({"false, 1", "true, 2"})
    void every_figure_draws_something(boolean dark, double scale) throws InterruptedException {
        try (OpenPanel open = OpenPanel.of(SampleDesigns.library())) {
            Shots.theme(dark);
            Shots.onEventThread(() -> {
                SwingUtilities.updateComponentTreeUI(open.panel());
                return open;
            });
            open.perform(() -> {
                open.find("comparison.score.purpose", JComboBox.class).setSelectedIndex(0);
                open.find("comparison.sweep.run", AbstractButton.class).doClick();
                open.find("comparison.tornado.run", AbstractButton.class).doClick();
                open.find("comparison.curves.test", JComboBox.class).setSelectedIndex(1);
            });
            open.perform(
                    () -> open.find("comparison.whatif.slider", JSlider.class).setValue(80));
            open.perform(
                    () -> open.find("comparison.whatif.slider", JSlider.class).setValue(110));
            JTabbedPane tabs = open.find("comparison.figures", JTabbedPane.class);
            for (int tab = 0; tab < tabs.getTabCount(); tab++) {
                int index = tab;
                open.perform(() -> tabs.setSelectedIndex(index));
                String name = tabs.getTitleAt(tab).toLowerCase(Locale.ROOT).replace(' ', '-');
                BufferedImage picture = Shots.take(
                        "comparison-figure-" + name + "-" + (dark ? "dark" : "light"), open.panel(), 1300, 720, scale);
                assertThat(colours(picture)).as(name).hasSizeGreaterThan(40);
            }
        }
    }

    private static Set<Integer> colours(BufferedImage picture) {
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < picture.getWidth(); x += 2) {
            for (int y = 0; y < picture.getHeight(); y += 2) {
                colours.add(picture.getRGB(x, y));
            }
        }
        return colours;
    }
}
