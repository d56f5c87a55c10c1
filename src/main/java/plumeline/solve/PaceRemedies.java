package plumeline.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.light.Thirds;
import plumeline.motion.Run;
import plumeline.motion.Travel;
import plumeline.pace.Capture;
import plumeline.pace.Coupling;
import plumeline.plan.Kit;
import plumeline.plan.Move;
import plumeline.plan.Playback;
import plumeline.plan.WantLine;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.MachineLimits;
import plumeline.stage.Stage;
import plumeline.text.Node;
import plumeline.text.Place;

/// What helps wants on moves and time: another capture rate, the whole shot run slower and played faster, another
/// shutter, a triggered start. Each is judged anew with all wants; what is lost by it is told beside it.
final class PaceRemedies {
    /// Playback is typed in by tens of per cent.
    private static final double PLAYBACK_STEP = 0.1;

    /// Nobody waits for a move that is run slower by more than this.
    private static final double MOST_TIMES = 4;

    /// So many steps are tried one by one; what is slower by more in longer ones.
    private static final int FINE_STEPS = 3;

    private static final double COARSER = 1.4;

    private static final double SAME = 1e-9;
    private static final double WHOLE_TURN = 360;

    /// A smear that differs by less looks the same.
    private static final double LITTLE = 0.02;

    private final Otherwise otherwise;
    private final Quantity film;

    PaceRemedies(Otherwise otherwise, Quantity film) {
        this.otherwise = otherwise;
        this.film = film;
    }

    /// What to try for a want that fails or is tight, in sentences.
    List<String> attempts(WantLine line) {
        return switch (line.word()) {
            case "whole_frames" -> present(findRate(line, coupling().leastRate()), findFaster(line));
            case "reachable" -> present(findMade(line));
            case "registers" ->
                present(findTriggered(line), findRate(line, 0), findSlower(line, needed(line, "within")));
            case "smear" -> present(findShutter(line), findSlower(line, needed(line, "under")), findRate(line, 0));
            default -> List.of();
        };
    }

    /// How many times slower it has to be at least: what is measured over what is allowed.
    private double needed(WantLine line, String key) {
        double most = line.written().findQuantity(key).map(Quantity::si).orElse(1.0);
        double margin = otherwise.here().margin(otherwise.here().line(line.id()));
        return Math.max(1, (most - margin) / most);
    }

    @SafeVarargs
    private static List<String> present(Optional<String>... sentences) {
        List<String> all = new ArrayList<>();
        for (Optional<String> sentence : sentences) {
            sentence.ifPresent(all::add);
        }
        return all;
    }

    private Stage stage() {
        return otherwise.judged().stage();
    }

    private Coupling coupling() {
        return Coupling.of(stage(), film);
    }

    private Place place() {
        return otherwise.shot().place();
    }

    private Otherwise.Key key(String path, String text) {
        return new Otherwise.Key(path, new Node.Scalar(text, false, place()));
    }

    /// The slowest of the body's rates with which it holds.
    private Optional<String> findRate(WantLine line, double least) {
        double now = coupling().capture().framesPerSecond();
        return otherwise.shot().camera().body().modes().stream()
                .map(Kit.Mode::rate)
                .filter(rate -> rate.si() > now * (1 + SAME) && rate.si() >= least * (1 - SAME))
                .sorted(Comparator.comparingDouble(Quantity::si))
                .flatMap(rate -> otherwise.findTrial(List.of(key("camera.rate", rate.toText())), line.id()).stream()
                        .map(trial -> rateSentence(line, rate, trial)))
                .findFirst();
    }

    private String rateSentence(WantLine line, Quantity rate, Otherwise.Trial trial) {
        Coupling there = Coupling.of(trial.there().stage(), film);
        double stops = there.stops(rate.si()) - there.stops(coupling().capture().framesPerSecond());
        String crop = otherwise.shot().camera().body().modes().stream()
                .filter(mode -> mode.rate().equals(rate))
                .flatMap(mode -> mode.width().stream())
                .findFirst()
                .map(width -> ", which uses " + width.valueText() + " of the sensor's width: frame it anew")
                .orElse("");
        String across = otherwise.shot().camera().body().modes().stream()
                .filter(mode -> mode.rate().equals(rate))
                .flatMapToLong(mode -> mode.acrossPixels().stream())
                .mapToObj(pixels -> ", " + pixels + " px across there")
                .findFirst()
                .orElse("");
        boolean isAsked = line.word().equals("whole_frames") && there.slowest() < 1 - SAME;
        return (isAsked ? there.sentence() + " " : "") + "Set camera.rate " + rate.valueText() + ", "
                + Coupling.stopsText(stops) + " more light than now at the same shutter angle" + across + crop + "."
                + trial.cost();
    }

    /// All speeds under a limit played at it: as slow as the body's fastest mode shows without showing a frame twice.
    private Optional<String> findFaster(WantLine line) {
        double fastest = otherwise.shot().camera().body().modes().stream()
                .mapToDouble(mode -> mode.rate().si())
                .max()
                .orElse(coupling().capture().framesPerSecond());
        Optional<Quantity> mode = otherwise.shot().camera().body().modes().stream()
                .map(Kit.Mode::rate)
                .max(Comparator.comparingDouble(Quantity::si));
        double least = film.si() / fastest;
        if (coupling().slowest() >= least * (1 - SAME)) {
            return Optional.empty();
        }
        List<Otherwise.Key> keys = new ArrayList<>(List.of(key("speed", least, 1)));
        mode.ifPresent(rate -> keys.add(key("camera.rate", rate.toText())));
        String at = mode.map(rate -> " at " + rate.valueText() + ", the fastest there is")
                .orElse("");
        return otherwise
                .findTrial(keys, line.id())
                .map(trial -> "Play no slower than " + Coupling.speed(least) + at + ": "
                        + Coupling.of(trial.there().stage(), film).recorded() + trial.cost());
    }

    /// The shot's speed times a factor, none under a limit.
    private Otherwise.Key key(String path, double least, double times) {
        return switch (otherwise.shot().playback()) {
            case Playback.Constant(double speed, var _) -> key(path, percent(atLeast(speed * times, least)));
            case Playback.Curve(List<Playback.Key> keys, var _, var _) ->
                new Otherwise.Key(
                        path,
                        new Node.Sequence(
                                keys.stream()
                                        .map(one -> (Node) new Node.Sequence(
                                                List.of(
                                                        new Node.Scalar(
                                                                figure(one.frame()) + " frames", false, place()),
                                                        new Node.Scalar(
                                                                percent(atLeast(one.speed() * times, least)),
                                                                false,
                                                                place())),
                                                place()))
                                        .toList(),
                                place()));
        };
    }

    private static double atLeast(double speed, double least) {
        return speed == 0 || Math.abs(speed) >= least ? speed : Math.copySign(least, speed);
    }

    private static String percent(double share) {
        return figure(share * 100) + " %";
    }

    private static String figure(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value);
        return text.replaceFirst("0+$", "").replaceFirst("[.]$", "");
    }

    /// Everything run slower and played as much faster, so that the screen shows the same.
    private List<Otherwise.Key> slowed(double times) {
        List<Otherwise.Key> keys = new ArrayList<>();
        keys.add(key("speed", 0, times));
        for (Move move : otherwise.shot().moves()) {
            String path = "moves." + move.name() + ".";
            move.duration().ifPresent(in -> keys.add(key(path + "in", seconds(in.si() * times))));
            move.start()
                    .filter(start -> start.kind() != Kind.FRAMES)
                    .ifPresent(start -> keys.add(key(path + "start", seconds(start.si() * times))));
            if (!move.listKeys().isEmpty()) {
                keys.add(new Otherwise.Key(path + "keys", keyed(move, times)));
            }
        }
        otherwise
                .shot()
                .findRelease()
                .flatMap(release -> release.findStart())
                .filter(start -> start.kind() != Kind.FRAMES)
                .ifPresent(start -> keys.add(key("release.start", seconds(start.si() * times))));
        return keys;
    }

    private Node keyed(Move move, double times) {
        return new Node.Sequence(
                move.listKeys().stream()
                        .map(pair -> (Node) new Node.Sequence(
                                List.of(
                                        new Node.Scalar(seconds(pair.getFirst().si() * times), false, place()),
                                        new Node.Scalar(percent(pair.getLast().si()), false, place())),
                                place()))
                        .toList(),
                place());
    }

    private static String seconds(double seconds) {
        return figure(seconds) + " s";
    }

    /// The least slowing, by a playback that an editor types in, with which a want holds.
    private Optional<String> findSlower(WantLine line, double least) {
        if (otherwise.shot().moves().stream().noneMatch(move -> move.findTime().isPresent())) {
            return Optional.empty();
        }
        double now = fastest();
        double first = Math.ceil(now * least / PLAYBACK_STEP - SAME) * PLAYBACK_STEP;
        if (first <= now * (1 + SAME)) {
            first += PLAYBACK_STEP;
        }
        double played = first;
        while (played <= MOST_TIMES * now * (1 + SAME)) {
            double times = played / now;
            Optional<Otherwise.Trial> trial = otherwise.findTrial(slowed(times), line.id());
            if (trial.isPresent()) {
                return Optional.of(slowSentence(line, times, trial.get()));
            }
            double next = played < first + FINE_STEPS * PLAYBACK_STEP ? played + PLAYBACK_STEP : COARSER * played;
            played = Math.rint(next / PLAYBACK_STEP) * PLAYBACK_STEP;
        }
        return Optional.empty();
    }

    /// The speed that playback is told by: the only one, or a curve's fastest.
    private double fastest() {
        return switch (otherwise.shot().playback()) {
            case Playback.Constant(double speed, var _) -> Math.abs(speed);
            case Playback.Curve(List<Playback.Key> keys, var _, var _) -> 1;
        };
    }

    private String slowSentence(WantLine line, double times, Otherwise.Trial trial) {
        List<String> runs = new ArrayList<>();
        for (Move move : otherwise.shot().moves()) {
            move.findTime()
                    .ifPresent(in -> runs.add(move.name() + " in " + Print.seconds(in.si() * times, 2)
                            + peak(trial, move) + started(move.start(), times)));
        }
        String playback = otherwise.shot().playback() instanceof Playback.Constant(double speed, var _)
                ? "play at " + Coupling.speed(speed * times)
                : "play all of it at " + Coupling.speed(times) + " of its speeds";
        return "Run " + String.join(", ", runs) + ", " + playback + "." + trial.cost() + released(times)
                + shutter(line, times, trial);
    }

    private static String started(Optional<Quantity> start, double times) {
        return start.filter(from -> from.kind() != Kind.FRAMES && from.si() > 0)
                .map(from -> " from " + Print.seconds(from.si() * times, 2) + " on")
                .orElse("");
    }

    /// What is let go keeps its own time: played faster it is faster on the screen.
    private String released(double times) {
        return otherwise
                .shot()
                .findRelease()
                .map(release -> " What is let go doesn't slow down with it: on the screen it goes "
                        + Print.number(times, 1) + " times as fast"
                        + release.findStart()
                                .filter(start -> start.kind() != Kind.FRAMES && start.si() > 0)
                                .map(start -> "; let it go at " + Print.seconds(start.si() * times, 2))
                                .orElse("")
                        + ".")
                .orElse("");
    }

    private String peak(Otherwise.Trial trial, Move move) {
        Stage there = trial.there().stage();
        int index = otherwise.shot().moves().indexOf(move);
        Optional<Run> run = there.findRun(index, trial.there().values());
        return run.map(found -> " (at most "
                        + new plumeline.pace.Figures(
                                        move.axis(), otherwise.plan().film().papersOrDefault())
                                .speed(found.peakSpeed())
                        + ")")
                .orElse("");
    }

    /// What is run slower smears less: a shutter as much wider shows the same, and takes in more light.
    private String shutter(WantLine line, double times, Otherwise.Trial slower) {
        Capture capture = coupling().capture();
        double degrees = capture.exposureSeconds() * capture.framesPerSecond() * WHOLE_TURN;
        double before = new Smear(stage(), otherwise.si(), capture.exposureSeconds()).pixels();
        double after = new Smear(slower.there().stage(), slower.there().values(), capture.exposureSeconds()).pixels();
        double wider = after > 0 ? Math.min(WHOLE_TURN, degrees * before / after) : degrees;
        if (wider <= degrees * (1 + LITTLE) || line.word().equals("smear")) {
            return uneven(times);
        }
        List<Otherwise.Key> keys = new ArrayList<>(slowed(times));
        keys.add(key("camera.shutter", figure(Math.rint(wider)) + " deg"));
        return uneven(times)
                + otherwise
                        .findTrial(keys, line.id())
                        .map(trial -> " With a shutter of " + Print.number(wider, 0) + " deg, "
                                + Coupling.stopsText(Math.log(wider / degrees) / Math.log(2))
                                + " more light, it smears "
                                + asFar(after * wider / degrees / before)
                                + trial.cost())
                        .orElse("");
    }

    private static String asFar(double share) {
        return share > 1 - LITTLE ? "as before." : Print.share(share, 0) + " as far as before.";
    }

    /// Playback that takes no whole number of captured frames for each that is shown.
    private String uneven(double times) {
        double step = fastest() * times * coupling().capture().framesPerSecond() / film.si();
        boolean isConstant = otherwise.shot().playback() instanceof Playback.Constant;
        return isConstant && Math.abs(step - Math.rint(step)) > SAME * step
                ? " Captured frames are then left out unevenly: look at a test, or play by whole multiples."
                : "";
    }

    /// The time in which the machine can make the move that a want is about.
    private Optional<String> findMade(WantLine line) {
        String name = line.subjects().getFirst().name();
        List<Move> moves = stage().shot().moves();
        for (int i = 0; i < moves.size(); i++) {
            Move move = moves.get(i);
            Optional<Run> run = stage().findRun(i, otherwise.si());
            if (move.name().equals(name) && run.isPresent()) {
                double least = run.get() instanceof Travel travel
                        ? Travel.leastSeconds(
                                        Math.abs(travel.distance()), travel.profile(), MachineLimits.of(move.machine()))
                                / travel.seconds()
                        : 1;
                return findSlower(line, Math.max(1, least));
            }
        }
        return findSlower(line, 1);
    }

    /// Camera and machine started together.
    private Optional<String> findTriggered(WantLine line) {
        List<Move> free = otherwise.shot().moves().stream()
                .filter(move -> !move.isTriggered())
                .toList();
        List<Otherwise.Key> keys = free.stream()
                .map(move -> key("moves." + move.name() + ".triggered", "yes"))
                .toList();
        return free.isEmpty()
                ? Optional.empty()
                : otherwise
                        .findTrial(keys, line.id())
                        .map(trial -> "Let the camera start "
                                + String.join(
                                        " and ", free.stream().map(Move::name).toList())
                                + ", or the machine the camera, at the same frame in every pass." + trial.cost());
    }

    /// The widest shutter with which it holds.
    private Optional<String> findShutter(WantLine line) {
        Capture capture = coupling().capture();
        double now = capture.exposureSeconds() * capture.framesPerSecond() * WHOLE_TURN;
        boolean isTime = otherwise
                .shot()
                .camera()
                .findShutter()
                .filter(one -> one.kind() == Kind.TIME)
                .isPresent();
        return Thirds.SHUTTER_DEGREES.stream()
                .filter(degrees -> degrees < now * (1 - 0.02))
                .flatMap(degrees -> {
                    String text = isTime
                            ? "1/" + figure(Math.rint(capture.framesPerSecond() * WHOLE_TURN / degrees)) + " s"
                            : figure(degrees) + " deg";
                    double stops = Math.log(now / degrees) / Math.log(2);
                    return otherwise.findTrial(List.of(key("camera.shutter", text)), line.id()).stream()
                            .map(trial -> "Shutter " + text + ", " + Coupling.stopsText(stops) + " more light."
                                    + trial.cost());
                })
                .findFirst();
    }
}
