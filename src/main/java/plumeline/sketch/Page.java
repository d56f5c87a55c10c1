package plumeline.sketch;

import java.util.ArrayList;
import java.util.List;

/// The sheet of one drawing under construction: groups by id, then labels on top.
public final class Page {
    private final String id;
    private final String title;
    private final List<Markup> under;
    private final List<Markup> over;

    /// Opens a sheet.
    ///
    /// @param id its id, unique within a film's papers
    /// @param title what it shows, in words
    public Page(String id, String title) {
        this(id, title, new ArrayList<>(), new ArrayList<>());
    }

    private Page(String id, String title, List<Markup> under, List<Markup> over) {
        this.id = id;
        this.title = title;
        this.under = under;
        this.over = over;
    }

    /// Opens a part of the same sheet whose ids begin with a word of its own.
    ///
    /// @param word the word
    /// @return the part; what is drawn on it is on this sheet
    public Page part(String word) {
        return new Page(id(word), title, under, over);
    }

    /// Gives a part's id.
    ///
    /// @param part the mark, thing, lamp, want or delivery
    /// @return the sheet's id and the part's
    public String id(String part) {
        return id + "." + part;
    }

    /// Opens a group of the drawing that shows one mark, thing, lamp, want or delivery.
    ///
    /// @param part which
    /// @return the group, empty
    public Markup group(String part) {
        Markup group = Markup.of("g").with("id", id(part));
        under.add(group);
        return group;
    }

    /// Puts labels over all groups.
    ///
    /// @param labels the labels
    public void letter(List<Markup> labels) {
        over.addAll(labels);
    }

    /// Closes the sheet.
    ///
    /// @param width pixels
    /// @param height pixels
    /// @return the drawing
    public Drawing finish(double width, double height) {
        Markup svg = open(width, height).add(under).add(over);
        return new Drawing(id, title, (int) Math.ceil(width), (int) Math.ceil(height), svg);
    }

    /// Closes the sheet as line art upon a picture, each line and each leader on its white.
    ///
    /// @param picture the picture, beneath all that is drawn
    /// @param width pixels
    /// @param height pixels
    /// @return the drawing
    public Drawing finishUpon(Markup picture, double width, double height) {
        Markup svg = open(width, height)
                .add(picture)
                .add(under.stream().map(Halo::of).toList())
                .add(over.stream()
                        .map(each -> each.name().equals("line") ? Halo.of(each) : each)
                        .toList());
        return new Drawing(id, title, (int) Math.ceil(width), (int) Math.ceil(height), svg);
    }

    private Markup open(double width, double height) {
        int across = (int) Math.ceil(width);
        int down = (int) Math.ceil(height);
        return Markup.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("id", id)
                .with("role", "img")
                .with("aria-label", title)
                .with("width", across)
                .with("height", down)
                .with("viewBox", "0 0 " + across + " " + down)
                .with("font-family", "'DejaVu Sans Condensed', 'Arial Narrow', Arial, sans-serif")
                .with("font-size", Lettering.SIZE)
                .with("fill", "#000")
                .add(Markup.of("title", title));
    }
}
