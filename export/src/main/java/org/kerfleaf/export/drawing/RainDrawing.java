package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Rain;
import org.kerfleaf.plan.RainMark;

/**
 * Where rain goes: the build with the ways of the water, from the front and, where something lies on the far side, from behind; under
 * it what each number means, and what the walk does not follow.
 */
final class RainDrawing implements Drawing {
    private static final Style WORDS = Style.LABEL.at(9);
    private static final Style TITLE = Style.LABEL_SEMI.at(9);
    private static final Style KEY = new Style(Face.LABEL_BOLD, 8.5, Ink.BLACK);
    private static final double LEADING = 1.32;
    private static final double INDENT = 8;
    private static final double RADIUS = 2.3;

    /** What the pictures get at least, however long the list is. */
    private static final double LEAST = 60;

    private final List<RainPicture> pictures = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private final double width;
    private final boolean stacked;
    private final double high;
    private final double height;

    private record Entry(RainMark mark, List<Line> lines) {
        double height() {
            return lines.size() * WORDS.points() * Style.POINT * LEADING + 1.2;
        }
    }

    RainDrawing(Plan plan, Scene scene, Lettering letters, double maxWidth, double maxHeight) {
        Rain rain = plan.rain().orElseThrow();
        width = maxWidth;
        for (RainMark mark : rain.marks()) {
            String on = mark.parts().stream().distinct().map(letters::title).collect(Collectors.joining(", "));
            String where = mark.where().isEmpty() ? "" : ", " + mark.where();
            Rich words = Rich.of(on + where + ". ", TITLE).plus((mark.words() + " " + mark.advice()).strip(), WORDS);
            entries.add(new Entry(mark, words.wrap(width - INDENT)));
        }
        String nothing = rain.marks().isEmpty() ? "It finds no way into the wood and no place to stay. " : "";
        String key =
                "Arrows: water runs; dotted: it falls; double: it is dammed. A black number should be seen to; a white one is already, or is on the far side. ";
        entries.add(new Entry(null, Rich.of(nothing + key + Rain.LIMITS, WORDS).wrap(width)));
        double list = entries.stream().mapToDouble(Entry::height).sum() + 3;
        double room = Math.max(LEAST, maxHeight - list);
        RainPicture front = new RainPicture(scene, View.DIMETRIC, rain, width, room);
        boolean all = rain.marks().stream().allMatch(mark -> front.sees(mark.number()));
        if (all) {
            stacked = false;
            pictures.add(front);
        } else {
            List<RainPicture> beside = both(scene, rain, width / 2, room);
            List<RainPicture> below = both(scene, rain, width, room / 2);
            stacked = below.get(0).scale().times() < beside.get(0).scale().times();
            pictures.addAll(stacked ? below : beside);
        }
        high = stacked
                ? pictures.stream().mapToDouble(RainPicture::height).sum()
                : pictures.stream().mapToDouble(RainPicture::height).max().orElseThrow();
        height = high + list;
    }

    private static List<RainPicture> both(Scene scene, Rain rain, double wide, double high) {
        return List.of(
                new RainPicture(scene, View.DIMETRIC, rain, wide, high),
                new RainPicture(scene, View.BEHIND, rain, wide, high));
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return height;
    }

    @Override
    public Scale scale() {
        return pictures.get(0).scale();
    }

    @Override
    public void paint(Ink ink, double x, double y) {
        double each = stacked ? width : width / pictures.size();
        double down = y;
        for (int i = 0; i < pictures.size(); i++) {
            RainPicture picture = pictures.get(i);
            double right = stacked ? 0 : i * each;
            picture.paint(
                    ink,
                    x + right + (each - picture.width()) / 2,
                    stacked ? down : y + high - picture.height(),
                    number -> pictures.stream().anyMatch(other -> other.sees(number)));
            down += picture.height();
        }
        double at = y + high + 3;
        double line = WORDS.points() * Style.POINT * LEADING;
        for (Entry entry : entries) {
            double indent = entry.mark() == null ? 0 : INDENT;
            if (entry.mark() != null) {
                sign(ink, entry.mark().number(), entry.mark().isOpen(), x + RADIUS + 0.4, at + line * 0.55);
            }
            for (int i = 0; i < entry.lines().size(); i++) {
                ink.text(entry.lines().get(i), x + indent, at + line * (i + 0.78));
            }
            at += entry.height();
        }
    }

    /** A number in a drop's circle, white on black, or black in an outline. */
    static void sign(Ink ink, int number, boolean black, double x, double y) {
        ink.fill(Ink.circle(x, y, RADIUS), black ? Ink.BLACK : Ink.WHITE);
        ink.stroke(Ink.circle(x, y, RADIUS), Ink.BLACK, 0.3);
        Style style = new Style(KEY.face(), KEY.points(), black ? Ink.WHITE : Ink.BLACK);
        ink.centred(Rich.of(Integer.toString(number), style).line(), x, y + style.capital() / 2);
    }
}
