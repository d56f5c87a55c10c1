package plumeline.lit;

import java.util.Optional;
import plumeline.light.Exposure;
import plumeline.light.Latitude;
import plumeline.quantity.Print;

/// Where a part of a thing lands over mid grey, against what the camera's body holds.
///
/// @param latitude what the body holds at the sensitivity set
/// @param reflects how the part reflects
record Tones(Latitude latitude, Reflects reflects) {
    /// How a part reflects.
    sealed interface Reflects {
        /// It is written.
        ///
        /// @param reflectance share of one
        /// @param halfShare by how much of it it may be off, 95 %, share of one
        record Written(double reflectance, double halfShare) implements Reflects {}

        /// Nobody says: from black print to white paper.
        record Untold() implements Reflects {}
    }

    /// Black print and white paper, shares of one: common practice.
    private static final double BLACK = 0.04;

    private static final double WHITE = 0.9;

    /// A reflectance that nobody measured is off by so much of it, 95 %: common practice.
    private static final double TYPICAL_SHARE = 0.1;

    /// Finds it.
    ///
    /// @return empty where the body's latitude isn't written
    static Optional<Tones> find(LitThing on, Spots.Part part) {
        return Setting.findLatitude(on.shot().camera()).map(latitude -> new Tones(latitude, reflects(on, part)));
    }

    private static Reflects reflects(LitThing on, Spots.Part part) {
        return on.findReflectance(part)
                .<Reflects>map(written -> new Reflects.Written(
                        written.si(), written.hasSpread() ? written.halfWidthSi() / written.si() : TYPICAL_SHARE))
                .orElse(new Reflects.Untold());
    }

    private static double lands(double reflectance, double overStops) {
        return Latitude.landsStops(reflectance, Exposure.FLAT, overStops);
    }

    /// What is left to clipping and to noise, stops, negative where it clips or drowns; nothing where nobody says how
    /// it reflects.
    ///
    /// @param overStops how much more light there is than the setting needs
    double[] roomStops(double overStops) {
        return switch (reflects) {
            case Reflects.Written(double reflectance, double _) -> room(lands(reflectance, overStops));
            case Reflects.Untold() -> new double[0];
        };
    }

    private double[] room(double lands) {
        return new double[] {latitude.toClippingStops(lands), latitude.toNoiseStops(lands)};
    }

    /// By how many stops either way it may land otherwise, as nobody knows closely how it reflects.
    double spreadStops() {
        return switch (reflects) {
            case Reflects.Written(double _, double half) -> Math.log(1 + half) / Math.log(2);
            case Reflects.Untold() -> 0;
        };
    }

    /// Says where it lands, and what becomes of it; of what nobody says how it reflects, only where white or black
    /// would be lost.
    ///
    /// @param name the part's name
    /// @param overStops how much more light there is than the setting needs
    Optional<String> findSentence(String name, double overStops) {
        return switch (reflects) {
            case Reflects.Written(double reflectance, double _) -> {
                double lands = lands(reflectance, overStops);
                yield Optional.of(name + " reflects " + Print.share(reflectance, 0) + " and lands " + place(lands)
                        + " mid grey" + holds() + becomes(lands));
            }
            case Reflects.Untold() -> {
                double black = lands(BLACK, overStops);
                double white = lands(WHITE, overStops);
                String ends = ends(black, white);
                yield ends.isEmpty()
                        ? Optional.empty()
                        : Optional.of("On " + name + " black print (" + Print.share(BLACK, 0) + ") would land "
                                + place(black) + " and white paper (" + Print.share(WHITE, 0) + ") " + place(white)
                                + " mid grey" + holds() + ends);
            }
        };
    }

    private String holds() {
        return " (" + Print.share(Latitude.midGrey(Exposure.FLAT), 1) + "); at this ISO the camera holds "
                + Amounts.stops(latitude.overStops()) + " over it and " + Amounts.stops(latitude.underStops())
                + " under.";
    }

    private static String place(double lands) {
        return Amounts.stops(lands) + (lands < 0 ? " under" : " over");
    }

    private String becomes(double lands) {
        double[] room = room(lands);
        if (room[0] < 0) {
            return " It clips: white without print.";
        }
        return room[1] < 0 ? " It drowns in noise." : "";
    }

    private String ends(double black, double white) {
        return (room(white)[0] < 0 ? " White would clip." : "")
                + (room(black)[1] < 0 ? " Black would drown in noise." : "");
    }
}
