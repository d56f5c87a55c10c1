package plumeline.plume;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.lesson.Target;
import plumeline.plan.WantLine;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;

/// In how many tries a want on ink was met: a count, as few tries give no share.
///
/// @param line the want
/// @param met in how many
/// @param of how many tries there were
public record InkOdds(WantLine line, int met, int of) {
    /// Counts the tries that met wants.
    ///
    /// @param wants the wants; of those that aren't on ink, of which the tries say nothing, or whose ink has no
    /// measured strength nothing is told
    /// @param stage the shot, or the pass
    /// @param record what its tries say
    /// @param mouthMetres how high the nozzle's mouth is, m
    /// @return the counts, in the wants' order
    public static List<InkOdds> of(List<WantLine> wants, Stage stage, InkRecord record, double mouthMetres) {
        double shotSeconds = stage.lastSeconds() - stage.releaseSeconds();
        List<InkOdds> odds = new ArrayList<>();
        for (WantLine line : wants) {
            Optional<Subject> subject =
                    line.subjects().stream().findFirst().flatMap(named -> record.findSubject(named.name()));
            subject.flatMap(thing -> met(line, thing, new Seen(record, mouthMetres, shotSeconds)))
                    .ifPresent(
                            met -> odds.add(new InkOdds(line, met, record.runs().size())));
        }
        return odds;
    }

    private record Seen(InkRecord record, double mouthMetres, double shotSeconds) {}

    private static Optional<Integer> met(WantLine line, Subject thing, Seen tries) {
        InkRecord record = tries.record();
        boolean seen = thing.isSeen() && record.head().strength().measured();
        return switch (line.word()) {
            case "ink_reaches" -> {
                double after = si(line, "after").orElse(0.0);
                double within = si(line, "within").orElse(Target.WITHIN_SHARE * after);
                yield record.findReaches(
                                thing.at(part(line).orElse(Subject.Part.TOP)).zMetres(), tries.mouthMetres())
                        .filter(times -> times.untilSeconds() >= after + within)
                        .map(times -> times.within(after - within, after + within));
            }
            case "clear_until" -> {
                double time = si(line, "time").orElse(0.0);
                Times times = record.inked(thing);
                yield seen && times.untilSeconds() >= time
                        ? Optional.of(times.runs() - times.within(0, time))
                        : Optional.empty();
            }
            case "veiled_by" -> {
                Subject.Part part = part(line).orElse(Subject.Part.MIDDLE);
                Times times = record.veiled(thing, thing.heights().indexOf(thing.at(part)));
                double time = si(line, "time").orElse(tries.shotSeconds());
                yield seen && times.untilSeconds() >= time ? Optional.of(times.within(0, time)) : Optional.empty();
            }
            default -> Optional.empty();
        };
    }

    private static Optional<Double> si(WantLine line, String key) {
        return line.written().findQuantity(key).map(Quantity::si);
    }

    private static Optional<Subject.Part> part(WantLine line) {
        return line.written().findWord("part").flatMap(word -> {
            for (Subject.Part part : Subject.Part.values()) {
                if (part.word().equals(word)) {
                    return Optional.of(part);
                }
            }
            return Optional.empty();
        });
    }
}
