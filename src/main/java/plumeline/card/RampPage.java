package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import plumeline.pace.Coupling;
import plumeline.plan.Kit;
import plumeline.plan.Playback;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;
import plumeline.time.CaptureMode;
import plumeline.time.Retime;
import plumeline.time.SourceFrames;

/// What a shot that isn't played in real time is on the table: when the action must happen, what its speed drags along,
/// what each of the body's rates costs, real time drawn against screen time.
///
/// @param id the page's id
/// @param stage the shot
/// @param film the film's rate
record RampPage(String id, Stage stage, Quantity film) {
    /// Corners of the line that is drawn.
    private static final int CORNERS = 240;

    private static final double BITS_PER_GIGABYTE = 8e9;

    boolean isNeeded() {
        return coupling().isPlayed();
    }

    private Coupling coupling() {
        return Coupling.of(stage, film);
    }

    private Retime retime() {
        return stage.retime();
    }

    private double frames() {
        return (double) stage.frames();
    }

    /// A straight line needs no drawing.
    private boolean isOneSpeed() {
        return stage.shot().playback() instanceof Playback.Constant;
    }

    Card card() {
        List<Card.Part> parts = new ArrayList<>();
        parts.add(new Card.Part.Fact("Action", action()));
        parts.add(new Card.Part.Fact("It takes", String.join(" ", coupling().listNotes())));
        parts.add(new Card.Part.Fact("Frames", shown()));
        modes(parts);
        keys(parts);
        if (!isOneSpeed() && stage.lastSeconds() > 0) {
            parts.add(chart());
        }
        return new Card(id, "Ramp page", List.of(), parts);
    }

    private String action() {
        if (stage.lastSeconds() <= 0) {
            return "One instant is held all the time: the one at GO.";
        }
        Optional<Coupling.Window> window = coupling().findWindow();
        if (window.isPresent()) {
            return between(window.get().fromSeconds(), window.get().toSeconds()) + " It is then played at "
                    + Coupling.speed(coupling().slowest()) + ".";
        }
        return between(0, stage.lastSeconds()) + (isOneSpeed() ? "" : " No speed is held for a while.");
    }

    private static String between(double from, double to) {
        return "The action must happen between " + (from < 0.005 ? "0" : Print.seconds(from, 2)) + " and "
                + Print.seconds(to, 2) + " after GO.";
    }

    private String shown() {
        double rate = coupling().capture().framesPerSecond();
        SourceFrames source = SourceFrames.of(retime(), rate, (int) stage.frames());
        long first = Long.MAX_VALUE;
        long last = 0;
        for (int n = 0; n < source.count(); n++) {
            first = Math.min(first, source.shown(n));
            last = Math.max(last, source.shown(n));
        }
        String repeated = source.repeated() == 0
                ? "no captured frame is shown twice on end"
                : source.repeated() + " of " + source.count() + " screen frames show the same captured frame as the one"
                        + " before";
        String skipped =
                source.skipped() == 0 ? "none is left out" : source.skipped() + " captured frames are left out";
        return "From captured frame " + (first + 1) + " to " + (last + 1) + " at " + Coupling.rate(rate) + "; "
                + repeated + "; " + skipped + ".";
    }

    private List<Playback.Key> written() {
        return stage.shot().playback() instanceof Playback.Curve(List<Playback.Key> keys, var _, var _)
                ? keys
                : List.of();
    }

    /// Where the speed is told: the shot's ends and its keys.
    private List<Double> told() {
        TreeSet<Double> told = new TreeSet<>(List.of(0.0, frames()));
        written().forEach(key -> told.add(Math.clamp(key.frame(), 0, frames())));
        return List.copyOf(told);
    }

    /// Frames are counted from 1 as they are seen; the speed is that from there on, at the end that up to there.
    private void keys(List<Card.Part> parts) {
        List<List<String>> rows = new ArrayList<>();
        for (double frame : told()) {
            boolean isEnd = frame == frames();
            double speed = retime().speedAt(isEnd ? Math.nextDown(frame) : frame);
            rows.add(List.of(
                    isEnd ? "the end" : Print.number(frame + 1, 2),
                    Coupling.speed(speed),
                    Print.seconds(retime().realSeconds(frame), 3)));
        }
        parts.add(new Card.Part.Grid(List.of("Screen frame", "Speed", "After GO"), rows));
    }

    private Card.Part chart() {
        TreeSet<Double> across = new TreeSet<>(told());
        for (int i = 0; i <= CORNERS; i++) {
            across.add(frames() * i / CORNERS);
        }
        List<Card.Corner> line = across.stream().map(this::corner).toList();
        return new Card.Part.Chart(
                "Real time against screen time",
                new Card.Axis("screen frames", frames()),
                new Card.Axis("s after GO", stage.lastSeconds()),
                line,
                notes());
    }

    private Card.Corner corner(double frame) {
        return new Card.Corner(frame, retime().realSeconds(frame));
    }

    /// The speed beside the middle of each stretch at one speed, and at each key between two that change.
    private List<Card.Note> notes() {
        List<Double> told = told();
        List<Card.Note> notes = new ArrayList<>();
        boolean wasEven = false;
        for (int i = 0; i + 1 < told.size(); i++) {
            double from = told.get(i);
            double to = told.get(i + 1);
            double speed = retime().speedAt(from);
            boolean isEven = speed == retime().speedAt((from + to) / 2);
            if (isEven) {
                notes.add(new Card.Note(corner((from + to) / 2), Coupling.speed(speed)));
            } else if (!wasEven) {
                notes.add(new Card.Note(corner(from), Coupling.speed(speed)));
            }
            wasEven = isEven;
        }
        if (!wasEven) {
            notes.add(new Card.Note(corner(frames()), Coupling.speed(retime().speedAt(Math.nextDown(frames())))));
        }
        return notes;
    }

    /// What each of the body's rates costs.
    private void modes(List<Card.Part> parts) {
        for (Kit.Mode mode : stage.shot().camera().body().modes()) {
            parts.add(new Card.Part.Fact("At " + Coupling.rate(mode.rate().si()), costs(mode)));
        }
    }

    private String costs(Kit.Mode mode) {
        double rate = mode.rate().si();
        boolean isSet = Math.abs(rate - coupling().capture().framesPerSecond()) <= 1e-6 * rate;
        double stops = coupling().stops(rate);
        String light = Math.abs(stops) < 0.05
                ? "light as at " + Coupling.rate(film.si())
                : Coupling.stopsText(Math.abs(stops)) + (stops > 0 ? " more" : " less") + " light";
        long across = mode.acrossPixels().orElse(stage.shot().camera().body().acrossPixels());
        String enough = CaptureMode.isEnough(rate, coupling().leastRate())
                ? "enough for " + Coupling.speed(coupling().slowest())
                : "shows frames twice at " + Coupling.speed(coupling().slowest());
        String data = mode.bitRate()
                .map(bits -> ", " + Print.number(bits.si() * stage.lastSeconds() / BITS_PER_GIGABYTE, 2) + " GB a take")
                .orElse("");
        return (isSet ? "As set: " : "") + light + ", " + across + " px across, " + enough + data + ".";
    }
}
