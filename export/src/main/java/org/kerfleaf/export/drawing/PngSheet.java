package org.kerfleaf.export.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

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
        BufferedImage image = image(width, height, perMillimetre, painting);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
            IIOMetadata says = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
            says.mergeTree("javax_imageio_png_1.0", about(perMillimetre));
            writer.setOutput(to);
            writer.write(new IIOImage(image, null, says));
        } catch (IOException failed) {
            throw new UncheckedIOException("The picture could not be written.", failed);
        } finally {
            writer.dispose();
        }
    }

    /** How large it is to be printed, and who made it. */
    private static IIOMetadataNode about(double perMillimetre) {
        IIOMetadataNode size = new IIOMetadataNode("pHYs");
        String perMetre = Long.toString(Math.round(perMillimetre * 1000));
        size.setAttribute("pixelsPerUnitXAxis", perMetre);
        size.setAttribute("pixelsPerUnitYAxis", perMetre);
        size.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode software = new IIOMetadataNode("tEXtEntry");
        software.setAttribute("keyword", "Software");
        software.setAttribute("value", SvgSheet.MAKER);
        IIOMetadataNode text = new IIOMetadataNode("tEXt");
        text.appendChild(software);
        IIOMetadataNode about = new IIOMetadataNode("javax_imageio_png_1.0");
        about.appendChild(size);
        about.appendChild(text);
        return about;
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
