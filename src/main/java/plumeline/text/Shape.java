package plumeline.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumeline.quantity.Kind;

/// The grammar of a text as data. One shape is read by the check, by the JSON Schema and by the documents.
public sealed interface Shape {
    /// A quantity of one kind: `66 mm`; a bare number for [Kind#NUMBER].
    ///
    /// @param kind what it measures
    /// @param range what is allowed
    /// @param mark whether it may be free
    record Amount(Kind kind, Range range, Mark mark) implements Shape {}

    /// Whether a quantity may be left to the solver.
    enum Mark {
        /// It must be given.
        FIXED,
        /// It may also be `free`, or `free between A and B`.
        FREE
    }

    /// A whole number without a unit.
    ///
    /// @param least the least allowed
    /// @param most the most allowed
    record Whole(long least, long most) implements Shape {}

    /// One of a few words.
    ///
    /// @param words the words, at least one
    /// @param letters how they may be written
    record Choice(List<String> words, Letters letters) implements Shape {
        /// Copies the list.
        public Choice {
            words = List.copyOf(words);
        }

        /// Makes a choice of words as they are written here.
        ///
        /// @param words the words, at least one
        public Choice(List<String> words) {
            this(words, Letters.AS_LISTED);
        }

        /// Makes a choice of names.
        ///
        /// @param words the names, at least one, parted by spaces
        /// @return the choice
        public static Choice inAnyCase(List<String> words) {
            return new Choice(words, Letters.ANY_CASE);
        }

        /// Tells whether a text is one of the words.
        ///
        /// @param text the text
        /// @return true where it is
        public boolean allows(String text) {
            return switch (letters) {
                case AS_LISTED -> words.contains(text);
                case ANY_CASE -> {
                    String name = text.strip().replace('_', ' ').replace('-', ' ');
                    yield words.stream().anyMatch(name::equalsIgnoreCase);
                }
            };
        }
    }

    /// How a choice's words may be written.
    enum Letters {
        /// As they are listed.
        AS_LISTED,
        /// In any case, joined by spaces, `_` or `-`.
        ANY_CASE
    }

    /// `yes` or `no`.
    record YesNo() implements Shape {}

    /// A quoted ratio: `"16:9"`.
    record RatioText() implements Shape {}

    /// A reference to one of the crew's own things by name: `[a-z0-9_-]+`. Whether it exists is for the reader to say.
    ///
    /// @param what what it names, with its article: `a lens`
    /// @param variants whether `name.variant` is allowed
    record Reference(String what, Variants variants) implements Shape {}

    /// Whether a reference may name a variant.
    enum Variants {
        /// A plain name only.
        NONE,
        /// A name, or a name, a dot and a variant's name.
        ALLOWED
    }

    /// Any text on one or more lines.
    ///
    /// @param longest the most characters allowed
    record Free(int longest) implements Shape {}

    /// A text of a certain pattern, such as a colour `#2a9d8f`.
    ///
    /// @param pattern a regular expression for the whole text, which JSON Schema understands too
    /// @param described what it is, with its article: `a colour`
    /// @param example one that is allowed
    record Written(String pattern, String described, String example) implements Shape {}

    /// A list of things of one shape.
    ///
    /// @param item each item's shape
    /// @param least the fewest allowed
    /// @param most the most allowed
    record Items(Shape item, int least, int most) implements Shape {}

    /// A list of a fixed few things, each with its own name: a position is x, y and perhaps z.
    ///
    /// @param parts in order
    /// @param least how many must be given
    record Tuple(List<Part> parts, int least) implements Shape {
        /// Copies the list.
        public Tuple {
            parts = List.copyOf(parts);
        }
    }

    /// One part of a tuple.
    ///
    /// @param name as messages and marks say it: `x`
    /// @param shape its shape
    record Part(String name, Shape shape) {}

    /// A list of `[where, value]`, where never goes down.
    ///
    /// @param where the first of each pair
    /// @param value the second of each pair
    /// @param least the fewest pairs
    record Curve(Shape where, Shape value, int least) implements Shape {}

    /// A map of known keys.
    ///
    /// @param keys the keys in the order in which messages and documents list them
    /// @param rules which of them go together
    record Keys(List<Key> keys, List<Rule> rules) implements Shape {
        /// Copies the lists.
        public Keys {
            keys = List.copyOf(keys);
            rules = List.copyOf(rules);
        }

        /// Makes a map of known keys without further rules.
        ///
        /// @param keys the keys
        /// @return the shape
        public static Keys of(Key... keys) {
            return new Keys(List.of(keys), List.of());
        }

        /// Adds rules.
        ///
        /// @param more the rules
        /// @return the shape
        public Keys with(Rule... more) {
            return new Keys(keys, List.of(more));
        }
    }

    /// Whether a key must be there.
    enum Need {
        /// It must.
        REQUIRED,
        /// It may be left out.
        OPTIONAL
    }

    /// A known key.
    ///
    /// @param name the key
    /// @param need whether it must be there
    /// @param doc one line that says what it is
    /// @param shape its value's shape
    /// @param hint what messages say to try, as it follows "Try "; empty for the shape's own example
    /// @param code the code of problems with its range; empty for the common one
    record Key(String name, Need need, String doc, Shape shape, String hint, String code) {
        /// Makes a key that must be there.
        ///
        /// @param name the key
        /// @param doc one line that says what it is
        /// @param shape its value's shape
        /// @return the key
        public static Key required(String name, String doc, Shape shape) {
            return new Key(name, Need.REQUIRED, doc, shape, "", "");
        }

        /// Makes a key that may be left out.
        ///
        /// @param name the key
        /// @param doc one line that says what it is
        /// @param shape its value's shape
        /// @return the key
        public static Key optional(String name, String doc, Shape shape) {
            return new Key(name, Need.OPTIONAL, doc, shape, "", "");
        }

        /// Adds what a problem with this key says to try, and its own code.
        ///
        /// @param ownHint as it follows "Try ", without a full stop: `the value engraved on the lens, such as
        /// 50 mm`
        /// @param ownCode the code of problems with its range: `P-LENS-01`; empty for the common one
        /// @return the key
        public Key hint(String ownHint, String ownCode) {
            return new Key(name, need, doc, shape, ownHint, ownCode);
        }
    }

    /// Which keys of a map go together.
    sealed interface Rule {
        /// Exactly one of these groups is there, wholly, and no key of another group with it.
        ///
        /// @param groups each a list of keys
        record ExactlyOne(List<List<String>> groups) implements Rule {}

        /// At most one of these keys is there.
        ///
        /// @param keys the keys
        record AtMostOne(List<String> keys) implements Rule {}

        /// At least one of these keys is there.
        ///
        /// @param keys the keys
        record AtLeastOne(List<String> keys) implements Rule {}

        /// Where the first key is there, so is the second.
        ///
        /// @param key the first
        /// @param other the second
        record Needs(String key, String other) implements Rule {}
    }

    /// A map of the crew's own names, each with a value of one shape.
    ///
    /// @param what what is named, with its article: `a lens`
    /// @param value each value's shape
    record Named(String what, Shape value) implements Shape {}

    /// A map whose keys are dotted paths into another shape, each with a value that could stand there.
    ///
    /// @param target what the paths lead into
    record Overrides(Shape target) implements Shape {}

    /// A map with exactly one of several words as a key. The word decides which further keys there may be.
    ///
    /// @param what what the word is, with its article: `a want word`
    /// @param words the words
    /// @param common the keys that every word takes
    record OneWord(String what, List<Word> words, List<Key> common) implements Shape {
        /// Copies the lists.
        public OneWord {
            words = List.copyOf(words);
            common = List.copyOf(common);
        }

        /// Finds the entry that is most likely meant as the word where no word is there: the first whose key is near
        /// one and no further key itself.
        ///
        /// @param mapping the map
        /// @return the entry
        public Optional<Node.Entry> findMisspelt(Node.Mapping mapping) {
            List<Node.Entry> near = new ArrayList<>();
            Set<String> further = new HashSet<>();
            List<String> subjects = new ArrayList<>();
            for (Word word : words) {
                subjects.add(word.subject().name());
                word.further().forEach(key -> further.add(key.name()));
            }
            common.forEach(key -> further.add(key.name()));
            for (Node.Entry entry : mapping.entries()) {
                if (Nearest.find(entry.key(), subjects).isPresent()) {
                    near.add(entry);
                }
            }
            return near.stream().filter(e -> !further.contains(e.key())).findFirst();
        }
    }

    /// One word of a [OneWord].
    ///
    /// @param subject the word as a key, with its value's shape
    /// @param further the keys that only this word takes
    record Word(Key subject, List<Key> further) {
        /// Copies the list.
        public Word {
            further = List.copyOf(further);
        }

        /// Makes a word.
        ///
        /// @param subject the word as a key
        /// @param further its keys
        /// @return the word
        public static Word of(Key subject, Key... further) {
            return new Word(subject, List.of(further));
        }
    }

    /// One of several shapes, told apart by their form: text, list or map; kind of quantity; word or name.
    ///
    /// @param shapes the shapes; where two fit the form, the first that fits wholly is taken
    record AnyOf(List<Shape> shapes) implements Shape {
        /// Copies the list.
        public AnyOf {
            shapes = List.copyOf(shapes);
        }

        /// Makes a choice of shapes.
        ///
        /// @param shapes the shapes
        /// @return the choice
        public static AnyOf of(Shape... shapes) {
            return new AnyOf(List.of(shapes));
        }
    }
}
