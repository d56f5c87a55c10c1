package plumeline.lit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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
        Optional<String> inTank = lighting.findLampInTank();
        if (inTank.isPresent()) {
            return Optional.of("Not computed: " + inTank.get()
                    + " stands in the tank. No lamp goes there: water and mains" + " kill. Put it outside.");
        }
        if (patches.stream().anyMatch(lighting::isOfTank)) {
            return Optional.of(
                    "Not computed: the light of a lamp or card that stands in the tank. Meter it there in a trial.");
        }
        return findHued(lighting, patches);
    }

    /// Why nothing is known of the light, whatever the marks.
    static Optional<String> findLacking(List<Lamp> lamps) {
        if (lamps.stream().noneMatch(Unlit::isLamp)) {
            return Optional.of("Not known: the shot has no light. Place one under lights.");
        }
        List<String> lacking = new ArrayList<>();
        for (Lamp lamp : lamps) {
            if (lamp instanceof Lamp.Unknown(String name, Lamp.Lack lack)) {
                lacking.add(
                        switch (lack) {
                            case GIVES -> "what " + name + " gives";
                            case FILE -> "what " + name + " gives: its file isn't beside the plan";
                        });
            }
        }
        return lacking.isEmpty()
                ? Optional.empty()
                : Optional.of("Not known: " + String.join(", ", lacking)
                        + ". Meter each at full level and write it with its lamp: gives: 900 lx at 1 m measured.");
    }

    /// The lamp whose hue it is: itself, or the first one that a card throws back.
    private static String hued(Lighting lighting, int lamp) {
        return IntStream.concat(
                        IntStream.of(lamp), IntStream.range(0, lighting.lamps().size()))
                .mapToObj(lighting.lamps()::get)
                .filter(one -> one instanceof Lamp.Known known && known.colour() == Lamp.Colour.HUED)
                .map(Lamp::name)
                .findFirst()
                .orElseThrow();
    }

    /// Whether it is set to a hue, or throws back light of one that is.
    static boolean isHued(Lighting lighting, int lamp) {
        if (!(lighting.lamps().get(lamp) instanceof Lamp.Known known)) {
            return false;
        }
        if (known.colour() != Lamp.Colour.OF_OTHERS) {
            return known.colour() == Lamp.Colour.HUED;
        }
        double[] there = lighting.onCard(lamp);
        double hued = 0;
        for (int i = 0; i < there.length; i++) {
            hued += there[i] > 0 && isHued(lighting, i) ? there[i] : 0;
        }
        return hued > MINOR_SHARE * Arrays.stream(there).sum();
    }

    private static boolean isLamp(Lamp lamp) {
        return switch (lamp) {
            case Lamp.Known known -> known.colour() != Lamp.Colour.OF_OTHERS;
            case Lamp.Unknown _ -> true;
            case Lamp.Flag _ -> false;
        };
    }

    private static Optional<String> findHued(Lighting lighting, List<Patch> patches) {
        for (Patch patch : patches) {
            double[] lux = lighting.lux(patch);
            double white = 0;
            double hued = 0;
            String name = "";
            for (int i = 0; i < lux.length; i++) {
                boolean isHued = lux[i] > 0 && isHued(lighting, i);
                white += isHued ? 0 : lux[i];
                hued += isHued ? lux[i] : 0;
                name = isHued ? hued(lighting, i) : name;
            }
            if (hued > MINOR_SHARE * white && hued > 0) {
                return Optional.of("Not computed: how much less " + name
                        + " gives at its hue. Write its primaries; or meter it at that hue, and write that lamp"
                        + " without hue.");
            }
        }
        return Optional.empty();
    }
}
