package plumeline.cli;

import java.util.List;
import plumeline.assemble.SetPainter;
import plumeline.assemble.Wanted;
import plumeline.solve.FilmAnswer;

/// Makes solved shots ready to be drawn, with what lies beside their plan.
final class ShotPictures {
    private ShotPictures() {}

    /// The painter of some pictures; says what was taken for granted.
    static SetPainter painter(
            FilmAnswer film, List<Wanted> wanted, String plan, PictureOptions options, Console console) {
        List<String> names = wanted.stream().map(Wanted::name).distinct().toList();
        SetPainter painter = SetPainter.of(
                film, names, (_, _) -> SetPainter.Beside.NOTHING, options.samples(), options.seed());
        painter.assumed().forEach(each -> console.say("plumeline: " + each));
        return painter;
    }
}
