package org.kerfleaf.export.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetSize;

/**
 * The numbered diamonds of a sheet's cuts. A cut that starts at the sheet's edge has its number outside, with an arrow
 * where the saw enters; a cut that starts inside has it on its own kerf, near the start.
 */
final class CutMarks {
    /** How far outside the sheet's edge a diamond's middle stands, and how much farther the next row does. */
    private static final double OUTSIDE = 5.6;

    private static final double ROW = 2 * Signs.DIAMOND + 0.3;

    /** Half the diagonal of a number on the sheet, where it must leave room for lettering. */
    private static final double SMALL = 2.75;

    private static final double APART = 2 * Signs.DIAMOND + 0.4;

    /** One cut from its start to its end, on paper. */
    private record Run(SheetCut cut, double x1, double y1, double x2, double y2) {
        double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }

        double dx() {
            return Math.signum(x2 - x1);
        }

        double dy() {
            return Math.signum(y2 - y1);
        }
    }

    private record Mark(Run run, double x, double y, boolean outside) {
        Rectangle2D room() {
            double r = (outside ? Signs.DIAMOND : SMALL) * 0.8;
            return Ink.box(x - r, y - r, 2 * r, 2 * r);
        }
    }

    private final List<Mark> marks = new ArrayList<>();

    /** Marks for a layout whose sheet is painted by that transform. */
    CutMarks(SheetLayout layout, OnPaper paper) {
        List<Run> inside = new ArrayList<>();
        for (Edge edge : Edge.values()) {
            List<Run> entering = layout.cuts().stream()
                    .filter(cut -> edge == Edge.entered(cut, layout.sheet()))
                    .map(paper::run)
                    .toList();
            outside(entering, edge, paper);
        }
        layout.cuts().stream()
                .filter(cut -> Edge.entered(cut, layout.sheet()) == null)
                .map(paper::run)
                .forEach(inside::add);
        inside.forEach(this::inside);
    }

    /** An edge of the sheet, or none. */
    enum Edge {
        LEFT,
        RIGHT,
        BOTTOM,
        TOP;

        /** The edge at which the saw enters, null if the cut starts inside. */
        static Edge entered(SheetCut cut, SheetSize sheet) {
            boolean forward = cut.to().isLongerThan(cut.from());
            var far = cut.across() ? sheet.width() : sheet.length();
            boolean atEdge = forward
                    ? !cut.from().isLongerThan(sheet.trim())
                    : !cut.from().isShorterThan(far.minus(sheet.trim()));
            if (!atEdge) {
                return null;
            }
            if (cut.across()) {
                return forward ? BOTTOM : TOP;
            }
            return forward ? LEFT : RIGHT;
        }

        boolean isUpright() {
            return this == LEFT || this == RIGHT;
        }
    }

    /** How the sheet lies on paper. */
    record OnPaper(double left, double top, SheetSize sheet, Scale scale) {
        double x(org.kerfleaf.measure.Length along) {
            return left + scale.paper(along);
        }

        double y(org.kerfleaf.measure.Length across) {
            return top + scale.paper(sheet.width().minus(across));
        }

        private Run run(SheetCut cut) {
            var middle = cut.at().plus(sheet.kerf().half());
            return cut.across()
                    ? new Run(cut, x(middle), y(cut.from()), x(middle), y(cut.to()))
                    : new Run(cut, x(cut.from()), y(middle), x(cut.to()), y(middle));
        }
    }

    private void outside(List<Run> runs, Edge edge, OnPaper paper) {
        List<Run> sorted = runs.stream()
                .sorted(Comparator.comparingDouble(run -> edge.isUpright() ? run.y1() : run.x1()))
                .toList();
        double from = edge.isUpright() ? paper.top() : paper.left();
        Spread spread = Spread.of(
                sorted.stream()
                        .mapToDouble(run -> edge.isUpright() ? run.y1() : run.x1())
                        .toArray(),
                from,
                from
                        + paper.scale()
                                .paper(
                                        edge.isUpright()
                                                ? paper.sheet().width()
                                                : paper.sheet().length()),
                APART);
        for (int i = 0; i < sorted.size(); i++) {
            Run run = sorted.get(i);
            double out = OUTSIDE + i % spread.rows() * ROW;
            double place = spread.places()[i];
            double x = edge.isUpright() ? run.x1() - run.dx() * out : place;
            double y = edge.isUpright() ? place : run.y1() - run.dy() * out;
            marks.add(new Mark(run, x, y, true));
        }
    }

    /** The room that the numbers of cuts entering at an edge take beside it. */
    static double room(SheetLayout layout, Edge edge, Scale scale) {
        SheetSize sheet = layout.sheet();
        int entering = (int) layout.cuts().stream()
                .filter(cut -> edge == Edge.entered(cut, sheet))
                .count();
        if (entering == 0) {
            return 0.5;
        }
        double length = scale.paper(edge.isUpright() ? sheet.width() : sheet.length());
        return OUTSIDE + Signs.DIAMOND + 0.4 + (Spread.rows(entering, length, APART) - 1) * ROW;
    }

    private void inside(Run run) {
        Mark best = null;
        for (double along = Math.min(SMALL + 1, run.length() / 2); along <= run.length(); along += 1) {
            Mark mark = new Mark(run, run.x1() + run.dx() * along, run.y1() + run.dy() * along, false);
            if (best == null) {
                best = mark;
            }
            if (marks.stream().noneMatch(other -> other.room().intersects(mark.room()))) {
                best = mark;
                break;
            }
        }
        marks.add(best);
    }

    /** What the diamonds on the sheet cover. */
    List<Rectangle2D> taken() {
        return marks.stream()
                .filter(mark -> !mark.outside())
                .map(CutMarks::around)
                .toList();
    }

    private static Rectangle2D around(Mark mark) {
        double r = SMALL + 0.2;
        return Ink.box(mark.x() - r, mark.y() - r, 2 * r, 2 * r);
    }

    void paint(Ink ink, OnPaper paper) {
        for (Mark mark : marks) {
            Run run = mark.run();
            double trim = mark.outside() ? paper.scale().paper(paper.sheet().trim()) : 0;
            if (mark.outside()) {
                double tipX = edgeOf(run.x1(), run.dx(), trim) - run.dx() * 0.3;
                double tipY = edgeOf(run.y1(), run.dy(), trim) - run.dy() * 0.3;
                Signs.arrow(ink, tipX, tipY, run.dx(), run.dy());
                ink.line(tipX - run.dx() * 1.5, tipY - run.dy() * 1.5, mark.x(), mark.y(), Ink.NARROW);
            } else if (run.length() > 3 * SMALL) {
                double reach = SMALL + 1.4;
                Signs.arrow(ink, mark.x() + run.dx() * reach, mark.y() + run.dy() * reach, run.dx(), run.dy());
            }
            Signs.diamond(ink, run.cut().number(), mark.x(), mark.y(), mark.outside() ? Signs.DIAMOND : SMALL);
        }
    }

    private static double edgeOf(double start, double direction, double trim) {
        return start - direction * trim;
    }
}
