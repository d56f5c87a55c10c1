package plumeline.lesson;

import plumeline.text.Node;

/// Changes one item in a text of lessons and leaves the rest, comments too, as it was written. Good for a list with an
/// item a line or more; whoever uses it looks whether the result says what it should.
final class LessonEdit {
    private LessonEdit() {}

    static String append(Lessons lessons, Lesson lesson) {
        String text = lessons.text();
        if (lessons.written().isEmpty()) {
            return "";
        }
        Node.Mapping last = lessons.written().getLast().node();
        int at = lineEnd(text, last.place().end());
        String before = text.substring(0, at);
        String gap = before.endsWith("\n") ? "" : "\n";
        return before + gap + LessonWriter.item(lesson, indent(text, last)) + text.substring(at);
    }

    static String remove(Lessons lessons, int index) {
        String text = lessons.text();
        if (lessons.written().size() == 1) {
            return "";
        }
        Node.Mapping gone = lessons.written().get(index).node();
        return text.substring(0, lineStart(text, gone.place().start()))
                + text.substring(lineEnd(text, gone.place().end()));
    }

    private static String indent(String text, Node.Mapping item) {
        String line = text.substring(
                lineStart(text, item.place().start()), item.place().start());
        return " ".repeat(Math.max(0, line.indexOf('-')));
    }

    private static int lineStart(String text, int at) {
        return text.lastIndexOf('\n', at - 1) + 1;
    }

    /// Behind the line's end; where the last character was one, there.
    private static int lineEnd(String text, int at) {
        int end = text.indexOf('\n', Math.max(0, at - 1));
        return end < 0 ? text.length() : end + 1;
    }
}
