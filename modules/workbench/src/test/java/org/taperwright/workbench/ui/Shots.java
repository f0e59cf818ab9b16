package org.taperwright.workbench.ui;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Component;
import java.awt.Container;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Pictures of a panel without a display, in both themes, kept with the build. */
public final class Shots {
    private static final Path FOLDER = Path.of("target", "screenshots");

    private Shots() {}

    /** Puts a theme on. */
    public static void theme(boolean dark) {
        onEventThread(() -> dark ? FlatDarkLaf.setup() : FlatLightLaf.setup());
    }

    /** Runs something on the event thread and hands its result back. */
    public static <T> T onEventThread(Supplier<T> work) {
        if (SwingUtilities.isEventDispatchThread()) {
            return work.get();
        }
        java.util.concurrent.atomic.AtomicReference<T> result = new java.util.concurrent.atomic.AtomicReference<>();
        try {
            SwingUtilities.invokeAndWait(() -> result.set(work.get()));
        } catch (InvocationTargetException fault) {
            throw new IllegalStateException(fault.getCause());
        } catch (InterruptedException fault) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(fault);
        }
        return result.get();
    }

    /** Lays a panel out at a size, again and again until wrapped text has found its height. */
    public static void layOut(JComponent panel, int width, int height) {
        for (int round = 0; round < 3; round++) {
            onEventThread(() -> {
                panel.setSize(width, height);
                layOut(panel);
                return panel;
            });
        }
    }

    private static void layOut(Container container) {
        container.invalidate();
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    /** Takes and keeps a picture. */
    public static BufferedImage take(String name, JComponent panel, int width, int height, double scale) {
        layOut(panel, width, height);
        BufferedImage image = onEventThread(() -> Picture.image(panel, scale));
        try {
            Files.createDirectories(FOLDER);
            ImageIO.write(image, "png", FOLDER.resolve(name + ".png").toFile());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return image;
    }
}
