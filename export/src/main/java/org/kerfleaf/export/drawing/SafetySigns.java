package org.kerfleaf.export.drawing;

import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;

/**
 * Safety signs, drawn after the rules of ISO 3864-1 and ISO 7010: a mandatory action is white on a blue disc, a warning is
 * black on a yellow triangle. The pictograms are our own; each is drawn in a field of 60 by 60.
 */
public final class SafetySigns {
    private static final double FIELD = 60;

    private SafetySigns() {}

    /** What a mandatory sign asks for. */
    public enum Wear {
        EYES("Eye protection for every cut and hole"),
        EARS("Ear protection near the saws"),
        MASK("Dust mask for cutting and sanding"),
        GLOVES("Gloves, but never near a turning blade or bit");

        private final String words;

        Wear(String words) {
            this.words = words;
        }

        /** What stands beside the sign. */
        public String words() {
            return words;
        }
    }

    /** A blue disc of that diameter from its upper left corner. */
    public static void mandatory(Ink ink, Wear wear, double x, double y, double diameter) {
        ink.within(x, y, diameter / FIELD, () -> {
            ink.fill(Ink.circle(30, 30, 30), Ink.SIGN_BLUE);
            switch (wear) {
                case EYES -> eyes(ink);
                case EARS -> ears(ink);
                case MASK -> mask(ink);
                case GLOVES -> gloves(ink);
            }
        });
    }

    /** A yellow triangle of that width from its upper left corner; its height is nine tenths of it. */
    public static void warning(Ink ink, double x, double y, double width) {
        ink.within(x, y, width / 40, () -> {
            Path2D triangle = Ink.polygon(20, 2, 38, 34, 2, 34);
            ink.fill(triangle, Ink.SIGN_YELLOW);
            ink.strokeRound(triangle, Ink.BLACK, 3);
            ink.line(20, 12, 20, 23, 3.6);
            ink.fill(Ink.circle(20, 28.6, 2.2), Ink.BLACK);
        });
    }

    /** The height of a warning sign of that width. */
    public static double warningHeight(double width) {
        return width * 0.9;
    }

    private static void head(Ink ink) {
        Path2D head = new Path2D.Double();
        head.moveTo(15, 27);
        head.curveTo(15, 6, 45, 6, 45, 27);
        head.curveTo(45, 42, 37, 51, 30, 51);
        head.curveTo(23, 51, 15, 42, 15, 27);
        head.closePath();
        ink.fill(head, Ink.WHITE);
    }

    private static void eyes(Ink ink) {
        head(ink);
        ink.fill(Ink.box(12, 25, 36, 3.4), Ink.SIGN_BLUE);
        for (double x : new double[] {16, 31.5}) {
            ink.fill(new RoundRectangle2D.Double(x, 22.5, 12.5, 12, 7, 7), Ink.SIGN_BLUE);
            ink.fill(new RoundRectangle2D.Double(x + 2, 24.5, 8.5, 8, 4.5, 4.5), Ink.WHITE);
        }
        ink.strokeRound(Ink.open(25, 42.5, 35, 42.5), Ink.SIGN_BLUE, 1.8);
    }

    private static void ears(Ink ink) {
        head(ink);
        ink.stroke(new Arc2D.Double(11, 8, 38, 42, 12, 156, Arc2D.OPEN), Ink.SIGN_BLUE, 8);
        ink.stroke(new Arc2D.Double(11, 8, 38, 42, 6, 168, Arc2D.OPEN), Ink.WHITE, 3.6);
        for (double x : new double[] {7.5, 42.5}) {
            ink.fill(new RoundRectangle2D.Double(x, 22, 10, 17, 8, 8), Ink.WHITE);
            ink.stroke(new RoundRectangle2D.Double(x, 22, 10, 17, 8, 8), Ink.SIGN_BLUE, 1.6);
        }
        for (double x : new double[] {24.5, 35.5}) {
            ink.fill(Ink.circle(x, 27, 1.7), Ink.SIGN_BLUE);
        }
        ink.strokeRound(Ink.open(25.5, 42, 34.5, 42), Ink.SIGN_BLUE, 1.8);
    }

    private static void mask(Ink ink) {
        head(ink);
        for (double x : new double[] {24, 36}) {
            ink.fill(Ink.circle(x, 23.5, 1.8), Ink.SIGN_BLUE);
        }
        Path2D mask = new Path2D.Double();
        mask.moveTo(19, 32);
        mask.curveTo(26, 28, 34, 28, 41, 32);
        mask.curveTo(41.5, 42, 36, 47.5, 30, 47.5);
        mask.curveTo(24, 47.5, 18.5, 42, 19, 32);
        mask.closePath();
        ink.fill(mask, Ink.WHITE);
        ink.strokeRound(mask, Ink.SIGN_BLUE, 2);
        ink.strokeRound(Ink.open(19, 33, 14.8, 27.5), Ink.SIGN_BLUE, 1.6);
        ink.strokeRound(Ink.open(41, 33, 45.2, 27.5), Ink.SIGN_BLUE, 1.6);
        ink.strokeRound(Ink.open(23.5, 36, 36.5, 36), Ink.SIGN_BLUE, 1.4);
        ink.strokeRound(Ink.open(24, 40.5, 36, 40.5), Ink.SIGN_BLUE, 1.4);
    }

    private static void gloves(Ink ink) {
        for (double[] finger : new double[][] {{20.5, 17, 24}, {26.2, 13, 20}, {31.9, 13, 20}, {37.6, 16, 24}}) {
            ink.fill(new RoundRectangle2D.Double(finger[0], finger[1], 5, 24, 5, 5), Ink.WHITE);
        }
        Path2D hand = new Path2D.Double();
        hand.moveTo(20.5, 28);
        hand.lineTo(42.6, 28);
        hand.lineTo(42.6, 37);
        hand.curveTo(42.6, 41, 40, 43, 40, 43);
        hand.lineTo(23, 43);
        hand.curveTo(19, 40, 15.5, 35.5, 12.6, 31.5);
        hand.curveTo(11.4, 28.6, 14.6, 26.8, 17, 29);
        hand.lineTo(20.5, 32.5);
        hand.closePath();
        ink.fill(hand, Ink.WHITE);
        ink.fill(new RoundRectangle2D.Double(21.8, 44.4, 19.4, 6.4, 2, 2), Ink.WHITE);
    }
}
