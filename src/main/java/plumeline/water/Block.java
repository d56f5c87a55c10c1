package plumeline.water;

import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A box whose axis goes up through the middle of its base: x along its width, y along its depth, z up.
///
/// Cut into six tetrahedra of one volume round its long diagonal; each is cut by the plane in closed form, so volume
/// and centroid are exact at any tilt.
///
/// **Source:** own derivation; a tetrahedron's corner cut off by a plane is a tetrahedron again.
///
/// @param widthMetres along x, metres, > 0
/// @param depthMetres along y, metres, > 0
/// @param heightMetres along z, metres, > 0
/// @param baseMetres its base's height over the origin, metres
public record Block(double widthMetres, double depthMetres, double heightMetres, double baseMetres) implements Form {
    /// The corners on the six ways from the first to the last, as bits of x, y and z.
    private static final int[][] WAYS = {
        {0, 1, 3, 7}, {0, 1, 5, 7}, {0, 2, 3, 7}, {0, 2, 6, 7}, {0, 4, 5, 7}, {0, 4, 6, 7}
    };

    /// Checks the ranges.
    public Block {
        Ranges.checkPositive(widthMetres, "widthMetres");
        Ranges.checkPositive(depthMetres, "depthMetres");
        Ranges.checkPositive(heightMetres, "heightMetres");
        Ranges.check(Double.isFinite(baseMetres), "baseMetres", baseMetres, "finite");
    }

    /// Makes a box that stands on the origin.
    ///
    /// @param widthMetres along x, metres, > 0
    /// @param depthMetres along y, metres, > 0
    /// @param heightMetres along z, metres, > 0
    public Block(double widthMetres, double depthMetres, double heightMetres) {
        this(widthMetres, depthMetres, heightMetres, 0);
    }

    @Override
    public Portion whole() {
        double volume = widthMetres * depthMetres * heightMetres;
        return Portion.of(volume, 0, 0, volume * (baseMetres + heightMetres / 2), 0);
    }

    @Override
    public double lowestMetres(Vec up) {
        return up.z() * baseMetres
                + Math.min(0, up.z()) * heightMetres
                - Math.abs(up.x()) * widthMetres / 2
                - Math.abs(up.y()) * depthMetres / 2;
    }

    @Override
    public double highestMetres(Vec up) {
        return -lowestMetres(up.times(-1));
    }

    private double x(int corner) {
        return (corner & 1) == 0 ? -widthMetres / 2 : widthMetres / 2;
    }

    private double y(int corner) {
        return (corner & 2) == 0 ? -depthMetres / 2 : depthMetres / 2;
    }

    private double z(int corner) {
        return baseMetres + ((corner & 4) == 0 ? 0 : heightMetres);
    }

    @Override
    public Portion below(Vec up, double levelMetres) {
        double[] under = new double[8];
        for (int corner = 0; corner < under.length; corner++) {
            under[corner] = levelMetres - (up.x() * x(corner) + up.y() * y(corner) + up.z() * z(corner));
        }
        Sum sum = new Sum(under, widthMetres * depthMetres * heightMetres / WAYS.length);
        for (int[] way : WAYS) {
            sum.add(way);
        }
        double mx = 0;
        double my = 0;
        double mz = 0;
        for (int corner = 0; corner < under.length; corner++) {
            mx += sum.shares[corner] * x(corner);
            my += sum.shares[corner] * y(corner);
            mz += sum.shares[corner] * z(corner);
        }
        return Portion.of(sum.volume, mx, my, mz, sum.section);
    }

    /// Volume, section and the volume's first moment, kept as shares of the corners.
    private static final class Sum {
        private final double[] under;
        private final double each;
        private final double[] shares = new double[8];
        private double volume;
        private double section;

        private Sum(double[] under, double each) {
            this.under = under;
            this.each = each;
        }

        /// Adds a tetrahedron's part under the plane: a corner cut off, all but a corner, or a wedge.
        private void add(int[] way) {
            int[] c = way.clone();
            for (int i = 1; i < 4; i++) {
                for (int j = i; j > 0 && under[c[j]] > under[c[j - 1]]; j--) {
                    int swap = c[j];
                    c[j] = c[j - 1];
                    c[j - 1] = swap;
                }
            }
            int wet = 0;
            while (wet < 4 && under[c[wet]] > 0) {
                wet++;
            }
            switch (wet) {
                case 0 -> {}
                case 1 -> addCorner(c[0], c[1], c[2], c[3], 1);
                case 2 -> addWedge(c[0], c[1], c[2], c[3]);
                case 3 -> {
                    addWhole(c);
                    addCorner(c[3], c[0], c[1], c[2], -1);
                }
                default -> addWhole(c);
            }
        }

        private void addWhole(int[] c) {
            volume += each;
            for (int corner : c) {
                shares[corner] += each / 4;
            }
        }

        /// The part of the edge from a to b on a's side of the plane.
        private double part(int a, int b) {
            return under[a] / (under[a] - under[b]);
        }

        private void addCorner(int a, int b, int c, int d, int sign) {
            double tb = part(a, b);
            double tc = part(a, c);
            double td = part(a, d);
            double cut = sign * each * tb * tc * td;
            volume += cut;
            shares[a] += cut / 4 * (4 - tb - tc - td);
            shares[b] += cut / 4 * tb;
            shares[c] += cut / 4 * tc;
            shares[d] += cut / 4 * td;
            section += 3 * each * tb * tc * Math.abs(1 / (under[a] - under[d]));
        }

        /// Corners a and b under the plane, c and d over it: three tetrahedra, whose corners are on the edges.
        private void addWedge(int a, int b, int c, int d) {
            double ac = part(a, c);
            double ad = part(a, d);
            double bc = part(b, c);
            double bd = part(b, d);
            double first = each * bc * bd;
            double second = each * ac * ad * (1 - bd);
            double third = each * ac * (1 - bc) * bd;
            volume += first + second + third;
            shares[a] += (first + second * (3 - ac - ad) + third * (2 - ac)) / 4;
            shares[b] += (first * (3 - bc - bd) + second * (1 - bd) + third * (2 - bc - bd)) / 4;
            shares[c] += (first * bc + second * ac + third * (ac + bc)) / 4;
            shares[d] += (first * bd + second * (ad + bd) + third * bd) / 4;
            double acRate = 1 / (under[a] - under[c]);
            double adRate = 1 / (under[a] - under[d]);
            double bcRate = 1 / (under[b] - under[c]);
            double bdRate = 1 / (under[b] - under[d]);
            section += each
                    * (bcRate * bd
                            + bc * bdRate
                            + (1 - bd) * (acRate * ad + ac * adRate)
                            - ac * ad * bdRate
                            + (1 - bc) * (acRate * bd + ac * bdRate)
                            - ac * bd * bcRate);
        }
    }
}
