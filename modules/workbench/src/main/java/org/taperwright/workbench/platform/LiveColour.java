package org.taperwright.workbench.platform;

import java.awt.Color;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.UIManager;
import javax.swing.plaf.UIResource;

/**
 * A colour of the theme that shows, looked up each time it is used. The platform's tabs and their buttons read their
 * colours once and keep them for good; given these, they follow a change of theme.
 */
final class LiveColour extends Color implements UIResource {
    private static final List<String> TAB_COLOURS = List.of(
            "background",
            "foreground",
            "activeBackground",
            "activeForeground",
            "selectedBackground",
            "selectedForeground",
            "selectedHoverBackground",
            "hoverBackground",
            "hoverForeground",
            "attentionBackground",
            "attentionForeground",
            "underlineColor",
            "inactiveUnderlineColor",
            "tabSeparatorColor");

    private static final List<String> OTHERS = List.of(
            "TabbedContainer.editor.contentBorderColor",
            "TabbedContainer.view.contentBorderColor",
            "TabControlIcon.foreground",
            "TabControlIcon.disabledForeground",
            "TabControlIcon.rolloverBackground",
            "TabControlIcon.pressedBackground",
            "TabControlIcon.close.rolloverBackground",
            "TabControlIcon.close.rolloverForeground");

    private final String key;

    private LiveColour(String key) {
        super(0, true);
        this.key = key;
    }

    /** Puts live colours where the platform's tabs will look; must run before the first tab shows. */
    static void install() {
        Stream.concat(
                        Stream.of("EditorTab.", "ViewTab.")
                                .flatMap(tab -> TAB_COLOURS.stream().map(tab::concat)),
                        OTHERS.stream())
                .forEach(key -> UIManager.put(key, new LiveColour(key)));
    }

    @Override
    public int getRGB() {
        Color now = UIManager.getLookAndFeelDefaults().getColor(key);
        return now == null
                ? UIManager.getLookAndFeelDefaults()
                        .getColor("Panel.background")
                        .getRGB()
                : now.getRGB();
    }
}
