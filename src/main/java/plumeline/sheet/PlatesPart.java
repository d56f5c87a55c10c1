package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import plumeline.cut.mask.PlateNeed;
import plumeline.sketch.Markup;

/// The clean plates that masks ask for: what to record, without what, and how.
final class PlatesPart {
    private PlatesPart() {}

    static Markup section(List<PostPapers.Plate> plates) {
        Markup section = Markup.of("section", Markup.of("h1", "Masks and clean plates"))
                .with("class", "shot")
                .with("id", "plates");
        for (PostPapers.Plate told : plates) {
            PlateNeed plate = told.need();
            section.add(Markup.of("h2", plate.shot() + (plate.pass().isEmpty() ? "" : ", " + plate.pass())));
            if (!plate.cautions().isEmpty()) {
                section.add(Markup.of("div", Rows.bullets(plate.cautions())).with("class", "caution"));
            }
            List<String> lines = new ArrayList<>();
            lines.add("Without " + String.join(", ", plate.without()) + ": " + plate.frames() + " frames"
                    + switch (plate.sort()) {
                        case STILL -> " of the still picture.";
                        case MOVED -> " of the whole move.";
                    });
            lines.addAll(plate.does());
            lines.addAll(told.masks());
            section.add(Rows.bullets(lines));
        }
        return section;
    }
}
