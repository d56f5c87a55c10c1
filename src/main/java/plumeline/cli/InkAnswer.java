package plumeline.cli;

import java.nio.file.Path;
import java.util.List;
import plumeline.plume.InkRecord;
import plumeline.plume.InkShot;
import plumeline.plume.InkTries;

/// What `ink` has to say.
///
/// @param of the shot or pass it is of
/// @param tries its tries
/// @param record what they say
/// @param files where the record is kept, the films beside it
record InkAnswer(InkChoice of, InkTries tries, InkRecord record, Path files) {
    /// What each try had of what is written with a ±.
    ///
    /// @return for each such value those of the tries, in their order
    List<List<InkShot.Spread>> drawn() {
        List<List<InkShot.Spread>> drawn = record.runs().stream()
                .map(run -> tries.task(run.number()).shot().spreads())
                .toList();
        return java.util.stream.IntStream.range(0, tries.planned().spreads().size())
                .mapToObj(n -> drawn.stream().map(each -> each.get(n)).toList())
                .toList();
    }
}
