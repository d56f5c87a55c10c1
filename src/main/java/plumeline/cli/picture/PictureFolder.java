package plumeline.cli.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.assemble.KeptPicture;
import plumeline.assemble.PictureKey;
import plumeline.assemble.Wanted;
import plumeline.desk.PlainFile;
import plumeline.desk.Refusal;
import plumeline.render.Pixels;

/// Where pictures of shots' cameras are kept, so that none is drawn twice: beside the plan, a folder a shot's pass and
/// size, a PNG file a recorded frame. Each says what decided it; one that is cut short, damaged or of something else is
/// drawn again in its place.
///
/// @param folder `PLAN.pictures`
/// @param quality what else tells files apart, such as `4-1` for samples and seed
record PictureFolder(Path folder, String quality) {
    /// The folder of all pictures of a plan: its name with `.pictures` for its ending.
    static Path ofPlan(String plan) throws Refusal {
        if (plan.equals("-")) {
            return Path.of("plan.pictures");
        }
        Path path = PlainFile.toPath(plan);
        String last = String.valueOf(path.getFileName());
        int dot = last.lastIndexOf('.');
        return path.resolveSibling((dot > 0 ? last.substring(0, dot) : last) + ".pictures");
    }

    /// Takes away what runs that were ended in the middle left.
    void removeLeft(List<Wanted> wanted) throws IOException {
        for (Path each : wanted.stream()
                .map(one -> file(one).resolveSibling(""))
                .distinct()
                .toList()) {
            PlainFile.removeLeft(each, name -> name.endsWith(".png"));
        }
    }

    Path file(Wanted wanted) {
        return folder.resolve(wanted.name())
                .resolve(wanted.view().name() + "-" + quality)
                .resolve(String.format(Locale.ROOT, "%08d.png", wanted.recorded()));
    }

    /// A picture that is there, whole and right.
    Optional<Pixels> find(Wanted wanted, PictureKey key) throws IOException {
        Path file = file(wanted);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        return KeptPicture.read(Files.readAllBytes(file), key)
                .filter(picture -> picture.width() == wanted.view().kept().width()
                        && picture.height() == wanted.view().kept().height());
    }

    void keep(Wanted wanted, PictureKey key, Pixels picture) throws IOException {
        PlainFile.lay(file(wanted), KeptPicture.write(picture, key));
    }
}
