package plumeline.ask.picture;

import java.util.OptionalDouble;
import plumeline.answer.Sensor;
import plumeline.optics.FarLimit;
import plumeline.optics.FlatWall;
import plumeline.optics.Layer;
import plumeline.optics.LensModel;
import plumeline.optics.Optics;
import plumeline.optics.SharpZone;
import plumeline.optics.Sharpness;

/// How far the camera stands, and how much is sharp: the question `framing` in plain SI numbers.
public final class Framing {
    private Framing() {}

    /// What is asked.
    ///
    /// @param sensor the part of the sensor that makes the picture
    /// @param lens the lens
    /// @param sharpness f-number and largest blur disc
    /// @param thing what shall fill the frame
    /// @param fill how much of it
    /// @param front where the lens's front is
    /// @param wall the tank wall between
    public record Inputs(
            Sensor sensor, LensModel lens, Stop sharpness, Thing thing, Fill fill, Front front, Wall wall) {
        Sharpness lensSharpness() {
            return new Sharpness(lens, sharpness.fNumber(), sharpness.blurMetres());
        }
    }

    /// The f-number and what counts as sharp.
    ///
    /// @param fNumber engraved f-number, > 0
    /// @param blurMetres largest blur disc on the sensor, metres, > 0
    public record Stop(double fNumber, double blurMetres) {}

    /// The thing's outer measures.
    ///
    /// @param widthMetres width, metres, > 0
    /// @param heightMetres height, metres, > 0
    /// @param depthMetres depth along the optical axis, metres, ≥ 0; its middle plane is the one that is measured
    public record Thing(double widthMetres, double heightMetres, double depthMetres) {}

    /// How much of the frame the thing fills, at its middle plane.
    public sealed interface Fill {
        /// A share of the frame's height.
        ///
        /// @param share fraction of one, > 0
        record Height(double share) implements Fill {}

        /// A share of the frame's width.
        ///
        /// @param share fraction of one, > 0
        record Width(double share) implements Fill {}
    }

    /// Where the lens's front is.
    public sealed interface Front {
        /// Nobody said.
        record Unknown() implements Front {}

        /// This far before the sensor mark.
        ///
        /// @param metres sensor mark to front, metres, ≥ 0
        record At(double metres) implements Front {}
    }

    /// What lies between, if anything.
    public sealed interface Wall {
        /// Air only.
        record None() implements Wall {}

        /// A pane and water behind it.
        ///
        /// @param airGapMetres least air wanted before the pane, metres, ≥ 0
        /// @param glassMetres the pane's thickness, metres, ≥ 0
        /// @param waterMetres from its wet face to the thing's middle plane, metres, ≥ 0; 0 is air behind the
        /// pane too
        record Tank(double airGapMetres, double glassMetres, double waterMetres) implements Wall {}
    }

    /// What was found. Distances count from the front principal plane, as true places.
    ///
    /// @param inputs what was asked
    /// @param magnification m, dimensionless
    /// @param dryMetres distance to the thing's middle as it would be in air, metres
    /// @param zone the limits of what is sharp, true places
    public record Found(Inputs inputs, double magnification, double dryMetres, SharpZone zone) {
        /// Gives the distance from the front principal plane to the thing's middle.
        ///
        /// @return distance, metres
        public double distanceMetres() {
            return dryMetres + wallShiftMetres();
        }

        /// Gives what the wall adds to the distance: t(1 − 1/n) of glass and water.
        ///
        /// @return shift, metres, ≥ 0
        public double wallShiftMetres() {
            return switch (inputs.wall()) {
                case Wall.None() -> 0;
                case Wall.Tank tank -> FlatWall.ofWater(tank.glassMetres()).paraxialShiftMetres(tank.waterMetres());
            };
        }

        /// Gives the distance from the sensor mark to the thing's middle; no gap between the principal planes.
        ///
        /// @return distance, metres
        public double fromSensorMetres() {
            return distanceMetres() + Optics.imageDistanceMetres(inputs.lens(), magnification);
        }

        /// Gives the way from the lens's front to the thing's near face.
        ///
        /// @return way, metres; empty where the front is unknown
        public OptionalDouble findFreeSpaceMetres() {
            return switch (inputs.front()) {
                case Front.Unknown() -> OptionalDouble.empty();
                case Front.At(double metres) ->
                    OptionalDouble.of(
                            fromSensorMetres() - metres - inputs.thing().depthMetres() / 2);
            };
        }

        /// Gives the air before the pane: from the lens's front where that is known, else from the principal plane.
        ///
        /// @return way, metres; empty where there is no pane
        public OptionalDouble findAirMetres() {
            return switch (inputs.wall()) {
                case Wall.None() -> OptionalDouble.empty();
                case Wall.Tank tank -> {
                    double toPane = distanceMetres() - tank.waterMetres() - tank.glassMetres();
                    yield OptionalDouble.of(
                            switch (inputs.front()) {
                                case Front.Unknown() -> toPane;
                                case Front.At(double metres) -> toPane + fromSensorMetres() - distanceMetres() - metres;
                            });
                }
            };
        }

        /// Gives the working f-number.
        ///
        /// @return N(1 + m/P), dimensionless
        public double workingFNumber() {
            return Optics.workingFNumber(inputs.lens(), inputs.sharpness().fNumber(), magnification);
        }

        /// Gives the light lost to close focus.
        ///
        /// @return stops, ≥ 0
        public double lightLossStops() {
            return Optics.lightLossStops(inputs.lens(), magnification);
        }

        /// Gives the diameter of the Airy disc at 550 nm.
        ///
        /// @return diameter in pixels of the picture
        public double airyPixels() {
            return Optics.airyDiameterMetres(workingFNumber()) / inputs.sensor().pitchMetres();
        }

        /// Gives the hyperfocal distance.
        ///
        /// @return from the front principal plane, in air, metres
        public double hyperfocalMetres() {
            return Optics.hyperfocalMetres(inputs.lensSharpness());
        }

        /// Gives where something seems to be that truly stands at or behind the pane's wet face, or in the same air.
        ///
        /// @param trueMetres true distance, metres
        /// @return apparent distance, metres, near the axis
        double apparentMetres(double trueMetres) {
            double index = inputs.wall() instanceof Wall.Tank tank && tank.waterMetres() > 0 ? Layer.WATER_INDEX : 1;
            return dryMetres + (trueMetres - distanceMetres()) / index;
        }
    }

    /// Answers.
    ///
    /// @param inputs what is asked
    /// @return what was found
    /// @throws IllegalArgumentException where a number is out of its range
    public static Found answer(Inputs inputs) {
        double magnification = switch (inputs.fill()) {
            case Fill.Height(double share) ->
                share * inputs.sensor().heightMetres() / inputs.thing().heightMetres();
            case Fill.Width(double share) ->
                share * inputs.sensor().widthMetres() / inputs.thing().widthMetres();
        };
        double dryMetres = Optics.distanceForMagnificationMetres(inputs.lens(), magnification);
        SharpZone seen = Optics.sharpZone(inputs.lensSharpness(), dryMetres);
        Found asSeen = new Found(inputs, magnification, dryMetres, seen);
        return new Found(inputs, magnification, dryMetres, trueZone(asSeen));
    }

    /// The limits are seen where a lens in air has them; where they truly are depends on what they are seen through.
    private static SharpZone trueZone(Found found) {
        double nearMetres = trueMetres(found, found.zone().nearMetres());
        return switch (found.zone().far()) {
            case FarLimit.Endless endless -> new SharpZone(nearMetres, endless);
            case FarLimit.At(double metres) -> SharpZone.of(nearMetres, trueMetres(found, metres));
        };
    }

    private static double trueMetres(Found found, double apparentMetres) {
        double behindMiddle = apparentMetres - found.dryMetres();
        if (!(found.inputs().wall() instanceof Wall.Tank tank) || tank.waterMetres() == 0) {
            return found.distanceMetres() + behindMiddle;
        }
        double behindWetFace = behindMiddle + tank.waterMetres() / Layer.WATER_INDEX;
        double wetFaceMetres = found.distanceMetres() - tank.waterMetres();
        if (behindWetFace >= 0) {
            return wetFaceMetres + behindWetFace * Layer.WATER_INDEX;
        }
        double behindDryFace = behindWetFace + tank.glassMetres() / Layer.GLASS_INDEX;
        return behindDryFace >= 0
                ? wetFaceMetres + behindWetFace * Layer.GLASS_INDEX
                : wetFaceMetres - tank.glassMetres() + behindDryFace;
    }
}
