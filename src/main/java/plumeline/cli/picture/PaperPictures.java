package plumeline.cli.picture;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import plumeline.desk.ArtFiles;
import plumeline.desk.Console;
import plumeline.desk.InkFilms;
import plumeline.desk.InkFolder;
import plumeline.desk.Refusal;
import plumeline.desk.TimeLeft;
import plumeline.draw.Moment;
import plumeline.jobs.Jobs;
import plumeline.jobs.Progress;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.plan.Plan;
import plumeline.press.DrawingPainter;
import plumeline.render.Develop;
import plumeline.render.OnTop;
import plumeline.render.PngFile;
import plumeline.render.Props;
import plumeline.render.Render;
import plumeline.render.ShotSet;
import plumeline.sheet.Pictures;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Picture;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.timeline.Played;
import plumeline.trace.Plate;

/// Small pictures of shots for papers: each pass at its start; the first one at its end too, where something moves, and
/// half way, where something is let go.
public final class PaperPictures {
    /// The longer side, pixels.
    private static final int LONGER = 480;

    private static final int SAMPLES = 4;
    private static final int SEED = 1;

    /// So wide they are painted with the frames' lines upon them, twice what they take on a page.
    private static final int PAINTED = 682;

    /// Films of more shots have pictures of starts alone.
    private static final int MANY_SHOTS = 12;

    private final FilmAnswer film;
    private final String file;
    private final Console console;
    private final Jobs.Threads threads;

    /// Something to be drawn.
    private record Due(ShotAnswer shot, ShotAnswer.Run run, Moment moment) {}

    private PaperPictures(FilmAnswer film, String file, Console console) {
        this.film = film;
        this.file = file;
        this.console = console;
        threads = Jobs.Threads.each(Math.min(16, Runtime.getRuntime().availableProcessors()));
    }

    /// Draws them all, telling how long that takes.
    ///
    /// @param film the findings on the film
    /// @param file the plan's file, beside which prints and inks lie
    /// @param console who hears of it
    /// @return the pictures
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static Pictures of(FilmAnswer film, String file, Console console) throws Refusal, IOException {
        return new PaperPictures(film, file, console).draw();
    }

    private Pictures draw() throws Refusal, IOException {
        List<Due> all =
                film.shots().stream().flatMap(shot -> due(shot).stream()).toList();
        console.say("plumeline: drawing " + all.size() + " pictures");
        Progress progress = new TimeLeft("drawing pictures", console);
        Map<String, List<Pictures.One>> pictures = new LinkedHashMap<>();
        Map<String, Set<String>> assumed = new LinkedHashMap<>();
        Map<ShotAnswer.Run, ShotSet> sets = new LinkedHashMap<>();
        for (int i = 0; i < all.size(); i++) {
            Due due = all.get(i);
            if (!sets.containsKey(due.run())) {
                sets.clear();
                sets.put(due.run(), set(due));
            }
            ShotSet set = sets.get(due.run());
            pictures.computeIfAbsent(due.shot().shot(), _ -> new ArrayList<>()).add(one(due, set));
            Set<String> told = assumed.computeIfAbsent(due.shot().shot(), _ -> new TreeSet<>());
            told.addAll(set.assumed());
            told.addAll(set.developing(0).assumed());
            progress.hear((i + 1.0) / all.size());
        }
        Map<String, Pictures.OfShot> byShot = new LinkedHashMap<>();
        pictures.forEach((shot, list) -> byShot.put(shot, new Pictures.OfShot(list, List.copyOf(assumed.get(shot)))));
        return new Pictures(byShot);
    }

    private List<Due> due(ShotAnswer shot) {
        List<Due> due = new ArrayList<>();
        ShotAnswer.Run first = shot.posed().stages().getFirst();
        due.add(new Due(shot, first, Moment.START));
        boolean isReleased = first.stage().shot().findRelease().isPresent();
        boolean isFew = film.shots().size() <= MANY_SHOTS;
        if (isReleased && isFew) {
            due.add(new Due(shot, first, Moment.MIDDLE));
        }
        if ((isReleased || first.stage().isMoving()) && isFew) {
            due.add(new Due(shot, first, Moment.END));
        }
        if (isFew) {
            shot.posed().stages().stream().skip(1).forEach(run -> due.add(new Due(shot, run, Moment.START)));
        }
        return due;
    }

    private ShotSet set(Due due) throws Refusal, IOException {
        Stage stage = due.run().stage();
        double[] values = due.shot().posed().values();
        var props = new Props(
                ArtFiles.read(stage.shot(), file, console), InkFilms.find(InkFolder.ofPlan(file), stage, values));
        return ShotSet.of(film.plan(), stage, values, props);
    }

    /// A screen frame is drawn as the recorded frame that it shows.
    private Pictures.One one(Due due, ShotSet set) throws IOException {
        Plan plan = film.plan();
        Stage stage = set.stage();
        long frame = due.moment().frame(stage.frames());
        Played played = Played.of(plan, stage.shot(), stage.frames());
        double seconds = played.captured().secondsOf((double) played.sources().shown((int) frame));
        Scene scene = set.sceneAt(seconds);
        Plate plate = plate(set, seconds, scene.picture());
        byte[] png = PngFile.of(Develop.of(plate, set.developing(seconds)));
        String svg = OnTop.unnamedFrames(plan, stage, scene, png).toSvg();
        int wide = (int) Math.round(PAINTED * Math.min(1, plate.width() / (double) plate.height()));
        String pass = due.run().pass().isEmpty() ? "" : ", pass " + due.run().pass();
        String word = due.moment().word();
        return Pictures.One.ofJpeg(
                due.moment(),
                word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1) + ", frame " + (frame + 1) + pass
                        + ", computed",
                "Shot " + due.shot().shot() + ": computed picture at " + word + pass,
                DrawingPainter.jpeg(svg, wide));
    }

    private Plate plate(ShotSet set, double seconds, Picture picture) throws IOException {
        double longer = Math.max(picture.widthMetres(), picture.heightMetres());
        var quality = new Render.Quality(
                (int) Math.max(1, Math.round(LONGER * picture.widthMetres() / longer)),
                (int) Math.max(1, Math.round(LONGER * picture.heightMetres() / longer)),
                SAMPLES,
                SEED);
        return switch (Render.expose(set, seconds, set.shutterSeconds(), quality, threads, _ -> {}, new Stop())) {
            case Result.Whole<Plate>(List<Plate> plates) -> plates.getFirst();
            case Result.Stopped<Plate>() -> throw new IllegalStateException("nobody stops it");
        };
    }
}
