package plumeline.cli.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plumeline.assemble.Animatic;
import plumeline.assemble.Lettering;
import plumeline.assemble.Screen;
import plumeline.assemble.Wanted;
import plumeline.clip.Clips;
import plumeline.clip.Movie;
import plumeline.clip.PictureTrack;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.FilesBeside;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.TimeLeft;
import plumeline.desk.Usage;
import plumeline.jobs.Stop;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.press.LetteredLine;
import plumeline.render.Pixels;
import plumeline.solve.FilmAnswer;
import plumeline.timeline.Laid;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// `animatic PLAN`: the film in pictures, with its guide track, as an MP4 file.
public final class AnimaticCommand implements Command {
    private static final int LONGER = 640;
    private static final int SHORTER = 360;

    /// A new one, which has done nothing yet.
    public AnimaticCommand() {}

    @Override
    public Usage usage() {
        var options = new ArrayList<Usage.Option>();
        options.add(Usage.valued(
                "--delivery",
                "NAME",
                "Shows this delivery: its cut, crop and reframing; else the film's"
                        + " cut as its first delivery frames it."));
        options.addAll(PictureOptions.options("Makes it so large; else within 640x360, in the delivery's ratio."));
        options.add(
                Usage.flag("--burn-in", "Burns frame number and timecode into the upper left corner of every frame."));
        options.add(
                Usage.valued("--language", "NAME", "Shows the titles of this language; else of the first written."));
        options.add(Usage.flag("--no-titles", "Shows no titles."));
        options.add(Usage.valued(
                "--out", "FILE", "Writes this file; else PLAN.mp4 or PLAN.DELIVERY.mp4, beside the plan."));
        return new Usage(
                "animatic",
                "Draws the film frame by frame, with its guide track, as an MP4 file.",
                "PLAN",
                1,
                1,
                options,
                List.of("animatic examples/fernhollow.yaml --delivery phone --burn-in"));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        return DrawnPlan.read(given, console, drawn -> make(drawn, given, console));
    }

    private static Outcome make(DrawnPlan drawn, Arguments given, Console console) throws Refusal, IOException {
        Plan plan = drawn.plan();
        Shown shown = Shown.of(plan, given.findValue("--delivery"));
        Optional<String> language = language(plan, given, shown, console);
        Path out = out(given, drawn.name(), shown);
        Screen screen = shown.screen(plan, drawn.options());
        List<String> shots = new ArrayList<>(new LinkedHashSet<>(
                shown.timeline().spans().stream().map(Span::shot).toList()));
        FilmAnswer film = PlanFile.solve(plan, shots, drawn.name(), console);
        try (OverlayFiles overlays = OverlayFiles.open(plan, shown.timeline(), drawn.name(), console)) {
            var additions = new Animatic.Additions(
                    overlays.tracks(),
                    language,
                    lettering(),
                    given.has("--burn-in") ? Animatic.Counters.BURNT_IN : Animatic.Counters.NONE);
            Animatic animatic = Animatic.of(film, shown.timeline(), shown.framed(), screen, additions);
            animatic.notes().forEach(note -> console.say("plumeline: " + note));
            var form = new Movie.Form(
                    screen.width(),
                    screen.height(),
                    plan.film().exactRate(),
                    animatic.findLabel(0),
                    plan.film().title().orElse(""));
            return drawn.draw(
                    film,
                    animatic.listWanted(),
                    out,
                    console,
                    (work, stop) -> write(animatic, new Writing(out, form, console), work, stop));
        }
    }

    /// Where a film is written.
    private record Writing(Path out, Movie.Form form, Console console) {}

    /// Writes the film aside, then over what was there; false where it was stopped.
    private static boolean write(Animatic animatic, Writing writing, PictureWork work, Stop stop) throws IOException {
        TimeLeft left = new TimeLeft("putting it together", writing.console());
        return PlainFile.layAside(writing.out(), aside -> {
            try (Movie movie = Movie.open(aside, writing.form(), animatic.sound())) {
                Held held = new Held(work);
                for (long frame = 0; frame < animatic.frames(); frame++) {
                    if (stop.isAsked()) {
                        return false;
                    }
                    movie.add(animatic.picture(frame, held));
                    left.hear((frame + 1.0) / animatic.frames());
                }
                movie.finish();
            } catch (IOException e) {
                // Whoever reads it knows the film by its own name.
                String why = String.valueOf(e.getMessage());
                throw new IOException(
                        why.replace(aside.toString(), writing.out().toString()), e);
            }
            return true;
        });
    }

    /// The picture that was seen last stays at hand: frames are often held.
    private static final class Held implements Animatic.Source {
        private final PictureWork work;
        private Optional<Wanted> last = Optional.empty();
        private Optional<Pixels> picture = Optional.empty();

        Held(PictureWork work) {
            this.work = work;
        }

        @Override
        public Pixels picture(Wanted wanted) throws IOException {
            if (last.filter(wanted::equals).isEmpty()) {
                picture = Optional.of(work.picture(wanted));
                last = Optional.of(wanted);
            }
            return picture.orElseThrow();
        }
    }

    private static Lettering lettering() {
        LetteredLine letters = new LetteredLine();
        return (text, sizePixels) -> letters.of(text, sizePixels, Lettering.Line::new);
    }

    /// The titles' language; none where there are no titles or none are wanted.
    private static Optional<String> language(Plan plan, Arguments given, Shown shown, Console console) throws Refusal {
        List<String> languages = plan.cutList().titles().stream()
                .map(Plan.Title::language)
                .distinct()
                .toList();
        Optional<String> named = given.findValue("--language");
        if (named.isPresent() && !languages.contains(named.get())) {
            throw languages.isEmpty()
                    ? new Refusal("the plan has no titles", "Leave --language out.")
                    : new Refusal(
                            "the plan has no titles in " + named.get() + "; it has " + String.join(", ", languages),
                            Refusal.attempt("--language ", named.get(), languages, "Name one of them."));
        }
        boolean isTextless = shown.delivery().filter(Delivery::isTextless).isPresent() && named.isEmpty();
        if (given.has("--no-titles") || isTextless || languages.isEmpty()) {
            return Optional.empty();
        }
        if (named.isEmpty() && languages.size() > 1) {
            console.say("plumeline: titles are in " + languages.getFirst() + "; --language has others: "
                    + String.join(", ", languages.subList(1, languages.size())));
        }
        return named.or(() -> Optional.of(languages.getFirst()));
    }

    private static Path out(Arguments given, String plan, Shown shown) throws Refusal {
        Optional<String> named = given.findValue("--out");
        if (named.isPresent()) {
            if (!named.get().toLowerCase(Locale.ROOT).endsWith(".mp4")) {
                throw new Refusal("--out is " + named.get() + "; must end with .mp4", "A film is written as MP4 only.");
            }
            return PlainFile.toWrite(named.get());
        }
        Path pictures = PictureFolder.ofPlan(plan);
        String base = String.valueOf(pictures.getFileName());
        String bare = base.substring(0, base.length() - ".pictures".length());
        return pictures.resolveSibling(
                bare + shown.delivery().map(one -> "." + one.name()).orElse("") + ".mp4");
    }

    /// What is shown: a timeline, and how it is framed.
    ///
    /// @param timeline the timeline
    /// @param delivery the delivery that was named
    /// @param framed the delivery whose crops and reframing count
    private record Shown(Timeline timeline, Optional<Delivery> delivery, Optional<Delivery> framed) {
        static Shown of(Plan plan, Optional<String> named) throws Refusal {
            List<String> names = plan.deliveries().stream().map(Delivery::name).toList();
            if (named.isPresent() && !names.contains(named.get())) {
                throw names.isEmpty()
                        ? new Refusal("the plan has no deliveries", "Leave --delivery out.")
                        : new Refusal(
                                "the plan has no delivery " + named.get() + "; it has " + String.join(", ", names),
                                Refusal.attempt("--delivery ", named.get(), names, "Name one of them."));
            }
            Optional<Delivery> delivery = named.flatMap(plan::findDelivery);
            Timeline timeline = delivery.map(one -> Timeline.of(plan, one)).orElseGet(() -> Timeline.of(plan));
            if (timeline.frames() == 0) {
                List<String> own = plan.deliveries().stream()
                        .filter(one -> !one.listCuts().isEmpty())
                        .map(Delivery::name)
                        .toList();
                throw new Refusal(
                        "the plan has no cut"
                                + (own.isEmpty() ? "" : " of the film; there is one of " + String.join(", ", own))
                                + ": there is nothing to show in time",
                        own.isEmpty()
                                ? "Write cut, a list of shots with their frames; or draw one shot: plumeline frames."
                                : "Name a delivery, such as --delivery " + own.getFirst() + ".");
            }
            Optional<Delivery> framed = delivery.or(() -> plan.deliveries().stream()
                    .filter(one -> one.listCuts().isEmpty())
                    .findFirst());
            return new Shown(timeline, delivery, framed);
        }

        Screen screen(Plan plan, PictureOptions options) {
            double aspect = Animatic.aspect(plan, timeline, framed);
            return options.size()
                    .map(size -> Screen.of(size.width(), size.height(), aspect))
                    .orElseGet(() -> Screen.within(LONGER, SHORTER, aspect));
        }
    }

    /// The overlays' files, opened.
    private record OverlayFiles(Map<String, PictureTrack> tracks) implements AutoCloseable {
        static OverlayFiles open(Plan plan, Timeline timeline, String name, Console console) throws Refusal {
            Map<String, PictureTrack> tracks = new HashMap<>();
            List<Plan.Overlay> overlays = Laid.listOverlays(plan, timeline).stream()
                    .<Plan.Overlay>map(Laid::what)
                    .distinct()
                    .toList();
            for (Plan.Overlay each : overlays) {
                Optional<String> file = each.findFile();
                if (file.isPresent()) {
                    String overlay = each.name();
                    switch (FilesBeside.of(name).findPictures(file.get())) {
                        case Clips.Opening.Open(PictureTrack track) -> tracks.put(overlay, track);
                        case Clips.Opening.Refused(String given, String attempt) ->
                            console.say("plumeline: The overlay " + overlay + " isn't laid on: its file is " + given
                                    + ". " + attempt);
                    }
                }
            }
            return new OverlayFiles(tracks);
        }

        @Override
        public void close() {
            tracks.values().forEach(PictureTrack::close);
        }
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(
                List.of(Rehearsal.FILE, "--size", "64x36", "--samples", "1", "--out", Rehearsal.FOLDER + ".mp4"),
                PlanFile.example()));
    }
}
