package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.section.Point;

/**
 * Points of an outline as text: one a line, x and y separated by comma, semicolon, tab or spaces. A first line of words
 * is a heading; empty lines and lines that begin with # are passed over.
 */
sealed interface PointsText {
    /** Fewest points that enclose anything. */
    int FEWEST = 3;

    /** The points, in the text's order. */
    record Points(List<Point> points) implements PointsText {
        public Points {
            points = List.copyOf(points);
        }
    }

    /** What is wrong, and on which line. */
    record Refused(String why) implements PointsText {}

    /** Reads a text. */
    static PointsText read(String text) {
        List<Point> points = new ArrayList<>();
        String[] lines = text.split("\\R");
        boolean heading = true;
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split("\\s*[,;\\t]\\s*|\\s+");
            OptionalDouble x = number(cells[0]);
            OptionalDouble y = cells.length > 1 ? number(cells[1]) : OptionalDouble.empty();
            boolean pair = cells.length == 2 && x.isPresent() && y.isPresent();
            if (pair) {
                points.add(new Point(x.getAsDouble(), y.getAsDouble()));
            } else if (!(heading && x.isEmpty())) {
                return new Refused("Line " + (i + 1) + ": \u201c" + line
                        + "\u201d is not a point; expected two numbers, x and y, with a comma between.");
            }
            heading = false;
        }
        if (points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        return points.size() < FEWEST
                ? new Refused("Only " + points.size() + " points; an outline needs at least " + FEWEST + ".")
                : new Points(points);
    }

    private static OptionalDouble number(String cell) {
        try {
            double value = Double.parseDouble(cell);
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException words) {
            return OptionalDouble.empty();
        }
    }
}
