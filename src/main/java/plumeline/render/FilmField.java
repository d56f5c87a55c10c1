package plumeline.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import plumeline.flow.Grid;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.plume.DyeFilm;
import plumeline.plume.DyeFrame;

/// Dye of a simulation's film at a time: what stands in its frames' cells, mixed evenly between two frames, in the
/// smallest box of whole cells that holds it, with a rim of clear cells where the water goes on.
final class FilmField {
    /// Between two frames so many steps are told apart: in each ink goes a small part of a cell.
    private static final int STEPS = 4;

    private static final int FRAMES = 4;
    private static final int FIELDS = 8;

    private final DyeFilm film;
    private final Recent<DyeFrame> frames = new Recent<>(FRAMES);
    private final Recent<Optional<Field>> fields = new Recent<>(FIELDS);

    FilmField(DyeFilm film) {
        this.film = film;
    }

    /// When its last frame's time is over, seconds from the release's start.
    double endSeconds() {
        return film.frames() / film.head().framesPerSecond();
    }

    /// Gives the dye at a time.
    ///
    /// @param seconds from the release's start; past the film's end its last frame stays
    /// @return the dye; empty where there is none yet
    Optional<Field> at(double seconds) {
        double last = film.frames() - 1;
        double frame = Math.clamp(seconds * film.head().framesPerSecond(), 0, Math.max(0, last));
        return film.frames() == 0 ? Optional.empty() : fields.get(Math.round(frame * STEPS), this::make);
    }

    private Optional<Field> make(long step) {
        int number = (int) (step / STEPS);
        double share = (double) (step % STEPS) / STEPS;
        DyeFrame from = frames.get(number, this::read);
        DyeFrame to = share > 0 ? frames.get(number + 1, this::read) : from;
        Span span =
                Span.of(from.box()).with(Span.of(to.box())).rimmed(film.head().grid());
        return span.isEmpty() ? Optional.empty() : Optional.of(mixed(span, from, to, share));
    }

    private DyeFrame read(long number) {
        try {
            return film.frame((int) number);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Field mixed(Span span, DyeFrame from, DyeFrame to, double share) {
        float[] shares = new float[span.across() * span.deep() * span.high()];
        int at = 0;
        for (int k = span.k(); k < span.endK(); k++) {
            for (int j = span.j(); j < span.endJ(); j++) {
                for (int i = span.i(); i < span.endI(); i++) {
                    float first = from.share(i, j, k);
                    shares[at++] = share > 0 ? (float) (first + share * (to.share(i, j, k) - first)) : first;
                }
            }
        }
        return new Field(box(span), span.across(), span.deep(), span.high(), shares);
    }

    private Bounds box(Span span) {
        Grid grid = film.head().grid();
        Vec corner = film.head().corner();
        return new Bounds(
                corner.plus(
                        new Vec(span.i() * grid.dxMetres(), span.j() * grid.dyMetres(), span.k() * grid.dzMetres())),
                corner.plus(new Vec(
                        span.endI() * grid.dxMetres(), span.endJ() * grid.dyMetres(), span.endK() * grid.dzMetres())));
    }

    /// Cells from the first to before the end, each way.
    private record Span(int i, int j, int k, int endI, int endJ, int endK) {
        static Span of(DyeFrame.Box box) {
            return new Span(box.i(), box.j(), box.k(), box.i() + box.ni(), box.j() + box.nj(), box.k() + box.nk());
        }

        boolean isEmpty() {
            return across() < 1 || deep() < 1 || high() < 1;
        }

        int across() {
            return endI - i;
        }

        int deep() {
            return endJ - j;
        }

        int high() {
            return endK - k;
        }

        Span with(Span other) {
            if (isEmpty() || other.isEmpty()) {
                return isEmpty() ? other : this;
            }
            return new Span(
                    Math.min(i, other.i),
                    Math.min(j, other.j),
                    Math.min(k, other.k),
                    Math.max(endI, other.endI),
                    Math.max(endJ, other.endJ),
                    Math.max(endK, other.endK));
        }

        Span rimmed(Grid grid) {
            return isEmpty()
                    ? this
                    : new Span(
                            Math.max(0, i - 1),
                            Math.max(0, j - 1),
                            Math.max(0, k - 1),
                            Math.min(grid.nx(), endI + 1),
                            Math.min(grid.ny(), endJ + 1),
                            Math.min(grid.nz(), endK + 1));
        }
    }
}
