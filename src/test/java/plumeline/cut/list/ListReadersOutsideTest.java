package plumeline.cut.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.cut.StrictJson;
import plumeline.plan.Plan;
import plumeline.quantity.FrameRate;
import plumeline.tidy.Outside;
import plumeline.timeline.Timeline;

/// The readers of these tests against lists of others, so that what they say of ours can be believed; and how others
/// read speeds.
@Outside(
        source = "OpenTimelineIO (ASWF) and its reader of edit decision lists: small lists and what they mean",
        place = "reference/time.md, rows ED-01 to ED-04, ED-22, ED-23, OT-13, TC-10 to TC-15, minimal file",
        kind = "program")
final class ListReadersOutsideTest {
    @Test
    void editDecisionLists() {
        EdlReader.Event first = EdlReader.read("001  Z10 V  C\t\t01:00:04:05 01:00:05:12 00:59:53:11 00:59:54:18", 24)
                .events
                .getFirst();
        assertThat(first.sourceIn).isEqualTo(86_501);
        assertThat(first.source()).isEqualTo(31);
        assertThat(first.record()).isEqualTo(31);
        List<EdlReader.Event> numbers = EdlReader.read("""
                1 CLPA V C 113 170 0 57
                2 CLPA V C 170 170 57 57
                2 CLPB V D 027 162 189 57 84
                3 CLPB V C 189 381 84 276
                """, 24).events;
        assertThat(numbers).extracting(EdlReader.Event::record).containsExactly(57L, 0L, 27L, 192L);
        assertThat(numbers.get(2).transition).isEqualTo(27);
        assertThat(numbers.getLast().recordOut).isEqualTo(276);
        List<EdlReader.Event> odd = EdlReader.read("""
                TITLE: odd
                1 CLPA V C 00:00:04:17 00:00:07:02 00:00:00:00 00:00:02:09
                2 CLPA V C 00:00:07:02 00:00:07:02 00:00:02:09 00:00:02:09
                2 CLPB V D 027 00:00:06:18 00:00:07:21 00:00:02:09 00:00:03:12
                3 CLPB V C 00:00:07:21 00:00:15:21 00:00:03:12 00:00:11:12
                4 BL V D 024 00:00:00:00 00:00:01:00 00:00:11:12 00:00:12:12
                M2   BL   -047.6   00:00:00:00
                """, 24).events;
        assertThat(odd.get(3).recordOut).isEqualTo(276);
        assertThat(odd.get(4).record()).isEqualTo(24);
        assertThat(odd.get(4).speed).isEqualTo(-47.6);
    }

    /// TC-10 to TC-15.
    @Test
    void dropFrameLabels() {
        Object[][] rows = {
            {30, "00:00:59;29", 1799L}, {30, "00:01:00;02", 1800L}, {30, "00:10:00;00", 17_982L},
            {30, "01:00:00;00", 107_892L}, {30, "10:03:00;05", 1_084_319L}, {60, "00:01:00;04", 3600L},
            {60, "01:00:00;00", 215_784L}, {60, "05:01:30;03", 1_084_319L}
        };
        int compared = 0;
        for (Object[] row : rows) {
            EdlReader reader = EdlReader.read("FCM: DROP FRAME", (Integer) row[0]);
            assertThat(reader.frame((String) row[1])).isEqualTo(row[2]);
            compared++;
        }
        assertThat(compared).isEqualTo(8);
    }

    /// A clip of two seconds at half speed as the format's own library writes it; OT-13: three clips of 48 frames in
    /// the film at 1 and 1/2 and 24 at 2 use 48, 24 and 48 frames.
    @Test
    void openTimelines() {
        OtioReader reader =
                new OtioReader("""
                {"OTIO_SCHEMA":"Timeline.1","metadata":{},"name":"x","global_start_time":null,"tracks":{\
                "OTIO_SCHEMA":"Stack.1","metadata":{},"name":"tracks","source_range":null,"effects":[],"markers":[],\
                "enabled":true,"color":null,"children":[{"OTIO_SCHEMA":"Track.1","metadata":{},"name":"V1",\
                "source_range":null,"effects":[],"markers":[],"enabled":true,"color":null,"kind":"Video","children":[\
                """ + clip(48, "1.0") + "," + clip(48, "0.5") + "," + clip(24, "2.0") + "]}]}}", 24);
        OtioReader.Track track = reader.named("V1");
        assertThat(track.frames()).isEqualTo(120);
        assertThat(track.items()).extracting(OtioReader.Item::source).containsExactly(48.0, 24.0, 48.0);
        assertThat(track.items()).extracting(OtioReader.Item::first).containsExactly(0L, 48L, 96L);
        assertThat(StrictJson.text(track.items().getFirst().media(), "target_url"))
                .isEqualTo("file:///a.mov");
    }

    private static String clip(int frames, String scalar) {
        return """
                {"OTIO_SCHEMA":"Clip.2","metadata":{},"name":"a","source_range":{\
                "OTIO_SCHEMA":"TimeRange.1","duration":{\
                "OTIO_SCHEMA":"RationalTime.1","rate":24.0,"value":%d.0},"start_time":{"OTIO_SCHEMA":"RationalTime.1",\
                "rate":24.0,"value":0.0}},"effects":[{"OTIO_SCHEMA":"LinearTimeWarp.1","metadata":{},"name":"",\
                "effect_name":"LinearTimeWarp","enabled":true,"time_scalar":%s}],"markers":[],"enabled":true,\
                "color":null,"media_references":{"DEFAULT_MEDIA":{"OTIO_SCHEMA":"ExternalReference.1","metadata":{},\
                "name":"","available_range":null,"available_image_bounds":null,"target_url":"file:///a.mov"}},\
                "active_media_reference_key":"DEFAULT_MEDIA"}""".formatted(frames, scalar);
    }

    /// ED-22: a speed over the list's rate is the share of real speed. ED-23: a list of others ends its source with the
    /// last frame that it shows, ours where the next one would follow: they differ by less than one step of the
    /// source, and the half that is rounded.
    @Test
    void speedsOfOthers_areReadAsOurs() {
        double[][] scalars = {{48, 2}, {12, 0.5}, {47.6, 1.9833333}, {-24, -1}, {0, 0}, {4.8, 0.2}};
        int scaled = 0;
        for (double[] row : scalars) {
            Plan plan = CutPlans.of(
                    "24 fps",
                    CutPlans.shot("one", "24 fps", "speed: " + 100 * row[1] + " %\n"),
                    "  - {shot: one, frames: 48}\n");
            var listed = (EditList.Result.Listed) EditList.of(plan, Timeline.of(plan));
            assertThat(EdlReader.read(listed.text(), 24).events.getFirst().speed)
                    .isEqualTo(row[0]);
            String json = OpenTimeline.of(plan, Timeline.of(plan), new OpenTimeline.Beside("", ""))
                    .json();
            assertThat(new OtioReader(json, 24)
                            .tracks
                            .getFirst()
                            .items()
                            .getFirst()
                            .scalar())
                    .isCloseTo(row[1], within(1e-7));
            scaled++;
        }
        assertThat(scaled).isEqualTo(6);
        double[][] events = {
            {70, 36, 47.6},
            {15, 6, 68.0},
            {37, 19, 47.8},
            {55, 28, 48.0},
            {23, 18, 29.9},
            {17, 12, 35.1},
            {64, 43, 36.2},
            {16, 9, 45.3},
            {200, 101, 47.9},
            {57, 27, 52.6}
        };
        int compared = 0;
        for (double[] row : events) {
            long ours = Step.moved((long) row[1], row[2], new FrameRate(24, 1));
            assertThat((double) ours).isCloseTo(row[0], within(row[2] / 24 + 0.5));
            compared++;
        }
        assertThat(compared).isEqualTo(10);
    }
}
