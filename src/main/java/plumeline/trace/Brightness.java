package plumeline.trace;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;
import plumeline.light.CellGrid;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Glow;
import plumeline.light.Panel;
import plumeline.light.Tube;

/// How a face glows, asked beforehand: what differs from place to place only is noted at places of a grid, so that
/// many threads can read it.
final class Brightness {
    private static final int PLACES = 49;
    private static final double SAME_SHARE = 1e-9;

    private final double even;
    private final List<Glow> asked;
    private final float[] grid;
    private final double[] frame;

    private Brightness(double even, List<Glow> asked, float[] grid, double[] frame) {
        this.even = even;
        this.asked = List.copyOf(asked);
        this.grid = grid;
        this.frame = frame;
    }

    /// Asks a spot's.
    static Brightness of(Glow glow) {
        return of(glow, new float[0], new double[0]);
    }

    private static Brightness of(Glow glow, float[] grid, double[] frame) {
        double even = 1;
        List<Glow> asked = new ArrayList<>();
        for (Glow each : parts(glow)) {
            if (each instanceof Glow.Dimmed dimmed) {
                even *= dimmed.share();
            } else {
                asked.add(each);
            }
        }
        return new Brightness(even, asked, grid, frame);
    }

    /// Asks a face's.
    static Brightness of(Emitter emitter, Glow glow) {
        return switch (emitter) {
            case Panel panel ->
                ofFlat(
                        glow,
                        panel.middle(),
                        panel.facing(),
                        panel.right().times(panel.widthMetres() / 2),
                        panel.up().times(panel.heightMetres() / 2));
            case Disc disc -> {
                Vec facing = disc.facing();
                Vec right = facing.cross(Math.abs(facing.z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0))
                        .unit();
                yield ofFlat(
                        glow,
                        disc.middle(),
                        facing,
                        right.times(disc.radiusMetres()),
                        facing.cross(right).times(disc.radiusMetres()));
            }
            case Tube tube -> of(glow);
        };
    }

    private static List<Glow> parts(Glow glow) {
        if (glow instanceof Glow.Both both) {
            List<Glow> parts = new ArrayList<>(parts(both.one()));
            parts.addAll(parts(both.other()));
            return parts;
        }
        return List.of(glow);
    }

    private static Brightness ofFlat(Glow glow, Vec middle, Vec facing, Vec right, Vec up) {
        Glow rest = Glow.even();
        List<Glow> placed = new ArrayList<>();
        for (Glow part : parts(glow)) {
            boolean isKnown = part instanceof Glow.Dimmed || part instanceof CellGrid;
            if (!isKnown && !differsByDirection(part, middle, facing, right, up)) {
                placed.add(part);
            } else {
                rest = rest.times(part);
            }
        }
        if (placed.isEmpty()) {
            return of(rest);
        }
        float[] grid = new float[PLACES * PLACES];
        for (int i = 0; i < grid.length; i++) {
            Vec place = middle.plus(right.times(2.0 * (i % PLACES) / (PLACES - 1) - 1))
                    .plus(up.times(2.0 * Math.floorDiv(i, PLACES) / (PLACES - 1) - 1));
            double share = 1;
            for (Glow part : placed) {
                share *= part.share(place, facing);
            }
            grid[i] = (float) share;
        }
        Vec x = right.times(1 / right.dot(right));
        Vec y = up.times(1 / up.dot(up));
        double[] frame = {middle.x(), middle.y(), middle.z(), x.x(), x.y(), x.z(), y.x(), y.y(), y.z()};
        return of(rest, grid, frame);
    }

    /// Whether it is brighter from one side than from straight before, at any of a few places.
    private static boolean differsByDirection(Glow glow, Vec middle, Vec facing, Vec right, Vec up) {
        for (int i = 0; i < 16; i++) {
            Vec place = middle.plus(right.times((i % 4 - 1.5) / 2)).plus(up.times(((i >> 2) - 1.5) / 2));
            double straight = glow.share(place, facing);
            Vec aside = facing.plus(right.unit().times(0.3 + 0.1 * i))
                    .plus(up.unit().times(0.9 - 0.1 * i));
            if (Math.abs(glow.share(place, aside) - straight) > SAME_SHARE * straight) {
                return true;
            }
        }
        return false;
    }

    /// Whether it is alike from everywhere.
    boolean isEven() {
        return asked.isEmpty() && grid.length == 0;
    }

    /// What holds everywhere.
    double even() {
        return even;
    }

    double share(double x, double y, double z, double toX, double toY, double toZ) {
        double share = even;
        if (grid.length > 0) {
            double px = x - frame[0];
            double py = y - frame[1];
            double pz = z - frame[2];
            share *= at(px * frame[3] + py * frame[4] + pz * frame[5], px * frame[6] + py * frame[7] + pz * frame[8]);
        }
        for (int i = 0; i < asked.size(); i++) {
            share *= asked.get(i).share(new Vec(x, y, z), new Vec(toX, toY, toZ));
        }
        return share;
    }

    private double at(double u, double v) {
        double x = Math.clamp((u + 1) / 2 * (PLACES - 1), 0, PLACES - 1.000001);
        double y = Math.clamp((v + 1) / 2 * (PLACES - 1), 0, PLACES - 1.000001);
        int column = (int) x;
        int at = ((int) y) * PLACES + column;
        double s = x - column;
        double t = y - (int) y;
        double low = (1 - s) * grid[at] + s * grid[at + 1];
        double high = (1 - s) * grid[at + PLACES] + s * grid[at + PLACES + 1];
        return (1 - t) * low + t * high;
    }
}
