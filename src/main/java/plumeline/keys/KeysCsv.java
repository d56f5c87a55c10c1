package plumeline.keys;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import plumeline.pace.Capture;
import plumeline.quantity.Quantity;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Stage;
import plumeline.time.SourceFrames;

/// The keys of every axis of a solved film as comma-separated values, for machines: a row a screen frame, then a row a
/// whole step of its machine.
///
/// Columns: shot, pass (empty for the shot itself), move, axis, machine; kind `frame` or `step`; the screen frame and
/// the captured frame that is shown there, both from 0, empty for a step; real seconds after GO; position from the
/// move's start and speed, in mm and mm/s or deg and deg/s, whatever the papers' unit. Times are to 1e-9 s, positions
/// and speeds to 1e-6 of their unit.
///
/// **Source:** RFC 4180, section 2.
public final class KeysCsv {
    private static final String HEAD = "shot,pass,move,axis,machine,kind,frame,captured,seconds,position,speed,unit";
    private static final String END = "\r\n";
    private static final double MILLIMETRES = 1000;
    private static final int TIME_PLACES = 9;
    private static final int PLACES = 6;

    /// Nobody reads a list of more steps of one move.
    private static final int MOST_STEPS = 2_000_000;

    private final Quantity film;
    private final List<Axes> axes = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    /// The axes of a shot.
    private record Axes(String shot, List<MovedAxis> moved) {}

    private KeysCsv(Quantity film) {
        this.film = film;
    }

    /// Prepares a solved film's keys.
    ///
    /// @param film the findings
    /// @return the list, to be written
    public static KeysCsv of(FilmAnswer film) {
        KeysCsv csv = new KeysCsv(film.plan().film().rate());
        film.shots().forEach(csv::add);
        return csv;
    }

    private void add(ShotAnswer answer) {
        MovedAxis.Found found = MovedAxis.of(answer);
        axes.add(new Axes(answer.shot(), found.moved()));
        for (MovedAxis.Left left : found.left()) {
            notes.add(name(answer.shot(), left.pass(), left.move()) + " is left out; not known: " + left.why());
        }
        for (MovedAxis axis : found.moved()) {
            String name = name(answer.shot(), axis.pass(), axis.move().name());
            if (axis.isTooMuch()) {
                notes.add(name + " asks more than "
                        + axis.move().machine().orElseThrow().name() + " does: see solve before a machine runs it");
            }
            if (Double.isInfinite(axis.resolution())) {
                notes.add(name + " has no step rows: "
                        + axis.move()
                                .machine()
                                .map(machine -> "write " + machine.name() + "'s resolution")
                                .orElse("write its machine, with a resolution"));
            } else if (axis.countSteps() > MOST_STEPS) {
                notes.add(name + " has no step rows: they would be more than " + MOST_STEPS);
            }
        }
    }

    private static String name(String shot, String pass, String move) {
        return shot + (pass.isEmpty() ? "" : ", pass " + pass) + ": " + move;
    }

    /// Says what isn't in the list.
    ///
    /// @return a line a move
    public List<String> notes() {
        return List.copyOf(notes);
    }

    /// Writes the list.
    ///
    /// @param out what takes it
    /// @throws IOException where that can't
    public void writeTo(Appendable out) throws IOException {
        out.append(HEAD).append(END);
        for (Axes shot : axes) {
            for (MovedAxis axis : shot.moved()) {
                write(shot.shot(), axis, out);
            }
        }
    }

    private void write(String shot, MovedAxis axis, Appendable out) throws IOException {
        String head = String.join(
                        ",",
                        field(shot),
                        field(axis.pass()),
                        field(axis.move().name()),
                        axis.move().axis().word(),
                        field(axis.move().machine().map(one -> one.name()).orElse("")))
                + ",";
        double perSi = axis.isRound() ? 180 / Math.PI : MILLIMETRES;
        String tail = "," + (axis.isRound() ? "deg" : "mm") + END;
        Stage stage = axis.stage();
        int frames = (int) stage.frames();
        SourceFrames source =
                SourceFrames.of(stage.retime(), Capture.of(stage.shot(), film).framesPerSecond(), frames);
        for (int frame = 0; frame < frames; frame++) {
            double seconds = stage.retime().realSeconds(frame);
            out.append(head).append("frame,").append(Integer.toString(frame));
            out.append(',').append(Long.toString(source.shown(frame))).append(',');
            append(out, seconds, axis.at(seconds) * perSi, axis.speedAt(seconds) * perSi);
            out.append(tail);
        }
        double end = stage.lastSeconds();
        out.append(head).append("end,,,");
        append(out, end, axis.at(end) * perSi, 0);
        out.append(tail);
        if (axis.countSteps() > MOST_STEPS) {
            return;
        }
        for (MovedAxis.Step step : axis.listSteps()) {
            out.append(head).append("step,,,");
            append(out, step.seconds(), step.place() * perSi, step.speed() * perSi);
            out.append(tail);
        }
    }

    private static void append(Appendable out, double seconds, double place, double speed) throws IOException {
        out.append(number(seconds, TIME_PLACES)).append(',').append(number(place, PLACES));
        out.append(',').append(number(speed, PLACES));
    }

    private static String number(double value, int places) {
        BigDecimal rounded = new BigDecimal(Double.toString(value)).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String field(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
