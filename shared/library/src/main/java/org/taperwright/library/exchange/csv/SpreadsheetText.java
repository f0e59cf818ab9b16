package org.taperwright.library.exchange.csv;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from running text as a formula. An apostrophe is put before a cell that begins with one of the signs
 * that spreadsheets take for a formula's beginning, and before such a sign after anything that a spreadsheet set to another
 * delimiter would take for a cell's beginning; where apostrophes stand there already, one more is put, so that taking one
 * away gives back the text exactly. Plain numbers, negative ones too, run nothing and stay as they are; in a spreadsheet set
 * to another delimiter what follows one runs on into its cell.
 *
 * <p>Source: OWASP, "CSV Injection" (= + - @ tab carriage return; the advice on field separators), from memory.
 */
final class SpreadsheetText {
    /** Characters after which another delimiter would begin a cell. */
    private static final String SEPARATORS = ",;\t|\"\n\r";

    private static final Pattern AT_BEGINNING = Pattern.compile("^('*)(?=[=+\\-@\\t\\r\\n＝＋－＠])");
    private static final Pattern WITHIN = Pattern.compile("(?<=[" + SEPARATORS + "])('*)(?=[=+\\-@])");
    private static final Pattern MARK_AT_BEGINNING = Pattern.compile("^'('*)(?=[=+\\-@\\t\\r\\n＝＋－＠])");
    private static final Pattern MARK_WITHIN = Pattern.compile("(?<=[" + SEPARATORS + "])'('*)(?=[=+\\-@])");
    private static final Pattern PLAIN_NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?([eE][+-]?\\d+)?");

    private SpreadsheetText() {}

    /** The text as a spreadsheet may have it. */
    static String guarded(String text) {
        if (!suspect(text) || PLAIN_NUMBER.matcher(text).matches()) {
            return text;
        }
        String within = WITHIN.matcher(text).replaceAll("'$1");
        return AT_BEGINNING.matcher(within).replaceFirst("'$1");
    }

    /** The text that was guarded. */
    static String restored(String text) {
        if (text.indexOf('\'') < 0) {
            return text;
        }
        String beginning = MARK_AT_BEGINNING.matcher(text).replaceFirst("$1");
        return MARK_WITHIN.matcher(beginning).replaceAll("$1");
    }

    private static boolean suspect(String text) {
        for (int i = 0; i < text.length(); i++) {
            if ("=+-@\t\r\n＝＋－＠".indexOf(text.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }
}
