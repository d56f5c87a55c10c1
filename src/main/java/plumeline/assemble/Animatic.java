package plumeline.assemble;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumeline.clip.PictureTrack;
import plumeline.cut.cue.GuideTrack;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.render.Pixels;
import plumeline.solve.FilmAnswer;
import plumeline.sound.Guide;
import plumeline.sound.Sound;
import plumeline.time.Timecode;
import plumeline.timeline.Laid;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// A film in pictures: every frame as its timeline has it, from pictures of its shots' cameras that are handed in.
///
/// A frame shows its shot's recorded frame whole, laid as the delivery crops and reframes it; then overlays, titles,
/// and last the counters that were asked for.
public final class Animatic {
    /// A guide track of more would be larger than memory.
    private static final double LONGEST_SECONDS = 1200;

    private final FilmAnswer film;
    private final Timeline timeline;
    private final Screen screen;
    private final Additions additions;
    private final Framed framed;
    private final Overlays overlays;
    private final Optional<Titles> titles;
    private final Optional<Timecode> timecode;
    private final Optional<Counter> counter;

    /// Whether frame number and timecode are burnt in.
    public enum Counters {
        /// They are.
        BURNT_IN,
        /// They aren't.
        NONE
    }

    /// What is added to the cameras' pictures.
    ///
    /// @param overlays pictures of overlays by the overlay's name, those that there are
    /// @param language the titles' language; none are shown without
    /// @param lettering who letters them
    /// @param counters whether frames are counted in the picture
    public record Additions(
            Map<String, PictureTrack> overlays, Optional<String> language, Lettering lettering, Counters counters) {
        /// Copies the map.
        public Additions {
            overlays = Map.copyOf(overlays);
        }
    }

    /// Who has pictures of cameras.
    @FunctionalInterface
    public interface Source {
        /// Gives a picture.
        ///
        /// @param wanted which
        /// @return the part of it that the view keeps
        /// @throws IOException where it can't be read
        Pixels picture(Wanted wanted) throws IOException;
    }

    private Animatic(
            FilmAnswer film, Timeline timeline, Optional<Delivery> delivery, Screen screen, Additions additions) {
        this.film = film;
        this.timeline = timeline;
        this.screen = screen;
        this.additions = additions;
        framed = new Framed(film, timeline, delivery, screen);
        overlays = new Overlays(film.plan(), timeline, screen, additions.overlays());
        titles = additions
                .language()
                .map(language -> new Titles(film.plan(), timeline, delivery, language, screen, additions.lettering()));
        timecode = film.plan().film().findTimecode();
        counter = additions.counters() == Counters.BURNT_IN
                ? Counter.of(screen.width(), screen.height(), findLabel(0))
                : Optional.empty();
    }

    /// Prepares a film.
    ///
    /// @param film the findings on its shots, those of the timeline at least
    /// @param timeline what it shows, one frame at least
    /// @param delivery the delivery as which its pictures lie; else all that the cameras see
    /// @param screen its size and where the delivery's picture lies in it
    /// @param additions what is added
    /// @return the film
    public static Animatic of(
            FilmAnswer film, Timeline timeline, Optional<Delivery> delivery, Screen screen, Additions additions) {
        return new Animatic(film, timeline, delivery, screen, additions);
    }

    /// Gives the ratio that a film has by itself.
    ///
    /// @param plan the plan
    /// @param timeline what it shows, one frame at least
    /// @param delivery the delivery as which its pictures lie
    /// @return width over height: the delivery's, else that of what its first camera sees
    public static double aspect(Plan plan, Timeline timeline, Optional<Delivery> delivery) {
        return Framed.aspect(plan, timeline, delivery);
    }

    /// Gives how long it is.
    ///
    /// @return frames
    public long frames() {
        return timeline.frames();
    }

    /// Lists the pictures that it is made of, each once.
    ///
    /// @return in the order in which they are first seen
    public List<Wanted> listWanted() {
        Set<Wanted> all = new LinkedHashSet<>();
        for (Span span : timeline.spans()) {
            for (long frame = span.first(); frame < span.past(); frame++) {
                all.add(wanted(span, frame));
            }
        }
        return List.copyOf(all);
    }

    private Wanted wanted(Span span, long frame) {
        Framed.Run run = framed.run(span.name());
        return Wanted.of(span.shot(), run.stage(), span.played(), span.shotFrameAt(frame), run.view());
    }

    /// Makes a frame.
    ///
    /// @param frame the film's frame
    /// @param source who has its camera's picture
    /// @return a number a pixel, `red · 65536 + green · 256 + blue`, rows from the top
    /// @throws IOException what the source throws
    public int[] picture(long frame, Source source) throws IOException {
        Span span = timeline.findSpan(frame).orElseThrow();
        Wanted wanted = wanted(span, frame);
        int[] packed = new int[screen.width() * screen.height()];
        framed.lay(span, frame)
                .write(
                        source.picture(wanted),
                        wanted.view().kept().left(),
                        wanted.view().kept().top(),
                        wanted.view(),
                        screen,
                        packed);
        overlays.lay(frame, packed);
        titles.ifPresent(all -> all.letter(frame, packed));
        counter.ifPresent(one -> one.burn(frame, findLabel(frame), packed));
        return packed;
    }

    /// Finds the timecode of a frame.
    ///
    /// @param frame the film's frame
    /// @return its label; empty where its rate has none
    public Optional<String> findLabel(long frame) {
        return timecode.map(labels -> labels.label(film.plan().film().startFrame() + frame));
    }

    /// Gives what is heard: its guide track, in two channels, as long as the film.
    ///
    /// @return the sound; silence where the film is longer than 20 minutes
    public Sound sound() {
        return hasGuide()
                ? GuideTrack.of(film, timeline).guide().sound()
                : new Silence(Guide.grid(timeline.rate()).sample(timeline.frames()));
    }

    private boolean hasGuide() {
        return timeline.rate().secondsOf((double) timeline.frames()) <= LONGEST_SECONDS;
    }

    /// Tells what isn't shown or heard as the plan has it.
    ///
    /// @return sentences
    public List<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        for (Laid<Plan.Overlay> laid : Laid.listOverlays(film.plan(), timeline)) {
            if (laid.what().findFile().isEmpty()) {
                notes.add("The overlay " + laid.what().name() + " isn't laid on: it has no file yet.");
            }
        }
        titles.ifPresent(all -> notes.addAll(all.unfit()));
        if (!hasGuide()) {
            notes.add("It is silent: a guide track is made for 20 minutes at most.");
        }
        if (additions.counters() == Counters.BURNT_IN && counter.isEmpty()) {
            notes.add("Frame number and timecode aren't burnt in: " + screen.width() + "x" + screen.height()
                    + " is too small for them; " + Counter.smallest(findLabel(0)) + " is the least.");
        }
        if (screen.hasBars()) {
            notes.add("Its size has another ratio than the delivery: there are black bars.");
        }
        return List.copyOf(notes);
    }
}
