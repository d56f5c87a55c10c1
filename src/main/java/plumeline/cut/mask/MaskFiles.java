package plumeline.cut.mask;

import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/// The files of a pass's masks: a table, and a matte picture and a drawing a frame.
///
/// `lines.csv`; `source/0086400.png` and `.svg` a captured frame, numbered by the timecode of the clip's frame as a
/// count; `screen/0000096.png` and `.svg` a screen frame of the film, numbered as in the plan, or
/// `screen-DELIVERY/…` of a delivery with a cut of its own; all under the shot's and the pass's name.
///
/// Bytes are made when they are asked for, each file on its own; several threads may ask.
public final class MaskFiles {
    private static final int MOST_KEPT = 4000;

    private final Masked masked;
    private final MaskNumbers numbers;

    /// Where nothing moves, one mask, picture and drawing serve all frames.
    private final Supplier<MaskFrame> still;

    /// Masks that more than one file may ask for, as outlines.
    private final Map<Long, MaskFrame> kept = new ConcurrentHashMap<>();

    private final Supplier<byte[]> painted;
    private final Supplier<byte[]> drawn;

    /// A file.
    ///
    /// @param name its name, with folders, `/` between them
    /// @param bytes what is in it
    public record MaskFile(String name, Supplier<byte[]> bytes) {}

    private MaskFiles(Masked masked, MaskNumbers numbers) {
        this.masked = masked;
        this.numbers = numbers;
        still = once(() -> masked.frame(0));
        painted = once(() -> MattePng.of(masked.size(), still.get().patches()));
        drawn = once(() -> MaskSvg.of(masked.size(), still.get().patches()));
    }

    /// Prepares a pass's files.
    ///
    /// @param masked the pass
    /// @param numbers its frames
    /// @return the files
    public static MaskFiles of(Masked masked, MaskNumbers numbers) {
        return new MaskFiles(masked, numbers);
    }

    /// Gives the folder that all of them are in.
    ///
    /// @return `SHOT`, or `SHOT.PASS`
    public String folder() {
        return masked.shot() + (masked.pass().isEmpty() ? "" : "." + masked.pass());
    }

    /// Counts the files.
    ///
    /// @return how many there are
    public long count() {
        return 1
                + 2
                        * (numbers.pastCaptured()
                                - numbers.firstCaptured()
                                + numbers.screens().size());
    }

    /// Gives the files one by one.
    ///
    /// @return the files; none is held
    public Iterable<MaskFile> files() {
        return this::iterator;
    }

    private Iterator<MaskFile> iterator() {
        Stream<MaskFile> table = Stream.of(new MaskFile(folder() + "/lines.csv", this::csv));
        Stream<MaskFile> sources = LongStream.range(numbers.firstCaptured(), numbers.pastCaptured())
                .boxed()
                .flatMap(captured -> pair("/source/", numbers.goFrame() + captured, captured));
        Stream<MaskFile> screens = numbers.screens().stream().flatMap(screen -> {
            String folder = screen.delivery().isEmpty() ? "/screen/" : "/screen-" + screen.delivery() + "/";
            return pair(folder, screen.frame(), screen.captured());
        });
        return Stream.concat(table, Stream.concat(sources, screens)).iterator();
    }

    private Stream<MaskFile> pair(String folder, long number, long captured) {
        String name = folder() + folder + digits(number);
        return Stream.of(
                new MaskFile(
                        name + ".png",
                        masked.isStill()
                                ? painted
                                : () -> MattePng.of(
                                        masked.size(), frame(captured).patches())),
                new MaskFile(
                        name + ".svg",
                        masked.isStill()
                                ? drawn
                                : () -> MaskSvg.of(
                                        masked.size(), frame(captured).patches())));
    }

    /// Works something out when it is first asked for, and keeps it.
    private static <T> Supplier<T> once(Supplier<T> work) {
        AtomicReference<Optional<T>> kept = new AtomicReference<>(Optional.empty());
        return () -> {
            Optional<T> found = kept.get();
            if (found.isEmpty()) {
                found = Optional.of(work.get());
                kept.set(found);
            }
            return found.get();
        };
    }

    private static String digits(long number) {
        String plain = Long.toString(Math.abs(number));
        return (number < 0 ? "-" : "") + "0".repeat(Math.max(0, 7 - plain.length())) + plain;
    }

    private MaskFrame frame(long captured) {
        if (masked.isStill()) {
            return still.get();
        }
        return kept.size() < MOST_KEPT || kept.containsKey(captured)
                ? kept.computeIfAbsent(captured, masked::frame)
                : masked.frame(captured);
    }

    private byte[] csv() {
        MaskCsv csv = new MaskCsv(masked);
        for (long captured = numbers.firstCaptured(); captured < numbers.pastCaptured(); captured++) {
            csv.add(new MaskCsv.Row("source", "", captured, captured, numbers.goFrame() + captured), frame(captured));
        }
        for (MaskNumbers.Screen screen : numbers.screens()) {
            csv.add(
                    new MaskCsv.Row("screen", screen.delivery(), screen.frame(), screen.captured(), screen.frame()),
                    frame(screen.captured()));
        }
        return csv.text().getBytes(StandardCharsets.UTF_8);
    }
}
