package org.taperwright.sequencer.ui.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javax.swing.JTabbedPane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.library.store.Arrangement;
import org.taperwright.sequencer.SampleSequence;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Gestures;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Shots;

/** Pictures of every part in both themes, kept for looking at. */
class OutcomePictureTest {
    private static final String[] NAMES = {"steps", "along", "finish", "unknown", "many"};

    @ParameterizedTest
    @CsvSource({"false", "true"})
    void every_part_draws_in_the_themes_colours(boolean dark) throws InterruptedException {
        Shots.theme(dark);
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(SampleSequence.things()))) {
            OutcomePanel panel = Shots.onEventThread(() -> {
                OutcomePanel made = new OutcomePanel(desk, step -> {}, remarks -> {});
                Sequence sequence = desk.snapshot()
                        .thing(SampleSequence.SEQUENCE, Sequence.class)
                        .orElseThrow();
                made.show(SampleSequence.SEQUENCE, Arrangement.of(sequence, desk.snapshot()), true, 2);
                return made;
            });
            desk.settle();
            desk.settle();
            desk.settle();
            JTabbedPane tabs = Gestures.named(panel, "outcome.tabs", JTabbedPane.class);
            for (int i = 0; i < NAMES.length; i++) {
                int tab = i;
                Shots.onEventThread(() -> {
                    tabs.setSelectedIndex(tab);
                    return Optional.empty();
                });
                BufferedImage picture =
                        Shots.take("outcome-" + NAMES[i] + (dark ? "-dark" : "-light"), panel, 1180, 420, 1);
                Set<Integer> colours = colours(picture);
                assertThat(colours).hasSizeGreaterThan(10);
                if (NAMES[i].equals("along")) {
                    assertThat(colours)
                            .contains(
                                    new SeriesLook(0).colour().getRGB(),
                                    new SeriesLook(1).colour().getRGB());
                }
            }
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
}
