package plumeline.cli;

import java.util.Optional;
import plumeline.plume.InkCourse;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;

/// What `ink` was asked for.
record InkOptions(InkCourse course, int runs, int threads) {
    private static final int RUNS = 5;
    private static final int MOST_RUNS = 50;
    private static final int MOST_THREADS = 256;

    static InkOptions read(Arguments given) throws Refusal {
        double cells = quantity(given, "--cells", Kind.LENGTH, 0.001, 0.02, "1 mm to 20 mm, such as 4 mm")
                .map(Quantity::si)
                .orElse(InkCourse.CELL_METRES);
        Optional<Quantity> until =
                quantity(given, "--until", Kind.TIME, 1e-3, 600, "a time from the release to 600 s, such as 2.5 s");
        long seed = whole(given, "--seed", 1, Integer.MAX_VALUE).orElse(1L);
        int runs = whole(given, "--runs", 1, MOST_RUNS).orElse((long) RUNS).intValue();
        int threads = whole(given, "--threads", 1, MOST_THREADS)
                .orElse((long) Runtime.getRuntime().availableProcessors())
                .intValue();
        InkCourse.Until end =
                until.isPresent() ? new InkCourse.Until.Time(until.get().si()) : new InkCourse.Until.ShotAndFloor();
        return new InkOptions(new InkCourse(cells, seed, end), runs, Math.min(threads, MOST_THREADS));
    }

    private static Optional<Quantity> quantity(
            Arguments given, String option, Kind kind, double least, double most, String allowed) throws Refusal {
        Optional<String> text = given.findValue(option);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (Quantities.read(text.get()) instanceof Reading.Read read
                && read.quantity().kind() == kind
                && read.quantity().si() >= least * (1 - 1e-9)
                && read.quantity().si() <= most * (1 + 1e-9)) {
            return Optional.of(read.quantity());
        }
        throw new Refusal(option + " is " + text.get() + "; must be " + allowed, "Mind the unit.");
    }

    private static Optional<Long> whole(Arguments given, String option, long least, long most) throws Refusal {
        Optional<String> text = given.findValue(option);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (text.get().matches("[0-9]{1,10}")) {
            long number = Long.parseLong(text.get());
            if (number >= least && number <= most) {
                return Optional.of(number);
            }
        }
        throw new Refusal(
                option + " is " + text.get() + "; must be a whole number from " + least + " to " + most,
                "Leave it out for the usual.");
    }
}
