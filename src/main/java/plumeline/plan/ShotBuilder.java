package plumeline.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.quantity.Unit;
import plumeline.text.Node;
import plumeline.text.Place;

/// Makes the record of a shot from a checked tree.
final class ShotBuilder {
    private static final double HALF_TURN_DEGREES = 180;
    private static final int HUE_DIGITS = 3;

    private final Node root;
    private final Kit kit;

    ShotBuilder(Node root, Kit kit) {
        this.root = root;
        this.kit = kit;
    }

    Shot shot(Node.Entry entry) {
        var passes = new ArrayList<Pass>();
        for (var pass : Tree.entries(entry.value(), "passes")) passes.add(pass(entry, pass));
        return shot(entry, passes);
    }

    private Pass pass(Node.Entry shot, Node.Entry pass) {
        var overrides = new LinkedHashMap<String, Node>();
        for (var over : Tree.entries(pass.value())) overrides.put(over.key(), over.value());
        var effective = Overlay.effective((Node.Mapping) shot.value(), pass.value());
        var entry = new Node.Entry(shot.key(), shot.keyPlace(), effective);
        return new Pass(pass.key(), overrides, shot(entry, List.of()), pass.keyPlace());
    }

    private Shot shot(Node.Entry entry, List<Pass> passes) {
        var w = KitBuilder.written(entry);
        var set = new Shot.SetPieces(
                list(w, "place", this::placed), list(w, "lights", one -> light(w.node(), one)), tank(w), release(w));
        var wants = PlanBuilder.wants(entry.key(), Tree.items(w.node(), "wants"));
        return new Shot(
                entry.key(),
                KitBuilder.whole(w, "frames"),
                camera(w),
                set,
                list(w, "moves", Moves.with(kit)),
                playback(w),
                new Shot.Views(passes, crops(w), wants),
                w);
    }

    private static <T> List<T> list(Written w, String key, Function<Node.Entry, T> maker) {
        var out = new ArrayList<T>();
        for (var entry : Tree.entries(w.node(), key)) out.add(maker.apply(entry));
        return out;
    }

    private Camera camera(Written shot) {
        var entry = Tree.entry(shot.node(), "camera").orElseThrow();
        var w = KitBuilder.written(entry);
        var at = Setting.spot("camera", w.findNode("at").orElseThrow(), Mark.Kind.TAPE, Mark.Kind.HEIGHT, 3);
        return new Camera(
                pick(kit.bodies(), Kit.CameraBody::name, w, "body"),
                pick(kit.lenses(), Kit.Lens::name, w, "lens"),
                at,
                aim("camera", w, Mark.Kind.TURN),
                w.findNode("focus").map(ShotBuilder::focus),
                w.findNode("f_number").map(n -> Setting.mark("camera.f_number", Mark.Kind.DIAL, n)),
                w.findWord("held").map(h -> h.equals("upright") ? Camera.Held.UPRIGHT : Camera.Held.LEVEL),
                w);
    }

    private static Camera.Focus focus(Node node) {
        return Setting.of(node) instanceof Setting.Other && node instanceof Node.Scalar s
                ? new Camera.Focus.On(s.text(), s.place())
                : new Camera.Focus.At(Setting.mark("camera.focus", Mark.Kind.FOCUS, node));
    }

    private static Camera.Aim aim(String name, Written w, Mark.Kind kind) {
        var aim = w.findWord("aim");
        if (aim.isPresent()) {
            Place place = w.findNode("aim").orElseThrow().place();
            return aim.get().equals("ahead") ? new Camera.Aim.Ahead(place) : new Camera.Aim.At(aim.get(), place);
        }
        var turn = w.findNode("turn").map(n -> Setting.mark(name + ".turn", kind, n));
        var tilt = w.findNode("tilt").map(n -> Setting.mark(name + ".tilt", kind, n));
        return turn.or(() -> tilt)
                .<Camera.Aim>map(first -> new Camera.Aim.By(turn, tilt, first.place()))
                .orElseGet(() -> new Camera.Aim.Untold(w.place()));
    }

    private Placed placed(Node.Entry entry) {
        var w = KitBuilder.written(entry);
        var name = entry.key();
        boolean hung = w.has("lines") || w.has("tied");
        var across = hung ? Mark.Kind.HUNG : Mark.Kind.TAPE;
        var up = hung ? Mark.Kind.HUNG : Mark.Kind.HEIGHT;
        var tied = new ArrayList<Mark>();
        for (Node tie : Tree.items(w.node(), "tied")) {
            tied.add(Setting.mark(name + ".tied_" + (tied.size() + 1), Mark.Kind.HEIGHT, tie));
        }
        return new Placed(
                name,
                KitBuilder.thing(root, w.findWord("thing").orElseThrow()),
                Setting.spot(name, w.findNode("at").orElseThrow(), across, up, hung ? 3 : 2),
                w.findNode("turn").map(n -> Setting.mark(name + ".turn", Mark.Kind.TURN, n)),
                w.findNode("tilt").map(n -> Setting.mark(name + ".tilt", Mark.Kind.TURN, n)),
                tied,
                KitBuilder.whole(w, "lines"),
                w);
    }

    private PlacedLight light(Node shot, Node.Entry entry) {
        var w = lightKeys(shot, entry);
        var name = entry.key();
        return new PlacedLight(
                name,
                pick(kit.lights(), Kit.Light::name, w, "light"),
                Setting.spot(name, w.findNode("at").orElseThrow(), Mark.Kind.LAMP_PLACE, Mark.Kind.LAMP_PLACE, 3),
                aim(name, w, Mark.Kind.LAMP_TURN),
                w.findNode("level").map(n -> Setting.mark(name + ".level", Mark.Kind.DIAL, n)),
                w);
    }

    /// A light's keys, a complement as the hue that it is.
    private Written lightKeys(Node shot, Node.Entry entry) {
        var w = KitBuilder.written(entry);
        if (w.findNode("hue").filter(LampMeaning::isComplement).isEmpty()) return w;
        var thing = LampMeaning.findComplemented(shot, entry.value()).orElseThrow();
        var hue = KitBuilder.get(KitBuilder.thing(root, thing).written(), "hue");
        double opposite = Math.toDegrees(hue.si()) + (hue.si() < Math.PI ? HALF_TURN_DEGREES : -HALF_TURN_DEGREES);
        return w.with("hue", Print.number(opposite, HUE_DIGITS) + " deg");
    }

    private Optional<TankPlace> tank(Written shot) {
        return Tree.entry(shot.node(), "tank")
                .map(KitBuilder::written)
                .map(w -> new TankPlace(
                        pick(kit.tanks(), Kit.Tank::name, w, "tank"),
                        w.listQuantities("at"),
                        w.findQuantity("water"),
                        w));
    }

    private Optional<Release> release(Written shot) {
        return Tree.entry(shot.node(), "release").map(KitBuilder::written).map(this::release1);
    }

    private Release release1(Written w) {
        if (w.has("thing")) return new Release.OfThing(w.listNames("thing").getFirst(), w);
        var at = Setting.spot("release", w.findNode("at").orElseThrow(), Mark.Kind.TAPE, Mark.Kind.HEIGHT, 3);
        return w.has("ink")
                ? new Release.OfInk(pick(kit.inks(), Kit.Ink::name, w, "ink"), at, w)
                : new Release.OfPieces(pick(kit.pieces(), Kit.Piece::name, w, "piece"), at, w);
    }

    private static Playback playback(Written shot) {
        var speed = shot.findNode("speed");
        if (speed.isEmpty()) return new Playback.Constant(1, shot.place());
        if (speed.get() instanceof Node.Scalar s) {
            return new Playback.Constant(Written.quantityOf(s).orElseThrow().si(), s.place());
        }
        var keys = new ArrayList<Playback.Key>();
        for (Node item : Written.itemsOf(speed.get())) {
            var frame = Written.quantityOf(Written.itemsOf(item).get(0)).orElseThrow();
            var value = Written.quantityOf(Written.itemsOf(item).get(1)).orElseThrow();
            keys.add(new Playback.Key(frame.si(), value.si(), value));
        }
        boolean smooth = shot.findWord("ease").filter("smooth"::equals).isPresent();
        return new Playback.Curve(
                keys,
                smooth ? Playback.Ease.SMOOTH : Playback.Ease.STRAIGHT,
                speed.get().place());
    }

    private static Map<String, Shot.Crop> crops(Written shot) {
        var out = new LinkedHashMap<String, Shot.Crop>();
        for (var entry : Tree.entries(shot.node(), "crop")) {
            var at = shot.listQuantities("crop." + entry.key());
            out.put(entry.key(), new Shot.Crop(at.get(0).si(), at.get(1).si()));
        }
        return out;
    }

    static <T> T pick(List<T> from, Function<T, String> name, Written w, String key) {
        var wanted = w.findWord(key).orElseThrow();
        return from.stream()
                .filter(t -> name.apply(t).equals(wanted))
                .findFirst()
                .orElseThrow();
    }

    /// Makes the records of moves from a checked tree.
    private static final class Moves {
        private static final List<String> LENGTHS = List.of(Move.Axis.FOCUS.word(), Move.Axis.ZOOM.word());

        private Moves() {}

        static Function<Node.Entry, Move> with(Kit kit) {
            return entry -> move(kit, entry);
        }

        private static Move move(Kit kit, Node.Entry entry) {
            var w = KitBuilder.written(entry);
            var machine = w.has("machine")
                    ? Optional.of(ShotBuilder.pick(kit.machines(), Kit.Machine::name, w, "machine"))
                    : Optional.<Kit.Machine>empty();
            boolean isLength = w.findWord("axis").filter(LENGTHS::contains).isPresent();
            return new Move(
                    entry.key(),
                    machine,
                    w.findNode("by").map(by -> travel(entry.key(), by, isLength, machine)),
                    w.findQuantity("in"),
                    w.findQuantity("start"),
                    w.findWord("profile").map(Moves::profile),
                    w.listNames("keeps"),
                    w);
        }

        private static Move.Profile profile(String word) {
            return switch (word) {
                case "even" -> Move.Profile.EVEN;
                case "trapezoid" -> Move.Profile.TRAPEZOID;
                case "s-curve" -> Move.Profile.S_CURVE;
                default -> Move.Profile.SMOOTH;
            };
        }

        private static Move.Travel travel(String name, Node by, boolean isLength, Optional<Kit.Machine> machine) {
            var repeats = machine.flatMap(m -> m.written().findQuantity("repeats"));
            if (by instanceof Node.Scalar && isLength) {
                return new Move.Travel.Length(mark(name + ".by", Mark.Kind.MOTOR, repeats, by));
            }
            if (by instanceof Node.Scalar) {
                return new Move.Travel.Round(mark(name + ".by", Mark.Kind.MOTOR_TURN, repeats, by));
            }
            var items = Written.itemsOf(by);
            var moving = new ArrayList<Integer>();
            boolean free = false;
            for (int i = 0; i < items.size(); i++) {
                var setting = Setting.of(items.get(i));
                free |= !(setting instanceof Setting.Value);
                if (!(setting instanceof Setting.Value v && v.quantity().si() == 0)) moving.add(i);
            }
            if (moving.size() < 2) {
                int one = moving.isEmpty() ? 0 : moving.getFirst();
                var direction = List.of(one == 0 ? 1.0 : 0.0, one == 1 ? 1.0 : 0.0, one == 2 ? 1.0 : 0.0);
                var mark = mark(name + ".by", Mark.Kind.MOTOR, repeats, items.get(one));
                return new Move.Travel.Along(mark, direction);
            }
            return free ? components(name, items, repeats) : slanted(name, by, items, repeats);
        }

        private static Move.Travel components(String name, List<Node> items, Optional<Quantity> repeats) {
            var marks = new ArrayList<Mark>();
            for (int i = 0; i < items.size(); i++) {
                marks.add(mark(name + ".by_" + "xyz".charAt(i), Mark.Kind.MOTOR, repeats, items.get(i)));
            }
            return new Move.Travel.Components(marks);
        }

        /// A slanted way: one mark, the length along it, in the first component's unit. Its ± is the components'
        /// together.
        private static Move.Travel slanted(String name, Node by, List<Node> items, Optional<Quantity> repeats) {
            var parts =
                    items.stream().map(n -> Written.quantityOf(n).orElseThrow()).toList();
            double square = 0;
            double spread = 0;
            for (var part : parts) {
                square += part.si() * part.si();
                spread += part.halfWidthSi() * part.halfWidthSi();
            }
            double length = Math.sqrt(square);
            Unit unit = parts.getFirst().unit();
            var usual = usual(Mark.Kind.MOTOR, repeats);
            var error = spread > 0 ? new Mark.PlacingError(Math.sqrt(spread), 0) : usual;
            var value = Quantity.of(length, unit).withOrigin(parts.getFirst().origin());
            var direction = new ArrayList<Double>();
            for (int i = 0; i < 3; i++)
                direction.add(i < parts.size() ? parts.get(i).si() / length : 0.0);
            return new Move.Travel.Along(
                    new Mark.Fixed(name + ".by", Mark.Kind.MOTOR, value, error, by.place()), direction);
        }

        private static Mark mark(String path, Mark.Kind kind, Optional<Quantity> repeats, Node node) {
            return Setting.mark(path, kind, usual(kind, repeats), Setting.of(node), node.place());
        }

        private static Mark.PlacingError usual(Mark.Kind kind, Optional<Quantity> repeats) {
            return repeats.map(r -> new Mark.PlacingError(r.si(), 0)).orElseGet(kind::usualError);
        }
    }
}
