package plumeline.art;

import java.awt.image.BufferedImage;
import plumeline.colour.Srgb;
import plumeline.scenery.Art;

/// From a picture's pixels to a print's texels.
final class Texels {
    /// No print is finer, texels either way.
    static final int MOST = 2048;

    private static final int STEPS = 256;

    private Texels() {}

    /// Takes a picture; one finer than [#MOST] by means over whole blocks of pixels.
    static Art of(BufferedImage image) {
        int block = Math.max(1, Math.ceilDiv(Math.max(image.getWidth(), image.getHeight()), MOST));
        int width = Math.ceilDiv(image.getWidth(), block);
        int height = Math.ceilDiv(image.getHeight(), block);
        float[] linear = linear();
        float[] texels = new float[4 * width * height];
        float[] sum = new float[4];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                add(image, x * block, y * block, block, linear, sum);
                System.arraycopy(sum, 0, texels, 4 * (y * width + x), 4);
            }
        }
        return new Art(width, height, texels);
    }

    /// The mean of a block: colours weigh as they cover.
    private static void add(BufferedImage image, int left, int top, int block, float[] linear, float[] into) {
        double red = 0;
        double green = 0;
        double blue = 0;
        double cover = 0;
        int count = 0;
        for (int y = top; y < Math.min(top + block, image.getHeight()); y++) {
            for (int x = left; x < Math.min(left + block, image.getWidth()); x++) {
                int argb = image.getRGB(x, y);
                double covers = (argb >>> 24) / (STEPS - 1.0);
                red += covers * linear[argb >> 16 & STEPS - 1];
                green += covers * linear[argb >> 8 & STEPS - 1];
                blue += covers * linear[argb & STEPS - 1];
                cover += covers;
                count++;
            }
        }
        double all = cover > 0 ? cover : 1;
        into[0] = (float) (red / all);
        into[1] = (float) (green / all);
        into[2] = (float) (blue / all);
        into[3] = (float) (cover / count);
    }

    private static float[] linear() {
        float[] linear = new float[STEPS];
        for (int i = 0; i < STEPS; i++) {
            linear[i] = (float) Srgb.linear(i / (STEPS - 1.0));
        }
        return linear;
    }
}
