package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// What light falls on in a shot: a thing, or a card's front, as a backdrop is.
sealed interface LitThing {
    /// Places of a card that are judged, across and up.
    int EACH_WAY = 5;

    /// Gives the shot.
    Shot shot();

    /// Gives its name in the shot.
    String name();

    /// Says where on it light is judged: `hero's label`.
    String where();

    /// Tells whether it has a part.
    boolean has(Spots.Part part);

    /// Gives the middle of a part of it; of its side where it has no such part.
    Patch patch(Instant now, Spots.Part part);

    /// Gives the light on the middle of a part of it, as computed, or as metered there.
    default Lighting.Light light(Instant now, Spots.Part part) {
        return now.lighting().light(patch(now, part));
    }

    /// Finds what a part of it throws back, as written.
    Optional<Quantity> findReflectance(Spots.Part part);

    /// Gives places all over it: row by row from below, from left to right.
    List<Patch> spots(Instant now);

    /// A thing: on its label, or its side toward the camera.
    ///
    /// @param shot the shot
    /// @param index of the thing
    record OfThing(Shot shot, int index) implements LitThing {
        private Placed placed() {
            return shot.placed().get(index);
        }

        private Body body(Instant now) {
            return now.scene().things().get(index);
        }

        @Override
        public String name() {
            return placed().name();
        }

        @Override
        public String where() {
            return name() + (has(Spots.Part.LABEL) ? "'s label" : "'s side");
        }

        @Override
        public boolean has(Spots.Part part) {
            return part != Spots.Part.LABEL || placed().thing().label().isPresent();
        }

        @Override
        public Patch patch(Instant now, Spots.Part part) {
            return Spots.of(placed(), body(now), part, now.scene().aim().eye());
        }

        @Override
        public Optional<Quantity> findReflectance(Spots.Part part) {
            Written written = placed().thing().written();
            Optional<Quantity> own =
                    part == Spots.Part.LABEL ? written.findQuantity("label.reflects") : Optional.empty();
            return own.or(() -> written.findQuantity("reflects"));
        }

        @Override
        public Lighting.Light light(Instant now, Spots.Part part) {
            Lighting lighting = now.lighting();
            return Readings.over(lighting, shot.lights(), placed(), part, lighting.light(patch(now, part)));
        }

        @Override
        public List<Patch> spots(Instant now) {
            return Spots.over(placed(), body(now), now.scene().aim().eye());
        }
    }

    /// A card's or a flag's front.
    ///
    /// @param shot the shot
    /// @param index of it among the lights
    record OfCard(Shot shot, int index) implements LitThing {
        private Panel face(Instant now) {
            return Lamp.panel(shot.lights().get(index), now.scene().beams().get(index));
        }

        @Override
        public String name() {
            return shot.lights().get(index).name();
        }

        @Override
        public String where() {
            return name();
        }

        @Override
        public boolean has(Spots.Part part) {
            return part != Spots.Part.LABEL && part != Spots.Part.LID;
        }

        @Override
        public Patch patch(Instant now, Spots.Part part) {
            double along = switch (part) {
                case LABEL, LID, MIDDLE -> 0.5;
                case TOP -> 1 - Spots.EDGE_SHARE;
                case BASE -> Spots.EDGE_SHARE;
            };
            return CardGlow.patch(face(now), 0.5, along);
        }

        @Override
        public Optional<Quantity> findReflectance(Spots.Part part) {
            return shot.lights().get(index).light().written().findQuantity("reflects");
        }

        /// Over what of it is in the picture, all of it where nothing is; as seen from before it, where its own right
        /// is to the left.
        @Override
        public List<Patch> spots(Instant now) {
            Panel face = face(now);
            Framed framed = Framed.of(face, now.scene());
            List<Patch> spots = new ArrayList<>();
            for (int row = 0; row < EACH_WAY; row++) {
                for (int column = 0; column < EACH_WAY; column++) {
                    spots.add(CardGlow.patch(
                            face, framed.across(1 - Spots.inner(column)), framed.along(Spots.inner(row))));
                }
            }
            return spots;
        }
    }

    /// What of a card is in the picture: the upright rectangle on it about where the picture's four corners look,
    /// straight on.
    ///
    /// @param left where it begins, of the card's width from its own left, 0 to 1
    /// @param right where it ends
    /// @param low where it begins, of its height from its lower edge
    /// @param high where it ends
    record Framed(double left, double right, double low, double high) {
        private static final Framed ALL = new Framed(0, 1, 0, 1);

        static Framed of(Panel card, Scene scene) {
            Aim aim = scene.aim();
            Picture picture = scene.picture();
            double left = Double.POSITIVE_INFINITY;
            double right = Double.NEGATIVE_INFINITY;
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int corner = 0; corner < 4; corner++) {
                Vec way = aim.forward()
                        .plus(aim.right().times((corner % 2 - 0.5) * picture.widthTangent()))
                        .plus(aim.up().times(((corner < 2 ? 0 : 1) - 0.5) * picture.heightTangent()));
                double closing = -way.dot(card.facing());
                double apart = aim.eye().minus(card.middle()).dot(card.facing());
                if (!(closing > 0 && apart > 0)) {
                    return ALL;
                }
                Vec at = aim.eye().plus(way.times(apart / closing)).minus(card.middle());
                double across = at.dot(card.right()) / card.widthMetres() + 0.5;
                double along = at.dot(card.up()) / card.heightMetres() + 0.5;
                left = Math.min(left, across);
                right = Math.max(right, across);
                low = Math.min(low, along);
                high = Math.max(high, along);
            }
            boolean isOff = right <= 0 || left >= 1 || high <= 0 || low >= 1;
            return isOff ? ALL : new Framed(Math.max(0, left), Math.min(1, right), Math.max(0, low), Math.min(1, high));
        }

        double across(double share) {
            return left + share * (right - left);
        }

        double along(double share) {
            return low + share * (high - low);
        }
    }
}
