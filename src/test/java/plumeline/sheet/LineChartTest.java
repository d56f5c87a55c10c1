package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.card.Card;
import plumeline.sketch.Drawing;

final class LineChartTest {
    private static Card.Part.Chart chart(double frames, double seconds) {
        return new Card.Part.Chart(
                "Real time against screen time",
                new Card.Axis("screen frames", frames),
                new Card.Axis("s after GO", seconds),
                List.of(
                        new Card.Corner(0, 0),
                        new Card.Corner(frames / 2, seconds / 4),
                        new Card.Corner(frames, seconds)),
                List.of(
                        new Card.Note(new Card.Corner(frames / 4, seconds / 8), "50 %"),
                        new Card.Note(new Card.Corner(frames * 3 / 4, seconds * 5 / 8), "150 %")));
    }

    private static Drawing drawing(double frames, double seconds) {
        return LineChart.of("one.chart", chart(frames, seconds));
    }

    /// The corners of the drawn line, pixels.
    private static List<double[]> line(Drawing drawing) {
        Matcher path = Pattern.compile("<path d=\"([^\"]*)\"").matcher(drawing.toSvg());
        assertThat(path.find()).isTrue();
        List<double[]> corners = new ArrayList<>();
        Matcher corner = Pattern.compile("[ML](\\S+) ([^ML]+)").matcher(path.group(1));
        while (corner.find()) {
            corners.add(new double[] {Double.parseDouble(corner.group(1)), Double.parseDouble(corner.group(2))});
        }
        return corners;
    }

    private static List<String> words(Drawing drawing) {
        List<String> words = new ArrayList<>();
        Matcher text = Pattern.compile("<text[^>]*>([^<]*)</text>").matcher(drawing.toSvg());
        while (text.find()) {
            words.add(text.group(1));
        }
        return words;
    }

    /// The field is 240 px high; a quarter of the time is a quarter of its height.
    @Test
    void line_isToScale() {
        List<double[]> line = line(drawing(120, 2));
        assertThat(line).hasSize(3);
        double floor = line.getFirst()[1];
        assertThat(line.get(1)[1]).isCloseTo(floor - 60, within(0.02));
        assertThat(line.get(2)[1]).isCloseTo(floor - 240, within(0.02));
        double wide = line.get(2)[0] - line.get(0)[0];
        assertThat(line.get(1)[0]).isCloseTo(line.get(0)[0] + wide / 2, within(0.02));
        assertThat(line.get(2)[0]).isLessThan(drawing(120, 2).widthPixels());
    }

    @Test
    void rulersAndNotes_areLettered() {
        assertThat(words(drawing(120, 2)))
                .contains("s after GO", "screen frames", "50 %", "150 %")
                .contains("0", "20", "40", "120", "0.5", "1", "1.5", "2");
        assertThat(drawing(120, 2).title())
                .isEqualTo("Real time against screen time: screen frames to the right, s after GO upward");
    }

    @Test
    void veryShortAndVeryLongShots_haveFewRoundFigures() {
        assertThat(words(drawing(3, 0.0125)))
                .contains("0.01", "3", "50 %", "150 %")
                .hasSizeLessThan(20);
        assertThat(words(drawing(100_000, 5000)))
                .contains("1000", "20000", "50 %", "150 %")
                .hasSizeLessThan(20);
    }
}
