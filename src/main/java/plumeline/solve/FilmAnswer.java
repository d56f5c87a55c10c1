package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import plumeline.plan.Plan;
import plumeline.stage.Stage;
import plumeline.timeline.Timeline;

/// The finding on a film.
///
/// @param plan the plan
/// @param planSha256 SHA-256 of its text and of what lessons put in the place of its values, in hexadecimal
/// @param verdict the worst of its shots and wants
/// @param shots its shots in order
/// @param wants the film's own wants in order
public record FilmAnswer(
        Plan plan, String planSha256, Verdict verdict, List<ShotAnswer> shots, List<WantAnswer> wants) {
    /// Copies the lists.
    public FilmAnswer {
        shots = List.copyOf(shots);
        wants = List.copyOf(wants);
    }

    /// Lists the runs of a shot that the film may show: its passes, and before them the shot itself where the film or a
    /// delivery cuts to it though it has passes; it then stands as its marks are set for the passes.
    ///
    /// @param shot one of the answers
    /// @return one at least
    public List<ShotAnswer.Run> listRuns(ShotAnswer shot) {
        List<ShotAnswer.Run> runs = new ArrayList<>(shot.posed().stages());
        boolean isCut = Timeline.listAll(plan).stream()
                .flatMap(timeline -> timeline.spans().stream())
                .anyMatch(span -> span.shot().equals(shot.shot()) && span.pass().isEmpty());
        if (isCut && runs.stream().noneMatch(run -> run.pass().isEmpty())) {
            runs.addFirst(new ShotAnswer.Run(
                    "", Stage.of(plan, plan.findShot(shot.shot()).orElseThrow())));
        }
        return List.copyOf(runs);
    }
}
