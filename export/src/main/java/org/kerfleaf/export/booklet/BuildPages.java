package org.kerfleaf.export.booklet;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.export.drawing.BuildPicture;
import org.kerfleaf.export.drawing.Drawing;
import org.kerfleaf.export.drawing.Drawings;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Plan;

/** The build as a whole: three views with sizes, a slice, the picture of it taken apart, and rain on it. */
final class BuildPages {
    private static final Style TITLE = Style.LABEL_SEMI;
    private static final double CAPTION = 12;

    /** Less room than this shows a slice too small. */
    private static final double LEAST = 95;

    private final Book book;
    private final Drawings drawings;

    BuildPages(Book book) {
        this.book = book;
        drawings = Drawings.of(book.plan());
    }

    void into(Flow flow) {
        Optional<Drawings.Named> views = drawings.named(Drawings.VIEWS);
        if (views.isEmpty()) {
            return;
        }
        Plan plan = book.plan();
        flow.page("The build", "The build", "");
        boolean mounted = plan.placed().stream().anyMatch(p -> p.mounted() > 0);
        String left = mounted ? " Without what it is mounted on." : " Without what stands beside it.";
        String without = drawings.viewsLeaveOut() ? left : "";
        add(flow, views.get(), flow.left(), without);
        drawings.named(Drawings.SLICE).ifPresent(slice -> {
            if (flow.left() < LEAST) {
                flow.next();
            }
            String black = plan.placed().stream().anyMatch(p -> p.seeThrough()) ? " Black is glass." : "";
            add(flow, slice, flow.left(), " Hatched is what the cut goes through." + black);
        });
        drawings.named(Drawings.TAKEN_APART).ifPresent(apart -> {
            flow.page("The build, taken apart", "Taken apart", "");
            add(flow, apart, flow.left(), "");
        });
        drawings.named(Drawings.RAIN).ifPresent(rain -> {
            flow.page("Where the rain goes", "Where the rain goes", "");
            Drawing drawing = rain.within(flow.width(), flow.left() - CAPTION);
            flow.add(Block.picture(drawing.height() + 4, (ink, x, y, w) -> drawing.paint(ink, x, y)));
        });
    }

    /** A drawing as large as fits with its caption. */
    private void add(Flow flow, Drawings.Named named, double room, String more) {
        Rich caption = Rich.of(named.title() + ". ", TITLE).plus(letters(named) + more, Style.LABEL);
        double words = Paragraph.of(caption, Style.LABEL, 1.35, 2).height(flow.width());
        Drawing drawing = named.within(flow.width(), room - words - CAPTION);
        Rich all = caption.plus((named.isSized() ? scale(drawing) : "") + notSeen(drawing), Style.LABEL);
        flow.together(List.of(
                Block.picture(
                        drawing.height() + 4, (ink, x, y, w) -> drawing.paint(ink, x + (w - drawing.width()) / 2, y)),
                Paragraph.of(all, Style.LABEL, 1.35, 4)));
    }

    private String scale(Drawing drawing) {
        String words = drawing.scale().words(book.measures().unit());
        return " " + Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    /** What the letters stand for, in the picture taken apart. */
    private String letters(Drawings.Named named) {
        if (!named.name().equals(Drawings.TAKEN_APART)) {
            return "";
        }
        return String.join(
                        ", ",
                        book.plan().placed().stream()
                                .map(p -> book.lettering().title(p.solid().part()))
                                .distinct()
                                .sorted()
                                .toList())
                + ".";
    }

    private static String notSeen(Drawing drawing) {
        if (drawing instanceof BuildPicture picture && !picture.notPointedAt().isEmpty()) {
            return " Not in sight: " + String.join(", ", picture.notPointedAt()) + ".";
        }
        return "";
    }
}
