package plumeline.trace;

/// Where rays meet shapes: closed forms, each in the shape's own frame. Directions are of length 1.
final class Meets {
    /// Nearer than this to where it begins a ray meets nothing, m: it lies on what it left.
    static final double NEAR_METRES = 1e-7;

    /// By so much pieces reach over their ends, so that no ray slips between two, m.
    private static final double OVER_METRES = 1e-12;

    /// By so much more of a ray is looked at than where it can meet something, m.
    private static final double SLACK_METRES = 1e-9;

    private final int[] kinds;
    private final int[] firsts;
    private final int[] faces;
    private final double[] frames;
    private final double[] balls;
    private final double[] sizes;
    private final double[] pieces;

    Meets(Shapes shapes) {
        kinds = shapes.kinds();
        firsts = shapes.firsts();
        faces = shapes.faces();
        frames = shapes.frames();
        balls = shapes.balls();
        sizes = shapes.sizes();
        pieces = shapes.pieces();
    }

    /// The middle of the ball round a shape, and its radius, four numbers a shape.
    double[] balls() {
        return balls;
    }

    int kind(int shape) {
        return kinds[shape];
    }

    /// Which way a piece of a turned shape faces: 0 is its side.
    int faces(int piece) {
        return faces[piece];
    }

    double size(int shape, int which) {
        return sizes[3 * shape + which];
    }

    double[] frames() {
        return frames;
    }

    /// The corners of a box round a shape, as wide as its numbers say and a little more.
    double[] corners(int shape) {
        double a = sizes[3 * shape];
        double b = sizes[3 * shape + 1];
        double c = sizes[3 * shape + 2];
        double reach = Math.sqrt(a);
        return switch (kinds[shape]) {
            case Shapes.TURNED -> corners(shape, -reach, reach, -reach, reach, 0, b);
            case Shapes.BOX -> corners(shape, -a, a, -b, b, 0, c);
            case Shapes.BALL -> corners(shape, -a, a, -a, a, 0, 2 * a);
            case Shapes.SHEET -> corners(shape, -a, a, -b, b, 0, 0);
            default -> corners(shape, 0, a, 0, a, -b, b);
        };
    }

    private double[] corners(int shape, double x1, double x2, double y1, double y2, double z1, double z2) {
        double[] corners = new double[Shapes.CORNERS];
        int f = Shapes.FRAME * shape;
        for (int i = 0; i < 8; i++) {
            double x = (i & 1) == 0 ? x1 - SLACK_METRES : x2 + SLACK_METRES;
            double y = (i & 2) == 0 ? y1 - SLACK_METRES : y2 + SLACK_METRES;
            double z = (i & 4) == 0 ? z1 - SLACK_METRES : z2 + SLACK_METRES;
            for (int j = 0; j < 3; j++) {
                corners[3 * i + j] =
                        frames[f + j] + x * frames[f + 3 + j] + y * frames[f + 6 + j] + z * frames[f + 9 + j];
            }
        }
        return corners;
    }

    /// Whether any of a shape may lie in a basin.
    boolean mayReach(int shape, Tub tub) {
        if (!tub.isNear(balls[4 * shape], balls[4 * shape + 1], balls[4 * shape + 2], balls[4 * shape + 3])) {
            return false;
        }
        int f = Shapes.FRAME * shape;
        return kinds[shape] != Shapes.SHEET
                || tub.isCut(
                        frames[f + 9],
                        frames[f + 10],
                        frames[f + 11],
                        frames[f] * frames[f + 9] + frames[f + 1] * frames[f + 10] + frames[f + 2] * frames[f + 11]);
    }

    /// Notes which of many ways may come into the ball round a shape.
    ///
    /// @param beside takes a number over 0 where one doesn't
    void mayMeetBall(int shape, Rows rows, int count, double[] beside) {
        Ways.besideBall(
                count, balls, 4 * shape, rows.px, rows.py, rows.pz, rows.dx, rows.dy, rows.dz, rows.far, beside);
    }

    /// Whether ways all stay before the chord of a bend: all of it lies past that.
    boolean isBeside(int shape, Beam ways) {
        int f = Shapes.FRAME * shape;
        double nx = -frames[f + 3] - frames[f + 6];
        double ny = -frames[f + 4] - frames[f + 7];
        double nz = -frames[f + 5] - frames[f + 8];
        double far = nx * frames[f] + ny * frames[f + 1] + nz * frames[f + 2] - sizes[3 * shape];
        return kinds[shape] == Shapes.BEND && ways.isOver(1, nx, ny, nz, far);
    }

    /// Notes which of many ways may meet a sheet.
    void mayMeetSheet(int shape, Rows rows, int count) {
        turn(shape, rows, count);
        Ways.besideSheet(
                count,
                sizes[3 * shape],
                sizes[3 * shape + 1],
                rows.left,
                rows.low,
                rows.z,
                rows.u,
                rows.v,
                rows.w,
                rows.far,
                rows.near);
    }

    /// Notes which of many ways may meet a bend.
    void mayMeetBend(int shape, Rows rows, int count) {
        turn(shape, rows, count);
        double radius = sizes[3 * shape];
        double half = sizes[3 * shape + 1];
        Ways.across(count, radius * radius, rows.left, rows.low, rows.u, rows.v, rows.from, rows.to, rows.high);
        Ways.besideBend(count, half, rows.from, rows, rows.high, rows.near);
        Ways.besideBend(count, half, rows.to, rows, rows.high, rows.near);
    }

    private void turn(int shape, Rows rows, int count) {
        int f = Shapes.FRAME * shape;
        Ways.turn(count, frames, f + 3, frames, f, rows.px, rows.py, rows.pz, rows.left);
        Ways.turn(count, frames, f + 6, frames, f, rows.px, rows.py, rows.pz, rows.low);
        Ways.turn(count, frames, f + 9, frames, f, rows.px, rows.py, rows.pz, rows.z);
        Ways.turn(count, frames, f + 3, Ways.NONE, 0, rows.dx, rows.dy, rows.dz, rows.u);
        Ways.turn(count, frames, f + 6, Ways.NONE, 0, rows.dx, rows.dy, rows.dz, rows.v);
        Ways.turn(count, frames, f + 9, Ways.NONE, 0, rows.dx, rows.dy, rows.dz, rows.w);
    }

    /// Tries a shape: where it is met before `hit.t`, that and the piece are noted.
    boolean meets(int shape, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        double bx = balls[4 * shape] - ox;
        double by = balls[4 * shape + 1] - oy;
        double bz = balls[4 * shape + 2] - oz;
        double radius = balls[4 * shape + 3];
        double on = bx * dx + by * dy + bz * dz;
        double beside = bx * bx + by * by + bz * bz - on * on;
        if (beside > radius * radius || on + radius < 0 || on - radius > hit.t) {
            return false;
        }
        return meetsInBall(shape, ox, oy, oz, dx, dy, dz, hit);
    }

    /// Likewise, for a ray that comes into the ball round the shape.
    boolean meetsInBall(int shape, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        int f = Shapes.FRAME * shape;
        double px = ox - frames[f];
        double py = oy - frames[f + 1];
        double pz = oz - frames[f + 2];
        if (kinds[shape] == Shapes.BEND && staysBeforeChord(shape, px, py, pz, dx, dy, dz, hit.t)) {
            return false;
        }
        double z = px * frames[f + 9] + py * frames[f + 10] + pz * frames[f + 11];
        double w = dx * frames[f + 9] + dy * frames[f + 10] + dz * frames[f + 11];
        if (kinds[shape] == Shapes.TURNED) {
            // Round its axis all ways are the same: what lies across is found without turning it.
            double across = Math.max(0, 1 - w * w);
            double toward = px * dx + py * dy + pz * dz - z * w;
            return turned(shape, across, toward, px * px + py * py + pz * pz - z * z, z, w, hit);
        }
        double x = px * frames[f + 3] + py * frames[f + 4] + pz * frames[f + 5];
        double y = px * frames[f + 6] + py * frames[f + 7] + pz * frames[f + 8];
        double u = dx * frames[f + 3] + dy * frames[f + 4] + dz * frames[f + 5];
        double v = dx * frames[f + 6] + dy * frames[f + 7] + dz * frames[f + 8];
        return switch (kinds[shape]) {
            case Shapes.BOX -> box(shape, x, y, z, u, v, w, hit);
            case Shapes.BALL -> ball(shape, x, y, z, u, v, w, hit);
            case Shapes.SHEET -> sheet(shape, x, y, z, u, v, w, hit);
            default -> bend(shape, x, y, z, u, v, w, hit);
        };
    }

    /// First what of the ray is in the cylinder round the whole; then only the pieces at heights that it passes there.
    ///
    /// @param a square of the direction across the axis
    /// @param b product of direction and place across it
    /// @param c square of the place's distance from it
    private boolean turned(int shape, double a, double b, double c, double z, double w, Hit hit) {
        double from = NEAR_METRES;
        double to = hit.t;
        double past = c - sizes[3 * shape];
        if (a > 1e-24) {
            double root = b * b - a * past;
            if (root < 0) {
                return false;
            }
            root = Math.sqrt(root);
            from = Math.max(from, (-b - root) / a);
            to = Math.min(to, (root - b) / a);
        } else if (past > 0) {
            return false;
        }
        if (from > to + SLACK_METRES) {
            return false;
        }
        double one = z + from * w;
        double other = z + to * w;
        double low = Math.min(one, other) - SLACK_METRES;
        double high = Math.max(one, other) + SLACK_METRES;
        boolean met = false;
        int end = firsts[shape + 1];
        for (int i = firsts[shape]; i < end; i++) {
            int at = Shapes.PIECE * i;
            if (pieces[at] > high || pieces[at + 1] < low) {
                continue;
            }
            boolean is = faces[i] == 0 ? cone(at, a, b, c, z, w, hit) : ring(at, a, b, c, z, w, hit);
            if (is) {
                hit.piece = i;
                met = true;
            }
        }
        return met;
    }

    private boolean ring(int at, double a, double b, double c, double z, double w, Hit hit) {
        double t = (pieces[at] - z) / w;
        if (t > NEAR_METRES && t < hit.t) {
            double square = c + t * (2 * b + t * a);
            if (square >= pieces[at + 2] && square <= pieces[at + 3]) {
                hit.t = t;
                return true;
            }
        }
        return false;
    }

    private boolean cone(int at, double flat, double b, double c, double z, double w, Hit hit) {
        double slope = pieces[at + 3];
        double radius = pieces[at + 2] + slope * z;
        double grows = slope * w;
        double a = flat - grows * grows;
        double half = b - radius * grows;
        double past = c - radius * radius;
        double root = half * half - a * past;
        if (root < 0) {
            return false;
        }
        root = Math.sqrt(root);
        double sum = half < 0 ? root - half : -half - root;
        double one = sum / a;
        double other = past / sum;
        double first = Math.min(one, other);
        double second = Math.max(one, other);
        double low = pieces[at] - OVER_METRES;
        double high = pieces[at + 1] + OVER_METRES;
        if (first > NEAR_METRES && first < hit.t) {
            double height = z + first * w;
            if (height >= low && height <= high) {
                hit.t = first;
                return true;
            }
        }
        if (second > NEAR_METRES && second < hit.t) {
            double height = z + second * w;
            if (height >= low && height <= high) {
                hit.t = second;
                return true;
            }
        }
        return false;
    }

    private boolean box(int shape, double x, double y, double z, double du, double dv, double dw, Hit hit) {
        // Adding 0 makes 0 of −0, so that walls beside a ray lie endlessly far on the right side of it.
        double u = du + 0.0;
        double v = dv + 0.0;
        double w = dw + 0.0;
        double halfX = sizes[3 * shape];
        double halfY = sizes[3 * shape + 1];
        double high = sizes[3 * shape + 2];
        double x1 = ((u >= 0 ? -halfX : halfX) - x) / u;
        double x2 = ((u >= 0 ? halfX : -halfX) - x) / u;
        double y1 = ((v >= 0 ? -halfY : halfY) - y) / v;
        double y2 = ((v >= 0 ? halfY : -halfY) - y) / v;
        double z1 = ((w >= 0 ? 0 : high) - z) / w;
        double z2 = ((w >= 0 ? high : 0) - z) / w;
        double from = x1;
        int in = u >= 0 ? 0 : 1;
        if (y1 > from) {
            from = y1;
            in = v >= 0 ? 2 : 3;
        }
        if (z1 > from) {
            from = z1;
            in = w >= 0 ? 4 : 5;
        }
        double to = x2;
        int out = u >= 0 ? 1 : 0;
        if (y2 < to) {
            to = y2;
            out = v >= 0 ? 3 : 2;
        }
        if (z2 < to) {
            to = z2;
            out = w >= 0 ? 5 : 4;
        }
        if (from > to) {
            return false;
        }
        if (from > NEAR_METRES && from < hit.t) {
            hit.t = from;
            hit.piece = in;
            return true;
        }
        if (from <= NEAR_METRES && to > NEAR_METRES && to < hit.t) {
            hit.t = to;
            hit.piece = out;
            return true;
        }
        return false;
    }

    private boolean ball(int shape, double x, double y, double z, double u, double v, double w, Hit hit) {
        double radius = sizes[3 * shape];
        double up = z - radius;
        double half = x * u + y * v + up * w;
        double root = half * half - (x * x + y * y + up * up - radius * radius);
        if (root < 0) {
            return false;
        }
        root = Math.sqrt(root);
        double t = -half - root > NEAR_METRES ? -half - root : root - half;
        if (t > NEAR_METRES && t < hit.t) {
            hit.t = t;
            hit.piece = 0;
            return true;
        }
        return false;
    }

    private boolean sheet(int shape, double x, double y, double z, double u, double v, double w, Hit hit) {
        double t = -z / w;
        if (t > NEAR_METRES
                && t < hit.t
                && Math.abs(x + t * u) <= sizes[3 * shape]
                && Math.abs(y + t * v) <= sizes[3 * shape + 1]) {
            hit.t = t;
            hit.piece = 0;
            return true;
        }
        return false;
    }

    /// Whether a place in a sheet's plane is on the sheet.
    boolean isOnSheet(int shape, double px, double py, double pz) {
        int f = Shapes.FRAME * shape;
        double qx = px - frames[f];
        double qy = py - frames[f + 1];
        double qz = pz - frames[f + 2];
        return Math.abs(qx * frames[f + 3] + qy * frames[f + 4] + qz * frames[f + 5]) <= sizes[3 * shape]
                && Math.abs(qx * frames[f + 6] + qy * frames[f + 7] + qz * frames[f + 8]) <= sizes[3 * shape + 1];
    }

    /// Whether a ray doesn't come past a bend's chord: all of it lies past that.
    private boolean staysBeforeChord(
            int shape, double px, double py, double pz, double dx, double dy, double dz, double far) {
        int f = Shapes.FRAME * shape;
        double x = frames[f + 3] + frames[f + 6];
        double y = frames[f + 4] + frames[f + 7];
        double z = frames[f + 5] + frames[f + 8];
        double before = px * x + py * y + pz * z - sizes[3 * shape];
        return before < 0 && before + far * (dx * x + dy * y + dz * z) < 0;
    }

    private boolean bend(int shape, double x, double y, double z, double u, double v, double w, Hit hit) {
        double radius = sizes[3 * shape];
        double half = sizes[3 * shape + 1];
        if ((x < 0 && u <= 0) || (y < 0 && v <= 0)) {
            return false;
        }
        double a = u * u + v * v;
        double b = x * u + y * v;
        double root = b * b - a * (x * x + y * y - radius * radius);
        if (root < 0) {
            return false;
        }
        root = Math.sqrt(root);
        for (int i = -1; i <= 1; i += 2) {
            double t = (i * root - b) / a;
            if (t > NEAR_METRES
                    && t < hit.t
                    && x + t * u >= -OVER_METRES
                    && y + t * v >= -OVER_METRES
                    && Math.abs(z + t * w) <= half) {
                hit.t = t;
                hit.piece = 0;
                return true;
            }
        }
        return false;
    }

    /// Notes where the met place is in the shape's own frame, and what goes straight out of the shape there.
    void face(int shape, Hit hit) {
        int f = Shapes.FRAME * shape;
        double px = hit.x - frames[f];
        double py = hit.y - frames[f + 1];
        double pz = hit.z - frames[f + 2];
        double x = px * frames[f + 3] + py * frames[f + 4] + pz * frames[f + 5];
        double y = px * frames[f + 6] + py * frames[f + 7] + pz * frames[f + 8];
        double z = px * frames[f + 9] + py * frames[f + 10] + pz * frames[f + 11];
        hit.ownX = x;
        hit.ownY = y;
        hit.ownZ = z;
        double u = 0;
        double v = 0;
        double w = 0;
        switch (kinds[shape]) {
            case Shapes.TURNED -> {
                w = faces[hit.piece];
                if (w == 0) {
                    double slope = pieces[Shapes.PIECE * hit.piece + 3];
                    double radius = Math.sqrt(x * x + y * y);
                    double out = 1 / Math.sqrt(1 + slope * slope);
                    u = radius > 0 ? out * x / radius : 0;
                    v = radius > 0 ? out * y / radius : 0;
                    w = -slope * out;
                }
            }
            case Shapes.BOX -> {
                double side = (hit.piece & 1) == 0 ? -1 : 1;
                u = hit.piece < 2 ? side : 0;
                v = hit.piece >> 1 == 1 ? side : 0;
                w = hit.piece >= 4 ? side : 0;
            }
            case Shapes.BALL -> {
                double radius = sizes[3 * shape];
                u = x / radius;
                v = y / radius;
                w = (z - radius) / radius;
            }
            case Shapes.SHEET -> w = 1;
            default -> {
                double radius = sizes[3 * shape];
                u = x / radius;
                v = y / radius;
            }
        }
        hit.nx = u * frames[f + 3] + v * frames[f + 6] + w * frames[f + 9];
        hit.ny = u * frames[f + 4] + v * frames[f + 7] + w * frames[f + 10];
        hit.nz = u * frames[f + 5] + v * frames[f + 8] + w * frames[f + 11];
    }

    /// Whether a place is in a solid shape.
    boolean holds(int shape, double px, double py, double pz) {
        int f = Shapes.FRAME * shape;
        double qx = px - frames[f];
        double qy = py - frames[f + 1];
        double qz = pz - frames[f + 2];
        double x = qx * frames[f + 3] + qy * frames[f + 4] + qz * frames[f + 5];
        double y = qx * frames[f + 6] + qy * frames[f + 7] + qz * frames[f + 8];
        double z = qx * frames[f + 9] + qy * frames[f + 10] + qz * frames[f + 11];
        return switch (kinds[shape]) {
            case Shapes.TURNED -> {
                double radius = radius(shape, z);
                yield x * x + y * y < radius * radius;
            }
            case Shapes.BOX ->
                Math.abs(x) < sizes[3 * shape]
                        && Math.abs(y) < sizes[3 * shape + 1]
                        && z > 0
                        && z < sizes[3 * shape + 2];
            case Shapes.BALL -> {
                double up = z - sizes[3 * shape];
                yield x * x + y * y + up * up < sizes[3 * shape] * sizes[3 * shape];
            }
            default -> false;
        };
    }

    /// How wide a turned shape is at a height, m; 0 above and below it.
    double radius(int shape, double height) {
        double most = 0;
        for (int i = firsts[shape]; i < firsts[shape + 1]; i++) {
            int at = Shapes.PIECE * i;
            if (faces[i] == 0 && height >= pieces[at] && height <= pieces[at + 1]) {
                most = Math.max(most, pieces[at + 2] + pieces[at + 3] * height);
            }
        }
        return most;
    }
}
