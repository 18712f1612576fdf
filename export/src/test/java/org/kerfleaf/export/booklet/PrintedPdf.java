package org.kerfleaf.export.booklet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.kerfleaf.export.drawing.Style;

/** A PDF as it is printed: its pages, and every glyph with its place in millimetres from the upper left corner. */
final class PrintedPdf implements AutoCloseable {
    /**
     * One glyph.
     *
     * @param run which text it was shown with: glyphs of one string share it
     */
    record Glyph(
            int page, String text, double x, double baseline, double width, double points, boolean level, int run) {
        double top() {
            return baseline - 0.66 * points * Style.POINT;
        }

        double right() {
            return x + width;
        }

        boolean isSpace() {
            return text.isBlank();
        }
    }

    private final PDDocument document;

    PrintedPdf(byte[] bytes) {
        try {
            document = Loader.loadPDF(bytes);
        } catch (IOException bad) {
            throw new UncheckedIOException(bad);
        }
    }

    PDDocument document() {
        return document;
    }

    int pages() {
        return document.getNumberOfPages();
    }

    /** The text of all pages, fractions with a plain stroke, any white space as one space. */
    String text() {
        return text(1, pages());
    }

    String text(int from, int to) {
        try {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(from);
            stripper.setEndPage(to);
            return stripper.getText(document).replace('⁄', '/').replaceAll("\\s+", " ");
        } catch (IOException bad) {
            throw new UncheckedIOException(bad);
        }
    }

    List<Glyph> glyphs() {
        List<Glyph> glyphs = new ArrayList<>();
        try {
            new PDFTextStripper() {
                private int run;

                @Override
                protected void processTextPosition(TextPosition text) {
                    glyphs.add(new Glyph(
                            getCurrentPageNo(),
                            text.getUnicode(),
                            text.getTextMatrix().getTranslateX() * Style.POINT,
                            (text.getPageHeight() - text.getTextMatrix().getTranslateY()) * Style.POINT,
                            text.getWidthDirAdj() * Style.POINT,
                            text.getYScale(),
                            text.getDir() == 0,
                            run));
                }

                @Override
                public void beginText() throws IOException {
                    run++;
                    super.beginText();
                }
            }.getText(document);
        } catch (IOException bad) {
            throw new UncheckedIOException(bad);
        }
        return glyphs;
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
