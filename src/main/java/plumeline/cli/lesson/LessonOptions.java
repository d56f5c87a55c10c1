package plumeline.cli.lesson;

import static plumeline.desk.Usage.worded;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import plumeline.desk.Arguments;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.lesson.Lesson;
import plumeline.lesson.Lessons;
import plumeline.lesson.ShotRelease;
import plumeline.plan.Kit;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;
import plumeline.take.Conditions;
import plumeline.take.Measured;
import plumeline.take.Take;

/// Makes lessons of what was typed behind `lesson add PLAN`.
final class LessonOptions {
    static final List<Usage.Option> OF_A_TAKE = List.of(
            worded("--shot", "NAME", "The shot whose ink was read; else the one that has ink."),
            worded("--take", "N", "Which take of it; else the next."),
            worded(
                    "--front",
                    "TIME at DEPTH",
                    "The front: time from the first ink, depth below the surface. Again for more."),
            worded("--width", "WIDTH at DEPTH", "The plume from edge to edge, where its front was. Again for more."),
            worded("--volume", "VOLUME", "What was otherwise than planned: how much ink,"),
            worded("--density", "DENSITY", "  its density,"),
            worded("--bore", "LENGTH", "  the nozzle's bore,"),
            worded("--squeeze", "TIME", "  how long it was squeezed,"),
            worded("--push", "SPEED", "  or its speed at the nozzle,"),
            worded("--height", "LENGTH", "  the nozzle's mouth over the surface, - below it,"),
            worded("--water", "TEMPERATURE", "  the water's temperature,"),
            worded("--rate", "RATE", "  the footage's rate."));

    static final List<Usage.Option> OF_THE_KIT = List.of(
            worded("--lux", "LIGHT LUX at DISTANCE", "What a lamp gives at full level."),
            worded(
                    "--lux-at",
                    "SHOT THING [PART] LIGHT LUX",
                    "What a meter shows on a thing, that light alone on, or all."),
            worded("--focal", "LENS LENGTH", "A lens's true focal length."),
            worded("--speed", "MACHINE SPEED", "A machine's true top speed."),
            worded("--reset", "SHOT TIME", "How long setting up again takes."),
            worded("--strength", "INK ABSORBANCE", "How strongly an ink colours, from a jar."),
            worded("--how", "WORDS", "How it was measured, or by whom."));

    /// Keys of a take by the option that says what was otherwise, with what it measures.
    private static final Map<String, Map.Entry<String, Kind>> INSTEAD = Map.of(
            "--volume", Map.entry("volume", Kind.VOLUME),
            "--density", Map.entry("density", Kind.DENSITY),
            "--bore", Map.entry("bore", Kind.LENGTH),
            "--squeeze", Map.entry("squeeze_time", Kind.TIME),
            "--push", Map.entry("speed", Kind.SPEED),
            "--height", Map.entry("height", Kind.LENGTH),
            "--water", Map.entry("water", Kind.TEMPERATURE),
            "--rate", Map.entry("rate", Kind.RATE));

    private final Plan plan;
    private final Plan planned;
    private final Lessons lessons;
    private final Arguments given;
    private final String today;
    private final List<Lesson> added = new ArrayList<>();

    LessonOptions(Plan plan, Plan planned, Lessons lessons, Arguments given, String today) {
        this.plan = plan;
        this.planned = planned;
        this.lessons = lessons;
        this.given = given;
        this.today = today;
    }

    /// Whether a meter showed there what a light gives alone.
    private boolean isReadAlone(Measured.LuxAt.Spot spot, String light) {
        return Stream.concat(lessons.written().stream().map(Lessons.Written::lesson), added.stream())
                .anyMatch(lesson -> lesson.measured() instanceof Measured.LuxAt at
                        && at.at().equals(spot)
                        && at.others().isEmpty()
                        && at.lamps().size() == 1
                        && at.lamps().getFirst().light().equals(light));
    }

    List<Lesson> list() throws Refusal {
        if (given.has("--front") || given.has("--width")) {
            addTake();
        } else {
            refuseOfATake();
        }
        Kit kit = plan.kit();
        for (String words : given.listValues("--lux")) {
            Named named = named("--lux", words, Kind.ILLUMINANCE);
            add(new Measured.Lux(lamp(named.name()), named.quantity()));
        }
        for (String words : given.listValues("--lux-at")) {
            add(new MeteredThing(planned, this::isReadAlone, words).read());
        }
        for (String words : given.listValues("--focal")) {
            Named named = named("--focal", words, Kind.LENGTH);
            add(new Measured.FocalLength(
                    check("a lens", named.name(), names(kit.lenses(), Kit.Lens::name)), named.quantity()));
        }
        for (String words : given.listValues("--speed")) {
            Named named = named("--speed", words, Kind.SPEED, Kind.TURN_RATE);
            add(new Measured.Speed(
                    check("a machine", named.name(), names(kit.machines(), Kit.Machine::name)), named.quantity()));
        }
        for (String words : given.listValues("--reset")) {
            Named named = named("--reset", words, Kind.TIME);
            add(new Measured.Reset(check("a shot", named.name(), names(plan.shots(), Shot::name)), named.quantity()));
        }
        for (String words : given.listValues("--strength")) {
            Named named = named("--strength", words, Kind.ABSORBANCE);
            add(new Measured.Strength(
                    check("an ink", named.name(), names(kit.inks(), Kit.Ink::name)), named.quantity()));
        }
        if (added.isEmpty()) {
            throw new Refusal(
                    "lesson add was given nothing that was measured",
                    "Give --front, --width, --lux, --lux-at, --focal, --speed, --reset or --strength:"
                            + " plumeline help lesson");
        }
        return added;
    }

    private void refuseOfATake() throws Refusal {
        for (Usage.Option option : OF_A_TAKE) {
            if (given.has(option.name())) {
                throw new Refusal(
                        option.name() + " is given without a reading of a take",
                        "Give --front or --width with it, such as --front 0.40 s at 70 mm.");
            }
        }
    }

    private void add(Measured measured) {
        added.add(new Lesson(measured, today, given.findValue("--how").orElse("")));
    }

    private void addTake() throws Refusal {
        Shot shot = shot();
        if (!(shot.findRelease().orElse(null) instanceof Release.OfInk release)) {
            throw new Refusal(
                    "the shot " + shot.name() + " lets no ink go, so it has no front",
                    "Name another with --shot, or give the shot a release.");
        }
        Map<String, Quantity> instead = new LinkedHashMap<>();
        for (var option : INSTEAD.entrySet()) {
            if (given.findValue(option.getKey()).isPresent()) {
                Kind kind = option.getValue().getValue();
                String text = given.findValue(option.getKey()).get();
                instead.put(option.getValue().getKey(), read(option.getKey(), text, text, kind));
            }
        }
        Conditions conditions = switch (ShotRelease.of(shot, release, instead)) {
            case ShotRelease.Told told -> told.told();
            case ShotRelease.Missing(List<String> what) -> {
                refuseHalfTold(instead, what);
                yield new Conditions.Untold();
            }
        };
        Quantity rate = Optional.ofNullable(instead.get("rate"))
                .or(() -> shot.camera().written().findQuantity("rate"))
                .orElse(plan.film().rate());
        List<Take.Front> fronts = new ArrayList<>();
        for (String words : given.listValues("--front")) {
            String[] sides = sides("--front", words, "0.40 s ± 0.02 s at 70 mm ± 3 mm");
            refuseSwapped(words, sides);
            fronts.add(new Take.Front(time(words, sides[0], rate), read("--front", words, sides[1], Kind.LENGTH)));
        }
        fronts.sort(java.util.Comparator.comparingDouble(front -> front.time().si()));
        List<Take.Width> widths = new ArrayList<>();
        for (String words : given.listValues("--width")) {
            String[] sides = sides("--width", words, "38 mm at 120 mm");
            widths.add(new Take.Width(
                    read("--width", words, sides[1], Kind.LENGTH), read("--width", words, sides[0], Kind.LENGTH)));
        }
        widths.sort(java.util.Comparator.comparingDouble(width -> width.depth().si()));
        Take take = new Take(conditions, rate, fronts, widths);
        add(new Measured.OfTake(shot.name(), number(shot.name()), release.ink().name(), take));
    }

    private static void refuseSwapped(String words, String[] sides) throws Refusal {
        if (Quantities.read(sides[0].strip(), Kind.LENGTH) instanceof Reading.Read
                && Quantities.read(sides[1].strip(), Kind.TIME) instanceof Reading.Read) {
            throw new Refusal(
                    "--front is " + words + "; must be a time first, then the depth there",
                    "Swap them: --front \"" + sides[1].strip() + " at " + sides[0].strip() + "\".");
        }
    }

    /// A time, or frames of the footage counted from the first ink.
    private static Quantity time(String words, String text, Quantity rate) throws Refusal {
        if (!(Quantities.read(text.strip(), Kind.FRAMES) instanceof Reading.Read(Quantity frames))) {
            return read("--front", words, text, Kind.TIME);
        }
        String spread = frames.hasSpread() ? " ± " + Print.seconds(frames.halfWidthSi() / rate.si(), 4) : "";
        return read("--front", words, Print.seconds(frames.si() / rate.si(), 4) + spread, Kind.TIME);
    }

    /// What was otherwise counts only beside all that was let go: it would be lost.
    private void refuseHalfTold(Map<String, Quantity> instead, List<String> missing) throws Refusal {
        for (var option : INSTEAD.entrySet()) {
            String key = option.getValue().getKey();
            if (!key.equals("rate") && instead.containsKey(key)) {
                throw new Refusal(
                        option.getKey() + " says what was let go, but it isn't known whole; missing: "
                                + String.join("; ", missing) + "; nothing was noted",
                        "Give the rest too, such as --height -20 mm for a mouth 20 mm under the surface, or first write"
                                + " solved places into the plan: plumeline keep PLAN.");
            }
        }
    }

    /// The shot named, else the only one with ink.
    private Shot shot() throws Refusal {
        List<String> all = names(plan.shots(), Shot::name);
        Optional<String> named = given.findValue("--shot");
        List<Shot> inked = plan.shots().stream()
                .filter(shot -> shot.findRelease().orElse(null) instanceof Release.OfInk)
                .toList();
        if (named.isEmpty() && inked.size() != 1) {
            throw new Refusal(
                    inked.isEmpty()
                            ? "no shot of the plan lets ink go"
                            : inked.size() + " shots let ink go: " + String.join(", ", names(inked, Shot::name)),
                    "Say which one was read with --shot NAME.");
        }
        String name = named.isEmpty() ? inked.getFirst().name() : check("a shot", named.get(), all);
        return plan.findShot(name).orElseThrow();
    }

    /// The take's number: as given, else the next of its shot.
    private int number(String shot) throws Refusal {
        var taken = new TreeSet<Integer>();
        for (Lesson lesson : lessons.list()) {
            if (lesson.measured() instanceof Measured.OfTake take && take.shot().equals(shot)) {
                taken.add(take.number());
            }
        }
        int next = taken.isEmpty() ? 1 : taken.last() + 1;
        if (given.findValue("--take").isEmpty()) {
            return next;
        }
        String text = given.findValue("--take").get();
        int number = text.matches("[0-9]{1,3}") ? Integer.parseInt(text) : 0;
        if (number < 1) {
            throw new Refusal(
                    "--take is " + text + "; must be a whole number from 1 to 999", "Try --take " + next + ".");
        }
        if (taken.contains(number)) {
            throw new Refusal(
                    "take " + number + " of " + shot + " is noted already",
                    "Give --take " + next + ", or take the old one out: plumeline help lesson");
        }
        return number;
    }

    /// A lamp by its name in the kit, or in a shot.
    private String lamp(String name) throws Refusal {
        List<String> lamps = names(plan.kit().lights(), Kit.Light::name);
        if (lamps.contains(name)) {
            return name;
        }
        var meant = new TreeSet<String>();
        var known = new TreeSet<>(lamps);
        for (Shot shot : plan.shots()) {
            shot.lights().forEach(light -> known.add(light.name()));
            shot.findLight(name).ifPresent(light -> meant.add(light.light().name()));
        }
        if (meant.size() > 1) {
            throw new Refusal(
                    "the light " + name + " is another lamp in each shot: " + String.join(", ", meant),
                    "Name the lamp.");
        }
        return meant.isEmpty() ? check("a light", name, List.copyOf(known)) : meant.first();
    }

    private record Named(String name, Quantity quantity) {}

    /// A name, then a quantity.
    private static Named named(String option, String words, Kind... kinds) throws Refusal {
        int space = words.strip().indexOf(' ');
        if (space < 0) {
            throw new Refusal(
                    option + " is " + words + "; must be a name and " + kinds[0].phrase(),
                    "Give it as " + option + " NAME " + kinds[0].example() + ".");
        }
        String text = words.strip();
        return new Named(text.substring(0, space), read(option, words, text.substring(space + 1), kinds));
    }

    private static String[] sides(String option, String words, String example) throws Refusal {
        String[] sides = words.split("\\bat\\b", -1);
        if (sides.length != 2) {
            throw new Refusal(
                    option + " is " + words + "; must be two quantities with the word at between them",
                    "Try " + option + " \"" + example + "\".");
        }
        return sides;
    }

    private static Quantity read(String option, String words, String text, Kind... kinds) throws Refusal {
        return switch (Quantities.read(text.strip(), kinds)) {
            case Reading.Read(Quantity quantity) -> quantity;
            case Reading.Refused refused ->
                throw new Refusal(
                        option + " is " + words + ": there " + text.strip() + " is " + refused.given() + "; must be "
                                + refused.allowed(),
                        "Try " + example(option, text.strip(), kinds[0]) + ".");
        };
    }

    /// The number that was given, with a unit, where only that was left out.
    private static String example(String option, String text, Kind kind) {
        String unit = option.equals("--reset") ? "min" : kind.example().replaceFirst("^[-0-9.]+ *", "");
        return text.matches("-?[0-9]+([.][0-9]+)?") && !unit.isEmpty() ? text + " " + unit : kind.example();
    }

    static <T> List<String> names(List<T> all, Function<T, String> name) {
        return all.stream().map(name).toList();
    }

    static String check(String what, String name, List<String> known) throws Refusal {
        if (!known.contains(name)) {
            throw new Refusal(
                    name + " is not the name of " + what + "; there "
                            + (known.isEmpty() ? "is none in the plan" : "are " + String.join(", ", known)),
                    Refusal.attempt("", name, known, "Use a name that the plan has."));
        }
        return name;
    }
}
