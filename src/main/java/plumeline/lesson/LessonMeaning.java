package plumeline.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumeline.plan.Kit;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.take.Measured;
import plumeline.text.Nearest;
import plumeline.text.Node;
import plumeline.text.Problem;

/// Finds what is wrong with what lessons mean.
final class LessonMeaning {
    private final List<Problem> problems = new ArrayList<>();
    private final int number;
    private final Node.Mapping node;

    private LessonMeaning(int number, Node.Mapping node) {
        this.number = number;
        this.node = node;
    }

    /// Readings that can't be, whatever the plan says.
    static List<Problem> ofTakes(List<Lessons.Written> written) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            Lessons.Written each = written.get(i);
            if (each.lesson().measured() instanceof Measured.OfTake of) {
                problems.addAll(TakeMeaning.ofReadings(i + 1, each.node(), of.take()));
            }
        }
        return problems;
    }

    /// Readings that can't be in the tank of their shot.
    static List<Problem> inTanks(Lessons lessons, Plan plan) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < lessons.written().size(); i++) {
            Lessons.Written each = lessons.written().get(i);
            if (each.lesson().measured() instanceof Measured.OfTake of) {
                Shot shot = plan.findShot(of.shot()).orElseThrow();
                problems.addAll(TakeMeaning.inTank(i + 1, each.node(), of.take(), shot));
            }
        }
        return problems;
    }

    /// Names that the plan doesn't have.
    static List<Problem> ofNames(Lessons lessons, Plan plan) {
        List<Problem> problems = new ArrayList<>();
        Kit kit = plan.kit();
        for (int i = 0; i < lessons.written().size(); i++) {
            Lessons.Written each = lessons.written().get(i);
            LessonMeaning meaning = new LessonMeaning(i + 1, each.node());
            switch (each.lesson().measured()) {
                case Measured.OfTake take -> {
                    meaning.check("shot", take.shot(), plan.shots(), Shot::name, "a shot", "shots");
                    meaning.check("ink", take.ink(), kit.inks(), Kit.Ink::name, "an ink", "kit.inks");
                }
                case Measured.Lux lux ->
                    meaning.check("light", lux.light(), kit.lights(), Kit.Light::name, "a light", "kit.lights");
                case Measured.LuxAt at -> meaning.checkSpot(at, plan);
                case Measured.FocalLength length ->
                    meaning.check("lens", length.lens(), kit.lenses(), Kit.Lens::name, "a lens", "kit.lenses");
                case Measured.Speed speed ->
                    meaning.check(
                            "machine", speed.machine(), kit.machines(), Kit.Machine::name, "a machine", "kit.machines");
                case Measured.Reset reset ->
                    meaning.check("shot", reset.shot(), plan.shots(), Shot::name, "a shot", "shots");
                case Measured.Strength strength ->
                    meaning.check("ink", strength.ink(), kit.inks(), Kit.Ink::name, "an ink", "kit.inks");
            }
            problems.addAll(meaning.problems);
        }
        return problems;
    }

    private void checkSpot(Measured.LuxAt at, Plan plan) {
        String name = at.at().shot();
        check("shot", name, plan.shots(), Shot::name, "a shot", "shots");
        plan.findShot(name).ifPresent(shot -> {
            String home = "shots." + name;
            check("thing", at.at().thing(), shot.placed(), Placed::name, "a placed thing", home + ".place");
            for (Measured.LuxAt.Gave lamp : at.lamps()) {
                check("lamps", lamp.light(), shot.lights(), PlacedLight::name, "a light", home + ".lights");
                check("lamps", lamp.lamp(), plan.kit().lights(), Kit.Light::name, "a light", "kit.lights");
            }
        });
    }

    private <T> void check(
            String key, String name, List<T> known, Function<T, String> named, String what, String home) {
        List<String> names = known.stream().map(named).toList();
        if (names.contains(name)) {
            return;
        }
        add(
                key,
                "P-REF-01",
                name,
                "the name of " + what + " in " + home + (names.isEmpty() ? ", which has none" : ": " + join(names)),
                Nearest.find(name, names)
                                .map(near -> "Try " + near + ", or take")
                                .orElse("Take") + " this lesson out: ./plumeline lesson forget PLAN " + number + ".");
    }

    private static String join(List<String> names) {
        return names.size() == 1
                ? names.getFirst()
                : String.join(", ", names.subList(0, names.size() - 1)) + " or " + names.getLast();
    }

    private void add(String key, String code, String given, String allowed, String attempt) {
        problems.add(new Problem(
                node.find(key).orElse(node).place(), "measured[" + number + "]." + key, code, given, allowed, attempt));
    }
}
