package plumeline.sound;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.Map;
import plumeline.sound.Wav.Kind;
import plumeline.sound.Wav.Places;
import plumeline.sound.Wav.Reading;
import plumeline.sound.Wav.Reading.Refused;

/// One walk through the chunks of a WAV file. Nothing is taken that the bytes don't hold, whatever lengths they claim.
final class WavWalk {
    private static final int HEAD = 12;
    private static final int CHUNK = 8;
    private static final int WHOLE = 1;
    private static final int FLOATING = 3;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final int MOST_CHANNELS = 64;
    private static final int MOST_RATE = 1_536_000;

    /// The end of a subformat's GUID, the same for all that stand for a plain format's number.
    private static final List<Byte> SUBFORMAT_END = List.of(
            (byte) 0,
            (byte) 0,
            (byte) 0,
            (byte) 0,
            (byte) 0x10,
            (byte) 0,
            (byte) 0x80,
            (byte) 0,
            (byte) 0,
            (byte) 0xAA,
            (byte) 0,
            (byte) 0x38,
            (byte) 0x9B,
            (byte) 0x71);

    private static final Map<Integer, String> NAMES = Map.of(
            2, "ADPCM", 6, "A-law", 7, "µ-law", 0x11, "ADPCM", 0x50, "MPEG", 0x55, "MP3", 0x92, "AC-3", 0xFF, "AAC");

    private final ByteBuffer bytes;
    private long longData = -1;

    WavWalk(ByteBuffer bytes) {
        this.bytes = bytes;
    }

    static byte[] subformatEnd() {
        byte[] end = new byte[SUBFORMAT_END.size()];
        for (int i = 0; i < end.length; i++) {
            end[i] = SUBFORMAT_END.get(i);
        }
        return end;
    }

    /// What the format chunk says.
    ///
    /// @param tag whole numbers or floating-point ones
    /// @param channels > 0
    /// @param rate samples a second
    /// @param bytesEach of one sample of one channel
    /// @param mask where channels are heard from; 0 where it isn't said
    private record Format(int tag, int channels, int rate, int bytesEach, long mask) {}

    Reading read() {
        long at = HEAD;
        long format = -1;
        while (at + CHUNK <= bytes.limit()) {
            int start = (int) at;
            String name = Wav.word(bytes, start);
            long length = Integer.toUnsignedLong(bytes.getInt(start + 4));
            if (name.equals("ds64") && start + CHUNK + 16 <= bytes.limit()) {
                longData = bytes.getLong(start + CHUNK + 8);
            } else if (name.equals("fmt ")) {
                format = at;
            } else if (name.equals("data")) {
                return format < 0
                        ? damaged("sound without a format before it")
                        : read((int) format, start + CHUNK, length);
            }
            at = next(at + CHUNK + length, length);
        }
        return new Refused(
                Kind.CUT_SHORT, format < 0 ? "a WAV file that ends before its format" : "no sound behind its head");
    }

    /// Where the chunk after one begins: at an even place; but some writers leave the filling byte out.
    private long next(long end, long length) {
        if (length % 2 == 0) {
            return end;
        }
        return !isName(end + 1) && isName(end) ? end : end + 1;
    }

    private boolean isName(long at) {
        if (at + CHUNK > bytes.limit()) {
            return false;
        }
        return Wav.word(bytes, (int) at).chars().allMatch(c -> c >= ' ' && c <= '~');
    }

    private static Refused damaged(String found) {
        return new Refused(Kind.DAMAGED, found);
    }

    private Reading read(int format, int data, long claimed) {
        long formatLength = Integer.toUnsignedLong(bytes.getInt(format + 4));
        if (formatLength < 16 || format + CHUNK + formatLength > data - CHUNK) {
            return damaged("a format of " + Wav.bytes(formatLength));
        }
        int at = format + CHUNK;
        int tag = Short.toUnsignedInt(bytes.getShort(at));
        int channels = Short.toUnsignedInt(bytes.getShort(at + 2));
        long rate = Integer.toUnsignedLong(bytes.getInt(at + 4));
        int block = Short.toUnsignedInt(bytes.getShort(at + 12));
        int bits = Short.toUnsignedInt(bytes.getShort(at + 14));
        long mask = 0;
        if (tag == EXTENSIBLE && formatLength >= 40) {
            mask = Integer.toUnsignedLong(bytes.getInt(at + 20));
            tag = subformat(at + 24);
        }
        if (tag != WHOLE && tag != FLOATING) {
            return new Refused(
                    Kind.COMPRESSED,
                    "sound that is compressed or coded, format " + tag
                            + (NAMES.containsKey(tag) ? " (" + NAMES.get(tag) + ")" : ""));
        }
        if (channels < 1 || channels > MOST_CHANNELS || rate < 1 || rate > MOST_RATE) {
            return damaged(channels + " channels of " + rate + " samples a second");
        }
        int each = block % channels == 0 ? block / channels : 0;
        boolean fits = tag == WHOLE ? each >= 1 && each <= 4 : each == 4 || each == 8;
        if (!fits || bits > 8 * each || bits <= 8 * each - 8) {
            return damaged("samples of " + bits + " bits in blocks of " + Wav.bytes(block) + " for " + channels
                    + (channels == 1 ? " channel" : " channels"));
        }
        return sound(new Format(tag, channels, (int) rate, each, mask), data, claimed);
    }

    /// The number of a plain format that a GUID stands for; one that is none where it stands for another.
    private int subformat(int at) {
        byte[] end = new byte[SUBFORMAT_END.size()];
        bytes.get(at + 2, end);
        for (int i = 0; i < end.length; i++) {
            if (end[i] != SUBFORMAT_END.get(i)) {
                return EXTENSIBLE;
            }
        }
        return Short.toUnsignedInt(bytes.getShort(at));
    }

    private Reading sound(Format format, int data, long claimed) {
        long there = (long) bytes.limit() - data;
        boolean isLong = Wav.isUnknown(claimed) && longData >= 0;
        long length = isLong ? longData : claimed;
        boolean isOpen = !isLong && (Wav.isUnknown(claimed) || claimed == 0);
        if (!isOpen && length > there) {
            return new Refused(
                    Kind.CUT_SHORT, "sound of " + Wav.bytes(length) + " by its head, of which " + there + " are there");
        }
        int block = format.channels() * format.bytesEach();
        long samples = (isOpen ? there : length) / block;
        WavSound sound = new WavSound(
                bytes.slice(data, (int) (samples * block)),
                format.rate(),
                format.mask() == 0
                        ? Speaker.ofCount(format.channels())
                        : Speaker.ofMask(format.mask(), format.channels()),
                format.tag() == FLOATING
                        ? WavSound.Form.ofFloating(format.bytesEach())
                        : WavSound.Form.ofWhole(format.bytesEach()));
        long odd = sound.findNoNumber();
        return odd >= 0
                ? damaged("a sample that is no number, the " + (odd + 1) + ". of all")
                : new Reading.Read(sound, format.mask() == 0 && format.channels() > 2 ? Places.USUAL : Places.TOLD);
    }
}
