package org.taperwright.shaping.instrument;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Picture.Format;

/**
 * Takes pictures from files of any origin. A file is refused for its size before anything in it is looked at, and for its
 * width and height as its header states them before any pixel is decoded, so that no small file can swell in memory. A
 * picture taken here may still be damaged further in; who shows it must be ready for that.
 */
public final class Pictures {
    /** Greatest size of a file, bytes: in Base64 it still fits one string of a JSON form. */
    public static final int MOST_BYTES = 65_536;

    /** Greatest width and height, pixels. */
    public static final int MOST_PIXELS = 1024;

    private static final int[] PNG = {0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A};
    private static final int[] JPEG = {0xFF, 0xD8, 0xFF};
    private static final String EXPECTED =
            "expected a PNG or JPEG file of at most 64 KiB and " + MOST_PIXELS + " × " + MOST_PIXELS + " pixels";

    private Pictures() {}

    /** Takes a file's bytes as the picture of the field named. */
    public static PictureResult of(byte[] file, String where) {
        if (file.length > MOST_BYTES) {
            return refused(where, "is a picture of " + file.length + " bytes");
        }
        Optional<Format> format = format(file);
        if (format.isEmpty()) {
            return refused(where, "is neither PNG nor JPEG");
        }
        byte[] own = file.clone();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(own))) {
            return measured(own, format.get(), in, where);
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException damaged) {
            return refused(where, "is a damaged picture");
        }
    }

    /** As {@link #of(byte[], String)}, from Base64. */
    public static PictureResult ofBase64(String text, String where) {
        try {
            return of(Base64.getDecoder().decode(text), where);
        } catch (IllegalArgumentException broken) {
            return refused(where, "is no Base64");
        }
    }

    private static PictureResult measured(byte[] own, Format format, ImageInputStream in, String where)
            throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.word());
        if (!readers.hasNext()) {
            return refused(where, "cannot be read on this machine");
        }
        ImageReader reader = readers.next();
        try {
            reader.setInput(in, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if (width < 1 || height < 1 || width > MOST_PIXELS || height > MOST_PIXELS) {
                return refused(where, "is a picture of " + width + " × " + height + " pixels");
            }
            return new PictureResult.Taken(new Picture(own, format, width, height));
        } finally {
            reader.dispose();
        }
    }

    private static Optional<Format> format(byte[] file) {
        if (begins(file, PNG)) {
            return Optional.of(Format.PNG);
        }
        return begins(file, JPEG) ? Optional.of(Format.JPEG) : Optional.empty();
    }

    private static boolean begins(byte[] file, int[] signature) {
        if (file.length < signature.length) {
            return false;
        }
        for (int i = 0; i < signature.length; i++) {
            if ((file[i] & 0xFF) != signature[i]) {
                return false;
            }
        }
        return true;
    }

    private static PictureResult refused(String where, String what) {
        return new PictureResult.Refused(Fault.impossible(where, what, EXPECTED));
    }
}
