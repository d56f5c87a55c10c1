package plumeline.assemble;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.clip.PictureTrack;
import plumeline.plan.Plan;
import plumeline.quantity.FrameRate;
import plumeline.render.Pixels;
import plumeline.timeline.Laid;
import plumeline.timeline.ScreenBlend;
import plumeline.timeline.Timeline;
import plumeline.trace.Exposing;

/// Overlays laid over a film by a screen blend. Each covers the delivery's picture, middle on middle; a clip runs at
/// its own rate, the frame seen being the last that has begun; a single picture stays.
///
/// Where an overlay's black sits is a share of codes: of all 256, or of the 220 of limited range. Either is turned into
/// the scale of what is shown (16 to 235 of a clip in limited range, else 0 to 255) before it is taken off. On the
/// linear scale it is a share of light.
///
/// **Source:** codes of limited range: ITU-R BT.709-6, item 4.6; light from display values: IEC 61966-2-1 (both from
/// memory).
final class Overlays {
    private static final double FIRST_CODE = 16;
    private static final double CODES = 219;
    private static final double ALL_CODES = 255;

    private final Timeline timeline;
    private final Screen screen;
    private final List<Layer> layers = new ArrayList<>();

    /// An overlay with its pictures.
    private record Layer(
            Laid<Plan.Overlay> laid, PictureTrack track, ScreenBlend blend, boolean isLinear, long frames) {}

    Overlays(Plan plan, Timeline timeline, Screen screen, Map<String, PictureTrack> tracks) {
        this.timeline = timeline;
        this.screen = screen;
        for (Laid<Plan.Overlay> laid : Laid.listOverlays(plan, timeline)) {
            Optional<PictureTrack> track =
                    Optional.ofNullable(tracks.get(laid.what().name()));
            track.ifPresent(one -> layers.add(
                    new Layer(laid, one, blend(laid.what(), one), isLinear(laid.what()), one.countFrames())));
        }
    }

    private static boolean isLinear(Plan.Overlay overlay) {
        return overlay.transferOrDefault().equals("linear");
    }

    private static ScreenBlend blend(Plan.Overlay overlay, PictureTrack track) {
        double black = overlay.blackOrDefault();
        boolean isOfLimited = overlay.rangeOrDefault().equals("video");
        if (!isLinear(overlay)) {
            double code = isOfLimited ? FIRST_CODE + CODES * black : ALL_CODES * black;
            black = track.facts().isLimited() ? (code - FIRST_CODE) / CODES : code / ALL_CODES;
            // Nothing is written of most clips: their black then is where their range has it.
            black = overlay.blackOrDefault() == 0 ? 0 : black;
        }
        return new ScreenBlend(Math.clamp(black, 0, 0.99), overlay.levelOrDefault());
    }

    /// Lays a frame's overlays on.
    void lay(long frame, int[] film) {
        for (Layer layer : layers) {
            if (frame >= layer.laid().firstFrame() && frame < layer.laid().pastFrame()) {
                long own = layer.frames() == 1 ? 0 : ownFrame(layer, frame);
                layer.track().find(own).ifPresent(picture -> lay(layer, picture, film));
            }
        }
    }

    private long ownFrame(Layer layer, long frame) {
        FrameRate own = layer.track().facts().rate();
        FrameRate shown = timeline.rate();
        return BigInteger.valueOf(frame - layer.laid().beginFrame())
                .multiply(BigInteger.valueOf(own.numerator()))
                .multiply(BigInteger.valueOf(shown.denominator()))
                .divide(BigInteger.valueOf(own.denominator()).multiply(BigInteger.valueOf(shown.numerator())))
                .longValueExact();
    }

    private void lay(Layer layer, int[] picture, int[] film) {
        PictureTrack.Facts facts = layer.track().facts();
        int[] over = new int[film.length];
        View whole = new View(facts.width(), facts.height(), new Exposing.Tile(0, 0, facts.width(), facts.height()));
        Lay.covering(screen, facts.width(), facts.height())
                .write(new Pixels(facts.width(), facts.height(), picture), 0, 0, whole, screen, over);
        for (int v = screen.top(); v < screen.top() + screen.down(); v++) {
            for (int u = screen.left(); u < screen.left() + screen.across(); u++) {
                int at = v * screen.width() + u;
                film[at] = blended(layer, film[at], over[at]);
            }
        }
    }

    private static int blended(Layer layer, int below, int over) {
        int packed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            double under = (below >> shift & 255) / ALL_CODES;
            double upper = (over >> shift & 255) / ALL_CODES;
            double out = layer.isLinear()
                    ? coded(layer.blend().of(light(under), light(upper)))
                    : layer.blend().of(under, upper);
            packed |= (int) (out * ALL_CODES + 0.5) << shift;
        }
        return packed;
    }

    private static double light(double code) {
        return code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
    }

    private static double coded(double light) {
        double code = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return Math.clamp(code, 0, 1);
    }
}
