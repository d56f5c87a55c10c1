package plumeline.look;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import plumeline.colour.Srgb;
import plumeline.lit.Spots;
import plumeline.plan.Camera;
import plumeline.plan.Named;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.plan.Written;
import plumeline.quantity.FrameRate;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.stage.Gauge;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.timeline.Timeline;

/// From a want on looks, or on how a lamp pulses, as written to what it measures.
public final class LookMeasures {
    private static final double MATCHED_STOPS = 0.5;

    /// So far off light may be, u'v': more than side by side, less than one notices from look to look. Common practice.
    private static final double LIGHT_DISTANCE = 0.01;

    /// So far off a thing may be, CIEDE2000: common practice for print seen on screens.
    private static final double THING_DISTANCE = 5;

    private final WantLine line;
    private final Plan plan;
    private final Stage stage;
    private final Shot base;
    private final Quantity film;

    private LookMeasures(WantLine line, Plan plan, Stage stage) {
        this.line = line;
        this.plan = plan;
        this.stage = stage;
        base = plan.findShot(stage.shot().name()).orElseThrow();
        film = plan.film().rate();
    }

    /// Tells whether a want word is one of those read here.
    ///
    /// @param word the want word
    /// @return true for looks and pulses
    public static boolean isOne(String word) {
        return switch (word) {
            case "steady_light", "flash_safe", "matched", "look" -> true;
            default -> false;
        };
    }

    /// Tells whether a want is judged in one of its shot's looks: a comparison of looks is, once, in its first.
    ///
    /// @param line the want
    /// @param pass the look's name
    /// @param isFirst whether it is the shot's first look
    /// @return true where it is judged there
    public static boolean isJudgedIn(WantLine line, String pass, boolean isFirst) {
        List<String> named = line.subjects().stream().map(Named::name).toList();
        return switch (line.word()) {
            case "matched" -> named.getFirst().equals(pass);
            case "flash_safe" ->
                named.getFirst().equals("cuts") ? isFirst : named.getFirst().equals(pass);
            case "look" -> named.contains(pass);
            default -> true;
        };
    }

    /// Reads a want.
    ///
    /// @param line the want, of one of these words
    /// @param plan the plan
    /// @param stage the look in which it is judged
    /// @return what it measures
    public static Gauge.Reading<Looks> of(WantLine line, Plan plan, Stage stage) {
        LookMeasures reader = new LookMeasures(line, plan, stage);
        return switch (line.word()) {
            case "steady_light" -> reader.steady();
            case "flash_safe" -> reader.flashes();
            case "matched" -> reader.matched();
            default -> reader.look();
        };
    }

    /// Counts all cuts of a film and of its cut-downs.
    ///
    /// @param plan the plan
    /// @return a count for each that has two looks or more, the film's first
    public static List<FlashCount> listCuts(Plan plan) {
        return Timeline.listAll(plan).stream()
                .map(timeline -> new FlashCount(timeline.rate(), CutLooks.of(timeline)))
                .filter(count -> count.looks().size() > 1)
                .toList();
    }

    private Gauge.Reading<Looks> steady() {
        int lamp = stage.lampIndex(line.subjects().getFirst().name());
        return stage.shot().lights().get(lamp).light().emitter().isLamp()
                ? new Gauge.Reading.Of<>(new SteadyLight(stage.shot(), lamp, film))
                : new Gauge.Reading.Missing<>(
                        line.subjects().getFirst().name() + " has no light of its own: name a lamp.");
    }

    private Gauge.Reading<Looks> flashes() {
        List<String> passes = line.subjects().stream().map(Named::name).toList();
        if (passes.getFirst().equals("cuts")) {
            List<FlashCount> cuts = listCuts(plan);
            return cuts.isEmpty()
                    ? new Gauge.Reading.Missing<>("Not known: what is cut. Write the film's cut.")
                    : new Gauge.Reading.Of<>(new FlashSafe(cuts, List.of()));
        }
        FrameRate rate = FrameRate.of(film);
        List<FlashCount> stretches = CutLooks.between(plan, base.name(), new LinkedHashSet<>(passes)).stream()
                .map(looks -> new FlashCount(rate, looks))
                .toList();
        if (stretches.isEmpty()) {
            return new Gauge.Reading.Missing<>(
                    "Not known: how long each look is on. The cut never goes from one of them to"
                            + " another: write there {shot: " + base.name() + ", frames: 72, alternate: ["
                            + String.join(", ", passes) + "], each: 6 frames}.");
        }
        OptionalInt thing = findThing();
        return new Gauge.Reading.Of<>(
                new FlashSafe(stretches, thing.isPresent() ? looks(passes, thing.getAsInt()) : List.of()));
    }

    private Gauge.Reading<Looks> matched() {
        OptionalInt thing = findThing();
        if (thing.isEmpty()) {
            return new Gauge.Reading.Missing<>("Say on what they shall match: upon: THING.");
        }
        List<LookAt> looks = looks(line.subjects().stream().map(Named::name).toList(), thing.getAsInt());
        Optional<Gauge.Reading<Looks>> lacking = lacking(looks.getFirst());
        if (lacking.isPresent()) {
            return lacking.get();
        }
        Written keys = line.written();
        double by = keys.findQuantity("by").map(Quantity::si).orElse(0.0);
        double within = keys.findQuantity("within")
                .map(allowed -> allowed.kind() == Kind.SHARE ? Math.log1p(allowed.si()) / Math.log(2) : allowed.si())
                .orElse(MATCHED_STOPS);
        return new Gauge.Reading.Of<>(new Matched(looks, by, within));
    }

    private Gauge.Reading<Looks> look() {
        Written keys = line.written();
        boolean isOfLight = keys.has("light");
        if (isOfLight == keys.has("upon")) {
            return new Gauge.Reading.Missing<>(
                    isOfLight
                            ? "Two colours are meant: write light or upon."
                            : "Say whose colour: light: LAMP, or upon: THING.");
        }
        Optional<LookColour.Wanted> wanted = LookColour.findWanted(keys);
        if (wanted.isEmpty()) {
            return new Gauge.Reading.Missing<>(
                    keys.has("colour")
                            ? "No light has the colour that is wanted: x and y come to 1 at most."
                            : "Say which colour: colour: \"#2a9d8f\", 5600 K, or [0.31, 0.33].");
        }
        if (isOfLight && wanted.get().findChromaticity().isEmpty()) {
            return new Gauge.Reading.Missing<>("Black is no colour of a light: level: 0 % is what makes it dark.");
        }
        LookColour.Of of;
        OptionalInt thing = findThing();
        if (isOfLight) {
            of = new LookColour.Of.Light(stage.lampIndex(keys.findWord("light").orElseThrow()));
        } else {
            Placed placed = stage.shot().placed().get(thing.orElseThrow());
            Optional<Srgb> own = LookColour.findOwn(placed);
            if (own.isEmpty()) {
                return new Gauge.Reading.Missing<>(
                        "Not known: the colour of " + placed.thing().reference()
                                + ". Write its colour under daylight, off its print file: colour: \"#b9a7d0\".");
            }
            of = new LookColour.Of.Thing(own.get());
        }
        double within =
                keys.findQuantity("within").map(Quantity::si).orElse(isOfLight ? LIGHT_DISTANCE : THING_DISTANCE);
        String pass = passOf(stage.shot());
        LookAt at = lookAt(pass, stage, thing.orElse(0));
        if (!isOfLight && lacking(at).isPresent()) {
            return lacking(at).get();
        }
        return new Gauge.Reading.Of<>(new LookColour(at, of, wanted.get(), within));
    }

    private String passOf(Shot shot) {
        return base.passes().stream()
                .filter(pass -> pass.effective().equals(shot))
                .map(pass -> pass.name())
                .findFirst()
                .orElse("this look");
    }

    /// A part that the thing doesn't have.
    private Optional<Gauge.Reading<Looks>> lacking(LookAt look) {
        boolean isNone = look.part() == Spots.Part.LABEL
                && stage.shot().placed().get(look.thing()).thing().label().isEmpty();
        return isNone
                ? Optional.of(new Gauge.Reading.Missing<>(
                        look.name() + " has no label: write it with the thing, or part: middle."))
                : Optional.empty();
    }

    private List<LookAt> looks(List<String> passes, int thing) {
        List<LookAt> looks = new ArrayList<>();
        for (String pass : passes) {
            boolean isHere = passOf(stage.shot()).equals(pass);
            looks.add(lookAt(pass, isHere ? stage : Stage.of(plan, base, pass), thing));
        }
        return looks;
    }

    private LookAt lookAt(String pass, Stage look, int thing) {
        Spots.Part part = line.written()
                .findWord("part")
                .flatMap(word -> Arrays.stream(Spots.Part.values())
                        .filter(one -> one.word().equals(word))
                        .findFirst())
                .orElseGet(() -> usual(look, thing));
        return new LookAt(pass, look, thing, part, film);
    }

    private static Spots.Part usual(Stage look, int thing) {
        if (look.shot().placed().isEmpty()) {
            return Spots.Part.MIDDLE;
        }
        Scene start = look.scene(look.startValues(), 0);
        return Spots.usual(
                look.shot().placed().get(thing),
                start.things().get(thing),
                start.aim().eye());
    }

    /// The thing that is named, else what the camera looks at, else the only one.
    private OptionalInt findThing() {
        Optional<String> named = line.written().findWord("upon");
        if (named.isPresent()) {
            return OptionalInt.of(stage.thingIndex(named.get()));
        }
        if (base.camera().aim() instanceof Camera.Aim.At(String thing, var _)) {
            return OptionalInt.of(stage.thingIndex(thing));
        }
        return stage.shot().placed().size() == 1 ? OptionalInt.of(0) : OptionalInt.empty();
    }
}
