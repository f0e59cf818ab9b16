package org.taperwright.command;

import java.util.Locale;

/** A number of things in words. */
final class Counted {
    private Counted() {}

    /** Such as "1 row" or "2,500 rows". */
    static String of(long number, String one) {
        return String.format(Locale.UK, "%,d %s%s", number, one, number == 1 ? "" : "s");
    }
}
