package plumeline.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.text.Nearest;
import plumeline.text.Node;
import plumeline.text.Place;

/// Checks what a shot points at and what its parts mean together; a shot with a pass's overrides in it too.
final class ShotMeaning {
    private static final String PLACED = "a placed thing";

    private static final double ROUNDING = 1e-9;

    private final Node shot;
    private final String path;
    private final Names names;
    private final Names.ShotNames own;
    private final Issues issues;

    ShotMeaning(Node.Entry shot, String path, Names names, Issues issues) {
        this.shot = shot.value();
        this.path = path;
        this.names = names;
        this.own = Names.ShotNames.of(shot.value());
        this.issues = issues;
    }

    void check() {
        checkNames();
        checkCamera();
        for (var entry : Tree.entries(shot, "place")) checkPlaced(entry);
        for (var entry : Tree.entries(shot, "lights")) {
            var at = path + ".lights." + entry.key();
            kit(entry.value(), at, "light", "lights", "a light");
            placed(entry.value(), at, "aim");
            Tree.scalar(entry.value(), "light")
                    .map(light -> names.forms().get(light.text()))
                    .ifPresent(form -> LampMeaning.checkPlaced(entry.value(), form, at, issues));
            LampMeaning.checkComplement(shot, entry, at, names, issues);
        }
        for (var entry : Tree.entries(shot, "moves")) checkMove(entry);
        Tree.find(shot, "tank").ifPresent(tank -> kit(tank, path + ".tank", "tank", "tanks", "a tank"));
        Tree.find(shot, "sweep").ifPresent(sweep -> checkSweep(sweep, path + ".sweep"));
        checkRelease();
        checkPlayback();
        for (var entry : Tree.entries(shot, "crop")) {
            issues.known(
                    new Named(entry.key(), entry.value().place()),
                    path + ".crop." + entry.key(),
                    names.deliveries(),
                    "a delivery",
                    "deliver");
        }
        new WantMeaning(names, path, shot, issues).check(Tree.items(shot, "wants"), path + ".wants");
    }

    private void checkNames() {
        Map<String, Place> seen = new HashMap<>();
        for (var section : List.of("place", "lights", "moves")) {
            for (var entry : Tree.entries(shot, section)) {
                var field = path + "." + section + "." + entry.key();
                if (entry.key().equals("camera") || entry.key().equals("release")) {
                    issues.add(
                            entry.value(),
                            field,
                            "P-NAME-02",
                            "named `" + entry.key() + "`, a word of the language",
                            "another name",
                            "Try " + entry.key() + "_2.");
                }
                var first = seen.putIfAbsent(entry.key(), entry.keyPlace());
                if (first != null) {
                    issues.add(
                            entry.value(),
                            field,
                            "P-NAME-02",
                            "named as something else in the shot, in line " + first.line(),
                            "named differently: things, lights and moves share their marks' names",
                            "Try " + entry.key() + "_2.");
                }
            }
        }
    }

    private void checkCamera() {
        var camera = Tree.find(shot, "camera");
        if (camera.isEmpty()) return;
        var at = path + ".camera";
        kit(camera.get(), at, "body", "cameras", "a camera body");
        kit(camera.get(), at, "lens", "lenses", "a lens");
        if (!Tree.scalar(camera.get(), "aim").map(Node.Scalar::text).orElse("").equals("ahead")) {
            placed(camera.get(), at, "aim");
        }
        Tree.find(camera.get(), "focus").ifPresent(focus -> {
            if (Setting.of(focus) instanceof Setting.Other) placed(camera.get(), at, "focus");
        });
        new KitMeaning(shot, issues).checkRate(camera.get(), at + ".rate", "rate");
        Tree.find(shot, "frames").ifPresent(n -> issues.wholeFrames(n, path + ".frames"));
        checkClip();
    }

    private void checkClip() {
        var clip = Tree.find(shot, "clip");
        if (clip.isEmpty()) return;
        Tree.find(clip.get(), "file").ifPresent(file -> issues.beside(file, path + ".clip.file"));
        for (var key : new String[] {"go", "frames"}) {
            Tree.find(clip.get(), key).ifPresent(n -> issues.wholeFrames(n, path + ".clip." + key));
        }
        var go = Tree.find(clip.get(), "go");
        var frames = Tree.find(clip.get(), "frames").flatMap(Written::quantityOf);
        var at = go.flatMap(Written::quantityOf);
        if (at.isEmpty() || frames.isEmpty() || at.get().si() < frames.get().si()) return;
        issues.add(
                go.get(),
                path + ".clip.go",
                "P-CLIP-01",
                at.get().valueText(),
                "less than the clip's " + Math.round(frames.get().si()) + " frames",
                "Count from the clip's first frame, 0.");
    }

    private void checkPlaced(Node.Entry entry) {
        var at = path + ".place." + entry.key();
        Tree.find(entry.value(), "thing").flatMap(Written::named).ifPresent(name -> checkThing(name, at + ".thing"));
        var lines = Tree.find(entry.value(), "lines").flatMap(Written::quantityOf);
        var tied = Tree.items(entry.value(), "tied");
        if (lines.isPresent() && !tied.isEmpty() && lines.get().si() != tied.size()) {
            issues.add(
                    Tree.find(entry.value(), "tied").orElseThrow(),
                    at + ".tied",
                    "P-TIE-01",
                    "a list of " + tied.size(),
                    "one height a line: " + lines.get().valueText(),
                    "Leave out `lines`, or write as many heights.");
        }
        var thing = Tree.scalar(entry.value(), "thing").map(Node.Scalar::text).orElse("");
        int index = 0;
        for (Node tie : tied) checkTie(tie, at + ".tied[" + ++index + "]", thing);
        checkBeads(entry.value(), at + ".beads");
        Tree.find(entry.value(), "rig").flatMap(rig -> Tree.find(rig, "from")).ifPresent(from -> {
            checkRig(from, at + ".rig.from", thing);
        });
    }

    /// A wall ends over its bend.
    private void checkSweep(Node sweep, String path) {
        Optional<Quantity> radius = Tree.find(sweep, "radius").flatMap(Written::quantityOf);
        Optional<Node> height = Tree.find(sweep, "height");
        Optional<Quantity> high = height.flatMap(Written::quantityOf);
        if (radius.isEmpty() || high.isEmpty() || high.get().si() > radius.get().si()) return;
        issues.add(
                height.get(),
                path + ".height",
                "P-SWEEP-01",
                high.get().valueText(),
                "more than " + radius.get().valueText() + ", the bend's radius",
                "Measure from the table to its upper edge.");
    }

    /// The smallest drop comes first.
    private void checkBeads(Node placed, String path) {
        List<Node> size = Tree.items(placed, "beads", "size");
        if (size.size() != 2) return;
        Optional<Quantity> least = Written.quantityOf(size.getFirst());
        Optional<Quantity> most = Written.quantityOf(size.getLast());
        if (least.isEmpty() || most.isEmpty() || most.get().si() >= least.get().si()) return;
        issues.add(
                size.getLast(),
                path + ".size[2]",
                "P-BEADS-01",
                most.get().valueText(),
                least.get().valueText() + " or more: the smallest comes first",
                "Try [" + most.get().valueText() + ", " + least.get().valueText() + "].");
    }

    private void checkRig(Node from, String field, String thing) {
        var height = Optional.ofNullable(names.heights().get(thing));
        var asked = Written.quantityOf(from);
        if (height.isPresent()
                && asked.isPresent()
                && asked.get().si() > height.get().si() * (1 + ROUNDING)) {
            issues.add(
                    from,
                    field,
                    "P-RIG-01",
                    asked.get().valueText(),
                    "at most " + height.get().valueText() + ", the height of " + Issues.shown(thing),
                    "Measure from its base to where the rod points at its axis; leave it out for the middle.");
        }
    }

    private void checkTie(Node tie, String field, String thing) {
        var height = Optional.ofNullable(names.heights().get(thing));
        var highest = switch (Setting.of(tie)) {
            case Setting.Value value -> Optional.of(value.quantity());
            case Setting.Between between -> Optional.of(between.high());
            case Setting.Free _, Setting.Other _ -> Optional.<Quantity>empty();
        };
        if (height.isPresent()
                && highest.isPresent()
                && highest.get().si() > height.get().si() * (1 + ROUNDING)) {
            issues.add(
                    tie,
                    field,
                    "P-TIE-02",
                    highest.get().valueText(),
                    "at most " + height.get().valueText() + ", the height of " + Issues.shown(thing),
                    "Measure from its base to where the line leaves it; count a wire fixed to it as part of it.");
        }
    }

    private void checkThing(Named name, String field) {
        int dot = name.name().indexOf('.');
        var thing = dot < 0 ? name.name() : name.name().substring(0, dot);
        var variants = names.things().get(thing);
        if (variants == null) {
            var near = Nearest.find(name.name(), names.references());
            if (near.isEmpty()) {
                issues.known(
                        new Named(thing, name.place()), field, names.things().keySet(), "a thing", "things");
            } else {
                issues.add(
                        name.place(),
                        field,
                        "P-REF-01",
                        Issues.shown(name.name()),
                        "the name of a thing in things: "
                                + Issues.list(names.things().keySet()),
                        "Try " + near.get() + ".");
            }
        } else if (dot >= 0 && !variants.contains(name.name().substring(dot + 1))) {
            var variant = name.name().substring(dot + 1);
            var near = Nearest.find(variant, variants);
            issues.add(
                    name.place(),
                    field,
                    "P-REF-02",
                    Issues.shown(name.name()),
                    variants.isEmpty()
                            ? thing + ", which has no variants"
                            : "a variant of " + thing + ": " + Issues.list(variants),
                    "Try " + near.map(v -> thing + "." + v).orElse(thing) + ".");
        }
    }

    private void checkMove(Node.Entry entry) {
        var at = path + ".moves." + entry.key();
        kit(entry.value(), at, "machine", "machines", "a machine");
        placed(entry.value(), at, "keeps");
        Set<String> carried = new LinkedHashSet<>(own.bodies());
        carried.add("camera");
        list(entry.value(), at, "carries", carried, "a thing or light of the shot, or camera", "the shot");
        checkKeys(entry.value(), at + ".keys");
        checkAxis(entry.value(), at);
        checkKeeps(entry.value(), at);
        var by = Tree.find(entry.value(), "by");
        if (by.isPresent()) {
            if (fitsAxis(entry.value(), by.get(), at + ".by")) checkWay(entry.value(), by.get(), at + ".by");
        } else if (!Tree.has(entry.value(), "keeps") && entry.value() instanceof Node.Mapping) {
            issues.add(
                    entry.value(),
                    at,
                    "P-MOVE-02",
                    "given neither by nor keeps",
                    "given how far it goes",
                    "Add `by: [600 mm, 0 mm]`, or `by: 60 deg` on a turntable.");
        }
    }

    /// Keys begin where the move begins, and no two are at one time.
    private void checkKeys(Node move, String field) {
        double before = Double.NaN;
        int index = 0;
        for (Node item : Tree.items(move, "keys")) {
            index++;
            var pair = Written.itemsOf(item);
            var time = pair.isEmpty() ? Optional.<Quantity>empty() : Written.quantityOf(pair.getFirst());
            var share = pair.size() < 2 ? Optional.<Quantity>empty() : Written.quantityOf(pair.get(1));
            if (time.isEmpty() || share.isEmpty()) return;
            boolean isFirst = index == 1;
            if (isFirst && (time.get().si() != 0 || share.get().si() != 0)) {
                issues.add(
                        item,
                        field + "[1]",
                        "P-MOVE-04",
                        time.get().valueText() + ", " + share.get().valueText(),
                        "0 s, 0 %: a move begins where it begins",
                        "Begin with [0 s, 0 %]; `start` says when that is.");
            } else if (!isFirst && time.get().si() == before) {
                issues.add(
                        item,
                        field + "[" + index + "]",
                        "P-CURVE-02",
                        "a second place at " + time.get().valueText(),
                        "later than the pair above it",
                        "Put it a little later.");
            }
            before = time.get().si();
        }
    }

    private static Optional<Move.Axis> axisOf(Node move) {
        var word = Tree.scalar(move, "axis").map(Node.Scalar::text).orElse("");
        return Arrays.stream(Move.Axis.values())
                .filter(axis -> axis.word().equals(word))
                .findFirst();
    }

    /// What only a camera has carries nothing else; a turntable no camera.
    private void checkAxis(Node move, String at) {
        var axis = axisOf(move);
        if (axis.isEmpty()) return;
        if (axis.get() == Move.Axis.TURNTABLE && !Tree.has(move, "carries")) {
            issues.add(
                    Tree.find(move, "axis").orElseThrow(),
                    at + ".axis",
                    "P-MOVE-03",
                    "turntable, which carries nothing",
                    "beside `carries`: what stands on it",
                    "Add `carries: THING`, or try axis: pan.");
        }
        int index = 0;
        for (Named name : Tree.find(move, "carries").map(Written::namesOf).orElse(List.of())) {
            index++;
            boolean isCamera = name.name().equals("camera");
            if (axis.get().isOfCamera() == isCamera || axis.get().sort() == Move.Axis.Sort.WAY) continue;
            issues.add(
                    name.place(),
                    at + ".carries[" + index + "]",
                    "P-MOVE-03",
                    Issues.shown(name.name()) + ", on the axis " + axis.get().word(),
                    axis.get().isOfCamera() ? "the camera alone" : "a thing or light of the shot",
                    isCamera ? "Try axis: pan." : "Leave it out, or try axis: turntable.");
        }
    }

    /// A pan that keeps things goes where they are: nothing else says where, or when.
    private void checkKeeps(Node move, String at) {
        if (!Tree.has(move, "keeps")) return;
        for (String key : List.of("by", "in", "start", "profile", "keys")) {
            Tree.find(move, key)
                    .ifPresent(node -> issues.add(
                            node,
                            at + "." + key,
                            "P-MOVE-05",
                            "given beside keeps",
                            "left out: a pan that keeps things in the picture follows them",
                            "Leave it out, or make two moves of it."));
        }
        axisOf(move)
                .filter(axis -> axis != Move.Axis.PAN)
                .ifPresent(axis -> issues.add(
                        Tree.find(move, "axis").orElseThrow(),
                        at + ".axis",
                        "P-MOVE-05",
                        axis.word() + ", beside keeps",
                        "pan: only a pan keeps things in the picture",
                        "Leave it out."));
    }

    /// A lift goes straight up or down, a slide is level.
    private void checkLevel(Move.Axis axis, Node by, String field) {
        var items = Written.itemsOf(by);
        for (int i = 0; i < items.size(); i++) {
            boolean isUp = i == 2;
            boolean isNothing =
                    Setting.of(items.get(i)) instanceof Setting.Value(Quantity quantity) && quantity.si() == 0;
            if (isNothing || axis == Move.Axis.LIFT == isUp) continue;
            issues.add(
                    items.get(i),
                    field + "[" + (i + 1) + "]",
                    "P-MOVE-01",
                    "xyz".charAt(i) + " on the axis " + axis.word(),
                    axis == Move.Axis.LIFT ? "[0 mm, 0 mm, z]" : "x and y alone",
                    axis == Move.Axis.LIFT
                            ? "Try [0 mm, 0 mm, 100 mm]."
                            : "Leave the axis out, or make two moves of it.");
        }
    }

    /// Whether a way is said as its axis has it.
    private boolean fitsAxis(Node move, Node by, String field) {
        var axis = axisOf(move);
        boolean isLength = by instanceof Node.Scalar
                && switch (Setting.of(by)) {
                    case Setting.Value value -> value.quantity().kind() == Kind.LENGTH;
                    case Setting.Between between -> between.low().kind() == Kind.LENGTH;
                    case Setting.Free _, Setting.Other _ -> false;
                };
        boolean isBare = by instanceof Node.Scalar && Setting.of(by) instanceof Setting.Free;
        if (axis.isEmpty() && !isLength) return true;
        var sort = axis.map(Move.Axis::sort).orElse(Move.Axis.Sort.WAY);
        boolean fits = switch (sort) {
            case WAY -> by instanceof Node.Sequence;
            case ANGLE -> by instanceof Node.Scalar && !isLength;
            case LENGTH -> isLength || isBare;
        };
        if (fits && sort == Move.Axis.Sort.WAY) {
            axis.ifPresent(one -> checkLevel(one, by, field));
        }
        if (!fits) {
            issues.add(
                    by,
                    field,
                    "P-MOVE-01",
                    by instanceof Node.Sequence ? "a way along a line" : isLength ? "one length" : "an angle",
                    switch (sort) {
                                case WAY -> "x and y(, z)";
                                case ANGLE -> "an angle";
                                case LENGTH -> "one length";
                            }
                            + axis.map(one -> ", on the axis " + one.word()).orElse(""),
                    switch (sort) {
                        case WAY ->
                            axis.filter(one -> one == Move.Axis.LIFT).isPresent()
                                    ? "Try [0 mm, 0 mm, 100 mm]."
                                    : "Try [600 mm, 0 mm].";
                        case ANGLE -> "Try 20 deg.";
                        case LENGTH -> "Try 200 mm.";
                    });
        }
        return fits;
    }

    private void checkWay(Node move, Node by, String field) {
        var machine = Tree.scalar(move, "machine").map(Node.Scalar::text).orElse("");
        var way = wayOf(machine);
        boolean bareFree = by instanceof Node.Scalar && Setting.of(by) instanceof Setting.Free;
        if (by instanceof Node.Sequence && way == Kit.Way.ROUND) {
            issues.add(by, field, "P-MOVE-01", "a way along a line", "an angle: " + machine + " turns", "Try 60 deg.");
        } else if (by instanceof Node.Scalar
                && way == Kit.Way.ALONG
                && axisOf(move)
                        .filter(axis -> axis.sort() == Move.Axis.Sort.LENGTH)
                        .isEmpty()) {
            issues.add(
                    by,
                    field,
                    "P-MOVE-01",
                    bareFree ? "free without a direction" : "an angle",
                    "x and y: " + machine + " goes along a line",
                    bareFree ? "Try [free, 0 mm]." : "Try [600 mm, 0 mm].");
        }
    }

    private Kit.Way wayOf(String machine) {
        return names.ways().getOrDefault(machine, Kit.Way.UNTOLD);
    }

    private void checkRelease() {
        var release = Tree.find(shot, "release");
        if (release.isEmpty()) return;
        var at = path + ".release";
        kit(release.get(), at, "ink", "inks", "an ink");
        kit(release.get(), at, "piece", "pieces", "a piece");
        placed(release.get(), at, "thing");
        for (var sort : List.of("ink", "piece", "thing")) {
            if (!Tree.has(release.get(), sort)) continue;
            for (var entry : Tree.entries(release.get())) {
                if (fits(sort, entry.key())) continue;
                issues.add(
                        entry.value(),
                        at + "." + entry.key(),
                        "P-RELEASE-01",
                        "given for a released " + sort,
                        "left out: it says nothing of a " + sort,
                        "Leave it out.");
            }
            return;
        }
    }

    private static boolean fits(String sort, String key) {
        return switch (key) {
            case "volume", "bore", "squeeze_time", "speed" -> sort.equals("ink");
            case "count", "over", "spread" -> sort.equals("piece");
            case "at" -> !sort.equals("thing");
            default -> true;
        };
    }

    private void checkPlayback() {
        var speed = Tree.find(shot, "speed");
        if (Tree.has(shot, "ease") && !(speed.orElse(shot) instanceof Node.Sequence)) {
            issues.add(
                    Tree.find(shot, "ease").orElseThrow(),
                    path + ".ease",
                    "P-CURVE-03",
                    "given without a curve",
                    "beside a `speed` with keys",
                    "Leave it out.");
        }
        Optional<Quantity> before = Optional.empty();
        int index = 0;
        for (Node item : Tree.items(shot, "speed")) {
            index++;
            var pair = Written.itemsOf(item);
            var frame = pair.isEmpty() ? Optional.<Quantity>empty() : Written.quantityOf(pair.getFirst());
            if (frame.isPresent()
                    && before.isPresent()
                    && frame.get().si() == before.get().si()) {
                issues.add(
                        item,
                        path + ".speed[" + index + "]",
                        "P-CURVE-02",
                        "a second speed at " + frame.get().valueText(),
                        "later than the pair above it",
                        "Put it one frame later.");
            }
            before = frame;
        }
    }

    private void kit(Node node, String at, String key, String section, String what) {
        Tree.find(node, key)
                .flatMap(Written::named)
                .ifPresent(name -> issues.known(name, at + "." + key, names.kit(section), what, "kit." + section));
    }

    private void placed(Node node, String at, String key) {
        list(node, at, key, own.placed().keySet(), PLACED, path + ".place");
    }

    private void list(Node node, String at, String key, Set<String> known, String what, String home) {
        Tree.find(node, key).ifPresent(value -> {
            boolean many = value instanceof Node.Sequence;
            int index = 0;
            for (var name : Written.namesOf(value)) {
                index++;
                issues.known(name, at + "." + key + (many ? "[" + index + "]" : ""), known, what, home);
            }
        });
    }
}
