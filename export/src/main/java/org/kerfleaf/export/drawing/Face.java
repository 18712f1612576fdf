package org.kerfleaf.export.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The product's typefaces, each from a font file of its own; no font of the machine is asked for by name. */
public enum Face {
    LABEL("KerfleafLabel-Regular"),
    LABEL_SEMI("KerfleafLabel-SemiBold"),
    LABEL_BOLD("KerfleafLabel-Bold"),
    TEXT("KerfleafText-Regular"),
    TEXT_ITALIC("KerfleafText-Italic"),
    TEXT_SEMI("KerfleafText-SemiBold"),
    MONO("KerfleafMono-Regular");

    /** The height of a capital letter, as a share of the size; the faces differ by less than a twentieth. */
    public static final double CAPITAL = 0.69;

    private static final float EM = 1000f;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private final String file;
    private final byte[] bytes;
    private final Font font;
    private final Font big;
    private final Map<Integer, Double> advances = new ConcurrentHashMap<>();

    Face(String file) {
        this.file = file;
        String path = "/org/kerfleaf/export/fonts/" + file + ".ttf";
        try (InputStream in = Face.class.getResourceAsStream(path)) {
            bytes = in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(path, unreadable);
        }
        font = created(path);
        big = font.deriveFont(EM);
    }

    private Font created(String path) {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new java.io.ByteArrayInputStream(bytes));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(path, unreadable);
        } catch (FontFormatException noFont) {
            throw new IllegalStateException(path, noFont);
        }
    }

    /** The font at that size, in the units of the drawing. */
    public Font at(double size) {
        return font.deriveFont((float) size);
    }

    /** The face an AWT font came from; labels for a font that is none of these. */
    public static Face of(Font awt) {
        for (Face face : values()) {
            if (face.font.getPSName().equals(awt.getPSName())) {
                return face;
            }
        }
        return LABEL;
    }

    /** The font file's name, without an ending. */
    public String file() {
        return file;
    }

    /** The font file. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** Whether the face has a letter for the code point. */
    boolean shows(int codePoint) {
        return font.canDisplay(codePoint);
    }

    /** How wide the text runs at size 1, without kerning, as it is printed. */
    double advance(String text) {
        return text.codePoints().mapToDouble(this::advance).sum();
    }

    private double advance(int codePoint) {
        return advances.computeIfAbsent(
                codePoint,
                c -> big.getStringBounds(Character.toString(c), EXACT).getWidth() / EM);
    }
}
