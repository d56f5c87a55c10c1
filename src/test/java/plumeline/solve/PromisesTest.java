package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.search.Leeway;

/// What an answer promises, held to it on random sets: leeway, all off together, sameness under moves and spelling.
final class PromisesTest {
    private static final long SEED = 11_2026;

    /// The marks that a want may end, written off by their leeway into the plan, which is then solved again.
    @Test
    void leeway_isAPromise() {
        int ends = 0;
        for (int i = 0; i < 10; i++) {
            RandomSet set = RandomSet.of(SEED + i);
            ends += checkLeeway("seed " + (SEED + i), set.fixed());
        }
        assertThat(ends).isGreaterThan(100);
    }

    @Test
    void leeway_ofSolvedMarks_isAPromiseToo() {
        int ends = 0;
        for (int i = 0; i < 3; i++) {
            RandomSet set = RandomSet.of(SEED + 40 + i);
            Plan plan = Solved.plan(set.freed());
            ends += checkLeeway("seed " + (SEED + 40 + i), Solved.kept(plan, Solve.film(plan)));
        }
        assertThat(ends).isGreaterThan(30);
    }

    private static int checkLeeway(String which, String text) {
        ShotAnswer answer = Solved.shot(text);
        List<String> held = Solved.trueIds(answer);
        int ends = 0;
        for (MarkAnswer mark : answer.marks()) {
            ends += checkSide(
                    which,
                    text,
                    held,
                    mark,
                    mark.leeway().minus(),
                    -1,
                    mark.ends().minus());
            ends += checkSide(
                    which,
                    text,
                    held,
                    mark,
                    mark.leeway().plus(),
                    1,
                    mark.ends().plus());
        }
        return ends;
    }

    private static int checkSide(
            String which, String text, List<String> held, MarkAnswer mark, Leeway.Side side, int way, String ender) {
        if (!(side instanceof Leeway.Side.Ends(double distance))) {
            return 0;
        }
        String name = which + ", " + mark.mark().path() + (way < 0 ? " minus " : " plus ") + distance;
        double si = Solved.si(mark);
        double beyond = 1.02 * distance + 0.05 * mark.placingErrorSi();
        assertThat(lost(text, held, mark.mark(), si + way * 0.98 * distance))
                .as(name + " inside")
                .isEmpty();
        assertThat(lost(text, held, mark.mark(), si + way * beyond))
                .as(name + " beyond")
                .contains(ender);
        return 1;
    }

    /// The wants of those held that fail with one mark elsewhere, the plan read and judged anew.
    private static List<String> lost(String text, List<String> held, Mark mark, double si) {
        Plan moved = Solved.plan(Solved.with(text, Map.of(mark.path(), si)));
        Judged judged = Solved.judged(moved, startValues(moved));
        double[] parts = judged.parts(startValues(moved));
        return judged.lines().stream()
                .filter(line -> held.contains(line.id()) && line.parts().anyMatch(part -> parts[part] < 0))
                .map(Judged.Line::id)
                .toList();
    }

    private static double[] startValues(Plan plan) {
        return plumeline.stage.Stage.of(plan, plan.shots().getFirst()).startValues();
    }

    @Test
    void judgedAnew_isWhatSolvingSays() {
        // The shortcut of the tests above gives the verdicts of a whole solve.
        for (int i = 0; i < 4; i++) {
            String text = RandomSet.of(SEED + i).fixed();
            ShotAnswer answer = Solved.shot(text);
            Plan plan = Solved.plan(text);
            double[] parts = Solved.judged(plan, startValues(plan)).parts(startValues(plan));
            for (Judged.Line line : Solved.judged(plan, startValues(plan)).lines()) {
                double least =
                        line.parts().mapToDouble(part -> parts[part]).min().orElseThrow();
                WantAnswer want = answer.wants().stream()
                        .filter(one -> one.id().equals(line.id()))
                        .findFirst()
                        .orElseThrow();
                assertThat(Solved.margin(want)).isEqualTo(least, within(1e-12));
            }
        }
    }

    @Test
    void together_isAPromise() {
        int checked = 0;
        for (int i = 0; i < 12; i++) {
            String which = "seed " + (SEED + i);
            String text = RandomSet.of(SEED + i).fixed();
            ShotAnswer answer = Solved.shot(text);
            if (Solved.trueIds(answer).isEmpty() || answer.together() > 50) {
                continue;
            }
            Random random = new Random(SEED + i);
            assertThat(answer.together()).as(which).isPositive();
            for (int corner = 0; corner < 150; corner++) {
                assertThat(leastAtCorner(text, answer, 0.98, random.nextLong()))
                        .as(which + " inside")
                        .isNotNegative();
            }
            assertThat(worstCorner(text, answer, random)).as(which + " beyond").isNegative();
            checked++;
        }
        assertThat(checked).isGreaterThan(5);
    }

    /// The least margin just beyond: from many corners single marks are turned the other way as long as that is worse.
    private static double worstCorner(String text, ShotAnswer answer, Random random) {
        double worst = Double.POSITIVE_INFINITY;
        for (int start = 0; start < 60 && worst >= 0; start++) {
            long corner = random.nextLong();
            double here = leastAtCorner(text, answer, 1.03, corner);
            boolean turned = true;
            while (turned) {
                turned = false;
                for (int m = 0; m < answer.marks().size(); m++) {
                    double there = leastAtCorner(text, answer, 1.03, corner ^ (1L << m));
                    if (there < here) {
                        here = there;
                        corner ^= 1L << m;
                        turned = true;
                    }
                }
            }
            worst = Math.min(worst, here);
        }
        return worst;
    }

    /// The least margin of what held, with every mark off by some of k placing errors, each its own way by a bit.
    private static double leastAtCorner(String text, ShotAnswer answer, double share, long bits) {
        double[] si = answer.posed().values();
        Judged judged = JUDGED.computeIfAbsent(text, _ -> Solved.judged(Solved.plan(text), si));
        long left = bits;
        for (int m = 0; m < si.length; m++) {
            double error = answer.marks().get(m).placingErrorSi();
            si[m] += ((left & 1) == 0 ? -1 : 1) * share * answer.together() * error;
            left >>= 1;
        }
        double[] parts = judged.parts(si);
        List<String> held = Solved.trueIds(answer);
        return judged.lines().stream()
                .filter(line -> held.contains(line.id()))
                .flatMapToInt(Judged.Line::parts)
                .mapToDouble(part -> parts[part])
                .min()
                .orElseThrow();
    }

    private static final Map<String, Judged> JUDGED = new java.util.HashMap<>();

    @Test
    void turningAndShiftingTheWholeSet_changesNoMargin() {
        for (int i = 0; i < 8; i++) {
            RandomSet set = RandomSet.of(SEED + 60 + i);
            ShotAnswer here = Solved.shot(set.fixed());
            ShotAnswer there = Solved.shot(set.movedAs(new RandomSet.Moved(37 + 10 * i, 137.25, -88.5)));
            checkSameMargins("seed " + (SEED + 60 + i), here, there, 1e-6);
        }
    }

    @Test
    void shiftingASetWithFreeMarksByWholeMillimetres_shiftsWhatIsFound() {
        ShotAnswer here = Solved.shot(shifted(0, 0));
        ShotAnswer there = Solved.shot(shifted(140, -85));
        checkSameMargins("shifted", here, there, 1e-6);
        assertThat(there.together()).isCloseTo(here.together(), within(1e-6));
        int free = 0;
        for (int m = 0; m < here.marks().size(); m++) {
            String path = here.marks().get(m).mark().path();
            double by = path.endsWith(".x") ? 0.140 : path.endsWith(".y") ? -0.085 : 0;
            assertThat(there.posed().values()[m])
                    .as(path)
                    .isEqualTo(here.posed().values()[m] + by, within(1e-9));
            free += here.marks().get(m).mark().isFree() ? 1 : 0;
        }
        assertThat(free).isEqualTo(5);
    }

    private static String shifted(int x, int y) {
        return Solved.text(
                "camera: {body: main, lens: fifty, at: [%d mm, free, 59 mm], aim: hero, f_number: 11}".formatted(x),
                "place:",
                "  hero: {thing: tall, at: [%d mm, %d mm]}".formatted(x, y),
                "  back: {thing: tall, at: [free, free]}",
                "  side: {thing: can, at: [free, %d mm]}".formatted(y),
                "  other: {thing: can, at: [free between %d mm and %d mm, %d mm]}".formatted(x, x + 300, y),
                "wants:",
                "  - {fills: hero, height: 30 %}",
                "  - {hidden: back, behind: hero}",
                "  - {shown: [side, hero, other], gap: 3 %}",
                "  - {inside: wide}");
    }

    private static final Pattern LENGTH = Pattern.compile("(-?[0-9.]+) mm");
    private static final Pattern ANGLE = Pattern.compile("(-?[0-9.]+) deg(?!/)");

    @Test
    void spellingUnitsAnotherWay_changesNothing() {
        for (int i = 0; i < 3; i++) {
            RandomSet set = RandomSet.of(SEED + 80 + i);
            String text = i == 0 ? set.freed() : set.fixed();
            String spelt =
                    LENGTH.matcher(text).replaceAll(match -> spelt(Double.parseDouble(match.group(1)), match.start()));
            spelt = ANGLE.matcher(spelt)
                    .replaceAll(match -> String.format(
                            Locale.ROOT, "%.15f rad", Math.toRadians(Double.parseDouble(match.group(1)))));
            assertThat(spelt).isNotEqualTo(text);
            ShotAnswer here = Solved.shot(text);
            ShotAnswer there = Solved.shot(spelt);
            checkSameMargins("seed " + (SEED + 80 + i), here, there, 1e-6);
            for (int m = 0; m < here.marks().size(); m++) {
                assertThat(there.posed().values()[m]).isEqualTo(here.posed().values()[m], within(1e-9));
            }
        }
    }

    private static String spelt(double millimetres, int turn) {
        return switch (turn % 4) {
            case 0 -> String.format(Locale.ROOT, "%.14f in", millimetres / 25.4);
            case 1 -> String.format(Locale.ROOT, "%.14f ft", millimetres / 304.8);
            case 2 -> String.format(Locale.ROOT, "%.14f cm", millimetres / 10);
            default -> String.format(Locale.ROOT, "%.14f m", millimetres / 1000);
        };
    }

    /// Whether a want is tight may change with the set's turn: a hand is off along the table's own axes.
    private static void checkSameMargins(String which, ShotAnswer here, ShotAnswer there, double relative) {
        assertThat(there.leewayWithout()).as(which).isEqualTo(here.leewayWithout());
        for (int w = 0; w < here.wants().size(); w++) {
            double margin = Solved.margin(here.wants().get(w));
            assertThat(Solved.margin(there.wants().get(w)))
                    .as(which + " " + here.wants().get(w).id())
                    .isEqualTo(margin, within(Math.max(relative * Math.abs(margin), 1e-7)));
        }
    }

    @Test
    void equalCylindersInFile_peekAtOnce_whateverTheirSpacing() {
        Random random = new Random(SEED);
        for (int i = 0; i < 5; i++) {
            double[] spacing = {60 + random.nextInt(200), 300 + random.nextInt(200), 600 + random.nextInt(300)};
            for (double[] side : new double[][] {{20.99, 1}, {21.01, -1}}) {
                ShotAnswer answer = Solved.shot(file(side[0], spacing));
                assertThat(answer.wants())
                        .allSatisfy(want -> assertThat(Solved.margin(want) * side[1])
                                .as("seed " + SEED + " " + Arrays.toString(spacing))
                                .isPositive());
            }
        }
    }

    private static String file(double aside, double[] spacing) {
        List<String> lines = new ArrayList<>();
        lines.add("camera: {body: main, lens: fifty, at: [" + aside + " mm, -600 mm, 59 mm], aim: ahead}");
        lines.add("place:");
        lines.add("  t0: {thing: tall, at: [0 mm, 0 mm]}");
        for (int i = 0; i < 3; i++) {
            lines.add("  t" + (i + 1) + ": {thing: tall, at: [0 mm, " + spacing[i] + " mm]}");
        }
        lines.add("wants: [{hidden: t1, behind: t0}, {hidden: t2, behind: t0}, {hidden: t3, behind: t0}]");
        return Solved.text(lines.toArray(String[]::new));
    }
}
