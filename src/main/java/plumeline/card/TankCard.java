package plumeline.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.optics.TankView;
import plumeline.plan.Kit;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.water.TankCheck;
import plumeline.water.TankLoad;
import plumeline.water.TankTimes;
import plumeline.wet.CarriedTank;

/// What stands on the table with the tank, what its panes bear, how long it takes, how the product looks in it.
///
/// **Source:** common practice for cautions and resets; figures from [TankCheck], [TankTimes] and [TankView].
///
/// @param id the card's id
/// @param shot the shot; it has a tank
/// @param tank what tank and table bear
/// @param scene the shot at its start
/// @param wet the things in the water, by index
/// @param print the papers' figures
record TankCard(String id, Shot shot, CarriedTank tank, Scene scene, List<Integer> wet, Print print) {
    private static final TankTimes.Hose MILLIMETRE_HOSE = new TankTimes.Hose(0.012, 2, 0.7);
    private static final TankTimes.Hose INCH_HOSE = new TankTimes.Hose(0.0127, 80 * 0.0254, 28 * 0.0254);
    private static final double SQUARE_FOOT_METRES2 = 0.3048 * 0.3048;

    /// The piece of a ruler that is looked at through the lens.
    private static final double MILLIMETRE_RULER = 0.1;

    private static final double INCH_RULER = 4 * 0.0254;

    TankCard {
        wet = List.copyOf(wet);
    }

    Card card() {
        List<Card.Part> parts = new ArrayList<>();
        if (!tank.isToBeFilled()) {
            parts.add(new Card.Part.Say(tank.filling()));
        }
        switch (tank) {
            case CarriedTank.Unread(String reason) -> parts.add(new Card.Part.Ask("Water", "not known. " + reason));
            case CarriedTank.Unjudged(TankLoad load, CarriedTank.Table table, String reason) -> {
                parts.add(new Card.Part.Fact("Panes", "not known. " + reason));
                stands(parts, load, table);
                masses(parts, load);
                times(parts, load);
            }
            case CarriedTank.Computed computed -> {
                TankLoad load = computed.found().load();
                panes(parts, computed);
                stands(parts, load, computed.table());
                masses(parts, load);
                times(parts, load);
            }
        }
        reset(parts);
        rulers(parts);
        return new Card(id, "Tank card: " + kit().name(), cautions(), parts);
    }

    private Kit.Tank kit() {
        return shot.findTank().orElseThrow().tank();
    }

    private List<String> cautions() {
        List<String> all = new ArrayList<>(
                switch (tank) {
                    case CarriedTank.Unread _ -> CarriedTank.listCautions();
                    case CarriedTank.Unjudged unjudged -> CarriedTank.listCautions(unjudged.load());
                    case CarriedTank.Computed computed ->
                        CarriedTank.listCautions(computed.found().load());
                });
        all.add(
                all.size() - 1,
                "Shoes on, cut-proof gloves for shards, a bin for them at hand. Plugs and distributors off the floor"
                        + " and higher than any spill."
                        + (tank.isToBeFilled() ? " Fill slowly, feet and cables out from under it." : ""));
        return all;
    }

    private void masses(List<Card.Part> parts, TankLoad load) {
        parts.add(new Card.Part.Fact(
                "Water",
                (tank.isToBeFilled() ? "fill to " : "") + print.length(load.depthMetres()) + " over its floor of "
                        + print.lengthNumber(load.tank().lengthMetres(), Print.Hand.TAPE) + " × "
                        + print.length(load.tank().widthMetres()) + ": "
                        + Figures.litres(load.volumeMetres3()) + ", " + CarriedTank.kilograms(load.liquidKilograms())
                        + "; " + CarriedTank.buckets(load) + " times a 10 l bucket."));
        parts.add(new Card.Part.Fact(
                "In all",
                CarriedTank.kilograms(load.totalKilograms()) + ", of that the empty tank "
                        + CarriedTank.kilograms(load.emptyKilograms()) + "."));
    }

    private void panes(List<Card.Part> parts, CarriedTank.Computed computed) {
        parts.add(new Card.Part.Fact(
                "Panes",
                verdict(computed) + ": factor " + computed.factor() + ", 3.8 is asked for; the " + computed.pressed()
                        + "."
                        + (computed.isStrong() ? "" : " " + CarriedTank.Computed.remedy())
                        + computed.findTight().map(text -> " " + text).orElse("")));
        if (!computed.assumed().isEmpty()) {
            parts.add(new Card.Part.Fact("Assumed", String.join("; ", computed.assumed()) + ": look."));
        }
        TankCheck.Finding bent = computed.found().mostBent();
        parts.add(new Card.Part.Fact(
                "Bow",
                CarriedTank.Computed.panes(bent.place()) + ", "
                        + print.difference(bent.bending().deflectionMetres(), Print.Hand.MOTOR)
                        + " at most; one that can be seen with bare eyes is too much: stop and drain."
                        + computed.findMembrane().map(text -> " " + text).orElse("")));
    }

    private static String verdict(CarriedTank.Computed computed) {
        if (!computed.isStrong()) {
            return "fails";
        }
        return computed.findTight().isPresent() ? "tight" : "no objection found";
    }

    private void stands(List<Card.Part> parts, TankLoad load, CarriedTank.Table table) {
        double perMetre2 = load.totalKilograms() / load.tank().footprintMetres2();
        double perFoot2 = perMetre2 * SQUARE_FOOT_METRES2;
        String spread = Figures.isMetric(print)
                ? CarriedTank.kilograms(perMetre2) + " on a square metre"
                : CarriedTank.kilograms(perFoot2) + " on a square foot";
        String all = CarriedTank.kilograms(load.totalKilograms()) + ", as much as " + spread;
        if (!table.isRated()) {
            parts.add(new Card.Part.Ask("Table", "bears " + all + ". What it may carry is not known: read its rating"));
            return;
        }
        String may = "; it may carry " + CarriedTank.kilograms(table.carriesKilograms()) + ".";
        String lack = table.findLack(load).map(text -> ". " + text).orElse(may);
        parts.add(new Card.Part.Fact("Table", "bears " + all + lack));
    }

    private void times(List<Card.Part> parts, TankLoad load) {
        if (!tank.isToBeFilled()) {
            return;
        }
        double fill = TankTimes.fillSeconds(load.volumeMetres3(), TankTimes.TAP_METRES3_PER_SECOND);
        parts.add(new Card.Part.Ask(
                "Fill", "about " + Figures.minutes(fill) + " at 10 l/min. Your tap, litres a minute"));
        TankTimes.Hose hose = Figures.isMetric(print) ? MILLIMETRE_HOSE : INCH_HOSE;
        double drain = TankTimes.drainSeconds(load, hose, TankTimes.TAP_WATER_METRES2_PER_SECOND);
        parts.add(new Card.Part.Fact(
                "Drain",
                "about " + Figures.minutes(drain) + " by " + print.length(hose.boreMetres()) + " hose, "
                        + print.length(hose.lengthMetres()) + " long, ending " + print.length(hose.dropMetres())
                        + " lower."));
        TankTimes.Stillness still = TankTimes.stillness(load);
        double first = Math.min(still.eddySeconds(), still.swirlSeconds());
        double last = Math.max(still.eddySeconds(), still.swirlSeconds());
        parts.add(new Card.Part.Fact(
                "Still",
                "waves are gone after " + Figures.minutes(still.waveSeconds()) + " at most, currents after "
                        + Figures.minutes(first) + " to " + Figures.minutes(last)
                        + ", roughly: look with a drop of dye."));
    }

    private void reset(List<Card.Part> parts) {
        TankReset reset = TankReset.of(shot);
        parts.add(new Card.Part.Ask("Reset", reset.least() + " to " + reset.most() + " min, typical. Yours"));
    }

    /// How a thing is seen, and what a ruler in its place must show.
    private record Look(boolean isKnown, String text) {
        private static Look unknown(String why) {
            return new Look(false, "not known, as " + why + ": its share of the picture's height");
        }

        private Card.Part part(String names) {
            return isKnown
                    ? new Card.Part.Fact("Ruler at " + names, text)
                    : new Card.Part.Ask("Ruler at " + names, text);
        }
    }

    /// Of more things than two the nearest and the farthest do.
    private void rulers(List<Card.Part> parts) {
        Map<Look, String> looks = new LinkedHashMap<>();
        wet.stream()
                .sorted(Comparator.comparingDouble(i -> scene.things()
                        .get(i)
                        .middle()
                        .distanceMetres(scene.aim().eye())))
                .forEach(i -> looks.merge(look(i), shot.placed().get(i).name(), (one, other) -> one + ", " + other));
        List<Card.Part> all = new ArrayList<>();
        looks.forEach((look, names) -> all.add(look.part(names)));
        if (!all.isEmpty()) {
            parts.add(all.getFirst());
        }
        if (all.size() > 1) {
            parts.add(all.getLast());
        }
    }

    private Look look(int thing) {
        Body body = scene.things().get(thing);
        Sightlines.Seeing seeing = scene.lines().at(List.of(body));
        if (!seeing.isCovered()) {
            return Look.unknown(why(seeing.trouble()));
        }
        if (!(seeing.projection() instanceof TankView view)) {
            return Look.unknown("it is seen past the tank");
        }
        Vec middle = body.middle();
        double ruler = Figures.isMetric(print) ? MILLIMETRE_RULER : INCH_RULER;
        double behind = -view.wall().normal().dot(middle.minus(view.wall().through()))
                - view.water().glassMetres();
        double nearer = view.apparent(middle).distanceMetres(middle);
        Vec half = Vec.UP.times(ruler / 2);
        double share = (view.project(middle.plus(half)).y()
                        - view.project(middle.minus(half)).y())
                / scene.picture().heightTangent();
        return new Look(
                true,
                "middle " + print.length(behind) + " behind the glass, looks " + print.length(nearer) + " nearer; "
                        + print.length(ruler) + " of ruler upright there: " + Print.share(share, 0)
                        + " of the picture's height.");
    }

    private static String why(Sightlines.Trouble trouble) {
        return switch (trouble) {
            case SURFACE -> "it is seen through the water's surface";
            case WATER_LINE -> "the water line cuts it";
            case OTHER_WALL, NONE -> "it is seen over the rim or through another wall";
        };
    }
}
