package plumeline.speed;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import plumeline.scenery.World;
import plumeline.trace.Exposing;
import plumeline.trace.Look;
import plumeline.trace.Plate;
import plumeline.trace.PovScene;
import plumeline.trace.Tracer;

/// Processor time of a picture of one ray a pixel, against POV-Ray's (`povray` on the path) of the same set, turn by
/// turn in one run: `scripts/bench-rays`.
public final class RayRatio {
    private static final int WIDTH = 480;
    private static final int HEIGHT = 270;
    private static final int WARM = 60;
    private static final int TURNS = 9;
    private static final int OURS_A_TURN = 20;
    private static final int MANY = 16;

    private RayRatio() {}

    /// Measures and prints.
    ///
    /// @param given nothing is read
    /// @throws IOException where povray can't be run
    /// @throws InterruptedException where it is stopped
    public static void main(String[] given) throws IOException, InterruptedException {
        measure("water block", RayScene.block());
        measure("tank", RayScene.tank());
    }

    private static void measure(String name, World world) throws IOException, InterruptedException {
        List<Look> looks = List.of(new Look(Tracer.of(world), RayScene.eye()));
        Path scene = Files.writeString(Files.createTempFile("rays", ".pov"), PovScene.shaded(world, RayScene.eye()));
        for (int i = 0; i < WARM; i++) {
            draw(looks, 1);
        }
        double[] ratios = new double[TURNS];
        double[] ours = new double[TURNS];
        for (int turn = 0; turn < TURNS; turn++) {
            long began = processorNanos();
            for (int i = 0; i < OURS_A_TURN; i++) {
                draw(looks, 1);
            }
            ours[turn] = (processorNanos() - began) / 1e6 / OURS_A_TURN;
            double theirs = (povray(scene, WIDTH, HEIGHT) - povray(scene, 4, 4)) * 1000;
            ratios[turn] = theirs / ours[turn];
            System.out.printf(
                    Locale.ROOT,
                    "%s: ours %.1f ms, povray %.0f ms of processor time: %.1f times%n",
                    name,
                    ours[turn],
                    theirs,
                    ratios[turn]);
        }
        Files.delete(scene);
        draw(looks, MANY);
        long began = processorNanos();
        draw(looks, MANY);
        double many = (processorNanos() - began) / 1e6;
        Arrays.sort(ratios);
        Arrays.sort(ours);
        System.out.printf(
                Locale.ROOT,
                "%s: median %.1f ms a frame, %.1f times (%.1f to %.1f); %d rays a pixel %.0f ms%n",
                name,
                ours[TURNS / 2],
                ratios[TURNS / 2],
                ratios[0],
                ratios[TURNS - 1],
                MANY,
                many);
    }

    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static void draw(List<Look> looks, int rays) {
        Exposing.expose(
                looks,
                new Plate(WIDTH, HEIGHT),
                new Exposing.Tile(0, 0, WIDTH, HEIGHT),
                new Exposing.Rays(0, rays, rays, 1));
    }

    /// Processor seconds, as bash counts its children's.
    private static double povray(Path scene, int width, int height) throws IOException, InterruptedException {
        Process run = new ProcessBuilder(
                        "bash",
                        "-c",
                        "TIMEFORMAT='%U %S'; time povray +I" + scene + " -F +W" + width + " +H" + height
                                + " -D -A Work_Threads=1 -GA > /dev/null 2>&1")
                .redirectErrorStream(true)
                .start();
        String[] said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .strip()
                .split("\\s+");
        run.waitFor();
        return Double.parseDouble(said[0]) + Double.parseDouble(said[1]);
    }
}
