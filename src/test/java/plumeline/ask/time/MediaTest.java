package plumeline.ask.time;

import static org.assertj.core.api.Assertions.assertThat;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;

/// The questions `media` and `beat`: what they assume, say and refuse.
final class MediaTest {
    @Test
    void media_tellsItsCard_andWarnsOfOneCopy() {
        Answer one = answer("media", "bit_rate: 400 Mb/s\ntakes: [{seconds: 4 h}]\n");
        assertThat(one.assumed().stream().map(Answer.Assumed::name))
                .containsExactly("takes[1].count", "copies", "card");
        assertThat(one.notes().attempts())
                .containsExactly(
                        "Have 3 copies on two kinds of media, one elsewhere, before a card is wiped: 2160 GB.",
                        "The longest take doesn't go on one card: take larger ones, or part it.");
    }

    @Test
    void media_refusesHalfAForm_andARatioUpsideDown() {
        assertThat(problems("media", "size: [1920 px, 1080 px]\ndepth: 12\ntakes: [{seconds: 2 s}]\n"))
                .anyMatch(text -> text.contains("Add rate."));
        assertThat(problems("media", "bit_rate: 400 Mb/s\nratio: 5\ntakes: [{seconds: 2 s}]\n"))
                .anyMatch(text -> text.contains("ratio without size"));
        assertThat(problems(
                        "media",
                        "size: [1920 px, 1080 px]\ndepth: 12\nrate: 24 fps\nratio: \"1:5\"\ntakes: [{seconds: 2 s}]\n"))
                .anyMatch(text -> text.contains("ratio is 1:5; must be 1:1 or more") && text.contains("P-ASK-47"));
    }

    @Test
    void beat_saysWhichTempoIsWhole_andIsExactInDecimals() {
        Answer odd = answer("beat", "tempo: 128 bpm\nrate: 24 fps\n");
        assertThat(odd.notes().attempts())
                .containsExactly(
                        "Where the music can be made or stretched to it: 130.909 bpm has 11 frames to the beat.");
        assertThat(odd.assumed()).hasSize(3);
        // 20 ms are half a frame at 25 fps: it goes up, and a second later again.
        Answer late = answer("beat", "tempo: 60 bpm\nrate: 25 fps\nfirst: 20 ms\nbars: 1\nbeats_per_bar: 2\n");
        assertThat(number(late, "frame_1")).isEqualTo(1);
        assertThat(number(late, "frame_2")).isEqualTo(26);
    }
}
