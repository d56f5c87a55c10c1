package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plumeline.plan.Thing;
import plumeline.water.Vessel;

/// A plan's thing as water knows it: what it weighs, what it displaces, and the vessel that floats, hangs or stands.
///
/// A sealed thing weighs its `mass`, or its `empty_mass` and `contents`. An open one holds tank water where neither
/// wall, contents nor `air` is. The form is drawn wider or narrower so that it has the volume that was measured, and
/// shifted along its axis where `centre_of_volume` is written; a box with liquid in it is taken as round. What it
/// `displaces` was measured without air under a hollow base; lowered upright it keeps the `air` of its `base`.
///
/// @param mass all that weighs, kilograms
/// @param displaced the water it displaces with all of it under, cubic metres
/// @param net weight in water, kilograms; negative floats
/// @param basis where the volume comes from
/// @param body the vessel, where its centre of mass is known
/// @param assumed what was taken for what isn't written, each in a few words
public record Immersed(Amount mass, Amount displaced, Amount net, Basis basis, Body body, List<String> assumed) {
    /// How far a volume by a form may be off, 95 %: a millimetre in a diameter of 40.
    ///
    /// **Source:** common practice with a tape.
    public static final double FORM_SHARE = 0.05;

    /// A figure with its spread.
    ///
    /// @param value the value, SI
    /// @param half 95 % half-width, SI, ≥ 0; 0 where none is written
    public record Amount(double value, double half) {}

    /// Where a volume comes from.
    public enum Basis {
        /// It was pushed under and weighed: `displaces`.
        DISPLACES,
        /// Its profile, cylinder or box: typical, within [#FORM_SHARE].
        FORM
    }

    /// What is missing, or can't be.
    public enum Lack {
        /// A centre that was measured lies outside it.
        CENTRE,
        /// What it weighs.
        MASS,
        /// It weighs no more than its contents.
        TOO_LIGHT,
        /// How much air stays in an open one.
        AIR,
        /// Wall, contents and air have no room in it.
        TOO_FULL,
        /// Its profile has a hole or no volume.
        PROFILE,
        /// It displaces far more than its form holds.
        OUTLINE,
        /// The hollow of its base has no room in its form, or less room than air.
        BASE
    }

    /// What of a thing is measured, and may be off.
    public enum Measure {
        /// Its whole mass.
        MASS("mass"),
        /// Its mass without contents.
        EMPTY_MASS("empty_mass"),
        /// The volume it displaces, as it was measured.
        DISPLACES("displaces"),
        /// The volume of its form, where nothing was measured.
        FORM(""),
        /// The height of its centre of mass.
        CENTRE_OF_MASS("centre_of_mass"),
        /// The height of its outer volume's centre.
        CENTRE_OF_VOLUME("centre_of_volume"),
        /// How much is in it.
        CONTENTS("contents.volume"),
        /// How dense that is.
        CONTENTS_DENSITY("contents.density"),
        /// The air in it.
        AIR("air"),
        /// How dense its wall is.
        WALL("wall.density"),
        /// The air under its base.
        BASE_AIR("base.air");

        private final String path;

        Measure(String path) {
            this.path = path;
        }

        /// Its key in the plan, dotted; empty for a form's volume.
        String path() {
            return path;
        }
    }

    /// A thing at the ends of what one measure may be.
    ///
    /// @param measure the measure
    /// @param ends the thing with it 95 % half-widths lower and higher; one where the other can't be
    public record Moved(Measure measure, List<Immersed> ends) {
        /// Copies the list.
        public Moved {
            ends = List.copyOf(ends);
        }
    }

    /// The vessel.
    public sealed interface Body {
        /// It is known.
        ///
        /// @param vessel the vessel
        /// @param assumed what was taken for what isn't written of how its weight lies, each in a few words
        record Of(Vessel vessel, List<String> assumed) implements Body {
            /// Copies the list.
            public Of {
                assumed = List.copyOf(assumed);
            }
        }

        /// It isn't.
        ///
        /// @param lack what is missing
        record Untold(Lack lack) implements Body {}
    }

    /// What was read.
    public sealed interface Reading {
        /// Enough is written.
        ///
        /// @param immersed the thing
        record Known(Immersed immersed) implements Reading {}

        /// Something is missing without which nothing is known.
        ///
        /// @param lack what
        record Missing(Lack lack) implements Reading {}
    }

    /// Copies the list.
    public Immersed {
        assumed = List.copyOf(assumed);
    }

    /// Reads a thing.
    ///
    /// @param thing the thing, its variant merged in
    /// @param waterKilogramsPerMetre3 density of what it is in, kilograms a cubic metre, > 0
    /// @return the thing in that, or what is missing
    public static Reading of(Thing thing, double waterKilogramsPerMetre3) {
        return new ImmersedReader(thing, waterKilogramsPerMetre3, Map.of()).read();
    }

    /// Reads a thing as it would be at the ends of each measure that may be off.
    ///
    /// @param thing the thing, its variant merged in
    /// @param waterKilogramsPerMetre3 density of what it is in, kilograms a cubic metre, > 0
    /// @return a measure each, in the order of [Measure], with what is known of the thing at its ends
    public static List<Moved> listMoved(Thing thing, double waterKilogramsPerMetre3) {
        ImmersedReader whole = new ImmersedReader(thing, waterKilogramsPerMetre3, Map.of());
        List<Moved> all = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            List<Immersed> ends = new ArrayList<>();
            for (double end : whole.ends(measure)) {
                Reading there = new ImmersedReader(thing, waterKilogramsPerMetre3, Map.of(measure, end)).read();
                if (there instanceof Reading.Known(Immersed known)) {
                    ends.add(known);
                }
            }
            if (!ends.isEmpty()) {
                all.add(new Moved(measure, ends));
            }
        }
        return all;
    }
}
