package plumeline.flow;

import plumeline.ranges.Ranges;

/// A way dye gets into the water.
///
/// A quiet start stays even for too long and mixes half of what it should, so each carries seeded noise.
public sealed interface Release {
    /// Dye that is there when time begins.
    ///
    /// @param where the region it fills
    /// @param share its share in there, 0 to 1
    /// @param downMetresPerSecond the speed down that it was given with its push, metres a second
    /// @param noise the stirring left in it, as a share of the speed that its own weight and push stand for, 0 to
    /// 2; 1 for what a syringe leaves
    record Cloud(Inside where, double share, double downMetresPerSecond, double noise) implements Release {
        /// Checks the ranges.
        public Cloud {
            Ranges.check(share >= 0 && share <= 1, "share", share, "0 to 1");
            Ranges.checkFinite(downMetresPerSecond, "downMetresPerSecond");
            Ranges.check(noise >= 0 && noise <= 2, "noise", noise, "0 to 2");
        }
    }

    /// A bore from which dye of share 1 comes at an even rate. The water it adds leaves evenly at the top, clear.
    ///
    /// @param mouth where its mouth's middle is and where it points
    /// @param boreMetres its inner diameter, metres, > 0; may be smaller than a cell
    /// @param metres3PerSecond its rate, cubic metres a second, > 0
    /// @param startSeconds when it begins, seconds
    /// @param endSeconds when it ends, seconds, after the start
    /// @param noise how far the stream's speed wanders at random along each axis, as a share of itself, 0 to 2
    record Nozzle(
            Mouth mouth,
            double boreMetres,
            double metres3PerSecond,
            double startSeconds,
            double endSeconds,
            double noise)
            implements Release {
        /// Checks the ranges.
        public Nozzle {
            Ranges.checkPositive(boreMetres, "boreMetres");
            Ranges.checkPositive(metres3PerSecond, "metres3PerSecond");
            Ranges.checkFinite(startSeconds, "startSeconds");
            Ranges.check(endSeconds > startSeconds, "endSeconds", endSeconds, "after startSeconds " + startSeconds);
            Ranges.check(noise >= 0 && noise <= 2, "noise", noise, "0 to 2");
        }

        double speedMetresPerSecond() {
            return metres3PerSecond / (Math.PI / 4 * boreMetres * boreMetres);
        }

        /// For how much of a span it runs, seconds.
        double runsSeconds(double fromSeconds, double toSeconds) {
            return Math.max(0, Math.min(toSeconds, endSeconds) - Math.max(fromSeconds, startSeconds));
        }
    }

    /// A nozzle's mouth: its middle, and the direction of the stream, of any length but nought.
    ///
    /// @param xMetres from the left wall, metres
    /// @param yMetres from the front wall, metres
    /// @param zMetres over the floor, metres
    /// @param towardsX the direction's part to the right
    /// @param towardsY the direction's part away
    /// @param towardsZ the direction's part up
    record Mouth(double xMetres, double yMetres, double zMetres, double towardsX, double towardsY, double towardsZ) {
        /// Checks the ranges.
        public Mouth {
            Ranges.checkFinite(xMetres, "xMetres");
            Ranges.checkFinite(yMetres, "yMetres");
            Ranges.checkFinite(zMetres, "zMetres");
            Ranges.checkPositive(
                    Math.sqrt(towardsX * towardsX + towardsY * towardsY + towardsZ * towardsZ),
                    "length of (towardsX, towardsY, towardsZ)");
        }

        /// A mouth that points straight down.
        ///
        /// @param xMetres from the left wall, metres
        /// @param yMetres from the front wall, metres
        /// @param zMetres over the floor, metres
        /// @return the mouth
        public static Mouth down(double xMetres, double yMetres, double zMetres) {
            return new Mouth(xMetres, yMetres, zMetres, 0, 0, -1);
        }

        double place(int axis) {
            return axis == 0 ? xMetres : axis == 1 ? yMetres : zMetres;
        }

        /// The direction's part along an axis, of a direction of length 1.
        double towards(int axis) {
            double length = Math.sqrt(towardsX * towardsX + towardsY * towardsY + towardsZ * towardsZ);
            return (axis == 0 ? towardsX : axis == 1 ? towardsY : towardsZ) / length;
        }
    }
}
