package org.kerfleaf.export.booklet;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Signs;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;

/** The title block at the foot of every page (fields after ISO 7200): workbook, sheet, unit, projection, date, page. */
final class TitleBlock {
    static final double HEIGHT = 11;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final Style NAME = new Style(Face.LABEL, 7.5, Ink.GRAPHITE);
    private static final Style VALUE = new Style(Face.LABEL_SEMI, 9.5, Ink.BLACK);
    private static final double PADDING = 2.6;

    private final Plan plan;
    private final Paper paper;

    TitleBlock(Plan plan, Paper paper) {
        this.plan = plan;
        this.paper = paper;
    }

    private record Field(String name, Rich value, double width) {
        static Field of(String name, Rich value) {
            return new Field(name, value, Math.max(Rich.of(name, NAME).width(), value.width()) + 2 * PADDING);
        }
    }

    static String day(java.time.LocalDate date) {
        return DAY.format(date);
    }

    void paint(Ink ink, String sheet, int number, int of) {
        double y = paper.height() - Paper.FOOT - HEIGHT;
        ink.stroke(Ink.box(Paper.SIDE + 0.25, y + 0.25, paper.measure() - 0.5, HEIGHT - 0.5), Ink.BLACK, 0.5);
        List<Field> fields = fields(sheet, number, of);
        double right = paper.width() - Paper.SIDE;
        for (int i = fields.size() - 1; i >= 0; i--) {
            Field field = fields.get(i);
            right -= field.width();
            ink.line(right, y, right, y + HEIGHT, Ink.NARROW);
            field(ink, field.name(), field.value().line(), right + PADDING, y);
            if (field.name().equals("Projection")) {
                Signs.projection(ink, plan.style().unit(), right + PADDING, y + 5.2);
            }
        }
        double room = right - Paper.SIDE - 2 * PADDING;
        field(ink, "Workbook", cut(plan.title(), VALUE, room).line(), Paper.SIDE + PADDING, y);
    }

    private static void field(Ink ink, String name, Line value, double x, double y) {
        ink.text(Rich.of(name, NAME).line(), x, y + 3.9);
        ink.text(value, x, y + 8.5);
    }

    private List<Field> fields(String sheet, int number, int of) {
        List<Field> fields = new ArrayList<>();
        double most = paper.measure() * 0.2;
        fields.add(Field.of("Sheet", cut(sheet, VALUE, most)));
        fields.add(Field.of("Measured in", unit(plan.style())));
        fields.add(new Field(
                "Projection", Rich.NOTHING, Rich.of("Projection", NAME).width() + 2 * PADDING));
        fields.add(Field.of("Date", Rich.of(day(plan.day()), VALUE)));
        fields.add(Field.of("Page", Rich.of(number + " of " + of, VALUE)));
        return fields;
    }

    private static Rich unit(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Rich.of("inches, to 1/" + style.finest(), VALUE)
                : Rich.of("millimetres, to " + (style.finest() == 2 ? "0.5" : "1"), VALUE);
    }

    /** The text if it fits, else as many of its words as do, and three dots; a word alone is cut by letters. */
    static Rich cut(String text, Style style, double room) {
        Rich whole = Rich.of(text, style);
        if (whole.width() <= room) {
            return whole;
        }
        double dots = Rich.of("…", style).width();
        String first = whole.wrap(room - dots).get(0).toString().strip();
        return Rich.of(first + "…", style);
    }
}
