package plumeline.sound;

/// What a channel's power is by ear: a shelf for the head and a high pass, one after the other, then the square.
///
/// At 48 kHz it is the recommendation's tables; at other rates the filters of the same analogue prototypes
/// ([Biquad#at]), which differ from it by less than 0.1 dB up to 10 kHz at 44.1 and 96 kHz.
///
/// **Source:** ITU-R BS.1770-5, Annex 1, Tables 1 and 2.
final class KWeighting {
    private static final double TABLES_HERTZ = 48_000;
    private static final Biquad SHELF =
            new Biquad(1.53512485958697, -2.69169618940638, 1.19839281085285, -1.69065929318241, 0.73248077421585);
    private static final Biquad HIGH_PASS = new Biquad(1, -2, 1, -1.99004745483398, 0.99007225036621);

    /// What is left of a filter is put to nothing below this, far under any sample: so small numbers are slow.
    private static final double NOTHING = 1e-30;

    private final Biquad shelf;
    private final Biquad highPass;
    private double s1;
    private double s2;
    private double h1;
    private double h2;

    /// @param samplesPerSecond the sound's rate, at which its filters run
    KWeighting(int samplesPerSecond) {
        shelf = shelf(samplesPerSecond);
        highPass = highPass(samplesPerSecond);
    }

    static Biquad shelf(int samplesPerSecond) {
        return samplesPerSecond == TABLES_HERTZ ? SHELF : SHELF.at(TABLES_HERTZ, samplesPerSecond);
    }

    static Biquad highPass(int samplesPerSecond) {
        return samplesPerSecond == TABLES_HERTZ ? HIGH_PASS : HIGH_PASS.at(TABLES_HERTZ, samplesPerSecond);
    }

    /// Runs on over samples and gives the sum of the squares of what comes out.
    double energy(double[] samples, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double x = samples[i];
            double y = shelf.b0() * x + s1;
            s1 = shelf.b1() * x - shelf.a1() * y + s2;
            s2 = shelf.b2() * x - shelf.a2() * y;
            double z = highPass.b0() * y + h1;
            h1 = highPass.b1() * y - highPass.a1() * z + h2;
            h2 = highPass.b2() * y - highPass.a2() * z;
            sum += z * z;
        }
        if (Math.abs(s1) + Math.abs(s2) < NOTHING) {
            s1 = 0;
            s2 = 0;
        }
        if (Math.abs(h1) + Math.abs(h2) < NOTHING) {
            h1 = 0;
            h2 = 0;
        }
        return sum;
    }
}
