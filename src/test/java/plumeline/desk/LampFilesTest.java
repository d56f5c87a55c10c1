package plumeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.light.WrittenLamp;
import plumeline.plan.Plans;

/// The photometric files of a plan's lamps.
final class LampFilesTest {
    private static final String LM63 = "IESNA:LM-63-2002\nTILT=NONE\n1 1000 1 2 1 1 2 0 0 0\n1 1 50\n0 90\n0\n900 0\n";

    @TempDir
    private Path folder;

    private Plans.Reading read(String name) throws IOException, Refusal {
        Path file = folder.resolve("plan.yaml");
        Files.writeString(file, """
            plumeline: 1
            film: {rate: 24 fps}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
              lights:
                bare: {gives: 900 cd}
                spot: {file: %s}
            shots: {one: {camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}}}
            """.formatted(name));
        Plans.Reading plain = Plans.read(Files.readAllBytes(file), file.toString());
        assertThat(plain.problems()).isEmpty();
        return LampFiles.applyTo(plain.plan().orElseThrow(), file.toString());
    }

    @Test
    void file_isLookedForFromThePlansFolder() throws IOException, Refusal {
        Files.createDirectories(folder.resolve("lamps"));
        Files.writeString(folder.resolve("lamps/spot.ies"), LM63);
        Plans.Reading reading = read("lamps/spot.ies");
        assertThat(reading.plan().orElseThrow().kit().lights().get(1).file()).contains(LM63);
        assertThat(reading.plan().orElseThrow().kit().lights().getFirst().file())
                .isEmpty();
    }

    @Test
    void givesAlongAnAxisWithoutLight_isSaid() throws IOException, Refusal {
        Files.writeString(folder.resolve("wings.ies"), LM63.replace("900 0", "0 900"));
        assertThat(read("wings.ies").plan()).isPresent();
        assertThat(read("wings.ies, gives: 400 lm").plan()).isPresent();
        assertThat(read("wings.ies, gives: 400 cd").problems().getFirst().toText())
                .contains("of a lamp that gives nothing along its axis", "P-FILE-04");
    }

    @Test
    void slips_nameFileLineAndField() throws IOException, Refusal {
        assertThat(read("spot.ies").problems().getFirst().toText())
                .contains("plan.yaml:8:18 kit.lights.spot.file is spot.ies, which is not there", "P-FILE-01");
        Files.writeString(folder.resolve("spot.ies"), LM63.replace("900", "nine"));
        assertThat(read("spot.ies").problems().getFirst().toText())
                .contains("spot.ies, in whose line 7 is: intensity is \"nine\"", "P-FILE-02");
    }

    /// A file whose lamp was measured tilted tells its light from the vertical, not from the lamp's own axis.
    @Test
    void aLampMeasuredTilted_isRefused() throws IOException, Refusal {
        String level = WrittenLamp.round().eulumdat(1, List.of(0.0), List.of(0.0));
        String tilted = level.replace("\n1\n0\n1\n1\n40 W", "\n1\n30\n1\n1\n40 W");
        assertThat(tilted).isNotEqualTo(level);
        Files.writeString(folder.resolve("spot.ldt"), level);
        assertThat(read("spot.ldt").problems()).isEmpty();
        Files.writeString(folder.resolve("spot.ldt"), tilted);
        assertThat(read("spot.ldt").problems().getFirst().toText())
                .contains("spot.ldt, of a lamp that was measured tilted by 30 deg", "P-FILE-03");
    }
}
