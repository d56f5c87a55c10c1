package plumeline.cut.list;

import plumeline.timeline.Clip;

/// The frames of a clip that an event of a list asks for, by their labels.
///
/// They are those that a reader goes through by the event's length and speed, one at least. A speed in tenths, and an
/// end that is exclusive, may ask for some that the clip doesn't have: of an event that names its speed those are left
/// out. An event at the film's own rate is as long in the source as in the film; it stays whole.
///
/// @param range the frames
/// @param before how many were left out before the clip's first
/// @param after how many after its last
record Asked(Takes.Needed range, long before, long after) {
    static Asked of(Step step, Clip clip, double readPerSecond) {
        long from = clip.goFrame() + step.sourceFrame();
        long frames = Math.max(1, Step.moved(step.frames(), Math.abs(readPerSecond), step.rate()));
        long first = readPerSecond < 0 ? from - frames + 1 : from;
        long past = first + frames;
        if (step.isPlain()) {
            return new Asked(new Takes.Needed(first, past), 0, 0);
        }
        // No label comes before the clock's first. The frame shown first is asked for, be it there or not.
        long least = Math.min(from, clip.isMissing() ? 0 : Math.max(0, clip.startFrame()));
        long most = Math.max(from + 1, clip.startFrame() + clip.frames().orElse(Long.MAX_VALUE / 2));
        Takes.Needed kept = new Takes.Needed(Math.max(first, least), Math.min(past, most));
        return new Asked(kept, kept.first() - first, past - kept.past());
    }

    /// How many were left out.
    long leftOut() {
        return before + after;
    }
}
