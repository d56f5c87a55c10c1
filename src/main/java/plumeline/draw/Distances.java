package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.plan.Shot;
import plumeline.stage.Scene;

/// Level distances between marks at the shot's start: lens to the nearest thing, thing to its neighbour, zero mark to
/// the nearest thing.
final class Distances {
    private static final double NONE_METRES = 0.0005;
    private static final int MOST = 12;

    /// A level distance.
    ///
    /// @param id the two marks' names; `from.lens` and `from.zero` are no things
    /// @param words the same in words
    /// @param from one mark, metres
    /// @param to the other, metres
    record Between(String id, String words, Vec from, Vec to) {
        double metres() {
            return Math.hypot(to.x() - from.x(), to.y() - from.y());
        }
    }

    private record Named(String name, Vec base) {}

    private Distances() {}

    static List<Between> of(Scene scene, Shot shot, MarkBook marks) {
        Vec eye = marks.isCameraSet() ? scene.aim().eye() : Vec.ZERO;
        List<Named> things = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            String name = shot.placed().get(i).name();
            Body body = scene.things().get(i);
            if (marks.isPlaced(name)) {
                things.add(new Named(name, body.pose().base()));
            }
        }
        things.sort(Comparator.comparingDouble(thing -> level(thing.base(), eye)));
        List<Between> all = new ArrayList<>();
        if (things.isEmpty()) {
            return all;
        }
        Named nearest = things.getFirst();
        if (marks.isCameraSet()) {
            add(all, new Between("from.lens." + nearest.name(), "lens to " + nearest.name(), eye, nearest.base()));
        }
        add(all, new Between("from.zero." + nearest.name(), "zero to " + nearest.name(), Vec.ZERO, nearest.base()));
        Named at = nearest;
        List<Named> left = new ArrayList<>(things.subList(1, things.size()));
        while (!left.isEmpty() && all.size() < MOST) {
            Vec here = at.base();
            Named next = left.stream()
                    .min(Comparator.comparingDouble(thing -> level(thing.base(), here)))
                    .orElseThrow();
            left.remove(next);
            add(
                    all,
                    new Between(
                            at.name() + "." + next.name(), at.name() + " to " + next.name(), at.base(), next.base()));
            at = next;
        }
        return all;
    }

    private static void add(List<Between> all, Between between) {
        if (between.metres() > NONE_METRES) {
            all.add(between);
        }
    }

    private static double level(Vec a, Vec b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }
}
