package plumeline.post;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Frame;
import plumeline.stage.Picture;
import plumeline.stage.Window;
import plumeline.timeline.Framing;
import plumeline.timeline.Laid;
import plumeline.timeline.Timeline;

/// What a film lacks before it can be cut as planned, beside its takes.
final class Lacking {
    private final FilmAnswer film;
    private final Plan plan;
    private final List<String> all = new ArrayList<>();

    private Lacking(FilmAnswer film) {
        this.film = film;
        plan = film.plan();
    }

    static List<String> list(FilmAnswer film) {
        Lacking lacking = new Lacking(film);
        lacking.addCuts();
        lacking.addOverlays();
        lacking.addTitles();
        film.plan().deliveries().forEach(lacking::addBorders);
        return lacking.all;
    }

    private void addCuts() {
        if (plan.cuts().isEmpty()) {
            all.add("The plan has no cut: write which shots follow each other, cut: [{shot: NAME, frames: 96}, …].");
        }
        for (Delivery delivery : plan.deliveries()) {
            if (delivery.length().isPresent() && delivery.listCuts().isEmpty()) {
                all.add(delivery.name() + " is to be "
                        + delivery.length().get().valueText()
                        + " long, and which shots it takes isn't written: write deliver." + delivery.name()
                        + ".cut, a list like the film's.");
            }
        }
    }

    /// Overlays that the film's end cuts short.
    private void addOverlays() {
        for (Timeline timeline : Timeline.listAll(plan)) {
            for (Laid<Plan.Overlay> laid : Laid.listOverlays(plan, timeline)) {
                long past = laid.firstFrame() + laid.what().findFrames().orElse(0);
                if (past > timeline.frames()) {
                    all.add("The overlay " + laid.what().name() + " is cut off by "
                            + (past - timeline.frames()) + " frames where "
                            + (timeline.delivery().isEmpty() ? "the film" : timeline.delivery() + "'s own cut")
                            + " ends.");
                }
            }
        }
    }

    private void addTitles() {
        Set<String> languages = new LinkedHashSet<>();
        Set<String> shots = new LinkedHashSet<>();
        plan.cutList().titles().forEach(title -> {
            languages.add(title.language());
            shots.add(title.shot());
        });
        for (String shot : shots) {
            for (String language : languages) {
                boolean has = plan.cutList().titles().stream()
                        .anyMatch(title ->
                                title.shot().equals(shot) && title.language().equals(language));
                if (!has) {
                    all.add("The title over " + shot + " isn't written in " + language + ".");
                }
            }
        }
    }

    /// Where a crop or a reframed picture leaves a border.
    private void addBorders(Delivery delivery) {
        Timeline timeline = Timeline.of(plan, delivery);
        for (Timeline.Entry entry : timeline.entries()) {
            var keys = entry.cut().listReframes(delivery.name());
            String name = entry.cut().shot().name();
            Optional<ShotAnswer> answer =
                    film.shots().stream().filter(one -> one.shot().equals(name)).findFirst();
            if (answer.isEmpty()) {
                continue;
            }
            Picture picture = answer.get()
                    .posed()
                    .stages()
                    .getFirst()
                    .stage()
                    .scene(answer.get().posed().values(), 0)
                    .picture();
            Shot shot = plan.findShot(name).orElseThrow();
            Frame crop = Frame.of(picture, delivery, shot.cropOrDefault(delivery.name()));
            long frames = keys.isEmpty() ? 1 : entry.cut().frames();
            for (long frame = 0; frame < frames; frame++) {
                Framing framing = Framing.at(keys, (double) frame);
                if (!new Window(picture, crop, framing).isCovered()) {
                    all.add("In " + delivery.name() + " a border shows at frame " + (entry.first() + frame) + " ("
                            + name
                            + "): "
                            + (keys.isEmpty()
                                    ? "its crop goes over the picture's edge. Move the crop, or scale it up."
                                    : "the picture is scaled to " + Print.share(framing.scale(), 1)
                                            + " there. Scale it up, or move and turn it less."));
                    break;
                }
            }
        }
    }
}
