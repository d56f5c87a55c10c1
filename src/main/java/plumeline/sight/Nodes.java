package plumeline.sight;

/// Directions looked at round a part: evenly all round, across its straight sides, and round each ellipse's short axis
/// both ways; how far the part reaches in each, and where it is touched just before and just after it as angles rise.
///
/// The even ones come first and are the same for all parts; `order` has all by rising angle from −π.
final class Nodes {
    /// How many even ones there are; a multiple of 8, so that the corners of the four sides are among them.
    static final int EVEN = 16;

    private static final int ROUND_ELLIPSE = 6;
    private static final double SAME = 1e-13;
    private static final double[] EVEN_X = evenly(0);
    private static final double[] EVEN_Y = evenly(3 * EVEN / 4);

    /// Rises with a direction's angle.
    final double[] key;
    final double[] ux;
    final double[] uy;
    final double[] reach;
    final double[] lx;
    final double[] ly;
    final double[] rx;
    final double[] ry;
    /// All places by rising angle.
    final int[] order;
    /// The places of those that aren't even, by rising angle.
    final int[] special;

    private final int sides;
    private int made = EVEN;

    Nodes(Shade shade, double[] sideX, double[] sideY, int firstFrom) {
        int n = EVEN + sideX.length + ROUND_ELLIPSE * shade.sxx.length;
        key = new double[n];
        ux = new double[n];
        uy = new double[n];
        reach = new double[n];
        lx = new double[n];
        ly = new double[n];
        rx = new double[n];
        ry = new double[n];
        sides = sideX.length;
        for (int i = 0; i < sides; i++) {
            int from = (firstFrom + i) % shade.count;
            side(shade, sideX[i], sideY[i], from, from + 1 == shade.count ? 0 : from + 1);
        }
        for (int i = 0; i < EVEN / 2; i++) {
            shade.touchBoth(EVEN_X[i], EVEN_Y[i]);
            single(i, EVEN_X[i], EVEN_Y[i], shade.farthest, shade.tx, shade.ty);
            single(i + EVEN / 2, -EVEN_X[i], -EVEN_Y[i], shade.oppositeFarthest, shade.ox, shade.oy);
        }
        key[0] = -2;
        for (int i = 0; i < shade.sxx.length; i++) {
            roundEllipse(shade, i);
        }
        special = sorted();
        order = merged();
    }

    private static double[] evenly(int turned) {
        double[] cosines = new double[EVEN];
        for (int i = 0; i < EVEN; i++) {
            // From the first quarter alone, so that opposite and mirrored directions are so to the last bit.
            int at = Math.floorMod(i + turned + EVEN / 2, EVEN);
            int folded = at > EVEN / 2 ? EVEN - at : at;
            boolean isFar = folded > EVEN / 4;
            int share = isFar ? EVEN / 2 - folded : folded;
            double cosine = share == EVEN / 4 ? 0 : Math.cos(2 * Math.PI * share / EVEN);
            cosines[i] = isFar ? -cosine : cosine;
        }
        return cosines;
    }

    /// A number from −2 to 2 that rises with the angle of a direction from −π to π.
    static double key(double ux, double uy) {
        double share = uy / (Math.abs(ux) + Math.abs(uy));
        return ux >= 0 ? share : uy >= 0 ? 2 - share : -2 - share;
    }

    private void single(int at, double x, double y, double far, double atX, double atY) {
        for (int i = EVEN; i < EVEN + sides; i++) {
            if (isSame(ux[i], uy[i], x, y)) {
                put(at, x, y, far, lx[i], ly[i], rx[i], ry[i]);
                return;
            }
        }
        put(at, x, y, far, atX, atY, atX, atY);
    }

    /// Whether two directions are the same but for rounding.
    static boolean isSame(double ax, double ay, double bx, double by) {
        return Math.abs(ax * by - ay * bx) < SAME && ax * bx + ay * by > 0;
    }

    private void side(Shade shade, double x, double y, int from, int to) {
        shade.touchOn(from, x, y);
        double beforeX = shade.tx;
        double beforeY = shade.ty;
        shade.touchOn(to, x, y);
        put(made++, x, y, x * beforeX + y * beforeY, beforeX, beforeY, shade.tx, shade.ty);
    }

    /// Across the long axis, and halfway round from there to its ends: a flat ellipse turns fastest between them. Also
    /// where the part's other ellipse is the outline: that helps to part contacts that are close together.
    private void roundEllipse(Shade shade, int i) {
        double half = (shade.sxx[i] + shade.syy[i]) / 2;
        double lean = (shade.sxx[i] - shade.syy[i]) / 2;
        double spread = Math.sqrt(lean * lean + shade.sxy[i] * shade.sxy[i]);
        double longX = Tangents.halfCosine(lean, shade.sxy[i], spread);
        double longY = Tangents.halfSine(lean, shade.sxy[i], spread);
        double c = Math.sqrt((half + spread) / (2 * half));
        double s = Math.sqrt(Math.max(0, half - spread) / (2 * half));
        roundEllipse(shade, -longY, longX);
        roundEllipse(shade, -c * longY - s * longX, c * longX - s * longY);
        roundEllipse(shade, -c * longY + s * longX, c * longX + s * longY);
    }

    private void roundEllipse(Shade shade, double x, double y) {
        shade.touchBoth(x, y);
        single(made++, x, y, shade.farthest, shade.tx, shade.ty);
        single(made++, -x, -y, shade.oppositeFarthest, shade.ox, shade.oy);
    }

    private void put(
            int at, double x, double y, double far, double beforeX, double beforeY, double afterX, double afterY) {
        key[at] = key(x, y);
        ux[at] = x;
        uy[at] = y;
        reach[at] = far;
        lx[at] = beforeX;
        ly[at] = beforeY;
        rx[at] = afterX;
        ry[at] = afterY;
    }

    private int[] sorted() {
        int[] places = new int[made - EVEN];
        for (int i = 0; i < places.length; i++) {
            double own = key[EVEN + i];
            int to = i;
            while (to > 0 && key[places[to - 1]] > own) {
                places[to] = places[to - 1];
                to--;
            }
            places[to] = EVEN + i;
        }
        return places;
    }

    private int[] merged() {
        int[] places = new int[made];
        int even = 0;
        int other = 0;
        for (int i = 0; i < places.length; i++) {
            boolean isOther = even == EVEN || other < special.length && key[special[other]] <= key[even];
            places[i] = isOther ? special[other++] : even++;
        }
        return places;
    }
}
