package plumeline.cli;

import java.nio.file.Path;
import java.util.List;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plume.InkRecord;

/// What `ink` has to say.
///
/// @param plan the plan
/// @param shot the shot
/// @param record what its runs say
/// @param assumed what was taken for what isn't written, each in a few words
/// @param folder where it is kept
/// @param cells how many cells there are along each axis
record InkAnswer(Plan plan, Shot shot, InkRecord record, List<String> assumed, Path folder, List<Integer> cells) {
    InkAnswer {
        assumed = List.copyOf(assumed);
        cells = List.copyOf(cells);
    }
}
