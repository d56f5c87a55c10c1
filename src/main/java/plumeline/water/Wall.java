package plumeline.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;
import plumeline.roots.Roots;

/// A wall of even thickness between a product's outside and the room inside.
///
/// @param outer the outside, a hollow base included as if it were filled
/// @param hollow the hollow under its base
public record Wall(Form outer, Vessel.Hollow hollow) {
    /// As much room as this share of the outside is none.
    private static final double ROUNDING = 1e-9;

    /// Makes a vessel of what this wall leaves inside.
    ///
    /// @param shell the empty product's mass, kilograms, > 0, and the height of its centre of mass, metres; of the
    ///     evenly thick wall itself where that isn't known
    /// @param roomMetres3 the room inside, cubic metres, ≥ 0, less than [#displacedMetres3]
    /// @param liquidMetres3 the liquid in it, cubic metres, ≥ 0; what doesn't go in is left out
    /// @param kilogramsPerMetre3 the liquid's density, kilograms a cubic metre, > 0
    /// @return the vessel; solid where the room is next to nothing
    public Vessel around(Empty shell, double roomMetres3, double liquidMetres3, double kilogramsPerMetre3) {
        if (roomMetres3 < ROUNDING * displacedMetres3()) {
            Vessel.Shell solid =
                    new Vessel.Shell(shell.kilograms(), shell.centreMetres().orElseGet(this::solidCentreMetres));
            return new Vessel(outer, solid, new Vessel.Inside.Solid(), hollow, List.of());
        }
        Form room = room(roomMetres3);
        Vessel.Shell thin =
                new Vessel.Shell(shell.kilograms(), shell.centreMetres().orElseGet(() -> centreMetres(room)));
        double fits = Math.min(liquidMetres3, room.whole().volumeMetres3());
        return new Vessel(outer, thin, new Vessel.Inside.Filled(room, fits, kilogramsPerMetre3), hollow, List.of());
    }

    /// An empty product.
    ///
    /// @param kilograms its mass, kilograms, > 0
    /// @param centreMetres height of its centre of mass over the base, metres, where it is known
    public record Empty(double kilograms, OptionalDouble centreMetres) {}

    /// Gives the volume that it displaces without air under its base.
    ///
    /// @return volume, cubic metres
    public double displacedMetres3() {
        return outer.whole().volumeMetres3() - recessMetres3();
    }

    private double recessMetres3() {
        return switch (hollow) {
            case Vessel.Hollow.Flat() -> 0;
            case Vessel.Hollow.Under(Turned recess, double _) -> recess.whole().volumeMetres3();
        };
    }

    /// Gives the room behind a wall that is as thick as leaves that room. A wall that bends more sharply than it is
    /// thick has no inside of even distance; then the room is the outside drawn smaller about its middle height.
    ///
    /// @param roomMetres3 the room inside, cubic metres, > 0 and less than [#displacedMetres3]
    /// @return the room
    public Form room(double roomMetres3) {
        Ranges.checkPositive(roomMetres3, "roomMetres3");
        Ranges.check(roomMetres3 < displacedMetres3(), "roomMetres3", roomMetres3, "less than the outside");
        return even(roomMetres3).orElseGet(() -> smaller(roomMetres3));
    }

    /// The room behind the thickness that leaves it.
    private Optional<Form> even(double roomMetres3) {
        return Roots.falsePosition(
                        thickness -> inside(thickness)
                                        .map(each -> each.whole().volumeMetres3())
                                        .orElse(0.0)
                                - roomMetres3,
                        0,
                        displacedMetres3() - roomMetres3,
                        mostMetres(),
                        -roomMetres3,
                        1e-12 * roomMetres3)
                .stream()
                .mapToObj(this::inside)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private double mostMetres() {
        double height = outer.highestMetres(Vec.UP) - outer.lowestMetres(Vec.UP);
        double across = outer.highestMetres(new Vec(1, 0, 0)) - outer.lowestMetres(new Vec(1, 0, 0));
        double deep = outer.highestMetres(new Vec(0, 1, 0)) - outer.lowestMetres(new Vec(0, 1, 0));
        return Math.min(height, Math.min(across, deep)) / 2;
    }

    /// What is left inside a wall of a thickness.
    private Optional<Form> inside(double metres) {
        Optional<Form> full = switch (outer) {
            case Turned turned -> new Inset(turned.rings(), metres).find().map(Form.class::cast);
            case Block(double width, double depth, double height, double base) ->
                2 * metres < Math.min(height, Math.min(width, depth))
                        ? Optional.of(
                                new Block(width - 2 * metres, depth - 2 * metres, height - 2 * metres, base + metres))
                        : Optional.empty();
            case Dished _ -> Optional.empty();
        };
        return switch (hollow) {
            case Vessel.Hollow.Flat() -> full;
            case Vessel.Hollow.Under(Turned recess, double _) ->
                full.flatMap(form -> new Inset(recess.rings(), -metres)
                        .find()
                        .map(dome -> dome.above(form.lowestMetres(Vec.UP)))
                        .filter(dome -> Recess.fits(form, dome))
                        .map(dome -> new Dished(form, dome)));
        };
    }

    private Form smaller(double roomMetres3) {
        double factor = Math.cbrt(roomMetres3 / displacedMetres3());
        double middle = (outer.highestMetres(Vec.UP) + outer.lowestMetres(Vec.UP)) / 2;
        Form full = switch (outer) {
            case Turned turned -> turned.scaled(factor, middle);
            case Block(double width, double depth, double height, double base) ->
                new Block(width * factor, depth * factor, height * factor, middle + (base - middle) * factor);
            case Dished _ -> outer;
        };
        return switch (hollow) {
            case Vessel.Hollow.Flat() -> full;
            case Vessel.Hollow.Under(Turned recess, double _) -> new Dished(full, recess.scaled(factor, middle));
        };
    }

    /// Gives the height of the wall's centre of mass: of all that is neither room nor hollow.
    ///
    /// @param room the room inside
    /// @return height over the base, metres
    public double centreMetres(Form room) {
        List<Portion> holes = new ArrayList<>(List.of(room.whole()));
        return centre(holes);
    }

    /// Gives the height of the centre of mass of a body that is solid throughout.
    ///
    /// @return height over the base, metres
    public double solidCentreMetres() {
        return centre(new ArrayList<>());
    }

    private double centre(List<Portion> holes) {
        if (hollow instanceof Vessel.Hollow.Under(Turned recess, double _)) {
            holes.add(recess.whole());
        }
        Portion all = outer.whole();
        double volume = all.volumeMetres3();
        double moment = volume * all.centroid().z();
        for (Portion each : holes) {
            volume -= each.volumeMetres3();
            moment -= each.volumeMetres3() * each.centroid().z();
        }
        return moment / volume;
    }

    /// An outline's faces moved inward by the same way: its flat ends, its slopes and its steps.
    ///
    /// @param rings the outline from the base to the top
    /// @param metres the way, metres; outward where it is less than 0
    private record Inset(List<Turned.Ring> rings, double metres) {
        /// A face of the outline in the half plane of radius and height, moved inward: where it starts, and which way
        /// it goes.
        private record Face(double r, double z, double alongR, double alongZ) {
            private static Face of(double r0, double z0, double r1, double z1, double metres) {
                double length = Math.hypot(r1 - r0, z1 - z0);
                double alongR = (r1 - r0) / length;
                double alongZ = (z1 - z0) / length;
                return new Face(r0 - metres * alongZ, z0 + metres * alongR, alongR, alongZ);
            }

            /// Where two faces meet; where they are one, the start of the second.
            private Turned.Ring meet(Face next) {
                double cross = alongR * next.alongZ - alongZ * next.alongR;
                double way = Math.abs(cross) < 1e-9 ? 0 : (alongR * (z - next.z) - alongZ * (r - next.r)) / cross;
                return new Turned.Ring(next.z + way * next.alongZ, Math.max(0, next.r + way * next.alongR));
            }

            private double along(Turned.Ring from, Turned.Ring to) {
                return alongR * (to.radiusMetres() - from.radiusMetres())
                        + alongZ * (to.heightMetres() - from.heightMetres());
            }
        }

        Optional<Turned> find() {
            List<Face> faces = faces();
            List<Turned.Ring> inside = new ArrayList<>();
            if (rings.getFirst().radiusMetres() == 0) {
                inside.add(faces.getFirst().meet(new Face(0, 0, 0, 1)));
            }
            for (int i = 1; i < faces.size(); i++) {
                inside.add(faces.get(i - 1).meet(faces.get(i)));
            }
            if (rings.getLast().radiusMetres() == 0) {
                inside.add(faces.getLast().meet(new Face(0, 0, 0, 1)));
            }
            return isOutline(inside, faces) ? Optional.of(new Turned(inside)) : Optional.empty();
        }

        private List<Face> faces() {
            List<Face> faces = new ArrayList<>();
            Turned.Ring before = new Turned.Ring(rings.getFirst().heightMetres(), 0);
            List<Turned.Ring> all = new ArrayList<>(rings);
            all.add(new Turned.Ring(rings.getLast().heightMetres(), 0));
            for (Turned.Ring ring : all) {
                double dr = ring.radiusMetres() - before.radiusMetres();
                double dz = ring.heightMetres() - before.heightMetres();
                if (Math.hypot(dr, dz) > 0) {
                    faces.add(Face.of(
                            before.radiusMetres(),
                            before.heightMetres(),
                            ring.radiusMetres(),
                            ring.heightMetres(),
                            metres));
                }
                before = ring;
            }
            return faces;
        }

        /// Whether every face is still there, going the way it went.
        private boolean isOutline(List<Turned.Ring> inside, List<Face> faces) {
            int skipped = rings.getFirst().radiusMetres() == 0 ? 0 : 1;
            for (int i = 1; i < inside.size(); i++) {
                if (!(faces.get(i - 1 + skipped).along(inside.get(i - 1), inside.get(i)) > 0)) {
                    return false;
                }
            }
            for (int i = 0; i < inside.size(); i++) {
                boolean end = i == 0 || i == inside.size() - 1;
                boolean falls = i > 0
                        && inside.get(i).heightMetres() < inside.get(i - 1).heightMetres();
                if (falls || !end && inside.get(i).radiusMetres() == 0) {
                    return false;
                }
            }
            double flat = inside.getLast().heightMetres() - inside.getFirst().heightMetres();
            return flat > 0 && inside.stream().anyMatch(ring -> ring.radiusMetres() > 0);
        }
    }
}
