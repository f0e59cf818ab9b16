package org.taperwright.catalogue.ui;

import java.util.Comparator;

/**
 * Order of names as people expect it: letters without regard to case, runs of digits by their number, so that size 8
 * stands before size 10 and 10 before 100.
 */
final class NaturalOrder {
    /** The order. */
    static final Comparator<String> OF_NAMES = NaturalOrder::compare;

    private NaturalOrder() {}

    private static int compare(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int endA = digitsEnd(a, i);
            int endB = digitsEnd(b, j);
            int order = endA > i && endB > j
                    ? compareDigits(a.substring(i, endA), b.substring(j, endB))
                    : Character.compare(Character.toLowerCase(a.charAt(i)), Character.toLowerCase(b.charAt(j)));
            if (order != 0) {
                return order;
            }
            i = Math.max(i + 1, endA);
            j = Math.max(j + 1, endB);
        }
        return Integer.compare(a.length() - i, b.length() - j);
    }

    private static int digitsEnd(String text, int from) {
        int end = from;
        while (end < text.length() && Character.isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static int compareDigits(String a, String b) {
        String x = withoutLeadingZeros(a);
        String y = withoutLeadingZeros(b);
        return x.length() == y.length() ? x.compareTo(y) : Integer.compare(x.length(), y.length());
    }

    private static String withoutLeadingZeros(String digits) {
        int start = 0;
        while (start < digits.length() - 1 && digits.charAt(start) == '0') {
            start++;
        }
        return digits.substring(start);
    }
}
