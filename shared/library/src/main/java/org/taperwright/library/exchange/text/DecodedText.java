package org.taperwright.library.exchange.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Text of a stream of bytes. Gives everything before the first byte that the encoding does not know, then fails naming
 * that byte. A byte order mark of UTF-8 at the beginning is passed over.
 */
public final class DecodedText extends Reader {
    private static final int BLOCK = 1 << 16;
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final InputStream in;
    private final CharsetDecoder decoder;
    private final ByteBuffer bytes = ByteBuffer.allocate(BLOCK).flip();
    private final boolean marked;
    /** Bytes that came before those in the buffer. */
    private long before;

    private boolean ended;
    private boolean flushed;
    private boolean begun;

    /** The text of bytes in an encoding. */
    public DecodedText(InputStream in, Charset charset) {
        this.in = in;
        this.marked = charset.equals(StandardCharsets.UTF_8);
        this.decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    @Override
    public int read(char[] into, int from, int length) throws IOException {
        CharBuffer chars = CharBuffer.wrap(into, from, length);
        while (chars.position() == from && !flushed) {
            decode(chars);
        }
        int count = chars.position() - from;
        return count == 0 && flushed ? -1 : count;
    }

    private void decode(CharBuffer chars) throws IOException {
        if (!ended && bytes.remaining() < MARK.length) {
            refill();
        }
        int from = chars.position();
        CoderResult result = decoder.decode(bytes, chars, ended);
        if (result.isError() && chars.position() == from) {
            throw new UnreadableBytes(before + bytes.position() + 1);
        }
        if (result.isUnderflow() && ended) {
            flushed = decoder.flush(chars).isUnderflow();
        } else if (result.isUnderflow()) {
            refill();
        }
    }

    private void refill() throws IOException {
        before += bytes.position();
        bytes.compact();
        int count = in.read(bytes.array(), bytes.position(), bytes.remaining());
        ended = count < 0;
        bytes.position(bytes.position() + Math.max(0, count)).flip();
        if (!begun && (ended || bytes.remaining() >= MARK.length)) {
            begun = true;
            passMark();
        }
    }

    private void passMark() {
        boolean there = marked && bytes.remaining() >= MARK.length;
        for (int i = 0; there && i < MARK.length; i++) {
            there = bytes.get(bytes.position() + i) == MARK[i];
        }
        if (there) {
            bytes.position(bytes.position() + MARK.length);
        }
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
