package plumeline.cut.mask;

import plumeline.plan.Release;

/// What is let go in a shot, as a clean plate has to do with it.
final class LetGo {
    private LetGo() {}

    /// How things must be when the plate is recorded, to be read after "the take".
    static String before(Release release) {
        return switch (release) {
            case Release.OfInk _ -> "in clean water, before any ink is in it: after the take the water is stained";
            case Release.OfPieces _ -> "before any piece is let go: after the take they lie about";
            case Release.OfThing thing ->
                "before " + thing.thing().name()
                        + " is let go and with it out of the picture: after the take nothing lies or"
                        + " stands as it did";
        };
    }

    /// What no plate mends.
    static String across(Release release) {
        String what = switch (release) {
            case Release.OfInk _ -> "ink goes";
            case Release.OfPieces _ -> "pieces go";
            case Release.OfThing thing -> thing.thing().name() + ", or what it throws up, goes";
        };
        return "Where " + what + " behind or before what is painted out, the plate, which has none of it, mends"
                + " nothing: paint from the same place in neighbouring frames there.";
    }
}
