package plumeline.sheet;

import java.util.Base64;
import java.util.List;
import java.util.Map;
import plumeline.draw.Moment;

/// Computed pictures that stand on shot sheets beside the line art. They are made elsewhere.
///
/// @param byShot by the shot's name
public record Pictures(Map<String, OfShot> byShot) {
    /// None.
    public static final Pictures NONE = new Pictures(Map.of());

    /// Copies the map.
    public Pictures {
        byShot = Map.copyOf(byShot);
    }

    /// A shot's pictures.
    ///
    /// @param pictures in order
    /// @param assumed what was taken for what the plan doesn't say, sentences
    public record OfShot(List<One> pictures, List<String> assumed) {
        /// A shot without any.
        static final OfShot NONE = new OfShot(List.of(), List.of());

        /// Copies the lists.
        public OfShot {
            pictures = List.copyOf(pictures);
            assumed = List.copyOf(assumed);
        }

        /// Those of a moment.
        List<One> at(Moment moment) {
            return pictures.stream()
                    .filter(picture -> picture.moment().equals(moment))
                    .toList();
        }
    }

    /// A picture.
    ///
    /// @param moment the instant it shows
    /// @param caption what stands over it
    /// @param shows what it shows, in words, for who can't see it
    /// @param address the picture itself, as a `data:` address of a JPEG file
    public record One(Moment moment, String caption, String shows, String address) {
        /// Gives one of a JPEG file.
        ///
        /// @param moment the instant it shows
        /// @param caption what stands over it
        /// @param shows what it shows, in words, for who can't see it
        /// @param jpeg the file's bytes
        /// @return the picture
        public static One ofJpeg(Moment moment, String caption, String shows, byte[] jpeg) {
            String address = "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg);
            return new One(moment, caption, shows, address);
        }
    }

    OfShot of(String shot) {
        return byShot.getOrDefault(shot, OfShot.NONE);
    }
}
