package plumeline.trace;

/// The faces of lights, as rays meet them: from before only, through none of their holes.
final class Faces {
    /// A face is met rather than what lies on it, m.
    private static final double BEFORE_METRES = 1e-6;

    private final int count;
    private final int[] kinds;
    private final int[] holes;
    private final double[] numbers;
    private final double[] outlines;

    /// Takes lights as [Lamps] has them.
    Faces(int count, int[] kinds, int[] holes, double[] numbers) {
        this.count = count;
        this.kinds = kinds;
        this.holes = holes;
        this.numbers = numbers;
        outlines = new double[Shapes.CORNERS * count];
        for (int i = 0; i < count; i++) {
            outline(i);
        }
    }

    /// Notes which faces there are.
    void take(Scope scope) {
        for (int i = 0; i < count; i++) {
            if (kinds[i] != Lamps.SPOT) {
                scope.lights[scope.lightCount++] = i;
            }
        }
    }

    /// Notes which faces may be met by a camera's rays.
    void take(Scope scope, Frustum rays) {
        for (int i = 0; i < count; i++) {
            if (kinds[i] != Lamps.SPOT && !rays.misses(outlines, Shapes.CORNERS * i)) {
                scope.lights[scope.lightCount++] = i;
            }
        }
    }

    /// The corners of a box round a face.
    private void outline(int light) {
        int n = Lamps.EACH * light;
        double halfX = numbers[n + 12];
        double halfY = numbers[n + 13];
        double radius = numbers[n + 14];
        for (int i = 0; i < 8; i++) {
            double x = (i & 1) == 0 ? -1 : 1;
            double y = (i & 2) == 0 ? -1 : 1;
            double z = (i & 4) == 0 ? -1 : 1;
            boolean isTube = kinds[light] == Lamps.TUBE;
            double along = isTube ? x * halfX : 0;
            double right = isTube ? y * radius : x * halfX;
            double up = isTube ? z * radius : y * halfY;
            for (int j = 0; j < 3; j++) {
                outlines[Shapes.CORNERS * light + 3 * i + j] = numbers[n + j]
                        + along * numbers[n + 3 + j]
                        + right * numbers[n + 6 + j]
                        + up * numbers[n + 9 + j];
            }
        }
    }

    /// Tries the faces that a ray meets from before them.
    void meets(Scope scope, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        for (int k = 0; k < scope.lightCount; k++) {
            int i = scope.lights[k];
            double other = hit.what == Hit.LIGHT ? hit.t : hit.t + BEFORE_METRES;
            double t = kinds[i] == Lamps.TUBE
                    ? tubeMetres(i, ox, oy, oz, dx, dy, dz)
                    : flatMetres(i, ox, oy, oz, dx, dy, dz, other);
            if (t > Meets.NEAR_METRES && t < other && !isHole(i, ox + t * dx, oy + t * dy, oz + t * dz)) {
                hit.t = t;
                hit.what = Hit.LIGHT;
                hit.index = i;
            }
        }
    }

    private double flatMetres(int at, double ox, double oy, double oz, double dx, double dy, double dz, double most) {
        int n = Lamps.EACH * at;
        double toward = dx * numbers[n + 3] + dy * numbers[n + 4] + dz * numbers[n + 5];
        if (toward >= 0) {
            return -1;
        }
        double px = numbers[n] - ox;
        double py = numbers[n + 1] - oy;
        double pz = numbers[n + 2] - oz;
        double t = (px * numbers[n + 3] + py * numbers[n + 4] + pz * numbers[n + 5]) / toward;
        return t > 0 && t < most && isOn(at, t * dx - px, t * dy - py, t * dz - pz) ? t : -1;
    }

    /// Whether a place in a flat face's plane, from its middle, is on it.
    private boolean isOn(int at, double x, double y, double z) {
        int n = Lamps.EACH * at;
        double u = x * numbers[n + 6] + y * numbers[n + 7] + z * numbers[n + 8];
        double v = x * numbers[n + 9] + y * numbers[n + 10] + z * numbers[n + 11];
        return kinds[at] == Lamps.PANEL
                ? Math.abs(u) <= numbers[n + 12] && Math.abs(v) <= numbers[n + 13]
                : u * u + v * v <= numbers[n + 14] * numbers[n + 14];
    }

    boolean isHole(int light, double x, double y, double z) {
        int hole = holes[light];
        return hole >= 0
                && kinds[hole] != Lamps.TUBE
                && isOn(
                        hole,
                        x - numbers[Lamps.EACH * hole],
                        y - numbers[Lamps.EACH * hole + 1],
                        z - numbers[Lamps.EACH * hole + 2]);
    }

    private double tubeMetres(int at, double ox, double oy, double oz, double dx, double dy, double dz) {
        int n = Lamps.EACH * at;
        double px = ox - numbers[n];
        double py = oy - numbers[n + 1];
        double pz = oz - numbers[n + 2];
        double along = px * numbers[n + 3] + py * numbers[n + 4] + pz * numbers[n + 5];
        double w = dx * numbers[n + 3] + dy * numbers[n + 4] + dz * numbers[n + 5];
        double x = px * numbers[n + 6] + py * numbers[n + 7] + pz * numbers[n + 8];
        double u = dx * numbers[n + 6] + dy * numbers[n + 7] + dz * numbers[n + 8];
        double y = px * numbers[n + 9] + py * numbers[n + 10] + pz * numbers[n + 11];
        double v = dx * numbers[n + 9] + dy * numbers[n + 10] + dz * numbers[n + 11];
        double a = u * u + v * v;
        double b = x * u + y * v;
        double c = x * x + y * y - numbers[n + 14] * numbers[n + 14];
        double root = b * b - a * c;
        if (c <= 0 || root < 0 || b >= 0) {
            return -1;
        }
        double t = (-b - Math.sqrt(root)) / a;
        return Math.abs(along + t * w) <= numbers[n + 12] ? t : -1;
    }
}
