package plumeline.cut.list;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import plumeline.plan.Cut;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.quantity.FrameRate;
import plumeline.time.Timecode;
import plumeline.timeline.Clip;
import plumeline.timeline.Laid;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/// A timeline as open timeline JSON: tracks of clips, gaps and markers, whose files stand by relative paths.
///
/// The first track holds the cut, a clip a step of one speed: a `LinearTimeWarp` where it doesn't run at the film's
/// rate, a `FreezeFrame` where it is held. A clip's length is that in the film; it begins with the label of the
/// recorded frame shown first, and frame k shows `first + k · time_scalar` to the nearest. Steps of a ramp list the
/// recorded frames that are really shown in their metadata, under `plumeline`. Above it lie overlays and the titles of
/// each language (the first one's enabled), below it sounds by layer and the guide. Takes, overlays and sounds without
/// a file are `MissingReference`s by their names. Markers of the film lie on the stack: sounds' instants and beats that
/// cuts fall on.
///
/// **Source:** OpenTimelineIO (ASWF), core schemas of release 0.17.
public final class OpenTimeline {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final Plan plan;
    private final Timeline timeline;
    private final Beside beside;
    private final List<Step> steps;
    private final Takes takes;

    /// Where things lie, seen from the list's folder.
    ///
    /// @param toPlan the way to the plan's folder: empty, or such as `../`
    /// @param guide the guide track's file; empty where there is none
    public record Beside(String toPlan, String guide) {}

    private OpenTimeline(Plan plan, Timeline timeline, Beside beside) {
        this.plan = plan;
        this.timeline = timeline;
        this.beside = beside;
        steps = Steps.of(timeline);
        takes = Takes.of(plan, steps);
    }

    /// Prepares a timeline.
    ///
    /// @param plan the plan
    /// @param timeline its film's timeline, or a delivery's
    /// @param beside where the files lie
    /// @return the list, to be written
    public static OpenTimeline of(Plan plan, Timeline timeline, Beside beside) {
        return new OpenTimeline(plan, timeline, beside);
    }

    /// Tells what is missing, and what a ramp's steps lose.
    ///
    /// @return sentences
    public List<String> notes() {
        List<String> notes = new ArrayList<>(takes.notes());
        notes.addAll(Laid.listLost(plan, timeline));
        notes.addAll(listFileless(plan));
        findLoss().ifPresent(notes::add);
        return notes;
    }

    /// Lists what a film and its cut-downs miss together: takes, overlays' files, instants that the film doesn't show.
    ///
    /// @param plan the plan
    /// @return sentences
    public static List<String> listMissing(Plan plan) {
        List<Timeline> all = Timeline.listAll(plan);
        List<Step> steps = all.stream().flatMap(one -> Steps.of(one).stream()).toList();
        List<String> missing = new ArrayList<>(Takes.of(plan, steps).notes());
        all.stream().findFirst().ifPresent(film -> missing.addAll(Laid.listLost(plan, film)));
        missing.addAll(listFileless(plan));
        return missing;
    }

    private static List<String> listFileless(Plan plan) {
        return plan.cutList().overlays().stream()
                .filter(overlay -> overlay.findFile().isEmpty())
                .map(overlay -> "The overlay " + overlay.name() + " has no file yet.")
                .toList();
    }

    /// Finds what the steps of ramps lose.
    ///
    /// @return a sentence; empty where every frame is the one that the film shows
    public Optional<String> findLoss() {
        long most = 0;
        for (Step step : steps) {
            most = Math.max(most, step.loss(step.speedPerSecond()).frames());
        }
        return most == 0
                ? Optional.empty()
                : Optional.of("Clips of one speed differ from what the film shows by up to " + Words.recorded(most)
                        + "; the frames really shown stand in their metadata.");
    }

    /// Gives the text.
    ///
    /// @return JSON of one object
    public String json() {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            new Writing(out).write();
        }
        return text.append('\n').toString();
    }

    /// A path as a reference of it is written.
    ///
    /// **Source:** RFC 3986, sections 2.3 and 3.3.
    static String url(String path) {
        StringBuilder url = new StringBuilder();
        for (byte each : path.replace('\\', '/').getBytes(UTF_8)) {
            char c = (char) (each & 0xff);
            boolean isPlain = c < 0x80 && (Character.isLetterOrDigit(c) || "-._~/!$&'()*+,;=@".indexOf(c) >= 0);
            url.append(isPlain ? String.valueOf(c) : String.format(Locale.ROOT, "%%%02X", (int) c));
        }
        return url.toString();
    }

    /// Whether a track is seen or heard as the list is opened.
    private enum Shown {
        ENABLED,
        DISABLED
    }

    /// One writing of it.
    private final class Writing {
        private final JsonGenerator out;
        private final OtioJson json;

        private Writing(JsonGenerator out) {
            this.out = out;
            json = new OtioJson(out, timeline.rate());
        }

        private void write() {
            String title = plan.film().title().orElse("Film")
                    + (timeline.delivery().isEmpty() ? "" : ", " + timeline.delivery());
            json.object("Timeline.1", title, this::film, () -> {
                json.time("global_start_time", plan.film().startFrame());
                out.writeName("tracks");
                json.plain("Stack.1", "tracks", () -> {
                    out.writeNullProperty("source_range");
                    json.list("effects", List.of(), _ -> {});
                    out.writeArrayPropertyStart("markers");
                    markers();
                    out.writeEndArray();
                    out.writeBooleanProperty("enabled", true);
                    out.writeArrayPropertyStart("children");
                    tracks();
                    out.writeEndArray();
                });
            });
        }

        private void film() {
            FrameRate rate = timeline.rate();
            out.writeStringProperty("film", plan.film().title().orElse(""));
            out.writeStringProperty("delivery", timeline.delivery());
            out.writeObjectPropertyStart("rate");
            out.writeNumberProperty("numerator", rate.numerator());
            out.writeNumberProperty("denominator", rate.denominator());
            out.writeEndObject();
            out.writeNumberProperty("frames", timeline.frames());
            out.writeNumberProperty("handles_frames", takes.handleFrames());
            out.writeBooleanProperty(
                    "drop_frame",
                    plan.film()
                            .findTimecode()
                            .filter(code -> code.counting() == Timecode.Counting.DROP)
                            .isPresent());
            json.list("notes", notes(), out::writeString);
        }

        private void markers() {
            for (Timeline.Entry entry : timeline.entries()) {
                entry.cut()
                        .findBeat()
                        .ifPresent(beat -> json.marker(
                                entry.first(),
                                "beat " + beat,
                                "the cut to " + entry.cut().shot().name()));
            }
            for (Laid<Plan.Cue> cue : Laid.listCues(plan, timeline)) {
                json.marker(cue.syncFrame(), cue.what().sound(), "the instant that the sound meets");
            }
        }

        private void tracks() {
            track("picture", "Video", () -> steps.forEach(this::step));
            List<List<Laid<Plan.Overlay>>> layers = layered(Laid.listOverlays(plan, timeline));
            for (int i = 0; i < layers.size(); i++) {
                List<Laid<Plan.Overlay>> layer = layers.get(i);
                track(numbered("overlays", i), "Video", () -> fill(layer, this::overlay));
            }
            List<String> languages = EditList.languages(plan);
            for (String language : languages) {
                track(
                        "titles " + language,
                        "Video",
                        language.equals(languages.getFirst()) ? Shown.ENABLED : Shown.DISABLED,
                        () -> fill(Laid.listTitles(plan, timeline, language), this::title));
            }
            sounds();
        }

        /// Puts what overlaps onto different layers, as few as need be.
        private static <T> List<List<Laid<T>>> layered(List<Laid<T>> sorted) {
            List<List<Laid<T>>> layers = new ArrayList<>();
            for (Laid<T> one : sorted) {
                layers.stream()
                        .filter(layer -> layer.getLast().pastFrame() <= one.firstFrame())
                        .findFirst()
                        .orElseGet(() -> {
                            layers.add(new ArrayList<>());
                            return layers.getLast();
                        })
                        .add(one);
            }
            return layers;
        }

        private void sounds() {
            Map<String, List<Laid<Plan.Cue>>> byLayer = new LinkedHashMap<>();
            for (Laid<Plan.Cue> cue : Laid.listCues(plan, timeline)) {
                byLayer.computeIfAbsent(cue.what().findLayer().orElse("sounds"), _ -> new ArrayList<>())
                        .add(cue);
            }
            byLayer.forEach((name, cues) -> {
                List<List<Laid<Plan.Cue>>> layers = layered(cues);
                for (int i = 0; i < layers.size(); i++) {
                    List<Laid<Plan.Cue>> layer = layers.get(i);
                    track(numbered(name, i), "Audio", () -> fill(layer, this::cue));
                }
            });
            if (!beside.guide().isEmpty()) {
                track(
                        "guide",
                        "Audio",
                        () -> json.plain("Clip.2", "guide", () -> {
                            json.item(0, timeline.frames(), () -> {});
                            json.media(() -> json.external(url(beside.guide()), 0, timeline.frames()));
                        }));
            }
        }

        private static String numbered(String name, int index) {
            return index == 0 ? name : name + " " + (index + 1);
        }

        private void track(String name, String kind, OtioJson.Part children) {
            track(name, kind, Shown.ENABLED, children);
        }

        private void track(String name, String kind, Shown shown, OtioJson.Part children) {
            json.plain("Track.1", name, () -> {
                out.writeNullProperty("source_range");
                json.list("effects", List.of(), _ -> {});
                json.list("markers", List.of(), _ -> {});
                out.writeBooleanProperty("enabled", shown == Shown.ENABLED);
                out.writeStringProperty("kind", kind);
                out.writeArrayPropertyStart("children");
                children.write();
                out.writeEndArray();
            });
        }

        /// One behind the other, with gaps between them.
        private <T> void fill(List<Laid<T>> laid, Consumer<Laid<T>> writer) {
            long done = 0;
            for (Laid<T> one : laid) {
                if (one.firstFrame() > done) {
                    json.gap(one.firstFrame() - done);
                }
                writer.accept(one);
                done = one.pastFrame();
            }
        }

        private void step(Step step) {
            Clip clip = takes.clip(step.span());
            long first = clip.goFrame() + step.sourceFrame();
            json.object("Clip.2", clip.name(), () -> about(step, clip), () -> {
                json.item(first, first + step.frames(), () -> {
                    if (!step.isPlain()) {
                        json.speed(step.isHeld() ? 0 : step.scalar());
                    }
                });
                json.media(() -> {
                    Takes.Needed range = takes.range(clip);
                    clip.file()
                            .ifPresentOrElse(
                                    file -> json.external(url(beside.toPlan() + file), range.first(), range.past()),
                                    () -> json.missing(clip.name(), range.first(), range.past()));
                });
            });
        }

        private void about(Step step, Clip clip) {
            Span span = step.span();
            out.writeStringProperty("shot", span.shot());
            out.writeStringProperty("pass", span.pass());
            out.writeStringProperty("reel", clip.reel());
            out.writeNumberProperty("entry", span.entry() + 1);
            out.writeNumberProperty("shot_frame", span.shotFrameAt(step.first()));
            out.writeNumberProperty("go_frame", clip.goFrame());
            out.writeNumberProperty(
                    "captured_frames_per_second", span.played().captured().framesPerSecond());
            if (step.of() > 1) {
                out.writeNumberProperty("step", step.number());
                out.writeNumberProperty("steps", step.of());
            }
            Step.Loss loss = step.loss(step.speedPerSecond());
            if (loss.frames() > 0) {
                out.writeNumberProperty("loss_frames", loss.frames());
                out.writeNumberProperty("loss_at_frame", loss.at());
                out.writeArrayPropertyStart("source_frames");
                for (long frame = step.first(); frame < step.past(); frame++) {
                    out.writeNumber(clip.goFrame() + span.sourceFrame(frame));
                }
                out.writeEndArray();
            }
            reframes(timeline.entries().get(span.entry()).cut(), step);
        }

        /// How the picture lies in each delivery's, by frames of the clip's entry.
        private void reframes(Cut cut, Step step) {
            List<String> deliveries = plan.deliveries().stream()
                    .map(Delivery::name)
                    .filter(name ->
                            timeline.delivery().isEmpty() || timeline.delivery().equals(name))
                    .filter(name -> !cut.listReframes(name).isEmpty())
                    .toList();
            if (deliveries.isEmpty()) {
                return;
            }
            out.writeNumberProperty(
                    "entry_frame",
                    step.first() - timeline.entries().get(step.span().entry()).first());
            out.writeObjectPropertyStart("reframe");
            for (String delivery : deliveries) {
                json.list(delivery, cut.listReframes(delivery), key -> {
                    out.writeStartObject();
                    out.writeNumberProperty("at", key.frame());
                    out.writeNumberProperty("scale", key.scale());
                    out.writeNumberProperty("x_share_of_width", key.x());
                    out.writeNumberProperty("y_share_of_height", key.y());
                    out.writeNumberProperty("turn_radians", key.turnRadians());
                    out.writeStringProperty("profile", key.profile().word());
                    out.writeEndObject();
                });
            }
            out.writeEndObject();
        }

        private void overlay(Laid<Plan.Overlay> laid) {
            Plan.Overlay overlay = laid.what();
            long frames = laid.pastFrame() - laid.firstFrame();
            json.object(
                    "Clip.2",
                    overlay.name(),
                    () -> {
                        out.writeStringProperty("blend", "screen");
                        out.writeStringProperty(
                                "formula", "1 - (1 - below)(1 - level * max(0, (x - black) / (1 - black)))");
                        out.writeNumberProperty("black", overlay.blackOrDefault());
                        out.writeNumberProperty("level", overlay.levelOrDefault());
                        out.writeStringProperty("range", overlay.rangeOrDefault());
                        out.writeStringProperty("transfer", overlay.transferOrDefault());
                    },
                    () -> {
                        json.item(0, frames, () -> {});
                        json.media(() -> overlay.findFile()
                                .ifPresentOrElse(
                                        file -> json.external(url(beside.toPlan() + file), 0, frames),
                                        () -> json.missing(overlay.name(), 0, frames)));
                    });
        }

        private void title(Laid<Plan.Title> laid) {
            Plan.Title title = laid.what();
            long frames = laid.pastFrame() - laid.beginFrame();
            json.plain("Clip.2", title.text(), () -> {
                json.item(0, frames, () -> {});
                json.media(() -> json.plain("GeneratorReference.1", title.text(), () -> {
                    json.range("available_range", 0, frames);
                    out.writeNullProperty("available_image_bounds");
                    out.writeStringProperty("generator_kind", "title");
                    out.writeObjectPropertyStart("parameters");
                    out.writeStringProperty("language", title.language());
                    out.writeStringProperty("text", title.text());
                    out.writeEndObject();
                }));
            });
        }

        private void cue(Laid<Plan.Cue> laid) {
            Plan.Cue cue = laid.what();
            long cutOff = laid.firstFrame() - laid.beginFrame();
            json.object(
                    "Clip.2",
                    cue.sound(),
                    () -> {
                        out.writeNumberProperty("sync_frame", laid.syncFrame());
                        out.writeStringProperty("shot", cue.sync().shot().name());
                        out.writeBooleanProperty(
                                "length_is_written", cue.findLength().isPresent());
                    },
                    () -> {
                        json.item(cutOff, cutOff + laid.pastFrame() - laid.firstFrame(), () -> {});
                        json.media(() -> json.missing(cue.sound(), 0, laid.pastFrame() - laid.beginFrame()));
                    });
        }
    }
}
