package plumeline.cli.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Interruption;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.TimeLeft;
import plumeline.desk.Usage;
import plumeline.jobs.Jobs;
import plumeline.jobs.Result;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;
import plumeline.render.Developing;
import plumeline.render.Noise;
import plumeline.render.Render;
import plumeline.render.Window;
import plumeline.trace.Exposing;
import plumeline.trace.Instants;
import plumeline.trace.Plate;

/// `still PLAN`: a shot as its camera records a frame of it, with blur and smear, until it is clean enough.
public final class StillCommand implements Command {
    private static final int ACROSS = 1920;
    private static final int DOWN = 1080;

    private static final double NOISE = 0.01;
    private static final int SAMPLES = 256;
    private static final int MOST_SAMPLES = 65_536;

    /// So many rays a pixel come first; then half as many again each time.
    private static final int FIRST = 8;

    /// What moves has so many at least: each sees another part of the exposure, and noise that 19 of 20 pixels stay
    /// under tells nothing of a smear in the rest.
    private static final int MOVING = 32;

    /// A new one, which has done nothing yet.
    public StillCommand() {}

    @Override
    public Usage usage() {
        return new Usage(
                "still",
                "Draws a frame of a shot as its camera records it, until it is clean enough.",
                "PLAN",
                1,
                1,
                List.of(
                        PictureChoice.shot(),
                        PictureChoice.pass(),
                        PictureChoice.at(),
                        Usage.valued(
                                "--delivery",
                                "NAME",
                                "Draws what this delivery shows of the camera's picture; else the plan's first."),
                        Usage.valued(
                                "--size",
                                "WxH",
                                "Draws so many pixels across and down; else the delivery's, within 1920x1080."),
                        Usage.valued(
                                "--view",
                                "VIEW",
                                "picture, or levels: lines where it clips, at mid grey, where noise hides; numbers."),
                        OverPicture.onTop(),
                        Usage.valued(
                                "--noise",
                                "SHARE",
                                "Draws until 19 of 20 pixels are off by less of the screen's scale; else 1 %."),
                        Usage.valued("--samples", "N", "Takes so many rays a pixel at most; else 256."),
                        Usage.valued("--seed", "N", "Takes other chance; else 1."),
                        PictureChoice.threads(),
                        Usage.valued("--out", "FILE", "Writes into this PNG file; else into SHOT.still.png.")),
                List.of("still film.yaml --shot plume --at \"60 frames\" --noise \"1 %\""));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        Aim aim = Aim.read(given);
        OverPicture over = over(given);
        String name = given.plain().getFirst();
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(name, console), console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        Optional<Delivery> delivery = over.of(PictureChoice.delivery(plan, given)
                .or(() -> plan.deliveries().stream().findFirst()));
        PictureChoice choice = PictureChoice.of(plan, given, console);
        Window window = choice.window(delivery, given, across(delivery), down(delivery));
        over.check(window);
        Path file = PlainFile.toWrite(given.findValue("--out").orElse(choice.file("still")));
        long began = System.nanoTime();
        try (Interruption interruption = new Interruption()) {
            Drawn drawn = new Drawing(choice, window, aim, console, interruption).draw();
            String notes = over.lay(choice, window, drawn.plate(), file);
            String how = String.format(
                    Locale.ROOT,
                    "%s: %s at %s, %d x %d px, %d rays a pixel, noise %s, in %.1f s%n",
                    file,
                    choice.title(),
                    choice.when(),
                    window.width(),
                    window.height(),
                    drawn.samples(),
                    Double.isFinite(drawn.noise()) ? Print.share(drawn.noise(), 2) : "not known",
                    (System.nanoTime() - began) / 1e9);
            if (interruption.stop().isAsked()) {
                console.say("plumeline: stopped; what was drawn is kept");
                console.say(how.stripTrailing());
                return Outcome.STOPPED;
            }
            console.answer(how
                    + (drawn.noise() <= aim.noise()
                            ? ""
                            : "Noisier than the " + Print.share(aim.noise(), 2)
                                    + " asked for: --samples ended it. Give it more.\n")
                    + notes
                    + choice.assumed());
        }
        return Outcome.ANSWERED;
    }

    private static OverPicture over(Arguments given) throws Refusal {
        String view = given.findValue("--view").orElse("picture");
        if (!List.of("picture", "levels").contains(view)) {
            throw new Refusal("--view is " + view + "; must be picture or levels", "Leave it out for the picture.");
        }
        return OverPicture.read(given);
    }

    private static int across(Optional<Delivery> delivery) {
        return delivery.flatMap(Delivery::size)
                .map(Delivery.Size::acrossPixels)
                .filter(px -> px < ACROSS)
                .orElse(ACROSS);
    }

    private static int down(Optional<Delivery> delivery) {
        return delivery.flatMap(Delivery::size)
                .map(Delivery.Size::downPixels)
                .filter(px -> px < DOWN)
                .orElse(DOWN);
    }

    /// What is aimed at.
    private record Aim(double noise, int samples, long seed, int threads) {
        static Aim read(Arguments given) throws Refusal {
            return new Aim(
                    noise(given.findValue("--noise")),
                    (int) PictureChoice.whole(given, "--samples", 1, MOST_SAMPLES, SAMPLES),
                    PictureChoice.whole(given, "--seed", 1, Integer.MAX_VALUE, 1),
                    PictureChoice.threads(given));
        }

        private static double noise(Optional<String> text) throws Refusal {
            if (text.isEmpty()) {
                return NOISE;
            }
            if (Quantities.read(text.get()) instanceof Reading.Read(Quantity share)
                    && share.kind() == Kind.SHARE
                    && share.si() > 0
                    && share.si() <= 1) {
                return share.si();
            }
            throw new Refusal(
                    "--noise is " + text.get() + "; must be over 0 % and at most 100 %", "Such as --noise \"1 %\".");
        }
    }

    /// A plate with what is known of it.
    private record Drawn(Plate plate, int samples, double noise) {}

    /// A still as it is drawn.
    private record Drawing(PictureChoice choice, Window window, Aim aim, Console console, Interruption interruption) {
        /// Draws in passes until it is clean enough, all rays are used, or it is stopped.
        Drawn draw() throws IOException {
            Plate plate = new Plate(window.plateWidth(), window.plateHeight());
            Developing developing = choice.set().developing(choice.realSeconds());
            Instants instants = Render.instants(
                    choice.set(), choice.realSeconds(), choice.set().shutterSeconds(), aim.samples(), window);
            TimeLeft progress = new TimeLeft("drawing", console);
            double noise = Double.POSITIVE_INFINITY;
            int done = 0;
            int least = instants.isOne() ? 1 : MOVING;
            while (done < aim.samples() && !(noise <= aim.noise() && done >= least)) {
                int more = Math.min(aim.samples() - done, done == 0 ? FIRST : Math.max(FIRST, done / 2));
                double likely = Math.max(Math.max(likely(noise, done), least), done + more);
                int before = done;
                var pass = Render.expose(
                        instants,
                        plate,
                        new Exposing.Rays(done, more, aim.samples(), aim.seed()),
                        Jobs.Threads.each(aim.threads()),
                        share -> progress.hear(Math.min(0.999, (before + more * share) / likely)),
                        interruption.stop());
                if (!(pass instanceof Result.Whole<Plate>)) {
                    break;
                }
                done += more;
                noise = Noise.of(plate, developing);
            }
            return new Drawn(plate, done, noise);
        }

        /// How many rays it will likely take: noise falls by the root of their number.
        private double likely(double noise, int done) {
            return Double.isFinite(noise)
                    ? Math.min(aim.samples(), done * noise * noise / (aim.noise() * aim.noise()))
                    : aim.samples();
        }
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(
                List.of(
                        Rehearsal.FILE,
                        "--shot",
                        "spin",
                        "--size",
                        "48x27",
                        "--samples",
                        "8",
                        "--out",
                        Rehearsal.FOLDER + "/still.png"),
                PlanFile.example()));
    }
}
