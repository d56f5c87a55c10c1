package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.ink.Estimate;
import plumeline.ink.Ink;
import plumeline.ink.Prediction;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.stage.InkRelease;
import plumeline.stage.PlumePlace;
import plumeline.stage.Stage;
import plumeline.wet.Lacks;

/// From a want on what is let go as written to one that can be judged, and what such wants say alike.
final class InkWants {
    private InkWants() {}

    /// A part of a thing.
    enum ThingPart {
        TOP("top"),
        MIDDLE("middle"),
        BASE("base");

        private final String word;

        ThingPart(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }

        static ThingPart of(WantLine line, ThingPart otherwise) {
            String written = line.written().findWord("part").orElse(otherwise.word);
            for (ThingPart part : values()) {
                if (part.word.equals(written)) {
                    return part;
                }
            }
            return otherwise;
        }

        /// How high it stands over the table, m.
        double heightMetres(Body body) {
            return switch (this) {
                case TOP -> body.bounds().high().z();
                case MIDDLE -> body.middle().z();
                case BASE -> body.bounds().low().z();
            };
        }
    }

    static boolean isOne(String word) {
        return switch (word) {
            case "ink_reaches", "clear_until", "veiled_by", "see_through", "rises", "falls_through" -> true;
            default -> false;
        };
    }

    /// Makes a want of one of these words.
    static Want of(WantLine line, Plan plan, Stage stage, Wants.Elsewhere elsewhere) {
        int thing = stage.thingIndex(line.subjects().getFirst().name());
        if (line.word().equals("see_through")) {
            return SeeThrough.of(line, stage, thing);
        }
        PaperUnit papers = plan.film().papersOrDefault();
        Want want = switch (line.word()) {
            case "rises" -> Rises.of(line, stage, thing, papers);
            case "falls_through" -> FallsThrough.of(line, stage, papers);
            default ->
                switch (InkRelease.of(stage.shot())) {
                    case InkRelease.Missing(InkRelease.Lack lack) ->
                        new Want.NotComputed(line, Lacks.sentence(lack, stage.shot()));
                    case InkRelease.Known ink -> ofInk(line, plan, stage, ink, elsewhere);
                };
        };
        Optional<String> late = want instanceof Want.NotComputed ? Optional.empty() : findAfterEnd(stage);
        return late.<Want>map(why -> new Want.NotComputed(line, why)).orElse(want);
    }

    private static Want ofInk(WantLine line, Plan plan, Stage stage, InkRelease.Known ink, Wants.Elsewhere elsewhere) {
        int thing = stage.thingIndex(line.subjects().getFirst().name());
        return switch (line.word()) {
            case "ink_reaches" -> InkReaches.of(line, thing, ink, plan.film().papersOrDefault());
            case "clear_until" -> ClearUntil.of(line, thing, ink, plan.film().papersOrDefault());
            default -> VeiledBy.of(line, plan, stage, ink, elsewhere);
        };
    }

    /// Why nothing that is let go is seen in a shot, however it falls; a still has no end.
    private static Optional<String> findAfterEnd(Stage stage) {
        double lasts = stage.lastSeconds();
        double starts = stage.releaseSeconds();
        return stage.frames() > 1 && starts >= lasts
                ? Optional.of("The release is after the shot's end. It starts at " + Print.seconds(starts, 2)
                        + " on the table, where the shot is over after " + Print.seconds(lasts, 2)
                        + ": let it go earlier, or give the shot more frames.")
                : Optional.empty();
    }

    /// What is said where something comes so late after the release that no frame shows it; a still has no end.
    static Optional<String> findUnseen(Stage stage, double seconds) {
        double end = stage.lastSeconds() - stage.releaseSeconds();
        return stage.frames() > 1 && seconds >= end
                ? Optional.of("No frame shows it: the shot is over " + Print.seconds(end, 2) + " after the release.")
                : Optional.empty();
    }

    private static String drops(PaperUnit papers) {
        return "Not computed: from so high over the surface the ink breaks into drops. Lower the nozzle to "
                + Parts.distance(Parts.MILLIMETRES * Ink.MOST_HEIGHT_METRES, papers) + " over it or less.";
    }

    /// Why thing and nozzle aren't where a plume could meet it.
    static Optional<String> findMisplaced(PlumePlace plume, Body body, String name, PaperUnit papers) {
        if (!plume.walls().isWithin(body)) {
            return Optional.of(name + " stands outside the tank.");
        }
        if (plume.mouth().z() <= plume.walls().inside().low().z()) {
            return Optional.of("The nozzle's mouth is in or under the tank's floor.");
        }
        if (plume.insideMetres() < 0) {
            return Optional.of("The nozzle's mouth is outside the tank's glass.");
        }
        Bounds in = body.bounds();
        boolean isIn = in.low().x() < plume.mouth().x()
                && plume.mouth().x() < in.high().x()
                && in.low().y() < plume.mouth().y()
                && plume.mouth().y() < in.high().y()
                && in.low().z() < plume.mouth().z()
                && plume.mouth().z() < in.high().z();
        if (isIn) {
            return Optional.of("The nozzle's mouth is inside " + name + ".");
        }
        return -plume.depthMetres(plume.mouth().z()) > Ink.MOST_HEIGHT_METRES
                ? Optional.of(drops(papers))
                : Optional.empty();
    }

    /// Why no law is known.
    static String unknown(Prediction.Unknown reason, PaperUnit papers) {
        return switch (reason.limit()) {
            case HEIGHT -> drops(papers);
            case EXPONENT ->
                "The ink's front goes as no front does: its depths grow as time to the power "
                        + Print.number(reason.given(), 2) + ", and fronts as 0.5 to 0.75. The readings are of different"
                        + " takes, or misread: read one front again.";
            case READING ->
                "Its reading shows the front deeper than the laws have such light ink come. Weigh the ink again, or"
                        + " read a second depth.";
            case ROW_SECONDS ->
                "Not computed: from a slot the ink flows on behind its front. Squeeze faster, or read its front in a"
                        + " take.";
            case PUFF_REYNOLDS ->
                "Not computed: so little ink, or ink so near to the water's density, falls as a smooth ring. Take more,"
                        + " or read its front in a take.";
        };
    }

    static final String RISING =
            "Not computed: ink lighter than the water rises past the nozzle, and laws are of fronts that go down."
                    + " Time its rise in a take, or ask with everything upside down: as much denser, depths for heights"
                    + " over the nozzle.";

    /// What helps ink that turns before it is there.
    static final String HEAVIER = "Make it heavier, by salt or sugar, or push it harder.";

    /// Where light ink turns; how deep it is wanted follows.
    static String turns(String ink, Estimate deepest, PaperUnit papers) {
        return ink + " is lighter than the water: it turns " + depth(deepest, papers) + " under the surface, and ";
    }

    /// A depth as takes repeat it.
    static String depth(Estimate metres, PaperUnit papers) {
        Print print = new Print(papers);
        return "about " + print.length(metres.value(), Print.Hand.TAPE) + " (four takes in five: "
                + print.length(metres.low(), Print.Hand.TAPE) + " to " + print.length(metres.high(), Print.Hand.TAPE)
                + ")";
    }

    /// A time as a take repeats it.
    static String seconds(double seconds) {
        return Print.seconds(seconds, seconds < 1 ? 2 : 1);
    }

    static String interval(Estimate seconds) {
        return seconds(seconds.value()) + " (four takes in five: " + seconds(seconds.low()) + " to "
                + seconds(seconds.high()) + ")";
    }

    /// How many takes in ten do something.
    static String odds(double share, String how) {
        String takes = takes(share);
        return takes + (takes.contains(" takes ") ? " are " : " is ") + how + ".";
    }

    /// How many takes in ten, at a sentence's start.
    static String takes(double share) {
        String takes = Print.takesInTen(share);
        return takes.substring(0, 1).toUpperCase(Locale.ROOT) + takes.substring(1);
    }

    /// Why a want that is met by the middle of an interval needn't be met by a take.
    static String spreadReaches(InkRelease.Known ink) {
        return switch (ink.basis()) {
            case InkRelease.Basis.Taught _, InkRelease.Basis.Read _ ->
                "Takes differ by more than there is to spare: allow more time, or plan takes for it.";
            case InkRelease.Basis.Law _ ->
                "Ink's laws and takes differ by more than there is to spare. Film one take with a ruler beside it and"
                        + " write two readings as the ink's front: nothing narrows it more.";
        };
    }

    /// The odds, and what was assumed.
    static Optional<String> findCaution(String odds, InkRelease.Known ink, PlumePlace plume) {
        List<String> all = new ArrayList<>();
        double under = plume.plume().startMetres();
        if (under > 0
                && ink.basis() instanceof InkRelease.Basis.Read(var _, var tip)
                && tip == InkRelease.Tip.AT_THE_SURFACE) {
            all.add("its front as if read with the nozzle at the surface: write the ink's tip where it wasn't");
        }
        all.addAll(ink.assumed());
        String said = (odds + " " + Lacks.assumed(all)).strip();
        return said.isEmpty() ? Optional.empty() : Optional.of(said);
    }
}
