package plumeline.resect;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
                .filter(alone -> alone.strain(sought) < all.getFirst().strain(sought) + Alone.AS_GOOD)
                .toList();
        Doubts.Outcome settled = doubted;
        if (alones.size() == 1) {
            List<Doubt> held = new ArrayList<>(misclicks);
            alones.getFirst().findDoubt(sought.size()).ifPresent(held::add);
            settled = Doubts.hold(task, sought, held).orElse(doubted);
        }
        double wider = wider(settled);
        List<Findings.Off> offs = offs(settled, wider);
        List<Findings.Single> singles = alones.stream().map(this::alone).toList();
        List<Findings.Otherwise> others = new ArrayList<>(others(settled));
        if (alones.stream().noneMatch(Alone::isOfCamera)) {
            Instead.find(Doubts.without(task, misclicks), sought, settled, offs).ifPresent(others::add);
        }
        return new Findings(
                either(offs, singles, others), places(settled), singles, others, together(settled.fit()), wider);
    }

    /// What may be off or something else instead is told as that, by as much as it then would be.
    private static List<Findings.Off> either(
            List<Findings.Off> offs, List<Findings.Single> singles, List<Findings.Otherwise> others) {
        Map<Sought, Double> open = new HashMap<>();
        if (singles.size() > 1) {
            singles.forEach(single -> single.offs().stream()
                    .filter(Findings.Off::isOff)
                    .forEach(off -> open.putIfAbsent(off.sought(), off.offSi())));
        }
        others.stream()
                .flatMap(otherwise -> Stream.concat(Stream.of(otherwise.taken()), otherwise.others().stream()))
                .forEach(cause -> {
                    if (cause instanceof Findings.Cause.Misplaced(String _, List<Findings.Moved> moved)) {
                        moved.forEach(one -> open.putIfAbsent(one.sought(), one.offSi()));
                    }
                });
        return offs.stream()
                .map(off -> Optional.ofNullable(open.get(off.sought()))
                        .map(off::asEither)
                        .orElse(off))
                .toList();
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

    /// An explanation by one owner, with how far its numbers are off then, and how the camera looks.
    private Findings.Single alone(Alone alone) {
        List<Findings.Off> offs = new ArrayList<>();
        List<Findings.Off> looks = new ArrayList<>();
        for (int i = 0; i < sought.size(); i++) {
            Sought one = sought.get(i);
            double sigma = Math.sqrt(alone.fit().covariance()[i][i]);
            boolean isOwn = alone.which().contains(i);
            Findings.Told told = sigma < TOLD * (isOwn ? alone.wider() : 1) * one.sigmaSi()
                    ? Findings.Told.APART
                    : Findings.Told.NOT;
            if (isOwn || Alone.isLook(one)) {
                (isOwn ? offs : looks).add(new Findings.Off(one, alone.fit().off()[i], sigma, told));
            }
        }
        return new Findings.Single(
                alone.owner(),
                alone.what(),
                offs,
                looks.stream().filter(Findings.Off::isOff).toList());
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
