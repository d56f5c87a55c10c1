package plumeline.cut.scene;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/// The binary part of a scene: rows of figures, one behind the other, each from a multiple of four bytes on.
final class Figures {
    private static final int FLOAT = 5126;
    private static final int UNSIGNED_INT = 5125;

    /// What a row of figures is for, by glTF's numbers for what a graphics card is told of it.
    enum Use {
        /// Corners of triangles.
        CORNERS("SCALAR", 1, 34963),
        /// Places or normals of a surface.
        SURFACE("VEC3", 3, 34962),
        /// Times.
        TIMES("SCALAR", 1, 0),
        /// Places in time.
        PLACES("VEC3", 3, 0),
        /// Turns in time.
        TURNS("VEC4", 4, 0);

        private final String type;
        private final int width;
        private final int target;

        Use(String type, int width, int target) {
            this.type = type;
            this.width = width;
            this.target = target;
        }

        String type() {
            return type;
        }

        /// 0 for what no graphics card is told.
        int target() {
            return target;
        }
    }

    /// A row of figures.
    ///
    /// @param start where it begins, bytes
    /// @param bytes how long it is
    /// @param component what a figure is, by glTF's number
    /// @param count how many figures, or groups of figures, it has
    /// @param least the least of each figure of a group
    /// @param most the most of each
    record Row(Use use, int start, int bytes, int component, int count, List<Double> least, List<Double> most) {
        Row {
            least = List.copyOf(least);
            most = List.copyOf(most);
        }
    }

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final List<Row> rows = new ArrayList<>();

    /// Adds figures, `use`'s width a group.
    ///
    /// @return the row's index
    int add(Use use, float[] figures) {
        int start = bytes.size();
        for (float figure : figures) {
            // A negative nought would differ from a nought for no reason.
            put(Float.floatToIntBits(figure + 0f));
        }
        List<Double> least = new ArrayList<>();
        List<Double> most = new ArrayList<>();
        for (int k = 0; k < use.width; k++) {
            float low = Float.POSITIVE_INFINITY;
            float high = Float.NEGATIVE_INFINITY;
            for (int i = k; i < figures.length; i += use.width) {
                low = Math.min(low, figures[i] + 0f);
                high = Math.max(high, figures[i] + 0f);
            }
            least.add((double) low);
            most.add((double) high);
        }
        rows.add(new Row(use, start, 4 * figures.length, FLOAT, figures.length / use.width, least, most));
        return rows.size() - 1;
    }

    /// Adds corners of triangles.
    ///
    /// @return the row's index
    int add(int[] corners) {
        int start = bytes.size();
        for (int corner : corners) {
            put(corner);
        }
        rows.add(new Row(Use.CORNERS, start, 4 * corners.length, UNSIGNED_INT, corners.length, List.of(), List.of()));
        return rows.size() - 1;
    }

    private void put(int word) {
        for (int shift = 0; shift < 32; shift += 8) {
            bytes.write(word >>> shift);
        }
    }

    List<Row> rows() {
        return List.copyOf(rows);
    }

    byte[] bytes() {
        return bytes.toByteArray();
    }
}
