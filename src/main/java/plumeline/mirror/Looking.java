package plumeline.mirror;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;

/// How a camera's sight goes to places on a body, and on from there when it is mirrored: straight, or bent on its way
/// as into a tank.
public interface Looking {
    /// Finds the one place from which all is looked at straight on.
    ///
    /// @return the lens point, m; empty where sight is bent
    Optional<Vec> findEye();

    /// Gives the way of sight from a place to the camera.
    ///
    /// @param place where it is, m
    /// @return the way's corners, the place first, the lens point last, m
    List<Vec> way(Vec place);

    /// Gives where a place looks from.
    ///
    /// @param place where it is, m
    /// @return direction from the place, of any length
    Vec toCamera(Vec place);

    /// Gives where a place seems to be, seen from the lens point.
    ///
    /// @param place where it is, m
    /// @return the apparent place, m
    Vec apparent(Vec place);

    /// Follows sight on from a place to its last straight stretch.
    ///
    /// @param place where it is, m
    /// @param toward where it goes first, of length 1
    /// @return how it goes on; empty where nothing is seen that way
    Optional<Onward> findOnward(Vec place, Vec toward);

    /// How sight goes on.
    ///
    /// @param corners from the place to where the last straight stretch begins, m
    /// @param toward where that goes, of length 1
    record Onward(List<Vec> corners, Vec toward) {
        /// Copies the list.
        public Onward {
            corners = List.copyOf(corners);
        }

        /// Gives where the last straight stretch begins.
        ///
        /// @return the place, m
        public Vec from() {
            return corners.getLast();
        }
    }

    /// All is looked at straight on.
    ///
    /// @param eye the lens point, m
    record Straight(Vec eye) implements Looking {
        @Override
        public Optional<Vec> findEye() {
            return Optional.of(eye);
        }

        @Override
        public List<Vec> way(Vec place) {
            return List.of(place, eye);
        }

        @Override
        public Vec toCamera(Vec place) {
            return eye.minus(place);
        }

        @Override
        public Vec apparent(Vec place) {
            return place;
        }

        @Override
        public Optional<Onward> findOnward(Vec place, Vec toward) {
            return Optional.of(new Onward(List.of(place), toward));
        }
    }
}
