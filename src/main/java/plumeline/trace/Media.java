package plumeline.trace;

import java.util.ArrayList;
import java.util.List;
import plumeline.scenery.Medium;

/// Clear substances by number; 0 is air.
final class Media {
    static final int AIR = 0;

    private final List<Medium> all = new ArrayList<>(List.of(Medium.AIR));
    private double[] indices = {1};
    private double[] absorptions = {0, 0, 0};
    private boolean[] takes = {false};

    /// Takes a substance.
    ///
    /// @return its number
    int add(Medium medium) {
        int found = all.indexOf(medium);
        if (found >= 0) {
            return found;
        }
        all.add(medium);
        indices = all.stream().mapToDouble(Medium::index).toArray();
        absorptions = new double[3 * all.size()];
        for (int i = 0; i < all.size(); i++) {
            absorptions[3 * i] = all.get(i).absorption().red();
            absorptions[3 * i + 1] = all.get(i).absorption().green();
            absorptions[3 * i + 2] = all.get(i).absorption().blue();
        }
        takes = new boolean[all.size()];
        for (int i = 0; i < takes.length; i++) {
            takes[i] = absorptions[3 * i] + absorptions[3 * i + 1] + absorptions[3 * i + 2] > 0;
        }
        return all.size() - 1;
    }

    double index(int medium) {
        return indices[medium];
    }

    /// What is left of light after a way.
    double left(int medium, int channel, double metres) {
        double takes = absorptions[3 * medium + channel];
        return takes == 0 ? 1 : Math.exp(-takes * metres);
    }

    boolean takesLight(int medium) {
        return takes[medium];
    }
}
