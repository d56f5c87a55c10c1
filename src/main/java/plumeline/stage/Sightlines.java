package plumeline.stage;

import java.util.List;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Pinhole;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.optics.TankView;

/// How a camera sees bodies where a tank may stand, and how far what it sees is covered by what is computed.
///
/// Computed are two ways of sight: straight past the tank, without touching its outer block; and through the one flat
/// wall that faces the lens point, to a body in the tank that is wholly under the water or wholly above it. A sight
/// line through the water's surface, through another wall or over the rim into the tank, and a body cut by the water
/// line are not computed: a finding that rests on them is unknown. Walls and rim are judged at points round each body,
/// on the safe side by up to 8 % of its radius.
public sealed interface Sightlines {
    /// Gives how bodies are seen in one picture.
    ///
    /// @param bodies what is looked at, at least one
    /// @return the view of all of them
    Seeing at(List<Body> bodies);

    /// What stands between a camera and a body so that the picture isn't computed.
    enum Trouble {
        /// Nothing.
        NONE,
        /// The sight would go through the water's surface.
        SURFACE,
        /// The body is cut by the water line.
        WATER_LINE,
        /// The sight would go through another wall than the one facing the camera, or over the rim.
        OTHER_WALL
    }

    /// How bodies are seen.
    ///
    /// @param projection the view
    /// @param coverMetres how far from leaving what is computed, metres; below 0 the view isn't to be relied on
    /// @param trouble what leaves it first
    record Seeing(Projection projection, double coverMetres, Trouble trouble) {
        /// Tells whether the view is computed.
        ///
        /// @return true where it can be relied on
        public boolean isCovered() {
            return coverMetres >= 0;
        }

        private static Seeing free(Projection projection) {
            return new Seeing(projection, Double.POSITIVE_INFINITY, Trouble.NONE);
        }

        private Seeing within(double otherMetres, Trouble other) {
            return otherMetres < coverMetres ? new Seeing(projection, otherMetres, other) : this;
        }
    }

    /// No tank: all is seen straight.
    ///
    /// @param view the view
    record Free(Pinhole view) implements Sightlines {
        @Override
        public Seeing at(List<Body> bodies) {
            return Seeing.free(view);
        }
    }

    /// A tank stands on the table.
    ///
    /// @param aim lens point and direction
    /// @param walls the tank
    /// @param through the view through its facing wall; a pinhole's where none faces the lens point
    record WithTank(Aim aim, TankWalls walls, Projection through) implements Sightlines {
        @Override
        public Seeing at(List<Body> bodies) {
            Seeing past = Seeing.free(new Pinhole(aim));
            for (Body body : bodies) {
                past = past.within(
                        Around.pastMetres(aim.eye(), Around.places(body), walls.outside()), Trouble.OTHER_WALL);
            }
            if (past.isCovered() || !(through instanceof TankView view)) {
                return past;
            }
            Seeing inside = Seeing.free(view);
            for (Body body : bodies) {
                Seeing one = throughWall(view, body);
                inside = inside.within(one.coverMetres(), one.trouble());
            }
            // Where neither way is computed, say why the tank's own doesn't serve; how far is the nearer way's.
            return new Seeing(view, Math.max(past.coverMetres(), inside.coverMetres()), inside.trouble());
        }

        private Seeing throughWall(TankView view, Body body) {
            List<Vec> places = Around.places(body);
            double before = Double.POSITIVE_INFINITY;
            for (Vec place : places) {
                before = Math.min(
                        before, view.wall().normal().dot(place.minus(view.wall().through())));
            }
            Seeing inside = Seeing.free(view).within(Around.withinMetres(places, openAbove()), Trouble.OTHER_WALL);
            if (inside.isCovered()) {
                inside = inside.within(wallMetres(view, places), Trouble.OTHER_WALL);
                inside = surface(inside, view, body.bounds(), places);
            }
            return before >= inside.coverMetres() ? new Seeing(view, before, Trouble.NONE) : inside;
        }

        private Bounds openAbove() {
            Vec high = walls.outside().high();
            return new Bounds(walls.outside().low(), new Vec(high.x(), high.y(), Double.MAX_VALUE));
        }

        /// How far all sight lines stay within the facing wall, at its outer and at its inner face.
        private double wallMetres(TankView view, List<Vec> places) {
            boolean faceAcrossX = view.wall().normal().x() == 0;
            double least = Double.POSITIVE_INFINITY;
            for (Vec place : places) {
                List<Vec> path = view.path(place);
                for (int i = 1; i < path.size() - 1; i++) {
                    Bounds face = i == 1 ? walls.outside() : walls.inside();
                    Vec at = path.get(i);
                    double across = faceAcrossX
                            ? Math.min(at.x() - face.low().x(), face.high().x() - at.x())
                            : Math.min(at.y() - face.low().y(), face.high().y() - at.y());
                    least = Math.min(
                            least,
                            Math.min(
                                    across,
                                    Math.min(
                                            at.z() - face.low().z(), face.high().z() - at.z())));
                }
            }
            return least;
        }

        /// How far a body and all sight lines to it stay on one side of the water's surface.
        private Seeing surface(Seeing so, TankView view, Bounds body, List<Vec> places) {
            double line = walls.waterLineMetres();
            if (line <= walls.inside().low().z()) {
                return so;
            }
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            for (Vec place : places) {
                Vec inner = view.path(place).get(Math.min(2, view.path(place).size() - 1));
                lowest = Math.min(lowest, inner.z());
                highest = Math.max(highest, inner.z());
            }
            double wet = line - body.high().z();
            double dry = body.low().z() - line;
            return Math.max(wet, dry) < 0
                    ? so.within(Math.max(wet, dry), Trouble.WATER_LINE)
                    : so.within(
                            wet >= 0 ? Math.min(wet, line - highest) : Math.min(dry, lowest - line), Trouble.SURFACE);
        }
    }
}
