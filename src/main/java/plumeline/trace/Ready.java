package plumeline.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plumeline.geom.Solid;
import plumeline.scenery.Basin;
import plumeline.scenery.Coat;
import plumeline.scenery.Part;
import plumeline.scenery.World;

/// A world made ready: everything as plain numbers, read only.
final class Ready {
    private static final int NOWHERE = -1;

    /// How often a way is followed through the outside of a clear part.
    private static final int MOST_CROSSINGS = 16;

    final Meets shapes;
    final Coats coats;
    final Lamps lamps;
    final Media media = new Media();
    final List<Fog> fogs;
    final double[] surround;
    final Optional<Basin> basin;

    private final int parts;
    private final int[] opaque;
    private final int[] clear;
    private final int[] labelled;
    private final int[] walls;
    private final int[] rooms;
    private final int[] liquids;
    private final double[] levels;
    private final double[] levelRadii;
    private final List<int[]> hosts = new ArrayList<>();
    private final List<Scope> insides = new ArrayList<>();
    private final Optional<Tub> tub;
    private final int glass;
    private final int water;
    private final Crowd crowd;
    private final Scope whole;
    private final double[] clearCorners;
    private final boolean hasFog;
    private final boolean hasSunkLamp;
    private final Crowd sunk;
    private final Scope sunkScope;
    private final int[] sunkClear;

    /// @param known clouds made ready before, which may be in it too
    Ready(World world, List<Fog> known) {
        List<Part> all = world.parts();
        parts = all.size();
        walls = new int[parts];
        rooms = new int[parts];
        liquids = new int[parts];
        levels = new double[parts];
        levelRadii = new double[parts];
        Shapes forms = new Shapes();
        all.forEach(part -> forms.add(part.form()));
        for (int i = 0; i < parts; i++) {
            rooms[i] = NOWHERE;
            if (all.get(i).coat() instanceof Coat.Clear coat) {
                walls[i] = media.add(coat.wall());
                if (coat.room().isPresent()) {
                    room(i, coat.room().get(), forms);
                }
            }
        }
        shapes = new Meets(forms);
        coats = new Coats(all, shapes);
        lamps = new Lamps(world.lights());
        opaque = numbered(all, Coat.Opaque.class);
        clear = numbered(all, Coat.Clear.class);
        labelled = IntStream.of(clear).filter(coats::isLabelled).toArray();
        crowd = Crowd.of(opaque, shapes);
        for (int i = 0; i < parts; i++) {
            hosts.add(hosts(i));
        }
        basin = world.basin();
        tub = basin.map(Tub::new);
        sunk = Crowd.of(near(opaque), shapes);
        sunkClear = near(clear);
        clearCorners = clearCorners();
        whole = scope();
        sunkScope = new Scope(sunk.sheets(), sunk.units(), 0, lamps.count());
        takeAll();
        glass = world.basin().map(basin -> media.add(basin.glass())).orElse(Media.AIR);
        water = world.basin().map(basin -> media.add(basin.water())).orElse(Media.AIR);
        fogs = world.clouds().stream()
                .map(cloud -> known.stream()
                        .filter(fog -> fog.isOf(cloud))
                        .findFirst()
                        .orElseGet(() -> new Fog(cloud)))
                .toList();
        hasSunkLamp = tub.isPresent() && lamps.mayReach(tub.get());
        hasFog = !fogs.isEmpty();
        surround = new double[] {
            world.surround().red(), world.surround().green(), world.surround().blue()
        };
    }

    private double[] clearCorners() {
        double[] corners = new double[Shapes.CORNERS * (clear.length + 1)];
        for (int i = 0; i < clear.length; i++) {
            System.arraycopy(shapes.corners(clear[i]), 0, corners, Shapes.CORNERS * i, Shapes.CORNERS);
        }
        tub.ifPresent(is -> System.arraycopy(is.corners(), 0, corners, Shapes.CORNERS * clear.length, Shapes.CORNERS));
        return corners;
    }

    private void takeAll() {
        crowd.take(whole);
        lamps.faces().take(whole);
        takeClear(whole);
        whole.hasBasin = tub.isPresent();
        sunk.take(sunkScope);
        lamps.faces().take(sunkScope);
        for (int i = 0; i < parts; i++) {
            insides.add(isClear(i) ? inside(i) : whole);
        }
    }

    private void takeClear(Scope scope) {
        System.arraycopy(clear, 0, scope.clear, 0, clear.length);
        scope.clearCount = clear.length;
    }

    /// What may be met in a clear part.
    private Scope inside(int part) {
        Scope inside = scope();
        crowd.take(inside, Shapes.box(shapes.corners(part), 0));
        lamps.faces().take(inside);
        takeClear(inside);
        return inside;
    }

    private void room(int part, Coat.Room room, Shapes forms) {
        rooms[part] = forms.addRoom(part, room.solid(), room.bottomMetres());
        liquids[part] = media.add(room.liquid());
        levels[part] = room.levelMetres();
        double inRoom = room.levelMetres() - room.bottomMetres();
        boolean hasSurface = inRoom > 0 && inRoom < room.solid().heightMetres();
        levelRadii[part] = hasSurface
                ? switch (room.solid()) {
                    case Solid.Revolved turned -> turned.radiusAtMetres(inRoom);
                    case Solid.Box box -> box.reachMetres();
                }
                : 0;
    }

    private static int[] numbered(List<Part> parts, Class<? extends Coat> kind) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (kind.isInstance(parts.get(i).coat())) {
                found.add(i);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /// Which clear parts with a room a part's middle is in.
    private int[] hosts(int part) {
        double[] balls = shapes.balls();
        List<Integer> found = new ArrayList<>();
        for (int other : clear) {
            boolean isIn = other != part
                    && rooms[other] >= 0
                    && shapes.holds(other, balls[4 * part], balls[4 * part + 1], balls[4 * part + 2]);
            if (isIn) {
                found.add(other);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /// Which of parts may be met by a ray before it leaves the basin.
    private int[] near(int[] of) {
        return tub.isEmpty()
                ? new int[0]
                : IntStream.of(of)
                        .filter(part -> shapes.mayReach(part, tub.get()))
                        .toArray();
    }

    int parts() {
        return parts;
    }

    boolean isClear(int part) {
        return coats.kind(part) == Coats.CLEAR;
    }

    /// Whether light may be taken or scattered on its way through a substance.
    boolean takesLight(int medium) {
        return hasFog || media.takesLight(medium);
    }

    /// Whether clouds are in a substance: in a basin's water, not in a vessel that stands in it; all round where no
    /// basin is.
    ///
    /// @param within the clear part, or −1
    boolean mayHoldInk(int within, int medium) {
        return hasFog && (tub.isEmpty() || (within < 0 && medium == water));
    }

    /// Whether light that passes has anything to lose but where it is stopped.
    boolean hasClear() {
        return clear.length > 0 || tub.isPresent() || !fogs.isEmpty();
    }

    /// All that there is.
    Scope whole() {
        return whole;
    }

    /// Makes one for bundles of rays.
    Scope scope() {
        return new Scope(crowd.sheets(), crowd.units(), clear.length, lamps.count());
    }

    /// Notes what a camera's rays may meet first; the camera is in air.
    void take(Scope scope, Frustum rays) {
        scope.clear();
        crowd.take(scope, rays);
        lamps.faces().take(scope, rays);
        for (int i = 0; i < clear.length; i++) {
            if (!rays.misses(clearCorners, Shapes.CORNERS * i)) {
                scope.clear[scope.clearCount++] = clear[i];
            }
        }
        scope.hasBasin = tub.isPresent() && !rays.misses(clearCorners, Shapes.CORNERS * clear.length);
    }

    /// Finds what a ray meets first.
    ///
    /// @param scope what it may meet, which counts outside of what is clear only
    /// @param in what the ray is in
    void nearest(Scope scope, double ox, double oy, double oz, double dx, double dy, double dz, State in, Hit hit) {
        hit.clear(Double.POSITIVE_INFINITY);
        if (in.medium == Media.AIR || in.within >= 0 || !isMetInBasin(ox, oy, oz, dx, dy, dz, in.medium, hit)) {
            Scope near = scope;
            if (in.within >= 0) {
                near = insides.get(in.within);
                inRoom(in.within, ox, oy, oz, dx, dy, dz, hit);
            }
            crowd.meets(near, ox, oy, oz, dx, dy, dz, hit);
            for (int i = 0; i < near.clearCount; i++) {
                clearMeets(near.clear[i], ox, oy, oz, dx, dy, dz, hit);
            }
            if (near.hasBasin) {
                tub.orElseThrow().meets(ox, oy, oz, dx, dy, dz, hit);
            }
            lamps.faces().meets(near, ox, oy, oz, dx, dy, dz, hit);
        }
        place(ox, oy, oz, dx, dy, dz, hit);
    }

    private void clearMeets(int part, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (shapes.meets(part, ox, oy, oz, dx, dy, dz, hit)) {
            hit.what = Hit.PART;
            hit.index = part;
        }
    }

    /// Finds what a ray meets that is in a basin's panes or water: it doesn't get out before it has met them.
    private boolean isMetInBasin(
            double ox, double oy, double oz, double dx, double dy, double dz, int medium, Hit hit) {
        if (tub.isEmpty()) {
            return false;
        }
        if (medium == water) {
            tub.get().meetsFromWater(ox, oy, oz, dx, dy, dz, hit);
        } else {
            tub.get().meetsFromPane(ox, oy, oz, dx, dy, dz, hit);
        }
        if (hit.what == Hit.NOTHING) {
            return false;
        }
        sunk.meets(sunkScope, ox, oy, oz, dx, dy, dz, hit);
        if (hasSunkLamp) {
            lamps.faces().meets(sunkScope, ox, oy, oz, dx, dy, dz, hit);
        }
        for (int part : sunkClear) {
            clearMeets(part, ox, oy, oz, dx, dy, dz, hit);
        }
        return true;
    }

    /// Finds the first clear surface that a ray meets, before `hit.t`.
    void clearNearest(double ox, double oy, double oz, double dx, double dy, double dz, int within, Hit hit) {
        partsNearest(ox, oy, oz, dx, dy, dz, within, hit);
        if (within < 0 && tub.isPresent()) {
            tub.get().meets(ox, oy, oz, dx, dy, dz, hit);
        }
    }

    /// Likewise, but for the basin's.
    void partsNearest(double ox, double oy, double oz, double dx, double dy, double dz, int within, Hit hit) {
        for (int part : clear) {
            clearMeets(part, ox, oy, oz, dx, dy, dz, hit);
        }
        if (within >= 0) {
            inRoom(within, ox, oy, oz, dx, dy, dz, hit);
        }
    }

    private void inRoom(int part, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        int room = rooms[part];
        if (room < 0) {
            return;
        }
        if (shapes.meets(room, ox, oy, oz, dx, dy, dz, hit)) {
            hit.what = Hit.ROOM;
            hit.index = part;
        }
        if (levelRadii[part] > 0) {
            double[] frames = shapes.frames();
            int f = Shapes.FRAME * part;
            double up = dx * frames[f + 9] + dy * frames[f + 10] + dz * frames[f + 11];
            double x = ox - frames[f];
            double y = oy - frames[f + 1];
            double z = oz - frames[f + 2];
            double t = (levels[part] - x * frames[f + 9] - y * frames[f + 10] - z * frames[f + 11]) / up;
            if (t > Meets.NEAR_METRES && t < hit.t && isInLevel(part, x + t * dx, y + t * dy, z + t * dz)) {
                hit.t = t;
                hit.what = Hit.LEVEL;
                hit.index = part;
                hit.face(frames[f + 9], frames[f + 10], frames[f + 11]);
            }
        }
    }

    private boolean isInLevel(int part, double x, double y, double z) {
        double[] frames = shapes.frames();
        int f = Shapes.FRAME * part;
        double u = x * frames[f + 3] + y * frames[f + 4] + z * frames[f + 5];
        double v = x * frames[f + 6] + y * frames[f + 7] + z * frames[f + 8];
        int room = rooms[part];
        return shapes.kind(room) == Shapes.BOX
                ? Math.abs(u) < shapes.size(room, 0) && Math.abs(v) < shapes.size(room, 1)
                : u * u + v * v < levelRadii[part] * levelRadii[part];
    }

    /// Notes the met place, and what goes straight out of what is met.
    void place(double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        hit.x = ox + hit.t * dx;
        hit.y = oy + hit.t * dy;
        hit.z = oz + hit.t * dz;
        if (hit.what == Hit.PART) {
            shapes.face(hit.index, hit);
        } else if (hit.what == Hit.ROOM) {
            shapes.face(rooms[hit.index], hit);
        }
    }

    /// Whether something opaque stands in a way.
    boolean stops(double ox, double oy, double oz, double dx, double dy, double dz, double far, Hit scratch) {
        return stops(whole, ox, oy, oz, dx, dy, dz, far, scratch);
    }

    /// Likewise of what is in a scope.
    boolean stops(
            Scope scope, double ox, double oy, double oz, double dx, double dy, double dz, double far, Hit scratch) {
        scratch.clear(far);
        if (crowd.stops(scope, ox, oy, oz, dx, dy, dz, scratch)) {
            return true;
        }
        for (int i = 0; labelled.length > 0 && i < scope.clearCount; i++) {
            scratch.clear(far);
            if (coats.isLabelled(scope.clear[i]) && isLabelMet(scope.clear[i], ox, oy, oz, dx, dy, dz, scratch)) {
                return true;
            }
        }
        return false;
    }

    /// Finds where a way meets a clear part's label, from outside or from within, before `hit.t`.
    ///
    /// @return whether it does; where it doesn't, the hit is as it was but for its place
    private boolean isLabelMet(int part, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        double far = hit.t;
        int what = hit.what;
        int index = hit.index;
        int piece = hit.piece;
        double from = 0;
        for (int i = 0; i < MOST_CROSSINGS; i++) {
            double x = ox + from * dx;
            double y = oy + from * dy;
            double z = oz + from * dz;
            hit.t = far - from;
            if (!shapes.meets(part, x, y, z, dx, dy, dz, hit)) {
                break;
            }
            hit.what = Hit.PART;
            hit.index = part;
            place(x, y, z, dx, dy, dz, hit);
            from += hit.t;
            if (isOpaque(hit)) {
                hit.t = from;
                return true;
            }
        }
        hit.t = far;
        hit.what = what;
        hit.index = index;
        hit.piece = piece;
        return false;
    }

    /// Whether no light goes through a met place: an opaque part's, or a label's on a clear one.
    boolean isOpaque(Hit hit) {
        return hit.what == Hit.PART && (!isClear(hit.index) || coats.covers(hit.index, hit));
    }

    /// Finds the first opaque place that a way meets.
    void opaqueNearest(double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        hit.clear(Double.POSITIVE_INFINITY);
        crowd.meets(whole, ox, oy, oz, dx, dy, dz, hit);
        for (int part : labelled) {
            isLabelMet(part, ox, oy, oz, dx, dy, dz, hit);
        }
        place(ox, oy, oz, dx, dy, dz, hit);
    }

    /// Notes what may stand in ways to a light, and on which of them nothing clear can lie.
    ///
    /// @return whether anything may stand in any
    boolean mayMeet(Scope scope, Beam ways, Rows rows, int count, int light) {
        scope.clear();
        ways.over(rows, count, lamps, light);
        crowd.take(scope, ways);
        double[] balls = shapes.balls();
        for (int part : clear) {
            int b = 4 * part;
            if (!ways.missesBall(balls[b], balls[b + 1], balls[b + 2], balls[b + 3])) {
                scope.clear[scope.clearCount++] = part;
            }
        }
        scope.hasBasin = tub.isPresent() && tub.get().mayLieIn(ways);
        if (scope.isEmpty() && !hasFog) {
            return false;
        }
        Arrays.fill(rows.cross, 0, count, hasFog ? -1 : 1);
        if (scope.hasBasin) {
            tub.orElseThrow().mayCross(rows, count);
        }
        for (int i = 0; i < scope.clearCount; i++) {
            shapes.mayMeetBall(scope.clear[i], rows, count, rows.cross);
        }
        return true;
    }

    /// Notes on which of many ways nothing opaque can lie, of what is in a scope.
    void mayStop(Scope scope, Rows rows, int count) {
        crowd.mayStop(scope, rows, count);
        for (int i = 0; i < scope.clearCount; i++) {
            if (coats.isLabelled(scope.clear[i])) {
                shapes.mayMeetBall(scope.clear[i], rows, count, rows.near);
            }
        }
    }

    /// What is on the inner side of a met clear surface: what its facing points out of.
    int inner(Hit hit) {
        return switch (hit.what) {
            case Hit.PART -> walls[hit.index];
            case Hit.ROOM -> roomMedium(hit.index, hit.x, hit.y, hit.z);
            case Hit.LEVEL -> liquids[hit.index];
            case Hit.OUTER -> glass;
            case Hit.INNER -> tub.orElseThrow().isWaterAt(hit.z) ? water : Media.AIR;
            case Hit.WATER -> water;
            default -> Media.AIR;
        };
    }

    /// What is on its outer side.
    int outer(Hit hit) {
        return switch (hit.what) {
            case Hit.PART -> around(hit);
            case Hit.ROOM -> walls[hit.index];
            case Hit.INNER -> glass;
            default -> Media.AIR;
        };
    }

    /// The clear part that a ray is in on the inner side, or −1.
    int innerPart(Hit hit) {
        return switch (hit.what) {
            case Hit.PART, Hit.ROOM, Hit.LEVEL -> hit.index;
            default -> NOWHERE;
        };
    }

    /// The clear part that it is in on the outer side, or −1.
    int outerPart(Hit hit) {
        return switch (hit.what) {
            case Hit.ROOM, Hit.LEVEL -> hit.index;
            case Hit.PART -> hosts.get(hit.index).length == 0 ? NOWHERE : hosts.get(hit.index)[0];
            default -> NOWHERE;
        };
    }

    private int around(Hit hit) {
        double x = hit.x + hit.nx * 1e-6;
        double y = hit.y + hit.ny * 1e-6;
        double z = hit.z + hit.nz * 1e-6;
        int[] in = hosts.get(hit.index);
        return in.length > 0 ? roomMedium(in[0], x, y, z) : around(x, y, z);
    }

    private int around(double x, double y, double z) {
        if (tub.isEmpty() || !tub.get().isWithin(x, y, z)) {
            return Media.AIR;
        }
        if (!tub.get().isInside(x, y, z)) {
            return glass;
        }
        return tub.get().isWaterAt(z) ? water : Media.AIR;
    }

    private int roomMedium(int part, double x, double y, double z) {
        double[] frames = shapes.frames();
        int f = Shapes.FRAME * part;
        double height = (x - frames[f]) * frames[f + 9]
                + (y - frames[f + 1]) * frames[f + 10]
                + (z - frames[f + 2]) * frames[f + 11];
        return height < levels[part] ? liquids[part] : Media.AIR;
    }

    /// The clear part that a place is in, or −1.
    int partAt(double x, double y, double z) {
        for (int part : clear) {
            if (shapes.holds(part, x, y, z)) {
                return part;
            }
        }
        return NOWHERE;
    }

    /// The substance at a place.
    int mediumAt(double x, double y, double z) {
        int part = partAt(x, y, z);
        if (part < 0) {
            return around(x, y, z);
        }
        return rooms[part] >= 0 && shapes.holds(rooms[part], x, y, z) ? roomMedium(part, x, y, z) : walls[part];
    }
}
