package plumeline.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.card.CardsTest.card;
import static plumeline.card.CardsTest.cards;
import static plumeline.card.CardsTest.fact;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.quantity.PaperUnit;

/// What stands on the cards of moves and time, against sums by hand.
final class MovePagesTest {
    private static final String HEAD = """
        plumeline: 1
        film: {rate: 24 fps, papers: mm}
        things: {can: {diameter: 60 mm, height: 100 mm, label: {width: 40 mm, height: 60 mm, bottom: 20 mm}}}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes:
                [{rate: 24 fps}, {rate: 60 fps}, {rate: 120 fps, bit_rate: 400 Mb/s}, {rate: 240 fps, across: 1920 px}]
          lenses: {macro: {focal_length: 100 mm}}
          machines:
            rail: {travel: 600 mm, speed: 80 mm/s, acceleration: 200 mm/s2 typical, repeats: 0.1 mm}
            plate: {speed: 12 rpm, acceleration: 90 deg/s2}
            head: {speed: 20 deg/s, acceleration: 40 deg/s2}
        shots:
          one:
            camera: {body: main, lens: macro, at: [0 mm, -1000 mm, 50 mm], aim: ahead, rate: RATE}
            place: {hero: {thing: can, at: [0 mm, 0 mm], turn: -30 deg}}
        """;

    private static String plan(String rate, String rest) {
        return HEAD.replace("RATE", rate) + rest.indent(4);
    }

    private static List<List<String>> rows(Card card, int grid) {
        return card.parts().stream()
                .filter(Card.Part.Grid.class::isInstance)
                .map(part -> ((Card.Part.Grid) part).rows())
                .toList()
                .get(grid);
    }

    /// 600 mm in 8 s with 200 mm/s²: v² − 1600v + 120000 = 0 (v = 78.88 mm/s), ramps of v/200 = 0.394 s. A quarter of
    /// the time is 78.88·(2 − 0.197) = 142.2 mm on. Half a frame at 24 fps: 78.88/48 = 1.64 mm.
    @Test
    void trapezoid_hasItsEndsItsProfileAndItsKeys() {
        Card card = card(
                cards(plan(
                        "24 fps",
                        "moves: {slide: {machine: rail, by: [-600 mm, 0 mm], in: 8 s, profile: trapezoid}}\n"
                                + "speed: 200 %\n")),
                "Move card: slide");
        assertThat(fact(card, "What moves")).isEqualTo("The camera slides, by rail.");
        assertThat(fact(card, "At GO"))
                .isEqualTo("The lens point is on the centreline, 1000 mm toward the camera, 50 mm up. GO is the"
                        + " camera-right end of its way.");
        assertThat(fact(card, "At its end"))
                .isEqualTo("600.0 mm on: the lens point is 600 mm to camera left, 1000 mm toward the camera, 50 mm up,"
                        + " at the camera-left end.");
        assertThat(fact(card, "Time")).isEqualTo("8 s on the table, from GO until 8 s after GO.");
        assertThat(fact(card, "Profile"))
                .isEqualTo("Trapezoid: speeds up for 0.39 s, runs even for 7.21 s, slows down for 0.39 s; highest speed"
                        + " 78.9 mm/s, highest acceleration 200 mm/s2.");
        assertThat(fact(card, "Asked of it"))
                .isEqualTo("Speed 78.9 mm/s of 80 mm/s; acceleration 200 mm/s2 of 200 mm/s2 (typical: measure yours);"
                        + " way 600.0 mm of 600.0 mm.");
        assertThat(fact(card, "Start")).startsWith("Free-running: ").endsWith(" up to 1.64 mm of its way.");
        assertThat(fact(card, "Settling")).contains("isn't known", "write rail's sways");
        assertThat(rows(card, 0))
                .containsExactly(
                        List.of("0 s", "0.0 mm", "1"),
                        List.of("2 s", "142.2 mm", "25"),
                        List.of("4 s", "300.0 mm", "49"),
                        List.of("6 s", "457.8 mm", "73"),
                        List.of("8 s", "600.0 mm", "the shot's end"));
    }

    /// At 50 mm/s and 200 mm/s²: v/a = 0.25 s and v²/2a = 6.25 mm, on either side of 600 mm.
    @Test
    void evenMove_hasARunUp_andSaysWhatIsTooMuch() {
        String moves = "moves: {slide: {machine: rail, by: [600 mm, 0 mm], in: 12 s, start: 1 s, triggered: yes}}\n";
        Card card = card(cards(plan("24 fps", moves + "frames: 240\n")), "Move card: slide");
        assertThat(fact(card, "Run-up"))
                .isEqualTo("Start it 0.75 s after GO, 6.3 mm before where it stands at GO: it then comes there at its"
                        + " speed. Leave it 6.3 mm and 0.25 s to stop in at its end.");
        assertThat(fact(card, "Asked of it"))
                .isEqualTo("Speed 50 mm/s of 80 mm/s; way 612.5 mm of 600.0 mm, more than rail does.");
        assertThat(fact(card, "Start")).startsWith("Triggered: ");
        assertThat(fact(card, "Time"))
                .isEqualTo(
                        "12 s on the table, from 1 s after GO until 13 s after GO. The shot is over 10 s after GO: let"
                                + " it run on.");
        assertThat(rows(card, 0).getLast()).containsExactly("13 s", "600.0 mm", "after the shot");
        Card open =
                card(cards(plan("24 fps", moves).replace(", acceleration: 200 mm/s2 typical", "")), "Move card: slide");
        assertThat(fact(open, "Run-up")).startsWith("Not known: write rail's acceleration.");
    }

    /// A metre before the lens a picture 36 mm wide by 100 mm is 324 mm wide, f(1 + m) = 1/9 m: 3840/324 = 11.85 px a
    /// mm. 1 mm of swing is 11.85 px; to a quarter it takes ln(47.4)/(0.05·2π·4) = 3.07 s.
    @Test
    void settling_isToldInPixels() {
        String moves = "moves: {slide: {machine: rail, by: [60 mm, 0 mm], in: 2 s, profile: smooth}}\n";
        String plan = plan("24 fps", moves)
                .replace("repeats: 0.1 mm", "sways: {by: 1 mm, rate: 4 Hz, damping: 5 %}")
                .replace("aim: ahead", "aim: ahead, focus: 1000 mm");
        Card card = card(cards(plan), "Move card: slide");
        assertThat(fact(card, "Settling"))
                .isEqualTo(
                        "4 swings a second, 5 % of critical damping; when it stops the picture swings 11.9 px to each"
                                + " side. Wait 3.1 s until that is under a quarter of a pixel, then go again.");
        String dead = plan.replace("by: 1 mm,", "by: 0.01 mm,");
        assertThat(fact(card(cards(dead), "Move card: slide"), "Settling")).endsWith("nothing of it is seen.");
    }

    /// atan(0.6) is 31.0 deg; to the left the lens has to turn right.
    @Test
    void panThatKeeps_isToldByItsAim() {
        Card card = card(
                cards(plan(
                        "24 fps",
                        "moves: {slide: {machine: rail, by: [-600 mm, 0 mm], in: 12 s},"
                                + " pan: {machine: head, keeps: [hero]}}\n")),
                "Move card: pan");
        assertThat(fact(card, "What moves"))
                .isEqualTo("The camera pans, by head, to keep hero in the picture's middle.");
        assertThat(fact(card, "At its end")).isEqualTo("31.0 deg clockwise seen from above.");
        // 50 mm/s at 1000 mm: 2.86 deg/s at first, where it is fastest.
        assertThat(fact(card, "Profile")).startsWith("As what it keeps asks: highest speed 2.86 deg/s, ");
        assertThat(fact(card, "Asked of it")).contains("Speed 2.86 deg/s of 20 deg/s; acceleration ");
        assertThat(rows(card, 0).get(2)).containsExactly("6 s", "16.7 deg clockwise", "145");
    }

    @Test
    void cautions_standInFullOnTheFirstCard() {
        List<Card> all = cards(plan(
                "24 fps",
                "moves: {slide: {machine: rail, by: [-600 mm, 0 mm], in: 12 s},"
                        + " turn: {machine: plate, carries: hero, by: 60 deg, in: 1 s}}\n"));
        assertThat(all)
                .extracting(Card::title)
                .containsExactly("Move card: slide", "Move card: turn", "Turntable card: hero");
        assertThat(all.getFirst().cautions())
                .hasSize(3)
                .anyMatch(caution -> caution.contains("fingers, hair, sleeves, cables and hung lines"))
                .anyMatch(caution -> caution.contains("one person at the stop"))
                .contains(Cautions.DEFERENCE);
        assertThat(all.get(1).cautions()).hasSize(1).allMatch(caution -> caution.contains("first such card"));
    }

    /// 12 frames at 100 % (0.5 s), 12 down to 20 % at 60 % on average (0.3 s), 96 at 20 % (0.8 s). At 24 fps a captured
    /// frame is shown five times there.
    @Test
    void rampPage_saysWhenTheActionMustHappen_andWhatItTakes() {
        String speed =
                "frames: 120\nspeed: [[0 frames, 100 %], [12 frames, 100 %], [24 frames, 20 %], [120 frames, 20 %]]\n";
        Card card = card(cards(plan("24 fps", speed)), "Ramp page");
        assertThat(fact(card, "Action"))
                .isEqualTo("The action must happen between 0.8 s and 1.6 s after GO. It is then played at 20 %.");
        assertThat(fact(card, "It takes"))
                .startsWith("20 % needs 120 fps: 2.3 stops more light.")
                .contains("120 frames of the film are 1.6 s on the table, 39 captured frames.");
        assertThat(fact(card, "Frames"))
                .isEqualTo("From captured frame 1 to 39 at 24 fps; 81 of 120 screen frames show the same captured frame"
                        + " as the one before; none is left out.");
        assertThat(rows(card, 0))
                .containsExactly(
                        List.of("1", "100 %", "0 s"),
                        List.of("13", "100 %", "0.5 s"),
                        List.of("25", "20 %", "0.8 s"),
                        List.of("the end", "20 %", "1.6 s"));
        // log2(60/24) = 1.32, log2(120/24) = 2.32, log2(240/24) = 3.32; 400 Mb/s for 1.6 s are 0.08 GB.
        assertThat(fact(card, "At 24 fps"))
                .isEqualTo("As set: light as at 24 fps, 3840 px across, shows frames twice at 20 %.");
        assertThat(fact(card, "At 60 fps"))
                .isEqualTo("1.3 stops more light, 3840 px across, shows frames twice at 20 %.");
        assertThat(fact(card, "At 120 fps"))
                .isEqualTo("2.3 stops more light, 3840 px across, enough for 20 %, 0.08 GB a take.");
        assertThat(fact(card, "At 240 fps")).isEqualTo("3.3 stops more light, 1920 px across, enough for 20 %.");
    }

    @Test
    void chart_isRealTimeOverScreenTime_withItsSpeeds() {
        String speed =
                "frames: 120\nspeed: [[0 frames, 100 %], [12 frames, 100 %], [24 frames, 20 %], [120 frames, 20 %]]\n";
        Card.Part.Chart chart = card(cards(plan("24 fps", speed)), "Ramp page").parts().stream()
                .filter(Card.Part.Chart.class::isInstance)
                .map(Card.Part.Chart.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(chart.line().getFirst()).isEqualTo(new Card.Corner(0, 0));
        assertThat(chart.line().getLast().across()).isEqualTo(120);
        assertThat(chart.line().getLast().up()).isCloseTo(1.6, within(1e-9));
        assertThat(chart.notes()).extracting(Card.Note::words).containsExactly("100 %", "20 %");
        assertThat(chart.notes().getFirst().at().up()).isCloseTo(0.25, within(1e-9));
        assertThat(chart.notes().getLast().at().up()).isCloseTo(1.2, within(1e-9));
    }

    /// Backward 12 frames and a third of one until the speed is 0: that is GO, 12.33/24 = 0.514 s before the first
    /// frame's instant; frame 13 is a twelfth of a frame past it (0.003 s), the end 5.5 frames more (0.233 s).
    @Test
    void playedBackward_countsFromTheEarliestInstant_andAHoldIsOneInstant() {
        String back = "frames: 24\nspeed: [[0 frames, -100 %], [12 frames, -100 %], [13 frames, 50 %],"
                + " [24 frames, 50 %]]\n";
        Card card = card(cards(plan("24 fps", back)), "Ramp page");
        assertThat(rows(card, 0))
                .containsExactly(
                        List.of("1", "-100 %", "0.514 s"),
                        List.of("13", "-100 %", "0.014 s"),
                        List.of("14", "50 %", "0.003 s"),
                        List.of("the end", "50 %", "0.233 s"));
        assertThat(fact(card, "Action")).startsWith("The action must happen between 0 and 0.23 s after GO.");
        String held = "frames: 24\nmoves: {pan: {machine: head, keeps: [hero]}}\n"
                + "speed: [[0 frames, 0 %], [9 frames, 0 %]]\n";
        assertThat(cards(plan("24 fps", held))).hasSize(1);
        assertThat(fact(card(cards(plan("24 fps", held)), "Ramp page"), "Action"))
                .isEqualTo("One instant is held all the time: the one at GO.");
    }

    @Test
    void oneSpeedThroughout_hasTheWholeShot_andRealTimeHasNoRampPage() {
        Card card = card(cards(plan("24 fps", "frames: 48\nspeed: 50 %\n")), "Ramp page");
        assertThat(fact(card, "Action")).isEqualTo("The action must happen between 0 and 1 s after GO.");
        assertThat(cards(plan("24 fps", "frames: 48\n"))).isEmpty();
    }

    /// The label's middle is 30 deg anticlockwise at GO and turns 60 deg/s: it faces the lens after 0.5 s; within 30
    /// deg it is all the time, within 20 deg for 2/3 s, which are 16 frames from the fifth on. 60 deg/s at 90
    /// deg/s²: 2/3 s and 20 deg.
    @Test
    void turntable_tellsItsStartAngle_andWhenItReads() {
        String moves = "moves: {turn: {machine: plate, carries: hero, by: 60 deg, in: 1 s}}\n";
        Card card = card(cards(plan("24 fps", moves)), "Turntable card: hero");
        assertThat(fact(card, "Set it"))
                .startsWith(
                        "At GO the middle of hero's label looks 30.0 deg anticlockwise of the lens, seen from above.")
                .endsWith("The protractor reads 30.0 deg anticlockwise from straight to the crew.");
        assertThat(fact(card, "It turns"))
                .isEqualTo("60.0 deg clockwise seen from above, 60 deg/s (10 rpm), 2.5 deg a screen frame.");
        assertThat(fact(card, "At the end")).isEqualTo("The middle of its label looks 30.0 deg clockwise of the lens.");
        assertThat(fact(card, "It reads"))
                .isEqualTo("Within 30.0 deg of the lens in screen frames 1 to 24 (0 s to 1 s after GO).");
        assertThat(fact(card, "In the middle")).isEqualTo("It looks at the lens in the shot's middle, 0.5 s after GO.");
        assertThat(fact(card, "Run-up")).contains("20.0 deg and 0.67 s");
        Card near = card(
                cards(plan("24 fps", moves + "wants: [{readable: hero, within: 20 deg, for: 12 frames}]\n")),
                "Turntable card: hero");
        assertThat(fact(near, "It reads"))
                .isEqualTo("Within 20.0 deg of the lens in screen frames 5 to 20 (0.17 s to 0.83 s after GO).");
    }

    /// From 10 deg clockwise on, anticlockwise by 80 deg in 2 s: in the middle it has gone 40 and looks 30 aside; it
    /// reads while it looks from +10 to −30, which is until there.
    @Test
    void turntable_tellsWhichStartPutsTheLabelInTheMiddle() {
        String plan = plan("24 fps", "moves: {turn: {machine: plate, carries: hero, by: -80 deg, in: 2 s}}\n")
                .replace("turn: -30 deg", "turn: 10 deg");
        Card card = card(cards(plan), "Turntable card: hero");
        assertThat(fact(card, "It reads"))
                .isEqualTo("Within 30.0 deg of the lens in screen frames 1 to 24 (0 s to 1 s after GO).");
        assertThat(fact(card, "In the middle"))
                .isEqualTo(
                        "In the shot's middle, 1 s after GO, it looks 30.0 deg anticlockwise of the lens. To have it at"
                                + " the lens there, set it at GO 40.0 deg clockwise of the lens: hero's turn 40 deg in"
                                + " the plan.");
    }

    /// As the brief of the job has it: a metre's picture of 3840 px over 324 mm; 10 mm/s at 120 fps are 10/240 mm =
    /// 0.49 px, 0.1 mm of repeats 1.2 px.
    @Test
    void registration_tellsItsBudget_andWhatHelps() {
        String rest = """
            moves: {slide: {machine: rail, by: [120 mm, 0 mm], in: 12 s}}
            speed: 400 %
            passes: {green: {}, white: {}}
            wants: [{registers: [green, white], within: 1.5 px}]
            """;
        String cut = "cut: [{shot: one, frames: 72, alternate: [green, white], each: 6 frames}]\n";
        String plan = plan("120 fps", rest).replace("aim: ahead", "aim: ahead, focus: 1000 mm") + cut;
        Card card = card(cards(plan), "Registration card");
        assertThat(fact(card, "Passes")).isEqualTo("green, white. Cut in turn, 6 frames each.");
        assertThat(fact(card, "At worst"))
                .startsWith("hero may lie 1.7 px apart at screen frame ")
                .endsWith("more than 1.5 px, the limit.");
        assertThat(rows(card, 0))
                .extracting(List::getFirst)
                .containsExactly("0 px", "0.5 px", "1.2 px", "0 px", "0 px", "1.7 px", "1.5 px");
        // 1.5 − 1.185 leaves 0.315 of 0.494 px: 1.57 times slower, rounded up; 188.3 fps.
        assertThat(fact(card, "What helps"))
                .isEqualTo("The move 1.6 times slower (slide in 19.2 s), played at 640 %; or 189 fps and more "
                        + "with the move as it is"
                        + " (the body's 240 fps); or camera and machine started together: 1.2 px.");
        assertThat(fact(card, "Longer looks"))
                .isEqualTo(
                        "At 6 frames a look the film cuts 4 times a second, and each cut shows the miss; at 12 frames"
                                + " 2 times.");
        Card near = card(cards(plan.replace("within: 1.5 px", "within: 1 px")), "Registration card");
        assertThat(fact(near, "What helps")).startsWith("No slower move").contains("still 1.2 px");
        Card untold = card(cards(plan.replaceAll("\n +wants: .*", "")), "Registration card");
        assertThat(fact(untold, "At worst")).endsWith("more than 1 px, which is taken as no want says how near.");
    }

    @Test
    void passesThatMoveOtherwise_haveCardsOfTheirOwn() {
        String rest = "moves: {turn: {machine: plate, carries: hero, by: 60 deg, in: 1 s}}\n";
        assertThat(cards(plan("24 fps", rest + "passes: {low: {}, high: {}}\n")))
                .extracting(Card::title)
                .containsExactly("Move card: turn", "Turntable card: hero");
        assertThat(cards(plan("24 fps", rest + "passes: {low: {moves.turn.by: 30 deg}, high: {}}\n")))
                .extracting(Card::title)
                .containsExactly(
                        "Move card: turn, in low",
                        "Move card: turn, in high",
                        "Turntable card: hero, in low",
                        "Turntable card: hero, in high");
    }

    @Test
    void inches_areThePapersUnit() {
        String plan = plan(
                        "24 fps",
                        "moves: {push: {machine: rail, by: [0 mm, 254 mm], in: 5 s},"
                                + " rack: {axis: focus, by: -50.8 mm, in: 2 s, profile: smooth}}\n")
                .replace("papers: mm", "papers: in");
        List<Card> all = cards(CardsTest.solve(plan), PaperUnit.INCHES);
        Card card = card(all, "Move card: push");
        assertThat(fact(card, "At GO")).endsWith("GO is the crew's end of its way.");
        assertThat(fact(card, "At its end")).startsWith("10.00 in on: ");
        assertThat(fact(card, "Profile")).isEqualTo("Even: 2 in/s throughout.");
        Card focus = card(all, "Move card: rack");
        assertThat(fact(focus, "What moves")).isEqualTo("The focus is pulled; what makes it isn't written.");
        assertThat(rows(focus, 0).getLast()).containsExactly("2 s", "2.00 in nearer", "49");
    }
}
