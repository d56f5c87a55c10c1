package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;
import plumeline.light.Panel;
import plumeline.lit.Shine;

/// A card that shines by what falls on it, as even panels: as few as tell its light.
final class CardPanels {
    /// So many panels each way at most.
    private static final int MOST = 4;

    /// A panel is even where its corners differ from its middle by no more, of the card's brightest.
    private static final double EVEN_SHARE = 0.06;

    private CardPanels() {}

    static List<Panel> of(Shine.Face card) {
        Panel face = (Panel) card.emitter();
        int each = 1;
        while (each < MOST && !isEven(card, face, each)) {
            each++;
        }
        List<Panel> panels = new ArrayList<>();
        for (int row = 0; row < each; row++) {
            for (int column = 0; column < each; column++) {
                panels.add(panel(card, face, each, row, column));
            }
        }
        return panels;
    }

    private static Vec place(Panel face, double across, double along) {
        return face.middle()
                .plus(face.right().times((across - 0.5) * face.widthMetres()))
                .plus(face.up().times((along - 0.5) * face.heightMetres()));
    }

    private static double glow(Shine.Face card, Panel face, double across, double along) {
        return card.glow().share(place(face, across, along), face.facing());
    }

    private static boolean isEven(Shine.Face card, Panel face, int each) {
        double brightest = 0;
        double most = 0;
        for (int row = 0; row < each; row++) {
            for (int column = 0; column < each; column++) {
                double middle = glow(card, face, (column + 0.5) / each, (row + 0.5) / each);
                for (int corner = 0; corner < 4; corner++) {
                    double there = glow(
                            card, face, (column + corner % 2) / (double) each, (row + corner / 2) / (double) each);
                    most = Math.max(most, Math.abs(there - middle));
                    brightest = Math.max(brightest, there);
                }
                brightest = Math.max(brightest, middle);
            }
        }
        return most <= EVEN_SHARE * brightest;
    }

    /// As bright as its part of the card is in the mean: Simpson's rule each way.
    private static Panel panel(Shine.Face card, Panel face, int each, int row, int column) {
        double sum = 0;
        for (int up = 0; up < 3; up++) {
            for (int right = 0; right < 3; right++) {
                double weight = (up == 1 ? 4 : 1) * (right == 1 ? 4 : 1) / 36.0;
                sum += weight * glow(card, face, (column + right / 2.0) / each, (row + up / 2.0) / each);
            }
        }
        return new Panel(
                place(face, (column + 0.5) / each, (row + 0.5) / each),
                face.facing(),
                face.right(),
                face.widthMetres() / each,
                face.heightMetres() / each,
                face.luminance() * sum);
    }
}
