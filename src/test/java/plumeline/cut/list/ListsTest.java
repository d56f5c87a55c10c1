package plumeline.cut.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.cut.StrictJson;
import plumeline.plan.Plan;
import plumeline.timeline.Clip;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// Both forms of list read back by readers of their own, frame by frame against the timeline.
final class ListsTest {
    private static final OpenTimeline.Beside BESIDE = new OpenTimeline.Beside("../", "guide.wav");

    private static EditList.Result.Listed listed(Plan plan) {
        return (EditList.Result.Listed) EditList.of(plan, Timeline.of(plan));
    }

    /// The label's frame that the film really shows.
    private static long shown(Plan plan, Timeline timeline, long frame) {
        Span span = timeline.findSpan(frame).orElseThrow();
        return Clip.of(plan, span.shot(), span.pass()).goFrame() + span.sourceFrame(frame);
    }

    private static long nearest(double figure) {
        return (long) Math.floor(Math.rint(figure * 1e9) / 1e9 + 0.5);
    }

    /// Compares an edit decision list; gives how many frames it has.
    private static long compareEdl(Plan plan, CutPlans.Rate rate, String said) {
        Timeline timeline = Timeline.of(plan);
        EdlReader read = EdlReader.read(listed(plan).text(), rate.labels());
        long day = 24L * 3600 * rate.labels() - (read.drops ? 2592L * rate.labels() / 30 : 0);
        long start = read.frame(read.drops ? "01:00:00;00" : "01:00:00:00");
        long frame = 0;
        Map<String, String> reels = new HashMap<>();
        for (EdlReader.Event event : read.events) {
            assertThat(event.track + event.kind).isEqualTo("VC");
            assertThat(event.recordIn).as(said).isEqualTo(start + frame);
            assertThat(event.record()).isPositive();
            assertThat(event.reel).matches("[A-Z0-9][A-Z0-9_-]{0,7}");
            double scalar = event.hasSpeed ? event.speed / rate.framesPerSecond() : 1;
            double whole = Math.max(1, event.record() * Math.abs(scalar));
            boolean isCut = !event.comment("OUTSIDE").isEmpty();
            assertThat((double) event.source())
                    .as("%s, event %s", said, event.number)
                    .isBetween(isCut ? 1 : whole - 0.5 - 1e-9, isCut ? whole - 0.5 : whole + 0.5 + 1e-9);
            assertThat(event.hasSpeed || event.source() == event.record()).isTrue();
            long worst = 0;
            Clip clip = clipOf(plan, timeline, frame);
            for (long k = 0; k < event.record(); k++, frame++) {
                long from = scalar < 0 ? event.sourceOut - 1 : event.sourceIn;
                long off = from + nearest(k * scalar) - shown(plan, timeline, frame);
                worst = Math.max(worst, Math.abs(Math.floorMod(off + day / 2, day) - day / 2));
                assertThat(clipOf(plan, timeline, frame)).isEqualTo(clip);
            }
            String loss = event.comment("LOSS");
            assertThat(loss.isEmpty() ? 0 : Long.parseLong(loss.split(" ")[2]))
                    .as("%s, loss of event %s", said, event.number)
                    .isEqualTo(worst);
            String ramp = event.comment("RAMP");
            if (!ramp.isEmpty() && Long.parseLong(ramp.substring(ramp.lastIndexOf(' ') + 1)) < Steps.MOST / 2) {
                assertThat(worst).as("%s, event %s", said, event.number).isLessThanOrEqualTo(1);
            }
            assertThat(
                            isCut && !clip.isMissing()
                                    ? event.sourceIn
                                    : clip.goFrame()
                                            + timeline.findSpan(frame - event.record())
                                                    .orElseThrow()
                                                    .sourceFrame(frame - event.record())
                                            - (scalar < 0 ? event.source() - 1 : 0))
                    .as("%s, first of event %s", said, event.number)
                    .isIn(event.sourceIn, event.sourceIn + day, event.sourceIn - day);
            assertThat(event.comment("FROM CLIP NAME")).isEqualTo(clip.name());
            assertThat(event.comment("FROM FILE")).isEqualTo(clip.file().orElse(""));
            assertThat(reels.computeIfAbsent(event.reel, _ -> clip.reel())).isEqualTo(clip.reel());
        }
        assertThat(frame).isEqualTo(timeline.frames());
        return frame;
    }

    private static Clip clipOf(Plan plan, Timeline timeline, long frame) {
        Span span = timeline.findSpan(frame).orElseThrow();
        return Clip.of(plan, span.shot(), span.pass());
    }

    /// Compares an open timeline; gives how many frames it has.
    private static long compareOtio(Plan plan, CutPlans.Rate rate, String said) {
        Timeline timeline = Timeline.of(plan);
        OtioReader read = new OtioReader(OpenTimeline.of(plan, timeline, BESIDE).json(), rate.framesPerSecond());
        long frame = 0;
        for (OtioReader.Item item : read.tracks.getFirst().items()) {
            assertThat(item.schema()).isEqualTo("Clip.2");
            Clip clip = clipOf(plan, timeline, frame);
            assertThat(item.name()).isEqualTo(clip.name());
            Object media = item.media();
            assertThat(StrictJson.text(media, "OTIO_SCHEMA"))
                    .isEqualTo(clip.isMissing() ? "MissingReference.1" : "ExternalReference.1");
            if (!clip.isMissing()) {
                assertThat(StrictJson.text(media, "target_url"))
                        .isEqualTo("../" + clip.file().orElseThrow().replace(" ", "%20"));
            }
            double first = read.time(StrictJson.at(media, "available_range", "start_time"));
            double past = first + read.time(StrictJson.at(media, "available_range", "duration"));
            long worst = 0;
            Map<String, Object> about = StrictJson.map(item.json(), "metadata", "plumeline");
            for (long k = 0; k < item.frames(); k++, frame++) {
                long real = shown(plan, timeline, frame);
                long shown = (long) item.start() + nearest(k * item.scalar());
                worst = Math.max(worst, Math.abs(shown - real));
                assertThat((double) shown).isBetween(first, past - 1);
                if (about.containsKey("source_frames")) {
                    assertThat(StrictJson.number(about, "source_frames", (int) k))
                            .isEqualTo(real);
                }
            }
            assertThat(about.getOrDefault("loss_frames", 0.0)).as(said).isEqualTo((double) worst);
            // A steady stretch is off by the halves that it begins with only.
            assertThat(worst)
                    .as(said)
                    .isLessThanOrEqualTo((double) about.getOrDefault("steps", 1.0) < Steps.MOST / 2 ? 1 : 99);
        }
        assertThat(frame).isEqualTo(timeline.frames());
        assertThat(read.named("guide").frames()).isEqualTo(frame);
        return frame;
    }

    @Test
    void listsByChance_showWhatTheFilmShows_atAllRates() {
        long seed = 20261203;
        Random chance = new Random(seed);
        long frames = 0;
        for (int round = 0; round < 120; round++) {
            CutPlans.Rate rate = CutPlans.RATES.get(round % CutPlans.RATES.size());
            Plan plan = CutPlans.byChance(chance, rate);
            String said = "seed " + seed + ", round " + round;
            frames += compareEdl(plan, rate, said);
            compareOtio(plan, rate, said);
        }
        assertThat(frames).isGreaterThan(20_000);
    }

    private static final CutPlans.Rate AT_24 = CutPlans.RATES.get(1);

    @Test
    void aSteadyStretch_isOneEvent_withItsSpeed() {
        Plan plan = CutPlans.of(
                "24 fps, handles: 8, tempo: 120 bpm",
                CutPlans.shot("reveal", "120 fps", "speed: 20 %")
                        + CutPlans.shot(
                                "splash",
                                "120 fps",
                                "speed: 100 %\nclip: {file: takes/B 2.mov, reel: cam-B-roll-12,"
                                        + " starts: \"10:00:00:00\", go: 30, frames: 300}")
                        + CutPlans.shot("back", "24 fps", "speed: -50 %")
                        + CutPlans.shot("held", "24 fps", "speed: 0 %"),
                "  - {shot: reveal, frames: 48, from_beat: 1}\n  - {shot: splash, frames: 24, from: 12}\n"
                        + "  - {shot: back, frames: 20}\n  - {shot: held, frames: 6}\n");
        assertThat(listed(plan)
                        .text()
                        .lines()
                        .filter(line -> Character.isDigit(line.charAt(0)) || line.startsWith("M2")))
                .containsExactly(
                        "001  REVEAL   V     C        01:00:00:00 01:00:02:00 01:00:00:00 01:00:02:00",
                        "002  CAMBROLL V     C        10:00:03:18 10:00:08:18 01:00:02:00 01:00:03:00",
                        "M2   CAMBROLL 120.0                10:00:03:18",
                        "003  BACK     V     C        01:00:00:01 01:00:00:11 01:00:03:00 01:00:03:20",
                        "M2   BACK     -012.0                01:00:00:01",
                        "004  HELD     V     C        01:00:00:00 01:00:00:01 01:00:03:20 01:00:04:02",
                        "M2   HELD     000.0                01:00:00:00");
        assertThat(listed(plan).text())
                .startsWith("TITLE: Grosse, three tins\r\nFCM: NON-DROP FRAME\r\n")
                .contains("* FROM FILE: takes/B 2.mov\r\n* REEL: cam-B-roll-12\r\n* SHOT: splash, frame 12\r\n"
                        + "* HANDLES: 10:00:03:10 to 10:00:09:02, 8 before, 8 after\r\n")
                .contains("* MISSING: no take is named; GO is taken to be at 01:00:00:00\r\n");
        compareEdl(plan, AT_24, "steady");
        compareOtio(plan, AT_24, "steady");
    }

    /// A ramp from real time to a fifth, filmed at 120: straight, its source is 5n − n²/12 frames.
    @Test
    void aRamp_isStepsOfOneSpeedEach_withTheirLoss() {
        Plan plan = CutPlans.of(
                "24 fps",
                CutPlans.shot(
                        "drop",
                        "120 fps",
                        "speed: [[0 frames, 100 %], [12 frames, 100 %], [36 frames, 20 %], [60 frames, 20 %]]\n"),
                "  - {shot: drop, frames: 60}\n");
        List<EdlReader.Event> events = EdlReader.read(listed(plan).text(), 24).events;
        assertThat(events.getFirst().record()).isEqualTo(12);
        assertThat(events.getFirst().speed).isEqualTo(120);
        assertThat(events.getLast().record()).isEqualTo(24);
        assertThat(events.getLast().hasSpeed)
                .as("120 fps at 20 % is the film's own rate")
                .isFalse();
        assertThat(events).as("two steady stretches, and the ramp between them").hasSizeBetween(4, 6);
        assertThat(events.get(1).comment("RAMP")).isEqualTo("step 2 of " + events.size());
        assertThat(listed(plan).notes())
                .anyMatch(note -> note.equals(
                        "One ramp is split into steps of one speed each, as a list knows one speed an" + " event."))
                .anyMatch(note ->
                        note.startsWith("The source frames of this list differ from those the film shows by up to"
                                + " 1 recorded frame, at 01:00:0"));
        compareEdl(plan, AT_24, "ramp");
        compareOtio(plan, AT_24, "ramp");
    }

    /// A second of a thousand frames, eased down over a minute: more steps than anyone opens.
    @Test
    void aLongFastRamp_hasNoMoreStepsThanTheMost_andItsLossIsStated() {
        Plan plan = CutPlans.of(
                "24 fps",
                CutPlans.shot("drop", "1000 fps", "speed: [[0 frames, 100 %], [1440 frames, 2 %]]\n"),
                "  - {shot: drop, frames: 1440}\n");
        List<EdlReader.Event> events = EdlReader.read(listed(plan).text(), 24).events;
        assertThat(events).hasSizeBetween(Steps.MOST / 2, Steps.MOST);
        assertThat(events)
                .anyMatch(event -> event.comment("LOSS").startsWith("up to ")
                        && !event.comment("LOSS").startsWith("up to 1 "));
        assertThat(compareEdl(plan, AT_24, "long")).isEqualTo(1440);
    }

    /// 200 % at 23.976 is 47.952 frames a second; the list's tenths say 48.0, which is 2.9 frames more after a minute.
    @Test
    void tenthsOfASpeed_loseFrames_andTheListSaysSo_butTheTimelineDoesNot() {
        CutPlans.Rate rate = CutPlans.RATES.getFirst();
        Plan plan = CutPlans.of(
                rate.film(),
                CutPlans.shot("drive", "23.976 fps", "speed: 200 %\n"),
                "  - {shot: drive, frames: 1440}\n");
        List<EdlReader.Event> events = EdlReader.read(listed(plan).text(), 24).events;
        assertThat(events).hasSize(1);
        assertThat(events.getFirst().speed).isEqualTo(48.0);
        assertThat(events.getFirst().comment("LOSS")).isEqualTo("up to 3 recorded frames, at 01:00:52:02");
        OtioReader read =
                new OtioReader(OpenTimeline.of(plan, Timeline.of(plan), BESIDE).json(), rate.framesPerSecond());
        assertThat(read.tracks.getFirst().items().getFirst().scalar()).isEqualTo(2);
        assertThat(compareOtio(plan, rate, "tenths")).isEqualTo(1440);
    }

    private static final String FULL = """
              - {shot: one, frames: 24, from_beat: 1}
              - {shot: two, frames: 48,
                 reframe: {square: [{at: 0, scale: 150 %}, {at: 24, scale: 200 %, turn: 10 deg}]}}
              - {shot: one, frames: 24, from: 24}
            overlays:
              - {overlay: steam, over: {shot: two, when: 6 frames}, file: over/steam ü.mov, black: 6 %, range: video}
              - {overlay: dust, over: {shot: two, when: 12 frames}, frames: 12}
            cues:
              - {sound: whoosh, sync: {shot: two, when: start}, lead: 30 frames, lasts: 2 s, layer: effects}
              - {sound: click, sync: {shot: two, when: 10 frames}, layer: effects}
              - {sound: music, sync: {shot: one, when: start}, lasts: 4 s}
            titles: {two: {en: Three tins, de: Drei Büchsen}}
            """;

    private static Plan full() {
        return CutPlans.of(
                "24 fps, tempo: 120 bpm",
                CutPlans.shot("one", "24 fps", "") + CutPlans.shot("two", "24 fps", ""),
                FULL);
    }

    @Test
    void overlaysTitlesAndSounds_haveTracks_whereTheyLie() {
        Plan plan = full();
        OtioReader read =
                new OtioReader(OpenTimeline.of(plan, Timeline.of(plan), BESIDE).json(), 24);
        assertThat(read.tracks)
                .extracting(track -> track.name() + " " + track.kind() + " " + track.isEnabled())
                .containsExactly(
                        "picture Video true",
                        "overlays Video true",
                        "overlays 2 Video true",
                        "titles en Video true",
                        "titles de Video false",
                        "effects Audio true",
                        "effects 2 Audio true",
                        "sounds Audio true",
                        "guide Audio true");
        assertThat(lying(read, "overlays")).containsExactly("steam 30+42@0.0");
        assertThat(lying(read, "overlays 2")).containsExactly("dust 36+12@0.0");
        assertThat(lying(read, "titles de")).containsExactly("Drei Büchsen 24+48@0.0");
        assertThat(lying(read, "effects"))
                .as("begins six frames before the film")
                .containsExactly("whoosh 0+42@6.0");
        assertThat(lying(read, "effects 2")).containsExactly("click 34+38@0.0");
        assertThat(lying(read, "sounds")).containsExactly("music 0+96@0.0");
        Object steam = read.named("overlays").items().getLast();
        Object json = ((OtioReader.Item) steam).json();
        assertThat(StrictJson.number(json, "metadata", "plumeline", "black")).isEqualTo(0.06);
        assertThat(StrictJson.text(json, "metadata", "plumeline", "range")).isEqualTo("video");
        assertThat(StrictJson.text(((OtioReader.Item) steam).media(), "target_url"))
                .isEqualTo("../over/steam%20%C3%BC.mov");
        Object title = read.named("titles en").items().getLast().media();
        assertThat(StrictJson.text(title, "OTIO_SCHEMA")).isEqualTo("GeneratorReference.1");
        assertThat(StrictJson.text(title, "parameters", "text")).isEqualTo("Three tins");
        assertThat(StrictJson.list(read.json, "tracks", "markers").stream()
                        .map(marker -> StrictJson.text(marker, "name") + " "
                                + read.time(StrictJson.at(marker, "marked_range", "start_time")))
                        .toList())
                .containsExactly("beat 1 0.0", "whoosh 24.0", "music 0.0", "click 34.0");
        Object second = read.named("picture").items().get(1).json();
        assertThat(StrictJson.number(second, "metadata", "plumeline", "reframe", "square", 1, "scale"))
                .isEqualTo(2);
        assertThat(read.time(StrictJson.at(read.json, "global_start_time"))).isEqualTo(86_400);
    }

    private static List<String> lying(OtioReader read, String track) {
        return read.named(track).items().stream()
                .filter(item -> item.schema().equals("Clip.2"))
                .map(item -> item.name() + " " + item.first() + "+" + item.frames() + "@" + item.start())
                .toList();
    }

    @Test
    void whatAListCannotHold_isSaid_andStandsAsMarkers() {
        EditList.Result.Listed listed = listed(full());
        List<EdlReader.Event> events = EdlReader.read(listed.text(), 24).events;
        assertThat(events.stream().flatMap(event -> event.markers.stream()))
                .containsExactly(
                        "86400 sound: music",
                        "86424 sound: whoosh",
                        "86424 title, en: Three tins (to 01:00:03:00)",
                        "86424 title, de: Drei Buchsen (to 01:00:03:00)",
                        "86430 overlay: steam (to 01:00:03:00)",
                        "86434 sound: click",
                        "86436 overlay: dust (to 01:00:02:00)");
        assertThat(events.get(1).comment("REFRAMED")).isEqualTo("for square; not in this list");
        assertThat(listed.notes())
                .contains("Overlays, titles and sounds stand as markers only: this list holds one layer of picture.")
                .contains("Reframing isn't in this list; the open timeline has it.")
                .anyMatch(note -> note.startsWith("The take one is missing: the film goes through 48 recorded frames"));
        assertThat(events.getLast().comments).hasSizeGreaterThan(listed.notes().size());
    }

    /// A delivery's own cut is a list of its own, with its own reframing; what it doesn't show is told.
    @Test
    void aDeliverysCut_hasListsOfItsOwn() {
        Plan plan = CutPlans.read("""
                plumeline: 1
                film: {title: Tins, rate: 24 fps}
                deliver: {wide: {ratio: "16:9"}, short: {ratio: "1:1", cut: [{shot: two, frames: 20, from: 10}]}}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                shots:
                  one: {camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}}
                  two:
                    camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}
                    speed: -100 %
                    clip: {file: b.mov}
                cut: [{shot: one, frames: 24}, {shot: two, frames: 30}]
                overlays: [{overlay: steam, over: {shot: one, when: start}}]
                cues: [{sound: click, sync: {shot: one, when: start}}]
                """);
        Timeline timeline = Timeline.listAll(plan).getLast();
        EditList.Result.Listed listed = (EditList.Result.Listed) EditList.of(plan, timeline);
        EdlReader read = EdlReader.read(listed.text(), 24);
        assertThat(read.title).isEqualTo("Tins, short");
        assertThat(read.events).hasSize(1);
        assertThat(read.events.getFirst().sourceIn)
                .as("backward from 20, frame by frame")
                .isEqualTo(1);
        assertThat(read.events.getFirst().sourceOut).isEqualTo(21);
        assertThat(listed.notes())
                .contains(
                        "The overlay steam isn't in short's own cut, which doesn't show the instant of one at which it"
                                + " begins.")
                .contains("The sound click isn't in short's own cut, which doesn't show the instant of one that it"
                        + " meets.");
        OtioReader otio = new OtioReader(OpenTimeline.of(plan, timeline, BESIDE).json(), 24);
        assertThat(otio.tracks).extracting(OtioReader.Track::name).containsExactly("picture", "guide");
        assertThat(otio.tracks.getFirst().items().getFirst().start()).isEqualTo(20);
        assertThat(otio.tracks.getFirst().items().getFirst().scalar()).isEqualTo(-1);
    }

    @Test
    void takesThatAreTooShort_areNamed() {
        Plan plan = CutPlans.of(
                "25 fps, handles: 20",
                CutPlans.shot("one", "25 fps", "clip: {file: a.mov, go: 12, frames: 60}")
                        + CutPlans.shot("two", "25 fps", "clip: {file: b.mov, frames: 40}"),
                "  - {shot: one, frames: 30}\n  - {shot: two, frames: 50}\n");
        assertThat(listed(plan).notes())
                .containsExactly(
                        "a.mov: its timecode is taken to begin at 00:00:00:00.",
                        "a.mov has handles of 12 frames before and 18 after, not of 20.",
                        "b.mov: its timecode is taken to begin at 00:00:00:00, and GO is taken to be its first frame.",
                        "b.mov ends 10 frames before the last that the film shows of it.",
                        "b.mov has handles of 0 frames before and 0 after, not of 20.");
        assertThat(OpenTimeline.of(plan, Timeline.of(plan), BESIDE).notes())
                .isEqualTo(listed(plan).notes());
    }

    /// Nobody has measured this take: nothing is said of its handles but what it is taken for.
    @Test
    void aTakeOfWhichNothingIsWritten_isNotToldAsMeasured() {
        Plan plan = CutPlans.of(
                "25 fps, handles: 1",
                CutPlans.shot("one", "25 fps", "clip: {file: a.mov}")
                        + CutPlans.shot("two", "25 fps", "speed: 0 %")
                        + CutPlans.shot(
                                "three", "25 fps", "clip: {file: c.mov, starts: \"10:00:00:00\", go: 2, frames: 3}"),
                "  - {shot: one, frames: 30}\n  - {shot: two, frames: 30}\n  - {shot: three, frames: 2}\n");
        assertThat(listed(plan).notes())
                .containsExactly(
                        "a.mov: its timecode is taken to begin at 00:00:00:00, and GO is taken to be its first frame.",
                        "The take two is missing: the film goes through 1 recorded frame of it, and wants 1 more before"
                                + " and after; its GO is taken to be at 01:00:00:00.",
                        "c.mov ends 1 frame before the last that the film shows of it.",
                        "c.mov has handles of 1 frame before and 0 after, not of 1.");
    }

    /// At 23.976 real time backward is -24.0 in tenths: two thousand frames take 2002 of the source, of which 2001 end
    /// with the one shown first; 200 % takes 2883 where the film goes through 2879.
    @Test
    void noEventAsksForWhatItsClipDoesNotHave() {
        Plan plan = CutPlans.of(
                "23.976 fps",
                CutPlans.shot(
                                "back",
                                "23.976 fps",
                                "speed: -100 %\nclip: {file: a.mov, starts: \"10:00:00:00\", go: 0, frames: 3000}")
                        + CutPlans.shot(
                                "fast",
                                "23.976 fps",
                                "speed: 200 %\nclip: {file: b.mov, starts: \"10:00:00:00\", go: 0, frames: 2879}"),
                "  - {shot: back, frames: 2000}\n  - {shot: fast, frames: 1440}\n");
        List<EdlReader.Event> events = EdlReader.read(listed(plan).text(), 24).events;
        assertThat(events).hasSize(2);
        assertThat(events.getFirst().speed).isEqualTo(-24.0);
        assertThat(events.getFirst().sourceIn).isEqualTo(864_000);
        assertThat(events.getFirst().comment("OUTSIDE"))
                .isEqualTo("not in the clip and left out, 1 before its first frame, 0 after its last");
        assertThat(events.getLast().sourceOut).isEqualTo(864_000 + 2879);
        assertThat(events.getLast().comment("OUTSIDE")).endsWith(" 0 before its first frame, 4 after its last");
        assertThat(listed(plan).notes())
                .contains("By their speeds, events of a.mov go up to 1 frame past what the clip has; their source is"
                        + " shorter by those here.")
                .contains("By their speeds, events of b.mov go up to 4 frames past what the clip has; their source is"
                        + " shorter by those here.");
    }

    /// The list's own range counts for handles: it goes three frames farther than the film.
    @Test
    void handles_areLeftOverByTheListsOwnFrames() {
        Plan plan = CutPlans.of(
                "23.976 fps, handles: 8",
                CutPlans.shot(
                        "fast",
                        "23.976 fps",
                        "speed: 200 %\nclip: {file: b.mov, starts: \"10:00:00:00\", go: 8, frames: 2895}"),
                "  - {shot: fast, frames: 1440}\n");
        assertThat(OpenTimeline.of(plan, Timeline.of(plan), BESIDE).notes()).isEmpty();
        assertThat(listed(plan).notes()).contains("b.mov has handles of 8 frames before and 4 after, not of 8.");
    }

    /// Two cards hold files of one name; a third and a fourth take are on a reel that the crew named.
    @Test
    void takesOfOneName_haveReelsOfTheirOwn_unlessTheCrewWroteOne() {
        String starts = ", starts: \"10:00:00:00\", go: 100}";
        Plan plan = CutPlans.of(
                "24 fps",
                CutPlans.shot("one", "24 fps", "clip: {file: day1/A001.mov" + starts)
                        + CutPlans.shot("two", "24 fps", "clip: {file: day2/A001.mov" + starts)
                        + CutPlans.shot("again", "24 fps", "clip: {file: day1/A001.mov" + starts)
                        + CutPlans.shot("three", "24 fps", "clip: {file: c.mov, reel: A001" + starts)
                        + CutPlans.shot("four", "24 fps", "clip: {file: d.mov, reel: A001" + starts),
                "  - {shot: one, frames: 9}\n  - {shot: two, frames: 9}\n  - {shot: again, frames: 9}\n"
                        + "  - {shot: three, frames: 9}\n  - {shot: four, frames: 9}\n");
        assertThat(EdlReader.read(listed(plan).text(), 24).events)
                .extracting(event -> event.reel)
                .containsExactly("A0012", "A0013", "A0012", "A001", "A001");
        assertThat(listed(plan).notes())
                .contains("The reel A001 is written for 2 takes, c.mov, d.mov; they are one reel here, told apart by"
                        + " their timecode only.");
        Plan apart = CutPlans.of(
                "24 fps",
                CutPlans.shot("one", "24 fps", "clip: {file: day1/A001.mov" + starts)
                        + CutPlans.shot("two", "24 fps", "clip: {file: day2/A001.mov" + starts),
                "  - {shot: one, frames: 9}\n  - {shot: two, frames: 9}\n");
        assertThat(listed(apart).notes()).noneMatch(note -> note.startsWith("The reel"));
    }

    /// It begins 60 frames before the film's first and lasts 12.
    @Test
    void aSoundThatIsOverBeforeTheFilm_isNotInIt() {
        Plan plan = CutPlans.of(
                "24 fps",
                CutPlans.shot("one", "24 fps", ""),
                "  - {shot: one, frames: 48}\ncues:\n"
                        + "  - {sound: early, sync: {shot: one, when: start}, lead: 60 frames, lasts: 12 frames}\n"
                        + "  - {sound: just, sync: {shot: one, when: start}, lead: 60 frames, lasts: 60 frames}\n"
                        + "  - {sound: in, sync: {shot: one, when: start}, lead: 60 frames, lasts: 61 frames}\n");
        String json = OpenTimeline.of(plan, Timeline.of(plan), BESIDE).json();
        OtioReader read = new OtioReader(json, 24);
        assertThat(lying(read, "sounds")).containsExactly("in 0+1@60.0");
        assertThat(StrictJson.list(read.json, "tracks", "markers")).hasSize(1);
        assertThat(EdlReader.read(listed(plan).text(), 24).events.getFirst().markers)
                .containsExactly("86400 sound: in");
        assertThat(listed(plan).notes())
                .contains("The sound early isn't in the film: it is over before the first frame.")
                .contains("The sound just isn't in the film: it is over before the first frame.");
    }

    @Test
    void markers_haveOneColour_byTheirSchemaOnly() {
        Plan plan = full();
        assertThat(listed(plan).text())
                .contains("* MARK: 01:00:01:00 sound: whoosh\r\n")
                .doesNotContain("LOC:");
        OtioReader read =
                new OtioReader(OpenTimeline.of(plan, Timeline.of(plan), BESIDE).json(), 24);
        assertThat(StrictJson.list(read.json, "tracks", "markers"))
                .hasSize(4)
                .allSatisfy(
                        marker -> assertThat(StrictJson.text(marker, "color")).isEqualTo("GREEN"));
    }

    @Test
    void aRateWithoutTimecode_hasNoList_butATimeline() {
        Plan plan = CutPlans.of("12 fps", CutPlans.shot("one", "24 fps", ""), "  - {shot: one, frames: 30}\n");
        assertThat(EditList.of(plan, Timeline.of(plan)))
                .isEqualTo(new EditList.Result.None("There is no edit decision list: 12 fps has no timecode; the open"
                        + " timeline holds the same cut."));
        assertThat(compareOtio(plan, new CutPlans.Rate("12 fps", 12, 12), "12 fps"))
                .isEqualTo(30);
    }

    @Test
    void aPlanWithoutCut_hasNoList() {
        Plan plan = CutPlans.read("""
                plumeline: 1
                film: {rate: 24 fps}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                shots:
                  one: {camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}, frames: 24}
                """);
        assertThat(EditList.of(plan, Timeline.of(plan)))
                .isEqualTo(new EditList.Result.None("There is no edit decision list: the plan has no cut."));
    }

    @Test
    void moreThanAThousandEvents_takeMoreDigits() {
        Plan plan = CutPlans.of(
                "24 fps",
                CutPlans.shot("one", "24 fps", "clip: {file: a.mov}\npasses: {a: {}, b: {clip.file: b.mov}}\n"),
                "  - {shot: one, frames: 2200, alternate: [a, b], each: 2}\n");
        List<EdlReader.Event> events = EdlReader.read(listed(plan).text(), 24).events;
        assertThat(events).hasSize(1100);
        assertThat(events.getFirst().number).isEqualTo("001");
        assertThat(events.getLast().number).isEqualTo("1100");
        assertThat(compareEdl(plan, AT_24, "many")).isEqualTo(2200);
    }

    /// Forty stretches, a minute, all ramped.
    @Test
    void aMinuteOfFortyShots_isTheSameEachTime() {
        StringBuilder shots = new StringBuilder();
        StringBuilder cut = new StringBuilder();
        for (int i = 0; i < 40; i++) {
            shots.append(CutPlans.shot(
                    "s" + i, "240 fps", "speed: [[0 frames, 100 %], [12 frames, 10 %], [36 frames, 80 %]]\n"));
            cut.append("  - {shot: s").append(i).append(", frames: 36}\n");
        }
        Plan plan = CutPlans.of("24 fps", shots.toString(), cut.toString());
        assertThat(listed(plan).text()).isEqualTo(listed(plan).text());
        assertThat(OpenTimeline.of(plan, Timeline.of(plan), BESIDE).json())
                .isEqualTo(OpenTimeline.of(plan, Timeline.of(plan), BESIDE).json());
        assertThat(compareEdl(plan, AT_24, "forty")).isEqualTo(1440);
    }
}
