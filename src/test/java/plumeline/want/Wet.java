package plumeline.want;

import plumeline.plan.Plan;

/// One thing in a tank, judged where its marks are, for the tests of wants on water.
record Wet(Plan plan) implements FirstWant {
    private static final String TEXT = """
        plumeline: 1
        film: {rate: 24 fps, air: {temperature: 20 degC, humidity: 50 %}}
        things:
          product: {THING}
          screen: {width: 60 mm, depth: 10 mm, height: 290 mm, body: opaque}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {macro: {focal_length: 100 mm}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
          table: {size: [1200 mm, 800 mm]}
        shots:
          one:
            camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 139 mm], aim: ahead, focus: hero}
            tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}
            place: {hero: {thing: product, at: [0 mm, 0 mm, 80 mm], PLACED}}
            wants: [WANT]
        """;

    /// A flacon of which mass, volume and both centres were measured.
    static final String MEASURED =
            "diameter: 42 mm, height: 118 mm, mass: 197 g, displaces: 133.5 ml, centre_of_mass: 48 mm,"
                    + " centre_of_volume: 56 mm";

    static Wet of(String thing, String placed, String want) {
        return changed(thing, placed, want, "", "");
    }

    /// The same with a part of the plan's text replaced.
    static Wet changed(String thing, String placed, String want, String part, String by) {
        String text = TEXT.replace("THING", thing)
                .replace(", PLACED", placed.isEmpty() ? "" : ", " + placed)
                .replace("WANT", want);
        if (!text.contains(part)) {
            throw new IllegalArgumentException("no " + part);
        }
        return new Wet(Wanted.read(part.isEmpty() ? text : text.replace(part, by)));
    }
}
