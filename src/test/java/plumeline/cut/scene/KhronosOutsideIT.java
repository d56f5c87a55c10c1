package plumeline.cut.scene;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import plumeline.cut.NodeProgram;
import plumeline.cut.StrictJson;
import plumeline.solve.FilmAnswer;
import plumeline.tidy.Outside;

/// Scenes by the validator of those who wrote the standard: no error, warning, hint or remark; and it finds what is
/// spoilt on purpose.
@Outside(
        source = "gltf-validator 2.0.0-dev.3.10 (npm, Khronos Group, Apache-2.0)",
        place = "reference/time.md, row GL-09",
        kind = "program")
final class KhronosOutsideIT {
    /// Reads files one behind the other, each after its length in four bytes.
    private static final String SCRIPT = """
        const validator = require('gltf-validator');
        const input = require('fs').readFileSync(0);
        (async () => {
          const all = [];
          for (let at = 0; at < input.length;) {
            const length = input.readUInt32LE(at);
            const file = new Uint8Array(input.subarray(at + 4, at + 4 + length));
            const report = await validator.validateBytes(file, {maxIssues: 100});
            all.push({format: report.mimeType, codes: report.issues.messages.map(m => m.code),
                      animations: report.info.animationCount, triangles: report.info.totalTriangleCount});
            at += 4 + length;
          }
          console.log(JSON.stringify(all));
        })();
        """;

    private static List<Object> validated(List<byte[]> files) {
        int length = files.stream().mapToInt(file -> 4 + file.length).sum();
        ByteBuffer input = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        files.forEach(file -> input.putInt(file.length).put(file));
        List<Object> reports = StrictJson.list(StrictJson.read(NodeProgram.run(SCRIPT, input.array())));
        assertThat(reports).hasSameSizeAs(files);
        return reports;
    }

    private static void add(FilmAnswer film, List<byte[]> files) {
        MovesGlb.listAll(film).forEach(glb -> files.add(glb.bytes()));
    }

    @Test
    void scenes_areClean() {
        List<byte[]> files = new ArrayList<>();
        add(MovedPlans.solved(MovedPlans.ALL_AXES), files);
        add(MovedPlans.solved("""
              one:
                camera: {body: main, lens: macro, at: [0 mm, -1200 mm, 150 mm], aim: hero}
                tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}
                place: {hero: {thing: flacon, at: [0 mm, 0 mm, 40 mm], lines: 2}}
                lights: {key: {light: soft, at: [500 mm, -300 mm, 400 mm]}}
                moves: {zoom: {axis: zoom, by: 20 mm, in: 1 s}, pull: {axis: focus, by: 30 mm, in: 1 s}}
                passes: {lit: {}, dark: {lights.key.level: 0 %}}
                frames: 25
            """), files);
        long seed = 20261201;
        Random chance = new Random(seed);
        for (int i = 0; i < 20; i++) {
            add(MovedPlans.solved(MovedPlans.byChance(chance)), files);
        }
        List<Object> reports = validated(files);
        assertThat(reports).as("seed %s", seed).hasSize(1 + 2 + 20);
        for (Object report : reports) {
            assertThat(StrictJson.list(report, "codes")).isEmpty();
            assertThat(StrictJson.text(report, "format")).isEqualTo("model/gltf-binary");
        }
        assertThat(StrictJson.number(reports.getFirst(), "animations")).isEqualTo(1);
        assertThat(StrictJson.number(reports.getFirst(), "triangles")).isGreaterThan(300);
    }

    @Test
    void whatIsSpoilt_isFound() {
        byte[] good = MovesGlb.listAll(MovedPlans.solved(MovedPlans.ALL_AXES))
                .getFirst()
                .bytes();
        String time = "\"max\":[" + (double) (float) (79 * 1001.0 / 24_000) + "]";
        List<byte[]> spoilt = List.of(
                changed(
                        good,
                        json -> json.replaceAll("\"min\":\\[0\\.0\\],\"max\":\\[[0-9.]+\\]", "\"name\":\"times\"")),
                changed(good, json -> json.replaceFirst("\"LINEAR\"", "\"CUBICSPLINE\"")),
                changed(good, json -> json.replaceFirst("\"yfov\":[0-9.]+,", "")),
                changed(good, json -> json.replaceFirst("\"zfar\":100.0", "\"zfar\":0.005")),
                changed(good, json -> json.replace(time, "\"max\":[1.0]")),
                withTimesSwapped(good));
        List<Object> reports = validated(spoilt);
        List<String> codes = List.of(
                "ANIMATION_SAMPLER_INPUT_ACCESSOR_WITHOUT_BOUNDS",
                "ANIMATION_SAMPLER_OUTPUT_ACCESSOR_INVALID_COUNT",
                "UNDEFINED_PROPERTY",
                "CAMERA_ZFAR_LEQUAL_ZNEAR",
                "ACCESSOR_MAX_MISMATCH",
                "ACCESSOR_ANIMATION_INPUT_NON_INCREASING");
        for (int i = 0; i < codes.size(); i++) {
            assertThat(StrictJson.list(reports.get(i), "codes")).contains(codes.get(i));
        }
    }

    /// The same file with its second time behind its third.
    private static byte[] withTimesSwapped(byte[] glb) {
        Object json = new GlbReader(glb).json;
        int row = (int) StrictJson.number(json, "animations", 0, "samplers", 0, "input");
        byte[] other = glb.clone();
        ByteBuffer bytes = ByteBuffer.wrap(other).order(ByteOrder.LITTLE_ENDIAN);
        int at = 20 + bytes.getInt(12) + 8 + (int) StrictJson.number(json, "bufferViews", row, "byteOffset");
        float second = bytes.getFloat(at + 4);
        bytes.putFloat(at + 4, bytes.getFloat(at + 8)).putFloat(at + 8, second);
        return other;
    }

    /// The same file with other JSON.
    private static byte[] changed(byte[] glb, UnaryOperator<String> change) {
        ByteBuffer in = ByteBuffer.wrap(glb).order(ByteOrder.LITTLE_ENDIAN);
        int length = in.getInt(12);
        String json = new String(glb, 20, length, UTF_8);
        String other = change.apply(json).strip();
        assertThat(other).isNotEqualTo(json.strip());
        byte[] text = (other + " ".repeat((4 - other.getBytes(UTF_8).length % 4) % 4)).getBytes(UTF_8);
        ByteBuffer out = ByteBuffer.allocate(glb.length - length + text.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put(glb, 0, 8)
                .putInt(out.capacity())
                .putInt(text.length)
                .put(glb, 16, 4)
                .put(text);
        return out.put(glb, 20 + length, glb.length - 20 - length).array();
    }
}
