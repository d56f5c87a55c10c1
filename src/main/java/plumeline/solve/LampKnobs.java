package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Aim;
import plumeline.geom.Vec;
import plumeline.lit.Measure;
import plumeline.plan.Kit;
import plumeline.plan.PlacedLight;
import plumeline.stage.Beam;
import plumeline.text.Node;

/// What a shot's lamps can be set to for more light or less on a thing: a level, a place nearer or farther, another
/// lamp of the kit in its place, a second one beside it.
///
/// A lamp's part of the light is found by judging the shot with it full and off.
final class LampKnobs {
    /// A lamp that gives less of the light, at full level, is left alone.
    private static final double LEAST_SHARE = 0.05;

    /// Nearer than this to what it shines at no lamp is moved, m: hands and heat.
    private static final double NEAREST_METRES = 0.1;

    /// Farther than this no table has room, m.
    private static final double FARTHEST_METRES = 10;

    /// A lamp's middle stays over this, as the floor is 0.9 m under the table's top: common practice.
    private static final double FLOOR_METRES = -0.6;

    /// Air between two lamps side by side, m.
    private static final double BESIDE_METRES = 0.06;

    /// What a lamp without a size takes, m.
    private static final double POINT_METRES = 0.1;

    private static final int CLOSER = 4;

    private final Otherwise otherwise;
    private final String id;
    private final Words words;
    private final double aimStops;

    /// @param otherwise the shot
    /// @param id the want's
    /// @param words the crew's words
    LampKnobs(Otherwise otherwise, String id, Words words) {
        this.otherwise = otherwise;
        this.id = id;
        this.words = words;
        this.aimStops =
                otherwise.here().findChange(id).map(Measure.Change::aimStops).orElse(0.0);
    }

    /// A lamp with its part of the light, all of it as it is being 1.
    ///
    /// @param placed the lamp
    /// @param beam how it stands
    /// @param level its level, share of one
    /// @param others what all others give
    /// @param full what it gives at full level
    private record Part(PlacedLight placed, Beam beam, double level, double others, double full) {
        String path() {
            return "lights." + placed.name();
        }

        /// What it would have to give for so much more light altogether.
        double wanted(double stops) {
            return Math.pow(2, stops) - others;
        }
    }

    List<Turn.Knob> list() {
        List<Turn.Knob> knobs = new ArrayList<>();
        var shot = otherwise.shot();
        var beams = otherwise.judged().stage().scene(otherwise.si(), 0).beams();
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < shot.lights().size(); i++) {
            part(shot.lights().get(i), beams.get(i)).ifPresent(parts::add);
        }
        parts.forEach(part -> knobs.add(new Level(part)));
        parts.forEach(part -> knobs.add(new Distance(part)));
        for (Part part : parts) {
            otherwise.plan().kit().lights().stream()
                    .filter(light -> light.emitter().isLamp()
                            && !light.name().equals(part.placed.light().name()))
                    .forEach(light -> knobs.add(new Another(part, light)));
        }
        parts.forEach(part -> knobs.add(new Second(part)));
        return knobs;
    }

    /// Empty for a card and a flag, and for a lamp that gives nothing there.
    private Optional<Part> part(PlacedLight placed, Beam beam) {
        if (!placed.light().emitter().isLamp()) {
            return Optional.empty();
        }
        OptionalDouble full = findLight(List.of(level(placed.name(), 1)));
        OptionalDouble others = findLight(List.of(level(placed.name(), 0)));
        if (full.isEmpty() || others.isEmpty()) {
            return Optional.empty();
        }
        double own = full.getAsDouble() - others.getAsDouble();
        return own < LEAST_SHARE
                ? Optional.empty()
                : Optional.of(new Part(placed, beam, beam.level(), others.getAsDouble(), own));
    }

    /// All of the light with other keys, that as it is being 1.
    private OptionalDouble findLight(List<Otherwise.Key> keys) {
        return otherwise
                .find(keys)
                .flatMap(there -> there.findChange(id))
                .map(change -> OptionalDouble.of(Math.pow(2, aimStops - change.aimStops())))
                .orElse(OptionalDouble.empty());
    }

    private Otherwise.Key level(String lamp, double share) {
        return new Otherwise.Key("lights." + lamp + ".level", scalar(percent(share)));
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private Node scalar(String text) {
        return new Node.Scalar(text, false, otherwise.shot().place());
    }

    private static double stops(double ratio) {
        return Math.log(ratio) / Math.log(2);
    }

    /// Whole hundredths; empty where it is none of a lamp.
    private static OptionalDouble settable(double share) {
        double rounded = Math.rint(share * 100) / 100;
        return rounded >= 0.01 && rounded <= 1 ? OptionalDouble.of(rounded) : OptionalDouble.empty();
    }

    private final class Level implements Turn.Knob {
        private final Part part;

        Level(Part part) {
            this.part = part;
        }

        @Override
        public List<Turn> listNear(double stops) {
            OptionalDouble level = settable(part.wanted(stops) / part.full);
            return level.isPresent() && Math.abs(level.getAsDouble() - part.level) > 0.004
                    ? List.of(turn(level.getAsDouble()))
                    : List.of();
        }

        private Turn turn(double level) {
            String name = part.placed.name();
            return new Turn(
                    List.of(level(name, level)),
                    stops(part.others + part.full * level),
                    "set " + name + ".level " + percent(level) + " instead of " + percent(part.level),
                    "",
                    1,
                    List.of());
        }

        @Override
        public List<Turn> listPart(double stops) {
            return stops > 0 && part.level < 0.99 ? List.of(turn(1)) : List.of();
        }
    }

    private final class Distance implements Turn.Knob {
        private final Part part;
        private final double farMetres;

        Distance(Part part) {
            this.part = part;
            farMetres = part.beam.aim().eye().distanceMetres(subject());
        }

        /// The middle of the thing or card that the light is wanted on.
        private Vec subject() {
            var stage = otherwise.judged().stage();
            var scene = stage.scene(otherwise.si(), 0);
            String name = otherwise.here().line(id).line().subjects().getFirst().name();
            int thing = stage.thingIndex(name);
            return thing >= 0
                    ? scene.things().get(thing).middle()
                    : scene.beams().get(stage.lampIndex(name)).aim().eye();
        }

        /// Closes in on the place by the square of the distance, each time with the light that there is.
        @Override
        public List<Turn> listNear(double stops) {
            double now = part.full * part.level;
            double wanted = part.wanted(stops);
            if (now <= 0 || wanted <= 0) {
                return List.of();
            }
            double metres = farMetres * Math.sqrt(now / wanted);
            double light = 1;
            for (int i = 0; i < CLOSER; i++) {
                if (metres < NEAREST_METRES
                        || metres > FARTHEST_METRES
                        || at(metres).z() < FLOOR_METRES) {
                    return List.of();
                }
                OptionalDouble there = findLight(List.of(place(metres)));
                if (there.isEmpty() || there.getAsDouble() <= part.others) {
                    return List.of();
                }
                light = there.getAsDouble();
                if (i < CLOSER - 1) {
                    metres *= Math.sqrt((light - part.others) / wanted);
                }
            }
            return List.of(turn(metres, light));
        }

        private Vec at(double metres) {
            Aim aim = part.beam.aim();
            return aim.eye().plus(aim.forward().times(farMetres - metres));
        }

        private Otherwise.Key place(double metres) {
            return new Otherwise.Key(part.path() + ".at", spot(at(metres)));
        }

        private Turn turn(double metres, double light) {
            String name = part.placed.name();
            double nearer = farMetres - metres;
            return new Turn(
                    List.of(place(metres)),
                    stops(light),
                    "set " + name + " " + words.tape(Math.abs(nearer)) + (nearer > 0 ? " nearer" : " farther off")
                            + " along its own way, to " + said(name, at(metres)),
                    "Its reflection changes its size.",
                    1,
                    List.of(name));
        }

        @Override
        public List<Turn> listPart(double stops) {
            return Math.abs(stops) > 1 ? listNear(Math.copySign(1, stops)) : List.of();
        }
    }

    private String said(String name, Vec at) {
        return name + ".x " + words.place(at.x()) + ", " + name + ".y " + words.place(at.y()) + ", " + name + ".z "
                + words.place(at.z());
    }

    private Node spot(Vec at) {
        return new Node.Sequence(
                List.of(scalar(words.place(at.x())), scalar(words.place(at.y())), scalar(words.place(at.z()))),
                otherwise.shot().place());
    }

    private final class Another implements Turn.Knob {
        private final Part part;
        private final Kit.Light light;
        private final OptionalDouble full;

        Another(Part part, Kit.Light light) {
            this.part = part;
            this.light = light;
            OptionalDouble there = findLight(keys(1));
            full = there.isPresent() ? OptionalDouble.of(there.getAsDouble() - part.others) : there;
        }

        private List<Otherwise.Key> keys(double level) {
            return List.of(
                    new Otherwise.Key(part.path() + ".light", scalar(light.name())), level(part.placed.name(), level));
        }

        @Override
        public List<Turn> listNear(double stops) {
            if (full.isEmpty() || full.getAsDouble() < LEAST_SHARE) {
                return List.of();
            }
            OptionalDouble level = settable(part.wanted(stops) / full.getAsDouble());
            return level.isPresent() ? List.of(turn(level.getAsDouble())) : List.of();
        }

        private Turn turn(double level) {
            return new Turn(
                    keys(level),
                    stops(part.others + full.orElse(0) * level),
                    "light " + part.placed.name() + " with " + light.name() + " instead of "
                            + part.placed.light().name() + ", at level " + percent(level),
                    "",
                    1,
                    List.of(part.placed.name()));
        }

        @Override
        public List<Turn> listPart(double stops) {
            return stops > 0 && full.orElse(0) > part.full * part.level ? List.of(turn(1)) : List.of();
        }
    }

    private final class Second implements Turn.Knob {
        private final Part part;
        private final String name;

        Second(Part part) {
            this.part = part;
            this.name = free(part.placed.name());
        }

        private String free(String lamp) {
            int number = 2;
            while (isTaken(lamp + "_" + number)) {
                number++;
            }
            return lamp + "_" + number;
        }

        private boolean isTaken(String taken) {
            var shot = otherwise.shot();
            return shot.findLight(taken).isPresent()
                    || shot.findPlaced(taken).isPresent()
                    || shot.moves().stream().anyMatch(move -> move.name().equals(taken));
        }

        /// To its right and to its left, as it faces.
        private List<Vec> places() {
            Aim aim = part.beam.aim();
            double aside = BESIDE_METRES
                    + switch (part.placed.light().emitter()) {
                        case Kit.Emitter.Panel panel -> panel.width().si();
                        case Kit.Emitter.Tube tube -> tube.length().si();
                        case Kit.Emitter.Disc disc -> disc.diameter().si();
                        case Kit.Emitter.Point _, Kit.Emitter.Card _, Kit.Emitter.Flag _ -> POINT_METRES;
                    };
            return List.of(
                    aim.eye().plus(aim.right().times(aside)),
                    aim.eye().minus(aim.right().times(aside)));
        }

        private List<Otherwise.Key> keys(Vec at, double level) {
            List<Node.Entry> entries = new ArrayList<>();
            for (Node.Entry entry : part.placed.written().node().entries()) {
                if (!entry.key().equals("at") && !entry.key().equals("level")) {
                    entries.add(entry);
                }
            }
            var place = otherwise.shot().place();
            entries.add(new Node.Entry("at", place, spot(at)));
            entries.add(new Node.Entry("level", place, scalar(percent(level))));
            return List.of(new Otherwise.Key("lights." + name, new Node.Mapping(entries, place)));
        }

        @Override
        public List<Turn> listNear(double stops) {
            List<Turn> turns = new ArrayList<>();
            if (stops > 0) {
                for (Vec at : places()) {
                    double full = full(at);
                    OptionalDouble level =
                            full < LEAST_SHARE ? OptionalDouble.empty() : settable((Math.pow(2, stops) - 1) / full);
                    level.ifPresent(share -> turns.add(turn(at, share, full)));
                }
            }
            return turns;
        }

        private double full(Vec at) {
            return findLight(keys(at, 1)).orElse(1) - 1;
        }

        private Turn turn(Vec at, double level, double full) {
            return new Turn(
                    keys(at, level),
                    stops(1 + level * full),
                    "add a second " + part.placed.light().name() + " beside " + part.placed.name()
                            + ", facing as it does: " + said(name, at) + ", at level " + percent(level),
                    "",
                    1,
                    List.of(name));
        }

        @Override
        public List<Turn> listPart(double stops) {
            return stops > 0
                    ? places().stream()
                            .map(at -> turn(at, 1, full(at)))
                            .filter(turn -> turn.stops() > LEAST_SHARE && turn.stops() < stops)
                            .toList()
                    : List.of();
        }
    }
}
