package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static plumeline.light.WrittenLamp.at;
import static plumeline.light.WrittenLamp.near;
import static plumeline.light.WrittenLamp.read;
import static plumeline.light.WrittenLamp.refuse;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/// How EULUMDAT files are read, and what is refused of them.
final class EulumdatTest {
    private static final List<String> SMALL =
            List.of(("Ours,1,4,4,90,3,45,report,lamp,number,file,date,300,200,100,250,150,10,20,30,5,"
                            + "100,80,1,0,1,2,tungsten,1500,3200,100,150,1,1,1,1,1,1,1,1,1,1,0,90,180,270,0,45,90,"
                            + "1000,500,0,800,400,0")
                    .split(","));

    private static String small() {
        return String.join("\n", SMALL);
    }

    /// The small file with one line, counted from 1, replaced.
    private static String with(int line, String text) {
        var lines = new ArrayList<>(SMALL);
        lines.set(line - 1, text);
        return String.join("\n", lines);
    }

    private static void checkRefused(String text, int line, String found, String accepted) {
        assertThat(refuse(text)).isEqualTo(new LampFile.Refused(line, found, accepted));
    }

    @Test
    void aSmallFile_isRead() {
        Photometry lamp = read(small());
        assertThat(at(lamp.intensity(), 0, 0)).isEqualTo(1500);
        assertThat(at(lamp.intensity(), 180, 45)).isEqualTo(750);
        assertThat(at(lamp.intensity(), 270, 45)).isEqualTo(600);
        assertThat(lamp.opening()).isEqualTo(new Opening(Opening.Shape.RECTANGLE, 0.15, 0.25, 0.03));
        assertThat(lamp.watts()).isEqualTo(150);
        assertThat(lamp.lamp()).isEqualTo("tungsten");
        assertThat(lamp.statedFlux()).isEqualTo(new Photometry.StatedFlux.Leaving(1200));
        assertThat(lamp.tilt()).isEqualTo(new Photometry.Tilt.None());
    }

    @Test
    void decimalCommasAndOtherLineEnds_areRead() {
        assertThat(at(read(with(51, "500,5")).intensity(), 0, 45)).isCloseTo(750.75, near(1e-9));
        assertThat(at(read(small().replace("\n", "\r\n") + "\r\n\r\n").intensity(), 0, 0))
                .isEqualTo(1500);
    }

    @Test
    void latinLetters_areRead() {
        assertThat(read(with(28, "Glühlampe")).lamp()).isEqualTo("Glühlampe");
    }

    @Test
    void belowNoLamps_theFluxIsThatWhichLeaves() {
        Photometry lamp = read(with(27, "-1"));
        assertThat(lamp.intensity().peakCandelas()).isEqualTo(1500);
        assertThat(lamp.statedFlux()).isEqualTo(new Photometry.StatedFlux.Leaving(1500));
    }

    @Test
    void withoutALightOutputRatio_theFluxIsTheLamps() {
        assertThat(read(with(23, "")).statedFlux()).isEqualTo(new Photometry.StatedFlux.OfLamps(1500));
    }

    @Test
    void conversionFactor_counts() {
        assertThat(read(with(24, "0,5")).intensity().peakCandelas()).isEqualTo(750);
    }

    @Test
    void ofSeveralSets_theFirstCounts() {
        var lines = new ArrayList<>(SMALL.subList(0, 25));
        lines.addAll(
                List.of("2", "1", "3", "first", "second", "1000", "9000", "2700", "4000", "90", "80", "75", "200"));
        lines.addAll(SMALL.subList(32, SMALL.size()));
        Photometry lamp = read(String.join("\n", lines));
        assertThat(lamp.lamp()).isEqualTo("first");
        assertThat(lamp.watts()).isEqualTo(75);
        assertThat(lamp.intensity().peakCandelas()).isEqualTo(1000);
    }

    @Test
    void roundAndUntoldOpenings_areSeen() {
        assertThat(read(with(17, "0")).opening()).isEqualTo(new Opening(Opening.Shape.ROUND, 0.25, 0.25, 0.03));
        assertThat(read(with(16, "")).opening()).isEqualTo(new Opening(Opening.Shape.POINT, 0, 0, 0));
    }

    @Test
    void tiltWhileMeasured_isTold() {
        assertThat(read(with(25, "15")).tilt()).isEqualTo(new Photometry.Tilt.Measured(Math.toRadians(15)));
    }

    @Test
    void whatIsOut_isRefusedWithItsLine() {
        checkRefused(with(3, "5"), 3, "Isym is 5", "a whole number from 0 to 4");
        checkRefused(with(3, "x"), 3, "Isym is \"x\"", "a number of at most 40 characters");
        checkRefused(with(4, "6"), 4, "number of C planes is 6", "a multiple of 4 where Isym is 4");
        checkRefused(with(6, "10000000"), 6, "number of gamma angles is 10000000", "a whole number from 2 to 10000");
        checkRefused(with(16, "-5"), 16, "length of the luminous area in mm is -5", "0 to 1000000");
        checkRefused(with(24, "0"), 24, "conversion factor is 0", "1.0E-9 to 1.0E9");
        checkRefused(with(26, "0"), 26, "number of lamp sets is 0", "a whole number from 1 to 20");
        checkRefused(with(27, "0"), 27, "number of lamps is 0", "1 or more, or below 0 (absolute)");
        checkRefused(with(29, "-1"), 29, "flux of the lamps is -1", "1.0E-9 to 1.0E9");
        checkRefused(with(44, "85"), 46, "C plane 2 is 85 deg", "90 deg, by its count and Isym");
        checkRefused(with(49, "20"), 49, "gamma 3 is 20 deg after 45", "angles that grow, by at least 1.0E-6 deg");
        checkRefused(with(51, "-500"), 51, "intensity in cd is -750", "0 to 1.0E12");
        checkRefused(with(51, ""), 51, "intensity is \"\"", "a number of at most 40 characters");
        checkRefused(small() + "\n9", 56, "more after the last intensity", "as many lines as the counts announce");
        checkRefused("Ours", 1, "the file's end", "line 2 of EULUMDAT");
        String cut = String.join("\n", SMALL.subList(0, 54));
        checkRefused(cut, 54, "the file's end", "intensity");
    }

    @Test
    void planesThatDoNotClose_areRefused() {
        var lines = new ArrayList<>(SMALL);
        lines.set(2, "0");
        lines.set(45, "185");
        lines.addAll(List.of("1", "1", "1", "1", "1", "1"));
        checkRefused(
                String.join("\n", lines),
                46,
                "the last plane is at 185 deg",
                "planes all round, with no wider gap at the end than between them");
    }

    @Test
    void anyLineLeftOut_isRefused() {
        int refused = 0;
        for (int line = 0; line < SMALL.size(); line++) {
            var lines = new ArrayList<>(SMALL);
            lines.remove(line);
            byte[] bytes = WrittenLamp.bytes(String.join("\n", lines));
            refused += LampFile.read(bytes) instanceof LampFile.Refused ? 1 : 0;
        }
        assertThat(refused).isEqualTo(SMALL.size());
    }
}
