package org.kerfleaf.export.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * A graphics object that counts in millimetres of paper, x to the right, y down. Line widths follow ISO 128, group 0.5:
 * 0.5 wide, 0.35 between, 0.25 narrow, 0.18 for what carries no meaning of its own.
 */
public final class Ink {
    public static final Color BLACK = Color.BLACK;
    public static final Color WHITE = Color.WHITE;

    /** Captions: near black, so that a photocopy keeps them. */
    public static final Color GRAPHITE = new Color(0x333333);

    /** Parts on a sheet. */
    public static final Color TINT = new Color(0xf3f4f1);

    /** Far faces, and what must stand off from {@link #TINT}. */
    public static final Color FAR = new Color(0xe0e3de);

    /** Mandatory signs only. */
    public static final Color SIGN_BLUE = new Color(0x0b4f8a);

    /** Warning signs only. */
    public static final Color SIGN_YELLOW = new Color(0xf4c20d);

    public static final double WIDE = 0.5;
    public static final double MIDDLE = 0.35;
    public static final double NARROW = 0.25;
    public static final double FINE = 0.18;

    private final Graphics2D g;

    private Ink(Graphics2D g) {
        this.g = g;
    }

    /** Ink on a graphics object of which one unit is so many millimetres. */
    public static Ink on(Graphics2D g, double millimetresPerUnit) {
        g.scale(1 / millimetresPerUnit, 1 / millimetresPerUnit);
        return new Ink(g);
    }

    /** Paints something moved and scaled, then goes on as before. */
    public void within(double x, double y, double scale, Runnable painting) {
        AffineTransform before = g.getTransform();
        g.translate(x, y);
        g.scale(scale, scale);
        painting.run();
        g.setTransform(before);
    }

    /** Paints something turned by a quarter so that it reads from the right, about a point, then goes on as before. */
    void turned(double x, double y, Runnable painting) {
        AffineTransform before = g.getTransform();
        g.translate(x, y);
        g.rotate(-Math.PI / 2);
        painting.run();
        g.setTransform(before);
    }

    public void line(double x1, double y1, double x2, double y2, double width) {
        stroke(new Line2D.Double(x1, y1, x2, y2), BLACK, width);
    }

    /** A line of dashes and gaps, in millimetres. */
    public void dashed(Shape shape, double width, float... dashes) {
        g.setColor(BLACK);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, dashes, 0f));
        g.draw(shape);
    }

    public void stroke(Shape shape, Color colour, double width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(shape);
    }

    /** A line whose ends and corners are round. */
    public void strokeRound(Shape shape, Color colour, double width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    public void fill(Shape shape, Color colour) {
        g.setColor(colour);
        g.fill(shape);
    }

    public static Rectangle2D box(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x, y, width, height);
    }

    public static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** A closed outline through points given as x, y, x, y. */
    public static Path2D polygon(double... xy) {
        Path2D path = open(xy);
        path.closePath();
        return path;
    }

    /** An open line through points given as x, y, x, y. */
    public static Path2D open(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        return path;
    }

    /** Letters of one style from a point on their baseline. */
    void letters(String text, Style style, double size, double x, double y) {
        g.setColor(style.colour());
        g.setFont(style.face().at(size));
        g.drawString(text, (float) x, (float) y);
    }

    /** A line of text, its baseline starting at that point. */
    public void text(Line line, double x, double y) {
        line.paint(this, x, y);
    }

    /** A line of text whose baseline has its middle at that point. */
    public void centred(Line line, double x, double y) {
        line.paint(this, x - line.width() / 2, y);
    }

    /** A line of text whose baseline ends at that point. */
    public void flushRight(Line line, double x, double y) {
        line.paint(this, x - line.width(), y);
    }
}
