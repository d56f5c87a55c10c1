package plumeline.solve;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.plume.InkRecord;
import plumeline.stage.Stage;
import plumeline.timeline.Played;
import plumeline.want.Wants;

/// Finds the marks of a film's shots and answers its wants.
public final class Solve {
    private final Plan plan;
    private final InkRuns runs;
    private final Consumer<String> heard;
    private final Map<String, ShotAnswer> solved = new LinkedHashMap<>();

    private Solve(Plan plan, List<InkRecord> records, Consumer<String> heard) {
        this.plan = plan;
        this.heard = heard;
        runs = new InkRuns(records);
    }

    /// Solves a whole film of which no simulation was run.
    ///
    /// @param plan the plan
    /// @return the findings
    public static FilmAnswer film(Plan plan) {
        return film(plan, List.of());
    }

    /// Solves a whole film.
    ///
    /// @param plan the plan
    /// @param records what simulations of ink gave
    /// @return the findings
    public static FilmAnswer film(Plan plan, List<InkRecord> records) {
        return film(plan, plan.shots().stream().map(Shot::name).toList(), records);
    }

    /// Solves some shots of a film, and those that they are compared with.
    ///
    /// @param plan the plan
    /// @param shots names of the shots to answer
    /// @param records what simulations of ink gave; those that are of other marks or another ink count for nothing
    /// @return the findings, of these shots only
    public static FilmAnswer film(Plan plan, List<String> shots, List<InkRecord> records) {
        return film(plan, shots, records, shot -> {});
    }

    /// Solves some shots of a film, and those that they are compared with, and tells how far it is.
    ///
    /// @param plan the plan
    /// @param shots names of the shots to answer
    /// @param records what simulations of ink gave; those that are of other marks or another ink count for nothing
    /// @param heard who hears the name of each shot that is done, from any thread
    /// @return the findings, of these shots only
    public static FilmAnswer film(Plan plan, List<String> shots, List<InkRecord> records, Consumer<String> heard) {
        Solve solve = new Solve(plan, records, heard);
        solve.alone(plan.shots().stream()
                .filter(shot -> shots.contains(shot.name()) && !isCompared(shot))
                .toList());
        for (Shot shot : plan.shots()) {
            if (shots.contains(shot.name())) {
                solve.shot(shot, List.of());
            }
        }
        List<ShotAnswer> answers = plan.shots().stream()
                .filter(shot -> shots.contains(shot.name()))
                .map(shot -> solve.solved.get(shot.name()))
                .toList();
        List<WantAnswer> wants = new ArrayList<>();
        Verdict verdict = Verdict.HOLDS;
        for (WantLine line : plan.wants()) {
            wants.add(solve.filmWant(line, answers));
            verdict = verdict.worse(wants.getLast().verdict());
        }
        for (ShotAnswer answer : answers) {
            verdict = verdict.worse(answer.verdict());
        }
        return new FilmAnswer(plan, sha256(plan.source().text() + plan.source().measured()), verdict, answers, wants);
    }

    private static boolean isCompared(Shot shot) {
        return shot.wants().stream().anyMatch(want -> want.word().equals("same_size"));
    }

    /// Solves shots that look at no other one side by side; each by itself, so that their number of threads changes
    /// nothing.
    private void alone(List<Shot> shots) {
        List<ShotAnswer> answers = shots.parallelStream().map(this::answer).toList();
        for (int i = 0; i < answers.size(); i++) {
            solved.put(shots.get(i).name(), answers.get(i));
        }
    }

    private ShotAnswer answer(Shot shot) {
        List<WantLine> filmWants = isInFilm(shot)
                ? plan.wants().stream()
                        .filter(line -> Wants.isJudgedByShot(line) && Wants.isAbout(line, shot))
                        .toList()
                : List.of();
        ShotAnswer answer = ShotSolver.solve(plan, shot, filmWants, new Wants.Elsewhere() {
            @Override
            public Optional<Double> findShare(String other, String thing, When when) {
                return share(other, thing, when);
            }

            @Override
            public Optional<Veiled> findVeiled(Height height) {
                return runs.findVeiled(height);
            }
        });
        heard.accept(shot.name());
        return answer;
    }

    /// Solves a shot once; shots that it is compared with first. A shot compared with itself by a round trip is
    /// compared with its own start values.
    private void shot(Shot shot, List<String> waiting) {
        if (solved.containsKey(shot.name()) || waiting.contains(shot.name())) {
            return;
        }
        List<String> waitingNow = new ArrayList<>(waiting);
        waitingNow.add(shot.name());
        for (WantLine line : shot.wants()) {
            if (line.word().equals("same_size")) {
                line.written().findWord("as").flatMap(plan::findShot).ifPresent(other -> shot(other, waitingNow));
            }
        }
        solved.put(shot.name(), answer(shot));
    }

    private boolean isInFilm(Shot shot) {
        return plan.cuts().isEmpty() || Played.usedFrames(plan, shot.name()) > 0;
    }

    private Optional<Double> share(String shot, String thing, When when) {
        ShotAnswer known = solved.get(shot);
        if (known != null) {
            Stage stage = known.posed().stages().getFirst().stage();
            return Wants.findShare(stage, known.posed().values(), thing, when);
        }
        return plan.findShot(shot).flatMap(other -> {
            Stage stage = Stage.of(plan, other);
            return Wants.findShare(stage, stage.startValues(), thing, when);
        });
    }

    private WantAnswer filmWant(WantLine line, List<ShotAnswer> answers) {
        if (FilmCuts.answers(line)) {
            return FilmCuts.answer(line, plan);
        }
        WantAnswer worst = null;
        String worstShot = "";
        List<String> failing = new ArrayList<>();
        List<String> attempts = new ArrayList<>();
        for (ShotAnswer shot : answers) {
            for (WantAnswer answer : shot.filmWants()) {
                if (!answer.id().equals(line.id())) {
                    continue;
                }
                if (answer.verdict() == Verdict.FAILS) {
                    failing.add(shot.shot());
                    answer.attempts().forEach(attempt -> attempts.add("In " + shot.shot() + ": " + attempt));
                }
                if ((worst == null || ShotSolver.isWorse(answer, worst))) {
                    worst = answer;
                    worstShot = shot.shot();
                }
            }
        }
        if (worst == null) {
            return new WantAnswer(
                    line.id(),
                    line.toText(plan.film().papersOrDefault()),
                    Verdict.UNKNOWN,
                    new WantAnswer.Margin.None(),
                    List.of(Wants.isJudgedByShot(line) ? "No shot of the cut was solved." : "not computed yet"),
                    List.of(),
                    "");
        }
        List<String> because = new ArrayList<>();
        because.add(
                failing.size() > 1
                        ? "Fails in " + String.join(", ", failing) + "; worst in " + worstShot + "."
                        : "Worst in " + worstShot + ".");
        because.addAll(worst.because());
        return new WantAnswer(
                worst.id(),
                worst.want(),
                worst.verdict(),
                worst.margin(),
                worst.overPupil(),
                because,
                attempts,
                worst.pass());
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException none) {
            throw new IllegalStateException("every Java has SHA-256", none);
        }
    }
}
