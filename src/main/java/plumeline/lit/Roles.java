package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.quantity.Print;
import plumeline.stage.Stage;

/// What the wants of a shot ask of its lamps.
public final class Roles {
    private Roles() {}

    /// Lists what is asked of a lamp.
    ///
    /// @param stage the shot
    /// @param lamp index of the lamp
    /// @return phrases such as `key on hero, 2 stops over fill`, `to be mirrored in hero at 30 % from the left`
    public static List<String> list(Stage stage, int lamp) {
        List<String> roles = new ArrayList<>();
        for (WantLine line : stage.shot().wants()) {
            String asked = asked(line, stage, lamp);
            if (!asked.isEmpty()) {
                roles.add(asked
                        + when(line.when())
                        + line.pass().map(pass -> " in pass " + pass).orElse(""));
            }
        }
        return roles;
    }

    private static String asked(WantLine line, Stage stage, int lamp) {
        String lampName = stage.shot().lights().get(lamp).name();
        return switch (line.word()) {
            case "ratio" ->
                LightMeasures.ratio(line, stage) instanceof LightMeasures.Reading.Of(Ratio ratio)
                        ? ratio(ratio, stage.shot(), lamp)
                        : "";
            case "highlight" ->
                line.subjects().getFirst().name().equals(lampName)
                        ? mirrored(LightMeasures.highlight(line, stage))
                        : "";
            case "no_highlight" ->
                line.subjects().getFirst().name().equals(lampName)
                                && LightMeasures.noHighlight(line, stage)
                                        instanceof LightMeasures.Reading.Of(NoHighlight none)
                        ? "not to be seen in "
                                + String.join(
                                        ", ",
                                        none.on().stream().map(Mirrors::name).toList())
                        : "";
            default -> "";
        };
    }

    private static String ratio(Ratio ratio, Shot shot, int lamp) {
        String on =
                " on " + ratio.on().name() + ", " + Amounts.stops(ratio.wanted().stops());
        if (lamp == ratio.key()) {
            return "key" + on + " over " + shot.lights().get(ratio.fill()).name();
        }
        return lamp == ratio.fill()
                ? "fill" + on + " under " + shot.lights().get(ratio.key()).name()
                : "";
    }

    private static String mirrored(HighlightAt highlight) {
        HighlightAt.Wished wished = highlight.wished();
        return "to be mirrored in " + highlight.on().name() + " at " + Print.share(wished.fromLeft(), 1)
                + " from the left"
                + (wished.wide().isPresent() ? ", " + Print.share(wished.wide().getAsDouble(), 1) + " wide" : "");
    }

    private static String when(When when) {
        return switch (when) {
            case When.Start _ -> ", at the start";
            case When.End _ -> ", at the end";
            case When.Whole _ -> "";
            case When.AtTime(var time) -> ", at " + time.valueText();
            case When.AtFrame(long frame) -> ", at frame " + (frame + 1);
        };
    }
}
