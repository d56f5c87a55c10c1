package plumeline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.lesson.Target;
import plumeline.plan.WantLine;
import plumeline.plume.InkRecord;
import plumeline.plume.Subject;
import plumeline.plume.Times;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;

/// In how many runs a want on ink was met.
///
/// @param line the want
/// @param met in how many
/// @param of how many runs there were
record InkOdds(WantLine line, int met, int of) {
    static List<InkOdds> of(InkAnswer answer) {
        InkRecord record = answer.record();
        Stage stage = answer.of().stage();
        double shotSeconds = stage.retime().realSeconds((double) stage.frames()) - stage.releaseSeconds();
        List<InkOdds> odds = new ArrayList<>();
        for (WantLine line : answer.of().shot().wants()) {
            if (line.pass().filter(pass -> !answer.of().passes().contains(pass)).isPresent()) {
                continue;
            }
            Optional<Subject> subject =
                    line.subjects().stream().findFirst().flatMap(named -> record.findSubject(named.name()));
            subject.flatMap(thing -> met(line, thing, answer, shotSeconds))
                    .ifPresent(
                            met -> odds.add(new InkOdds(line, met, record.runs().size())));
        }
        return odds;
    }

    private static Optional<Integer> met(WantLine line, Subject thing, InkAnswer answer, double shotSeconds) {
        InkRecord record = answer.record();
        boolean seen = thing.isSeen() && record.head().strength().measured();
        return switch (line.word()) {
            case "ink_reaches" -> {
                double after = si(line, "after").orElse(0.0);
                double within = si(line, "within").orElse(Target.WITHIN_SHARE * after);
                yield answer.findReaches(thing, part(line).orElse(Subject.Part.TOP))
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
                double time = si(line, "time").orElse(shotSeconds);
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
