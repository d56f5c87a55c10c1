package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Quantity;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.text.Problem;

final class PlansTest {
    @Test
    void example_isThatOfTheContractAndReads() {
        var plan = Texts.example();
        assertThat(plan.shots()).extracting(Shot::name).containsExactly("reveal", "plume", "spin", "looks");
        assertThat(plan.cuts()).extracting(Cut::frames).containsExactly(96L, 120L, 24L, 24L, 72L);
        assertThat(plan.film().frames()).hasValue(336);
        assertThat(plan.film().papersOrDefault()).isEqualTo(PaperUnit.MILLIMETRES);
        assertThat(plan.findDelivery("phone").orElseThrow().aspect()).isEqualTo(1080.0 / 1920);
        assertThat(plan.findDelivery("phone").orElseThrow().keepOut())
                .isEqualTo(new Delivery.KeepOut(0.14, 0.20, 0, 0.12));
        assertThat(plan.wants()).extracting(WantLine::id).containsExactly("film.1", "film.2");
    }

    @Test
    void example_itsThingsAreResolvedWithTheirVariants() {
        var reveal = Texts.example().findShot("reveal").orElseThrow();
        var second = reveal.findPlaced("second").orElseThrow().thing();
        assertThat(second.reference()).isEqualTo("flacon.rose");
        assertThat(second.written().findQuantity("hue").orElseThrow().value()).isEqualTo(345);
        assertThat(second.variants()).containsExactly("bergamot", "rose", "cedar", "lavender");
        assertThat(second.body()).contains(Thing.Body.OPAQUE);
        var profile = (Thing.Form.Profile) second.form();
        assertThat(profile.stations().get(2).height().si()).isEqualTo(0.090);
        assertThat(profile.stations().get(2).radius().si()).isEqualTo(0.010);
        assertThat(second.written().findQuantity("mass").orElseThrow().origin()).isEqualTo(Origin.MEASURED);
        assertThat(second.written().findQuantity("displaces").orElseThrow().halfWidthSi())
                .isCloseTo(0.5e-6, org.assertj.core.data.Offset.offset(1e-15));
        assertThat(reveal.camera().lens().focalLength().si()).isEqualTo(0.050);
        assertThat(reveal.camera().findIso()).hasValue(800);
        assertThat(reveal.camera().written().has("iso")).isFalse();
    }

    @Test
    void example_itsPassesAreShotsOfTheirOwn() {
        var spin = Texts.example().findShot("spin").orElseThrow();
        var rose = spin.findPass("rose").orElseThrow();
        assertThat(rose.overrides()).containsOnlyKeys("place.hero.thing", "lights.wash.hue");
        var hero = rose.effective().findPlaced("hero").orElseThrow();
        assertThat(hero.thing().reference()).isEqualTo("flacon.rose");
        assertThat(hero.turn().orElseThrow())
                .isEqualTo(spin.findPlaced("hero").orElseThrow().turn().orElseThrow());
        var hue = rose.effective().findLight("wash").orElseThrow().written();
        assertThat(hue.findQuantity("hue").orElseThrow().value()).isEqualTo(165);
        assertThat(hue.findNode("hue").orElseThrow().place().line())
                .isEqualTo(rose.place().line());
        assertThat(spin.findPass("bergamot").orElseThrow().effective().marks()).isEqualTo(spin.marks());
    }

    @Test
    void example_itsReleaseTankAndSpeedAreRead() {
        var plume = Texts.example().findShot("plume").orElseThrow();
        var release = (Release.OfInk) plume.findRelease().orElseThrow();
        assertThat(release.ink().name()).isEqualTo("rose_ink");
        assertThat(release.findStart().map(Quantity::si)).contains(0.2);
        assertThat(plume.findTank().orElseThrow().tank().inside().height().si()).isEqualTo(0.300);
        var curve = (Playback.Curve) plume.playback();
        assertThat(curve.keys()).extracting(Playback.Key::frame).containsExactly(0.0, 12.0, 24.0, 120.0);
        assertThat(curve.keys()).extracting(Playback.Key::speed).containsExactly(1.0, 1.0, 0.2, 0.2);
        assertThat(curve.ease()).isEqualTo(Playback.Ease.STRAIGHT);
        assertThat(plume.findPlaced("bottle").orElseThrow().isHung()).isTrue();
    }

    @Test
    void wants_areSaidInTheWordsOfThePlan() {
        var reveal = Texts.example().findShot("reveal").orElseThrow();
        assertThat(reveal.wants().getFirst().toText(PaperUnit.MILLIMETRES))
                .isEqualTo("hidden second, third, fourth behind first at start");
        assertThat(reveal.wants().getFirst().when()).isEqualTo(new When.Start());
        var plume = Texts.example().findShot("plume").orElseThrow();
        assertThat(plume.wants().get(2).toText(PaperUnit.MILLIMETRES))
                .isEqualTo("ink_reaches bottle part top after 0.4 s within 0.15 s");
        assertThat(plume.wants().get(2).when()).isEqualTo(new When.Whole());
    }

    @Test
    void goodPlans_readWithoutProblems() {
        var paths = Texts.list("good");
        assertThat(paths).hasSizeGreaterThanOrEqualTo(12);
        for (var path : paths) {
            assertThat(Texts.read(Texts.text(path)).problems())
                    .as(path.toString())
                    .isEmpty();
        }
    }

    @Test
    void badPlans_haveJustTheProblemsNamedInThem() {
        var paths = Texts.list("bad");
        assertThat(paths).hasSizeGreaterThanOrEqualTo(25);
        for (var path : paths) {
            var text = Texts.text(path);
            var expected = text.lines()
                    .filter(l -> l.startsWith("#! "))
                    .map(l -> l.substring(3))
                    .toList();
            assertThat(expected).as(path.toString()).isNotEmpty();
            var found =
                    Texts.read(text).problems().stream().map(PlansTest::line).toList();
            assertThat(found).as(path.toString()).containsExactlyInAnyOrderElementsOf(expected);
        }
    }

    /// The contract: "A problem's column is its value's, or the key's where there is no value."
    @Test
    void everyProblem_standsAtItsValue() {
        int examined = 0;
        for (var path : Texts.list("bad")) {
            var text = Texts.text(path);
            var root = Document.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                    .findRoot()
                    .orElseThrow();
            for (var problem : Texts.read(text).problems()) {
                var value = root.at(problem.field());
                boolean twice = problem.code().equals("P-TEXT-10");
                if (value.isEmpty() || problem.field().isEmpty() || twice) continue;
                assertThat(problem.place())
                        .as(path + " " + problem.toText())
                        .isEqualTo(value.get().place());
                examined++;
            }
        }
        assertThat(examined).isGreaterThan(70);
    }

    private static String line(Problem problem) {
        return problem.code() + " " + problem.place().line() + ":"
                + problem.place().column() + " " + problem.field();
    }

    private static void checkText(String file, String expected) {
        var problems = Texts.read(Texts.text(Texts.PLANS.resolve(Path.of("bad", file))))
                .problems();
        var all = problems.stream().map(Problem::toText).toList();
        assertThat(String.join("\n", all) + "\n").isEqualTo(expected);
    }

    @Test
    void message_ofAZeroFocalLength() {
        checkText("zero.yaml", """
            p.yaml:7:34 kit.lenses.fifty.focal_length is 0 mm; must be greater than 0 mm
              Try the value engraved on the lens, such as 50 mm.   (P-LENS-01, docs/problems.md)
            """);
    }

    @Test
    void message_ofAVariantThatIsNotThere() {
        checkText("unknown-variant.yaml", """
            p.yaml:11:27 shots.one.place.hero.thing is tin.smok; must be a variant of tin: smoke or berry
              Try tin.smoke.   (P-REF-02, docs/problems.md)
            """);
    }

    @Test
    void message_ofANewerForm() {
        checkText("newer.yaml", """
            p.yaml:1:12 plumeline is 2, a form newer than this program; must be 1 for this program
              Read this plan with a newer Plumeline; this one reads plans of form 1.   (P-PLAN-01, docs/problems.md)
            """);
    }

    @Test
    void message_ofOverridesThatReachNothing() {
        checkText("pass-lost.yaml", """
            p.yaml:12:36 shots.one.passes.a.place.heroo.turn is a path that reaches nothing in the shot; \
            must be a path to something written in the shot
              Try place.hero.turn.   (P-PASS-01, docs/problems.md)
            p.yaml:12:55 shots.one.passes.a.tank.water is a path that reaches nothing in the shot; \
            must be a path to something written in the shot
              Write it in the shot first, or override what is there.   (P-PASS-01, docs/problems.md)
            p.yaml:12:82 shots.one.passes.b.place.second is a path that reaches nothing in the shot; \
            must be a path to something written in the shot
              Write it in the shot first, or override what is there.   (P-PASS-01, docs/problems.md)
            """);
    }

    @Test
    void message_ofSlipsInMachines() {
        checkText("machine-mixed.yaml", """
            p.yaml:6:44 kit.machines.both.speed is 12 rpm, on a machine that goes along a line; \
            must be in units of length
              Make two machines where one goes along and another round.   (P-MACHINE-01, docs/problems.md)
            p.yaml:13:40 shots.one.moves.slide.by is an angle; must be x and y: both goes along a line
              Try [600 mm, 0 mm].   (P-MOVE-01, docs/problems.md)
            p.yaml:13:76 shots.one.moves.spin.by is a way along a line; must be an angle: plate turns
              Try 60 deg.   (P-MOVE-01, docs/problems.md)
            p.yaml:13:99 shots.one.moves.still is given neither by nor keeps; must be given how far it goes
              Add `by: [600 mm, 0 mm]`, or `by: 60 deg` on a turntable.   (P-MOVE-02, docs/problems.md)
            """);
    }

    @Test
    void message_ofSlipsInWants() {
        checkText("want-keys.yaml", """
            p.yaml:12:13 shots.one.wants[1] is given neither height nor width; must be given one of them
              Try `height: 60 %`.   (P-WANT-03, docs/problems.md)
            p.yaml:12:37 shots.one.wants[2].hidden is hero, which is also behind; \
            must be another thing than what hides it
              Leave it out on one side.   (P-WANT-04, docs/problems.md)
            p.yaml:12:73 shots.one.wants[3].shown[2] is naming hero twice; must be naming each once
              Leave one of them out.   (P-WANT-02, docs/problems.md)
            p.yaml:12:114 shots.one.wants[4].when is 1.5 frames; must be whole frames
              Try 2 frames.   (P-FRAMES-01, docs/problems.md)
            """);
    }

    @Test
    void unit_spelledAnotherWay_isTheSameLength() {
        checkLength("66 mm", 0.066);
        checkLength("6.6 cm", 0.066);
        checkLength("0.066 m", 0.066);
        checkLength("66mm", 0.066);
        checkLength("2 5/8 in", 0.066675);
        checkLength("2.625 in", 0.066675);
        checkLength("66.675 mm", 0.066675);
    }

    private static void checkLength(String text, double metres) {
        var tin = Texts.plan(Texts.replacing("76 mm", text)).things().getFirst();
        var diameter = ((Thing.Form.Cylinder) tin.form()).diameter().si();
        assertThat(diameter).isCloseTo(metres, org.assertj.core.data.Offset.offset(1e-15));
    }

    @Test
    void pass_thatOnlyBreaksWithItsShot_isAProblemAtThePass() {
        var problems = Texts.read(Texts.adding(
                        "moves: {slide: {machine: slider, by: [600 mm, 0 mm]}}",
                        "passes: {a: {moves.slide.machine: plate}}"))
                .problems();
        assertThat(problems).extracting(Problem::toText).containsExactly("""
            p.yaml:18:14 shots.one.passes.a.moves.slide.by is a way along a line; must be an angle: plate turns
              Try 60 deg.   (P-MOVE-01, docs/problems.md)\
            """);
    }

    @Test
    void pass_itsWhiteStandsInPlaceOfTheHue() {
        var shot = Texts.shot(Texts.adding(
                "lights: {key: {light: strip, at: free, hue: 30 deg}}", "passes: {white: {lights.key.white: 5600 K}}"));
        var key = shot.findPass("white")
                .orElseThrow()
                .effective()
                .findLight("key")
                .orElseThrow();
        assertThat(key.written().has("hue")).isFalse();
        assertThat(key.written().findQuantity("white").map(Quantity::si)).contains(5600.0);
    }

    @Test
    void sameSize_withAShotThatPlacesNothingLikeIt_isAProblem() {
        var text = Texts.replacing("things:\n", "things:\n  cup: {diameter: 80 mm, height: 90 mm}\n") + """
                wants: [{same_size: hero, as: two}]
              two:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}
                place: {other: {thing: cup, at: [0 mm, 0 mm]}}
            """;
        assertThat(Texts.read(text).problems()).extracting(Problem::code).isEqualTo(List.of("P-WANT-06"));
    }

    @Test
    void everyWantWordOfTheContract_isKnown() {
        var words = """
            fills sharp inside clear off_picture reaches same_size stays_under hangs beads_stay stays_dry sweats \
            upright line_hidden tank_carries ink_reaches clear_until falls_through rises lit highlight steady_light \
            flash_safe smear whole_frames reachable readable registers holds_still on_beat shown hidden no_highlight \
            edges even ratio dark no_shadow look matched judder_free see_through veiled_by sharp_enough\
            """.split(" ");
        assertThat(words).hasSize(44).allMatch(WantGrammar::isWord);
    }

    @Test
    void defaults_areNotFilledIn() {
        var camera = Texts.shot(Texts.SMALL).camera();
        assertThat(camera.held()).isEmpty();
        assertThat(camera.heldOrDefault()).isEqualTo(Camera.Held.LEVEL);
        assertThat(camera.focus()).isEmpty();
        assertThat(camera.fNumber()).isEmpty();
        assertThat(camera.findIso()).isEmpty();
        assertThat(camera.pupilRatioOrDefault()).isEqualTo(1);
        assertThat(Texts.plan(Texts.SMALL).film().papers()).isEmpty();
    }

    @Test
    void example_asJson_readsTheSame() {
        var plan = Texts.example();
        var json = Texts.plan(json(plan.source().root()));
        assertThat(json.shots()).hasSameSizeAs(plan.shots());
        for (int i = 0; i < plan.shots().size(); i++) {
            assertThat(marks(json.shots().get(i))).isEqualTo(marks(plan.shots().get(i)));
        }
    }

    private static List<String> marks(Shot shot) {
        return shot.marks().stream()
                .map(m -> m.path() + " " + m.kind() + " " + m.error() + " "
                        + (m instanceof Mark.Fixed f
                                ? f.quantity().toText()
                                : m.getClass().getSimpleName()))
                .toList();
    }

    private static String json(Node node) {
        return switch (node) {
            case Node.Scalar s -> s.text().matches("[0-9.]+") ? s.text() : "\"" + s.text() + "\"";
            case Node.Sequence s ->
                "[" + String.join(", ", s.items().stream().map(PlansTest::json).toList()) + "]";
            case Node.Mapping m ->
                "{"
                        + String.join(
                                ",\n",
                                m.entries().stream()
                                        .map(e -> "\"" + e.key() + "\": " + json(e.value()))
                                        .toList())
                        + "}";
        };
    }
}
