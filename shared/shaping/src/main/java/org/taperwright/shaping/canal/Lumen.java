package org.taperwright.shaping.canal;

/**
 * The open space of a canal: polar radii r(s_j, theta_k) about the centreline at even stations s_j and even angles
 * theta_k, from which an instrument's circles are united. Not safe for threads while it is being widened.
 */
public final class Lumen {
    private final double spacingMm;
    private final int stations;
    private final Directions directions;
    private final double[] radius;

    private Lumen(double spacingMm, int stations, Directions directions, double[] radius) {
        this.spacingMm = spacingMm;
        this.stations = stations;
        this.directions = directions;
        this.radius = radius;
    }

    /**
     * A canal as it is before shaping, an ellipse at each station.
     *
     * @param spacingMm wanted distance of stations; made even over the canal's length
     * @param angles number of directions
     */
    public static Lumen of(Canal canal, double spacingMm, int angles) {
        CanalGeometry geometry = new CanalGeometry(canal);
        int spaces = Math.max(1, (int) Math.round(geometry.lengthMm() / spacingMm));
        double spacing = geometry.lengthMm() / spaces;
        Directions directions = Directions.of(angles);
        double[] radius = new double[(spaces + 1) * angles];
        for (int j = 0; j <= spaces; j++) {
            Opening opening = geometry.at(j * spacing);
            double azimuth = Math.toRadians(opening.azimuthDeg());
            for (int k = 0; k < angles; k++) {
                double along = Math.cos(directions.angle(k) - azimuth) / opening.wideMm();
                double across = Math.sin(directions.angle(k) - azimuth) / opening.narrowMm();
                radius[j * angles + k] = 0.5 / Math.sqrt(along * along + across * across);
            }
        }
        return new Lumen(spacing, spaces + 1, directions, radius);
    }

    /** The same space, to be widened by itself. */
    public Lumen copy() {
        return new Lumen(spacingMm, stations, directions, radius.clone());
    }

    /** Number of stations. */
    public int stations() {
        return stations;
    }

    /** Distance of stations, mm. */
    public double spacingMm() {
        return spacingMm;
    }

    /** The directions. */
    public Directions directions() {
        return directions;
    }

    /** Depth of a station, mm. */
    public double depthMm(int station) {
        return station * spacingMm;
    }

    /** Radius at a station in a direction, mm. */
    public double radiusMm(int station, int direction) {
        return radius[station * directions.count() + direction];
    }

    /**
     * Unites the section at a station with a circle: {@code r = max(r, u.e + sqrt(R^2 - |u|^2 + (u.e)^2))} in each
     * direction e that meets the circle.
     *
     * @return whether anything was widened
     */
    public boolean unite(int station, double u1, double u2, double radiusMm) {
        boolean widened = false;
        int at = station * directions.count();
        double beyond = radiusMm * radiusMm - u1 * u1 - u2 * u2;
        for (int k = 0; k < directions.count(); k++) {
            double along = u1 * directions.cos(k) + u2 * directions.sin(k);
            double square = beyond + along * along;
            if (square >= 0) {
                double reach = along + Math.sqrt(square);
                if (reach > radius[at + k]) {
                    radius[at + k] = reach;
                    widened = true;
                }
            }
        }
        return widened;
    }

    /** Writes the support function of a station, {@code h(theta) = max_k r_k cos(theta_k - theta)}, from a place on. */
    public void support(int station, double[] answer, int from) {
        int count = directions.count();
        int at = station * count;
        double greatest = 0;
        for (int k = 0; k < count; k++) {
            greatest = Math.max(greatest, radius[at + k]);
        }
        int quarter = count / 4;
        for (int k = 0; k < count; k++) {
            double reach = radius[at + k];
            // the cosine falls with the angle, so the search ends where no radius could reach further
            for (int turn = 1; turn <= quarter && greatest * directions.cos(turn) > reach; turn++) {
                int above = k + turn < count ? k + turn : k + turn - count;
                int below = k >= turn ? k - turn : k - turn + count;
                reach = Math.max(reach, Math.max(radius[at + above], radius[at + below]) * directions.cos(turn));
            }
            answer[from + k] = reach;
        }
    }

    /** Area of the section at a station, mm²: {@code 1/2 sum r^2 dtheta}. */
    public double areaMm2(int station) {
        double sum = 0;
        for (int k = 0; k < directions.count(); k++) {
            double r = radiusMm(station, k);
            sum += r * r;
        }
        return sum * directions.stepRad() / 2;
    }

    /** Moment of the section's area towards azimuth 0 (axis 0) or 90 degrees (axis 1), mm³: {@code sum r^3 e dtheta / 3}. */
    public double momentMm3(int station, int axis) {
        double sum = 0;
        for (int k = 0; k < directions.count(); k++) {
            double r = radiusMm(station, k);
            sum += r * r * r * (axis == 0 ? directions.cos(k) : directions.sin(k));
        }
        return sum * directions.stepRad() / 3;
    }

    /** Volume per length of the centreline at a station, mm²: {@code A - kappa.m}. */
    public double volumePerLengthMm2(int station, Centreline line) {
        double depth = depthMm(station);
        return areaMm2(station)
                - line.firstAt(depth) * momentMm3(station, 0)
                - line.secondAt(depth) * momentMm3(station, 1);
    }
}
