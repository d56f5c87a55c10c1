package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.plan.TankPlace;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.water.TankCheck;
import plumeline.wet.CarriedTank;
import plumeline.wet.Lacks;

/// A tank's panes carry its water, and the table the tank. The best that is said is that no objection was found.
///
/// Margin: the safety factor over 3.8. No mark bears on it. Where the floor pane's own weight would use it up it is
/// tight; where a pane is no thin plate, unknown; a table that is too small or too weak fails whatever the margin.
///
/// @param line as written
/// @param tank what panes and table bear
record TankCarries(WantLine line, CarriedTank.Computed tank) implements Want {
    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, Plan plan, Optional<TankPlace> place) {
        String name = line.subjects().getFirst().name();
        if (place.filter(tank -> tank.tank().name().equals(name)).isEmpty()) {
            return new NotComputed(line, name + " isn't the shot's tank.");
        }
        return switch (CarriedTank.of(plan, place.get())) {
            case CarriedTank.Computed computed -> new TankCarries(line, computed);
            case CarriedTank.Unjudged unjudged ->
                new NotComputed(
                        line,
                        unjudged.table()
                                .findLack(unjudged.load())
                                .map(lack -> lack + " " + unjudged.reason())
                                .orElse(unjudged.reason()));
            case CarriedTank.Unread(String reason) -> new NotComputed(line, reason);
        };
    }

    @Override
    public String unit() {
        return "1";
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {tank.found().safetyFactor() - TankCheck.LEAST_FACTOR};
    }

    @Override
    public boolean restsOnMarks() {
        return false;
    }

    @Override
    public boolean isSafety() {
        return true;
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        return tank.findLack().map(lack -> (tank.isStrong() ? "" : stands() + ". ") + lack);
    }

    private String stands() {
        return tank.name() + "'s " + tank.pressed() + ": a safety factor of " + tank.factor() + "; 3.8 is asked for";
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        if (!tank.isStrong()) {
            return Optional.of(stands() + ". Don't fill it so. " + CarriedTank.Computed.remedy());
        }
        return Optional.of(tank.findTight().isPresent() ? stands() + "." : stands() + ", and no objection was found.");
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        return tank.findTight();
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        return Optional.of(cautions());
    }

    private String cautions() {
        List<String> all = new ArrayList<>();
        if (!tank.table().isRated()) {
            all.add("Hold " + CarriedTank.kilograms(tank.found().load().totalKilograms())
                    + " against the table's own rating: write what it carries.");
        }
        tank.findMembrane().ifPresent(all::add);
        all.addAll(CarriedTank.listCautions(tank.found().load()));
        all.add(Lacks.assumed(tank.assumed()));
        return String.join(" ", all).strip();
    }
}
