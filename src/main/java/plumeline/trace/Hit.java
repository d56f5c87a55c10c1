package plumeline.trace;

/// Where a ray meets something. It is used again and again.
final class Hit {
    /// What was met.
    enum What {
        NOTHING,
        PART,
        /// The room in a clear part.
        ROOM,
        /// The liquid's surface in a room.
        LEVEL,
        /// A basin's panes from outside.
        OUTER,
        /// A basin's panes from inside.
        INNER,
        /// A basin's water.
        WATER,
        LIGHT
    }

    What what = What.NOTHING;

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
        what = What.NOTHING;
        t = farthest;
        index = -1;
    }

    void face(double x, double y, double z) {
        nx = x;
        ny = y;
        nz = z;
    }
}
