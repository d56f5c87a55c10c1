package plumeline.lesson;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.ink.Descent;
import plumeline.ink.Estimate;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.take.Take;

/// What the next take of a shot with ink will be like, and the one change that helps it most.
///
/// @param ink the ink's name
/// @param basis what that is known from
/// @param target where the front is wanted, and when
/// @param seconds when the front is there, s
/// @param advice what to do
public record NextTry(String ink, Basis basis, Target target, Estimate seconds, Advice advice) {
    /// What a next take is known from.
    public sealed interface Basis {
        /// Laws, narrowed by takes.
        ///
        /// @param lesson what is known of the ink
        /// @param descent what is let go as planned
        /// @param assumed what was taken for what isn't told, each in a few words
        record Laws(InkLesson.ByLaws lesson, Descent descent, List<String> assumed) implements Basis {
            /// Copies the list.
            public Laws {
                assumed = List.copyOf(assumed);
            }
        }

        /// Readings alone.
        ///
        /// @param lesson the line through them
        record Readings(InkLesson.ByReadings lesson) implements Basis {}
    }

    /// What to do in the next take.
    public sealed interface Advice {
        /// No want says when the front is wanted, so there is nothing to better.
        record NoWish() implements Advice {}

        /// As it is; nothing tried alone betters the odds enough to spend a take on it.
        ///
        /// @param odds the odds, 0 to 1
        record Keep(double odds) implements Advice {}

        /// One change.
        ///
        /// @param odds the odds as it is, 0 to 1
        /// @param change the change, with its odds
        record Do(double odds, Change change) implements Advice {}

        /// What is let go isn't told, so no change can be tried.
        ///
        /// @param odds the odds as it is, 0 to 1
        /// @param missing what isn't told of the release as planned; empty where only the takes lack it
        record Untold(double odds, List<String> missing) implements Advice {
            /// Copies the list.
            public Untold {
                missing = List.copyOf(missing);
            }
        }
    }

    /// What is known of the next take, or what is missing.
    public sealed interface Outcome {
        /// It is known.
        ///
        /// @param next the next take
        record Known(NextTry next) implements Outcome {}

        /// Something is missing.
        ///
        /// @param what what isn't told, each in a few words
        record Missing(List<String> what) implements Outcome {
            /// Copies the list.
            public Missing {
                what = List.copyOf(what);
            }
        }
    }

    /// Looks ahead to a shot's next take.
    ///
    /// @param shot a shot of a plan that has its lessons in it
    /// @return the next take, or what is missing
    public static Outcome of(Shot shot) {
        if (!(shot.findRelease().orElse(null) instanceof Release.OfInk release)) {
            return new Outcome.Missing(List.of("a release of ink in " + shot.name()));
        }
        String ink = release.ink().name();
        InkLesson lesson = InkLesson.of(release.ink());
        List<Take> takes = lesson instanceof InkLesson.ByLaws laws ? laws.takes() : List.of();
        Optional<Target> target = Target.find(shot, takes);
        if (target.isEmpty()) {
            return new Outcome.Missing(
                    List.of("where the front is wanted: a want ink_reaches on a thing whose height is not free"));
        }
        return switch (lesson) {
            case InkLesson.ByLaws laws ->
                switch (ShotRelease.of(shot, release, Map.of())) {
                    case ShotRelease.Missing(List<String> what) -> new Outcome.Missing(what);
                    case ShotRelease.Told told -> byLaws(ink, laws, target.get(), told);
                };
            case InkLesson.ByReadings readings ->
                readings.fit().isFront()
                        ? new Outcome.Known(byReadings(ink, readings, target.get(), missing(shot, release)))
                        : new Outcome.Missing(List.of("readings that go as a front does: misread, or of takes too"
                                + " different for one line; read one front again"));
        };
    }

    private static Outcome byLaws(String ink, InkLesson.ByLaws laws, Target target, ShotRelease.Told told) {
        Descent descent = told.descent();
        if (target.depthMetres() <= descent.startMetres()) {
            return new Outcome.Missing(List.of("a nozzle above " + target.place()));
        }
        Optional<Estimate> seconds = laws.findSeconds(descent, target.depthMetres());
        if (seconds.isEmpty()) {
            return new Outcome.Missing(
                    List.of("a law for such a release: it never comes so deep, or nobody has measured"
                            + " one; let it go and read its front twice"));
        }
        Advice advice = switch (target.time()) {
            case Target.Time.Any() -> new Advice.NoWish();
            case Target.Time.At at -> {
                double odds = odds(seconds.get(), at);
                yield Changes.findBest(laws.learnt(), target, at, told.told())
                        .<Advice>map(change -> new Advice.Do(odds, change))
                        .orElseGet(() -> new Advice.Keep(odds));
            }
        };
        Basis basis = new Basis.Laws(laws, descent, told.assumed());
        return new Outcome.Known(new NextTry(ink, basis, target, seconds.get(), advice));
    }

    private static List<String> missing(Shot shot, Release.OfInk release) {
        return ShotRelease.of(shot, release, Map.of()) instanceof ShotRelease.Missing(List<String> what)
                ? what
                : List.of();
    }

    private static NextTry byReadings(String ink, InkLesson.ByReadings readings, Target target, List<String> missing) {
        Estimate seconds = readings.fit().seconds(target.depthMetres());
        Advice advice = target.time() instanceof Target.Time.At at
                ? new Advice.Untold(odds(seconds, at), missing)
                : new Advice.NoWish();
        return new NextTry(ink, new Basis.Readings(readings), target, seconds, advice);
    }

    private static double odds(Estimate seconds, Target.Time.At at) {
        return seconds.odds(at.seconds() - at.withinSeconds(), at.seconds() + at.withinSeconds());
    }

    /// Gives the odds that the front is where it is wanted at the wanted instant of the shot, were all the same but let
    /// go so much later.
    ///
    /// @param laterSeconds how much later, s; − for earlier
    /// @param at when it is wanted
    /// @return 0 to 1
    public double oddsLater(double laterSeconds, Target.Time.At at) {
        return odds(seconds, new Target.Time.At(at.seconds() - laterSeconds, at.withinSeconds()));
    }
}
