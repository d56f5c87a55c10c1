package plumeline.flow;

import java.util.List;
import plumeline.ranges.Ranges;

/// The flow in a tank, stepped through time.
///
/// One thread steps it; that one may have helpers ([Workers]). Nothing it gives changes by reading it.
public final class Flow {
    private final Tank tank;
    private final Liquid liquid;
    private final Workers workers;
    private final Fields fields;
    private final Rim rim;
    private final Momentum momentum;
    private final Projection projection;
    private final Carriage carriage;
    private final Spreading spreading;
    private final Injection injection;
    private final StepLength stepLength;
    private State.Clock clock;

    /// The greatest share of a cell's water that goes out of it in a second, as the velocities stand.
    private double outPerSecond;

    private Flow(Setting setting, Workers workers, Fields fields, State.Clock clock) {
        this.tank = setting.tank();
        this.liquid = setting.liquid();
        this.workers = workers;
        this.fields = fields;
        this.clock = clock;
        this.rim = new Rim(tank, workers);
        this.momentum = new Momentum(tank, liquid, workers);
        this.projection = new Projection(tank, workers);
        this.spreading = new Spreading(tank, liquid, rim, workers);
        this.injection = new Injection(tank, setting.releases(), setting.seed());
        this.carriage = new Carriage(tank, dyed(setting, fields, injection), rim, workers);
        this.stepLength = new StepLength(tank, liquid, workers);
        this.outPerSecond = Extremes.outPerSecond(fields, tank.grid(), workers);
    }

    /// Where there is dye, or will be first.
    private static DyeBox dyed(Setting setting, Fields fields, Injection injection) {
        Grid grid = setting.tank().grid();
        var box = new DyeBox(grid);
        box.includeAll(injection.places());
        for (int k = 0; k < grid.nz(); k++) {
            box.includeLayer(fields.dye, 0, grid.ny() - 1, k);
        }
        if (setting.liquid().diffusivityMetres2PerSecond() > 0) {
            box.includeAll();
        }
        return box;
    }

    /// What a flow is set up from.
    ///
    /// @param tank the tank
    /// @param liquid the water and what dye does to it
    /// @param releases how dye gets in
    /// @param seed chooses the noise
    public record Setting(Tank tank, Liquid liquid, List<Release> releases, long seed) {
        /// Copies the list.
        public Setting {
            releases = List.copyOf(releases);
        }
    }

    /// Begins with still water, clouds poured in.
    ///
    /// @param setting what it is set up from
    /// @param workers who does the work
    /// @return the flow at time 0
    public static Flow start(Setting setting, Workers workers) {
        Fields fields = Fields.still(setting.tank().grid());
        var pour = new Pour(setting.tank(), setting.liquid(), setting.seed(), fields);
        double poured = pour.pour(setting.releases());
        return new Flow(setting, workers, fields, new State.Clock(0, 0, 0, poured));
    }

    /// Goes on from a state.
    ///
    /// @param setting what it was set up from
    /// @param workers who does the work; may be others than before
    /// @param state the state
    /// @return the flow as it was
    /// @throws IllegalArgumentException where the state's arrays don't fit the tank
    public static Flow resume(Setting setting, Workers workers, State state) {
        int length = setting.tank().grid().length();
        int given = state.bare().getFirst().length;
        Ranges.check(given == length, "length of the state's arrays", given, "the tank's " + length);
        return new Flow(setting, workers, Fields.of(state), state.clock());
    }

    /// Takes one step.
    ///
    /// @param untilSeconds the time to which steps of even length shall lead, seconds, after now
    public void step(double untilSeconds) {
        Ranges.check(untilSeconds > clock.seconds(), "untilSeconds", untilSeconds, "after " + clock.seconds());
        double seconds = stepLength.seconds(fields, outPerSecond, injection, clock.seconds(), untilSeconds);
        injection.prepare(clock.seconds(), seconds);
        rim.fillVelocity(fields.velocity);
        momentum.fillRates(fields);
        momentum.step(fields, seconds, clock.lastStepSeconds());
        injection.push(fields.velocity, clock.seconds());
        projection.project(fields, injection.source(), seconds);
        outPerSecond = Extremes.outPerSecond(fields, tank.grid(), workers);
        carriage.carry(fields, outPerSecond, injection.added(), seconds, clock.steps());
        spreading.spread(fields.dye, seconds);
        double reached = clock.seconds() + seconds;
        clock = new State.Clock(
                reached + seconds / 2 > untilSeconds ? untilSeconds : reached,
                clock.steps() + 1,
                seconds,
                clock.releasedMetres3() + injection.releasedMetres3());
    }

    /// Runs to a time.
    ///
    /// @param untilSeconds the time, seconds; nothing happens where it is over
    public void run(double untilSeconds) {
        while (clock.seconds() < untilSeconds) {
            step(untilSeconds);
        }
    }

    /// Its own time.
    ///
    /// @return seconds
    public double seconds() {
        return clock.seconds();
    }

    /// How many steps it has taken.
    ///
    /// @return steps since time began
    public long steps() {
        return clock.steps();
    }

    /// The dye released since time began.
    ///
    /// @return as a volume of share 1, cubic metres
    public double releasedMetres3() {
        return clock.releasedMetres3();
    }

    /// The dye as it stands; a copy.
    ///
    /// @return the dye
    public Dye dye() {
        return new Dye(tank.grid(), fields.dye.clone());
    }

    /// The greatest velocity along any axis.
    ///
    /// @return metres a second
    public double fastestMetresPerSecond() {
        return Extremes.speedMetresPerSecond(fields, tank.grid(), workers);
    }

    /// How far it is from keeping its volume: the greatest divergence of any cell, times a cell's shortest edge, over
    /// the greatest speed. After a step at most 1e-4.
    ///
    /// @return share, dimensionless; 0 in still water
    public double divergence() {
        return projection.divergence(fields, injection.source());
    }

    /// All that is needed to go on; a copy.
    ///
    /// @return the state
    public State state() {
        return State.of(clock, fields.list());
    }

    /// The velocities themselves, on faces.
    float[][] velocity() {
        return fields.velocity;
    }
}
