package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import plumeline.ink.Arrival;
import plumeline.ink.Plume;

/// A front's way by its law, tabulated once: when it is how deep, and how wide there.
final class FrontTable {
    private static final int NODES = 240;

    /// Half-widths begin this far below the start, m.
    private static final double LEAST_METRES = 5e-5;

    private final List<Node> nodes;

    private FrontTable(List<Node> nodes) {
        this.nodes = nodes;
    }

    private record Node(double depthMetres, double seconds, double radiusMetres) {}

    /// Asks a law.
    ///
    /// @param plume the law
    /// @param floorMetres the floor's depth, m below the surface, > the start's
    /// @return the table, to the floor or to the deepest that is known
    static FrontTable of(Plume plume, double floorMetres) {
        double start = plume.startMetres();
        double airSeconds = airSeconds(plume);
        List<Node> nodes = new ArrayList<>();
        nodes.add(new Node(
                start, airSeconds, plume.radiusMetres(start + LEAST_METRES).value()));
        for (int i = 1; i <= NODES; i++) {
            double share = (double) i / NODES;
            double depth = start + (floorMetres - start) * share * share;
            if (plume.arrival(depth) instanceof Arrival.At(var seconds)
                    && seconds.value() > nodes.getLast().seconds()) {
                nodes.add(new Node(
                        depth, seconds.value(), plume.radiusMetres(depth).value()));
            }
        }
        return new FrontTable(List.copyOf(nodes));
    }

    private static double airSeconds(Plume plume) {
        return switch (plume) {
            case Plume.Read _ -> 0;
            case Plume.ByLaw law -> law.descent().airSeconds();
            case Plume.Taught taught -> taught.descent().airSeconds();
        };
    }

    /// Whether the law knows anything of it.
    boolean isKnown() {
        return nodes.size() > 1;
    }

    double startMetres() {
        return nodes.getFirst().depthMetres();
    }

    /// When it is at its start: once its first ink has fallen to the water.
    double startSeconds() {
        return nodes.getFirst().seconds();
    }

    /// How deep it goes, as far as is known.
    double endMetres() {
        return nodes.getLast().depthMetres();
    }

    /// How deep the front is, seconds from the first ink that leaves the nozzle.
    double depthMetres(double seconds) {
        int next = next(node -> node.seconds() > seconds);
        return next == 0 || next == nodes.size()
                ? nodes.get(next == 0 ? 0 : next - 1).depthMetres()
                : between(
                        next,
                        share(nodes.get(next - 1).seconds(), nodes.get(next).seconds(), seconds),
                        Node::depthMetres);
    }

    /// When the front is so deep; before the start the start's, past the end the end's.
    double seconds(double depthMetres) {
        return at(depthMetres, Node::seconds);
    }

    /// Its half-width there.
    double radiusMetres(double depthMetres) {
        return at(depthMetres, Node::radiusMetres);
    }

    private interface Figure {
        double of(Node node);
    }

    private interface Past {
        boolean is(Node node);
    }

    private double at(double depth, Figure figure) {
        int next = next(node -> node.depthMetres() > depth);
        if (next == 0 || next == nodes.size()) {
            return figure.of(nodes.get(next == 0 ? 0 : next - 1));
        }
        return between(
                next, share(nodes.get(next - 1).depthMetres(), nodes.get(next).depthMetres(), depth), figure);
    }

    private static double share(double from, double to, double at) {
        return (at - from) / (to - from);
    }

    private double between(int next, double share, Figure figure) {
        double from = figure.of(nodes.get(next - 1));
        return from + share * (figure.of(nodes.get(next)) - from);
    }

    /// The first node past something, as many as there are where none is.
    private int next(Past past) {
        int low = 0;
        int high = nodes.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (past.is(nodes.get(middle))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
