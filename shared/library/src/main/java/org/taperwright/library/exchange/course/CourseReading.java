package org.taperwright.library.exchange.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.canal.RootOutline;
import org.taperwright.shaping.canal.Vector;
import org.taperwright.shaping.canal.fit.BendsFit;
import org.taperwright.shaping.canal.fit.FittedBends;
import org.taperwright.shaping.canal.fit.PositionFit;

/** A canal made of the rows of a table; what is wrong with it stands at the row that it comes from. */
final class CourseReading {
    /** Instrumentation ends so much short of the canal's end, mm: common practice, no source. */
    private static final double SHORT_OF_END_MM = 0.5;

    private static final Pattern NUMBERED = Pattern.compile("(points|openings|root)\\[(\\d{1,9})].*");

    private final List<CoursePoint> points;
    private final String name;
    private final DoubleUnaryOperator referenceMm;
    private final List<Place> openingPlaces = new ArrayList<>();
    private final List<Place> rootPlaces = new ArrayList<>();

    CourseReading(List<CoursePoint> points, String name, DoubleUnaryOperator referenceMm) {
        this.points = points;
        this.name = name;
        this.referenceMm = referenceMm;
    }

    CanalTable read() {
        List<Vector> course = points.stream().map(CoursePoint::point).toList();
        List<Fault> faults = PositionFit.faults(course);
        if (!faults.isEmpty()) {
            return new CanalTable.Refused(faults.stream().map(this::placed).toList());
        }
        Optional<FittedBends> fitted = BendsFit.of(course);
        if (fitted.isEmpty()) {
            return new CanalTable.Refused(List.of(new PlacedFault(
                    Place.START,
                    Fault.impossible(
                            "points",
                            "they lie along no canal that could be found",
                            "expected points from orifice to end in order"))));
        }
        Canal canal = canal(fitted.get());
        List<Fault> found = CanalGeometry.check(canal);
        List<Fault> impossible = found.stream()
                .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                .toList();
        return impossible.isEmpty()
                ? new CanalTable.Read(
                        canal,
                        points.size(),
                        fitted.get().bends(),
                        fitted.get().rmsMm(),
                        found.stream().map(this::placed).toList())
                : new CanalTable.Refused(impossible.stream().map(this::placed).toList());
    }

    private Canal canal(FittedBends fitted) {
        List<Opening> openings = new ArrayList<>();
        List<RootOutline> root = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            CoursePoint point = points.get(i);
            double depth = Math.max(0, fitted.depthsMm().get(i));
            point.opening(depth).ifPresent(opening -> {
                openings.add(opening);
                openingPlaces.add(point.place());
            });
            point.root(depth).ifPresent(outline -> {
                root.add(outline);
                rootPlaces.add(point.place());
            });
        }
        double length = fitted.depthsMm().get(points.size() - 1);
        double reference = referenceMm.applyAsDouble(length);
        return new Canal(
                name,
                fitted.pieces(),
                openings,
                root,
                reference,
                reference + length - SHORT_OF_END_MM,
                String.format(
                        Locale.ROOT,
                        "%d points of a table, smoothed; they stand %.3f mm from its course (root mean square)",
                        points.size(),
                        fitted.rmsMm()),
                "");
    }

    private PlacedFault placed(Fault fault) {
        Matcher numbered = NUMBERED.matcher(fault.where());
        if (!numbered.matches()) {
            return new PlacedFault(Place.START, fault);
        }
        int at = Integer.parseInt(numbered.group(2));
        Place place = switch (numbered.group(1)) {
            case "points" -> points.get(at).place();
            case "openings" -> openingPlaces.get(at);
            default -> rootPlaces.get(at);
        };
        return new PlacedFault(place, fault);
    }
}
