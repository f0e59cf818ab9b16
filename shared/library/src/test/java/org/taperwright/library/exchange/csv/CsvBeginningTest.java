package org.taperwright.library.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvBeginningTest {
    private static CsvBeginning.Seen seen(byte[] bytes, Optional<Charset> chosen) throws IOException {
        return CsvBeginning.of(new ByteArrayInputStream(bytes), chosen);
    }

    private static CsvFormat format(String text) throws IOException {
        return ((CsvBeginning.Written) seen(text.getBytes(StandardCharsets.UTF_8), Optional.empty())).format();
    }

    private static String fault(byte[] bytes) throws IOException {
        return ((CsvBeginning.Unreadable) seen(bytes, Optional.empty()))
                .fault()
                .fault()
                .sentence();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "size,taper#25,0.04#30,.06|,|.",
                "size;taper#25;0,04#30;0,06|;|,",
                "size;taper#25;0.04#30;0.06|;|.",
                "size;lot#25;A1#30;B2|;|,",
                "size\ttaper#25\t0.04|\t|.",
                "size\ttaper#25\t0,04|\t|,",
                "name;note#\"a, b, c\";x, y#c;d, e, f|;|,",
                "name#one#two|,|."
            })
    void delimiterAndDecimalSignAreSeen(String text, char delimiter, char decimal) throws IOException {
        CsvFormat format = format(text.replace('#', '\n'));
        assertThat(format).isEqualTo(new CsvFormat(StandardCharsets.UTF_8, delimiter, decimal));
    }

    @Test
    void aByteOrderMarkIsOfUtf8() throws IOException {
        assertThat(format("\uFEFFa;b\nc;d").delimiter()).isEqualTo(';');
    }

    @Test
    void anotherEncodingIsReadOnlyWhenChosen() throws IOException {
        byte[] bytes = "name,maker\nHöhe,x\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(fault(bytes))
                .isEqualTo("file: holds bytes that are not of the encoding, first byte 13;"
                        + " expected UTF-8, or another encoding to be chosen");
        assertThat(seen(bytes, Optional.of(StandardCharsets.ISO_8859_1)))
                .isEqualTo(new CsvBeginning.Written(CsvFormat.USUAL.in(StandardCharsets.ISO_8859_1)));
    }

    @Test
    void whatIsNoTableSaysSo() throws IOException {
        assertThat(fault(new byte[0])).startsWith("file: is empty");
        assertThat(fault("a,b".getBytes(StandardCharsets.UTF_16))).startsWith("file: is UTF-16 text");
        assertThat(fault(new byte[] {'P', 'K', 3, 4, 0})).startsWith("file: is compressed");
        assertThat(fault(new byte[] {'a', 0, 'b'})).startsWith("file: holds binary data");
    }

    @Test
    void aLongLineOfSignsOfSeveralBytesIsNoBrokenEncoding() throws IOException {
        assertThat(format("ä中".repeat(40_000)).charset()).isEqualTo(StandardCharsets.UTF_8);
    }
}
