package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.colour.Rgb;
import plumeline.flow.Grid;
import plumeline.geom.Vec;
import plumeline.plume.DyeFilm;
import plumeline.plume.DyeFrame;
import plumeline.plume.Strength;
import plumeline.scenery.Cloud;
import plumeline.stage.InkRelease;
import plumeline.stage.PlumePlace;
import plumeline.stage.Stage;

/// Ink as clouds: from a film as its cells have it, else as the law has its front and its amount.
final class InkCloudsTest {
    private static final double GO = 0.1;
    private static final double WATER_LINE = 0.168;

    private static Stage stage(String release) {
        return LooseShots.stage(LooseShots.CAMERA, LooseShots.TANK, LooseShots.TIN, release);
    }

    private static String release(String ink, String how) {
        return "release: {ink: " + ink + ", " + how + ", at: [0 mm, -5 mm, 150 mm], start: 0.1 s}";
    }

    private static PlumePlace place(Stage stage) {
        return ((InkRelease.Known) InkRelease.of(stage.shot()))
                .at(stage.findMouth(stage.startValues()).orElseThrow());
    }

    @Test
    void film_hasItsFramesCellsAtTheirMiddles() throws IOException {
        Stage stage = stage(LooseShots.INK);
        DyeFilm film = LooseShots.film(stage);
        InkClouds ink = InkClouds.of(stage, stage.startValues(), LooseShots.props(film));
        Grid grid = film.head().grid();
        assertThat(ink.findField(GO)).isEmpty();
        int compared = 0;
        for (int number : new int[] {5, 12, 29}) {
            Field field =
                    ink.findField(GO + number / film.head().framesPerSecond()).orElseThrow();
            DyeFrame frame = film.frame(number);
            Vec low = field.box().low().minus(film.head().corner());
            int i = (int) Math.round(low.x() / grid.dxMetres());
            int j = (int) Math.round(low.y() / grid.dyMetres());
            int k = (int) Math.round(low.z() / grid.dzMetres());
            double all = 0;
            for (int n = 0; n < field.across() * field.deep() * field.high(); n++) {
                int across = n % field.across();
                int deep = n / field.across() % field.deep();
                int high = n / field.across() / field.deep();
                assertThat(field.share(across, deep, high)).isEqualTo(frame.share(i + across, j + deep, k + high));
                compared++;
            }
            for (float share : allShares(frame, grid)) {
                all += share;
            }
            assertThat(field.inkMetres3()).isEqualTo(all * grid.cellMetres3(), within(1e-12));
        }
        assertThat(compared).isGreaterThan(100);
    }

    private static float[] allShares(DyeFrame frame, Grid grid) {
        float[] shares = new float[grid.nx() * grid.ny() * grid.nz()];
        for (int n = 0; n < shares.length; n++) {
            shares[n] = frame.share(n % grid.nx(), n / grid.nx() % grid.ny(), n / grid.nx() / grid.ny());
        }
        return shares;
    }

    @Test
    void film_betweenTwoFrames_isMixedEvenly() throws IOException {
        Stage stage = stage(LooseShots.INK);
        DyeFilm film = LooseShots.film(stage);
        InkClouds ink = InkClouds.of(stage, stage.startValues(), LooseShots.props(film));
        double rate = film.head().framesPerSecond();
        double half = ink.findField(GO + 10.5 / rate).orElseThrow().inkMetres3();
        double before = ink.findField(GO + 10 / rate).orElseThrow().inkMetres3();
        double after = ink.findField(GO + 11 / rate).orElseThrow().inkMetres3();
        assertThat(half).isEqualTo((before + after) / 2, within(1e-6 * after));
        // The tenth of a second that nothing came is over: what came by then is about its share of 3 ml.
        assertThat(before).isEqualTo(3e-6, within(0.03 * 3e-6));
    }

    /// A level sight through cells' middles: what is left in the worst channel is what the record counts with.
    @Test
    void straightSight_keepsWhatBeerAndLambertLeave() throws IOException {
        Stage stage = stage(LooseShots.INK);
        DyeFilm film = LooseShots.film(stage);
        InkClouds ink = InkClouds.of(stage, stage.startValues(), LooseShots.props(film));
        double seconds = GO + 20 / film.head().framesPerSecond();
        Cloud cloud = ink.clouds(seconds).getFirst();
        Field field = ink.findField(seconds).orElseThrow();
        var strength = new Strength(1e4, true);
        int compared = 0;
        for (int j = 0; j < field.deep(); j++) {
            for (int k = 0; k < field.high(); k++) {
                double shares = 0;
                double metres = 0;
                for (int i = 0; i < field.across(); i++) {
                    shares += field.share(i, j, k) * field.xMetres();
                    // Straight between the middles: trapezes.
                    metres += (field.share(i - 1, j, k) + field.share(i, j, k)) / 2 * field.xMetres();
                }
                double clear = strength.clearShare(shares);
                if (clear > 1e-6 && clear < 1) {
                    assertThat(Math.exp(-cloud.extinction().most() * metres)).isEqualTo(clear, within(0.01 * clear));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    @ParameterizedTest
    @CsvSource({
        "rose, 'volume: 3 ml, bore: 4 mm, squeeze_time: 0.2 s'",
        "heavy, 'volume: 5 ml, bore: 2 mm, squeeze_time: 1 s'",
        "heavy, 'volume: 10 ml, bore: 4 mm, squeeze_time: 8 s'",
        "heavy, 'volume: 1 ml, bore: 2 mm, squeeze_time: 20 s'",
        "green, 'volume: 3 ml'"
    })
    void law_keepsItsInkAndItsFront(String ink, String how) {
        Stage stage = stage(release(ink, how));
        InkClouds clouds = LooseShots.law(stage);
        PlumePlace place = place(stage);
        double volume = 1e-6 * Double.parseDouble(how.replaceAll("volume: ([0-9]+) ml.*", "$1"));
        double flows = how.contains("squeeze_time")
                ? Double.parseDouble(how.replaceAll(".*squeeze_time: ([0-9.]+) s.*", "$1"))
                : 1;
        assertThat(clouds.findField(GO)).isEmpty();
        assertThat(clouds.findField(GO - 0.05)).isEmpty();
        for (double seconds : new double[] {0.02, 0.1, 0.3, 0.6, 1, 2, 5, 20}) {
            Field field = clouds.findField(GO + seconds).orElseThrow();
            assertThat(field.inkMetres3())
                    .as(ink + " " + how + " after " + seconds)
                    .isEqualTo(
                            volume * Math.min(1, seconds / flows),
                            within(0.02 * volume * Math.min(1, seconds / flows)));
            float most = 0;
            for (int n = 0; n < field.across() * field.deep() * field.high(); n++) {
                float share = field.share(
                        n % field.across(), n / field.across() % field.deep(), n / field.across() / field.deep());
                assertThat(share).isGreaterThanOrEqualTo(0);
                most = Math.max(most, share);
            }
            assertThat(most).as(ink + " " + how + " after " + seconds).isLessThanOrEqualTo(1);
            double law = place.plume().frontMetres(seconds, place.floorMetres()).value();
            if (law - place.plume().startMetres() > 0.01) {
                assertThat(WATER_LINE - lowMetres(field))
                        .as(ink + " " + how + " front after " + seconds)
                        .isEqualTo(law, within(field.zMetres()));
            }
        }
    }

    /// How low the nozzle's axis has ink: to the half of what its head has, between cells' middles straight.
    private static double lowMetres(Field field) {
        int i = field.across() / 2;
        int j = field.deep() / 2;
        int head = 0;
        while (field.share(i, j, head) == 0 || field.share(i, j, head + 1) > field.share(i, j, head)) {
            head++;
        }
        double half = field.share(i, j, head) / 2;
        int k = 0;
        while (field.share(i, j, k) < half) {
            k++;
        }
        double below = field.share(i, j, k - 1);
        double within = k == 0 ? 0 : k - 0.5 + (half - below) / (field.share(i, j, k) - below);
        return field.box().low().z() + field.zMetres() * within;
    }

    /// What keeps less than 95 % of a level look's light begins at the front, to a tenth of its half-width.
    @Test
    void law_isSeenToItsFront() {
        Stage stage = stage(release("heavy", "volume: 5 ml, bore: 2 mm, squeeze_time: 1 s"));
        PlumePlace place = place(stage);
        Field field = LooseShots.law(stage).findField(GO + 1.2).orElseThrow();
        double law = place.plume().frontMetres(1.2, place.floorMetres()).value();
        int k = 0;
        while (clearShare(field, k) > 0.95) {
            k++;
        }
        double low = WATER_LINE - field.box().low().z() - k * field.zMetres();
        assertThat(low).isEqualTo(law, within(0.1 * place.radiusMetres(law) + field.zMetres()));
    }

    /// After the squeeze the stem's upper end is round: from its top down its half-width is that of half a ball.
    @Test
    void stemInLaw_endsRound() {
        Stage stage = stage(release("heavy", "volume: 5 ml, bore: 2 mm, squeeze_time: 1 s"));
        Field field = LooseShots.law(stage).findField(GO + 1.2).orElseThrow();
        int top = field.high() - 1;
        while (halfWidthMetres(field, top) == 0) {
            top--;
        }
        double ball = 0;
        int under = top;
        while (halfWidthMetres(field, under - 1) > halfWidthMetres(field, under)) {
            ball = halfWidthMetres(field, --under);
            if ((top - under + 1) * field.zMetres() >= ball) {
                break;
            }
        }
        assertThat(top - under).isGreaterThan(3);
        for (int k = under; k <= top; k++) {
            double down = (top - k + 0.5) * field.zMetres() / ball;
            double wanted = ball * Math.sqrt(down * (2 - down));
            assertThat(halfWidthMetres(field, k)).isCloseTo(wanted, within(0.15 * ball));
        }
        assertThat(halfWidthMetres(field, top)).isLessThan(0.6 * ball);
    }

    /// To the half of what the axis has, between cells' middles straight.
    private static double halfWidthMetres(Field field, int k) {
        int middle = field.across() / 2;
        double half = field.share(middle, middle, k) / 2;
        int i = middle;
        while (half > 0 && field.share(i, middle, k) > half) {
            i++;
        }
        if (half == 0) {
            return 0;
        }
        double before = field.share(i - 1, middle, k);
        double past = (before - half) / (before - field.share(i, middle, k));
        return (i - 1 - middle + past + 0.5) * field.xMetres();
    }

    private static double clearShare(Field field, int k) {
        double metres = 0;
        for (int j = 0; j < field.deep(); j++) {
            metres += field.share(field.across() / 2, j, k) * field.yMetres();
        }
        return new Strength(1e4, true).clearShare(metres);
    }

    @Test
    void fieldInLaw_isInTheWater() {
        Stage stage = stage(release("heavy", "volume: 10 ml, bore: 4 mm, squeeze_time: 0.3 s"));
        for (double seconds : new double[] {0.01, 0.5, 4}) {
            Field field = LooseShots.law(stage).findField(GO + seconds).orElseThrow();
            assertThat(field.box().high().z()).isLessThanOrEqualTo(WATER_LINE);
            assertThat(field.box().low().z()).isGreaterThanOrEqualTo(0.008 - 1e-12);
            assertThat(field.box().low().y()).isGreaterThanOrEqualTo(-0.05);
        }
    }

    @Test
    void sameInstant_isTheSameField() throws IOException {
        Stage stage = stage(LooseShots.INK);
        InkClouds law = LooseShots.law(stage);
        assertThat(law.findField(0.5).orElseThrow()).isSameAs(law.findField(0.5).orElseThrow());
        InkClouds film = InkClouds.of(stage, stage.startValues(), LooseShots.props(LooseShots.film(stage)));
        assertThat(film.findField(0.5).orElseThrow())
                .isSameAs(film.findField(0.501).orElseThrow());
        assertThat(film.findField(0.5).orElseThrow())
                .isNotSameAs(film.findField(0.51).orElseThrow());
    }

    @Test
    void toneOfAHue_takesItsWorstChannelByTheStrength() {
        Cloud rose = LooseShots.law(stage(LooseShots.INK)).clouds(0.5).getFirst();
        Rgb takes = rose.extinction();
        assertThat(takes.most()).isEqualTo(Math.log(10) * 1e4, within(1e-6));
        // Rose: green goes first, red stays.
        assertThat(takes.green()).isEqualTo(takes.most());
        assertThat(takes.red()).isLessThan(takes.blue());
        for (double[] channel : new double[][] {
            {takes.red(), rose.albedo().red()},
            {takes.green(), rose.albedo().green()},
            {takes.blue(), rose.albedo().blue()}
        }) {
            assertThat(channel[0] * channel[1]).isEqualTo(0.2 * takes.most(), within(1e-6));
        }
        Cloud plain = LooseShots.law(stage(release("plain", "volume: 3 ml, bore: 4 mm")))
                .clouds(0.5)
                .getFirst();
        assertThat(plain.extinction().red()).isEqualTo(plain.extinction().blue());
        assertThat(plain.albedo().most()).isLessThan(0.1);
    }

    @Test
    void whatIsAssumed_isSaid() throws IOException {
        Stage stage = stage(release("plain", "volume: 3 ml, bore: 4 mm"));
        assertThat(LooseShots.law(stage).assumed())
                .anyMatch(words -> words.contains("./plumeline ink"))
                .anyMatch(words -> words.contains("The strength of plain isn't written"))
                .anyMatch(words -> words.contains("squeezed out in 1 s."));
        Stage rose = stage(LooseShots.INK);
        assertThat(InkClouds.of(rose, rose.startValues(), LooseShots.props(LooseShots.film(rose)))
                        .assumed())
                .anyMatch(words -> words.contains("try 1"))
                .anyMatch(words -> words.contains("simulated to 0.62 s after"))
                .noneMatch(words -> words.contains("from its law"));
    }

    @Test
    void shotWithoutInk_hasNoCloud() {
        Stage stage = LooseShots.stage(LooseShots.CAMERA, LooseShots.TIN);
        assertThat(LooseShots.law(stage).clouds(1)).isEmpty();
        assertThat(LooseShots.law(stage).assumed()).isEmpty();
    }
}
