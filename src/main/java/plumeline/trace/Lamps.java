package plumeline.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.light.Tube;
import plumeline.scenery.Light;
import plumeline.trace.sums.EightPlaces;
import plumeline.trace.sums.Lambert;

/// What shines, as plain numbers.
final class Lamps {
    static final int PANEL = 0;
    static final int DISC = 1;
    static final int TUBE = 2;

    /// A light that is no face.
    static final int SPOT = 3;

    /// Numbers an emitter: middle, facing, right (a tube: its axis first, then two square to it), half width, half
    /// height, radius.
    static final int EACH = 15;

    private static final int ROUND = Emitter.CIRCLE_PIECES;
    /// A tube is slim whose radius is a smaller share of half its length: the usual ones are 30 mm by 600 mm.
    private static final double SLIM = 0.06;

    private static final int TUBE_PIECES = 6;
    private static final int FAT_TUBE_PIECES = 24;

    /// Room for the corners of an outline, before and behind.
    static final int CORNERS = 3 * 2 * (ROUND + 2);

    private final int count;
    private final int[] kinds;
    private final int[] holes;
    private final double[] numbers;
    private final double[] colours;
    private final Faces faces;
    private final List<Brightness> glows = new ArrayList<>();
    private final List<Optional<Light.Source.Spot>> spots = new ArrayList<>();
    private final List<Aim.Frame> aims = new ArrayList<>();

    Lamps(List<Light> lights) {
        count = lights.size();
        kinds = new int[2 * count];
        holes = new int[count];
        numbers = new double[2 * EACH * count];
        colours = new double[3 * count];
        for (int i = 0; i < count; i++) {
            Light light = lights.get(i);
            holes[i] = -1;
            double luminance = 1;
            switch (light.source()) {
                case Light.Source.Face face -> {
                    put(i, face.emitter());
                    if (face.hole().isPresent()) {
                        holes[i] = count + i;
                        put(count + i, face.hole().get());
                    }
                    luminance = face.emitter().luminance();
                    glows.add(Brightness.of(face.emitter(), face.glow()));
                    spots.add(Optional.empty());
                    aims.add(new Aim(Vec.ZERO, 0, 0).frame());
                }
                case Light.Source.Spot spot -> {
                    kinds[i] = SPOT;
                    place(i, 0, spot.aim().eye());
                    glows.add(Brightness.of(spot.grid()));
                    spots.add(Optional.of(spot));
                    aims.add(spot.aim().frame());
                }
            }
            colours[3 * i] = luminance * light.tint().red();
            colours[3 * i + 1] = luminance * light.tint().green();
            colours[3 * i + 2] = luminance * light.tint().blue();
        }
        faces = new Faces(count, kinds, holes, numbers);
    }

    private void put(int at, Emitter emitter) {
        place(at, 0, emitter.middle());
        switch (emitter) {
            case Panel panel -> {
                kinds[at] = PANEL;
                frame(at, panel.facing(), panel.right());
                sizes(at, panel.widthMetres() / 2, panel.heightMetres() / 2, 0);
            }
            case Disc disc -> {
                kinds[at] = DISC;
                Vec facing = disc.facing();
                frame(
                        at,
                        facing,
                        facing.cross(Math.abs(facing.z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0))
                                .unit());
                sizes(at, disc.radiusMetres(), disc.radiusMetres(), disc.radiusMetres());
            }
            case Tube tube -> {
                kinds[at] = TUBE;
                frame(at, tube.axis(), tube.facing());
                sizes(at, tube.lengthMetres() / 2, 0, tube.radiusMetres());
            }
        }
    }

    private void frame(int at, Vec facing, Vec right) {
        place(at, 3, facing);
        place(at, 6, right);
        place(at, 9, facing.cross(right));
    }

    private void place(int at, int from, Vec vec) {
        numbers[EACH * at + from] = vec.x();
        numbers[EACH * at + from + 1] = vec.y();
        numbers[EACH * at + from + 2] = vec.z();
    }

    private void sizes(int at, double halfX, double halfY, double radius) {
        numbers[EACH * at + 12] = halfX;
        numbers[EACH * at + 13] = halfY;
        numbers[EACH * at + 14] = radius;
    }

    int count() {
        return count;
    }

    /// What of them rays may meet.
    Faces faces() {
        return faces;
    }

    /// A channel of its luminance, cd/m², or of a spot's tint.
    double colour(int light, int channel) {
        return colours[3 * light + channel];
    }

    /// Where its middle is.
    double middle(int light, int axis) {
        return numbers[EACH * light + axis];
    }

    /// Whether any of a face may lie in a basin.
    boolean mayReach(Tub tub) {
        for (int i = 0; i < count; i++) {
            int n = EACH * i;
            double radius = numbers[n + 12] + numbers[n + 13] + numbers[n + 14];
            if (tub.isNear(numbers[n], numbers[n + 1], numbers[n + 2], radius)) {
                return true;
            }
        }
        return false;
    }

    /// How bright a face is where it is met, a share of its luminance.
    double share(Hit hit, double dx, double dy, double dz) {
        return glows.get(hit.index).share(hit.x, hit.y, hit.z, -dx, -dy, -dz);
    }

    /// Gives what falls on a patch with nothing between, by a luminance (a spot: a tint) of 1, lx.
    double lux(int light, double px, double py, double pz, double nx, double ny, double nz, double[] corners) {
        if (kinds[light] == SPOT) {
            return spotLux(light, px, py, pz, nx, ny, nz);
        }
        double all = factor(light, px, py, pz, nx, ny, nz, corners);
        if (!(all > 0)) {
            return 0;
        }
        int hole = holes[light];
        if (hole >= 0) {
            all = Math.max(0, all - factor(hole, px, py, pz, nx, ny, nz, corners));
        }
        return glows.get(light).isEven()
                ? all * glows.get(light).even()
                : all * glowing(light, px, py, pz, nx, ny, nz, corners);
    }

    /// Whether many places can be worked out at once: an even panel or slim tube.
    boolean isPlain(int light) {
        int n = EACH * light;
        boolean isStrip = kinds[light] == PANEL || (kinds[light] == TUBE && numbers[n + 14] < SLIM * numbers[n + 12]);
        return isStrip && holes[light] < 0 && glows.get(light).isEven();
    }

    /// Gives what falls on many patches, for a plain light, and where each sees its middle.
    void lux(int light, Rows rows, int count) {
        strips(light, rows, count).fall(even(light));
    }

    private Strips strips(int light, Rows rows, int count) {
        return new Strips(kinds[light] == TUBE, numbers, EACH * light, rows, count);
    }

    /// Moves from where patches see the middle of a plain light to the places that are picked.
    void move(int light, Rows rows, int count) {
        strips(light, rows, count).move(rows.picks);
    }

    /// How bright a plain light is, a share of its luminance.
    double even(int light) {
        return glows.get(light).even();
    }

    boolean isTube(int light) {
        return kinds[light] == TUBE;
    }

    /// A tube's radius, m; 0 of what is none.
    double tubeMetres(int light) {
        return isTube(light) ? numbers[EACH * light + 14] : 0;
    }

    /// The mean of how bright a face is, each place by what it gives to the patch.
    private double glowing(
            int light, double px, double py, double pz, double nx, double ny, double nz, double[] scratch) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < EightPlaces.size(); i++) {
            for (int j = 0; j < EightPlaces.size(); j++) {
                place(light, EightPlaces.place(i), EightPlaces.place(j), px, py, pz, scratch);
                double weight =
                        EightPlaces.count(i) * EightPlaces.count(j) * weight(light, px, py, pz, nx, ny, nz, scratch);
                if (weight > 0) {
                    weights += weight;
                    sum += weight * shareTo(light, px, py, pz, scratch);
                }
            }
        }
        return weights > 0 ? sum / weights : 0;
    }

    private double shareTo(int light, double px, double py, double pz, double[] at) {
        return glows.get(light).share(at[0], at[1], at[2], px - at[0], py - at[1], pz - at[2]);
    }

    private double spotLux(int light, double px, double py, double pz, double nx, double ny, double nz) {
        double x = px - middle(light, 0);
        double y = py - middle(light, 1);
        double z = pz - middle(light, 2);
        double square = x * x + y * y + z * z;
        double cosine = -(x * nx + y * ny + z * nz) / Math.sqrt(square);
        return cosine > 0 ? cosine * candelas(light, x, y, z) / square : 0;
    }

    /// What a spot gives into a direction, cd.
    private double candelas(int light, double x, double y, double z) {
        Aim.Frame frame = aims.get(light);
        double along = x * frame.forward().x()
                + y * frame.forward().y()
                + z * frame.forward().z();
        double right = x * frame.right().x()
                + y * frame.right().y()
                + z * frame.right().z();
        double up = x * frame.up().x() + y * frame.up().y() + z * frame.up().z();
        double gamma = Math.atan2(Math.sqrt(right * right + up * up), along);
        double candelas = spots.get(light).orElseThrow().intensity().candelas(Math.atan2(up, right), gamma);
        return candelas * glows.get(light).share(middle(light, 0), middle(light, 1), middle(light, 2), x, y, z);
    }

    /// What a place gets from all round of a light by a luminance of 1: solid angle, or a spot's candelas over the
    /// square of the way. A face counts by its middle.
    double around(int light, double px, double py, double pz, double[] scratch) {
        double x = px - middle(light, 0);
        double y = py - middle(light, 1);
        double z = pz - middle(light, 2);
        double square = x * x + y * y + z * z;
        if (kinds[light] == SPOT) {
            return candelas(light, x, y, z) / square;
        }
        double far = Math.sqrt(square);
        double lux = lux(light, px, py, pz, -x / far, -y / far, -z / far, scratch);
        return lux;
    }

    /// π times an emitter's configuration factor.
    private double factor(int at, double px, double py, double pz, double nx, double ny, double nz, double[] corners) {
        int n = EACH * at;
        double qx = px - numbers[n];
        double qy = py - numbers[n + 1];
        double qz = pz - numbers[n + 2];
        double z = qx * numbers[n + 3] + qy * numbers[n + 4] + qz * numbers[n + 5];
        double x = qx * numbers[n + 6] + qy * numbers[n + 7] + qz * numbers[n + 8];
        double y = qx * numbers[n + 9] + qy * numbers[n + 10] + qz * numbers[n + 11];
        double w = nx * numbers[n + 3] + ny * numbers[n + 4] + nz * numbers[n + 5];
        double u = nx * numbers[n + 6] + ny * numbers[n + 7] + nz * numbers[n + 8];
        double v = nx * numbers[n + 9] + ny * numbers[n + 10] + nz * numbers[n + 11];
        if (kinds[at] == TUBE) {
            return tube(n, x, y, z, u, v, w, corners);
        }
        if (!(z > 0)) {
            return 0;
        }
        if (kinds[at] == PANEL) {
            double halfX = numbers[n + 12];
            double halfY = numbers[n + 13];
            double whole = Lambert.rectangle(z, u, v, w, -halfX - x, halfX - x, -halfY - y, halfY - y);
            return whole >= 0 ? whole : cut(z, u, v, w, -halfX - x, halfX - x, -halfY - y, halfY - y, corners);
        }
        return disc(n, x, y, z, u, v, w, corners);
    }

    /// A rectangle that the patch's plane cuts.
    private static double cut(
            double z,
            double u,
            double v,
            double w,
            double left,
            double right,
            double low,
            double high,
            double[] corners) {
        for (int i = 0; i < 4; i++) {
            corners[3 * i] = i == 0 || i == 3 ? left : right;
            corners[3 * i + 1] = i < 2 ? low : high;
            corners[3 * i + 2] = -z;
        }
        return Lambert.corners(corners, 4, u, v, w);
    }

    private double disc(int n, double x, double y, double z, double u, double v, double w, double[] corners) {
        double radius = numbers[n + 14];
        double middle = -(u * x + v * y + w * z);
        double reach = radius * Math.sqrt(u * u + v * v);
        if (middle <= -reach) {
            return 0;
        }
        if (middle >= reach) {
            double out = Math.sqrt(x * x + y * y);
            double inward = out > 0 ? -(u * x + v * y) / out : 0;
            return Lambert.disc(z, out, -w, inward, radius);
        }
        double step = 2 * Math.PI / ROUND;
        double outside = radius * Math.sqrt(step / Math.sin(step));
        for (int i = 0; i < ROUND; i++) {
            corners[3 * i] = outside * Math.cos(i * step) - x;
            corners[3 * i + 1] = outside * Math.sin(i * step) - y;
            corners[3 * i + 2] = -z;
        }
        return Lambert.corners(corners, ROUND, u, v, w);
    }

    /// A thin tube is seen as the flat strip between the two lines where sight grazes it, as much longer as its ends'
    /// arcs reach toward the place in the mean: off by 0.2 % at most. Where the tube is
    /// thick, or near, its outline is cut in pieces.
    private double tube(int n, double x, double y, double z, double u, double v, double w, double[] corners) {
        double radius = numbers[n + 14];
        double half = numbers[n + 12];
        double away = Math.sqrt(x * x + y * y);
        if (away <= radius) {
            return 0;
        }
        if (radius < SLIM * half && away > 4 * radius) {
            double before = away - radius * radius / away;
            double wide = radius * Math.sqrt(before / away);
            double bulge = Math.PI / 4 * (radius - radius * radius / away);
            double longer = before / (before - bulge);
            double toward = (u * x + v * y) / away;
            double aside = (v * x - u * y) / away;
            double strip =
                    Lambert.rectangle(before, w, aside, toward, longer * (-half - z), longer * (half - z), -wide, wide);
            return strip >= 0
                    ? strip
                    : cut(before, w, aside, toward, longer * (-half - z), longer * (half - z), -wide, wide, corners);
        }
        return thickTube(n, x, y, z, u, v, w, corners);
    }

    private double thickTube(int n, double x, double y, double z, double u, double v, double w, double[] corners) {
        double radius = numbers[n + 14];
        double away = Math.sqrt(x * x + y * y);
        double half = Math.acos(radius / away);
        int pieces = radius < SLIM * numbers[n + 12] ? TUBE_PIECES : FAT_TUBE_PIECES;
        double step = 2 * half / pieces;
        double outside = Math.sqrt(step / Math.sin(step));
        int count = 0;
        for (int end = 1; end >= -1; end -= 2) {
            for (int i = 0; i <= pieces; i++) {
                double angle = end * (i * step - half);
                double out = radius * (i == 0 || i == pieces ? 1 : outside);
                double toward = out * Math.cos(angle) / away;
                double aside = out * Math.sin(angle) / away;
                corners[count++] = x * toward - y * aside - x;
                corners[count++] = y * toward + x * aside - y;
                corners[count++] = end * numbers[n + 12] - z;
            }
        }
        return Lambert.corners(corners, count / 3, u, v, w);
    }

    /// Chooses a place of a light by two numbers from 0 to 1: its place and what goes straight out of it, six numbers.
    void place(int light, double one, double other, double px, double py, double pz, double[] at) {
        int n = EACH * light;
        if (kinds[light] == SPOT) {
            at[0] = numbers[n];
            at[1] = numbers[n + 1];
            at[2] = numbers[n + 2];
            return;
        }
        if (kinds[light] == TUBE) {
            placeOnTube(n, one, other, px, py, pz, at);
            return;
        }
        double x = 2 * one - 1;
        double y = 2 * other - 1;
        if (kinds[light] == DISC) {
            double radius = Math.sqrt(one);
            double angle = 2 * Math.PI * other;
            x = one == 0.5 && other == 0.5 ? 0 : radius * Math.cos(angle);
            y = one == 0.5 && other == 0.5 ? 0 : radius * Math.sin(angle);
        }
        x *= numbers[n + 12];
        y *= numbers[n + 13];
        for (int i = 0; i < 3; i++) {
            at[i] = numbers[n + i] + x * numbers[n + 6 + i] + y * numbers[n + 9 + i];
            at[3 + i] = numbers[n + 3 + i];
        }
    }

    /// How large what of a face is turned to a place is, m²: that over which places are chosen.
    double areaTo(int light, double px, double py, double pz) {
        int n = EACH * light;
        double qx = px - numbers[n];
        double qy = py - numbers[n + 1];
        double qz = pz - numbers[n + 2];
        double along = qx * numbers[n + 3] + qy * numbers[n + 4] + qz * numbers[n + 5];
        double away = Math.sqrt(Math.max(1e-24, qx * qx + qy * qy + qz * qz - along * along));
        double seen = Lambert.horizon(Math.min(1, numbers[n + 14] / away)) / Math.PI;
        return area(light) * (kinds[light] == TUBE ? seen : 1);
    }

    /// Evenly over what of a tube is turned to the place.
    private void placeOnTube(int n, double one, double other, double px, double py, double pz, double[] at) {
        double qx = px - numbers[n];
        double qy = py - numbers[n + 1];
        double qz = pz - numbers[n + 2];
        double x = qx * numbers[n + 6] + qy * numbers[n + 7] + qz * numbers[n + 8];
        double y = qx * numbers[n + 9] + qy * numbers[n + 10] + qz * numbers[n + 11];
        double away = Math.max(1e-12, Math.sqrt(x * x + y * y));
        double radius = numbers[n + 14];
        double angle = other == 0.5 ? 0 : Lambert.horizon(Math.min(1, radius / away)) * (2 * other - 1);
        double toward = Math.cos(angle) / away;
        double aside = Math.sin(angle) / away;
        double u = x * toward - y * aside;
        double v = y * toward + x * aside;
        double along = (2 * one - 1) * numbers[n + 12];
        for (int i = 0; i < 3; i++) {
            at[3 + i] = u * numbers[n + 6 + i] + v * numbers[n + 9 + i];
            at[i] = numbers[n + i] + along * numbers[n + 3 + i] + radius * at[3 + i];
        }
    }

    /// What a chosen place counts for a patch: both cosines over the square of the way; 0 where it doesn't shine there.
    double weight(int light, double px, double py, double pz, double nx, double ny, double nz, double[] at) {
        double x = at[0] - px;
        double y = at[1] - py;
        double z = at[2] - pz;
        double square = x * x + y * y + z * z;
        double here = x * nx + y * ny + z * nz;
        if (kinds[light] == SPOT) {
            return here > 0 ? 1 : 0;
        }
        double there = -(x * at[3] + y * at[4] + z * at[5]);
        if (!(here > 0 && there > 0) || faces.isHole(light, at[0], at[1], at[2])) {
            return 0;
        }
        return here * there / (square * square);
    }

    /// Likewise with how bright it is there.
    double brightWeight(int light, double px, double py, double pz, double nx, double ny, double nz, double[] at) {
        double weight = weight(light, px, py, pz, nx, ny, nz, at);
        return kinds[light] == SPOT || weight == 0 || glows.get(light).isEven()
                ? weight
                : weight * shareTo(light, px, py, pz, at);
    }

    /// Likewise, but evenly over all of it, a tube all round.
    void placeOver(int light, double one, double other, double[] at) {
        if (kinds[light] != TUBE) {
            place(light, one, other, 0, 0, 0, at);
            return;
        }
        int n = EACH * light;
        double u = Math.cos(2 * Math.PI * other);
        double v = Math.sin(2 * Math.PI * other);
        for (int i = 0; i < 3; i++) {
            at[3 + i] = u * numbers[n + 6 + i] + v * numbers[n + 9 + i];
            at[i] = numbers[n + i] + (2 * one - 1) * numbers[n + 12] * numbers[n + 3 + i] + numbers[n + 14] * at[3 + i];
        }
    }

    /// Works out what goes straight out of a place of a light.
    void face(int light, double[] at) {
        int n = EACH * light;
        if (kinds[light] != TUBE) {
            System.arraycopy(numbers, n + 3, at, 3, 3);
            return;
        }
        double along = 0;
        for (int i = 0; i < 3; i++) {
            along += (at[i] - numbers[n + i]) * numbers[n + 3 + i];
        }
        for (int i = 0; i < 3; i++) {
            at[3 + i] = (at[i] - numbers[n + i] - along * numbers[n + 3 + i]) / numbers[n + 14];
        }
    }

    /// How large a face is, m²; 1 for a spot.
    double area(int light) {
        double radius = numbers[EACH * light + 14];
        double halfX = numbers[EACH * light + 12];
        return switch (kinds[light]) {
            case PANEL -> 4 * halfX * numbers[EACH * light + 13];
            case DISC -> Math.PI * radius * radius;
            case TUBE -> 4 * Math.PI * radius * halfX;
            default -> 1;
        };
    }

    /// How bright a place of a light is toward a direction, a share of its luminance; a spot's candelas.
    double bright(int light, double[] at, double dx, double dy, double dz) {
        if (kinds[light] == SPOT) {
            return candelas(light, dx, dy, dz);
        }
        return faces.isHole(light, at[0], at[1], at[2]) ? 0 : glows.get(light).share(at[0], at[1], at[2], dx, dy, dz);
    }

    /// The cosine by which a place of a light shines into a direction of length one; not above 0 where it doesn't.
    double cosine(int light, double[] at, double dx, double dy, double dz) {
        return kinds[light] == SPOT ? 1 : at[3] * dx + at[4] * dy + at[5] * dz;
    }

    /// Likewise for a light told by one place: a tube's is where it faces into the direction.
    double middleCosine(int light, double[] at, double dx, double dy, double dz) {
        if (kinds[light] != TUBE) {
            return cosine(light, at, dx, dy, dz);
        }
        int n = EACH * light;
        double along = dx * numbers[n + 3] + dy * numbers[n + 4] + dz * numbers[n + 5];
        return Math.sqrt(Math.max(0, 1 - along * along));
    }

    /// Whether one place of it stands for all.
    boolean isPoint(int light) {
        return kinds[light] == SPOT;
    }
}
