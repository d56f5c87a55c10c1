package plumeline.solve;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.ink.Estimate;
import plumeline.plume.InkReading;
import plumeline.plume.InkRecord;
import plumeline.plume.InkShot;
import plumeline.plume.InkShots;
import plumeline.plume.Subject;
import plumeline.plume.Times;
import plumeline.plume.Viewing;
import plumeline.want.Wants;

/// What simulations of ink gave, for wants: a record answers where it is of the very shot, marks, ink and look.
///
/// @param records the records, from files beside the plan
record InkRuns(List<InkRecord> records) {
    /// The finest cells first, of these the most tries.
    private static final Comparator<InkRecord> FINEST = Comparator.comparingDouble(
                    (InkRecord record) -> record.head().course().cellMetres())
            .thenComparingInt(record -> -record.runs().size());

    InkRuns {
        records = List.copyOf(records);
    }

    /// Finds when a height is veiled; empty where no record is of this shot as it stands, or its ink's strength was
    /// guessed.
    Optional<Wants.Elsewhere.Veiled> findVeiled(Wants.Elsewhere.Height height) {
        String shot = height.stage().shot().name();
        List<InkRecord> mine = records.stream()
                .filter(record -> record.head().shot().equals(shot)
                        && record.head().strength().measured())
                .toList();
        double[] values =
                height.values().stream().mapToDouble(Double::doubleValue).toArray();
        if (mine.isEmpty() || !(InkShots.read(height.stage(), values) instanceof InkReading.Ready(InkShot ink))) {
            return Optional.empty();
        }
        return mine.stream()
                .filter(record -> record.isOf(ink) && record.isSeenBy(Viewing.of(height.stage(), values, ink)))
                .sorted(FINEST)
                .flatMap(record -> record.findSubject(height.thing()).filter(Subject::isSeen).stream()
                        .map(subject -> record.veiled(subject, nearest(subject, height.heightShare()))))
                // What had not come when a try was left isn't known to come late.
                .filter(times -> times.seconds().size() == times.runs() || times.untilSeconds() >= height.bySeconds())
                .findFirst()
                .map(times -> new Wants.Elsewhere.Veiled(estimate(times), times.oddsBy(height.bySeconds())));
    }

    private static int nearest(Subject subject, double share) {
        double low = subject.heights().getFirst().metres();
        double high = subject.heights().getLast().metres();
        return subject.nearest(low + share * (high - low));
    }

    private static Estimate estimate(Times times) {
        double value = times.middle().orElse(Wants.Elsewhere.NEVER_SECONDS);
        OptionalDouble low = times.low();
        return new Estimate(
                value,
                Math.min(value, low.orElse(value)),
                Math.max(value, times.high().orElse(Wants.Elsewhere.NEVER_SECONDS)));
    }
}
