package org.taperwright.shaping.instrument;

import java.util.Arrays;
import java.util.Base64;

/** A small picture of an instrument: a PNG or JPEG file within the limits of {@link Pictures}. It never changes. */
public final class Picture {
    /** Format of the file. */
    public enum Format {
        PNG("png"),
        JPEG("jpeg");

        private final String word;

        Format(String word) {
            this.word = word;
        }

        /** The name of the format, as registered for {@code image/…} media types. */
        public String word() {
            return word;
        }
    }

    private final byte[] file;
    private final Format format;
    private final int widthPx;
    private final int heightPx;

    /** Takes the bytes without a copy; {@link Pictures} has made one. */
    Picture(byte[] file, Format format, int widthPx, int heightPx) {
        this.file = file;
        this.format = format;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
    }

    /** A copy of the file's bytes. */
    public byte[] file() {
        return file.clone();
    }

    /** The file's bytes in Base64 (RFC 4648, section 4). */
    public String base64() {
        return Base64.getEncoder().encodeToString(file);
    }

    /** Format of the file. */
    public Format format() {
        return format;
    }

    /** Width, pixels. */
    public int widthPx() {
        return widthPx;
    }

    /** Height, pixels. */
    public int heightPx() {
        return heightPx;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Picture picture && Arrays.equals(file, picture.file);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(file);
    }

    @Override
    public String toString() {
        return format.word() + ' ' + widthPx + " × " + heightPx + ", " + file.length + " bytes";
    }
}
