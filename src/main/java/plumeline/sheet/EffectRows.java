package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.plan.Kit;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.TankPlace;
import plumeline.plan.When;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;

/// What happens in the shot beside moves: water, what hangs in it, what is let go and on which call, sounds it meets.
final class EffectRows {
    private final Subject subject;
    private final Told told;
    private final List<Rows.Pair> rows = new ArrayList<>();

    private EffectRows(Subject subject) {
        this.subject = subject;
        told = new Told(subject.print());
        subject.shot().findTank().ifPresent(this::tank);
        subject.shot().placed().stream().filter(Placed::isHung).forEach(this::hung);
        subject.shot().placed().stream()
                .filter(placed -> placed.written().has("rig"))
                .forEach(this::rig);
        subject.shot().findRelease().ifPresent(this::release);
        sounds();
    }

    static List<Rows.Pair> of(Subject subject) {
        return new EffectRows(subject).rows;
    }

    private void tank(TankPlace tank) {
        Kit.Inside inside = tank.tank().inside();
        StringBuilder words = new StringBuilder(tank.tank().name() + ", inside ")
                .append(told.quantity(inside.width()))
                .append(" × ")
                .append(told.quantity(inside.depth()))
                .append(" × ")
                .append(told.quantity(inside.height()))
                .append(", panes ")
                .append(told.quantity(tank.tank().pane()));
        tank.water()
                .ifPresent(water ->
                        words.append("; water ").append(told.quantity(water)).append(" above its floor"));
        rows.add(new Rows.Pair("Tank", words + ": see its card."));
    }

    private void hung(Placed placed) {
        String lines = placed.lines().isPresent()
                ? placed.lines().getAsLong() + (placed.lines().getAsLong() == 1 ? " line" : " lines")
                : placed.tied().size() + (placed.tied().size() == 1 ? " line" : " lines")
                        + ", tied where its marks say";
        String held = place(placed, "line.to").map(to -> ", held " + to).orElse("");
        rows.add(new Rows.Pair(placed.name() + " hangs", "on " + lines + held + ": see its card."));
    }

    private void rig(Placed placed) {
        String from = placed.written()
                .findQuantity("rig.from")
                .map(height -> told.quantity(height) + " up its axis")
                .orElse("the middle of its axis");
        rows.add(new Rows.Pair(
                placed.name() + "'s rig",
                "a rod of "
                        + told.quantity(
                                placed.written().findQuantity("rig.diameter").orElseThrow()) + " from "
                        + from + " to what holds it " + place(placed, "rig.to").orElseThrow()
                        + "; it is painted out."));
    }

    private Optional<String> place(Placed placed, String path) {
        List<Quantity> to = placed.written().listQuantities(path);
        return switch (to.size()) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of("at height " + told.quantity(to.getFirst()));
            default -> Optional.of("at " + to.stream().map(told::quantity).collect(Collectors.joining(", ")));
        };
    }

    private void release(Release release) {
        List<String> words = new ArrayList<>();
        words.add(
                switch (release) {
                    case Release.OfInk ink -> "ink " + ink.ink().name();
                    case Release.OfPieces pieces ->
                        count(release) + pieces.piece().name();
                    case Release.OfThing thing -> thing.thing().name() + " is let go";
                });
        add(words, release, "volume", "");
        add(words, release, "bore", "nozzle bore ");
        add(words, release, "squeeze_time", "squeezed for ");
        add(words, release, "speed", "at ");
        add(words, release, "over", "over ");
        add(words, release, "spread", "within a hand of radius ");
        String start = release.findStart().map(this::start).orElse("with the shot's first frame");
        rows.add(new Rows.Pair(
                "Release",
                String.join(", ", words) + "; " + start
                        + (release instanceof Release.OfInk ? ": see the recipe card." : ".")));
        rows.add(new Rows.Pair("Call", "Roll first, then count; let go on three."));
    }

    private static String count(Release release) {
        return release.written().findWord("count").map(count -> count + " × ").orElse("");
    }

    private void add(List<String> words, Release release, String key, String before) {
        release.written().findQuantity(key).ifPresent(value -> words.add(before + told.quantity(value)));
    }

    private String start(Quantity start) {
        return start.kind() == Kind.FRAMES
                ? Print.number(start.value(), 0) + " screen frames after the shot's first"
                : told.quantity(start) + " after the shot's first frame, in real time";
    }

    private void sounds() {
        String sounds = subject.plan().cutList().cues().stream()
                .filter(cue -> cue.sync().shot().name().equals(subject.name()))
                .map(this::sound)
                .collect(Collectors.joining("; "));
        if (!sounds.isEmpty()) {
            rows.add(new Rows.Pair("Sound", sounds + "."));
        }
    }

    private String sound(Plan.Cue cue) {
        String lead = cue.findLead()
                .map(time -> ", begins " + told.quantity(time) + " earlier")
                .orElse("");
        String length =
                cue.findLength().map(time -> ", lasts " + told.quantity(time)).orElse("");
        String followed =
                cue.findFollowed().map(named -> ", follows " + named.name()).orElse("");
        return cue.sound() + " meets " + instant(cue.sync().when()) + lead + length + followed;
    }

    private static String instant(When when) {
        return switch (when) {
            case When.Start() -> "the shot's first frame";
            case When.End() -> "the shot's last frame";
            case When.Whole() -> "the whole shot";
            case When.AtTime(Quantity time) -> time.valueText() + " of real time";
            case When.AtFrame(long frame) -> "screen frame " + (frame + 1);
        };
    }
}
