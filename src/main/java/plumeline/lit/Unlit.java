package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.light.Patch;

/// Why the light on places isn't known.
final class Unlit {
    /// So much light of a lamp set to a hue may be missing before it counts: a tenth of a stop.
    private static final double MINOR_SHARE = 0.07;

    private Unlit() {}

    /// Why the light on places isn't known.
    static Optional<String> find(Lighting lighting, List<Patch> patches) {
        Optional<String> lacking = findLacking(lighting.lamps());
        if (lacking.isPresent()) {
            return lacking;
        }
        if (patches.stream().anyMatch(lighting::isThroughTank)) {
            return Optional.of(
                    "Not computed: light that goes through the tank and out again. Meter it there in a trial.");
        }
        return findHued(lighting, patches);
    }

    /// Why nothing is known of the light, whatever the marks.
    static Optional<String> findLacking(List<Lamp> lamps) {
        if (lamps.isEmpty()) {
            return Optional.of("Not known: the shot has no light. Place one under lights.");
        }
        List<String> lacking = new ArrayList<>();
        for (Lamp lamp : lamps) {
            if (lamp instanceof Lamp.Unknown(String name, Lamp.Lack lack)) {
                lacking.add(
                        switch (lack) {
                            case GIVES -> "what " + name + " gives";
                            case FILE -> "what " + name + " gives: its file isn't read in a plan yet";
                        });
            }
        }
        return lacking.isEmpty()
                ? Optional.empty()
                : Optional.of("Not known: " + String.join(", ", lacking)
                        + ". Meter each at full level and write it with its lamp: gives: 900 lx at 1 m measured.");
    }

    private static Optional<String> findHued(Lighting lighting, List<Patch> patches) {
        for (Patch patch : patches) {
            double[] lux = lighting.lux(patch);
            double white = 0;
            double hued = 0;
            String name = "";
            for (int i = 0; i < lux.length; i++) {
                boolean isHued =
                        lighting.lamps().get(i) instanceof Lamp.Known lamp && lamp.colour() == Lamp.Colour.HUED;
                white += isHued ? 0 : lux[i];
                hued += isHued ? lux[i] : 0;
                name = isHued && lux[i] > 0 ? lighting.lamps().get(i).name() : name;
            }
            if (hued > MINOR_SHARE * white && hued > 0) {
                return Optional.of("Not computed: how much less " + name
                        + " gives at its hue. Meter it at that hue, and" + " write that lamp without hue.");
            }
        }
        return Optional.empty();
    }
}
