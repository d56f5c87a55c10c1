package plumeline.cli.picture;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumeline.desk.Arguments;
import plumeline.desk.ArtFiles;
import plumeline.desk.Console;
import plumeline.desk.InkFilms;
import plumeline.desk.InkFolder;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;
import plumeline.render.Props;
import plumeline.render.ShotSet;
import plumeline.render.Window;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Frame;
import plumeline.stage.Picture;
import plumeline.stage.Stage;
import plumeline.timeline.Played;

/// What a picture is of: a shot or its pass, its marks set, at an instant.
///
/// @param plan the plan
/// @param set the shot as a world
/// @param realSeconds when the shutter opens, real seconds after GO
/// @param when that, in words
/// @param open what is said of marks that nothing sets
record PictureChoice(Plan plan, ShotSet set, double realSeconds, String when, List<String> open) {
    private static final int MOST_SIDE = 4096;
    private static final int LEAST_SIDE = 8;

    PictureChoice {
        open = List.copyOf(open);
    }

    static Usage.Option shot() {
        return Usage.valued("--shot", "NAME", "Draws this shot; else the plan's first.");
    }

    static Usage.Option pass() {
        return Usage.valued("--pass", "NAME", "Draws this pass of it; else the shot without any.");
    }

    static Usage.Option at() {
        return Usage.valued(
                "--at", "WHEN", "Draws it then: start, end, a screen frame (\"12 frames\") or a time (\"0.5 s\").");
    }

    static Usage.Option delivery() {
        return Usage.valued("--delivery", "NAME", "Draws what this delivery shows of the camera's picture.");
    }

    static Usage.Option threads() {
        return Usage.valued("--threads", "N", "Works with so many threads; else with all. Changes no result.");
    }

    /// Chooses, and solves the shot where a mark of it is free.
    ///
    /// @throws Refusal where there is no such shot, pass or instant
    static PictureChoice of(Plan plan, Arguments given, Console console) throws Refusal, IOException {
        String file = given.plain().getFirst();
        Shot shot = given.findValue("--shot").isPresent()
                ? PlanFile.shot(plan, given.findValue("--shot").get())
                : plan.shots().getFirst();
        Optional<String> pass = given.findValue("--pass");
        Stage stage = pass.isPresent() ? Stage.of(plan, shot, PlanFile.pass(shot, pass.get())) : Stage.of(plan, shot);
        List<String> open = new ArrayList<>();
        double[] values = values(plan, shot, stage, file, console, open);
        Instant instant = instant(plan, stage, given.findValue("--at").orElse("start"));
        var props = new Props(
                ArtFiles.read(stage.shot(), file, console), InkFilms.find(InkFolder.ofPlan(file), stage, values));
        ShotSet set = ShotSet.of(plan, stage, values, props);
        return new PictureChoice(plan, set, instant.realSeconds(), instant.words(), open);
    }

    private static double[] values(Plan plan, Shot shot, Stage stage, String file, Console console, List<String> open)
            throws Refusal, IOException {
        if (shot.marks().stream().noneMatch(mark -> mark.isFree())) {
            return stage.startValues();
        }
        ShotAnswer answer = PlanFile.solve(plan, List.of(shot.name()), file, console)
                .shots()
                .getFirst();
        List<String> left = answer.marks().stream()
                .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.Open)
                .map(mark -> mark.mark().path())
                .toList();
        if (!left.isEmpty()) {
            open.add("Nothing sets " + String.join(", ", left) + ": drawn in the middle of where it may be.");
        }
        return answer.posed().values();
    }

    private record Instant(double realSeconds, String words) {}

    /// A screen frame is drawn as the recorded frame that it shows.
    private static Instant instant(Plan plan, Stage stage, String at) throws Refusal {
        if (at.equals("start")) {
            return frame(plan, stage, 0, "its start");
        }
        if (at.equals("end")) {
            return frame(plan, stage, stage.frames() - 1, "its end, frame " + (stage.frames() - 1));
        }
        if (Quantities.read(at) instanceof Reading.Read(Quantity asked)) {
            boolean isFrame = asked.kind() == Kind.FRAMES || asked.kind() == Kind.NUMBER;
            if (isFrame && asked.si() == Math.rint(asked.si()) && asked.si() >= 0 && asked.si() < stage.frames()) {
                return frame(plan, stage, Math.round(asked.si()), "frame " + Math.round(asked.si()));
            }
            if (asked.kind() == Kind.TIME && asked.si() >= 0 && asked.si() <= stage.lastSeconds()) {
                return new Instant(asked.si(), Print.number(asked.si(), 3) + " s after GO");
            }
        }
        throw new Refusal(
                "--at is " + at + "; must be start, end, a frame from 0 to " + (stage.frames() - 1)
                        + ", or a time from 0 s to " + Print.number(stage.lastSeconds(), 3) + " s",
                "Such as --at \"" + stage.frames() / 2 + " frames\".");
    }

    private static Instant frame(Plan plan, Stage stage, long frame, String words) {
        Played played = Played.of(plan, stage.shot(), stage.frames());
        double seconds = played.captured().secondsOf((double) played.sources().shown((int) frame));
        return new Instant(seconds, words);
    }

    /// The window that is asked for.
    ///
    /// @param delivery whose frame is seen; the camera's whole picture where none is
    /// @param acrossPixels what it is fitted in where no size is asked for
    /// @param downPixels likewise
    Window window(Optional<Delivery> delivery, Arguments given, int acrossPixels, int downPixels) throws Refusal {
        Picture picture = set.sceneAt(realSeconds).picture();
        Frame frame = delivery.map(
                        found -> Frame.of(picture, found, set.stage().shot().cropOrDefault(found.name())))
                .orElse(Frame.WHOLE);
        double wide = (frame.right() - frame.left()) * picture.widthMetres();
        double high = (frame.top() - frame.bottom()) * picture.heightMetres();
        Optional<String> size = given.findValue("--size");
        if (size.isEmpty()) {
            double scale = Math.min(acrossPixels / wide, downPixels / high);
            return new Window(frame, pixels(scale * wide), pixels(scale * high));
        }
        int[] asked = size(size.get());
        return new Window(cut(frame, asked[0] / (double) asked[1] * high / wide), asked[0], asked[1]);
    }

    private static int pixels(double exact) {
        return (int) Math.max(LEAST_SIDE, Math.round(exact));
    }

    /// The largest part of a frame about its middle that is by so much flatter; all of it where that is a rounding.
    private static Frame cut(Frame frame, double flatter) {
        if (Math.abs(flatter - 1) < ROUNDED) {
            return frame;
        }
        double across = (1 - Math.min(1, flatter)) * (frame.right() - frame.left()) / 2;
        double down = (1 - Math.min(1, 1 / flatter)) * (frame.top() - frame.bottom()) / 2;
        return new Frame(frame.left() + across, frame.right() - across, frame.bottom() + down, frame.top() - down);
    }

    /// A size of whole pixels is of its frame's ratio within this.
    private static final double ROUNDED = 0.004;

    private static int[] size(String text) throws Refusal {
        String[] sides = text.split("[x×]", -1);
        if (sides.length == 2 && sides[0].matches("[0-9]{1,4}") && sides[1].matches("[0-9]{1,4}")) {
            int[] size = {Integer.parseInt(sides[0]), Integer.parseInt(sides[1])};
            if (Arrays.stream(size).allMatch(side -> side >= LEAST_SIDE && side <= MOST_SIDE)) {
                return size;
            }
        }
        throw new Refusal(
                "--size is " + text + "; must be pixels across and down, " + LEAST_SIDE + " to " + MOST_SIDE + " each",
                "Such as --size 480x270.");
    }

    static Optional<Delivery> delivery(Plan plan, Arguments given) throws Refusal {
        Optional<String> name = given.findValue("--delivery");
        if (name.isEmpty()) {
            return Optional.empty();
        }
        List<String> names = plan.deliveries().stream().map(Delivery::name).toList();
        if (!names.contains(name.get())) {
            throw new Refusal(
                    "the plan has no delivery " + name.get()
                            + (names.isEmpty() ? "" : "; it has " + String.join(", ", names)),
                    names.isEmpty()
                            ? "Leave --delivery out."
                            : Refusal.attempt("--delivery ", name.get(), names, "Name one of them."));
        }
        return plan.findDelivery(name.get());
    }

    static long whole(Arguments given, String option, long least, long most, long usual) throws Refusal {
        Optional<String> text = given.findValue(option);
        if (text.isEmpty()) {
            return usual;
        }
        if (text.get().matches("[0-9]{1,10}")) {
            long number = Long.parseLong(text.get());
            if (number >= least && number <= most) {
                return number;
            }
        }
        throw new Refusal(
                option + " is " + text.get() + "; must be a whole number from " + least + " to " + most,
                "Leave it out for the usual.");
    }

    /// How many threads work.
    static int threads(Arguments given) throws Refusal {
        long all = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
        return (int) whole(given, "--threads", 1, MOST_THREADS, all);
    }

    private static final int MOST_THREADS = 256;

    /// The shot's name, and its pass's.
    String title() {
        Stage stage = set.stage();
        return stage.pass().isEmpty() ? stage.shot().name() : stage.shot().name() + " (" + stage.pass() + ")";
    }

    /// A file's name: `reveal.draft.png`, with its pass `spin-rose.draft.png`.
    String file(String kind) {
        Stage stage = set.stage();
        return stage.shot().name() + (stage.pass().isEmpty() ? "" : "-" + stage.pass()) + "." + kind + ".png";
    }

    /// What was taken for what isn't written, a line each.
    String assumed() {
        List<String> all = new ArrayList<>(open);
        all.addAll(set.assumed());
        all.addAll(set.developing(realSeconds).assumed());
        return all.isEmpty() ? "" : String.join("\n", all) + "\n";
    }
}
