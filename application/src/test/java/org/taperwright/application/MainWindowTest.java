package org.taperwright.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Frame;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import org.junit.jupiter.api.Test;

/** The main window, as it stands after a first start. */
@WindowTest
class MainWindowTest {
    @Test
    void theTitleIsTheProgramsNameAlone(Hands hands) {
        List<String> titles = hands.onEventThread(() -> Stream.of(Frame.getFrames())
                .filter(Frame::isShowing)
                .map(Frame::getTitle)
                .toList());
        assertThat(titles).containsExactly("Taperwright");
    }

    @Test
    void onlyOurOwnMenusShow(Hands hands) {
        JFrame frame = hands.find("the main window", JFrame.class, any -> true);
        List<String> menus = hands.onEventThread(() -> {
            JMenuBar bar = frame.getJMenuBar();
            return Stream.of(bar.getComponents())
                    .filter(JMenu.class::isInstance)
                    .map(menu -> ((JMenu) menu).getText())
                    .toList();
        });
        assertThat(menus).containsExactly("File", "Edit", "View", "Window", "Help");
    }

    @Test
    void everyWindowOfTheWorkbenchOpensFromTheMenu(Hands hands) {
        for (String title : List.of("Library", "Instruments", "Motors", "Design", "Comparison", "Sequence", "Kit")) {
            hands.choose("Window", title);
            hands.find(title + "Window", java.awt.Component.class);
        }
        BufferedImage picture = Screen.keep("main-window");
        assertThat(picture.getWidth()).isGreaterThan(600);
    }

    @Test
    void theThemeChangesAtOnceAndBack(Hands hands) {
        JFrame frame = hands.find("the main window", JFrame.class, any -> true);
        int light =
                hands.onEventThread(() -> frame.getContentPane().getBackground().getRed());
        hands.choose("View", "Dark theme");
        hands.await(
                "the dark theme", () -> frame.getContentPane().getBackground().getRed() < light / 2);
        Screen.keep("main-window-dark");
        hands.choose("View", "Light theme");
        hands.await(
                "the light theme", () -> frame.getContentPane().getBackground().getRed() == light);
    }
}
