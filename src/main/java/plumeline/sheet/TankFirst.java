package plumeline.sheet;

import java.util.Optional;
import plumeline.plan.TankPlace;
import plumeline.quantity.Print;
import plumeline.stage.TankWalls;
import plumeline.wet.CarriedTank;

/// Where the tank is put down before any mark is set: it can't be moved once there is water in it.
///
/// **Source:** common practice.
final class TankFirst {
    private TankFirst() {}

    static Optional<String> of(Subject subject) {
        return subject.shot()
                .findTank()
                .flatMap(tank -> findPlace(subject)
                        .map(place -> "Tank first (" + tank.tank().name() + "): " + place));
    }

    /// Where it stands, and what is done with it there.
    static Optional<String> findPlace(Subject subject) {
        return subject.shot()
                .findTank()
                .flatMap(tank -> subject.stage()
                        .findTank()
                        .map(walls -> said(words(tank, walls, subject.print()), CarriedTank.of(subject.plan(), tank))));
    }

    /// What forbids filling comes first: the head of a phone's page shows three lines.
    private static String said(String place, CarriedTank tank) {
        return tank.isToBeFilled()
                ? place + tank.filling()
                : tank.filling() + " " + LeewaySentence.capital(place.strip());
    }

    private static String words(TankPlace tank, TankWalls walls, Print print) {
        double middle = tank.at().getFirst().si();
        double front = walls.outside().low().y();
        double under = walls.outside().low().z();
        return "front face "
                + from(front, print, "toward the camera from the zero mark", "away from the camera, from the zero mark")
                + ", middle "
                + (Math.abs(middle) < NOTHING_METRES
                        ? "on the centreline"
                        : from(middle, print, "to camera left", "to camera right"))
                + (under > NOTHING_METRES ? "; its underside " + print.length(under) + " over the table top" : "")
                + ". ";
    }

    /// Less than this no tape shows.
    private static final double NOTHING_METRES = 0.0005;

    private static String from(double metres, Print print, String less, String more) {
        return print.length(Math.abs(metres)) + " " + (metres < 0 ? less : more);
    }
}
