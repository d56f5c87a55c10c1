package plumeline.trace;

/// A ray on its way from the camera. It is used again and again.
final class Ray {
    /// How many rays it has parted from.
    final int level;

    /// Where it is, m.
    double x;

    double y;
    double z;

    /// Where it goes, of length 1.
    double dx;

    double dy;
    double dz;

    /// What it counts, a channel each.
    double red;

    double green;
    double blue;

    /// How often it was mirrored.
    int mirrors;

    /// What it is in.
    final State in = new State();

    Ray(int level) {
        this.level = level;
    }

    void dim(double share) {
        red *= share;
        green *= share;
        blue *= share;
    }

    double counts() {
        return Math.max(red, Math.max(green, blue));
    }

    void turn(double toX, double toY, double toZ) {
        dx = toX;
        dy = toY;
        dz = toZ;
    }

    /// Becomes another where it is now, mirrored once more.
    void part(Ray from, double share, double toX, double toY, double toZ) {
        x = from.x;
        y = from.y;
        z = from.z;
        turn(toX, toY, toZ);
        red = from.red * share;
        green = from.green * share;
        blue = from.blue * share;
        mirrors = from.mirrors + 1;
        in.set(from.in.within, from.in.medium);
    }
}
