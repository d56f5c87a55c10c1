package plumeline.wet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.ink.Clarity;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.TankPlace;
import plumeline.quantity.Origin;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// A tank's water and the ink that each take leaves in it.
public sealed interface InkedWater {
    /// The light that shall be left, share of one, where nobody says: as the question `clear-water` has it.
    double LEAST_CLEAR = 0.95;

    /// What is missing.
    enum Lack {
        /// The shot has no tank.
        TANK,
        /// The water's depth.
        DEPTH,
        /// No ink is let go.
        INK,
        /// How much ink a take lets go.
        VOLUME,
        /// The ink's strength.
        STRENGTH,
        /// The ink's strength is typical, not measured.
        MEASUREMENT
    }

    /// Something is missing.
    ///
    /// @param lacks what, at least one
    record Missing(List<Lack> lacks) implements InkedWater {
        /// Copies the list.
        public Missing {
            lacks = List.copyOf(lacks);
        }
    }

    /// Enough is written.
    ///
    /// @param strength decadic absorbance of the neat ink over a length
    /// @param metres3 the water, m³
    /// @param inkMetres3 ink a take, m³
    /// @param walls the tank
    record Known(Quantity strength, double metres3, double inkMetres3, TankWalls walls) implements InkedWater {
        private static final double LEAST_PATH_METRES = 1e-6;

        /// Gives how clear the water before a thing stays.
        ///
        /// @param thing a thing in the tank, seen through the front glass
        /// @param strengthPerMetre the ink's strength, 1/m, > 0
        /// @return the water's clarity over the way from its front to the glass
        public Clarity before(Body thing, double strengthPerMetre) {
            double path = thing.bounds().low().y() - walls.inside().low().y();
            return new Clarity(strengthPerMetre, Math.max(path, LEAST_PATH_METRES), metres3);
        }
    }

    /// Reads a shot.
    ///
    /// @param stage the shot
    /// @return its water, or what is missing
    static InkedWater of(Stage stage) {
        Shot shot = stage.shot();
        Optional<TankPlace> tank = shot.findTank();
        Optional<Quantity> depth = tank.flatMap(TankPlace::water);
        Optional<Release.OfInk> release =
                shot.findRelease().filter(Release.OfInk.class::isInstance).map(Release.OfInk.class::cast);
        Optional<Quantity> volume = release.flatMap(ink -> ink.written().findQuantity("volume"));
        Optional<Quantity> strength = release.flatMap(ink -> ink.ink().written().findQuantity("strength"));
        List<Lack> lacks = new ArrayList<>();
        add(lacks, Lack.TANK, tank.isEmpty());
        add(lacks, Lack.DEPTH, tank.isPresent() && depth.isEmpty());
        add(lacks, Lack.INK, release.isEmpty());
        add(lacks, Lack.VOLUME, release.isPresent() && volume.isEmpty());
        add(lacks, Lack.STRENGTH, release.isPresent() && strength.isEmpty());
        add(
                lacks,
                Lack.MEASUREMENT,
                strength.filter(one -> one.origin() == Origin.TYPICAL).isPresent());
        if (!lacks.isEmpty()) {
            return new Missing(lacks);
        }
        TankWalls walls = stage.findTank().orElseThrow();
        Bounds inside = walls.inside();
        double area = (inside.high().x() - inside.low().x())
                * (inside.high().y() - inside.low().y());
        return new Known(
                strength.orElseThrow(),
                area * depth.orElseThrow().si(),
                volume.orElseThrow().si(),
                walls);
    }

    private static void add(List<Lack> lacks, Lack lack, boolean isMissing) {
        if (isMissing) {
            lacks.add(lack);
        }
    }
}
