package org.taperwright.catalogue.ui;

import java.util.Comparator;

/**
 * Order of names as people expect it: letters without regard to case, runs of digits by their number, so that size 8
 * stands before size 10 and 10 before 100.
 */
final class NaturalOrder {
    /** The order, for a few names; for many, sort by {@link #key} made once for each. */
    static final Comparator<String> OF_NAMES = Comparator.comparing(NaturalOrder::key);

    private NaturalOrder() {}

    /** A text whose plain order is this order: each run of digits becomes a 0, its length and its digits. */
    static String key(String name) {
        StringBuilder key = new StringBuilder(name.length() + 4);
        int i = 0;
        while (i < name.length()) {
            int end = digitsEnd(name, i);
            if (end == i) {
                key.append(Character.toLowerCase(name.charAt(i)));
                i++;
            } else {
                int start = i;
                while (start < end - 1 && name.charAt(start) == '0') {
                    start++;
                }
                key.append('0').append((char) (end - start)).append(name, start, end);
                i = end;
            }
        }
        return key.toString();
    }

    private static int digitsEnd(String text, int from) {
        int end = from;
        while (end < text.length() && Character.isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }
}
