package plumeline.geom;

import java.util.ArrayList;
import java.util.List;

/// A shape in its own frame: origin in the middle of its base, axis up.
public sealed interface Solid {
    /// Gives the height over the base.
    ///
    /// @return height, metres
    double heightMetres();

    /// Gives the enclosed volume: exact sums of frusta, `π h (R² + R r + r²) / 3` each.
    ///
    /// @return volume, cubic metres
    double volumeMetres3();

    /// Gives the largest distance of any point from the upright axis.
    ///
    /// @return radius, metres
    double reachMetres();

    /// Makes an upright cylinder.
    ///
    /// @param diameterMetres diameter, metres, over 0
    /// @param heightMetres height, metres, over 0
    /// @return the cylinder as a solid of revolution
    static Revolved cylinder(double diameterMetres, double heightMetres) {
        return new Revolved(List.of(new Station(0, diameterMetres / 2), new Station(heightMetres, diameterMetres / 2)));
    }

    /// A solid of revolution: straight between its stations, closed flat at both ends, so a stack of frusta.
    ///
    /// @param stations profile from the base up; the first at height 0, heights never falling, equal heights make a
    /// shoulder
    record Revolved(List<Station> stations) implements Solid {
        /// Checks and copies the profile.
        public Revolved {
            stations = List.copyOf(stations);
            if (stations.size() < 2) throw new IllegalArgumentException("a profile needs two stations or more");
            if (stations.getFirst().heightMetres() != 0) {
                throw new IllegalArgumentException("a profile starts at height 0");
            }
            double reach = stations.getFirst().radiusMetres();
            for (int i = 1; i < stations.size(); i++) {
                reach = Math.max(reach, stations.get(i).radiusMetres());
                if (stations.get(i).heightMetres() < stations.get(i - 1).heightMetres()) {
                    throw new IllegalArgumentException("a profile's heights must not fall");
                }
            }
            if (!(stations.getLast().heightMetres() > 0)) throw new IllegalArgumentException("a profile needs height");
            if (!(reach > 0)) throw new IllegalArgumentException("a profile needs a radius over 0");
        }

        @Override
        public double heightMetres() {
            return stations.getLast().heightMetres();
        }

        @Override
        public double volumeMetres3() {
            double sum = 0;
            for (int i = 1; i < stations.size(); i++) {
                double a = stations.get(i - 1).radiusMetres();
                double b = stations.get(i).radiusMetres();
                sum += (stations.get(i).heightMetres() - stations.get(i - 1).heightMetres()) * (a * a + a * b + b * b);
            }
            return sum * Math.PI / 3;
        }

        @Override
        public double reachMetres() {
            double reach = 0;
            for (Station station : stations) reach = Math.max(reach, station.radiusMetres());
            return reach;
        }

        /// Gives the profile's radius at a height; at a shoulder the larger one.
        ///
        /// @param heightMetres height over the base, metres
        /// @return radius, metres, 0 above and below the solid
        public double radiusAtMetres(double heightMetres) {
            double best = 0;
            for (int i = 1; i < stations.size(); i++) {
                Station low = stations.get(i - 1);
                Station high = stations.get(i);
                if (heightMetres < low.heightMetres() || heightMetres > high.heightMetres()) continue;
                double rise = high.heightMetres() - low.heightMetres();
                double share = rise > 0 ? (heightMetres - low.heightMetres()) / rise : 0;
                double radius = low.radiusMetres() + share * (high.radiusMetres() - low.radiusMetres());
                best = Math.max(best, rise > 0 ? radius : Math.max(low.radiusMetres(), high.radiusMetres()));
            }
            return best;
        }
    }

    /// A box standing on its base, its width facing the camera at turn 0.
    ///
    /// @param widthMetres along x, metres, over 0
    /// @param depthMetres along y, metres, over 0
    /// @param heightMetres along z, metres, over 0
    record Box(double widthMetres, double depthMetres, double heightMetres) implements Solid {
        /// Checks that each is over 0 and finite.
        public Box {
            if (!(widthMetres > 0 && depthMetres > 0 && heightMetres > 0)
                    || !(widthMetres + depthMetres + heightMetres < 1e6)) {
                throw new IllegalArgumentException("a box needs width, depth and height over 0 m, given " + widthMetres
                        + ", " + depthMetres + ", " + heightMetres);
            }
        }

        /// Gives the corners: the one at index i lies right where i holds 1, behind where it holds 2, at the top where
        /// it holds 4.
        ///
        /// @return eight places in the box's own frame, metres
        public List<Vec> corners() {
            List<Vec> corners = new ArrayList<>(8);
            for (int i = 0; i < 8; i++) {
                corners.add(new Vec(
                        ((i & 1) == 0 ? -0.5 : 0.5) * widthMetres,
                        ((i & 2) == 0 ? -0.5 : 0.5) * depthMetres,
                        (i & 4) == 0 ? 0 : heightMetres));
            }
            return corners;
        }

        @Override
        public double volumeMetres3() {
            return widthMetres * depthMetres * heightMetres;
        }

        @Override
        public double reachMetres() {
            return Math.sqrt(widthMetres * widthMetres + depthMetres * depthMetres) / 2;
        }
    }
}
