package org.taperwright.shaping.canal;

import java.util.ArrayList;
import java.util.List;

/**
 * The centreline in space: pieces of constant curvature vector (k1, k2), 1/mm, in a frame (t, m1, m2) that does not twist,
 *
 * <pre>t' = k1 m1 + k2 m2,  m1' = -k1 t,  m2' = -k2 t</pre>
 *
 * advanced by exact rotation. Straight before the orifice (depth 0) and beyond the end. Source: the frame of relatively
 * parallel normals (Bishop, Am Math Monthly 82 (1975) 246; from memory).
 */
public final class Centreline {
    private final double[] start;
    private final double[] first;
    private final double[] second;
    private final double[] integralFirst;
    private final double[] integralSecond;
    private final List<Frame> frames = new ArrayList<>();

    private Centreline(List<CanalPiece> pieces) {
        int count = pieces.size();
        start = new double[count + 1];
        first = new double[count + 1];
        second = new double[count + 1];
        integralFirst = new double[count + 1];
        integralSecond = new double[count + 1];
        Frame frame = Frame.ORIFICE;
        frames.add(frame);
        for (int i = 0; i < count; i++) {
            CanalPiece piece = pieces.get(i);
            double turned = Math.toRadians(piece.angleDeg());
            double azimuth = Math.toRadians(piece.azimuthDeg());
            first[i] = turned * Math.cos(azimuth) / piece.lengthMm();
            second[i] = turned * Math.sin(azimuth) / piece.lengthMm();
            start[i + 1] = start[i] + piece.lengthMm();
            integralFirst[i + 1] = integralFirst[i] + first[i] * piece.lengthMm();
            integralSecond[i + 1] = integralSecond[i] + second[i] * piece.lengthMm();
            frame = frame.along(first[i], second[i], piece.lengthMm());
            frames.add(frame);
        }
    }

    /** The centreline of pieces that each have a length above 0. */
    public static Centreline of(List<CanalPiece> pieces) {
        return new Centreline(pieces);
    }

    /** Length, mm. */
    public double lengthMm() {
        return start[start.length - 1];
    }

    /** Curvature towards azimuth 0 at a depth, 1/mm; between two pieces that of the later. */
    public double firstAt(double depthMm) {
        return straight(depthMm) ? 0 : first[piece(depthMm)];
    }

    /** Curvature towards azimuth 90 degrees at a depth, 1/mm. */
    public double secondAt(double depthMm) {
        return straight(depthMm) ? 0 : second[piece(depthMm)];
    }

    /** Integral of the curvature towards azimuth 0 from the orifice to a depth, rad; its differences are exact means. */
    public double integralFirstTo(double depthMm) {
        return integral(integralFirst, first, depthMm);
    }

    /** Integral of the curvature towards azimuth 90 degrees from the orifice to a depth, rad. */
    public double integralSecondTo(double depthMm) {
        return integral(integralSecond, second, depthMm);
    }

    /** Place and directions at a depth. */
    public Frame at(double depthMm) {
        if (depthMm <= 0) {
            return frames.get(0).along(0, 0, depthMm);
        }
        int piece = piece(depthMm);
        return frames.get(piece).along(first[piece], second[piece], depthMm - start[piece]);
    }

    private double integral(double[] integral, double[] curvature, double depthMm) {
        if (depthMm <= 0) {
            return 0;
        }
        int piece = piece(depthMm);
        return integral[piece] + curvature[piece] * (depthMm - start[piece]);
    }

    private boolean straight(double depthMm) {
        return depthMm < 0 || depthMm > lengthMm();
    }

    /** The piece that a depth lies in; the last place, which is straight, beyond the end. */
    private int piece(double depthMm) {
        int piece = 0;
        while (piece + 1 < start.length && start[piece + 1] <= depthMm) {
            piece++;
        }
        return piece;
    }
}
