package org.kerfleaf.export.spreadsheet;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FontFamily;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Makes each look once; a workbook has room for a limited number of styles. */
final class Looks {
    /** The product's own family. Where it is not installed, the family class gives the system's sans serif face. */
    private static final String FAMILY = "Kerfleaf Label";

    private record Face(int points, boolean strong, Look.Ink ink) {}

    private final XSSFWorkbook workbook;
    private final Map<Look, XSSFCellStyle> styles = new HashMap<>();
    private final Map<Face, XSSFFont> fonts = new HashMap<>();

    Looks(XSSFWorkbook workbook) {
        this.workbook = workbook;
        dress(workbook.getFontAt(0), new Face(10, false, Look.Ink.INK));
    }

    XSSFCellStyle style(Look look) {
        XSSFCellStyle made = styles.get(look);
        if (made == null) {
            made = make(look);
            styles.put(look, made);
        }
        return made;
    }

    private XSSFCellStyle make(Look look) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(font(new Face(look.points(), look.strong(), look.ink())));
        style.setAlignment(look.side());
        style.setVerticalAlignment(look.rule() == Look.Rule.HEAD ? VerticalAlignment.BOTTOM : VerticalAlignment.TOP);
        // Room between a number and the words in the next column.
        style.setIndention((short) (look.wraps() && look.side() == HorizontalAlignment.LEFT ? 1 : 0));
        style.setWrapText(look.wraps());
        style.setDataFormat(workbook.createDataFormat().getFormat(look.format()));
        rule(style, look.rule());
        return style;
    }

    private static void rule(XSSFCellStyle style, Look.Rule rule) {
        switch (rule) {
            case NONE -> {}
            case ROW -> style.setBorderBottom(BorderStyle.HAIR);
            case HEAD -> style.setBorderBottom(BorderStyle.MEDIUM);
            case TOTAL -> style.setBorderTop(BorderStyle.THIN);
            case BOX -> {
                style.setBorderTop(BorderStyle.THIN);
                style.setBorderBottom(BorderStyle.THIN);
                style.setBorderLeft(BorderStyle.THIN);
                style.setBorderRight(BorderStyle.THIN);
            }
        }
    }

    private XSSFFont font(Face face) {
        XSSFFont made = fonts.get(face);
        if (made == null) {
            made = workbook.createFont();
            dress(made, face);
            fonts.put(face, made);
        }
        return made;
    }

    private static void dress(XSSFFont font, Face face) {
        font.setFontName(FAMILY);
        font.setFamily(FontFamily.SWISS);
        font.setFontHeightInPoints((short) face.points());
        font.setBold(face.strong());
        font.setColor(new XSSFColor(face.ink().argb, null));
    }
}
