package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgSheetTest {
    private static String svg(SvgSheet.Letters letters) {
        ViewDrawing drawing =
                ViewDrawing.of(SampleBuild.cabinet(), View.FRONT, SampleBuild.sizes(), SampleBuild.WORDS, 180, 240);
        return SvgSheet.of(
                "Front & sizes", drawing.width(), drawing.height(), letters, ink -> drawing.paint(ink, 0, 0));
    }

    private static Element root(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();
    }

    @Test
    void of_twice_isTheSameText() {
        assertThat(svg(SvgSheet.Letters.TEXT)).isEqualTo(svg(SvgSheet.Letters.TEXT));
        assertThat(svg(SvgSheet.Letters.OUTLINES)).isEqualTo(svg(SvgSheet.Letters.OUTLINES));
    }

    @Test
    void of_drawing_isOneElementInMillimetres() throws Exception {
        String svg = svg(SvgSheet.Letters.TEXT);
        java.nio.file.Files.createDirectories(java.nio.file.Path.of("target", "pictures"));
        java.nio.file.Files.writeString(java.nio.file.Path.of("target", "pictures", "front.svg"), svg);
        Element root = root(svg);
        assertThat(svg).startsWith("<svg").doesNotContain("<!DOCTYPE", "<!--");
        String[] box = root.getAttribute("viewBox").split(" ");
        assertThat(root.getAttribute("width")).isEqualTo(box[2] + "mm");
        assertThat(root.getAttribute("height")).isEqualTo(box[3] + "mm");
        assertThat(root.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Front & sizes");
    }

    @Test
    void of_letters_asTextOrAsOutlines() throws Exception {
        assertThat(root(svg(SvgSheet.Letters.TEXT)).getElementsByTagName("text").getLength())
                .isPositive();
        assertThat(root(svg(SvgSheet.Letters.OUTLINES))
                        .getElementsByTagName("text")
                        .getLength())
                .isZero();
    }
}
