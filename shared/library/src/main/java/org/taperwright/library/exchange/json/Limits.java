package org.taperwright.library.exchange.json;

/**
 * How much a text may hold before it is refused, so that no file can exhaust the memory.
 *
 * @param characters length of the text
 * @param depth objects and lists within each other
 * @param values values in all
 * @param textLength length of one string or one number as written
 */
public record Limits(int characters, int depth, int values, int textLength) {
    /** What the forms are read with: 32 million characters, 32 deep, 2 million values, strings of 100,000. */
    public static final Limits USUAL = new Limits(32_000_000, 32, 2_000_000, 100_000);

    /** What one thing of a file that is read thing by thing may hold: 4 million characters, 250,000 values. */
    public static final Limits ONE_OF_MANY = new Limits(4_000_000, 32, 250_000, 100_000);
}
