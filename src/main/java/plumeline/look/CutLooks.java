package plumeline.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plumeline.plan.Cut;
import plumeline.plan.Named;
import plumeline.plan.Plan;

/// A look as the film shows it, between two cuts.
///
/// @param shot the shot's name
/// @param pass the pass; empty for the shot itself
/// @param frames how long it is seen, screen frames, ≥ 1
public record CutLooks(String shot, String pass, long frames) {
    /// Looks of one entry of the cut that are laid out; further ones repeat what stands there.
    private static final int MOST = 5000;

    /// Longer is as good as endless, frames.
    private static final long LONGEST = 1_000_000;

    /// Lays out a film's cut. A look that goes on over a cut is one.
    ///
    /// @param plan the plan
    /// @return the looks in their order; none without `cut`
    public static List<CutLooks> ofFilm(Plan plan) {
        List<CutLooks> all = new ArrayList<>();
        for (Cut cut : plan.cuts()) {
            for (CutLooks look : ofCut(cut)) {
                boolean goesOn = !all.isEmpty()
                        && all.getLast().shot.equals(look.shot)
                        && all.getLast().pass.equals(look.pass);
                if (goesOn) {
                    CutLooks before = all.removeLast();
                    all.add(new CutLooks(look.shot, look.pass, Math.min(LONGEST, before.frames + look.frames)));
                } else {
                    all.add(look);
                }
            }
        }
        return all;
    }

    private static List<CutLooks> ofCut(Cut cut) {
        String shot = cut.shot().name();
        if (cut.alternate().isEmpty()) {
            String pass = cut.pass().map(Named::name).orElse("");
            return List.of(new CutLooks(shot, pass, Math.min(LONGEST, cut.frames())));
        }
        List<CutLooks> looks = new ArrayList<>();
        long each = cut.each().orElse(cut.frames());
        for (long left = cut.frames(); left > 0 && looks.size() < MOST; left -= each) {
            Named pass = cut.alternate().get(looks.size() % cut.alternate().size());
            looks.add(new CutLooks(shot, pass.name(), Math.min(LONGEST, Math.min(each, left))));
        }
        return looks;
    }

    /// Finds where a film cuts between some looks of a shot and nothing else.
    ///
    /// @param plan the plan
    /// @param shot the shot's name
    /// @param passes its passes
    /// @return stretches of two looks or more, in the film's order
    public static List<List<CutLooks>> between(Plan plan, String shot, Set<String> passes) {
        List<List<CutLooks>> stretches = new ArrayList<>();
        List<CutLooks> now = new ArrayList<>();
        for (CutLooks look : ofFilm(plan)) {
            if (look.shot.equals(shot) && passes.contains(look.pass)) {
                now.add(look);
            } else {
                stretches.add(List.copyOf(now));
                now.clear();
            }
        }
        stretches.add(now);
        return stretches.stream().filter(stretch -> stretch.size() > 1).toList();
    }
}
