package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;

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
            return part != Spots.Part.LABEL;
        }

        @Override
        public Patch patch(Instant now, Spots.Part part) {
            double along = switch (part) {
                case LABEL, MIDDLE -> 0.5;
                case TOP -> 1 - Spots.EDGE_SHARE;
                case BASE -> Spots.EDGE_SHARE;
            };
            return CardGlow.patch(face(now), 0.5, along);
        }

        @Override
        public Optional<Quantity> findReflectance(Spots.Part part) {
            return shot.lights().get(index).light().written().findQuantity("reflects");
        }

        /// As seen from before it: its own right is to the left there.
        @Override
        public List<Patch> spots(Instant now) {
            Panel face = face(now);
            List<Patch> spots = new ArrayList<>();
            for (int row = 0; row < EACH_WAY; row++) {
                for (int column = 0; column < EACH_WAY; column++) {
                    spots.add(CardGlow.patch(face, 1 - Spots.inner(column), Spots.inner(row)));
                }
            }
            return spots;
        }
    }
}
