package plumeline.pace;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import plumeline.plan.Delivery;
import plumeline.plan.Move;
import plumeline.plan.Named;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.plan.Written;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.stage.Gauge;
import plumeline.stage.PieceRelease;
import plumeline.stage.Stage;
import plumeline.timeline.Timeline;
import plumeline.timeline.Use;

/// From a want on moves and time as written to what it measures.
public final class PaceMeasures {
    /// What a film lacks whose cuts can't be laid beside beats.
    public static final String NO_BEAT =
            "Not known: the beats, or what is cut. Write the music's tempo, film: {tempo: 120 bpm}, and the film's"
                    + " cut.";

    private final WantLine line;
    private final Plan plan;
    private final Stage stage;
    private final Capture capture;

    private PaceMeasures(WantLine line, Plan plan, Stage stage) {
        this.line = line;
        this.plan = plan;
        this.stage = stage;
        capture = Capture.of(stage.shot(), plan.film().rate());
    }

    /// Tells whether a want word is one of those read here.
    ///
    /// @param word the want word
    /// @return true for moves and time
    public static boolean isOne(String word) {
        return switch (word) {
            case "smear",
                    "judder_free",
                    "whole_frames",
                    "reachable",
                    "registers",
                    "readable",
                    "holds_still",
                    "sharp_enough",
                    "on_beat" -> true;
            default -> false;
        };
    }

    /// Tells whether a want is judged in one of its shot's passes: how passes lie on each other is, once, in the first
    /// that it names.
    ///
    /// @param line the want
    /// @param pass the pass's name
    /// @return true where it is judged there
    public static boolean isJudgedIn(WantLine line, String pass) {
        return !line.word().equals("registers")
                || line.pass().orElse(line.subjects().getFirst().name()).equals(pass);
    }

    /// Reads a want.
    ///
    /// @param line the want, of one of these words
    /// @param plan the plan
    /// @param stage the shot, or the pass, in which it is judged
    /// @return what it measures
    public static Gauge.Reading<Paced> of(WantLine line, Plan plan, Stage stage) {
        PaceMeasures reader = new PaceMeasures(line, plan, stage);
        return switch (line.word()) {
            case "smear" -> reader.smear();
            case "judder_free" -> reader.judder();
            case "whole_frames" ->
                of(new WholeFrames(Coupling.of(stage, plan.film().rate())));
            case "reachable" -> reader.reachable();
            case "registers" -> reader.registers();
            case "readable" -> reader.readable();
            case "sharp_enough" -> reader.sharpEnough();
            case "on_beat" ->
                listOnBeat(line, plan).stream()
                        .min(Comparator.comparingLong(OnBeat::margin))
                        .map(PaceMeasures::of)
                        .orElseGet(() -> missing(NO_BEAT));
            default -> reader.holdsStill();
        };
    }

    /// Lists how a film's cut and those of its cut-downs stand to the music's beats.
    ///
    /// @param line a want `on_beat`
    /// @param plan the plan
    /// @return one a timeline, the film's first; empty without a tempo or a cut
    public static List<OnBeat> listOnBeat(WantLine line, Plan plan) {
        long within = (long) Math.floor(
                line.written().findQuantity("within").map(Quantity::si).orElse(0.0));
        return plan.film().findBeats().stream()
                .flatMap(beats -> Timeline.listAll(plan).stream().map(timeline -> new OnBeat(timeline, beats, within)))
                .toList();
    }

    private static Gauge.Reading<Paced> of(Gauge<Paced> gauge) {
        return new Gauge.Reading.Of<>(gauge);
    }

    private static Gauge.Reading<Paced> missing(String reason) {
        return new Gauge.Reading.Missing<>(reason);
    }

    private String name() {
        return line.subjects().getFirst().name();
    }

    private Subject subject() {
        return new Subject(stage.thingIndex(name()), name());
    }

    private double si(String key) {
        return line.written().findQuantity(key).map(Quantity::si).orElse(0.0);
    }

    private Gauge.Reading<Paced> smear() {
        if (stage.thingIndex(name()) >= 0) {
            return of(new Smear(subject(), capture, si("under")));
        }
        if (!(stage.shot().findRelease().orElse(null) instanceof Release.OfPieces release)
                || !release.piece().name().equals(name())) {
            return missing("Nothing lets " + name() + " go: write release: {piece: " + name() + ", at: …}.");
        }
        return of(new FallSmear(
                name(), PieceRelease.of(release), capture, si("under"), line.when() instanceof When.Whole));
    }

    private Gauge.Reading<Paced> judder() {
        Written keys = line.written();
        Judder.Limit limit = keys.findQuantity("under")
                .map(under -> new Judder.Limit(under.si(), under.kind() == Kind.SHARE, false))
                .orElse(Judder.Limit.USUAL);
        return of(new Judder(subject(), new Shown(stage.retime(), capture.framesPerSecond()), limit));
    }

    private Gauge.Reading<Paced> sharpEnough() {
        Optional<Delivery> sizeless = line.subjects().stream()
                .flatMap(named -> plan.findDelivery(named.name()).stream())
                .filter(delivery -> delivery.size().isEmpty())
                .findFirst();
        if (sizeless.isPresent()) {
            return missing("Not known: how many pixels " + sizeless.get().name()
                    + " has. Write its size: [1080 px, 1920 px].");
        }
        List<SharpEnough.Of> shown = line.subjects().stream()
                .flatMap(named -> plan.findDelivery(named.name()).stream())
                .map(delivery -> new SharpEnough.Of(
                        delivery, Use.list(plan, delivery, stage.shot().name(), stage.pass(), stage.frames())))
                .toList();
        double least = line.written().has("least") ? si("least") : 1;
        return of(new SharpEnough(shown, least, line.when()));
    }

    private Gauge.Reading<Paced> readable() {
        return of(new Readable(subject(), si("within"), si("for")));
    }

    private Gauge.Reading<Paced> holdsStill() {
        Placed placed = stage.shot().placed().get(stage.thingIndex(name()));
        boolean isHung = placed.lines().isPresent() || !placed.tied().isEmpty();
        return of(new HoldsStill(subject(), placed, isHung, si("under")));
    }

    private Gauge.Reading<Paced> reachable() {
        OptionalInt index = IntStream.range(0, stage.shot().moves().size())
                .filter(i -> stage.shot().moves().get(i).name().equals(name()))
                .findFirst();
        if (index.isEmpty()) {
            return missing("This pass has no move " + name() + ".");
        }
        Move move = stage.shot().moves().get(index.getAsInt());
        return move.machine()
                .map(machine -> of(new Reachable(
                        move, index.getAsInt(), machine, plan.film().papersOrDefault())))
                .orElseGet(() -> missing("Not known: what makes " + name()
                        + ". Write its machine: the kit's slider, head" + " or turntable."));
    }

    private Gauge.Reading<Paced> registers() {
        Shot base = plan.findShot(stage.shot().name()).orElseThrow();
        List<Stage> passes = line.subjects().stream()
                .map(Named::name)
                .map(pass -> Stage.of(plan, base, pass))
                .toList();
        if (stage.shot().placed().isEmpty()) {
            return missing("Nothing is placed that could lie beside itself.");
        }
        return of(new Registers(passes, plan.film().rate(), si("within")));
    }
}
