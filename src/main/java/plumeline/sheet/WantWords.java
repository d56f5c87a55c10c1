package plumeline.sheet;

import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.solve.Verdict;

/// What a crew sees when a want breaks, and how it is checked on the set.
final class WantWords {
    private WantWords() {}

    /// Says what shows when a want breaks, to follow "else".
    static String consequence(String word) {
        return switch (word) {
            case "hidden" -> "a sliver shows";
            case "shown" -> "a gap closes";
            case "fills" -> "it fills too little or too much";
            case "sharp" -> "an edge goes soft";
            case "inside" -> "it crosses a frame's edge or a keep-out";
            case "clear" -> "it comes too near something";
            case "off_picture" -> "it comes into the picture";
            case "stays_under" -> "it floats up";
            case "hangs" -> "it hangs askew";
            case "upright" -> "it leans or turns over";
            case "beads_stay" -> "drops run down";
            case "sweats" -> "it stays dry";
            case "stays_dry" -> "it sweats";
            case "line_hidden" -> "the line shows";
            case "tank_carries" -> "a pane or the table breaks";
            case "reaches" -> "the lens or camera can't be set so";
            case "ink_reaches" -> "the ink comes too soon or too late";
            case "clear_until" -> "ink is before it too soon";
            case "veiled_by" -> "it isn't veiled in time";
            case "see_through" -> "the water is too murky";
            case "rises" -> "it comes up too late";
            case "falls_through" -> "it is seen too briefly";
            case "same_size" -> "the two shots don't match in size";
            case "edges" -> "the glass's rims don't stand out";
            default -> "a want fails";
        };
    }

    /// Says how a want is checked on the set.
    static String check(WantLine line, Verdict verdict, boolean isMoving) {
        String at = switch (line.when()) {
            case When.Start() -> "at the start mark";
            case When.End() -> "at the end mark";
            case When.Whole() -> isMoving ? "at start, middle and end" : "in the picture";
            case When.AtTime(var time) -> "at " + time.valueText();
            case When.AtFrame(long frame) -> "at frame " + (frame + 1);
        };
        return switch (line.word()) {
            case "hidden" -> "Look through the lens " + at + ": no sliver beside the front thing.";
            case "shown" -> "Look through the lens " + at + ": background between every two neighbours.";
            case "fills" ->
                "Hold the thing's edges against the frame lines " + at + " and read off its share of the frame.";
            case "sharp" -> "Magnify the nearest front edge and both outer edges at the taking aperture, " + at + ".";
            case "inside" ->
                "Show every delivery's frame lines and keep-outs on the monitor " + at + ": nothing crosses a line.";
            case "clear" ->
                isMoving
                        ? "Run the whole move slowly with one person watching each gap, a hand at the stop."
                        : "Look along each gap from above and from the side.";
            case "off_picture" -> "Move a hand along the named edge " + at + ": the hand stays out of the picture.";
            case "reaches" -> "Focus on it by eye and read rate and aperture off the camera.";
            case "same_size" -> "Lay the other shot's still over the picture: the heights meet.";
            case "tank_carries" ->
                switch (verdict) {
                    case FAILS, UNKNOWN -> "Don't fill it before its card says otherwise.";
                    default -> "Fill slowly, look at every seam, keep the floor under it free.";
                };
            default -> checkLater(line.word());
        };
    }

    private static String checkLater(String word) {
        return switch (word) {
            case "stays_under" -> "Put the filled and closed hero in a bucket the evening before.";
            case "hangs" ->
                "Over a soft mat pull on its line with five times the load; then let it come to rest and look along its"
                        + " edge at a plumb line.";
            case "upright" -> "Let it come to rest and look along its edge at a plumb line.";
            case "beads_stay" -> "Spray a spare in the shot's light and wait ten minutes.";
            case "sweats", "stays_dry" -> "Read the probe on it and the hygrometer beside it, lamps on.";
            case "line_hidden" -> "Shoot a few frames and magnify: no line.";
            case "ink_reaches", "clear_until", "veiled_by", "rises", "falls_through" ->
                "Shoot one test take and count frames.";
            case "see_through" -> "Look along the water at a white card behind it, beside last take's still.";
            case "lit", "even", "ratio", "dark", "steady_light" -> "Meter at the thing at the taking rate and shutter.";
            case "edges" -> "Eye at the lens, room dark: look at both rims, and shoot a still to count their width.";
            case "highlight", "no_highlight", "no_shadow" -> "Eye at the lens: look where it lies on the thing.";
            case "smear" -> "Stop one take where it is fastest and count how far an edge is drawn out.";
            case "judder_free" -> "Play a take at the film's speed on the largest monitor: no stutter.";
            case "whole_frames" -> "Read rate and mode off the camera.";
            case "reachable" -> "Run the whole move once at speed, camera and cables on, a hand at the stop.";
            case "registers", "holds_still", "matched" ->
                "Lay first, middle and last frames of both passes over each other.";
            case "readable" -> "Read it aloud off the monitor while the move runs.";
            case "flash_safe" -> "Count light and dark pairs in the worst second before anyone watches the cut.";
            case "on_beat" -> "Play the cut with the track and look at the last hit.";
            case "sharp_enough" -> "Look at a take at full size in every delivery's crop.";
            default -> "Shoot a short test and look at it.";
        };
    }
}
