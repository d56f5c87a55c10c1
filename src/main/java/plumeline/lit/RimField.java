package plumeline.lit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import plumeline.light.Emitter;
import plumeline.mirror.Spans.Span;
import plumeline.rim.GlassView;

/// What of a shot's lamps is seen through clear glass across its outline, at one height.
///
/// @param sources the lamps that may be seen
record RimField(List<Source> sources) {
    /// So near to the very edge little comes through, and what is seen there isn't held against a rim.
    private static final double SKIN_SHARE = 0.02;

    private static final double AXIS_SHARE = 0.5;

    /// Where a rim is looked for that isn't there: from the edge so far in.
    private static final double RIM_SHARE = 0.1;

    /// The middle is this much of the width.
    private static final double MIDDLE_SHARE = 0.1;

    /// Two stops part what is dark from what is bright.
    private static final double TWO_STOPS = 4;

    /// Places of a part that are looked at for how far off a light is.
    private static final int LOOKS = 8;

    /// Nearer to the edge sight hardly gets through.
    static final double GRAZING_SHARE = 0.01;

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
                .map(one -> one.name.equals(source.name) ? new Source(source.name, emitter, source.view) : one)
                .toList());
    }

    /// The luminance that the middle shows, cd/m².
    private double middle() {
        return sources.stream()
                        .mapToDouble(source -> source.view.brightness(source.emitter, from(), 1 - from()))
                        .sum()
                / MIDDLE_SHARE;
    }

    /// Whether the middle sees a light itself.
    boolean isMiddleLit() {
        return middle() > 0;
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
            double least = switch (rims) {
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
    /// @param left share of the width that the left rim is as wanted over; below 0 where it isn't at all, by how
    /// far off a light is, share of half a turn
    /// @param right the right one
    /// @param middle for dark rims by how much more than half of the middle is bright, and below -0.5 by how far
    /// off a light is; else 0.5
    record Found(double left, double right, double middle) {}

    /// Measures the rims. A rim is as wide as most is won going in from the edge to the axis, what is as wanted less
    /// what isn't, the skin apart: so a stripe that stands off the edge is none, and no width jumps where a stripe
    /// opens.
    Found measure(List<Stretch> bright, Rims rims) {
        List<Span> spans = joined(bright.stream().map(Stretch::span).toList());
        List<Span> turned = spans.reversed().stream()
                .map(span -> new Span(1 - span.to(), 1 - span.from()))
                .toList();
        return new Found(
                rim(spans, rims, 0, RIM_SHARE),
                rim(turned, rims, 1, 1 - RIM_SHARE),
                switch (rims) {
                    case DARK -> middle(wide(spans, from(), 1 - from()) / MIDDLE_SHARE);
                    case BRIGHT -> 0.5;
                });
    }

    private double rim(List<Span> bright, Rims rims, double edge, double inner) {
        double most = 0;
        for (Span span : bright) {
            most = Math.max(most, won(bright, rims, Math.min(AXIS_SHARE, rims == Rims.DARK ? span.from() : span.to())));
        }
        most = Math.max(most, won(bright, rims, AXIS_SHARE));
        return most > 0
                ? most
                : switch (rims) {
                    case DARK -> -Math.max(0, within(edge, inner).min().orElse(0)) / Math.PI;
                    case BRIGHT -> Math.min(0, within(edge, inner).max().orElse(-Math.PI)) / Math.PI;
                };
    }

    /// What is as wanted from the edge in, less what isn't from the skin in.
    private static double won(List<Span> bright, Rims rims, double to) {
        double all = wide(bright, 0, to);
        double inner = wide(bright, SKIN_SHARE, to);
        double under = Math.max(0, to - SKIN_SHARE);
        return switch (rims) {
            case DARK -> to - all - inner;
            case BRIGHT -> all - (under - inner);
        };
    }

    private double middle(double bright) {
        return bright > 0
                ? bright - 0.5
                : Math.min(0, within(from(), 1 - from()).max().orElse(-Math.PI)) / Math.PI - 0.5;
    }

    /// How far within the nearest light sight is, rad, at some places across.
    private DoubleStream within(double from, double to) {
        return IntStream.rangeClosed(0, LOOKS).mapToDouble(look -> {
            double share = Math.clamp(from + (to - from) * look / LOOKS, GRAZING_SHARE, 1 - GRAZING_SHARE);
            return sources.stream()
                    .mapToDouble(source -> source.view.insideRadians(source.emitter, share))
                    .max()
                    .orElse(-Math.PI);
        });
    }

    private static List<Span> joined(List<Span> spans) {
        List<Span> joined = new ArrayList<>();
        for (Span span : spans) {
            Span last = joined.isEmpty() ? new Span(-1, -1) : joined.getLast();
            if (span.from() <= last.to()) {
                joined.set(joined.size() - 1, new Span(last.from(), Math.max(last.to(), span.to())));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    private static double wide(List<Span> spans, double from, double to) {
        return spans.stream()
                .mapToDouble(span -> Math.max(0, Math.min(to, span.to()) - Math.max(from, span.from())))
                .sum();
    }
}
