package org.taperwright.mechanics.bench.response;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Segment;

/**
 * An outline cut into pieces along which the height over a bending axis only rises or only falls. Each piece knows its
 * place by its height, so it can be integrated between any two heights.
 */
final class SlabPieces {
    /** Panels into which the section's height is cut at least. */
    private static final int PANELS = 64;
    /** Above so many pieces their ends are not made nodes of their own: the panels are then cut finer instead. */
    private static final int MANY = 128;

    private static final double[] GAUSS = {
        0.03376524289842397,
        0.16939530676686776,
        0.3806904069584015,
        0.6193095930415985,
        0.8306046932331322,
        0.966234757101576
    };
    private static final double[] WEIGHT = {
        0.08566224618958517,
        0.1803807865240693,
        0.23395696728634552,
        0.23395696728634552,
        0.1803807865240693,
        0.08566224618958517
    };

    private final List<Piece> pieces;

    private SlabPieces(List<Piece> pieces) {
        this.pieces = pieces;
    }

    /** A piece; xi and eta at a parameter, which is the angle of an arc and the height of a line. */
    private sealed interface Piece {
        double from();

        double to();

        double etaAt(double parameter);

        double xiAt(double parameter);

        /** d eta / d parameter. */
        double rateAt(double parameter);

        /** The parameter at a height between the piece's ends. */
        double at(double eta);

        default double low() {
            return Math.min(etaAt(from()), etaAt(to()));
        }

        default double high() {
            return Math.max(etaAt(from()), etaAt(to()));
        }

        /** 1 where the piece is run through upwards, -1 downwards. */
        default double sense() {
            return etaAt(to()) > etaAt(from()) ? 1 : -1;
        }
    }

    private record Straight(double xi0, double eta0, double xi1, double eta1) implements Piece {
        @Override
        public double from() {
            return eta0;
        }

        @Override
        public double to() {
            return eta1;
        }

        @Override
        public double etaAt(double parameter) {
            return parameter;
        }

        @Override
        public double xiAt(double parameter) {
            return xi0 + (parameter - eta0) / (eta1 - eta0) * (xi1 - xi0);
        }

        @Override
        public double rateAt(double parameter) {
            return 1;
        }

        @Override
        public double at(double eta) {
            return eta;
        }
    }

    /** An arc within one half turn from -90 to 90 degrees (right) or from 90 to 270 degrees (left). */
    private record Round(double xi, double eta, double radius, double from, double to, boolean right) implements Piece {
        @Override
        public double etaAt(double parameter) {
            return eta + radius * Math.sin(parameter);
        }

        @Override
        public double xiAt(double parameter) {
            return xi + radius * Math.cos(parameter);
        }

        @Override
        public double rateAt(double parameter) {
            return radius * Math.cos(parameter);
        }

        @Override
        public double at(double height) {
            double angle = Math.asin(Math.max(-1, Math.min(1, (height - eta) / radius)));
            double turn = right ? angle : Math.PI - angle;
            return turn + 2 * Math.PI * Math.rint(((from + to) / 2 - turn) / (2 * Math.PI));
        }
    }

    static SlabPieces of(Outline outline, double axis) {
        List<Piece> pieces = new ArrayList<>();
        double cos = Math.cos(axis);
        double sin = Math.sin(axis);
        for (Segment segment : outline.segments()) {
            if (segment instanceof Segment.Line line) {
                double eta0 = -sin * line.from().x() + cos * line.from().y();
                double eta1 = -sin * line.to().x() + cos * line.to().y();
                if (Math.abs(eta1 - eta0) > 1e-13) {
                    pieces.add(new Straight(
                            cos * line.from().x() + sin * line.from().y(),
                            eta0,
                            cos * line.to().x() + sin * line.to().y(),
                            eta1));
                }
            } else if (segment instanceof Segment.Arc arc) {
                round(arc, axis, pieces);
            }
        }
        return new SlabPieces(pieces);
    }

    private static void round(Segment.Arc arc, double axis, List<Piece> pieces) {
        double xi = Math.cos(axis) * arc.centre().x()
                + Math.sin(axis) * arc.centre().y();
        double eta = -Math.sin(axis) * arc.centre().x()
                + Math.cos(axis) * arc.centre().y();
        double from = arc.fromAngle() - axis;
        double to = arc.toAngle() - axis;
        double sense = Math.signum(to - from);
        while (sense * (to - from) > 1e-13) {
            // the next quarter-turn mark at which the height stops rising or falling
            double halfTurns = (from + Math.PI / 2) / Math.PI;
            double next = sense > 0 ? Math.floor(halfTurns + 1e-12) + 1 : Math.ceil(halfTurns - 1e-12) - 1;
            double mark = next * Math.PI - Math.PI / 2;
            double end = sense * (mark - to) > 0 ? to : mark;
            boolean right = Math.cos((from + end) / 2) > 0;
            pieces.add(new Round(xi, eta, arc.radius(), from, end, right));
            from = end;
        }
    }

    /** Heights between which the width of the section changes smoothly, cut finely enough for cubics. */
    double[] nodes() {
        TreeSet<Double> ends = new TreeSet<>();
        double bottom = pieces.stream().mapToDouble(Piece::low).min().orElseThrow();
        double top = pieces.stream().mapToDouble(Piece::high).max().orElseThrow();
        boolean many = pieces.size() > MANY;
        if (!many) {
            pieces.forEach(piece -> {
                ends.add(piece.low());
                ends.add(piece.high());
            });
        }
        double step = (top - bottom) / (many ? 4 * PANELS : PANELS);
        List<Double> nodes = new ArrayList<>();
        double last = bottom;
        nodes.add(bottom);
        ends.add(top);
        for (double end : ends.tailSet(bottom, false)) {
            if (end - last < 1e-9 && end < top) {
                continue;
            }
            int cuts = (int) Math.ceil((end - last) / step - 1e-9);
            for (int k = 1; k < cuts; k++) {
                nodes.add(last + (end - last) * k / cuts);
            }
            nodes.add(end);
            last = end;
        }
        return nodes.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Adds each piece's share to the integrals within each panel and to their slopes at its ends. */
    void integrate(double[] node, double[] within, double[] slope) {
        for (Piece piece : pieces) {
            int panel = Math.max(0, lastAtMost(node, piece.low()));
            for (; panel < node.length - 1 && node[panel] < piece.high() - 1e-12; panel++) {
                double low = Math.max(node[panel], piece.low());
                double high = Math.min(node[panel + 1], piece.high());
                if (high - low > 1e-14) {
                    integrate(piece, low, high, within, panel * Slabs.COUNT);
                }
                if (piece.low() <= node[panel] + 1e-9) {
                    slopes(piece, low, slope, 2 * panel * Slabs.COUNT);
                }
                if (piece.high() >= node[panel + 1] - 1e-9) {
                    slopes(piece, high, slope, (2 * panel + 1) * Slabs.COUNT);
                }
            }
        }
    }

    private static int lastAtMost(double[] node, double height) {
        int found = java.util.Arrays.binarySearch(node, height);
        return found >= 0 ? found : -found - 2;
    }

    private static void integrate(Piece piece, double low, double high, double[] within, int at) {
        double a = piece.at(low);
        double b = piece.at(high);
        double sense = piece.sense();
        for (int i = 0; i < GAUSS.length; i++) {
            double parameter = a + GAUSS[i] * (b - a);
            double weight = sense * WEIGHT[i] * (b - a) * piece.rateAt(parameter);
            double xi = piece.xiAt(parameter);
            double eta = piece.etaAt(parameter);
            within[at + Slabs.AREA] += weight * xi;
            within[at + Slabs.FIRST] += weight * xi * eta;
            within[at + Slabs.SECOND] += weight * xi * eta * eta;
            within[at + Slabs.ACROSS] += weight * xi * xi / 2;
            within[at + Slabs.PRODUCT] += weight * xi * xi / 2 * eta;
        }
    }

    private static void slopes(Piece piece, double eta, double[] slope, int at) {
        double sense = piece.sense();
        double xi = piece.xiAt(piece.at(eta));
        slope[at + Slabs.AREA] -= sense * xi;
        slope[at + Slabs.FIRST] -= sense * xi * eta;
        slope[at + Slabs.SECOND] -= sense * xi * eta * eta;
        slope[at + Slabs.ACROSS] -= sense * xi * xi / 2;
        slope[at + Slabs.PRODUCT] -= sense * xi * xi / 2 * eta;
    }
}
