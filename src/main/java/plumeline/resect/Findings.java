package plumeline.resect;

import java.util.List;
import plumeline.geom.Point;

/// What a still's clicks tell of the set.
///
/// @param offs how far each number seems off
/// @param places the places clicked, in their order
/// @param singles explanations by the camera or one thing alone, all else at its mark; the best first, none where no
/// one
///     explains the clicks or nothing needs to be off
/// @param otherwise gross errors that others would explain as well
/// @param pairs numbers that the clicks tell only together
/// @param widened by how much every ± was widened since clicks and marks disagree more than their errors say; 1 where
///     they don't
public record Findings(
        List<Off> offs,
        List<Place> places,
        List<Single> singles,
        List<Otherwise> otherwise,
        List<Pair> pairs,
        double widened) {
    /// Copies the lists.
    public Findings {
        offs = List.copyOf(offs);
        places = List.copyOf(places);
        singles = List.copyOf(singles);
        otherwise = List.copyOf(otherwise);
        pairs = List.copyOf(pairs);
    }

    /// What the clicks say of a number.
    public enum Told {
        /// Nothing that its placing error didn't.
        NOT,
        /// They narrow it down, within what its placing error makes likely.
        WITHIN,
        /// It is off beyond what its placing error makes likely.
        APART,
        /// Either it or something else is off: they don't tell which.
        EITHER
    }

    /// What of its owner is off.
    public enum What {
        /// Its marks; of the camera also how it looks.
        ALL,
        /// How the camera looks, and nothing else.
        AIM,
        /// Where the camera stands, and not how it looks.
        PLACE
    }

    /// How far a number seems off.
    ///
    /// @param sought the number
    /// @param offSi by how much it is more than set: metres, radians or a share
    /// @param sigmaSi how sure that is, one standard deviation
    /// @param told what the clicks say of it
    public record Off(Sought sought, double offSi, double sigmaSi, Told told) {
        Off asEither(double thenSi) {
            return new Off(sought, thenSi, sigmaSi, Told.EITHER);
        }

        /// Gives how sure it is.
        ///
        /// @return a 95 % half-width, SI
        public double halfSi() {
            return Normal.HALF_95 * sigmaSi;
        }

        /// Gives the lower end of what holds it in 80 of 100.
        ///
        /// @return SI
        public double lowSi() {
            return offSi - Normal.HALF_80 * sigmaSi;
        }

        /// Gives the upper end of what holds it in 80 of 100.
        ///
        /// @return SI
        public double highSi() {
            return offSi + Normal.HALF_80 * sigmaSi;
        }

        /// Tells whether it is surely off.
        ///
        /// @return true where its ± doesn't hold 0
        public boolean isOff() {
            return isTold() && Math.abs(offSi) > halfSi();
        }

        /// Tells whether the clicks tell it by itself.
        ///
        /// @return true where its figure and its ± mean something
        public boolean isTold() {
            return told == Told.WITHIN || told == Told.APART;
        }
    }

    /// A place that was clicked.
    ///
    /// @param name its name
    /// @param clicked where, pixels
    /// @param planned where it should be, pixels
    /// @param fitted where it should be with everything as it seems, pixels
    /// @param isMisclick whether it was found not to be on its place, and left out
    public record Place(String name, Point clicked, Point planned, Point fitted, boolean isMisclick) {
        /// Gives how far the click is from where it should be with everything as it seems.
        ///
        /// @return pixels
        public double leftPixels() {
            return Math.hypot(clicked.x() - fitted.x(), clicked.y() - fitted.y());
        }

        /// Gives how far the click is from where it should be.
        ///
        /// @return pixels
        public double offPixels() {
            return Math.hypot(clicked.x() - planned.x(), clicked.y() - planned.y());
        }
    }

    /// That one owner of marks alone is off.
    ///
    /// @param owner `camera`, a thing's name in the shot, a move's
    /// @param what what of it
    /// @param offs how far each of its numbers then is off, and how sure that is if all else stands at its mark
    /// @param looks how the camera looks aside then, where it does
    public record Single(String owner, What what, List<Off> offs, List<Off> looks) {
        /// Copies the lists.
        public Single {
            offs = List.copyOf(offs);
            looks = List.copyOf(looks);
        }
    }

    /// A number by how much it would be off.
    ///
    /// @param sought the number
    /// @param offSi by how much it is more than set, SI
    public record Moved(Sought sought, double offSi) {}

    /// What may be grossly wrong.
    public sealed interface Cause {
        /// A click on another spot.
        ///
        /// @param place the place's name
        record Misclicked(String place) implements Cause {}

        /// Marks set to another place.
        ///
        /// @param names what they are called together
        /// @param moved each
        record Misplaced(String names, List<Moved> moved) implements Cause {
            /// Copies the list.
            public Misplaced {
                moved = List.copyOf(moved);
            }
        }
    }

    /// A gross error and what would explain as much.
    ///
    /// @param taken what is taken to be wrong
    /// @param others what may be instead
    public record Otherwise(Cause taken, List<Cause> others) {
        /// Copies the list.
        public Otherwise {
            others = List.copyOf(others);
        }
    }

    /// Two numbers that are told together only.
    ///
    /// @param one the one
    /// @param other the other
    public record Pair(Sought one, Sought other) {}
}
