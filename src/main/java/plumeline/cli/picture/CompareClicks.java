package plumeline.cli.picture;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumeline.desk.Arguments;
import plumeline.desk.Console;
import plumeline.desk.PlainFile;
import plumeline.desk.Refusal;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;
import plumeline.resect.Resection;

/// The places clicked, as they are typed or stand in a file: `first.top.left=812,344`, one a line there.
final class CompareClicks {
    private static final String FORM = "NAME=X,Y, in pixels from the still's upper left corner";
    private static final Pattern CLICK = Pattern.compile(
            "([a-z0-9_.-]+)\\s*[=\\s]\\s*(-?[0-9]+(?:\\.[0-9]+)?)\\s*[,\\s]\\s*(-?[0-9]+(?:\\.[0-9]+)?)");

    private CompareClicks() {}

    static List<Resection.Click> of(Arguments given, Console console) throws Refusal, IOException {
        List<Resection.Click> clicks = new ArrayList<>();
        for (String words : given.listValues("--point")) {
            for (String word : words.split("\\s+")) {
                clicks.add(click(word, "--point " + word));
            }
        }
        Optional<String> file = given.findValue("--points");
        if (file.isPresent()) {
            PlainFile.Content content = PlainFile.read(file.get(), console);
            List<String> lines =
                    new String(content.bytes().toArray(), UTF_8).lines().toList();
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i).replaceFirst("#.*", "").strip();
                if (!line.isEmpty()) {
                    clicks.add(click(line, content.name() + ", line " + (i + 1) + ": " + line));
                }
            }
        }
        return clicks;
    }

    private static Resection.Click click(String text, String where) throws Refusal {
        Matcher found = CLICK.matcher(text);
        if (!found.matches()) {
            throw new Refusal(where + " is no point; must be " + FORM, "Such as first.top.left=812,344.5.");
        }
        return new Resection.Click(
                found.group(1), Double.parseDouble(found.group(2)), Double.parseDouble(found.group(3)));
    }

    /// How far a click may be off, pixels.
    static double errorPixels(Arguments given, double usual) throws Refusal {
        Optional<String> text = given.findValue("--click-error");
        if (text.isEmpty()) {
            return usual;
        }
        if (Quantities.read(text.get()) instanceof Reading.Read(Quantity error)
                && (error.kind() == Kind.PIXELS || error.kind() == Kind.NUMBER)
                && error.si() >= 0.1
                && error.si() <= 100) {
            return error.si();
        }
        throw new Refusal(
                "--click-error is " + text.get() + "; must be from 0.1 px to 100 px",
                "Such as --click-error \"2 px\".");
    }
}
