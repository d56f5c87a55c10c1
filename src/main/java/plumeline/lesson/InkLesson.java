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
import plumeline.ink.Release;
import plumeline.plan.Kit;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.take.Conditions;
import plumeline.take.Take;
import plumeline.text.Node;
import plumeline.water.Water;

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
        List<Take.Front> own = TakeReader.pairs(ink.written(), "front").stream()
                .map(pair -> new Take.Front(pair.get(0), pair.get(1)))
                .toList();
        return of(takes, own);
    }

    /// Learns from takes, and from readings of which nothing else is told.
    ///
    /// @param takes the takes
    /// @param fronts the readings; they count only where no take's release is told
    /// @return what is known
    static InkLesson of(List<Take> takes, List<Take.Front> fronts) {
        List<Take> told = takes.stream()
                .filter(take -> take.conditions() instanceof Conditions.Told)
                .toList();
        if (told.isEmpty()) {
            List<FrontFit.Reading> readings = new ArrayList<>();
            fronts.forEach(front -> readings.add(reading(front)));
            if (fronts.isEmpty()) {
                takes.forEach(take -> take.fronts().forEach(front -> readings.add(reading(front))));
            }
            if (FrontFit.isPossible(readings)) {
                return new ByReadings(FrontFit.of(readings), readings.size());
            }
        }
        return new ByLaws(Learnt.of(told.stream().map(InkLesson::read).toList()), told);
    }

    /// Finds when the front is at a depth in the next take.
    ///
    /// @param descent what is let go then; counts for laws only
    /// @param depthMetres depth below the surface, m, > the start's
    /// @return s; empty where it never comes so deep, or no law is known
    default Optional<Estimate> findSeconds(Descent descent, double depthMetres) {
        return switch (this) {
            case ByReadings readings -> Optional.of(readings.fit().seconds(depthMetres));
            case ByLaws laws ->
                laws.learnt().predict(descent, depthMetres) instanceof Prediction.Reached reached
                        ? Optional.of(reached.seconds())
                        : Optional.empty();
        };
    }

    /// Makes numbers of what was let go.
    ///
    /// @param told what was let go
    /// @return the descent
    static Descent descent(Conditions.Told told) {
        double kelvin = Math.clamp(told.water().si(), 273.15, 273.15 + 40);
        double water = Water.densityKilogramsPerMetre3(kelvin).find().orElseThrow();
        double viscosity = Water.viscosityPascalSeconds(kelvin).find().orElseThrow() / water;
        double reduced = Water.GRAVITY_METRES_PER_SECOND2 * (told.density().si() - water) / water;
        double volume = told.volume().si();
        Release release =
                switch (told.outlet()) {
                    case Conditions.Outlet.AtOnce() -> new Release(volume, reduced, SOME_BORE_METRES, 0, viscosity);
                    case Conditions.Outlet.Squeezed(Quantity bore, Quantity time) ->
                        Release.ofSqueeze(volume, reduced, bore.si(), time.si(), viscosity);
                    case Conditions.Outlet.AtSpeed(Quantity bore, Quantity speed) ->
                        new Release(volume, reduced, bore.si(), speed.si(), viscosity);
                };
        return new Descent(release, told.height().si());
    }

    /// Counts for nothing where ink is let go at once; a release has one.
    double SOME_BORE_METRES = 0.004;

    private static FrontFit.Reading reading(Take.Front front) {
        return new FrontFit.Reading(front.time().si(), front.depth().si());
    }

    private static Regime regime(Take take) {
        double deepest = take.fronts().stream()
                .mapToDouble(front -> front.depth().si())
                .max()
                .orElseGet(() -> take.widths().getLast().depth().si());
        return descent((Conditions.Told) take.conditions()).regime(deepest);
    }

    private static ReadTake read(Take take) {
        double frame = 1 / take.rate().si();
        List<ReadTake.FrontReading> fronts = take.fronts().stream()
                .map(front -> new ReadTake.FrontReading(
                        front.time().si(),
                        deviation(front.time(), READ_FRAMES * frame),
                        front.depth().si(),
                        deviation(front.depth(), READ_METRES)))
                .toList();
        List<ReadTake.WidthReading> widths = take.widths().stream()
                .map(width -> new ReadTake.WidthReading(
                        width.depth().si(),
                        width.width().si() / 2,
                        deviation(width.width(), 2 * READ_METRES) / 2))
                .toList();
        return new ReadTake(descent((Conditions.Told) take.conditions()), frame, fronts, widths);
    }

    /// What a time is read to where no ± says, frames, standard deviation: half a frame to a frame (common practice).
    double READ_FRAMES = 0.75;

    /// What a depth is read to where no ± says, m, standard deviation: 2 to 5 mm by a ruler in the picture (common
    /// practice).
    double READ_METRES = 0.0035;

    private static double deviation(Quantity read, double usual) {
        return read.hasSpread() ? read.halfWidthSi() / 1.96 : usual;
    }
}
