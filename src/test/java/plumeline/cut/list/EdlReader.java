package plumeline.cut.list;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads an edit decision list by the grammar in reference/time.md, part B; shares nothing with the writer. What the
/// grammar doesn't know is an error.
final class EdlReader {
    private static final Pattern LABEL = Pattern.compile("(\\d\\d):(\\d\\d):(\\d\\d)([:;])(\\d\\d)");
    private static final Pattern MOTION =
            Pattern.compile("M2\\s+(\\S+)\\s+(-?\\d+\\.\\d)\\s+(\\d\\d:\\d\\d:\\d\\d:\\d\\d)");
    private static final Pattern LOCATOR = Pattern.compile("\\* MARK: (\\S+) (.*)");

    /// One line of an event with what follows it.
    static final class Event {
        String number = "";
        String reel = "";
        String track = "";
        String kind = "";
        long transition;
        long sourceIn;
        long sourceOut;
        long recordIn;
        long recordOut;
        boolean hasSpeed;
        double speed;
        String speedFrom = "";
        final List<String> comments = new ArrayList<>();
        final List<String> markers = new ArrayList<>();

        long record() {
            return recordOut - recordIn;
        }

        long source() {
            return sourceOut - sourceIn;
        }

        String comment(String word) {
            return comments.stream()
                    .filter(line -> line.startsWith("* " + word + ": "))
                    .map(line -> line.substring(word.length() + 4))
                    .findFirst()
                    .orElse("");
        }
    }

    private final int labels;
    final List<Event> events = new ArrayList<>();
    String title = "";
    boolean drops;

    private EdlReader(int labels) {
        this.labels = labels;
    }

    /// @param labels how many frames a second has labels for
    static EdlReader read(String text, int labels) {
        EdlReader reader = new EdlReader(labels);
        for (String line : text.split("\r?\n")) {
            reader.line(line.strip());
        }
        return reader;
    }

    private void line(String line) {
        if (line.isEmpty()) {
            return;
        }
        if (!line.chars().allMatch(c -> c >= ' ' && c < 0x7f || c == '\t')) {
            throw new AssertionError("not ASCII: " + line);
        }
        if (line.startsWith("TITLE:")) {
            title = line.substring(6).strip();
        } else if (line.equals("FCM: DROP FRAME") || line.equals("FCM: NON-DROP FRAME")) {
            drops = line.equals("FCM: DROP FRAME");
        } else if (Character.isDigit(line.charAt(0))) {
            event(line.split("[ \t]+"));
        } else if (line.startsWith("M2")) {
            motion(line);
        } else if (line.startsWith("*") && !events.isEmpty()) {
            comment(line);
        } else {
            throw new AssertionError("no line of a list: " + line);
        }
    }

    private void event(String[] words) {
        Event event = new Event();
        if (words.length != 8 && words.length != 9) {
            throw new AssertionError("an event of " + words.length + " words");
        }
        event.number = words[0];
        event.reel = words[1];
        event.track = words[2];
        event.kind = words[3];
        event.transition = words.length == 9 ? Long.parseLong(words[4]) : 0;
        int at = words.length - 4;
        event.sourceIn = frame(words[at]);
        event.sourceOut = frame(words[at + 1]);
        event.recordIn = frame(words[at + 2]);
        event.recordOut = frame(words[at + 3]);
        events.add(event);
    }

    private void motion(String line) {
        Matcher motion = MOTION.matcher(line);
        Event event = events.getLast();
        if (!motion.matches() || !motion.group(1).equals(event.reel) || event.hasSpeed) {
            throw new AssertionError("no speed of " + event.number + ": " + line);
        }
        event.hasSpeed = true;
        event.speed = Double.parseDouble(motion.group(2));
        event.speedFrom = motion.group(3);
    }

    private void comment(String line) {
        Matcher locator = LOCATOR.matcher(line);
        if (line.startsWith("* MARK") && !locator.matches()) {
            throw new AssertionError("no marker: " + line);
        }
        if (line.startsWith("* MARK")) {
            events.getLast().markers.add(frame(locator.group(1)) + " " + locator.group(2));
        } else {
            events.getLast().comments.add(line);
        }
    }

    /// A label's frame, counted out minute by minute where labels are dropped; or a frame's number.
    long frame(String word) {
        if (word.matches("\\d+")) {
            return Long.parseLong(word);
        }
        Matcher label = LABEL.matcher(word);
        if (!label.matches() || label.group(4).equals(";") != drops) {
            throw new AssertionError("no label: " + word);
        }
        long minutes = 60 * Long.parseLong(label.group(1)) + Long.parseLong(label.group(2));
        long left = 0;
        for (long minute = 1; drops && minute <= minutes; minute++) {
            left += minute % 10 == 0 ? 0 : labels / 15;
        }
        return labels * (60 * minutes + Long.parseLong(label.group(3))) + Long.parseLong(label.group(5)) - left;
    }
}
