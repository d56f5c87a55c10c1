package plumeline.ask.colour;

import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.colour.CameraWhite;
import plumeline.colour.Chromaticity;
import plumeline.colour.Difference;
import plumeline.colour.Lab;
import plumeline.colour.Rgb;
import plumeline.colour.White;
import plumeline.colour.Xyz;

/// What `white-balance` finds: a light as a camera of fixed balance records it.
final class Balancing {
    private static final double LOG_2 = Math.log(2);

    private Balancing() {}

    /// What is asked.
    ///
    /// @param light the light's colour
    /// @param balance the white that the camera is balanced for
    /// @param camera its gains
    /// @param grey what a neutral surface throws back, a share
    /// @param headroomStops how far above a luminance reading a channel may stand; empty where it wasn't said
    record Inputs(
            Chromaticity light, Chromaticity balance, CameraWhite camera, double grey, OptionalDouble headroomStops) {}

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param light the light as a white; empty where it is none
    /// @param balance the balance as a white; empty where it is none
    /// @param channels what the channels come to where a reading of luminance says 1
    record Found(Inputs inputs, Optional<White> light, Optional<White> balance, Rgb channels) {
        boolean areWhites() {
            return light.isPresent() && balance.isPresent();
        }

        double miredShift() {
            return White.miredShift(
                    balance.orElseThrow().kelvin(), light.orElseThrow().kelvin());
        }

        double duvChange() {
            return light.orElseThrow().duv() - balance.orElseThrow().duv();
        }

        /// What a screen shows of the neutral surface, exposed by the reading.
        Xyz shown() {
            return inputs.camera.shown(inputs.light.at(inputs.grey));
        }

        Lab lab() {
            return Lab.of(shown(), Chromaticity.D65);
        }

        double difference() {
            return Difference.ciede2000(Lab.of(Chromaticity.D65.at(inputs.grey), Chromaticity.D65), lab());
        }

        double fullestStops() {
            return stops(channels.most());
        }

        double stopDown() {
            return fullestStops() - inputs.headroomStops.orElse(0);
        }
    }

    /// A channel in stops above the reading.
    static double stops(double channel) {
        return Math.log(channel) / LOG_2;
    }

    static Found answer(Inputs inputs) {
        return new Found(
                inputs,
                White.find(inputs.light),
                White.find(inputs.balance),
                inputs.camera.channels(inputs.light.at(1)));
    }
}
