package org.taperwright.application;

import java.awt.AWTError;
import java.awt.AWTException;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** The screen the window tests run on, if there is one. */
final class Screen {
    private static final Path KEPT = Path.of(System.getProperty("screenshots", "target/screenshots"));

    private Screen() {}

    /** Whether windows can be shown. */
    static boolean present() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (HeadlessException | AWTError none) {
            return false;
        }
    }

    /** Keeps a picture of the whole screen among the build's artefacts. */
    static BufferedImage keep(String name) {
        try {
            BufferedImage picture = new Robot()
                    .createScreenCapture(
                            new Rectangle(Toolkit.getDefaultToolkit().getScreenSize()));
            Files.createDirectories(KEPT);
            ImageIO.write(picture, "png", KEPT.resolve(name + ".png").toFile());
            return picture;
        } catch (AWTException refused) {
            throw new IllegalStateException("the screen cannot be captured", refused);
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }
}
