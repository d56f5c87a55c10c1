package plumeline.ask.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Item;
import plumeline.answer.Sensor;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.ask.Questions;
import plumeline.quantity.PaperUnit;
import plumeline.search.Search;

/// The question `reveal`: facts of the geometry, sentences that are promises, messages.
final class RevealTest {
    private static final Sensor UHD = new Sensor(0.036, 0.02025, 3840);
    private static final String EXAMPLE = Questions.find("reveal").orElseThrow().example();

    @Test
    void answers_areThoseOfTheContract() {
        Answer answer = answer("reveal", EXAMPLE);
        List<String> names = new ArrayList<>();
        for (String thing : List.of("first", "second", "third")) {
            names.addAll(List.of(thing + "_x", thing + "_y", thing + "_leeway_x", thing + "_leeway_y"));
        }
        names.addAll(
                List.of("end_gap_1", "end_gap_2", "travel_needed", "camera_leeway_x", "height_low", "height_high"));
        assertThat(answer.answers().stream().map(Item::name)).containsExactlyElementsOf(names);
        assertThat(number(answer, "first_x")).isZero();
        assertThat(number(answer, "first_y")).isZero();
        assertThat(number(answer, "second_x") % 1).isZero();
        assertThat(number(answer, "end_gap_1")).isGreaterThan(2);
        assertThat(number(answer, "travel_needed")).isBetween(100.0, 600.0);
        assertThat(number(answer, "height_low") + number(answer, "height_high")).isCloseTo(118, within(0.1));
    }

    @Test
    void equalCylindersInFile_allPeekAtOnceAfterOneRadius_whateverTheirSpacing() {
        for (double spacing : new double[] {60, 100, 170, 333}) {
            Reveal.Inputs inputs = inputs(3, 0.6, 0.059, -0.6, Reveal.Keeps.ALL, 0);
            RevealSet set = new RevealSet(inputs);
            double[] values = RevealSet.values(inputs, new double[] {0, spacing, 0, 2 * spacing});
            values[RevealSet.CAMERA_X] = 21 - 0.02;
            assertThat(hidden(set, values, 1)).isPositive();
            assertThat(hidden(set, values, 2)).isPositive();
            values[RevealSet.CAMERA_X] = 21 + 0.02;
            assertThat(hidden(set, values, 1)).isNegative();
            assertThat(hidden(set, values, 2)).isNegative();
        }
    }

    @Test
    void cameraAboveTheLid_showsTheFartherLids() {
        Reveal.Inputs low = inputs(2, 0.6, 0.117, -0.6, Reveal.Keeps.ALL, 0);
        Reveal.Inputs high = inputs(2, 0.6, 0.119, -0.6, Reveal.Keeps.ALL, 0);
        double[] file = {0, 200};
        assertThat(hidden(new RevealSet(low), RevealSet.values(low, file), 1)).isPositive();
        assertThat(hidden(new RevealSet(high), RevealSet.values(high, file), 1)).isNegative();
    }

    private static double hidden(RevealSet set, double[] values, int thing) {
        return RevealInquiry.least(set.at(values), 5 * (thing - 1), 5 * thing);
    }

    @Test
    void towardTheOtherSide_isTheMirrorImage() {
        Reveal.Inputs left = inputs(3, 0.6, 0.059, -0.6, Reveal.Keeps.ALL, 0.02);
        Reveal.Inputs right = inputs(3, 0.6, 0.059, 0.6, Reveal.Keeps.ALL, 0.02);
        double[] places = {3, 240, -5, 510};
        double[] mirrored = {-3, 240, 5, 510};
        RevealSet leftSet = new RevealSet(left);
        RevealSet rightSet = new RevealSet(right);
        double[] here = leftSet.gaps(leftSet.end(RevealSet.values(left, places)));
        double[] there = rightSet.gaps(rightSet.end(RevealSet.values(right, mirrored)));
        assertThat(there[0]).isCloseTo(here[1], within(1e-9));
        assertThat(there[1]).isCloseTo(here[0], within(1e-9));
    }

    @Test
    void headingKept_slidesTheFirstOutOfTheFrame() {
        Answer answer = answer("reveal", EXAMPLE.replace("keeps: all ", "keeps: heading "));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("At the end"));
        assertThat(answer.notes().attempts()).contains("Pan to keep all in the frame (keeps: all).");
    }

    @Test
    void tooLittleTravel_triesAreTrue() {
        String text = EXAMPLE.replace("gap: 2 %", "gap: 25 %").replace("travel: 600 mm", "travel: 200 mm");
        Answer answer = answer("reveal", text);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(number(answer, "second_leeway_x")).isZero();
        assertThat(answer.getValue("height_low")).isInstanceOf(Value.Word.class);
        List<String> attempts = answer.notes().attempts();
        assertThat(attempts).hasSize(2);
        String slide = attempts.getFirst();
        String whole = slide.substring(slide.indexOf(": ") + 2, slide.indexOf(" in all"));
        assertThat(slide).startsWith("Slide ").contains(" further: ");
        checkTry(slide, whole, amount -> text.replace("travel: 200 mm", "travel: " + amount));
        double millimetres = Double.parseDouble(whole.replace(" mm", ""));
        assertThat(answer("reveal", text.replace("travel: 200 mm", "travel: " + (millimetres - 1) + " mm"))
                        .verdict())
                .as("a step less")
                .isEqualTo(Verdict.FAILS);
        String gap = attempts.getLast();
        String share = gap.substring("Ask for a gap of ".length(), gap.indexOf(" instead"));
        assertThat(gap).contains("instead of 25 %");
        checkTry(gap, share, amount -> text.replace("gap: 25 %", "gap: " + amount));
    }

    @Test
    void lensTooHigh_saysHowLow() {
        String text =
                EXAMPLE.replace("height: 59 mm}", "height: 140 mm}").replace("distance: 600 mm", "distance: 900 mm");
        Answer answer = answer("reveal", text);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        String attempt = answer.notes().attempts().stream()
                .filter(each -> each.startsWith("Lower the lens by"))
                .findFirst()
                .orElseThrow();
        String height = cut(attempt, " to ", " mm") + " mm";
        checkTry(attempt, height, amount -> text.replace("height: 140 mm", "height: " + amount));
    }

    @Test
    void tallerThanTheFrame_failsAndSaysHowFarBack() {
        String text = EXAMPLE.replace("distance: 600 mm", "distance: 250 mm");
        Answer answer = answer("reveal", text);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().because()).anyMatch(each -> each.contains("of the frame's height stands outside"));
        String attempt = answer.notes().attempts().stream()
                .filter(each -> each.contains("farther back, at "))
                .findFirst()
                .orElseThrow();
        String distance = cut(attempt, ", at ", " mm") + " mm";
        checkTry(attempt, distance, amount -> text.replace("distance: 250 mm", "distance: " + amount));
    }

    @Test
    void farTooClose_stillSaysHowFarBack() {
        String text = EXAMPLE.replace("distance: 600 mm", "distance: 51.3 mm");
        Answer answer = answer("reveal", text);
        assertThat(answer.notes().because().getFirst())
                .isEqualTo(
                        "No places were found for hiding at the start, the gaps at the end and all in the frame at the"
                                + " end together.");
        assertThat(answer.notes().because())
                .contains("first doesn't fit the frame at the start, wherever the others stand.");
        assertThat(answer.toText(PaperUnit.MILLIMETRES).lines().count()).isLessThanOrEqualTo(30);
        String attempt = answer.notes().attempts().getLast();
        assertThat(attempt).startsWith("Start ").contains(" farther back, at ");
        String distance = cut(attempt, ", at ", " mm") + " mm";
        checkTry(attempt, distance, amount -> text.replace("distance: 51.3 mm", "distance: " + amount));
    }

    @Test
    void headingKept_aShorterSlideIsTried() {
        String text = EXAMPLE.replace("keeps: all ", "keeps: heading ");
        String attempt = find(answer("reveal", text), "less: ");
        String travel = attempt.substring(attempt.indexOf(": ") + 2, attempt.indexOf(" in all"));
        checkTry(attempt, travel, amount -> text.replace("travel: 600 mm", "travel: " + amount));
    }

    @Test
    void inInches_placesAndTriesAreOnSixteenths() {
        String text = EXAMPLE.replace("distance: 600 mm, height: 59 mm", "distance: 24 in, height: 2.3 in")
                .replace("diameter: 42 mm, height: 118 mm", "diameter: 1.65 in, height: 4.65 in")
                .replace("travel: 600 mm", "travel: 8.3 in")
                .replace("gap: 2 %", "gap: 25 %");
        Answer fails = answer("reveal", text);
        assertThat(fails.verdict()).isEqualTo(Verdict.FAILS);
        String attempt = find(fails, " further: ");
        String travel = attempt.substring(attempt.indexOf(": ") + 2, attempt.indexOf(" in all"));
        Answer answer = answer("reveal", text.replace("travel: 8.3 in", "travel: " + travel));
        assertThat(answer.verdict()).isEqualTo(Verdict.TIGHT);
        for (String name : List.of("second_x", "second_y", "third_x", "third_y")) {
            double sixteenths = number(answer, name) / 25.4 * 16;
            assertThat(sixteenths).isCloseTo(Math.rint(sixteenths), within(1e-4));
        }
    }

    @Test
    void lensOnTheTable_seesFeetLevelWithTheFirstsFoot() {
        String text =
                EXAMPLE.replace("height: 59 mm}", "height: 0 mm}").replace("distance: 600 mm", "distance: 900 mm");
        Answer answer = answer("reveal", text);
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(number(answer, "height_low")).isZero();
    }

    /// A try is what it says: just enough is tight, and what is said to be enough for placing errors holds.
    private static void checkTry(String attempt, String amount, UnaryOperator<String> with) {
        boolean tight = attempt.contains("just enough: tight");
        assertThat(answer("reveal", with.apply(amount)).verdict())
                .as(attempt)
                .isEqualTo(tight ? Verdict.TIGHT : Verdict.HOLDS);
        if (attempt.contains("tight; at ")) {
            String roomy = cut(attempt, "tight; at ", " nothing");
            assertThat(answer("reveal", with.apply(roomy)).verdict())
                    .as(attempt)
                    .isEqualTo(Verdict.HOLDS);
        }
    }

    private static String cut(String text, String after, String before) {
        int from = text.indexOf(after) + after.length();
        return text.substring(from, text.indexOf(before, from));
    }

    /// A placement that a tape can spoil is never said to hold: the definition of tight.
    @Test
    void leewayUnderThePlacingError_isTight() {
        int tight = 0;
        for (double height : new double[] {11, 12, 20, 59, 105, 105.4, 105.6, 107}) {
            Answer answer = answer("reveal", EXAMPLE.replace("height: 59 mm}", "height: " + height + " mm}"));
            if (answer.verdict() == Verdict.FAILS) {
                continue;
            }
            double least = Double.POSITIVE_INFINITY;
            for (String name : List.of("first", "second", "third")) {
                least = Math.min(least, number(answer, name + "_leeway_x"));
                least = Math.min(least, number(answer, name + "_leeway_y"));
            }
            least = Math.min(least, number(answer, "camera_leeway_x"));
            least = Math.min(least, height - number(answer, "height_low"));
            least = Math.min(least, number(answer, "height_high") - height);
            assertThat(answer.verdict()).as("%s mm", height).isEqualTo(least < 2 ? Verdict.TIGHT : Verdict.HOLDS);
            if (least < 2) {
                tight++;
                assertThat(answer.notes().because().getFirst())
                        .startsWith("Tight: it fails with ")
                        .endsWith(" off, and a tape places it to 2 mm. Use a jig or a stop.");
            }
        }
        assertThat(tight).isPositive();
    }

    @Test
    void places_areInTheRoomThatIsAssumed_andInTheOrderWritten() {
        String wide = EXAMPLE.replace("distance: 600 mm, height: 59 mm", "distance: 3 m, height: 300 mm")
                .replace("diameter: 42 mm, height: 118 mm", "diameter: 0.3 m, height: 0.6 m")
                .replace("travel: 600 mm", "travel: 1.2 m");
        String more = """
                - {name: fourth, diameter: 20 mm, height: 70 mm}
                  - {name: fifth, diameter: 35 mm, height: 100 mm}
                slide""";
        String many = EXAMPLE.replace("slide: {", "  " + more + ": {");
        for (String text : List.of(EXAMPLE, wide, many, many.replace("camera left", "camera right"))) {
            Answer answer = answer("reveal", text);
            assertThat(answer.verdict()).isNotEqualTo(Verdict.FAILS);
            double room = answer.assumed().stream()
                    .filter(each -> each.name().equals("room"))
                    .mapToDouble(each -> ((Value.Number) each.value()).value())
                    .findFirst()
                    .orElseThrow();
            double before = -1;
            for (Item item : answer.answers()) {
                if (item.name().endsWith("_y") && !item.name().endsWith("leeway_y")) {
                    double y = ((Value.Number) item.value()).value();
                    assertThat(y).isGreaterThan(before).isLessThanOrEqualTo(room);
                    before = y;
                }
            }
            assertThat(room == 1500).isEqualTo(!text.equals(wide));
        }
    }

    @Test
    void placeFartherThanATable_isSaid_andNoFartherThanNeeded() {
        Answer answer = answer(
                "reveal",
                EXAMPLE.replace("distance: 600 mm", "distance: 2000 mm")
                        .replace("travel: 600 mm", "travel: 300 mm")
                        .replace("gap: 2 %", "gap: 3 %"));
        assertThat(answer.verdict()).isNotEqualTo(Verdict.FAILS);
        assertThat(number(answer, "third_y")).isBetween(1501.0, 5000.0);
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("farther than a usual table's 1500 mm"));
    }

    /// A leeway ends where two things pass each other in the picture, however narrow they are against the way.
    @Test
    void leeway_neverStepsOverAnotherThing() {
        List<Reveal.Thing> things = List.of(
                new Reveal.Thing("front", 0.06, 0.1),
                new Reveal.Thing("thin", 0.003, 0.05),
                new Reveal.Thing("thinner", 0.003, 0.05));
        Reveal.Inputs inputs = new Reveal.Inputs(
                UHD,
                0.05,
                new Reveal.Camera(0.6, 0.05),
                things,
                new Reveal.Slide(-0.6, Reveal.Keeps.ALL),
                new Reveal.Wanted(0, 0));
        for (int from = 300; from < 700; from += 7) {
            double[] places = {0, 200, 0, from};
            Reveal.Found found = Reveal.found(inputs, places);
            assertThat(found.holds()).isEqualTo(Reveal.Holds.ALL);
            assertThat(found.places().get(2).along().minus().distance()).isLessThan((from - 200) / 1e3);
        }
    }

    /// Text for people never promises more than there is: 19.8 mm of leeway aren't 20 mm.
    @Test
    void text_neverPromisesMoreThanThereIs() {
        Answer answer = answer("reveal", EXAMPLE);
        String text = answer.toText(PaperUnit.MILLIMETRES);
        assertThat(number(answer, "camera_leeway_x")).isBetween(19.5, 19.99);
        assertThat(text).containsPattern("camera_leeway_x +19 mm");
        assertThat(text)
                .containsPattern("height_low +" + (int) Math.ceil(number(answer, "height_low")) + " mm")
                .containsPattern("height_high +" + (int) Math.floor(number(answer, "height_high")) + " mm")
                .containsPattern("travel_needed +" + (int) Math.ceil(number(answer, "travel_needed")) + " mm");
        assertThat(text.lines().count()).isLessThanOrEqualTo(30);
    }

    private static String find(Answer answer, String part) {
        return answer.notes().attempts().stream()
                .filter(each -> each.contains(part))
                .findFirst()
                .orElseThrow(() -> new AssertionError(answer.notes()));
    }

    /// With all parts asked it is the same number; the quicker way only leaves out what is far from failing.
    @Test
    void together_isThatOfAllParts() {
        Random random = new Random(91_2026);
        int compared = 0;
        for (int i = 0; i < 8; i++) {
            Reveal.Inputs inputs = RevealOutsideTest.randomInputs(random);
            Reveal.Found found = Reveal.answer(inputs);
            if (found.holds() == Reveal.Holds.ALL) {
                double[] others = Arrays.stream(RevealOutsideTest.places(found))
                        .skip(2)
                        .map(metres -> metres * 1e3)
                        .toArray();
                double[] values = RevealSet.values(inputs, others);
                double all = Search.together(RevealSolver.axes(inputs, values), new RevealSet(inputs), values);
                assertThat(found.together()).isCloseTo(all, within(1e-6 + 0.001 * all));
                compared++;
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(4);
    }

    @Test
    void sameQuestion_sameAnswer() {
        assertThat(answer("reveal", EXAMPLE)).isEqualTo(answer("reveal", EXAMPLE));
    }

    @Test
    void spreadOfAnInput_givesIntervals_andNoNewPlaces() {
        Answer answer = answer("reveal", EXAMPLE.replace("distance: 600 mm", "distance: 600 mm ± 10 mm"));
        assertThat(answer.getValue("end_gap_1")).isInstanceOf(Value.Spread.class);
        assertThat(answer.getValue("second_x")).isInstanceOf(Value.Number.class);
    }

    @Test
    void problems_areNamed() {
        String text = EXAMPLE.replace("distance: 600 mm", "distance: 40 mm")
                .replace("name: third", "name: second")
                .replace("toward: camera left", "toward: camera left");
        List<String> problems = problems("reveal", text);
        assertThat(problems).hasSize(2);
        assertThat(problems.getFirst())
                .isEqualTo("ask.yaml:4:20 camera.distance is 40 mm; must be greater than 50 mm, the focal length\n"
                        + "  Measure from the lens to the first thing's axis, such as 600 mm.   (P-ASK-03,"
                        + " docs/problems.md)");
        assertThat(problems.getLast())
                .isEqualTo("ask.yaml:8:12 things[3].name is second again; must be a name of its own\n"
                        + "  Try second_2.   (P-ASK-05, docs/problems.md)");
        assertThat(problems(
                        "reveal",
                        EXAMPLE.replace("distance: 600 mm", "distance: 60 mm")
                                .replace("diameter: 42 mm", "diameter: 150 mm")))
                .anyMatch(each -> each.contains("must be greater than 75 mm, the first thing's radius"));
        assertThat(problems("reveal", EXAMPLE.replace("camera left", "left")))
                .anyMatch(each -> each.contains("slide.toward") && each.contains("Try camera left"));
    }

    private static Reveal.Inputs inputs(
            int count, double distance, double height, double travel, Reveal.Keeps keeps, double gap) {
        List<Reveal.Thing> things = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            things.add(new Reveal.Thing("t" + i, 0.042, 0.118));
        }
        return new Reveal.Inputs(
                UHD,
                0.05,
                new Reveal.Camera(distance, height),
                things,
                new Reveal.Slide(travel, keeps),
                new Reveal.Wanted(gap, 0));
    }
}
