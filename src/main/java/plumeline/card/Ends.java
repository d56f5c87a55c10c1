package plumeline.card;

import plumeline.geom.Vec;
import plumeline.plan.Move;
import plumeline.plan.Named;
import plumeline.quantity.Print;

/// Where what moves stands at both ends of its move, and how far it has got between.
///
/// @param card the move's card
record Ends(MoveCard card) {
    private Move.Axis axis() {
        return card.move().axis();
    }

    private Vec way() {
        return card.stage().wayOf(card.axis().index(), card.si());
    }

    private double endSeconds() {
        return card.axis().lastSeconds();
    }

    private Vec place(double seconds) {
        for (Named carried : card.move().listCarried()) {
            int thing = card.stage().thingIndex(carried.name());
            int lamp = card.stage().lampIndex(carried.name());
            if (thing >= 0) {
                return card.scene(seconds).things().get(thing).pose().base();
            }
            if (lamp >= 0) {
                return card.scene(seconds).beams().get(lamp).aim().eye();
            }
        }
        return card.scene(seconds).aim().eye();
    }

    private String carried() {
        boolean isCamera = card.move().listCarried().isEmpty()
                || card.move().listCarried().stream()
                        .anyMatch(named -> named.name().equals("camera"));
        return isCamera
                ? "The lens point"
                : card.move().listCarried().getFirst().name();
    }

    String atGo() {
        return switch (axis()) {
            case SLIDE, LIFT ->
                carried() + " is " + card.place(place(0)) + ". GO is the " + end(way().times(-1)) + " end of its way.";
            case FOCUS -> "Focused " + focus(0) + " from the lens point.";
            case ZOOM -> "Focal length " + focal(0) + ".";
            case TURNTABLE -> "As it is set: 0 deg. The turntable card says how.";
            case PAN, TILT, ROLL -> "As it is set: 0 deg.";
        };
    }

    String atEnd() {
        return switch (axis()) {
            case SLIDE, LIFT ->
                card.figures().way(Math.abs(card.axis().at(endSeconds()))) + " on: " + CardWords.small(carried())
                        + " is " + card.place(place(endSeconds())) + ", at the " + end(way()) + " end.";
            case FOCUS -> "Focused " + focus(endSeconds()) + " from the lens point.";
            case ZOOM -> "Focal length " + focal(endSeconds()) + ".";
            case PAN, TILT, ROLL, TURNTABLE -> way(endSeconds()) + seen() + ".";
        };
    }

    private String seen() {
        return switch (axis()) {
            case PAN, TURNTABLE -> " seen from above";
            case ROLL -> " seen from behind it";
            default -> "";
        };
    }

    /// Which end of a rail or column a way leads to.
    private String end(Vec way) {
        double x = Math.abs(way.x());
        double y = Math.abs(way.y());
        if (Math.abs(way.z()) > Math.max(x, y)) {
            return way.z() > 0 ? "upper" : "lower";
        }
        return x >= y ? (way.x() > 0 ? "camera-right" : "camera-left") : (way.y() > 0 ? "far" : "crew's");
    }

    private String focus(double seconds) {
        return card.print().length(card.scene(seconds).picture().focusMetres());
    }

    private String focal(double seconds) {
        return card.print().length(card.scene(seconds).picture().lens().focalLengthMetres(), Print.Hand.MOTOR);
    }

    /// How far it has got since GO.
    String way(double seconds) {
        double si = card.axis().at(seconds);
        String size = card.figures().way(Math.abs(si));
        return switch (axis()) {
            case SLIDE, LIFT -> size;
            case PAN, ROLL, TURNTABLE -> CardWords.turned(si);
            case TILT -> CardWords.side(size, si, "up", "down", "0 deg");
            case FOCUS -> CardWords.side(size, si, "farther", "nearer", size);
            case ZOOM -> CardWords.side(size, si, "longer", "shorter", size);
        };
    }
}
