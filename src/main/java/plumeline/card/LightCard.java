package plumeline.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumeline.geom.Vec;
import plumeline.lit.Metered;
import plumeline.lit.Roles;
import plumeline.lit.Spots;
import plumeline.plan.Camera;
import plumeline.plan.Kit;
import plumeline.plan.Mark;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Beam;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Where each lamp stands and faces, what it is for, and what a meter must show at the product with it alone.
///
/// @param id the card's id
/// @param runs the shot's passes, or the shot itself
/// @param film the film's rate
/// @param isOpen whether a mark is still to be found
/// @param print the papers' figures
record LightCard(String id, List<Run> runs, Quantity film, Predicate<Mark> isOpen, Print print) {
    /// A pass.
    ///
    /// @param pass its name; empty for the shot itself
    /// @param stage the shot in it
    /// @param scene its start
    record Run(String pass, Stage stage, Scene scene) {
        Shot shot() {
            return stage.shot();
        }

        PlacedLight light(int lamp) {
            return shot().lights().get(lamp);
        }
    }

    /// What reaches lower than this is beside the table, m over its top.
    private static final double BELOW_METRES = -0.001;

    LightCard {
        runs = List.copyOf(runs);
    }

    Card card() {
        List<Card.Part> parts = new ArrayList<>();
        parts.add(new Card.Part.Say("Hours are of a clock's face seen from above: 6 is toward the camera, 12 away from"
                + " it, 3 to camera right. Distances by tape, from the thing's middle to the middle of what shines;"
                + " heights over the table top to that middle. A lamp's turn counts from facing straight away from the"
                + " crew, seen from above." + (runs.getFirst().stage().isMoving() ? " All at the shot's start." : "")
                + " A reading is off by no more than its ± for 19 lamps in 20."));
        List<PlacedLight> lights = runs.getFirst().shot().lights();
        for (int i = 0; i < lights.size(); i++) {
            parts.add(new Card.Part.Fact(lights.get(i).name(), words(i)));
        }
        listLit().forEach(thing -> meter(parts, thing));
        boolean hasTank = runs.getFirst().shot().findTank().isPresent();
        return new Card(id, "Light card", Cautions.ofLamps(hasTank), parts);
    }

    private String words(int lamp) {
        List<String> sentences = new ArrayList<>(Roles.list(runs.getFirst().stage(), lamp));
        sentences.add(byPass(run -> stands(run, lamp)));
        String kept = byPass(run -> kept(run, lamp));
        sentences.add(runs.getFirst().light(lamp).light().emitter().word() + ": "
                + byPass(run -> run.light(lamp).light().name()
                        + size(run.light(lamp).light().emitter())) + (kept.isEmpty() ? "" : "; " + kept));
        return sentences.stream()
                .filter(sentence -> !sentence.isEmpty())
                .map(sentence -> sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1))
                .collect(Collectors.joining(". ", "", "."));
    }

    /// What is said of all passes, or of each where they differ.
    private String byPass(Function<Run, String> words) {
        List<String> all = runs.stream().map(words).toList();
        return Set.copyOf(all).size() == 1
                ? all.getFirst()
                : IntStream.range(0, runs.size())
                        .mapToObj(i -> "in pass " + runs.get(i).pass() + " " + all.get(i))
                        .collect(Collectors.joining("; "));
    }

    private String stands(Run run, int lamp) {
        PlacedLight light = run.light(lamp);
        int lit = lit(run, lamp);
        Optional<String> open = findOpen(run, lamp, lit < 0 ? List.of() : List.of(lit));
        if (open.isPresent()) {
            return "where it stands isn't known: " + open.get();
        }
        Beam beam = run.scene().beams().get(lamp);
        Vec middle = beam.aim().eye();
        List<String> words = new ArrayList<>();
        if (lit >= 0) {
            Vec thing = run.scene().things().get(lit).middle();
            words.add(ClockFace.hour(thing, middle, run.scene().aim()) + " "
                    + run.shot().placed().get(lit).name() + ", " + print.length(thing.distanceMetres(middle))
                    + " from its middle");
        }
        words.add("from the zero mark x " + signed(middle.x()) + ", y " + signed(middle.y()) + "; " + height(middle.z())
                + lower(run, lamp));
        words.add("turn " + sided(beam.aim().turnRadians(), "clockwise", "anticlockwise") + ", tilt "
                + sided(beam.aim().tiltRadians(), "up", "down")
                + (light.aim() instanceof Camera.Aim.By || light.aim() instanceof Camera.Aim.Ahead || lit < 0
                        ? ""
                        : ", facing " + run.shot().placed().get(lit).name()));
        return String.join("; ", words);
    }

    private String signed(double metres) {
        return (metres < 0 ? "−" : "") + print.length(Math.abs(metres));
    }

    /// How large what is stood there is, across and up before it is tilted.
    private String size(Kit.Emitter emitter) {
        return switch (emitter) {
            case Kit.Emitter.Panel(Quantity width, Quantity height) -> size(width, height);
            case Kit.Emitter.Card(Quantity width, Quantity height) -> size(width, height);
            case Kit.Emitter.Flag(Quantity width, Quantity height) -> size(width, height);
            case Kit.Emitter.Tube(Quantity length, Quantity _) -> ", " + print.length(length.si()) + " long, lying";
            case Kit.Emitter.Disc(Quantity diameter) -> ", " + print.length(diameter.si()) + " across";
            case Kit.Emitter.Point() -> "";
        };
    }

    private String size(Quantity width, Quantity height) {
        return ", " + print.length(width.si()) + " wide, " + print.length(height.si()) + " tall";
    }

    private String height(double metres) {
        return print.length(Math.abs(metres)) + (metres < 0 ? " under" : " over") + " the table top";
    }

    /// That it can't stand on the table.
    private String lower(Run run, int lamp) {
        double low = run.scene().lamps().get(lamp).bounds().low().z();
        return low < BELOW_METRES ? ", reaches " + print.length(-low) + " below the table top: beside the table" : "";
    }

    private static String sided(double radians, String more, String less) {
        double within = Math.IEEEremainder(radians, 2 * Math.PI);
        String size = Print.degrees(Math.abs(within));
        return size.equals("0 deg") ? size : size + " " + (within > 0 ? more : less);
    }

    private String kept(Run run, int lamp) {
        return switch (run.light(lamp).light().emitter()) {
            case Kit.Emitter.Flag _ -> "";
            case Kit.Emitter.Card _ ->
                run.light(lamp)
                        .light()
                        .written()
                        .findQuantity("reflects")
                        .map(share -> "throws back " + share.valueText())
                        .orElse("white side to it");
            default -> level(run, lamp);
        };
    }

    private String level(Run run, int lamp) {
        PlacedLight light = run.light(lamp);
        double level = run.scene().beams().get(lamp).level();
        if (light.level().filter(isOpen).isPresent()) {
            return "level not found yet";
        }
        return level == 0
                ? "off"
                : "level " + Print.share(level, 0) + dimmer(light, level) + colour(light) + gel(light);
    }

    private static String dimmer(PlacedLight light, double level) {
        return light.light()
                .findDimmer(level)
                .map(set -> ", its dimmer at " + Print.share(set, 0))
                .orElse("");
    }

    /// What is put before it in this shot.
    private static String gel(PlacedLight light) {
        return light.written()
                        .findQuantity("loss")
                        .map(loss -> ", gel or cloth before it: −" + loss.valueText())
                        .orElse("")
                + light.written()
                        .findQuantity("grid")
                        .map(grid -> ", a grid before it that leaves " + grid.valueText())
                        .orElse("");
    }

    /// White or hue as written with the shot's lamp, else the kit's white.
    private static String colour(PlacedLight light) {
        Optional<Quantity> hue = light.written().findQuantity("hue");
        return hue.map(own -> ", hue " + own.valueText())
                .or(() -> light.written()
                        .findQuantity("white")
                        .or(() -> light.light().written().findQuantity("white"))
                        .map(white -> ", white " + white.valueText()))
                .orElse("");
    }

    /// What of a lamp, the camera and some things still has no place.
    private Optional<String> findOpen(Run run, int lamp, List<Integer> things) {
        PlacedLight light = run.light(lamp);
        if (light.marks().stream()
                .filter(mark -> light.level().filter(mark::equals).isEmpty())
                .anyMatch(isOpen)) {
            return Optional.of("its own place or turn is still open");
        }
        if (run.shot().camera().at().marks().stream().anyMatch(isOpen)) {
            return Optional.of("the camera's place is still open");
        }
        return things.stream()
                .map(run.shot().placed()::get)
                .filter(placed -> placed.marks().stream().anyMatch(isOpen))
                .map(placed -> placed.name() + "'s place or turn is still open")
                .findFirst();
    }

    /// The thing that a lamp lights: what it is told to face; where nothing is told, what the camera looks at, else
    /// what is nearest to the lens point; turned by hand, what is nearest to it. Below 0 where nothing is placed.
    private static int lit(Run run, int lamp) {
        Vec middle = run.scene().beams().get(lamp).aim().eye();
        return switch (run.light(lamp).aim()) {
            case Camera.Aim.At(String thing, var _) -> index(run, thing).orElseGet(() -> nearest(run, middle));
            case Camera.Aim.Untold _ ->
                (run.shot().camera().aim() instanceof Camera.Aim.At(String thing, var _)
                                ? index(run, thing)
                                : Optional.<Integer>empty())
                        .orElseGet(() -> nearest(run, run.scene().aim().eye()));
            case Camera.Aim.By _, Camera.Aim.Ahead _ -> nearest(run, middle);
        };
    }

    private static Optional<Integer> index(Run run, String thing) {
        List<Placed> placed = run.shot().placed();
        return IntStream.range(0, placed.size())
                .filter(i -> placed.get(i).name().equals(thing))
                .boxed()
                .findFirst();
    }

    private static int nearest(Run run, Vec place) {
        return IntStream.range(0, run.scene().things().size())
                .boxed()
                .min(Comparator.comparingDouble(
                        i -> run.scene().things().get(i).middle().distanceMetres(place)))
                .orElse(-1);
    }

    private Set<Integer> listLit() {
        Set<Integer> all = new LinkedHashSet<>();
        for (Run run : runs) {
            for (int i = 0; i < run.shot().lights().size(); i++) {
                int lit = lit(run, i);
                if (lit >= 0) {
                    all.add(lit);
                }
            }
        }
        return all;
    }

    private boolean isUnderWater(int thing) {
        Run run = runs.getFirst();
        return run.stage()
                .findTank()
                .filter(walls -> walls.isWet(run.scene().things().get(thing)))
                .isPresent();
    }

    private String where(int thing) {
        Run run = runs.getFirst();
        Spots.Part part = Spots.usual(
                run.shot().placed().get(thing),
                run.scene().things().get(thing),
                run.scene().aim().eye());
        return switch (part) {
            case LABEL -> ": on its label's middle, straight out of it";
            case LID -> ": on the middle of its top, straight up out of it";
            default -> ": on its side toward the camera, at half its height, straight out of it";
        };
    }

    private boolean hasCards() {
        return runs.getFirst().shot().lights().stream()
                .anyMatch(light -> !light.light().emitter().isLamp());
    }

    private void meter(List<Card.Part> parts, int thing) {
        Placed placed = runs.getFirst().shot().placed().get(thing);
        parts.add(new Card.Part.Say("Meter " + placed.name()
                + where(thing)
                + "; a flat cell, no dome; all other light off"
                + (hasCards() ? ", cards and flags as they stand." : ".")
                + (isUnderWater(thing)
                        ? " Readings are with the water in, where no meter goes: judge those by the picture,"
                                + " never reach in with one."
                        : "")));
        List<Metered> metered = runs.stream()
                .map(run -> Metered.of(run.stage(), run.scene(), thing, film))
                .toList();
        List<List<String>> rows = new ArrayList<>();
        int count = runs.getFirst().shot().lights().size();
        for (int i = 0; i < count; i++) {
            int lamp = i;
            if (!runs.getFirst().light(i).light().emitter().isLamp()) {
                continue;
            }
            addRows(rows, runs.getFirst().light(i).name(), run -> shown(metered.get(runs.indexOf(run)), run, lamp));
        }
        if (rows.size() > 1) {
            addRows(rows, "all together", run -> together(metered.get(runs.indexOf(run)), run));
        }
        parts.add(new Card.Part.Grid(List.of("Only this on", "Shall read", "Read", "Level set"), rows));
        parts.add(new Card.Part.Fact(
                "At " + placed.name(), byPass(run -> setting(metered.get(runs.indexOf(run)), run)) + "."));
    }

    /// A row, or one a pass where they differ.
    private void addRows(List<List<String>> rows, String name, Function<Run, String> words) {
        List<String> all = runs.stream().map(words).toList();
        boolean isSame = Set.copyOf(all).size() == 1;
        for (int i = 0; i < (isSame ? 1 : all.size()); i++) {
            rows.add(List.of(isSame ? name : name + ", pass " + runs.get(i).pass(), all.get(i), "", ""));
        }
    }

    /// Anything that isn't placed yet may stand in the light.
    private Optional<String> findOpen(Run run, int lamp) {
        return run.light(lamp).level().filter(isOpen).isPresent()
                ? Optional.of("its level is still open")
                : findOpen(
                        run,
                        lamp,
                        IntStream.range(0, run.shot().placed().size()).boxed().toList());
    }

    private String shown(Metered metered, Run run, int lamp) {
        if (run.scene().beams().get(lamp).level() == 0) {
            return "off";
        }
        return findOpen(run, lamp)
                .map(open -> "not known: " + open)
                .orElseGet(() -> metered.alone().get(lamp).toText());
    }

    private boolean isAnyOpen(Run run) {
        return IntStream.range(0, run.shot().lights().size())
                .anyMatch(lamp -> findOpen(run, lamp).isPresent());
    }

    private String together(Metered metered, Run run) {
        return isAnyOpen(run)
                ? "not known: one of the lamps' light isn't"
                : metered.together().toText();
    }

    private String setting(Metered metered, Run run) {
        Optional<String> standing = isAnyOpen(run) ? Optional.empty() : metered.findStanding();
        return standing.or(metered::findNeeded)
                .map(needed -> "the camera's setting needs " + needed)
                .orElse("what the camera's setting needs isn't known: write its iso");
    }
}
