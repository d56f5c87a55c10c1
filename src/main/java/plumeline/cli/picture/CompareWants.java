package plumeline.cli.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.pace.PaceMeasures;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.quantity.PaperUnit;
import plumeline.resect.Findings;
import plumeline.resect.Sought;
import plumeline.solve.Words;
import plumeline.stage.Stage;
import plumeline.want.Moments;
import plumeline.want.Recall;
import plumeline.want.Want;
import plumeline.want.Wants;

/// How a shot's wants stand with its marks as a still shows them, against as they are planned. What isn't a mark, such
/// as where the camera really looks, isn't in it.
///
/// @param id the want's id
/// @param words the want in words
/// @param unit its margin's unit
/// @param planned its margin with everything at its mark
/// @param seeming its margin with every mark as it seems
record CompareWants(String id, String words, String unit, double planned, double seeming) {
    private static final int INSTANTS = 25;

    private static final Wants.Elsewhere NOWHERE = new Wants.Elsewhere() {
        @Override
        public Optional<Double> findShare(String shot, String thing, When when) {
            return Optional.empty();
        }
    };

    /// Whether it holds as planned and doesn't as it seems.
    boolean isLost() {
        return planned >= 0 && seeming < 0;
    }

    String toText(PaperUnit papers) {
        return id + " (" + words + ") would fail, short by " + new Words(papers).margin(-seeming, unit)
                + "; as planned it has " + new Words(papers).margin(planned, unit) + " to spare.";
    }

    static List<CompareWants> of(Plan plan, Stage stage, double[] values, String pass, Findings findings) {
        double[] seeming = values.clone();
        for (Findings.Off off : findings.offs()) {
            if (off.sought().of() instanceof Sought.Of.AMark(int index)) {
                seeming[index] += off.offSi();
            }
        }
        List<Double> frames = new ArrayList<>();
        long last = stage.frames() - 1;
        for (int i = 0; i < INSTANTS && (i == 0 || last > 0); i++) {
            frames.add(Math.rint((double) last * i / (INSTANTS - 1)));
        }
        List<CompareWants> all = new ArrayList<>();
        for (WantLine line : stage.shot().wants()) {
            boolean isOther = line.pass().filter(one -> !one.equals(pass)).isPresent();
            if (!isOther && PaceMeasures.isJudgedIn(line, pass)) {
                add(all, Wants.of(line, plan, stage, NOWHERE), stage, frames, values, seeming);
            }
        }
        return all;
    }

    private static void add(
            List<CompareWants> all, Want want, Stage stage, List<Double> frames, double[] values, double[] seeming) {
        if (want.findUnknown().isPresent()) {
            return;
        }
        Moments planned = new Moments(stage, values, frames, new Recall());
        Moments seems = new Moments(stage, seeming, frames, new Recall());
        if (want.findUnknown(planned).isEmpty() && want.findUnknown(seems).isEmpty()) {
            all.add(new CompareWants(
                    want.line().id(),
                    want.line().toText(PaperUnit.MILLIMETRES),
                    want.unit(),
                    want.margin(want.parts(planned)),
                    want.margin(want.parts(seems))));
        }
    }
}
