package plumeline.lit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.light.Emitter;
import plumeline.mirror.Spans.Span;
import plumeline.rim.GlassView;

/// What of a shot's lamps is seen through clear glass across its outline, at one height.
///
/// @param sources the lamps that may be seen
record RimField(List<Source> sources) {
    /// A rim lies in the outer third of the outline.
    static final double RIM_SHARE = 1 / 3.0;

    /// The middle is this much of the width.
    private static final double MIDDLE_SHARE = 0.1;

    /// Two stops part what is dark from what is bright.
    private static final double TWO_STOPS = 4;

    RimField {
        sources = List.copyOf(sources);
    }

    /// A lamp.
    ///
    /// @param name its name
    /// @param emitter what shines, of more than no luminance
    /// @param view the glass, past all that stands between it and this lamp
    record Source(String name, Emitter emitter, GlassView view) {}

    /// Which rims are wanted.
    enum Rims {
        /// Two stops or more under the middle.
        DARK,
        /// Two stops or more over the middle, and no more than two under what the lamp itself would show.
        BRIGHT
    }

    /// A stretch in which a lamp is seen.
    ///
    /// @param name the lamp's
    /// @param span where, shares of the width
    record Stretch(String name, Span span) {}

    /// The same with another form of one lamp.
    RimField with(Source source, Emitter emitter) {
        return new RimField(sources.stream()
                .map(one -> one == source ? new Source(source.name, emitter, source.view) : one)
                .toList());
    }

    /// The luminance that the middle shows, cd/m².
    private double middle() {
        return sources.stream()
                        .mapToDouble(source -> source.view.brightness(source.emitter, from(), 1 - from()))
                        .sum()
                / MIDDLE_SHARE;
    }

    private static double from() {
        return (1 - MIDDLE_SHARE) / 2;
    }

    /// Lists what counts as bright.
    List<Stretch> listBright(Rims rims) {
        double middle = middle();
        List<Stretch> stretches = new ArrayList<>();
        for (Source source : sources) {
            double luminance = source.emitter.luminance();
            double least =
                    switch (rims) {
                        case DARK -> middle / TWO_STOPS / luminance;
                        case BRIGHT -> Math.max(1 / TWO_STOPS, TWO_STOPS * middle / luminance);
                    };
            source.view.listStretches(source.emitter, least, 0, 1).stream()
                    .map(span -> new Stretch(source.name, span))
                    .forEach(stretches::add);
        }
        stretches.sort(Comparator.comparingDouble(stretch -> stretch.span.from()));
        return stretches;
    }

    /// How wide the rims are, and how well the middle suits them.
    ///
    /// @param left share of the width that is as wanted in the left third
    /// @param right in the right third
    /// @param middle for dark rims by how much more than half of the middle is bright, -0.5 to 0.5; else 0.5
    record Found(double left, double right, double middle) {}

    /// Measures the rims.
    static Found measure(List<Stretch> bright, Rims rims) {
        double left = wide(bright, 0, RIM_SHARE);
        double right = wide(bright, 1 - RIM_SHARE, 1);
        return switch (rims) {
            case DARK ->
                new Found(
                        RIM_SHARE - left,
                        RIM_SHARE - right,
                        wide(bright, from(), 1 - from()) / MIDDLE_SHARE - 0.5);
            case BRIGHT -> new Found(left, right, 0.5);
        };
    }

    private static double wide(List<Stretch> bright, double from, double to) {
        return bright.stream()
                .mapToDouble(stretch -> Math.max(
                        0, Math.min(to, stretch.span.to()) - Math.max(from, stretch.span.from())))
                .sum();
    }
}
