package org.kerfleaf.export.drawing;

import java.awt.Font;
import java.awt.font.TextAttribute;
import java.io.CharArrayWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Map;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A drawing as SVG, one unit a millimetre of paper; the same drawing gives the same bytes. */
public final class SvgSheet {
    private static final String SVG = "http://www.w3.org/2000/svg";

    /** By this a drawing of ours is known again, in SVG and PNG. */
    static final String MAKER = "Kerfleaf";

    /** A thousandth of a millimetre. */
    private static final int DIGITS = 3;

    /** How letters are written. */
    public enum Letters {
        /** As text: to be found and copied; the reader's page must have the product's typefaces. */
        TEXT,
        /** As outlines: looks the same everywhere. */
        OUTLINES
    }

    private SvgSheet() {}

    /**
     * What is painted, as an {@code svg} element with its size in millimetres.
     *
     * @param title what the drawing shows, for those who do not see it
     * @param width of the paper, in millimetres
     * @param height of the paper, in millimetres
     */
    public static String of(String title, double width, double height, Letters letters, Consumer<Ink> painting) {
        return of(title, "", width, height, letters, painting);
    }

    /**
     * The same with a description.
     *
     * @param description more of what the drawing shows; empty for none
     */
    public static String of(
            String title, String description, double width, double height, Letters letters, Consumer<Ink> painting) {
        try (Writer out = new CharArrayWriter()) {
            Document document = document();
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setComment(null);
            context.setPrecision(DIGITS);
            SVGGraphics2D g = letters == Letters.OUTLINES ? new SVGGraphics2D(context, true) : new WithWeights(context);
            painting.accept(Ink.on(g, 1));
            Element root = g.getRoot();
            root.setAttribute("width", millimetres(width) + "mm");
            root.setAttribute("height", millimetres(height) + "mm");
            root.setAttribute("viewBox", "0 0 " + millimetres(width) + " " + millimetres(height));
            root.setAttribute("role", "img");
            root.setAttribute("data-made-by", MAKER);
            if (!description.isEmpty()) {
                say(document, root, "desc", description);
            }
            say(document, root, "title", title);
            g.stream(root, out, true, false);
            String text = out.toString();
            return text.substring(text.indexOf("<svg"));
        } catch (IOException failed) {
            throw new UncheckedIOException("The drawing could not be written.", failed);
        }
    }

    /** As its first child, where those who read it aloud look. */
    private static void say(Document document, Element root, String name, String words) {
        Element says = document.createElementNS(SVG, name);
        says.setTextContent(words);
        root.insertBefore(says, root.getFirstChild());
    }

    /** Says the weight of each face: a bold face's own font file is no bolder than itself to AWT. */
    private static final class WithWeights extends SVGGraphics2D {
        private WithWeights(SVGGeneratorContext context) {
            super(context, false);
        }

        @Override
        public void setFont(Font font) {
            Face face = Face.of(font);
            float weight = switch (face) {
                case LABEL_BOLD -> TextAttribute.WEIGHT_BOLD;
                case LABEL_SEMI, TEXT_SEMI -> TextAttribute.WEIGHT_DEMIBOLD;
                case LABEL, TEXT, TEXT_ITALIC, MONO -> TextAttribute.WEIGHT_REGULAR;
            };
            float posture = face == Face.TEXT_ITALIC ? TextAttribute.POSTURE_OBLIQUE : TextAttribute.POSTURE_REGULAR;
            super.setFont(font.deriveFont(Map.of(TextAttribute.WEIGHT, weight, TextAttribute.POSTURE, posture)));
        }
    }

    private static Document document() {
        try {
            DOMImplementation dom =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().getDOMImplementation();
            return dom.createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException("No document builder", impossible);
        }
    }

    private static String millimetres(double size) {
        return java.math.BigDecimal.valueOf(size)
                .setScale(DIGITS, java.math.RoundingMode.CEILING)
                .stripTrailingZeros()
                .toPlainString();
    }
}
