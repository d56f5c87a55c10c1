package plumeline.pace;

import java.util.List;
import plumeline.motion.Registration;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// How far passes of a move may lie apart at worst, part by part, for papers.
///
/// @param frame the screen frame at which they lie farthest apart, from 0
/// @param thing the index of the thing that does
/// @param plannedPixels how far apart the plan itself has it, captured px
/// @param registration what comes in shooting them, captured px
public record PassesApart(double frame, int thing, double plannedPixels, Registration registration) {
    /// Instants of a shot that are looked at.
    private static final int MOST_INSTANTS = 400;

    /// Gives how far apart they may lie in all.
    ///
    /// @return captured px, ≥ 0
    public double pixels() {
        return plannedPixels + registration.sumPixels();
    }

    /// Looks for the worst instant of a shot.
    ///
    /// @param passes the passes, the first of which is looked at; its shot has a thing before the lens
    /// @param values the marks' values, SI
    /// @param film the rate at which the film is shown
    /// @return how far apart they may lie
    public static PassesApart worst(List<Stage> passes, List<Double> values, Quantity film) {
        Registers registers = new Registers(passes, film, 0);
        Stage stage = passes.getFirst();
        Stage.Laid laid =
                stage.laid(values.stream().mapToDouble(Double::doubleValue).toArray());
        long last = stage.frames() - 1;
        int steps = Math.clamp(last, 1, MOST_INSTANTS);
        PassesApart worst = at(registers, new Paced(stage, values, laid.scene(0), laid));
        for (int i = 1; i <= steps; i++) {
            Scene scene = laid.scene(Math.rint((double) last * i / steps));
            PassesApart apart = at(registers, new Paced(stage, values, scene, laid));
            if (apart.pixels() > worst.pixels()) {
                worst = apart;
            }
        }
        return worst;
    }

    private static PassesApart at(Registers registers, Paced now) {
        Registers.Apart apart = registers.worst(now);
        return new PassesApart(now.now().frame(), apart.thing(), apart.plannedPixels(), apart.registration());
    }

    /// Gives by how many pixels a thing is off at most where a machine is off by so much.
    ///
    /// @param at the instant
    /// @param move the move's index in the shot
    /// @param off metres or radians, ≥ 0
    /// @return captured px of the thing that is off most; 0 where none is before the lens
    public static double pixels(Paced at, int move, double off) {
        double most = 0;
        for (int thing = 0; thing < at.now().things().size(); thing++) {
            if (Shift.isBefore(at.now(), thing)) {
                most = Math.max(most, Registers.pixels(at, move, thing, off));
            }
        }
        return most;
    }

    /// Gives pixels in words.
    ///
    /// @param pixels captured px, ≥ 0
    /// @return such as `1.9 px`
    public static String text(double pixels) {
        return Pixels.text(pixels);
    }
}
