package plumeline.trace;

/// Where a ray meets something. It is used again and again.
final class Hit {
    static final int NOTHING = 0;
    static final int PART = 1;

    /// The room in a clear part.
    static final int ROOM = 2;

    /// The liquid's surface in a room.
    static final int LEVEL = 3;

    /// A basin's panes from outside.
    static final int OUTER = 4;

    /// A basin's panes from inside.
    static final int INNER = 5;

    /// A basin's water.
    static final int WATER = 6;

    static final int LIGHT = 7;

    /// What was met. A number: a kind would cost time at each note.
    int what;

    /// How far the ray goes to it, m.
    double t;

    /// Which part or light it is.
    int index;

    /// Which piece of its shape.
    int piece;

    /// Its place, m.
    double x;

    double y;
    double z;

    /// Straight out of it: of a sheet and a bend, to whence the ray comes.
    double nx;

    double ny;
    double nz;

    /// The place in its own frame, m.
    double ownX;

    double ownY;
    double ownZ;

    void clear(double farthest) {
        what = NOTHING;
        t = farthest;
        index = -1;
    }

    void face(double x, double y, double z) {
        nx = x;
        ny = y;
        nz = z;
    }
}
