package org.kerfleaf.export.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import javax.imageio.ImageIO;

/** A drawing as a PNG picture on white. */
public final class PngSheet {
    private PngSheet() {}

    /**
     * Writes what is painted; leaves {@code out} open.
     *
     * @param width of the paper, in millimetres
     * @param height of the paper, in millimetres
     * @param perMillimetre pixels
     * @throws UncheckedIOException if writing fails
     */
    public static void write(
            double width, double height, double perMillimetre, Consumer<Ink> painting, OutputStream out) {
        try {
            ImageIO.write(image(width, height, perMillimetre, painting), "png", out);
        } catch (IOException failed) {
            throw new UncheckedIOException("The picture could not be written.", failed);
        }
    }

    /** The picture itself. */
    public static BufferedImage image(double width, double height, double perMillimetre, Consumer<Ink> painting) {
        BufferedImage image = new BufferedImage(
                Math.max(1, (int) Math.ceil(width * perMillimetre)),
                Math.max(1, (int) Math.ceil(height * perMillimetre)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            painting.accept(Ink.on(g, 1 / perMillimetre));
        } finally {
            g.dispose();
        }
        return image;
    }
}
