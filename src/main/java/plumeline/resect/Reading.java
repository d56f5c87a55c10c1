package plumeline.resect;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Point;

/// A fit read as findings: what each number came to, and what else would do.
///
/// @param view the shot and its still
/// @param clicks the places clicked
/// @param sought what may be off
/// @param task what was fitted
record Reading(StillView view, List<Resection.Click> clicks, List<Sought> sought, Fit.Task task) {
    /// This part of what was believed before must be gone for clicks to have told something.
    private static final double TOLD = 0.8;

    /// Errors that go together more than this are told together only.
    private static final double TOGETHER = 0.9;

    /// What asks more than this over the best to be believed isn't as good.
    private static final double AS_GOOD = 6;

    /// Copies the lists.
    Reading {
        clicks = List.copyOf(clicks);
        sought = List.copyOf(sought);
    }

    Findings of(Doubts.Outcome doubted) {
        List<Doubt> misclicks = doubted.doubts().stream()
                .filter(Doubt.Misclick.class::isInstance)
                .toList();
        List<Alone> all = Alone.listAll(Doubts.without(task, misclicks), sought);
        List<Alone> alones = all.stream()
                .filter(alone -> alone.strain(sought) < all.getFirst().strain(sought) + AS_GOOD)
                .toList();
        Doubts.Outcome settled = doubted;
        if (alones.size() == 1) {
            List<Doubt> held = new ArrayList<>(misclicks);
            held.add(alones.getFirst().doubt(sought.size()));
            settled = Doubts.hold(task, sought, held).orElse(doubted);
        }
        double wider = wider(settled);
        return new Findings(
                offs(settled, wider),
                places(settled),
                alones.stream().map(this::alone).toList(),
                others(settled),
                together(settled.fit()),
                wider);
    }

    /// By how much clicks and marks disagree more than their errors say.
    private double wider(Doubts.Outcome settled) {
        int count = task.readings().length - settled.countLetGo();
        return count > 0 && settled.sumOfSquares() > Normal.sumOfSquares999(count)
                ? Math.sqrt(settled.sumOfSquares() / count)
                : 1;
    }

    private List<Findings.Off> offs(Doubts.Outcome settled, double wider) {
        List<Findings.Off> offs = new ArrayList<>();
        for (int i = 0; i < sought.size(); i++) {
            offs.add(off(settled, i, wider));
        }
        return offs;
    }

    private Findings.Off off(Doubts.Outcome settled, int index, double wider) {
        Sought one = sought.get(index);
        double off = settled.fit().off()[index];
        double sigma = wider * Math.sqrt(settled.fit().covariance()[index][index]);
        boolean isApart =
                isMisplaced(settled.doubts(), index) && Math.abs(off) > Math.max(one.errorSi(), Normal.HALF_95 * sigma);
        Findings.Told told =
                isApart ? Findings.Told.APART : sigma < TOLD * one.sigmaSi() ? Findings.Told.WITHIN : Findings.Told.NOT;
        return new Findings.Off(one, off, sigma, told);
    }

    private List<Findings.Place> places(Doubts.Outcome settled) {
        List<Findings.Place> places = new ArrayList<>();
        for (int i = 0; i < clicks.size(); i++) {
            Resection.Click click = clicks.get(i);
            Point clicked = new Point(click.xPixels(), click.yPixels());
            double[] residual = settled.fit().residual();
            Point fitted = new Point(clicked.x() - residual[2 * i], clicked.y() - residual[2 * i + 1]);
            Point planned = switch (view.spot(view.find(click.name()).orElseThrow())) {
                case Spotted.Seen(Point pixel) -> pixel;
                case Spotted.Covered(Point pixel, String _) -> pixel;
                case Spotted.Unknown _ -> fitted;
            };
            places.add(new Findings.Place(click.name(), clicked, planned, fitted, settled.isMisclick(i)));
        }
        return places;
    }

    /// An explanation by one owner, with how far its clicks are off then.
    private Findings.Single alone(Alone alone) {
        List<Findings.Off> offs = new ArrayList<>();
        for (int i = 0; i < sought.size(); i++) {
            double sigma = Math.sqrt(alone.fit().covariance()[i][i]);
            if (alone.which().contains(i)) {
                offs.add(new Findings.Off(
                        sought.get(i),
                        alone.fit().off()[i],
                        sigma,
                        sigma < TOLD * Alone.WIDER * sought.get(i).sigmaSi()
                                ? Findings.Told.APART
                                : Findings.Told.NOT));
            }
        }
        return new Findings.Single(alone.owner(), offs);
    }

    private static boolean isMisplaced(List<Doubt> doubts, int index) {
        return doubts.stream()
                .anyMatch(doubt -> doubt instanceof Doubt.Misplaced(String _, double _, List<double[]> ways)
                        && ways.stream().anyMatch(way -> way[index] != 0));
    }

    private List<Findings.Otherwise> others(Doubts.Outcome settled) {
        List<Findings.Otherwise> all = new ArrayList<>();
        for (int i = 0; i < settled.doubts().size(); i++) {
            List<Findings.Cause> causes = settled.others().get(i).stream()
                    .map(other -> cause(other.doubt(), other.off()))
                    .toList();
            if (!causes.isEmpty()) {
                all.add(new Findings.Otherwise(
                        cause(settled.doubts().get(i), settled.fit().off()), causes));
            }
        }
        return all;
    }

    private Findings.Cause cause(Doubt doubt, double[] off) {
        return switch (doubt) {
            case Doubt.Misclick(int point) ->
                new Findings.Cause.Misclicked(clicks.get(point).name());
            case Doubt.Misplaced(String names, double _, List<double[]> ways) -> {
                List<Findings.Moved> moved = new ArrayList<>();
                for (int i = 0; i < off.length; i++) {
                    int index = i;
                    if (ways.stream().anyMatch(way -> way[index] != 0)) {
                        moved.add(new Findings.Moved(sought.get(i), off[i]));
                    }
                }
                yield new Findings.Cause.Misplaced(names, moved);
            }
        };
    }

    /// Pairs that the clicks tell only together.
    private List<Findings.Pair> together(Fit fit) {
        List<Findings.Pair> pairs = new ArrayList<>();
        double[][] covariance = fit.covariance();
        for (int i = 0; i < sought.size(); i++) {
            for (int j = i + 1; j < sought.size(); j++) {
                double both = Math.sqrt(covariance[i][i] * covariance[j][j]);
                if (both > 0 && Math.abs(covariance[i][j]) > TOGETHER * both) {
                    pairs.add(new Findings.Pair(sought.get(i), sought.get(j)));
                }
            }
        }
        return pairs;
    }
}
