package plumeline.sheet;

import java.util.Locale;

/// A long film, always the same: shots of three kinds in turn, each with figures of its own.
public final class SixtyShots {
    private static final String HEAD = """
        plumeline: 1
        film: {title: A long film, rate: 24 fps, papers: mm}
        deliver:
          wide: {ratio: "16:9", size: [3840 px, 2160 px]}
          phone: {ratio: "9:16", size: [1080 px, 1920 px], keep_out: {top: 14 %, bottom: 20 %, right: 12 %}}
        things:
          can: {diameter: 66 mm, height: 122 mm, body: opaque}
          box: {width: 80 mm, height: 120 mm, depth: 30 mm}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 120 fps}]
              iso: {base: 800, highest: 3200}
          lenses:
            fifty: {focal_length: 50 mm, nearest: 350 mm, f_numbers: [2, 22]}
            macro: {focal_length: 100 mm, nearest: 300 mm, f_numbers: [2.8, 32]}
          machines:
            slider: {travel: 600 mm, speed: 80 mm/s, acceleration: 200 mm/s2 typical, repeats: 0.1 mm}
        shots:
        """;

    /// A free distance, found by size; sharpness beside it.
    private static final String SIZED = """
          s%1$d:
            camera: {body: main, lens: macro, at: [0 mm, free, 61 mm],
              aim: hero, f_number: 8, rate: 24 fps, shutter: 180 deg}
            place: {hero: {thing: can, at: [0 mm, 0 mm]}, back: {thing: box, at: [%2$d mm, 200 mm]}}
            frames: 48
            wants: [{fills: hero, height: %3$d %%}, {sharp: hero, sharp_to: 4 px}, {inside: wide, of: hero}]
        """;

    /// A free place behind something, and a slide.
    private static final String HIDDEN = """
          s%1$d:
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 61 mm],
              aim: ahead, f_number: 11, rate: 24 fps, shutter: 180 deg}
            place: {hero: {thing: can, at: [0 mm, 0 mm]},
              back: {thing: can, at: [free, free between 100 mm and 400 mm]}}
            moves: {slide: {machine: slider, by: [-%2$d mm, 0 mm], in: 4 s, profile: even}}
            wants: [{hidden: back, behind: hero, when: start}, {clear: all, by: 20 mm}]
        """;

    /// Everything given.
    private static final String GIVEN = """
          s%1$d:
            camera: {body: main, lens: macro, at: [0 mm, -1000 mm, 61 mm],
              aim: hero, f_number: 11, rate: 24 fps, shutter: 180 deg}
            place: {hero: {thing: box, at: [0 mm, 0 mm], turn: %1$d deg}}
            frames: 72
            wants: [{fills: hero, height: 40 %%, or: more}, {reaches: camera}]
        """;

    private SixtyShots() {}

    /// Makes a plan of so many shots, named `s0`, `s1` and so on.
    ///
    /// @param shots how many
    /// @return the plan's text
    public static String of(int shots) {
        StringBuilder text = new StringBuilder(HEAD);
        for (int i = 0; i < shots; i++) {
            text.append(
                    switch (i % 3) {
                        case 0 -> String.format(Locale.ROOT, SIZED, i, 60 + i, 50 + i % 20);
                        case 1 -> String.format(Locale.ROOT, HIDDEN, i, 200 + i);
                        default -> String.format(Locale.ROOT, GIVEN, i);
                    });
        }
        return text.append("wants: [{inside: [wide, phone]}]\n").toString();
    }
}
