package org.taperwright.library.exchange;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.taperwright.shaping.instrument.Picture;
import org.taperwright.shaping.instrument.PictureResult;
import org.taperwright.shaping.instrument.Pictures;

/** Pictures of one colour, written by the Java library's own encoders. */
final class ArbitraryPictures {
    private ArbitraryPictures() {}

    static Arbitrary<Picture> any() {
        return Combinators.combine(
                        Arbitraries.integers().between(1, 40),
                        Arbitraries.integers().between(1, 40),
                        Arbitraries.integers().between(0, 0xFFFFFF),
                        Arbitraries.of("png", "jpeg"))
                .as(ArbitraryPictures::taken);
    }

    private static Picture taken(int width, int height, int colour, String format) {
        if (Pictures.of(file(width, height, colour, format), "picture") instanceof PictureResult.Taken taken) {
            return taken.picture();
        }
        throw new AssertionError("a picture of " + width + " by " + height + " is refused");
    }

    static byte[] file(int width, int height, int colour, String format) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, colour);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, out);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return out.toByteArray();
    }
}
