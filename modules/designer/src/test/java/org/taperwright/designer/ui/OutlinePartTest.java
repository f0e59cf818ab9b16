package org.taperwright.designer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.mechanics.section.Point;
import org.taperwright.workbench.ui.Gestures;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Shots;

class OutlinePartTest {
    @TempDir
    private Path folder;

    private final List<List<Point>> entered = new ArrayList<>();
    private final OutlinePart part = Shots.onEventThread(() -> new OutlinePart(entered::add));

    @Test
    void points_are_taken_from_a_file() throws IOException {
        take("outline.csv", "x,y\n0,1\n-0.5,-1\n0.5,-1\n".getBytes(java.nio.charset.StandardCharsets.UTF_8));

        assertThat(entered).containsExactly(List.of(new Point(0, 1), new Point(-0.5, -1), new Point(0.5, -1)));
        assertThat(told()).isEmpty();
    }

    @Test
    void a_file_larger_than_any_outline_is_not_read() throws IOException {
        take("vast.csv", new byte[1_000_001]);

        assertThat(entered).isEmpty();
        assertThat(told())
                .isEqualTo("vast.csv is larger than 1 MB; expected one point a line, at most 10,000 of them.");
    }

    @Test
    void a_file_that_is_no_text_is_refused() throws IOException {
        take("picture.csv", new byte[] {(byte) 0x89, 'P', 'N', 'G', (byte) 0xff});

        assertThat(entered).isEmpty();
        assertThat(told()).isEqualTo("picture.csv is no text in UTF-8; expected one point a line.");
    }

    private void take(String name, byte[] content) throws IOException {
        Path file = Files.write(folder.resolve(name), content);
        Shots.onEventThread(() -> {
            part.takeFile(file);
            return file;
        });
    }

    private String told() {
        return Gestures.named(part, "design.section.outline.fault", Prose.class).getText();
    }
}
