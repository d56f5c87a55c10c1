package plumeline.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.ink.Descent;
import plumeline.ink.Estimate;
import plumeline.ink.FrontFit;
import plumeline.ink.Learnt;
import plumeline.ink.Prediction;
import plumeline.ink.ReadTake;
import plumeline.ink.Regime;
import plumeline.plan.Kit;
import plumeline.plan.Written;
import plumeline.take.Conditions;
import plumeline.take.Take;
import plumeline.text.Node;

/// What is known of an ink after its takes.
public sealed interface InkLesson {
    /// Laws, narrowed by takes whose release is told; by the published ranges alone where there is none.
    ///
    /// @param learnt what the takes have taught
    /// @param takes the takes that count
    record ByLaws(Learnt learnt, List<Take> takes) implements InkLesson {
        /// Copies the list.
        public ByLaws {
            takes = List.copyOf(takes);
        }

        /// Finds how much the half-width grows by over the way, in the way of the last take's deepest reading.
        ///
        /// @return dimensionless; empty without a take
        public Optional<Estimate> findGrowth() {
            return takes.isEmpty() ? Optional.empty() : Optional.of(learnt.growth(regime(takes.getLast())));
        }
    }

    /// Readings of takes of which nothing else is told: `z = k tⁿ`.
    ///
    /// @param fit the line through them
    /// @param readings how many there are
    record ByReadings(FrontFit fit, int readings) implements InkLesson {}

    /// Learns of an ink from what a plan says, lessons in it.
    ///
    /// @param ink the ink
    /// @return what is known
    static InkLesson of(Kit.Ink ink) {
        List<Take> takes = new ArrayList<>();
        if (ink.written().findNode("takes").orElse(ink.written().node()) instanceof Node.Sequence list) {
            for (Node item : list.items()) {
                if (item instanceof Node.Mapping keys) {
                    takes.add(TakeReader.read(new Written(keys, keys.place())));
                }
            }
        }
        return of(takes, readings(ink));
    }

    /// Gives the readings that an ink has of its own, of which nothing else is told. The surface's, at the very start,
    /// is none.
    ///
    /// @param ink the ink
    /// @return its `front`
    static List<ReadTake.FrontReading> readings(Kit.Ink ink) {
        return TakeReader.pairs(ink.written(), "front").stream()
                .map(pair -> new Take.Front(pair.get(0), pair.get(1)))
                .filter(front -> front.time().si() > 0 && front.depth().si() > 0)
                .map(front -> TakeNumbers.read(front, ReadTake.USUAL_SECONDS))
                .toList();
    }

    /// Learns from takes, and from readings of which nothing else is told.
    ///
    /// @param takes the takes
    /// @param fronts the readings; they count only where no take's release is told
    /// @return what is known
    static InkLesson of(List<Take> takes, List<ReadTake.FrontReading> fronts) {
        List<Take> told = takes.stream()
                .filter(take -> take.conditions() instanceof Conditions.Told)
                .toList();
        if (told.isEmpty()) {
            List<ReadTake.FrontReading> readings = fronts.isEmpty()
                    ? takes.stream()
                            .flatMap(take -> TakeNumbers.fronts(take).stream())
                            .toList()
                    : fronts;
            Optional<FrontFit> fit = FrontFit.find(readings);
            if (fit.isPresent()) {
                return new ByReadings(fit.get(), readings.size());
            }
        }
        return new ByLaws(Learnt.of(told.stream().map(TakeNumbers::read).toList()), told);
    }

    /// Finds when the front is at a depth in the next take.
    ///
    /// @param descent what is let go then; counts for laws only
    /// @param depthMetres depth below the surface, m, > the start's
    /// @return s; empty where it never comes so deep, no law is known, or the readings are no front's
    default Optional<Estimate> findSeconds(Descent descent, double depthMetres) {
        return switch (this) {
            case ByReadings(FrontFit fit, int _) ->
                fit.isFront() ? Optional.of(fit.seconds(depthMetres)) : Optional.empty();
            case ByLaws laws ->
                laws.learnt().predict(descent, depthMetres) instanceof Prediction.Reached reached
                        ? Optional.of(reached.seconds())
                        : Optional.empty();
        };
    }

    private static Regime regime(Take take) {
        double deepest = take.fronts().stream()
                .mapToDouble(front -> front.depth().si())
                .max()
                .orElseGet(() -> take.widths().getLast().depth().si());
        return TakeNumbers.descent((Conditions.Told) take.conditions()).regime(deepest);
    }
}
