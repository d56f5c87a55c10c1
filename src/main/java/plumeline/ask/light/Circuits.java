package plumeline.ask.light;

import java.util.List;

/// What `power` finds: currents, and how the devices go on circuits.
final class Circuits {
    /// Sums of currents count as the same within this, A.
    static final double NEAR_AMPERES = 1e-9;

    private Circuits() {}

    /// A device.
    ///
    /// @param name its name
    /// @param watts its power, W
    /// @param powerFactor its power over volts times amperes, 0 to 1
    record Device(String name, double watts, double powerFactor) {
        double amperes(double volts) {
            return watts / (volts * powerFactor);
        }
    }

    /// What is asked.
    ///
    /// @param devices what is plugged in
    /// @param volts V
    /// @param breakerAmperes what a circuit's breaker is marked with, A
    /// @param share how much of that may flow
    record Inputs(List<Device> devices, double volts, double breakerAmperes, double share) {
        Inputs {
            devices = List.copyOf(devices);
        }

        double mayFlowAmperes() {
            return share * breakerAmperes;
        }
    }

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param amperes what all devices take together, A
    /// @param circuits the devices by circuit; one that is too much for any is alone, before the others
    record Found(Inputs inputs, double amperes, List<List<Device>> circuits) {
        Found {
            circuits = circuits.stream().map(List::copyOf).toList();
        }

        double usedShare() {
            return amperes / inputs.breakerAmperes;
        }

        /// The device that is too much for any circuit by itself, the largest such; empty where there is none.
        List<Device> tooLarge() {
            return inputs.devices.stream()
                    .filter(device -> device.amperes(inputs.volts) > inputs.mayFlowAmperes() + NEAR_AMPERES)
                    .toList();
        }
    }

    static Found answer(Inputs inputs) {
        double all = 0;
        for (Device device : inputs.devices) {
            all += device.amperes(inputs.volts);
        }
        return new Found(inputs, all, new Sharing(inputs).circuits());
    }
}
