package plumeline.cli.ink;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import plumeline.plan.WantLine;
import plumeline.plume.InkOdds;
import plumeline.plume.InkRecord;
import plumeline.plume.InkShot;
import plumeline.plume.InkTries;
import plumeline.plume.Subject;
import plumeline.plume.Times;

/// What `ink` has to say.
///
/// @param of the shot or pass it is of
/// @param tries its tries
/// @param record what they say
/// @param files where the record is kept, the films beside it
record InkAnswer(InkChoice of, InkTries tries, InkRecord record, Path files) {
    /// A thing that as cells is so much smaller or larger is said to be.
    private static final double MOST_OFF = 0.2;

    /// What was taken for what isn't written, and which things the cells show badly.
    List<String> assumed() {
        List<String> assumed = new ArrayList<>(of.assumed());
        for (InkShot.Thing thing : tries.planned().things()) {
            double size = tries.planned().sizeInCells(thing, tries.grid());
            if (Math.abs(size - 1) > MOST_OFF) {
                assumed.add(String.format(
                        Locale.ROOT,
                        "%s as cells of %.1f mm, which come to %.0f %% of its size; finer --cells show the flow"
                                + " round it better",
                        thing.name(),
                        1e3 * tries.course().cellMetres(),
                        100 * size));
            }
        }
        return assumed;
    }

    /// When the front is at a part of a thing; no front that goes down comes to what the nozzle's mouth is under.
    Optional<Times> findReaches(Subject subject, Subject.Part part) {
        return record.findReaches(subject.at(part).zMetres(), mouthMetres());
    }

    private double mouthMetres() {
        return tries.planned().pour().mouth().z();
    }

    /// In how many tries the wants of this shot or pass were met.
    List<InkOdds> odds() {
        List<WantLine> wants = of.shot().wants().stream()
                .filter(line -> line.pass().map(of.passes()::contains).orElse(true))
                .toList();
        return InkOdds.of(wants, of.stage(), record, mouthMetres());
    }

    /// What each try had of what is written with a ±.
    ///
    /// @return for each such value those of the tries, in their order
    List<List<InkShot.Spread>> drawn() {
        List<List<InkShot.Spread>> drawn = record.runs().stream()
                .map(run -> tries.task(run.number()).shot().spreads())
                .toList();
        return IntStream.range(0, tries.planned().spreads().size())
                .mapToObj(n -> drawn.stream().map(each -> each.get(n)).toList())
                .toList();
    }
}
