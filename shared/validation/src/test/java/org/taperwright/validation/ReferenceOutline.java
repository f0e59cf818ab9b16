package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

/** The outlines of reference/sections.json as they stand there; half an ellipse as 200 circular arcs through its points. */
final class ReferenceOutline {
    private static final int ARCS = 200;

    private ReferenceOutline() {}

    /** The outline of a section by its name in the file. */
    static Outline named(String name) {
        return of(ReferenceFile.read("sections.json").get("sections").get(name).get("outline_ccw"));
    }

    static Outline of(JsonNode pieces) {
        List<Segment> segments = new ArrayList<>();
        for (JsonNode piece : pieces) {
            switch (piece.get("kind").asText()) {
                case "line" -> segments.add(new Segment.Line(point(piece.get("p0")), point(piece.get("p1"))));
                case "arc" ->
                    segments.add(new Segment.Arc(
                            point(piece.get("centre")),
                            piece.get("radius").asDouble(),
                            piece.get("theta0").asDouble(),
                            piece.get("theta1").asDouble()));
                case "ellipse_arc" -> addEllipse(segments, piece);
                default -> throw new IllegalArgumentException("unknown piece " + piece);
            }
        }
        return new Outline(segments);
    }

    private static void addEllipse(List<Segment> segments, JsonNode piece) {
        double from = piece.get("t0").asDouble();
        double step = (piece.get("t1").asDouble() - from) / ARCS;
        for (int k = 0; k < ARCS; k++) {
            segments.add(Segment.through(
                    onEllipse(piece, from + k * step),
                    onEllipse(piece, from + (k + 0.5) * step),
                    onEllipse(piece, from + (k + 1) * step)));
        }
    }

    private static Point onEllipse(JsonNode piece, double t) {
        return new Point(piece.get("a").asDouble() * Math.cos(t), piece.get("b").asDouble() * Math.sin(t));
    }

    private static Point point(JsonNode pair) {
        return new Point(pair.get(0).asDouble(), pair.get(1).asDouble());
    }
}
