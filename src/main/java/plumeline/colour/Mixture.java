package plumeline.colour;

import java.util.ArrayList;
import java.util.List;

/// A lamp's emitters at drives that give a colour.
///
/// @param drives how far each emitter is driven, 0 to 1, in their order
/// @param colour the colour that comes of it
/// @param lumens the light that comes of it, lm
/// @param room how far inside of what the lamp reaches the wanted colour is, CIE 1976 u'v'; below 0 outside, by the
/// distance to the nearest colour, which is given then
public record Mixture(List<Double> drives, Chromaticity colour, double lumens, double room) {
    /// So near to the outline of what a lamp reaches a colour is taken to be on it, u'v': a hundred-thousandth of what
    /// an eye sees.
    private static final double NEAR = 1e-8;

    /// Copies the list.
    public Mixture {
        drives = List.copyOf(drives);
    }

    /// Gives the brightest mixture of exactly a colour, or of the nearest in u'v' that can be mixed: a linear
    /// programme, solved exactly up to rounding. Emitters are taken to give light in proportion to their drive, at
    /// an even colour, whatever the others do; real ones shift a little as they warm. Of mixtures that are equally
    /// bright it takes one.
    ///
    /// **Source:** lights add (Grassmann); own derivation of the programme, in [Balance].
    ///
    /// @param primaries the emitters, at least one
    /// @param wanted the wanted colour
    /// @return the mixture
    /// @throws IllegalArgumentException without an emitter
    public static Mixture brightest(List<Primary> primaries, Chromaticity wanted) {
        if (primaries.isEmpty()) {
            throw new IllegalArgumentException("a lamp without an emitter");
        }
        Gamut.Border border = new Gamut(primaries).nearest(wanted);
        List<Double> drives = border.room() > NEAR ? within(primaries, wanted) : along(primaries, border);
        Xyz light = Primary.sum(primaries, drives);
        double room = Math.abs(border.room()) <= NEAR ? 0 : border.room();
        return new Mixture(drives, light.findChromaticity().orElseThrow(), light.y(), room);
    }

    /// How far off the wanted colour is that comes of it.
    ///
    /// @return the distance in u'v', ≥ 0; 0 where it is reached
    public double distance() {
        return Math.max(0, -room);
    }

    private static List<Double> within(List<Primary> primaries, Chromaticity wanted) {
        List<Balance.Pull> pulls = new ArrayList<>();
        for (Primary each : primaries) {
            pulls.add(pull(each, each.colour().u() - wanted.u(), each.colour().v() - wanted.v()));
        }
        return new Balance(pulls).brightest();
    }

    /// At the outline only emitters on its nearest side, or corner, mix.
    private static List<Double> along(List<Primary> primaries, Gamut.Border border) {
        List<Integer> places = new ArrayList<>();
        List<Balance.Pull> pulls = new ArrayList<>();
        for (int i = 0; i < primaries.size(); i++) {
            Chromaticity colour = primaries.get(i).colour();
            double u = colour.u() - border.place().u();
            double v = colour.v() - border.place().v();
            if (Math.abs(u * border.along().v() - v * border.along().u()) <= NEAR) {
                places.add(i);
                pulls.add(pull(
                        primaries.get(i),
                        u * border.along().u() + v * border.along().v(),
                        0));
            }
        }
        List<Double> mixed = new Balance(pulls).brightest();
        List<Double> drives = new ArrayList<>();
        for (int i = 0; i < primaries.size(); i++) {
            int place = places.indexOf(i);
            drives.add(place < 0 ? 0 : mixed.get(place));
        }
        return drives;
    }

    /// In u'v' a light weighs `X + 15Y + 3Z`, which is `9Y/v'`.
    private static Balance.Pull pull(Primary primary, double u, double v) {
        double weight = 9 * primary.lumens() / primary.colour().v();
        return new Balance.Pull(
                Math.abs(u) < NEAR ? 0 : weight * u, Math.abs(v) < NEAR ? 0 : weight * v, primary.lumens());
    }
}
