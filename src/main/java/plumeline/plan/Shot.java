package plumeline.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import plumeline.text.Place;

/// A shot.
///
/// @param name its name
/// @param frames its own length in screen frames, where written
/// @param camera the camera
/// @param set what is placed: things, lamps, the tank, what is let go
/// @param moves the moves in the order written
/// @param playback its speed
/// @param views its passes, crops and wants
/// @param written all keys as written
public record Shot(
        String name,
        OptionalLong frames,
        Camera camera,
        SetPieces set,
        List<Move> moves,
        Playback playback,
        Views views,
        Written written) {

    /// What is placed in a shot, in the order written.
    ///
    /// @param placed the things
    /// @param lights the lamps
    /// @param tank the tank
    /// @param release what is let go
    public record SetPieces(
            List<Placed> placed, List<PlacedLight> lights, Optional<TankPlace> tank, Optional<Release> release) {
        /// Copies the lists.
        public SetPieces {
            placed = List.copyOf(placed);
            lights = List.copyOf(lights);
        }
    }

    /// How a shot is seen and judged.
    ///
    /// @param passes its passes in the order written
    /// @param crops the middle of a delivery's crop by the delivery's name, in shares of the picture from its
    /// middle
    /// @param wants its wants, ids `SHOT.1` and on
    public record Views(List<Pass> passes, Map<String, Crop> crops, List<WantLine> wants) {
        /// Copies the lists and the map.
        public Views {
            passes = List.copyOf(passes);
            crops = Map.copyOf(crops);
            wants = List.copyOf(wants);
        }
    }

    /// The middle of a crop.
    ///
    /// @param x to the right, a share of the picture's width, dimensionless
    /// @param y upwards, a share of the picture's height, dimensionless
    public record Crop(double x, double y) {
        /// The picture's middle.
        public static final Crop MIDDLE = new Crop(0, 0);
    }

    /// Copies the list.
    public Shot {
        moves = List.copyOf(moves);
    }

    /// Gives the things placed, in the order written.
    ///
    /// @return the things
    public List<Placed> placed() {
        return set.placed();
    }

    /// Gives the lamps placed, in the order written.
    ///
    /// @return the lamps
    public List<PlacedLight> lights() {
        return set.lights();
    }

    /// Finds the tank.
    ///
    /// @return the tank where the shot has one
    public Optional<TankPlace> findTank() {
        return set.tank();
    }

    /// Finds what is let go.
    ///
    /// @return the release where the shot has one
    public Optional<Release> findRelease() {
        return set.release();
    }

    /// Gives the same shot letting something else go, in all its passes that let go what it does.
    ///
    /// @param release what is let go instead
    /// @return the shot
    public Shot withRelease(Release release) {
        var passes = passes().stream()
                .map(pass -> pass.effective().findRelease().equals(findRelease())
                        ? new Pass(
                                pass.name(), pass.overrides(), pass.effective().withRelease(release), pass.place())
                        : pass)
                .toList();
        return new Shot(
                name,
                frames,
                camera,
                new SetPieces(set.placed(), set.lights(), set.tank(), Optional.of(release)),
                moves,
                playback,
                new Views(passes, views.crops(), views.wants()),
                written);
    }

    /// Gives the shot's wants.
    ///
    /// @return the wants in the order written
    public List<WantLine> wants() {
        return views.wants();
    }

    /// Gives the shot's passes.
    ///
    /// @return the passes in the order written
    public List<Pass> passes() {
        return views.passes();
    }

    /// Finds a thing by its name in the shot.
    ///
    /// @param thing the name
    /// @return the placed thing
    public Optional<Placed> findPlaced(String thing) {
        return placed().stream().filter(p -> p.name().equals(thing)).findFirst();
    }

    /// Finds a lamp by its name in the shot.
    ///
    /// @param light the name
    /// @return the placed lamp
    public Optional<PlacedLight> findLight(String light) {
        return lights().stream().filter(p -> p.name().equals(light)).findFirst();
    }

    /// Finds a pass by its name.
    ///
    /// @param pass the name
    /// @return the pass
    public Optional<Pass> findPass(String pass) {
        return passes().stream().filter(p -> p.name().equals(pass)).findFirst();
    }

    /// Gives where a delivery's crop stands in this shot, the picture's middle where the plan doesn't say.
    ///
    /// @param delivery the delivery's name
    /// @return the crop's middle
    public Crop cropOrDefault(String delivery) {
        return views.crops().getOrDefault(delivery, Crop.MIDDLE);
    }

    /// Gives every mark that is written in the shot, in the order of the text; marks that only follow from something
    /// else (a focus on a thing, an aim at a thing) aren't among them.
    ///
    /// @return the marks
    public List<Mark> marks() {
        return Stream.of(
                        cameraMarks(),
                        placed().stream().flatMap(p -> p.marks().stream()),
                        lights().stream().flatMap(l -> l.marks().stream()),
                        moves.stream().flatMap(m -> m.marks().stream()),
                        set.release().stream().flatMap(r -> r.marks().stream()))
                .flatMap(s -> s)
                .sorted(Comparator.comparingInt(m -> m.place().start()))
                .toList();
    }

    private Stream<Mark> cameraMarks() {
        var focus = camera.focus().stream()
                .flatMap(f -> f instanceof Camera.Focus.At at ? Stream.of(at.mark()) : Stream.empty());
        return Stream.of(camera.at().marks().stream(), aimMarks(camera.aim()), focus, camera.fNumber().stream())
                .flatMap(s -> s);
    }

    static Stream<Mark> aimMarks(Camera.Aim aim) {
        return aim instanceof Camera.Aim.By by ? Stream.concat(by.turn().stream(), by.tilt().stream()) : Stream.empty();
    }

    /// Gives where the shot's name is written.
    ///
    /// @return the place
    public Place place() {
        return written.place();
    }
}
