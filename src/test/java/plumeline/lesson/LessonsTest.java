package plumeline.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.quantity.Quantities;
import plumeline.take.Measured;
import plumeline.take.Take;
import plumeline.text.Problem;

/// The text of lessons: read, added to, taken from, put over a plan.
final class LessonsTest {
    private static final Lesson RESET =
            new Lesson(new Measured.Reset("plume", Quantities.get("32 min")), "2026-11-29", "a watch: \\ and \"wall\"");

    @Test
    void text_isReadWithEverySort() {
        List<Lesson> lessons = Noted.lessons(Noted.LESSONS).list();
        assertThat(lessons).hasSize(3);
        assertThat(lessons.get(1))
                .isEqualTo(new Lesson(
                        new Measured.FocalLength("fifty", Quantities.get("48.6 mm ± 0.2 mm")),
                        "",
                        "a ruler, \"twice\""));
        assertThat(lessons.getFirst().measured()).isInstanceOfSatisfying(Measured.OfTake.class, of -> {
            Take take = of.take();
            assertThat(take.fronts()).hasSize(2);
            assertThat(take.fronts().getFirst().time()).isEqualTo(Quantities.get("0.9 s ± 0.04 s"));
            assertThat(take.widths().getFirst().width()).isEqualTo(Quantities.get("60 mm"));
        });
    }

    @Test
    void with_addsBehindTheOthers_andLeavesAllElseAsItWas() {
        Lessons before = Noted.lessons(Noted.LESSONS);
        Lessons after = before.with(RESET, "film.yaml");
        assertThat(after.text()).startsWith(Noted.LESSONS).hasLineCount(Noted.LESSONS.split("\n").length + 4);
        assertThat(after.list())
                .hasSize(4)
                .startsWith(before.list().toArray(Lesson[]::new))
                .endsWith(RESET);
        assertThat(after.without(4, "film.yaml").text()).isEqualTo(Noted.LESSONS);
    }

    @Test
    void without_takesOneOut_andKeepsTheOthersComments() {
        Lessons after = Noted.lessons(Noted.LESSONS).without(2, "film.yaml");
        assertThat(after.list()).hasSize(2);
        assertThat(after.text())
                .contains("# by hand", "# the first", "{light: strip, gives: 1450 lx at 1 m}")
                .doesNotContain("fifty");
        Lessons none = after.without(2, "film.yaml").without(1, "film.yaml");
        assertThat(none.list()).isEmpty();
        assertThat(none.with(RESET, "film.yaml").list()).containsExactly(RESET);
    }

    /// Lists in brackets, windows' line ends, no line end at the end, JSON: nothing is lost, whatever the layout.
    @Test
    void otherLayouts_loseNoLesson() {
        String flow =
                "{lessons: 1, measured: [{lens: fifty, focal_length: 48 mm}, {light: strip, gives: 9 lx at 1 m}]}";
        String json = "{\"lessons\": 1, \"measured\": [\n{\"lens\": \"fifty\", \"focal_length\": \"48 mm\"},\n"
                + "{\"light\": \"strip\", \"gives\": \"9 lx at 1 m\"}\n]}\n";
        String deep = "measured:\n      - lens: fifty\n        focal_length: 48 mm\n"
                + "      - {light: strip, gives: 9 lx at 1 m}\nlessons: 1";
        for (String text : List.of(flow, json, deep, Noted.LESSONS.replace("\n", "\r\n"), Noted.LESSONS.strip())) {
            Lessons before = Noted.lessons(text);
            Lessons after = before.with(RESET, "film.yaml");
            assertThat(after.list())
                    .hasSize(before.list().size() + 1)
                    .startsWith(before.list().toArray(Lesson[]::new))
                    .endsWith(RESET);
            assertThat(Noted.lessons(after.text()).list()).isEqualTo(after.list());
            assertThat(before.without(1, "film.yaml").list())
                    .isEqualTo(before.list().subList(1, before.list().size()));
        }
    }

    @Test
    void applied_valuesAreMeasured_andThePlansTextStays() {
        Plan plan = Noted.measured(Noted.PLAN, Noted.LESSONS);
        assertThat(plan.source().text()).isEqualTo(Noted.PLAN);
        assertThat(plan.kit().lenses().getFirst().focalLength()).isEqualTo(Quantities.get("48.6 mm ± 0.2 mm measured"));
        assertThat(plan.kit().lights().getFirst().written().findQuantity("gives"))
                .contains(Quantities.get("1450 lx at 1 m measured"));
        var ink = plan.kit().inks().getFirst().written();
        assertThat(ink.findNode("front[1]")).isEmpty();
        assertThat(ink.node().at("front[1][1]").orElseThrow().toString()).contains("0.9 s ± 0.04 s measured");
        assertThat(ink.findQuantity("spread").orElseThrow().value()).isEqualTo(0.30);
        assertThat(plan.findShot("plume").orElseThrow().findRelease()).isPresent();
    }

    @Test
    void applied_ofTwoLessonsTheLaterCounts_andAllOfTheMachinesAndShots() {
        Plan plan = Noted.measured(Noted.PLAN, """
            lessons: 1
            measured:
              - {machine: slider, speed: 70 mm/s}
              - {machine: slider, speed: 74 mm/s measured}
              - {reset: 32 min, shot: plume}
              - {strength: 0.8 /cm, ink: rose}
            """);
        assertThat(plan.kit().machines().getFirst().written().findQuantity("speed"))
                .contains(Quantities.get("74 mm/s measured"));
        assertThat(plan.findShot("plume").orElseThrow().written().findQuantity("reset"))
                .contains(Quantities.get("32 min measured"));
        assertThat(plan.kit().inks().getFirst().written().findQuantity("strength"))
                .contains(Quantities.get("0.8 /cm measured"));
    }

    @Test
    void front_comesOfTakesMadeLikeTheLast_inTheOrderOfTime() {
        String two = Noted.LESSONS + """
              - {take: 2, shot: plume, ink: rose, volume: 8 ml, density: 1.03 g/ml, height: -10 mm,
                 front: [[3 s, 200 mm]]}
              - {take: 3, shot: plume, ink: rose, volume: 8 ml, density: 1.03 g/ml, height: -10 mm,
                 front: [[1 s, 80 mm]]}
            """;
        var ink = Noted.measured(Noted.PLAN, two).kit().inks().getFirst().written();
        assertThat(ink.node().at("takes[3]")).isPresent();
        assertThat(ink.node().at("front[3]")).isEmpty();
        assertThat(ink.node().at("front[1][2]").orElseThrow().toString()).contains("80 mm measured");
    }

    @Test
    void problems_nameFileLineAndField_allInOneGo() {
        List<Problem> problems = Noted.read("""
                lessons: 1
                measured:
                  - {lens: fifty, focal_lenght: 48 mm}
                  - {take: 1, shot: plume, ink: rose, front: [[0.4 mm, 70 mm]]}
                  - {lux: 4}
                """).problems();
        assertThat(problems.stream()
                        .map(problem -> problem.place().toText() + " " + problem.field())
                        .toList())
                .contains(
                        "film.lessons.yaml:3:33 measured[1].focal_lenght",
                        "film.lessons.yaml:4:48 measured[2].front[1][1]")
                .anyMatch(each -> each.startsWith("film.lessons.yaml:5:5 measured[3]"));
        assertThat(Noted.read("lessons: 2\nmeasured: []\n")
                        .problems()
                        .getFirst()
                        .toText())
                .startsWith("film.lessons.yaml:1:10 lessons is 2; must be 1");
        assertThat(Noted.read("").lessons()).isEmpty();
    }

    @Test
    void readingsThatCantBe_areProblemsAtTheirPlace_inOneGo() {
        List<Problem> problems = Noted.read(Noted.LESSONS
                        .replace("[2.1 s, 130 mm]", "[2.1 s, 60 mm],\n              [2.1 s, 9 mm]")
                        .replace("[100 mm, 60 mm]", "[8 mm, 60 mm]"))
                .problems();
        assertThat(problems.stream().map(Problem::toText).toList())
                .containsExactly(
                        "film.lessons.yaml:13:45 measured[1].front[2] is 60 mm at 2.1 s behind 70 mm at 0.9 s; must be"
                                + " deeper and later than the reading before it\n  Read one front on its way down;"
                                + " depths count from the still surface.   (P-LESSON-02, docs/problems.md)",
                        "film.lessons.yaml:14:15 measured[1].front[3] is 9 mm at 2.1 s behind 60 mm at 2.1 s; must be"
                                + " deeper and later than the reading before it\n  Read one front on its way down;"
                                + " depths count from the still surface.   (P-LESSON-02, docs/problems.md)",
                        "film.lessons.yaml:14:23 measured[1].front[3][2] is a reading at 9 mm; must be deeper than the"
                                + " nozzle's mouth, 10 mm\n  Count depths from the still surface down.   (P-LESSON-01,"
                                + " docs/problems.md)",
                        "film.lessons.yaml:15:14 measured[1].width[1][1] is a reading at 8 mm; must be deeper than the"
                                + " nozzle's mouth, 10 mm\n  Count depths from the still surface down.   (P-LESSON-01,"
                                + " docs/problems.md)");
    }

    /// The water is 252 mm deep in a tank 450 mm wide inside.
    @Test
    void readingsThatCantBeInTheTank_areProblemsOfTheLessonsText() {
        var reading = Noted.lessons(Noted.LESSONS
                        .replace("[2.1 s, 130 mm]", "[2.1 s, 253 mm]")
                        .replace("[[100 mm, 60 mm]]", "[[100 mm, 451 mm], [254 mm, 60 mm]]"))
                .applyTo(Noted.plan(Noted.PLAN));
        assertThat(reading.plan()).isEmpty();
        assertThat(reading.problems().stream().map(Problem::toText).toList())
                .containsExactly(
                        "film.lessons.yaml:13:53 measured[1].front[2][2] is a reading at 253 mm; must be at most as"
                                + " deep as the water, 252 mm\n  Count depths from the still surface down, in the"
                                + " plume's plane; the plan's water must be as deep as it was.   (P-LESSON-03,"
                                + " docs/problems.md)",
                        "film.lessons.yaml:14:22 measured[1].width[1][2] is a width of 451 mm; must be at most the"
                                + " tank's inside, 450 mm\n  Read it from edge to edge, by the ruler in the plume's"
                                + " plane.   (P-LESSON-04, docs/problems.md)",
                        "film.lessons.yaml:14:32 measured[1].width[2][1] is a reading at 254 mm; must be at most as"
                                + " deep as the water, 252 mm\n  Count depths from the still surface down, in the"
                                + " plume's plane; the plan's water must be as deep as it was.   (P-LESSON-03,"
                                + " docs/problems.md)");
        assertThat(Noted.lessons(Noted.LESSONS.replace("[2.1 s, 130 mm]", "[2.1 s, 252 mm]"))
                        .applyTo(Noted.plan(Noted.PLAN))
                        .problems())
                .isEmpty();
    }

    @Test
    void unknownName_isAProblemOfTheLessonsText_thatSaysHowToForgetIt() {
        var reading = Noted.lessons(Noted.LESSONS).applyTo(Noted.plan(Noted.PLAN.replace("fifty", "ninety")));
        assertThat(reading.plan()).isEmpty();
        assertThat(reading.problems().getFirst().toText())
                .isEqualTo("film.lessons.yaml:16:11 measured[2].lens is fifty; must be the name of a lens in"
                        + " kit.lenses: ninety\n  Take this lesson out: ./plumeline lesson forget PLAN 2."
                        + "   (P-REF-01, docs/problems.md)");
    }

    /// What a plan may not have is said at the lesson's place.
    @Test
    void valueOfAnotherKind_isAProblemAtItsPlace() {
        var reading = Noted.lessons("lessons: 1\nmeasured:\n  - {machine: slider, speed: 20 deg/s}\n")
                .applyTo(Noted.plan(Noted.PLAN));
        assertThat(reading.plan()).isEmpty();
        assertThat(reading.problems().getFirst().toText())
                .startsWith("film.lessons.yaml:3:30 kit.machines.slider.speed is 20 deg/s");
    }

    @Test
    void reordered_lessonsOfDifferentThings_commute() {
        String[] items = {"{machine: slider, speed: 74 mm/s}", "{lens: fifty, focal_length: 48 mm}"};
        Plan one = Noted.measured(Noted.PLAN, "lessons: 1\nmeasured: [" + items[0] + ", " + items[1] + "]\n");
        Plan other = Noted.measured(Noted.PLAN, "lessons: 1\nmeasured: [" + items[1] + ", " + items[0] + "]\n");
        assertThat(one.kit().lenses().getFirst().focalLength())
                .isEqualTo(other.kit().lenses().getFirst().focalLength());
        assertThat(one.kit().machines().getFirst().written().findQuantity("speed"))
                .isEqualTo(other.kit().machines().getFirst().written().findQuantity("speed"));
    }
}
