package plumeline.draw;

import java.util.List;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;

/// Plans of one shot, `one`, with every mark set, for drawings.
///
/// @param papers unit of the papers
/// @param camera lens point and aim as a plan has them
/// @param place the shot's `place` lines
/// @param rest further keys of the shot
record MadeSet(String papers, String camera, String place, String rest) {
    private static final String HEAD = """
            plumeline: 1
            film: {title: Sets, rate: 24 fps, papers: %s}
            deliver: {wide: {ratio: "16:9", size: [3840 px, 2160 px]}}
            things:
              can: {diameter: 66 mm, height: 122 mm, body: opaque}
              flacon: {profile: [[0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, 10 mm]], body: opaque}
              carton: {width: 60 mm, depth: 40 mm, height: 90 mm, body: opaque}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, modes: [{rate: 24 fps}]}}
              lenses:
                fifty: {focal_length: 50 mm, nearest: 350 mm, f_numbers: [2, 22], sensor_behind: 71 mm measured}
                macro: {focal_length: 100 mm, nearest: 300 mm, f_numbers: [2.8, 32]}
              lights: {strip: {panel: [100 mm, 400 mm], gives: 4000 lx at 1 m typical}}
              machines: {slider: {travel: 600 mm, speed: 80 mm/s, repeats: 0.1 mm}}
              tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 1 mm, temperature: 20 degC typical}}
              inks:
                rose_ink: {density: 1.03 g/ml typical}
                read_ink: {front: [[0.40 s, 70 mm], [1.90 s, 188 mm]], spread: 0.20 measured}
              pieces: {berry: {size: 16 mm, mass: 2.6 g}}
            shots:
              one:
                frames: 48
                camera: {body: main, %s, rate: 24 fps, shutter: 180 deg}
                place:
            %s    %s
            """;

    static MadeSet of(String camera, String place) {
        return new MadeSet("mm", camera, place, "wants: [{fills: a, height: 10 %}]");
    }

    MadeSet inInches() {
        return new MadeSet("in", camera, place, rest);
    }

    MadeSet with(String keys) {
        return new MadeSet(papers, camera, place, keys);
    }

    FilmAnswer film() {
        return Made.film(HEAD.formatted(papers, camera, place, rest.replace("\n", "\n    ")));
    }

    ShotAnswer shot() {
        return Made.shot(film(), "one");
    }

    /// A line of `place`.
    static String thing(String name, String thing, String rest) {
        return "      " + name + ": {thing: " + thing + ", " + rest + "}\n";
    }

    /// Things in rows of four, 80 mm apart in depth; one of them has a long name.
    static String crowd(int count) {
        StringBuilder lines = new StringBuilder();
        List<String> kinds = List.of("can", "flacon", "carton");
        for (int i = 0; i < count; i++) {
            String name = i == 0 ? "a" : i == 6 ? "the_very_long_name_of_a_flacon_in_this_row_from_the_left" : "b" + i;
            lines.append(
                    thing(name, kinds.get(i % 3), "at: [" + (90 * (i % 4) - 130) + " mm, " + 80 * (i / 4) + " mm]"));
        }
        return lines.toString();
    }

    /// Sets that try the room for labels: 1, 4 and 12 things, near and far, level and from above, millimetres and
    /// inches, with a tank and without.
    static List<MadeSet> many() {
        String near = "lens: macro, at: [0 mm, -300 mm, 160 mm], aim: a, f_number: 8";
        String usual = "lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 11";
        String far = "lens: macro, at: [0 mm, -3000 mm, 300 mm], aim: a, f_number: 22";
        String move = "moves: {slide: {machine: slider, by: [0 mm, 300 mm], in: 2 s, profile: even}}\n"
                + "lights: {key: {light: strip, at: [500 mm, -300 mm, 400 mm]}}\n"
                + "wants: [{sharp: a}, {sharp: a, sharp_to: 4 px}]";
        String tank = "tank: {tank: glass, at: [0 mm, 60 mm], water: 260 mm}\n"
                + "release: {ink: read_ink, volume: 3 ml, at: [0 mm, 0 mm, 298 mm], start: 0.2 s}\n"
                + "wants: [{sharp: a, sharp_to: 1 px}]";
        return List.of(near, usual, far).stream()
                .flatMap(camera -> List.of(1, 4, 12).stream().map(count -> of(camera, crowd(count))))
                .flatMap(set -> List.of(set, set.inInches().with(move), set.with(tank)).stream())
                .toList();
    }
}
