package plumeline.pace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import plumeline.fall.Fall;
import plumeline.fall.Medium;
import plumeline.geom.Vec;
import plumeline.plan.Kit;
import plumeline.plan.Move;
import plumeline.plan.Playback;
import plumeline.plan.Release;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.PieceRelease;
import plumeline.stage.Stage;
import plumeline.time.CaptureMode;
import plumeline.time.PlayedShutter;
import plumeline.time.Retime;
import plumeline.time.SourceFrames;

/// What a shot's playback speed drags along: the capture rate, light, the time its moves have, what is recorded.
///
/// @param stage the shot
/// @param film the rate at which the film is shown
/// @param capture how the shot is captured
/// @param slowest its slowest speed that isn't a hold, a share of real time
public record Coupling(Stage stage, Quantity film, Capture capture, double slowest) {
    private static final double SAME_RATE = 1e-6;

    /// With a shutter under 120 deg movement begins to look chopped: common practice.
    private static final double NATURAL_RADIANS = Math.toRadians(120);

    private static final long MOST_FRAMES = 500_000;
    private static final double BITS_PER_GIGABYTE = 8e9;

    /// Reads a shot.
    ///
    /// @param stage the shot
    /// @param film the rate at which the film is shown
    /// @return what its speed drags along
    public static Coupling of(Stage stage, Quantity film) {
        double slowest = stage.retime().slowestSpeed(0, (double) stage.frames());
        return new Coupling(stage, film, Capture.of(stage.shot(), film), slowest > 0 ? slowest : 1);
    }

    /// Gives the least rate at which no captured frame is shown twice.
    ///
    /// @return captured frames a second, 1/s
    public double leastRate() {
        return CaptureMode.leastRate(film.si(), slowest);
    }

    /// Gives how much more light a rate takes than the film's at the same shutter angle.
    ///
    /// @param rate captured frames a second, 1/s
    /// @return stops, + for more
    public double stops(double rate) {
        return -CaptureMode.lightStops(rate, film.si());
    }

    private List<Kit.Mode> list() {
        return stage.shot().camera().body().modes();
    }

    /// Tells whether the body has a mode of the shot's rate.
    ///
    /// @return true also where its modes aren't written
    boolean isInList() {
        return list().isEmpty() || Capture.findMode(stage.shot(), film).isPresent();
    }

    String modes() {
        return list().stream().map(mode -> mode.rate().valueText()).collect(Collectors.joining(", "));
    }

    /// Finds the body's slowest mode that is enough for the slowest speed.
    ///
    /// @return the mode; empty where none is, or none is written
    public Optional<Kit.Mode> findEnough() {
        List<CaptureMode> rates = list().stream()
                .map(mode -> new CaptureMode(mode.rate().si(), 1))
                .toList();
        return CaptureMode.findLeast(rates, leastRate())
                .flatMap(found -> list().stream()
                        .filter(mode -> mode.rate().si() == found.framesPerSecond())
                        .findFirst());
    }

    /// Gives a rate in words.
    ///
    /// @param rate 1/s
    /// @return such as `119.88 fps`
    public static String rate(double rate) {
        String text = Print.number(rate, 2);
        return (text.contains(".") ? text.replaceFirst("0+$", "").replaceFirst("[.]$", "") : text) + " fps";
    }

    /// Gives a speed in words.
    ///
    /// @param speed a share of real time
    /// @return such as `20 %` or `12.5 %`
    public static String speed(double speed) {
        return Print.share(speed, 1).replace(".0 %", " %");
    }

    /// Gives an amount of light in words.
    ///
    /// @param stops stops, ≥ 0
    /// @return such as `2.3 stops`
    public static String stopsText(double stops) {
        String text = Print.number(stops, 1);
        return text + (text.equals("1") ? " stop" : " stops");
    }

    /// Tells whether the playback is anything else than real time.
    ///
    /// @return true where something is to be told
    public boolean isPlayed() {
        return !(stage.shot().playback() instanceof Playback.Constant(double speed, var _) && speed == 1);
    }

    /// The time a move has: its own, and no longer than from its start until the shot is over.
    private OptionalDouble findSeconds(Move move) {
        if (move.travel().isEmpty()) {
            return OptionalDouble.empty();
        }
        double left =
                stage.lastSeconds() - stage.startSeconds(stage.shot().moves().indexOf(move));
        double own = move.findTime().map(Quantity::si).orElse(Double.POSITIVE_INFINITY);
        return left > 0 ? OptionalDouble.of(Math.min(own, left)) : OptionalDouble.empty();
    }

    /// Says all of it in one sentence: the slowest speed, the rate that it needs, what that takes of light, and how
    /// long each move has on the table.
    ///
    /// @return such as `20 % needs 120 fps: 2.3 stops more light and slide in 0.96 s.`
    public String sentence() {
        double rate = findEnough().map(mode -> mode.rate().si()).orElse(leastRate());
        String taken = rate > leastRate() * (1 + SAME_RATE) ? " at least, " + rate(rate) + " of what the body has" : "";
        double stops = stops(rate);
        List<String> drags = new ArrayList<>();
        if (Math.abs(stops) >= 0.05) {
            drags.add(stopsText(Math.abs(stops)) + " " + (stops > 0 ? "more" : "less") + " light");
        }
        for (Move move : stage.shot().moves()) {
            findSeconds(move).ifPresent(seconds -> drags.add(move.name() + " in " + Print.seconds(seconds, 2)));
        }
        String all = drags.isEmpty() ? "" : ": " + joined(drags);
        return speed(slowest) + " needs " + rate(leastRate()) + taken + all + ".";
    }

    private static String joined(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.getFirst() : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /// Says what the shot's speed drags along, where it isn't played in real time: the sentence of its slowest speed
    /// where that is slowed, how long it takes and what is recorded, and how what is played fastest smears.
    ///
    /// @return sentences; none in real time
    public List<String> listNotes() {
        if (!isPlayed()) {
            return List.of();
        }
        List<String> notes = new ArrayList<>();
        notes.add(slowest < 1 - SAME_RATE ? sentence() + " " + recorded() : recorded());
        findShutter().ifPresent(notes::add);
        return notes;
    }

    /// What leaves out captured frames smears as with a shutter that is as much narrower.
    private Optional<String> findShutter() {
        double fastest = stage.retime().fastestSpeed(0, (double) stage.frames());
        double open = 2 * Math.PI * Math.min(1, capture.exposureSeconds() * capture.framesPerSecond());
        double step = fastest * capture.framesPerSecond() / film.si();
        if (!(step > 0)) {
            return Optional.empty();
        }
        PlayedShutter shutter = new PlayedShutter(open, step);
        if (shutter.seenRadians() >= NATURAL_RADIANS) {
            return Optional.empty();
        }
        double opened = new PlayedShutter(2 * Math.PI, step).seenRadians();
        String wider = open < 2 * Math.PI * 0.99
                ? "; 360 deg would look like " + Print.degrees(Math.min(opened, 2 * Math.PI)) + ", "
                        + stopsText(Math.log(2 * Math.PI / open) / Math.log(2)) + " lighter"
                : "";
        return Optional.of("At " + speed(fastest) + " it smears as with a shutter of "
                + Print.degrees(shutter.seenRadians()) + wider + ".");
    }

    /// Says what a take is on the table and on the card.
    ///
    /// @return such as `120 frames of the film are 1.60 s on the table, 192 captured frames, 0.08 GB.`
    public String recorded() {
        double seconds = stage.retime().spanSeconds((double) stage.frames());
        String data = findGigabytes().stream()
                .mapToObj(gigabytes -> ", " + Print.number(gigabytes, gigabytes < 1 ? 2 : 1) + " GB a take")
                .findFirst()
                .orElse("");
        return stage.frames() + " frames of the film are " + Print.seconds(seconds, 2) + " on the table, "
                + captured() + " captured frames" + data
                + ".";
    }

    /// From the first captured frame that is shown to the last, both counted.
    private long captured() {
        int frames = (int) Math.min(stage.frames(), MOST_FRAMES);
        SourceFrames shown = SourceFrames.of(stage.retime(), capture.framesPerSecond(), frames);
        long least = Long.MAX_VALUE;
        long most = 0;
        for (int frame = 0; frame < frames; frame++) {
            least = Math.min(least, shown.shown(frame));
            most = Math.max(most, shown.shown(frame));
        }
        double whole = stage.retime().spanSeconds((double) stage.frames()) * capture.framesPerSecond();
        return Math.max(most - least + 1, (long) Math.ceil(whole - 1e-6));
    }

    /// What a take fills of a card, run-up and handles not counted, where the mode's bit rate is written.
    private OptionalDouble findGigabytes() {
        double seconds = stage.retime().spanSeconds((double) stage.frames());
        return Capture.findMode(stage.shot(), film).flatMap(Kit.Mode::bitRate).stream()
                .mapToDouble(rate -> rate.si() * seconds / BITS_PER_GIGABYTE)
                .findFirst();
    }

    /// When the action must happen to be seen slowed down: while the playback is at its slowest.
    ///
    /// @param fromSeconds real seconds after GO
    /// @param toSeconds real seconds after GO
    public record Window(double fromSeconds, double toSeconds) {}

    /// Finds the longest stretch of the screen that is played at the slowest speed.
    ///
    /// @return its real time; empty where the speed doesn't change, or stays at its slowest for no time
    public Optional<Window> findWindow() {
        if (!(stage.shot().playback() instanceof Playback.Curve(List<Playback.Key> keys, var _, var _))) {
            return Optional.empty();
        }
        Retime retime = stage.retime();
        double frames = stage.frames();
        double from = 0;
        double best = 0;
        Optional<Window> window = Optional.empty();
        List<Double> edges = new ArrayList<>(List.of(0.0));
        keys.forEach(key -> edges.add(Math.clamp(key.frame(), 0, frames)));
        edges.add(frames);
        boolean isOpen = false;
        for (int i = 1; i < edges.size(); i++) {
            double low = edges.get(i - 1);
            double high = edges.get(i);
            if (!(high > low)) {
                continue;
            }
            boolean isSlow = isSlowest(retime.speedAt(low)) && isSlowest(retime.speedAt((low + high) / 2));
            if (isSlow && !isOpen) {
                from = low;
            }
            isOpen = isSlow;
            if (isSlow && high - from > best) {
                best = high - from;
                double one = retime.realSeconds(from);
                double other = retime.realSeconds(high);
                window = Optional.of(new Window(Math.min(one, other), Math.max(one, other)));
            }
        }
        return window;
    }

    /// Finds what is let go outside the stretch that is played at the slowest speed.
    ///
    /// @param si the marks' values, SI
    /// @return a sentence; empty where it meets it, where nothing is let go, and where no stretch is slowest
    public Optional<String> findMissed(double[] si) {
        Optional<Window> window = findWindow();
        Optional<Release> release = stage.shot().findRelease();
        if (window.isEmpty() || release.isEmpty()) {
            return Optional.empty();
        }
        double from = stage.releaseSeconds();
        double to = release.get() instanceof Release.OfPieces pieces
                ? from + fallSeconds(PieceRelease.of(pieces), si)
                : Double.POSITIVE_INFINITY;
        boolean isMissed =
                to < window.get().fromSeconds() || from > window.get().toSeconds();
        return isMissed
                ? Optional.of("What is let go " + Print.seconds(from, 2) + " after GO"
                        + (Double.isFinite(to) ? " has landed by " + Print.seconds(to, 2) : "") + ", but "
                        + speed(slowest) + " is played from "
                        + Print.seconds(window.get().fromSeconds(), 2) + " to "
                        + Print.seconds(window.get().toSeconds(), 2) + ": let it go then, or move the ramp.")
                : Optional.empty();
    }

    private double fallSeconds(PieceRelease pieces, double[] si) {
        Vec hand = stage.findMouth(si).orElse(Vec.ZERO);
        Fall fall = pieces.fall(PieceRelease.findMedium(stage, hand).orElse(Medium.AIR));
        return fall.netNewtons() > 0 && fall.moves()
                ? pieces.overSeconds()
                        + fall.at(PieceRelease.wayMetres(stage, hand)).seconds()
                : Double.POSITIVE_INFINITY;
    }

    private boolean isSlowest(double speed) {
        return Math.abs(Math.abs(speed) - slowest) <= SAME_RATE * slowest;
    }
}
