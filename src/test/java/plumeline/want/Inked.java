package plumeline.want;

import plumeline.plan.Plan;

/// A bottle in a tank with a nozzle ahead of it, judged where its marks are, for the tests of wants on what is let go.
///
/// The water's surface is 268 mm over the table, the bottle's top 70 mm under it, its base 188 mm, its front face at y
/// −21 mm, the front glass's inner face at y −120 mm.
record Inked(Plan plan) implements FirstWant {
    static final double N = Math.log(188.0 / 70) / Math.log(1.9 / 0.4);
    static final String AHEAD = "ink: read, at: [0 mm, -70 mm, 298 mm], start: 0.2 s";
    static final String MIXED = "ink: mixed, volume: 10 ml, bore: 4 mm, squeeze_time: 1 s, at: [0 mm, -70 mm, 258 mm]";

    /// When the front has come so far, by its readings.
    static double seconds(double millimetres) {
        return 0.4 * Math.pow(millimetres / 70, 1 / N);
    }

    private static final String TEXT = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          flacon: {diameter: 42 mm, height: 118 mm, mass: 197 g, displaces: 133.5 ml}
          cork: {diameter: 42 mm, height: 118 mm, mass: 100 g, displaces: 133.5 ml}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, modes: [{rate: 240 fps}]}}
          lenses: {macro: {focal_length: 100 mm}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
          inks:
            read: {front: [[0.40 s, 70 mm], [1.90 s, 188 mm]], spread: 0.20 measured}
            mixed: {density: 1.05 g/ml}
            taught:
              density: 1.05 g/ml
              front: [[0.50 s, 70 mm], [2.00 s, 150 mm]]
              takes: [{volume: 5 ml, density: 1.05 g/ml, bore: 4 mm, squeeze_time: 1 s, height: 30 mm,
                front: [[0.50 s, 70 mm], [2.00 s, 150 mm]]}]
            strong: {density: 1.05 g/ml, strength: 100 /cm measured}
            light: {density: 0.90 g/ml}
          pieces: {berry: {size: 16 mm, mass: 2.6 g}}
        shots:
          one:
            camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 198 mm], aim: ahead, focus: hero}
            tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}
            place: {hero: {thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 2}}
            release: {RELEASE}
            frames: 96
            wants: [WANT]
        """;

    static Inked of(String release, String want) {
        return changed(release, want);
    }

    /// The same with parts of the plan's text replaced: each before what stands in its place.
    static Inked changed(String release, String want, String... partsAndBy) {
        String text = TEXT.replace("RELEASE", release).replace("WANT", want);
        for (int i = 0; i < partsAndBy.length; i += 2) {
            if (!text.contains(partsAndBy[i])) {
                throw new IllegalArgumentException("no " + partsAndBy[i]);
            }
            text = text.replace(partsAndBy[i], partsAndBy[i + 1]);
        }
        return new Inked(Wanted.read(text));
    }

    Want want(Wants.Elsewhere elsewhere) {
        return Wanted.want(plan, elsewhere);
    }
}
