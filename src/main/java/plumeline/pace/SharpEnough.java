package plumeline.pace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.LongStream;
import plumeline.plan.Delivery;
import plumeline.plan.Kit;
import plumeline.plan.Shot;
import plumeline.plan.When;
import plumeline.quantity.Print;
import plumeline.stage.Frame;
import plumeline.stage.Gauge;
import plumeline.stage.Picture;
import plumeline.timeline.Use;

/// Enough captured pixels are left for each pixel delivered, at every frame that deliveries show.
///
/// `captured pixels across · crop's share of the width / (delivered pixels across · scale)`. Margin in captured pixels
/// a delivered one over what is wanted, a part a delivery. A turn changes nothing in it.
///
/// @param shown the deliveries with where they show the shot
/// @param least captured pixels wanted for one delivered, > 0
/// @param when the instants that count
record SharpEnough(List<Of> shown, double least, When when) implements Gauge<Paced> {
    private static final double NEAR = 1e-9;

    /// What a delivery doesn't show lacks no pixels.
    private static final double UNSEEN = 100;

    SharpEnough {
        shown = List.copyOf(shown);
    }

    /// A delivery and where it shows the shot.
    record Of(Delivery delivery, List<Use> uses) {}

    /// What is left at one frame.
    ///
    /// @param captured pixels across of the whole picture as held
    /// @param pixels those of them that the crop keeps
    private record Left(Delivery delivery, double frame, double scale, double captured, double pixels) {
        double each() {
            return pixels / (delivery.size().orElseThrow().acrossPixels() * scale);
        }
    }

    @Override
    public String unit() {
        return "px";
    }

    @Override
    public boolean isOfWhole() {
        return when instanceof When.Whole;
    }

    @Override
    public boolean isIdle(Paced at) {
        return worst(at).isEmpty();
    }

    @Override
    public double[] parts(Paced at) {
        return shown.stream()
                .mapToDouble(
                        of -> worst(at, of).map(left -> left.each() - least).orElse(UNSEEN))
                .map(margin -> Math.abs(margin) < NEAR ? 0 : margin)
                .toArray();
    }

    private Optional<Left> worst(Paced at, Of of) {
        Shot shot = at.stage().shot();
        Picture picture = at.now().picture();
        Frame crop = Frame.of(
                picture, of.delivery(), shot.cropOrDefault(of.delivery().name()));
        double captured = picture.widthMetres() / picture.pixelMetres();
        double pixels = captured * (crop.right() - crop.left());
        List<Left> all = new ArrayList<>();
        for (Use use : of.uses()) {
            if (isOfWhole()) {
                LongStream frames =
                        use.keys().isEmpty() ? LongStream.of(use.first()) : LongStream.range(use.first(), use.past());
                frames.forEach(frame -> all.add(new Left(
                        of.delivery(),
                        (double) frame,
                        use.framingAt((double) frame).scale(),
                        captured,
                        pixels)));
            } else if (use.has(at.now().frame())) {
                double frame = at.now().frame();
                all.add(new Left(of.delivery(), frame, use.framingAt(frame).scale(), captured, pixels));
            }
        }
        return all.stream().min(Comparator.comparingDouble(Left::each));
    }

    private Optional<Left> worst(Paced at) {
        return shown.stream().flatMap(of -> worst(at, of).stream()).min(Comparator.comparingDouble(Left::each));
    }

    @Override
    public String standing(Paced at) {
        return worst(at)
                .map(left -> left.delivery().name() + " gets "
                        + each(left.each()) + " captured pixels for each of its own"
                        + (left.scale() == 1
                                ? ""
                                : " at the shot's frame " + Math.round(left.frame()) + ", where it is scaled to "
                                        + Print.number(100 * left.scale(), 1) + " %")
                        + ": " + Math.round(left.pixels()) + " of " + Math.round(left.captured())
                        + " across are in its crop, for "
                        + left.delivery().size().orElseThrow().acrossPixels() + ".")
                .orElse("No delivery shows it then.");
    }

    private static String each(double pixels) {
        return String.format(Locale.ROOT, "%.2f", Math.floor(100 * pixels + NEAR) / 100);
    }

    @Override
    public List<String> listAttempts(Paced at) {
        Optional<Left> found = worst(at).filter(left -> left.each() < least - NEAR);
        if (found.isEmpty()) {
            return List.of();
        }
        Left left = found.get();
        List<String> all = new ArrayList<>();
        double most = Math.floor(100 * left.scale() * left.each() / least + NEAR);
        if (left.scale() > 1 && most >= 1) {
            all.add("Scale it to " + Math.round(most) + " % at most for "
                    + left.delivery().name() + ".");
        }
        Picture picture = at.now().picture();
        double longSide = Math.max(picture.widthMetres(), picture.heightMetres());
        findMode(at.stage().shot(), longSide / picture.pixelMetres() * least / left.each())
                .ifPresent(all::add);
        all.add("Deliver " + left.delivery().name() + " at most "
                + Math.round(Math.floor(left.pixels() / (left.scale() * least)))
                + " px across, or frame the shot nearer.");
        return all;
    }

    /// The fastest of the body's modes that has so many pixels across.
    private static Optional<String> findMode(Shot shot, double neededPixels) {
        Kit.CameraBody body = shot.camera().body();
        return body.modes().stream()
                .filter(mode -> mode.acrossPixels().orElse(body.acrossPixels()) >= neededPixels - NEAR)
                .max(Comparator.comparingDouble(mode -> mode.rate().si()))
                .map(mode -> "Capture at " + mode.rate().valueText() + " or slower: "
                        + mode.acrossPixels().orElse(body.acrossPixels()) + " px across are enough.");
    }
}
