package plumeline.sound;

import java.util.ArrayList;
import java.util.List;

/// Where a channel is heard from, in the order of a WAV file's mask: the lowest bit is the first.
public enum Speaker {
    /// Front left.
    LEFT("L"),
    /// Front right.
    RIGHT("R"),
    /// Front centre; a single channel too.
    CENTRE("C"),
    /// Low-frequency effects, which loudness leaves out.
    LOW("LFE"),
    /// Back left; the left surround where there is none at the side.
    BACK_LEFT("Lb"),
    /// Back right; the right surround where there is none at the side.
    BACK_RIGHT("Rb"),
    /// Between front left and centre.
    LEFT_OF_CENTRE("Lc"),
    /// Between front right and centre.
    RIGHT_OF_CENTRE("Rc"),
    /// Back centre.
    BACK_CENTRE("Cb"),
    /// Left surround, at the side.
    SIDE_LEFT("Ls"),
    /// Right surround, at the side.
    SIDE_RIGHT("Rs"),
    /// Above.
    TOP("T"),
    /// Above, front left.
    TOP_LEFT("Tl"),
    /// Above, front centre.
    TOP_CENTRE("Tc"),
    /// Above, front right.
    TOP_RIGHT("Tr"),
    /// Above, back left.
    TOP_BACK_LEFT("Tbl"),
    /// Above, back centre.
    TOP_BACK_CENTRE("Tbc"),
    /// Above, back right.
    TOP_BACK_RIGHT("Tbr"),
    /// A channel that the file's mask gives no place.
    PLACELESS("?");

    private static final double SURROUND_WEIGHT = 1.41;
    private static final int PLACES = values().length - 1;

    private final String brief;

    Speaker(String brief) {
        this.brief = brief;
    }

    /// Gives its usual letters.
    ///
    /// @return `L`, `LFE`
    public String brief() {
        return brief;
    }

    /// Lists the places of a mask's channels.
    ///
    /// @param mask a WAV file's, bit 0 for front left
    /// @param count how many channels there are, > 0
    /// @return one place a channel; channels past the mask's have none
    public static List<Speaker> ofMask(long mask, int count) {
        List<Speaker> found = new ArrayList<>();
        for (int bit = 0; bit < PLACES && found.size() < count; bit++) {
            if ((mask >> bit & 1) != 0) {
                found.add(values()[bit]);
            }
        }
        while (found.size() < count) {
            found.add(PLACELESS);
        }
        return List.copyOf(found);
    }

    /// Lists the places of so many channels where a file names none, as such files usually have them.
    ///
    /// **Source:** common practice: L R C LFE and the surrounds, in the order of the mask.
    ///
    /// @param count how many channels there are, > 0
    /// @return one place a channel
    public static List<Speaker> ofCount(int count) {
        return switch (count) {
            case 1 -> List.of(CENTRE);
            case 2 -> List.of(LEFT, RIGHT);
            case 3 -> List.of(LEFT, RIGHT, CENTRE);
            case 4 -> List.of(LEFT, RIGHT, BACK_LEFT, BACK_RIGHT);
            case 5 -> List.of(LEFT, RIGHT, CENTRE, BACK_LEFT, BACK_RIGHT);
            case 6 -> List.of(LEFT, RIGHT, CENTRE, LOW, BACK_LEFT, BACK_RIGHT);
            case 7 -> List.of(LEFT, RIGHT, CENTRE, LOW, BACK_CENTRE, SIDE_LEFT, SIDE_RIGHT);
            case 8 -> List.of(LEFT, RIGHT, CENTRE, LOW, BACK_LEFT, BACK_RIGHT, SIDE_LEFT, SIDE_RIGHT);
            default -> ofMask(0, count);
        };
    }

    /// Gives the mask of places.
    ///
    /// @param speakers the places, in the mask's order
    /// @return the mask; a place that is none counts nothing
    static long mask(List<Speaker> speakers) {
        long mask = 0;
        for (Speaker each : speakers) {
            mask |= each == PLACELESS ? 0 : 1L << List.of(values()).indexOf(each);
        }
        return mask;
    }

    /// Gives how much its channel's power counts: 1.41 for surrounds 60° to 120° from the front, 0 for low-frequency
    /// effects, else 1. Back channels are the surrounds (110°) where none is at the side, else they stand behind
    /// 120°.
    ///
    /// **Source:** ITU-R BS.1770-5, Annex 1 Table 3 and Annex 3 Table 4 (the latter from memory).
    ///
    /// @param all the places of all channels
    /// @return the weight, dimensionless
    double weight(List<Speaker> all) {
        return switch (this) {
            case LOW -> 0;
            case SIDE_LEFT, SIDE_RIGHT -> SURROUND_WEIGHT;
            case BACK_LEFT, BACK_RIGHT -> all.contains(SIDE_LEFT) || all.contains(SIDE_RIGHT) ? 1 : SURROUND_WEIGHT;
            default -> 1;
        };
    }
}
