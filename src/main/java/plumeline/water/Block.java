package plumeline.water;

import java.util.Arrays;
import java.util.Comparator;
import plumeline.geom.Vec;

/// A box that stands on the middle of its base: x along its width, y along its depth, z up.
///
/// Cut into six tetrahedra round its long diagonal; each is cut by the plane in closed form, so volume and centroid are
/// exact at any tilt.
///
/// **Source:** own derivation; a tetrahedron's corner cut off by a plane is a tetrahedron again.
///
/// @param widthMetres along x, metres, > 0
/// @param depthMetres along y, metres, > 0
/// @param heightMetres along z, metres, > 0
public record Block(double widthMetres, double depthMetres, double heightMetres) implements Form {
    /// The corners between 0 and 7 on the six ways from one to the other, as bits of x, y and z.
    private static final int[] FIRST = {1, 1, 2, 2, 4, 4};

    private static final int[] SECOND = {3, 5, 3, 6, 5, 6};

    /// Checks the ranges.
    public Block {
        Ranges.checkPositive(widthMetres, "widthMetres");
        Ranges.checkPositive(depthMetres, "depthMetres");
        Ranges.checkPositive(heightMetres, "heightMetres");
    }

    @Override
    public Portion whole() {
        double volume = widthMetres * depthMetres * heightMetres;
        return Portion.of(volume, 0, 0, volume * heightMetres / 2, 0);
    }

    @Override
    public double lowestMetres(Vec up) {
        return Math.min(0, up.z()) * heightMetres
                - Math.abs(up.x()) * widthMetres / 2
                - Math.abs(up.y()) * depthMetres / 2;
    }

    @Override
    public double highestMetres(Vec up) {
        return -lowestMetres(up.times(-1));
    }

    private Vec corner(int bits) {
        double x = (bits & 1) == 0 ? -widthMetres / 2 : widthMetres / 2;
        double y = (bits & 2) == 0 ? -depthMetres / 2 : depthMetres / 2;
        return new Vec(x, y, (bits & 4) == 0 ? 0 : heightMetres);
    }

    @Override
    public Portion below(Vec up, double levelMetres) {
        Sum sum = new Sum(up, levelMetres);
        for (int i = 0; i < FIRST.length; i++) {
            sum.add(corner(0), corner(FIRST[i]), corner(SECOND[i]), corner(7));
        }
        Vec moment = sum.moment;
        return Portion.of(sum.volume, moment.x(), moment.y(), moment.z(), sum.section);
    }

    private static final class Sum {
        private final Vec up;
        private final double level;
        private double volume;
        private Vec moment = Vec.ZERO;
        private double section;

        private Sum(Vec up, double level) {
            this.up = up;
            this.level = level;
        }

        private void add(Vec... corners) {
            Arrays.sort(corners, Comparator.comparingDouble(up::dot));
            int under = 0;
            while (under < 4 && up.dot(corners[under]) < level) {
                under++;
            }
            switch (under) {
                case 0 -> {}
                case 1 -> {
                    Vec a = corners[0];
                    Vec[] cut = {cut(a, corners[1]), cut(a, corners[2]), cut(a, corners[3])};
                    put(a, cut[0], cut[1], cut[2], 1);
                    section += area(cut[0], cut[1], cut[2]);
                }
                case 2 -> addWedge(corners);
                case 3 -> {
                    Vec d = corners[3];
                    Vec[] cut = {cut(d, corners[0]), cut(d, corners[1]), cut(d, corners[2])};
                    put(corners[0], corners[1], corners[2], d, 1);
                    put(d, cut[0], cut[1], cut[2], -1);
                    section += area(cut[0], cut[1], cut[2]);
                }
                default -> put(corners[0], corners[1], corners[2], corners[3], 1);
            }
        }

        /// Two corners under the plane: a wedge with the edge a–b below and the four-sided cut above, in three parts.
        private void addWedge(Vec[] corners) {
            Vec a = corners[0];
            Vec b = corners[1];
            Vec ac = cut(a, corners[2]);
            Vec ad = cut(a, corners[3]);
            Vec bc = cut(b, corners[2]);
            Vec bd = cut(b, corners[3]);
            put(a, b, bc, bd, 1);
            put(a, ac, ad, bd, 1);
            put(a, ac, bc, bd, 1);
            section += area(ac, ad, bd) + area(ac, bc, bd);
        }

        private Vec cut(Vec a, Vec b) {
            double ha = up.dot(a);
            double hb = up.dot(b);
            return a.plus(b.minus(a).times((level - ha) / (hb - ha)));
        }

        private void put(Vec a, Vec b, Vec c, Vec d, int sign) {
            double part = sign * Math.abs(b.minus(a).cross(c.minus(a)).dot(d.minus(a))) / 6;
            volume += part;
            moment = moment.plus(a.plus(b).plus(c).plus(d).times(part / 4));
        }

        private static double area(Vec a, Vec b, Vec c) {
            return b.minus(a).cross(c.minus(a)).lengthMetres() / 2;
        }
    }
}
