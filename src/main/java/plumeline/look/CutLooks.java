package plumeline.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plumeline.plan.Plan;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// A look as the film shows it, between two cuts.
///
/// @param shot the shot's name
/// @param pass the pass; empty for the shot itself
/// @param frames how long it is seen, screen frames, ≥ 1
public record CutLooks(String shot, String pass, long frames) {
    /// Lists the looks of a timeline. A look that goes on over a cut is one.
    ///
    /// @param timeline the film's, or a cut-down's
    /// @return the looks in their order
    public static List<CutLooks> of(Timeline timeline) {
        List<CutLooks> all = new ArrayList<>();
        for (Span span : timeline.spans()) {
            boolean goesOn = !all.isEmpty()
                    && all.getLast().shot.equals(span.shot())
                    && all.getLast().pass.equals(span.pass());
            long before = goesOn ? all.removeLast().frames : 0;
            all.add(new CutLooks(span.shot(), span.pass(), before + span.frames()));
        }
        return all;
    }

    /// Finds where a film, or one of its cut-downs, cuts between some looks of a shot and nothing else.
    ///
    /// @param plan the plan
    /// @param shot the shot's name
    /// @param passes its passes
    /// @return stretches of two looks or more, in the film's order
    public static List<List<CutLooks>> between(Plan plan, String shot, Set<String> passes) {
        List<List<CutLooks>> stretches = new ArrayList<>();
        for (Timeline timeline : Timeline.listAll(plan)) {
            List<CutLooks> now = new ArrayList<>();
            for (CutLooks look : of(timeline)) {
                if (look.shot.equals(shot) && passes.contains(look.pass)) {
                    now.add(look);
                } else {
                    stretches.add(List.copyOf(now));
                    now.clear();
                }
            }
            stretches.add(now);
        }
        return stretches.stream().filter(stretch -> stretch.size() > 1).toList();
    }
}
