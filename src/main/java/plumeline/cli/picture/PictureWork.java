package plumeline.cli.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.assemble.SetPainter;
import plumeline.assemble.Wanted;
import plumeline.desk.Console;
import plumeline.desk.TimeLeft;
import plumeline.jobs.Job;
import plumeline.jobs.Jobs;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.render.Pixels;

/// Draws pictures of shots' cameras that aren't kept yet, several at a time.
///
/// @param painter who draws
/// @param folder where they are kept
/// @param threads how many are drawn at a time
/// @param console who hears of it
/// @param stop what ends it before
record PictureWork(SetPainter painter, PictureFolder folder, int threads, Console console, Stop stop) {
    /// So often pictures are drawn again that don't stay as they were written.
    private static final int ROUNDS = 2;

    /// Draws those that aren't there.
    ///
    /// @return false where it was stopped
    boolean draw(List<Wanted> wanted) throws IOException {
        folder.removeLeft(wanted);
        List<Wanted> missing = missing(wanted);
        tell(wanted, missing);
        for (int round = 0; round < ROUNDS && !missing.isEmpty(); round++) {
            List<Job<Boolean>> jobs = new ArrayList<>();
            missing.forEach(one -> jobs.add(work -> {
                Optional<Pixels> picture = painter.paint(one, work);
                if (picture.isPresent()) {
                    folder.keep(one, painter.key(one), picture.get());
                }
                return picture.isPresent();
            }));
            var progress = new TimeLeft("drawing", console);
            if (!(Jobs.run(jobs, Jobs.Threads.each(threads), progress, stop) instanceof Result.Whole<Boolean>)) {
                return false;
            }
            missing = missing(missing);
        }
        if (!missing.isEmpty()) {
            throw new IOException("what is written into " + folder.folder() + " doesn't stay as it was written");
        }
        return true;
    }

    private List<Wanted> missing(List<Wanted> wanted) throws IOException {
        List<Wanted> missing = new ArrayList<>();
        for (Wanted one : wanted) {
            if (folder.find(one, painter.key(one)).isEmpty()) {
                missing.add(one);
            }
        }
        return missing;
    }

    private void tell(List<Wanted> wanted, List<Wanted> missing) {
        long other =
                missing.stream().filter(one -> Files.exists(folder.file(one))).count();
        int kept = wanted.size() - missing.size();
        console.say("plumeline: " + count(missing.size(), "picture") + " to draw into " + folder.folder()
                + (kept > 0 ? "; " + kept + " more drawn before" : "")
                + (other > 0 ? "; " + other + " of another state of the plan, or damaged, drawn anew" : ""));
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /// A picture that was drawn.
    Pixels picture(Wanted wanted) throws IOException {
        return folder.find(wanted, painter.key(wanted))
                .orElseThrow(() -> new IOException(folder.file(wanted) + " changed while it was in use; do it again"));
    }
}
