package org.kerfleaf.samples;

import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/** What an SVG drawing draws, read back from its text: strokes, white boxes behind values, black fills, words. In millimetres. */
final class DrawnSvg {
    private static final Pattern MOVE = Pattern.compile("(translate|rotate|scale|matrix)\\(([^)]*)\\)");
    private static final Pattern STEP = Pattern.compile("([MLZ])\\s*([^MLZQC]*)");

    /** A straight stroke and how wide the pen is. */
    record Stroke(Line2D line, double width, int path) {
        double length() {
            return line.getP1().distance(line.getP2());
        }

        boolean isLevel() {
            return Math.abs(line.getY1() - line.getY2()) < 0.01;
        }

        boolean isUpright() {
            return Math.abs(line.getX1() - line.getX2()) < 0.01;
        }

        /** Whether it is the oblique stroke at an end of a dimension line. */
        boolean isTick() {
            double dx = Math.abs(line.getX1() - line.getX2());
            double dy = Math.abs(line.getY1() - line.getY2());
            return Math.abs(dx - 1.8) < 0.01 && Math.abs(dy - 1.8) < 0.01 && Math.abs(width - 0.5) < 0.01;
        }

        double middleX() {
            return (line.getX1() + line.getX2()) / 2;
        }

        double middleY() {
            return (line.getY1() + line.getY2()) / 2;
        }
    }

    /** A piece of text from where its baseline begins. */
    record Words(String text, double x, double y, boolean upright) {}

    final List<Stroke> strokes = new ArrayList<>();
    final List<Rectangle2D> boxes = new ArrayList<>();
    final List<Path2D> black = new ArrayList<>();
    final List<Words> words = new ArrayList<>();
    final List<Rectangle2D> circles = new ArrayList<>();
    final double width;
    final double height;
    final String title;
    final String description;

    DrawnSvg(String svg) {
        try {
            Element root = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement();
            String[] box = root.getAttribute("viewBox").split(" ");
            width = Double.parseDouble(box[2]);
            height = Double.parseDouble(box[3]);
            title = first(root, "title");
            description = first(root, "desc");
            read(root, new AffineTransform(), "");
        } catch (Exception unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static String first(Element root, String name) {
        var found = root.getElementsByTagName(name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent();
    }

    private void read(Element element, AffineTransform outer, String outerStyle) {
        AffineTransform place = new AffineTransform(outer);
        place.concatenate(transform(element.getAttribute("transform")));
        String style = outerStyle + ";" + element.getAttribute("style");
        switch (element.getTagName()) {
            case "line" ->
                stroke(
                        number(element, "x1"),
                        number(element, "y1"),
                        number(element, "x2"),
                        number(element, "y2"),
                        place,
                        style,
                        strokes.size());
            case "rect" -> rect(element, place, style);
            case "circle", "ellipse" -> {
                double r = number(element, element.getTagName().equals("circle") ? "r" : "rx");
                Point2D at = place.transform(new Point2D.Double(number(element, "cx"), number(element, "cy")), null);
                circles.add(new Rectangle2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r));
            }
            case "path" -> path(element.getAttribute("d"), place, style);
            case "text" -> {
                Point2D at = place.transform(new Point2D.Double(number(element, "x"), number(element, "y")), null);
                words.add(new Words(element.getTextContent(), at.getX(), at.getY(), Math.abs(place.getShearX()) > 0.5));
            }
            default -> {
                // A group: its children follow.
            }
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                read(inner, place, style);
            }
        }
    }

    private static AffineTransform transform(String said) {
        AffineTransform all = new AffineTransform();
        Matcher move = MOVE.matcher(said);
        while (move.find()) {
            String[] words = move.group(2).trim().split("[ ,]+");
            double[] n = new double[words.length];
            for (int i = 0; i < n.length; i++) {
                n[i] = Double.parseDouble(words[i]);
            }
            switch (move.group(1)) {
                case "translate" -> all.translate(n[0], n.length > 1 ? n[1] : 0);
                case "rotate" -> all.rotate(Math.toRadians(n[0]));
                case "scale" -> all.scale(n[0], n.length > 1 ? n[1] : n[0]);
                default -> all.concatenate(new AffineTransform(n));
            }
        }
        return all;
    }

    private static double number(Element element, String name) {
        String said = element.getAttribute(name);
        return said.isEmpty() ? 0 : Double.parseDouble(said);
    }

    /** The last that is said of it: inner styles come later. */
    private static String of(String style, String name) {
        String value = "";
        for (String one : style.split(";")) {
            String[] pair = one.split(":", 2);
            value = pair.length == 2 && pair[0].strip().equals(name) ? pair[1].strip() : value;
        }
        return value;
    }

    private void stroke(double x1, double y1, double x2, double y2, AffineTransform place, String style, int path) {
        if (of(style, "stroke").equals("none")) {
            return;
        }
        Point2D a = place.transform(new Point2D.Double(x1, y1), null);
        Point2D b = place.transform(new Point2D.Double(x2, y2), null);
        String pen = of(style, "stroke-width");
        strokes.add(new Stroke(new Line2D.Double(a, b), pen.isEmpty() ? 1 : Double.parseDouble(pen), path));
    }

    private void rect(Element element, AffineTransform place, String style) {
        Rectangle2D box = new Rectangle2D.Double(
                number(element, "x"), number(element, "y"), number(element, "width"), number(element, "height"));
        if (of(style, "fill").equals("white")) {
            boxes.add(place.createTransformedShape(box).getBounds2D());
        }
    }

    private void path(String d, AffineTransform place, String style) {
        Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        double x = 0;
        double y = 0;
        int number = strokes.size();
        Matcher step = STEP.matcher(d);
        while (step.find()) {
            if (step.group(1).equals("Z")) {
                shape.closePath();
                continue;
            }
            String[] n = step.group(2).trim().split("[ ,]+");
            double nx = Double.parseDouble(n[0]);
            double ny = Double.parseDouble(n[1]);
            if (step.group(1).equals("M")) {
                shape.moveTo(nx, ny);
            } else {
                shape.lineTo(nx, ny);
                if (of(style, "fill").equals("none")) {
                    stroke(x, y, nx, ny, place, style, number);
                }
            }
            x = nx;
            y = ny;
        }
        boolean curved = d.contains("Q") || d.contains("C");
        if (!curved && of(style, "stroke").equals("none") && !of(style, "fill").matches("white|none")) {
            shape.transform(place);
            black.add(shape);
        }
    }

    /** The strokes that show the thing itself: all but the fine ones and what is oblique at a dimension's end. */
    List<Stroke> outlines() {
        return strokes.stream().filter(s -> s.width() > 0.3 && !s.isTick()).toList();
    }
}
