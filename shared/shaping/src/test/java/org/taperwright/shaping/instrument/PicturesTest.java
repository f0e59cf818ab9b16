package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.shaping.instrument.Picture.Format;

class PicturesTest {
    private static final String EXPECTED = "; expected a PNG or JPEG file of at most 64 KiB and 1024 × 1024 pixels";

    /** Written by the Java library's encoders. */
    private static byte[] file(int width, int height, String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    private static Picture taken(byte[] file) {
        assertThat(Pictures.of(file, "picture")).isInstanceOf(PictureResult.Taken.class);
        return ((PictureResult.Taken) Pictures.of(file, "picture")).picture();
    }

    private static String refusal(byte[] file) {
        assertThat(Pictures.of(file, "picture")).isInstanceOf(PictureResult.Refused.class);
        return ((PictureResult.Refused) Pictures.of(file, "picture")).fault().sentence();
    }

    @ParameterizedTest
    @CsvSource({"png,PNG", "jpeg,JPEG"})
    void aSmallPngOrJpegIsTakenWithItsWidthAndHeight(String written, Format format) throws IOException {
        Picture picture = taken(file(30, 20, written));
        assertThat(picture.format()).isEqualTo(format);
        assertThat(picture.widthPx()).isEqualTo(30);
        assertThat(picture.heightPx()).isEqualTo(20);
        assertThat(picture.file()).isEqualTo(file(30, 20, written));
    }

    @Test
    void aPictureIsAsWideAndHighAsAllowedAndNoMore() throws IOException {
        assertThat(taken(file(1024, 1024, "png")).widthPx()).isEqualTo(1024);
        assertThat(refusal(file(1025, 2, "png"))).isEqualTo("picture: is a picture of 1025 × 2 pixels" + EXPECTED);
        assertThat(refusal(file(2, 1025, "jpeg"))).isEqualTo("picture: is a picture of 2 × 1025 pixels" + EXPECTED);
    }

    @Test
    void aPictureCannotBeChangedFromOutside() throws IOException {
        byte[] file = file(3, 3, "png");
        Picture picture = taken(file);
        file[file.length - 1] ^= 1;
        picture.file()[0] = 0;
        assertThat(picture.file()).isEqualTo(file(3, 3, "png"));
        assertThat(picture).isEqualTo(taken(file(3, 3, "png"))).hasSameHashCodeAs(taken(file(3, 3, "png")));
        assertThat(picture).isNotEqualTo(taken(file(3, 4, "png")));
    }

    @Test
    void moreBytesThanAllowedAreRefusedUnlooked() {
        byte[] large = new byte[Pictures.MOST_BYTES + 1];
        assertThat(refusal(large)).isEqualTo("picture: is a picture of 65537 bytes" + EXPECTED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "GIF89a", "<svg xmlns='http://www.w3.org/2000/svg'/>", "BM", "\u0089PN"})
    void otherFilesAreRefused(String text) {
        assertThat(refusal(text.getBytes(StandardCharsets.ISO_8859_1)))
                .isEqualTo("picture: is neither PNG nor JPEG" + EXPECTED);
    }

    /**
     * A file of under a kilobyte whose header states 60,000 × 60,000 pixels, over 10 GB if they were decoded (PNG
     * specification, W3C, section 11.2.2).
     */
    @Test
    void aPictureThatWouldSwellInMemoryIsRefusedByItsHeader() throws IOException {
        byte[] bomb = file(2, 2, "png");
        ByteBuffer header = ByteBuffer.wrap(bomb);
        header.putInt(16, 60_000).putInt(20, 60_000);
        CRC32 check = new CRC32();
        check.update(bomb, 12, 17);
        header.putInt(29, (int) check.getValue());
        assertThat(refusal(bomb)).isEqualTo("picture: is a picture of 60000 × 60000 pixels" + EXPECTED);
    }

    @Test
    void aFileCutOffInItsHeaderIsDamaged() throws IOException {
        for (String format : new String[] {"png", "jpeg"}) {
            byte[] file = file(20, 20, format);
            assertThat(refusal(Arrays.copyOf(file, 12))).startsWith("picture: is a damaged picture");
        }
    }

    /** Whatever bytes follow a signature, the answer is a picture or a refusal, never an exception. */
    @Test
    void noFileMakesItFail() throws IOException {
        Random random = new Random(7);
        int taken = 0;
        for (int i = 0; i < 3000; i++) {
            byte[] file = file(8, 8, i % 2 == 0 ? "png" : "jpeg");
            for (int j = 0; j < 1 + i % 5; j++) {
                file[8 + random.nextInt(Math.min(200, file.length - 8))] = (byte) random.nextInt();
            }
            if (Pictures.of(file, "picture") instanceof PictureResult.Taken picture) {
                assertThat(picture.picture().widthPx()).isBetween(1, Pictures.MOST_PIXELS);
                taken++;
            }
        }
        assertThat(taken).isBetween(1, 2999);
    }

    @Test
    void base64IsReadAndBrokenBase64Refused() throws IOException {
        String text = Base64.getEncoder().encodeToString(file(4, 5, "png"));
        assertThat(Pictures.ofBase64(text, "picture"))
                .isInstanceOfSatisfying(
                        PictureResult.Taken.class,
                        taken -> assertThat(taken.picture().base64()).isEqualTo(text));
        assertThat(Pictures.ofBase64("§", "picture"))
                .isInstanceOfSatisfying(
                        PictureResult.Refused.class,
                        refused ->
                                assertThat(refused.fault().sentence()).isEqualTo("picture: is no Base64" + EXPECTED));
    }
}
