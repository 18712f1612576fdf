package org.kerfleaf.export.booklet;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.FontMapper;
import com.lowagie.text.pdf.PdfAction;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfGraphics2D;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Font;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Plan;

/**
 * Writes pages as PDF, the same bytes for the same pages: the dates come from the plan, the file's identity from its
 * title, day and paper, and the random prefixes of embedded fonts are replaced by counted ones of the same length.
 */
final class PdfPages {
    private static final Pattern SUBSET = Pattern.compile("/[A-Z]{6}\\+");
    private static final double POINTS_PER_MM = 1 / Style.POINT;

    private final Plan plan;
    private final Paper paper;
    private final Map<Face, BaseFont> fonts = new EnumMap<>(Face.class);

    PdfPages(Plan plan, Paper paper) {
        this.plan = plan;
        this.paper = paper;
    }

    byte[] of(List<Leaf> leaves) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Rectangle size = new Rectangle(points(paper.width()), points(paper.height()));
        Document document = new Document(size, 0, 0, 0, 0);
        PdfWriter writer = PdfWriter.getInstance(document, bytes);
        describe(document, writer);
        document.open();
        TitleBlock foot = new TitleBlock(plan, paper);
        for (int i = 0; i < leaves.size(); i++) {
            if (i > 0) {
                document.newPage();
            }
            writer.setPageEmpty(false);
            paint(writer, leaves.get(i), foot, i + 1, leaves.size());
        }
        for (int i = 0; i < leaves.size(); i++) {
            var there = PdfAction.gotoLocalPage(i + 1, new PdfDestination(PdfDestination.FIT), writer);
            new PdfOutline(writer.getRootOutline(), there, leaves.get(i).title());
        }
        document.close();
        return counted(bytes.toByteArray());
    }

    private static float points(double millimetres) {
        return (float) (millimetres * POINTS_PER_MM);
    }

    private void describe(Document document, PdfWriter writer) {
        document.addTitle(plan.title());
        document.addSubject("Build booklet");
        document.addCreator("Kerfleaf");
        writer.setViewerPreferences(PdfWriter.DisplayDocTitle | PdfWriter.PageModeUseOutlines);
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString("en"));
        PdfDate date = new PdfDate(day(plan.day()));
        writer.getInfo().put(PdfName.CREATIONDATE, date);
        writer.getInfo().put(PdfName.MODDATE, date);
        String id = identity();
        writer.getInfo().put(PdfName.FILEID, new PdfLiteral("[<" + id + "><" + id + ">]"));
    }

    private static Calendar day(LocalDate day) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        calendar.clear();
        calendar.set(day.getYear(), day.getMonthValue() - 1, day.getDayOfMonth());
        return calendar;
    }

    private String identity() {
        String named = plan.title() + "\n" + plan.day() + "\n" + paper;
        return UUID.nameUUIDFromBytes(named.getBytes(StandardCharsets.UTF_8))
                .toString()
                .replace("-", "");
    }

    private void paint(PdfWriter writer, Leaf leaf, TitleBlock foot, int number, int of) {
        var graphics = new PdfGraphics2D(
                writer.getDirectContent(),
                points(paper.width()),
                points(paper.height()),
                new Mapper(),
                false,
                false,
                0);
        leaf.paint(Ink.on(graphics, Style.POINT), foot, number, of);
        graphics.dispose();
    }

    /** Maps the fonts that text is measured with to the same files, embedded. */
    private final class Mapper implements FontMapper {
        @Override
        public BaseFont awtToPdf(Font font) {
            return fonts.computeIfAbsent(Face.of(font), PdfPages::embedded);
        }

        @Override
        public Font pdfToAwt(BaseFont font, int size) {
            throw new UnsupportedOperationException("Only AWT fonts are mapped.");
        }
    }

    private static BaseFont embedded(Face face) {
        try {
            String name = face.file() + ".ttf";
            return BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, face.bytes(), null);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(face.file(), unreadable);
        }
    }

    /** Replaces the random prefixes of font subsets by AAAAAA+, AAAAAB+ and so on, in order of appearance. */
    private static byte[] counted(byte[] bytes) {
        Matcher found = SUBSET.matcher(new String(bytes, StandardCharsets.ISO_8859_1));
        Map<String, String> names = new HashMap<>();
        while (found.find()) {
            String name = names.computeIfAbsent(found.group(), random -> "/" + letters(names.size()) + "+");
            System.arraycopy(name.getBytes(StandardCharsets.US_ASCII), 0, bytes, found.start(), name.length());
        }
        return bytes;
    }

    private static String letters(int number) {
        StringBuilder letters = new StringBuilder();
        for (int rest = number, i = 0; i < 6; i++, rest /= 26) {
            letters.insert(0, (char) ('A' + rest % 26));
        }
        return letters.toString();
    }
}
