package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.motion.Run;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.When;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.time.Retime;
import plumeline.timeline.Played;

/// A shot, or one of its passes, turned into numbers once, ready to be posed at any frame for any values of its marks.
///
/// Values are in SI and in the order of [#marks]. A pass uses its shot's marks, except those it sets itself.
public final class Stage {
    private static final int MOST_TURNS = 12;

    private record Standing(
            Solid solid,
            Slots.Slot x,
            Slots.Slot y,
            Slots.Slot z,
            Slots.Slot turn,
            Slots.Slot lean,
            List<Slots.Slot> tied) {
        Body posed(double[] values) {
            Vec base = new Vec(x.in(values), y.in(values), z.in(values));
            return new Body(solid, new Pose(base, turn.in(values), lean.in(values)));
        }
    }

    private final Shot shot;
    private final String pass;
    private final List<StagedMark> marks;
    private final List<Standing> things = new ArrayList<>();
    private final List<LampStand> lamps = new ArrayList<>();
    private final List<Motions.Motion> motions;
    private final Retime retime;
    private final long frames;
    private final boolean isReframed;
    private final CameraStand camera;
    private final Optional<TankWalls> tank;
    private final List<Slots.Slot> mouth;

    private Stage(Plan plan, Shot base, Shot effective, String pass) {
        shot = effective;
        this.pass = pass;
        marks = base.marks().stream()
                .map(mark -> MarkRanges.of(mark, base, plan))
                .toList();
        Slots slots = new Slots(base.marks());
        for (Placed placed : effective.placed()) {
            things.add(new Standing(
                    Forms.solid(placed.thing().form()),
                    slots.of(placed.at().x()),
                    slots.of(placed.at().y()),
                    slots.of(placed.at().z(), 0),
                    slots.of(placed.turn(), 0),
                    slots.of(placed.tilt(), 0),
                    placed.tied().stream().map(slots::of).toList()));
        }
        double framesPerSecond = plan.film().rate().si();
        Retime written = Played.retime(effective.playback(), framesPerSecond);
        isReframed = Lengths.isReframed(plan, base);
        frames = Lengths.frames(plan, base, Motions.of(effective, slots, written), written);
        retime = written.fromEarliest((double) frames);
        motions = Motions.of(effective, slots, retime);
        tank = effective.findTank().map(TankWalls::of);
        camera = CameraStand.of(effective, slots);
        List<Mark> hand = effective.findRelease().map(Release::marks).orElse(List.of());
        mouth = hand.stream().map(slots::of).toList();
        for (PlacedLight light : effective.lights()) {
            lamps.add(LampStand.of(light, effective, slots));
        }
    }

    /// Gives what free places lie about: what stands already, else the zero mark.
    ///
    /// @return a place on the table's top, metres
    public Vec anchor() {
        return MarkRanges.anchor(shot);
    }

    /// Gives how far before it a camera usually stands, for a start.
    ///
    /// @return metres
    public static double standingBackMetres() {
        return MarkRanges.STANDING_BACK_METRES;
    }

    /// Stages a shot as it is, without any pass.
    ///
    /// @param plan the plan
    /// @param shot one of its shots
    /// @return the stage
    public static Stage of(Plan plan, Shot shot) {
        return new Stage(plan, shot, shot, "");
    }

    /// Stages one of a shot's passes.
    ///
    /// @param plan the plan
    /// @param shot one of its shots
    /// @param pass the name of one of its passes
    /// @return the stage, by the shot's own marks
    public static Stage of(Plan plan, Shot shot, String pass) {
        return new Stage(plan, shot, shot.findPass(pass).orElseThrow().effective(), pass);
    }

    /// Gives the shot as staged: the pass's where one is staged.
    ///
    /// @return the shot
    public Shot shot() {
        return shot;
    }

    /// Gives the pass that is staged.
    ///
    /// @return its name; empty for the shot itself
    public String pass() {
        return pass;
    }

    /// Gives the marks in the order of the values.
    ///
    /// @return the marks
    public List<StagedMark> marks() {
        return marks;
    }

    /// Gives a value a mark: as written, or a middling start where it is free.
    ///
    /// @return SI values in the order of [#marks]
    public double[] startValues() {
        return marks.stream().mapToDouble(StagedMark::startSi).toArray();
    }

    /// Gives how many screen frames the shot has.
    ///
    /// @return frames, at least 1
    public long frames() {
        return frames;
    }

    /// Gives the shot's retime map.
    ///
    /// @return the map
    public Retime retime() {
        return retime;
    }

    /// Gives how long the shot takes on the table.
    ///
    /// @return real seconds from its earliest instant, its GO, to the latest that it shows
    public double lastSeconds() {
        return retime.latestSeconds((double) frames);
    }

    /// Gives the index of a placed thing.
    ///
    /// @param name its name in the shot
    /// @return its index in [Scene#things], −1 where there is none of that name
    public int thingIndex(String name) {
        return Motions.indexOf(shot, name);
    }

    /// Gives the index of a placed lamp.
    ///
    /// @param name its name in the shot
    /// @return its index in [Scene#lamps], −1 where there is none of that name
    public int lampIndex(String name) {
        for (int i = 0; i < shot.lights().size(); i++) {
            if (shot.lights().get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    /// Gives where lines leave a hung thing.
    ///
    /// @param thing its index in [Scene#things]
    /// @param values the marks' values, SI
    /// @return heights over its base along its axis, metres, one a line; empty where `tied` isn't written
    public List<Double> tiesMetres(int thing, double[] values) {
        return things.get(thing).tied().stream().map(tie -> tie.in(values)).toList();
    }

    /// Gives a placed thing as it stands before any move.
    ///
    /// @param thing its index in [Scene#things]
    /// @param values the marks' values, SI
    /// @return the body
    public Body standing(int thing, double[] values) {
        return things.get(thing).posed(values);
    }

    /// Finds where something is let go: the nozzle's mouth, or the hand.
    ///
    /// @param values the marks' values, SI
    /// @return the place, metres; empty where nothing is, or a placed thing
    public Optional<Vec> findMouth(double[] values) {
        return mouth.isEmpty()
                ? Optional.empty()
                : Optional.of(new Vec(
                        mouth.get(0).in(values),
                        mouth.get(1).in(values),
                        mouth.size() > 2 ? mouth.get(2).in(values) : 0));
    }

    /// Gives when something is let go.
    ///
    /// @return real seconds from the shot's first frame; 0 where no start is written
    public double releaseSeconds() {
        return shot.findRelease()
                .flatMap(Release::findStart)
                .map(start -> start.kind() == Kind.FRAMES ? retime.realSeconds(start.si()) : start.si())
                .orElse(0.0);
    }

    /// Finds the tank's walls.
    ///
    /// @return the walls where the shot has a tank
    public Optional<TankWalls> findTank() {
        return tank;
    }

    /// Gives the screen frame that a `when` means; the start for a whole shot.
    ///
    /// @param when the instant
    /// @return screen frames from the shot's first
    public double frameOf(When when) {
        return switch (when) {
            case When.Start() -> 0;
            case When.Whole() -> 0;
            case When.End() -> (double) (frames - 1);
            case When.AtFrame(long frame) -> (double) frame;
            case When.AtTime(Quantity time) -> retime.frameAt(time.si(), (double) frames);
        };
    }

    /// Gives when a move is over.
    ///
    /// @param move the move's name
    /// @return real seconds from the shot's first frame; 0 for a move that only follows
    public double endSeconds(String move) {
        for (int i = 0; i < motions.size(); i++) {
            if (shot.moves().get(i).name().equals(move) && motions.get(i).kept().isEmpty()) {
                return motions.get(i).endSeconds();
            }
        }
        return 0;
    }

    /// Gives what a move asks of its machine.
    ///
    /// @param move the move's index in the shot
    /// @param values the marks' values, SI
    /// @return the move in one axis, metres or radians; nothing where it follows what it keeps, goes nowhere or has
    /// no
    ///     time
    public Optional<Run> findRun(int move, double[] values) {
        return motions.get(move).findRun(values);
    }

    /// Gives the way of a move in space.
    ///
    /// @param move the move's index in the shot
    /// @param values the marks' values, SI
    /// @return metres; nothing for a turn, focus or zoom
    public Vec wayOf(int move, double[] values) {
        return motions.get(move).way().vectorIn(values);
    }

    /// Gives the way of a turn, of focus or zoom in one figure.
    ///
    /// @param move the move's index in the shot
    /// @param values the marks' values, SI
    /// @return radians, clockwise seen from above for an upright axis, or metres; 0 for a way in space
    public double figureOf(int move, double[] values) {
        return motions.get(move).way().figureIn(values);
    }

    /// Gives when a move starts.
    ///
    /// @param move the move's index in the shot
    /// @return real seconds after GO
    public double startSeconds(int move) {
        return motions.get(move).startSeconds();
    }

    /// Tells whether anything moves in the shot.
    ///
    /// @return true where it has a move
    public boolean isMoving() {
        return !motions.isEmpty() && frames > 1;
    }

    /// Tells whether every frame of it is the same picture, laid the same way into the finished one.
    ///
    /// @return true where nothing moves and no cut reframes it
    public boolean isSteady() {
        return !isMoving() && !(isReframed && frames > 1);
    }

    /// Finds the camera's machine-made way from start to end, for drawing.
    ///
    /// @param values the marks' values, SI
    /// @return lens points at the start and, where the camera slides, at the slide's own end
    public List<Vec> cameraWay(double[] values) {
        List<Vec> way = new ArrayList<>();
        way.add(camera.lensPoint(values));
        for (Motions.Motion motion : motions) {
            Vec by = motion.way().vectorIn(values);
            if (motion.movesCamera() && by.lengthMetres() > 0) {
                way.add(way.getLast().plus(by));
            }
        }
        return way;
    }

    /// Finds the thing that the lens is focused on at the shot's start.
    ///
    /// @param values the marks' values, SI
    /// @return its body then; empty where the focus is set by a distance
    public Optional<Body> findFocused(double[] values) {
        List<Body> atStart = posed(values);
        return camera.findFocused(values, atStart);
    }

    /// Poses the shot.
    ///
    /// @param values the marks' values, SI, in the order of [#marks]
    /// @param frame the screen frame, counted from 0
    /// @return the shot at that instant
    public Scene scene(double[] values, double frame) {
        return laid(values).scene(frame);
    }

    /// Lays the shot out for some values of its marks: what stands at its start is posed once for all its frames.
    ///
    /// @param values the marks' values, SI, in the order of [#marks]
    /// @return the shot, ready to be posed at any frame
    public Laid laid(double[] values) {
        return new Laid(values);
    }

    /// The shot for some values of its marks. What no move carries is the same body at every frame.
    public final class Laid {
        private final double[] values;
        private final List<Body> atStart;
        private final List<Beam> beamsAtStart;
        private final Aim first;
        private final double focus;

        private Laid(double[] given) {
            values = given.clone();
            atStart = posed(values);
            beamsAtStart = beams(values, atStart);
            first = camera.aim(values, atStart);
            focus = camera.focusMetres(values, atStart, TankWalls.lines(tank, first));
        }

        /// Poses the shot.
        ///
        /// @param frame the screen frame, counted from 0
        /// @return the shot at that instant
        public Scene scene(double frame) {
            return scene(frame, retime.realSeconds(frame));
        }

        /// Poses the shot at an instant on the table, shown or not.
        ///
        /// @param realSeconds real seconds from the shot's first frame
        /// @return the shot at that instant; its frame is where the instant would be shown
        public Scene sceneAt(double realSeconds) {
            return scene(retime.frameAt(realSeconds, (double) frames), realSeconds);
        }

        /// Gives where the camera stands and looks at an instant on the table.
        ///
        /// @param realSeconds real seconds after GO
        /// @return the aim
        public Aim aimAt(double realSeconds) {
            return moved(first, carried(atStart, values, realSeconds), values, realSeconds);
        }

        private Scene scene(double frame, double seconds) {
            List<Body> now = carried(atStart, values, seconds);
            Aim aim = moved(first, now, values, seconds);
            List<Beam> beamsNow = carriedLamps(beamsAtStart, values, seconds);
            return new Scene(
                    frame,
                    seconds,
                    aim,
                    TankWalls.lines(tank, aim),
                    TankWalls.view(tank, aim),
                    camera.picture(
                            values,
                            new CameraStand.Focus(focus, focus + moved(Move.Axis.FOCUS, values, seconds)),
                            moved(Move.Axis.ZOOM, values, seconds)),
                    now,
                    bodies(beamsNow),
                    beamsNow,
                    shot.findRelease()
                            .flatMap(release ->
                                    release instanceof Release.OfInk ? findMouth(values) : Optional.<Vec>empty()));
        }
    }

    private List<Body> posed(double[] values) {
        List<Body> bodies = new ArrayList<>(things.size());
        for (Standing thing : things) {
            bodies.add(thing.posed(values));
        }
        return bodies;
    }

    private List<Body> carried(List<Body> atStart, double[] values, double seconds) {
        if (motions.isEmpty()) {
            return atStart;
        }
        List<Body> now = new ArrayList<>(atStart.size());
        for (int i = 0; i < atStart.size(); i++) {
            Body body = atStart.get(i);
            for (Motions.Motion motion : motions) {
                if (motion.carries(shot.placed().get(i).name())) {
                    double share = motion.shareAt(seconds, values);
                    Pose pose = body.pose();
                    body = body.at(new Pose(
                            pose.base().plus(motion.way().vectorIn(values).times(share)),
                            pose.turnRadians() + motion.way().figureIn(values) * share,
                            pose.leanRadians()));
                }
            }
            now.add(body);
        }
        return now;
    }

    private Aim moved(Aim first, List<Body> now, double[] values, double seconds) {
        Vec eye = first.eye();
        double turn = first.turnRadians();
        double tilt = first.tiltRadians();
        double roll = first.rollRadians();
        List<Body> kept = List.of();
        for (Motions.Motion motion : motions) {
            if (!motion.movesCamera()) {
                continue;
            }
            if (!motion.kept().isEmpty()) {
                kept = motion.kept().stream().map(now::get).toList();
            }
            eye = eye.plus(motion.way().vectorIn(values).times(motion.shareAt(seconds, values)));
            double figure = motion.figureAt(seconds, values);
            switch (motion.axis()) {
                case PAN, TURNTABLE -> turn += figure;
                case TILT -> tilt += figure;
                case ROLL -> roll += figure;
                case SLIDE, LIFT, FOCUS, ZOOM -> {}
            }
        }
        Aim slid = new Aim(eye, turn, Math.clamp(tilt, -Math.PI / 2, Math.PI / 2), roll);
        if (kept.isEmpty()) {
            return camera.panned(first, slid, slid.turnRadians());
        }
        // A lens point that swings about a pan axis sees other bearings once it has turned: turn again until it stays.
        Aim panned = slid;
        for (int i = 0; i < MOST_TURNS; i++) {
            Aim next = camera.panned(first, slid, Keeping.turn(panned, kept));
            if (next.equals(panned)) {
                break;
            }
            panned = next;
        }
        return panned;
    }

    /// How far focus or zoom has been moved, metres.
    private double moved(Move.Axis axis, double[] values, double seconds) {
        double metres = 0;
        for (Motions.Motion motion : motions) {
            if (motion.axis() == axis) {
                metres += motion.figureAt(seconds, values);
            }
        }
        return metres;
    }

    /// How lamps face: as they were set before the shot, whatever moves then.
    private List<Beam> beams(double[] values, List<Body> things) {
        return lamps.stream()
                .map(lamp -> lamp.beam(values, things, camera.lensPoint(values)))
                .toList();
    }

    private List<Body> bodies(List<Beam> beams) {
        List<Body> bodies = new ArrayList<>(beams.size());
        for (int i = 0; i < beams.size(); i++) {
            bodies.add(lamps.get(i).body(beams.get(i)));
        }
        return bodies;
    }

    private List<Beam> carriedLamps(List<Beam> still, double[] values, double seconds) {
        if (motions.isEmpty()) {
            return still;
        }
        List<Beam> beams = new ArrayList<>(still.size());
        for (int i = 0; i < still.size(); i++) {
            Beam beam = still.get(i);
            for (Motions.Motion motion : motions) {
                if (motion.carries(shot.lights().get(i).name())) {
                    beam = beam.movedBy(motion.way().vectorIn(values).times(motion.shareAt(seconds, values)));
                }
            }
            beams.add(beam);
        }
        return beams;
    }
}
