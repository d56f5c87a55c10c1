package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import plumeline.geom.Vec;
import plumeline.ink.Coefficients;
import plumeline.ink.Plume;
import plumeline.ink.Regime;
import plumeline.plan.Release;
import plumeline.plan.Written;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.scenery.Cloud;
import plumeline.stage.InkRelease;
import plumeline.stage.PlumePlace;
import plumeline.stage.Stage;
import plumeline.wet.Lacks;

/// A shot's ink at an instant: what a simulation's film has, else a smooth field from the law.
final class InkClouds {
    /// Where neither readings nor law say how much (common practice).
    private static final double USUAL_METRES3 = 5e-6;

    private static final double USUAL_BORE_METRES = 0.004;

    /// What is let go at once takes so long all the same.
    private static final double LEAST_SECONDS = 1e-3;

    /// The front's speed over that of a laminar thread behind it, as in `ink`.
    private static final double THREAD_SHARE = 0.57;

    private static final int FIELDS = 8;

    private final Ways ways;
    private final InkTone tone;
    private final double goSeconds;
    private final List<String> assumed;
    private final AtomicReference<Optional<Made>> last = new AtomicReference<>(Optional.empty());

    private InkClouds(Ways ways, InkTone tone, double goSeconds, List<String> assumed) {
        this.ways = ways;
        this.tone = tone;
        this.goSeconds = goSeconds;
        this.assumed = List.copyOf(assumed);
    }

    /// A field as a cloud: the same cloud while it is the same field.
    private record Made(Field field, Cloud cloud) {}

    /// How a field is found by the time since the release.
    private interface Ways {
        Optional<Field> at(double seconds);
    }

    /// Reads a shot's ink.
    static InkClouds of(Stage stage, double[] values, Props props) {
        if (!(stage.shot().findRelease().orElse(null) instanceof Release.OfInk release)) {
            return new InkClouds(_ -> Optional.empty(), InkTone.NONE, 0, List.of());
        }
        InkTone tone = InkTone.of(release.ink());
        double go = stage.releaseSeconds();
        List<String> assumed = new ArrayList<>();
        if (props.ink().isPresent()) {
            var film = new FilmField(props.ink().get());
            assumed.add("The ink is that of try " + props.ink().get().head().run()
                    + " of its simulation: another take's differs.");
            if (film.endSeconds() < stage.lastSeconds() - go) {
                assumed.add("The ink was simulated to " + Print.seconds(film.endSeconds(), 2)
                        + " after its release: from then on it stays as it was.");
            }
            assumed.addAll(tone.assumed());
            return new InkClouds(film::at, tone, go, assumed);
        }
        Optional<LawField> law = findLaw(stage, values, release, assumed);
        if (law.isEmpty()) {
            return new InkClouds(_ -> Optional.empty(), tone, go, assumed);
        }
        assumed.add("The ink is a smooth field from its law: ./plumeline ink runs a simulation.");
        assumed.addAll(tone.assumed());
        var recent = new Recent<Optional<Field>>(FIELDS);
        double still = law.get().stillSeconds();
        return new InkClouds(
                seconds -> {
                    double then = Math.min(seconds, still);
                    return recent.get(
                            Double.doubleToLongBits(then), _ -> law.get().at(then));
                },
                tone,
                go,
                assumed);
    }

    private static Optional<LawField> findLaw(
            Stage stage, double[] values, Release.OfInk release, List<String> assumed) {
        return switch (InkRelease.of(stage.shot())) {
            case InkRelease.Missing(InkRelease.Lack lack) -> {
                assumed.add("The ink isn't drawn. " + Lacks.sentence(lack, stage.shot()));
                yield Optional.empty();
            }
            case InkRelease.Known known -> findLaw(known, stage, values, release, assumed);
        };
    }

    private static Optional<LawField> findLaw(
            InkRelease.Known known, Stage stage, double[] values, Release.OfInk release, List<String> assumed) {
        Vec mouth = stage.findMouth(values).orElseThrow();
        PlumePlace place = known.at(mouth);
        if (place.insideMetres() <= 0 || place.floorMetres() <= place.plume().startMetres() || known.isLight()) {
            assumed.add(
                    known.isLight()
                            ? "The ink isn't drawn: no law here is of ink lighter than the water."
                            : "The ink isn't drawn: its nozzle isn't over the tank's water.");
            return Optional.empty();
        }
        FrontTable front = FrontTable.of(place.plume(), place.floorMetres());
        if (!front.isKnown()) {
            assumed.add("The ink isn't drawn: its release is past what the law knows.");
            return Optional.empty();
        }
        assumed.addAll(known.assumed().stream()
                .map(words -> "Taken for the ink: " + words + ".")
                .toList());
        return Optional.of(new LawField(place, front, poured(place.plume(), front, release.written(), assumed)));
    }

    private static LawField.Poured poured(Plume plume, FrontTable front, Written written, List<String> assumed) {
        return switch (plume) {
            case Plume.ByLaw law -> poured(law.descent(), front);
            case Plume.Taught taught -> poured(taught.descent(), front);
            case Plume.Read _ -> poured(written, assumed);
        };
    }

    private static LawField.Poured poured(plumeline.ink.Descent descent, FrontTable front) {
        boolean isThread = descent.regime(front.endMetres()) == Regime.LAMINAR;
        return new LawField.Poured(
                descent.release().volumeMetres3(),
                Math.max(LEAST_SECONDS, descent.release().seconds()),
                isThread ? THREAD_SHARE : Coefficients.USUAL.frontShare(),
                isThread ? LawField.Mixing.THREAD : LawField.Mixing.PLUME);
    }

    /// A front that was read says nothing of how the ink comes: that is as written, else as usual.
    private static LawField.Poured poured(Written written, List<String> assumed) {
        Optional<Quantity> volume = written.findQuantity("volume");
        if (volume.isEmpty()) {
            assumed.add("The volume of the ink isn't written: 5 ml.");
        }
        double metres3 = volume.map(Quantity::si).orElse(USUAL_METRES3);
        double bore = written.findQuantity("bore").map(Quantity::si).orElse(USUAL_BORE_METRES);
        double seconds = written.findQuantity("squeeze_time")
                .map(Quantity::si)
                .or(() ->
                        written.findQuantity("speed").map(speed -> metres3 / (Math.PI / 4 * bore * bore * speed.si())))
                .orElseGet(() -> {
                    assumed.add("How long the ink is squeezed isn't written: 1 s.");
                    return InkRelease.USUAL_SQUEEZE_SECONDS;
                });
        return new LawField.Poured(
                metres3, Math.max(LEAST_SECONDS, seconds), Coefficients.USUAL.frontShare(), LawField.Mixing.PLUME);
    }

    /// Finds the field of ink at an instant.
    ///
    /// @param realSeconds real seconds after GO
    /// @return shares of neat ink; empty before the release, and where there is no ink
    Optional<Field> findField(double realSeconds) {
        double seconds = realSeconds - goSeconds;
        return seconds > 0 ? ways.at(seconds) : Optional.empty();
    }

    /// Gives the ink at an instant as clouds.
    List<Cloud> clouds(double realSeconds) {
        Optional<Field> field = findField(realSeconds);
        if (field.isEmpty()) {
            return List.of();
        }
        Optional<Made> before = last.get();
        if (before.filter(made -> made.field().equals(field.get())).isPresent()) {
            return List.of(before.get().cloud());
        }
        Cloud cloud = field.get().cloud(tone);
        last.set(Optional.of(new Made(field.get(), cloud)));
        return List.of(cloud);
    }

    /// Tells what was taken for what isn't written.
    List<String> assumed() {
        return assumed;
    }
}
