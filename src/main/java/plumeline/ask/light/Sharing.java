package plumeline.ask.light;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.ask.light.Circuits.Device;

/// Shares devices among as few circuits as it finds. First the largest first, each on the first circuit where it fits:
/// never more than 11/9 of the fewest and one (from memory of Johnson 1973). Then fewer are tried in every way, as long
/// as the steps last; for some dozen devices they do, and the circuits are the fewest there could be.
final class Sharing {
    private static final int MOST_STEPS = 200_000;

    private final Circuits.Inputs inputs;
    private final List<Device> devices;
    private int stepsLeft = MOST_STEPS;

    Sharing(Circuits.Inputs inputs) {
        this.inputs = inputs;
        devices = new ArrayList<>(inputs.devices());
        devices.sort(Comparator.comparingDouble((Device device) -> -amperes(device)));
    }

    private double amperes(Device device) {
        return device.amperes(inputs.volts());
    }

    /// The devices by circuit; one that is too much for any is alone.
    List<List<Device>> circuits() {
        List<List<Device>> circuits = new ArrayList<>();
        List<Device> shared = new ArrayList<>();
        for (Device device : devices) {
            if (amperes(device) > inputs.mayFlowAmperes() + Circuits.NEAR_AMPERES) {
                circuits.add(List.of(device));
            } else {
                shared.add(device);
            }
        }
        List<List<Device>> best = firstFit(shared);
        List<List<Device>> fewer = fewer(shared, best.size());
        while (!fewer.isEmpty()) {
            best = fewer;
            fewer = fewer(shared, best.size());
        }
        circuits.addAll(best);
        return circuits;
    }

    private List<List<Device>> firstFit(List<Device> shared) {
        List<List<Device>> circuits = new ArrayList<>();
        for (Device device : shared) {
            circuits.stream()
                    .filter(circuit -> fits(circuit, device))
                    .findFirst()
                    .orElseGet(() -> {
                        circuits.add(new ArrayList<>());
                        return circuits.getLast();
                    })
                    .add(device);
        }
        return circuits;
    }

    /// One circuit less; empty where that can't be or no way was found.
    private List<List<Device>> fewer(List<Device> shared, int circuits) {
        double all = shared.stream().mapToDouble(this::amperes).sum();
        if (all > (circuits - 1) * (inputs.mayFlowAmperes() + Circuits.NEAR_AMPERES)) {
            return List.of();
        }
        List<List<Device>> found = new ArrayList<>();
        for (int i = 0; i < circuits - 1; i++) {
            found.add(new ArrayList<>());
        }
        return place(shared, 0, found) ? found : List.of();
    }

    /// Places the devices from one on; of circuits that are filled alike one is tried.
    private boolean place(List<Device> shared, int next, List<List<Device>> circuits) {
        if (next == shared.size()) {
            return true;
        }
        Device device = shared.get(next);
        List<Double> tried = new ArrayList<>();
        for (List<Device> circuit : circuits) {
            double filled = filled(circuit);
            if (stepsLeft-- <= 0) {
                return false;
            }
            if (!tried.contains(filled) && fits(circuit, device)) {
                tried.add(filled);
                circuit.add(device);
                if (place(shared, next + 1, circuits)) {
                    return true;
                }
                circuit.removeLast();
            }
        }
        return false;
    }

    private boolean fits(List<Device> circuit, Device device) {
        return filled(circuit) + amperes(device) <= inputs.mayFlowAmperes() + Circuits.NEAR_AMPERES;
    }

    private double filled(List<Device> circuit) {
        double filled = 0;
        for (Device device : circuit) {
            filled += amperes(device);
        }
        return filled;
    }
}
