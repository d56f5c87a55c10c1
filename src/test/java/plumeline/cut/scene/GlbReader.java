package plumeline.cut.scene;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import plumeline.cut.StrictJson;

/// Reads a binary glTF and plays it, by the text of the specification; shares nothing with the writer. Matrices are
/// rows of four.
final class GlbReader {
    private static final int FLOAT = 5126;

    final Object json;
    private final ByteBuffer binary;

    GlbReader(byte[] file) {
        ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(bytes.getInt()).as("magic").isEqualTo(0x46546C67);
        assertThat(bytes.getInt()).as("version").isEqualTo(2);
        assertThat(bytes.getInt()).as("length").isEqualTo(file.length);
        json = StrictJson.read(new String(chunk(bytes, 0x4E4F534A), UTF_8));
        binary = ByteBuffer.wrap(chunk(bytes, 0x004E4942)).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(bytes.remaining()).isZero();
        assertThat((int) StrictJson.number(json, "buffers", 0, "byteLength"))
                .isBetween(binary.capacity() - 3, binary.capacity());
    }

    private static byte[] chunk(ByteBuffer bytes, int type) {
        int length = bytes.getInt();
        assertThat(length % 4).as("chunk's end").isZero();
        assertThat(bytes.getInt()).as("chunk's type").isEqualTo(type);
        byte[] chunk = new byte[length];
        bytes.get(chunk);
        return chunk;
    }

    List<String> nodeNames() {
        return StrictJson.list(json, "nodes").stream()
                .map(node -> StrictJson.text(node, "name"))
                .toList();
    }

    /// Groups of figures of an accessor.
    List<double[]> figures(int accessor) {
        Object row = StrictJson.at(json, "accessors", accessor);
        Object view = StrictJson.at(json, "bufferViews", (int) StrictJson.number(row, "bufferView"));
        int width = Map.of("SCALAR", 1, "VEC3", 3, "VEC4", 4).get(StrictJson.text(row, "type"));
        boolean isFloat = StrictJson.number(row, "componentType") == FLOAT;
        int at = (int) StrictJson.number(view, "byteOffset");
        List<double[]> groups = new ArrayList<>();
        for (int i = 0; i < (int) StrictJson.number(row, "count"); i++) {
            double[] group = new double[width];
            for (int k = 0; k < width; k++, at += 4) {
                group[k] = isFloat ? binary.getFloat(at) : binary.getInt(at);
            }
            groups.add(group);
        }
        return groups;
    }

    /// The figures of a node at a time: its animation's where it has one, else its own.
    double[] played(int node, String path, double seconds) {
        if (StrictJson.map(json).containsKey("animations")) {
            for (Object channel : StrictJson.list(json, "animations", 0, "channels")) {
                if ((int) StrictJson.number(channel, "target", "node") == node
                        && StrictJson.text(channel, "target", "path").equals(path)) {
                    Object sampler = StrictJson.at(
                            json, "animations", 0, "samplers", (int) StrictJson.number(channel, "sampler"));
                    return sampled(
                            figures((int) StrictJson.number(sampler, "input")),
                            figures((int) StrictJson.number(sampler, "output")),
                            seconds,
                            path.equals("rotation"));
                }
            }
        }
        return StrictJson.list(json, "nodes", node, path).stream()
                .mapToDouble(figure -> (Double) figure)
                .toArray();
    }

    static double[] sampled(List<double[]> times, List<double[]> groups, double seconds, boolean isTurn) {
        assertThat(groups).hasSameSizeAs(times);
        int last = times.size() - 1;
        int next = 0;
        while (next <= last && times.get(next)[0] <= seconds) {
            next++;
        }
        if (next == 0 || next > last) {
            return groups.get(next == 0 ? 0 : last);
        }
        double from = times.get(next - 1)[0];
        double share = (seconds - from) / (times.get(next)[0] - from);
        double[] a = groups.get(next - 1);
        double[] b = groups.get(next);
        return isTurn ? slerp(a, b, share) : mixed(a, b, 1 - share, share);
    }

    /// Appendix C.4 of the specification.
    static double[] slerp(double[] a, double[] b, double share) {
        double along = a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3];
        double angle = Math.acos(Math.min(1, Math.abs(along)));
        if (angle < 1e-9) {
            return mixed(a, b, 1 - share, Math.signum(along) * share);
        }
        return mixed(
                a,
                b,
                Math.sin(angle * (1 - share)) / Math.sin(angle),
                Math.signum(along) * Math.sin(angle * share) / Math.sin(angle));
    }

    /// Appendix C.5 of the specification.
    static double cubic(double before, double out, double after, double in, double span, double t) {
        return (2 * t * t * t - 3 * t * t + 1) * before
                + span * (t * t * t - 2 * t * t + t) * out
                + (-2 * t * t * t + 3 * t * t) * after
                + span * (t * t * t - t * t) * in;
    }

    private static double[] mixed(double[] a, double[] b, double first, double second) {
        double[] mixed = new double[a.length];
        Arrays.setAll(mixed, i -> first * a[i] + second * b[i]);
        return mixed;
    }

    /// A place of a node's own frame in the scene's, at a time.
    double[] inScene(int node, double[] own, double seconds) {
        double[] turned = turned(played(node, "rotation", seconds), own);
        return mixed(turned, played(node, "translation", seconds), 1, 1);
    }

    /// Section 3.5.3 of the specification, as a matrix.
    static double[] turned(double[] q, double[] v) {
        double x = q[0];
        double y = q[1];
        double z = q[2];
        double w = q[3];
        return new double[] {
            (1 - 2 * (y * y + z * z)) * v[0] + 2 * (x * y - w * z) * v[1] + 2 * (x * z + w * y) * v[2],
            2 * (x * y + w * z) * v[0] + (1 - 2 * (x * x + z * z)) * v[1] + 2 * (y * z - w * x) * v[2],
            2 * (x * z - w * y) * v[0] + 2 * (y * z + w * x) * v[1] + (1 - 2 * (x * x + y * y)) * v[2]
        };
    }

    /// Where the camera sees a place of the scene: shares of the picture's width and height from its middle, to the
    /// right and up.
    double[] seen(double[] place, double seconds) {
        int node = nodeNames().indexOf("camera");
        double[] eye = played(node, "translation", seconds);
        double[] q = played(node, "rotation", seconds);
        double[] own = turned(new double[] {-q[0], -q[1], -q[2], q[3]}, mixed(place, eye, 1, -1));
        double height = 2 * Math.tan(StrictJson.number(json, "cameras", 0, "perspective", "yfov") / 2);
        double width = height * StrictJson.number(json, "cameras", 0, "perspective", "aspectRatio");
        return new double[] {own[0] / -own[2] / width, own[1] / -own[2] / height};
    }
}
