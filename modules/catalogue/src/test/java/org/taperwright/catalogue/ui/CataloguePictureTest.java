package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import javax.swing.JTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.MemorySettings;
import org.taperwright.workbench.ui.Shots;

/** Pictures of both panels in both themes and at both scales, kept for looking at. */
class CataloguePictureTest {
    @ParameterizedTest
    @CsvSource({"false, 1", "false, 2", "true, 1", "true, 2"})
    void both_panels_draw_in_the_theme(boolean dark, double scale) throws InterruptedException {
        Shots.theme(dark);
        String look = (dark ? "dark" : "light") + "-" + (int) scale;
        try (BareDesk desk = Shots.onEventThread(() -> new BareDesk(SampleLibrary.things()))) {
            MemorySettings settings = new MemorySettings();
            settings.putBoolean("filters.open", true);
            InstrumentsPanel instruments = Shots.onEventThread(() -> {
                InstrumentsPanel made = new InstrumentsPanel(desk, settings);
                made.attach();
                return made;
            });
            LibraryPanel library = Shots.onEventThread(() -> {
                LibraryPanel made = new LibraryPanel(desk);
                made.attach();
                return made;
            });
            desk.settle();
            Panels.perform(desk, () -> desk.select(SampleLibrary.ROTARY));

            BufferedImage table = Shots.take("instruments-" + look, instruments, 1180, 560, scale);
            BufferedImage tree = Shots.take("library-" + look, library, 260, 420, scale);

            Panels.perform(desk, () -> ((JTable) Panels.find(instruments, "instruments.table")).selectAll());
            Shots.take("instruments-many-" + look, instruments, 1180, 560, scale);

            for (BufferedImage picture : new BufferedImage[] {table, tree}) {
                Color paper = new Color(picture.getRGB(picture.getWidth() - 3, picture.getHeight() - 3));
                assertThat(paper.getRed() < 128).isEqualTo(dark);
            }
        }
    }
}
