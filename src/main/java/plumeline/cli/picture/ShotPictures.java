package plumeline.cli.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.answer.Beside;
import plumeline.art.ArtFile;
import plumeline.assemble.SetPainter;
import plumeline.assemble.Wanted;
import plumeline.desk.ArtFiles;
import plumeline.desk.Console;
import plumeline.desk.FilesBeside;
import plumeline.desk.InkFilms;
import plumeline.desk.InkFolder;
import plumeline.desk.Refusal;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.plume.DyeFilm;
import plumeline.render.Props;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Stage;

/// Solved shots made ready to be drawn, with what lies beside their plan: prints of labels, films of ink.
final class ShotPictures {
    private final SetPainter painter;

    private ShotPictures(FilmAnswer film, List<Wanted> wanted, String plan, PictureOptions options, Console console)
            throws Refusal, IOException {
        List<String> names = wanted.stream().map(Wanted::name).distinct().toList();
        Map<String, SetPainter.Beside> beside = new HashMap<>();
        Path inks = InkFolder.ofPlan(plan);
        for (ShotAnswer answer : film.shots()) {
            for (Stage stage : SetPainter.stages(film.plan(), answer.shot())) {
                if (names.contains(SetPainter.name(stage))) {
                    Optional<DyeFilm> ink =
                            InkFilms.find(inks, stage, answer.posed().values());
                    String digest = digest(stage.shot(), plan)
                            + ink.map(found -> found.head() + " " + found.frames())
                                    .orElse("");
                    var props = new Props(ArtFiles.read(stage.shot(), plan, console), ink);
                    beside.put(SetPainter.name(stage), new SetPainter.Beside(props, digest));
                }
            }
        }
        painter = SetPainter.of(film, beside, options.samples(), options.seed());
        painter.assumed().forEach(each -> console.say("plumeline: " + each));
    }

    /// Makes the shots of some pictures ready; says what was taken for granted.
    static ShotPictures of(FilmAnswer film, List<Wanted> wanted, String plan, PictureOptions options, Console console)
            throws Refusal, IOException {
        return new ShotPictures(film, wanted, plan, options, console);
    }

    SetPainter painter() {
        return painter;
    }

    /// What tells the prints of a shot's labels from others: the sums of their files.
    private static String digest(Shot shot, String plan) throws Refusal {
        FilesBeside folder = FilesBeside.of(plan);
        StringBuilder all = new StringBuilder();
        for (Placed placed : shot.placed()) {
            Optional<String> file = placed.thing().written().findWord("label.art");
            if (file.isPresent() && folder.find(file.get(), ArtFile.MOST_BYTES + 1) instanceof Beside.File.There art) {
                all.append(placed.name())
                        .append(' ')
                        .append(sha256(art.toArray()))
                        .append('\n');
            }
        }
        return all.toString();
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
