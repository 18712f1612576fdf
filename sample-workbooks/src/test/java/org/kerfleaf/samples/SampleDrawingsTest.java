package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.export.booklet.Paper;
import org.kerfleaf.export.drawing.BuildPicture;
import org.kerfleaf.export.drawing.Drawing;
import org.kerfleaf.export.drawing.DrawingSheet;
import org.kerfleaf.export.drawing.Drawings;
import org.kerfleaf.export.drawing.SvgSheet;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Vector;

/** Every drawing of every sample, read back from its SVG: at sizes as they stand and at others, on both papers, in both units. */
class SampleDrawingsTest {
    private static final double PHONE = 88;
    private static final List<String> VIEWS = List.of("front", "side", "top", "slice", "views");

    /** The build without what it is mounted on: the most pieces. */
    private static Bounds main(Plan plan) {
        if (!Drawings.of(plan).viewsLeaveOut()) {
            return whole(plan);
        }
        Map<Integer, Long> counts =
                plan.placed().stream().collect(Collectors.groupingBy(PlacedPart::build, Collectors.counting()));
        int most = counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
        return plan.placed().stream()
                .filter(p -> p.build() == most)
                .map(p -> p.solid().bounds())
                .reduce(Bounds::and)
                .orElseThrow();
    }

    private static Bounds whole(Plan plan) {
        return plan.placed().stream()
                .map(p -> p.solid().bounds())
                .reduce(Bounds::and)
                .orElseThrow();
    }

    static Stream<Arguments> plans() {
        List<Arguments> all = new ArrayList<>();
        Random random = new Random(20260412);
        for (Sample sample : Sample.ALL) {
            Plan said = sample.plan();
            all.add(Arguments.of(sample + ", as said", said));
            for (LengthUnit unit : LengthUnit.values()) {
                for (int i = 0; i < 2; i++) {
                    Map<String, String> sizes = sizes(said, random);
                    Plan plan = Planner.plan(sample.sketch(sizes), Sample.DAY, unit);
                    all.add(Arguments.of(sample + " in " + unit + " at " + sizes, plan));
                }
            }
        }
        return all.stream();
    }

    private static Map<String, String> sizes(Plan plan, Random random) {
        Map<String, String> sizes = new HashMap<>();
        for (Plan.PlannedSize size : plan.sizes()) {
            if (size.value() instanceof Length
                    && size.least().isPresent()
                    && size.most().isPresent()) {
                double least = ((Length) size.least().get()).inInches();
                double most = ((Length) size.most().get()).inInches();
                // The lower end keeps openings within the walls they are cut into.
                double inches = least + (most - least) * (0.2 + 0.3 * random.nextDouble());
                sizes.put(size.label(), Math.round(inches * 16) + "/16 in");
            }
        }
        return sizes;
    }

    private static DrawnSvg svg(Drawing drawing) {
        return new DrawnSvg(SvgSheet.of(
                "x", drawing.width(), drawing.height(), SvgSheet.Letters.TEXT, ink -> drawing.paint(ink, 0, 0)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void views_areTrueToScale(String name, Plan plan) {
        assertThat(plan.placed()).isNotEmpty();
        Vector whole = whole(plan).sizes();
        width(plan, "front", whole.x());
        width(plan, "side", whole.y());
        width(plan, "top", whole.x());
        DrawnSvg top = svg(drawing(plan, "top", 180, 250));
        double high =
                extent(top, false) * drawing(plan, "top", 180, 250).scale().times();
        assertThat(high).isCloseTo(whole.y(), within(0.03 * 200));
    }

    private static Drawing drawing(Plan plan, String name, double width, double height) {
        return Drawings.of(plan).named(name).orElseThrow().within(width, height);
    }

    private static void width(Plan plan, String name, double size) {
        for (double paper : new double[] {180, PHONE}) {
            Drawing drawing = drawing(plan, name, paper, 250);
            double times = drawing.scale().times();
            assertThat(extent(svg(drawing), true) * times)
                    .as(name + " at 1:" + times)
                    .isCloseTo(size, within(0.01 * times + 0.02));
        }
    }

    /** How far the outlines reach. */
    private static double extent(DrawnSvg svg, boolean across) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (DrawnSvg.Stroke s : svg.outlines()) {
            Rectangle2D box = s.line().getBounds2D();
            least = Math.min(least, across ? box.getMinX() : box.getMinY());
            most = Math.max(most, across ? box.getMaxX() : box.getMaxY());
        }
        return most - least;
    }

    /** Every printed millimetre value has, on the line under it, two strokes that are as far apart; across a break they are nearer. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void values_areTheLengthsOfTheirLines(String name, Plan plan) {
        if (plan.style().unit() != LengthUnit.MILLIMETRES) {
            return;
        }
        boolean broken = whole(plan).sizes().z() > 1.3 * main(plan).sizes().z();
        for (String view : VIEWS) {
            Drawing drawing = drawing(plan, view, 180, 250);
            DrawnSvg svg = svg(drawing);
            double times = drawing.scale().times();
            List<String> values = new ArrayList<>();
            for (DrawnSvg.Words words : svg.words) {
                double value = Double.parseDouble(words.text());
                boolean acrossBreak =
                        broken && words.upright() && value > main(plan).sizes().z() + 1;
                if (!acrossBreak) {
                    assertThat(lengths(svg, words))
                            .as(view + ": " + words.text() + " at 1:" + times)
                            .anySatisfy(length ->
                                    assertThat(length * times).isCloseTo(value, within(0.26 + 0.004 * times)));
                }
                values.add(words.text());
            }
            assertThat(values).as(view).isNotEmpty();
        }
    }

    /** All distances between two oblique strokes on the dimension line under some words. */
    private static List<Double> lengths(DrawnSvg svg, DrawnSvg.Words words) {
        double line = (words.upright() ? words.x() : words.y()) + 1.1;
        List<Double> places = svg.strokes.stream()
                .filter(DrawnSvg.Stroke::isTick)
                .filter(s -> Math.abs((words.upright() ? s.middleX() : s.middleY()) - line) < 0.02)
                .map(s -> words.upright() ? s.middleY() : s.middleX())
                .sorted()
                .toList();
        List<Double> lengths = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                lengths.add(places.get(j) - places.get(i));
            }
        }
        return lengths;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void values_neverOverlapAndNoSizeStandsTwice(String name, Plan plan) {
        for (double[] room : new double[][] {{Paper.A4.measure(), 250}, {Paper.LETTER.measure(), 230}, {PHONE, 160}}) {
            // Three views side by side are for paper.
            for (String view : room[0] == PHONE ? VIEWS.subList(0, 4) : VIEWS) {
                Drawing drawing = drawing(plan, view, room[0], room[1]);
                assertThat(drawing.width()).as(view).isLessThanOrEqualTo(room[0] + 1e-6);
                assertThat(drawing.height()).as(view).isLessThanOrEqualTo(room[1] + 1e-6);
                DrawnSvg svg = svg(drawing);
                // Without the halo that the boxes have at both ends.
                List<Rectangle2D> boxes =
                        svg.boxes.stream().map(SampleDrawingsTest::bare).toList();
                for (Rectangle2D a : boxes) {
                    assertThat(a.getMinX()).isGreaterThanOrEqualTo(-0.01);
                    assertThat(a.getMaxX()).isLessThanOrEqualTo(drawing.width() + 0.01);
                    for (Rectangle2D b : boxes) {
                        assertThat(a == b || !a.intersects(b))
                                .as("%s on %s mm: %s and %s", view, room[0], a, b)
                                .isTrue();
                    }
                }
                if (plan.style().unit() == LengthUnit.MILLIMETRES) {
                    Set<String> seen = new HashSet<>();
                    for (DrawnSvg.Words words : svg.words) {
                        assertThat(seen.add((words.upright() ? "up " : "across ") + words.text()))
                                .as(view + " says twice " + words.text())
                                .isTrue();
                    }
                }
            }
        }
    }

    private static Rectangle2D bare(Rectangle2D box) {
        double dx = box.getWidth() > box.getHeight() ? 0.6 : 0;
        double dy = box.getWidth() > box.getHeight() ? 0 : 0.6;
        return new Rectangle2D.Double(
                box.getX() + dx, box.getY() + dy, box.getWidth() - 2 * dx, box.getHeight() - 2 * dy);
    }

    /** What the slice hatches or blackens is as large as the wood in the plane, counted point by point. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void slice_hatchedArea_isTheWoodInThePlane(String name, Plan plan) {
        Drawing drawing = drawing(plan, "slice", 180, 250);
        DrawnSvg svg = svg(drawing);
        double times = drawing.scale().times();
        Bounds main = main(plan);
        double top = svg.strokes.stream()
                .filter(s -> s.width() > 0.2 && !s.isTick())
                .mapToDouble(s -> Math.min(s.line().getY1(), s.line().getY2()))
                .min()
                .orElseThrow();
        // What carries the build is drawn interrupted and has no true area: count above it only.
        double foot = top + main.sizes().z() / times;
        double drawn = hatched(svg, foot) + blackened(svg, foot);
        double x = main.middle().x() - 1e-3;
        double step = 1.0;
        double counted = 0;
        for (PlacedPart part : plan.placed()) {
            Bounds box = part.solid().bounds();
            if (box.low().x() > x
                    || box.high().x() < x
                    || box.high().z() <= main.low().z() + 0.1) {
                continue;
            }
            for (double y = box.low().y() + step / 2; y < box.high().y(); y += step) {
                for (double z = box.low().z() + step / 2; z < box.high().z(); z += step) {
                    counted += part.solid().holds(new Vector(x, y, z)) ? step * step : 0;
                }
            }
        }
        assertThat(drawn * times * times).as("at 1:" + times).isCloseTo(counted, within(0.05 * counted));
    }

    /** Lines of one hatch times how far they are apart. */
    private static double hatched(DrawnSvg svg, double foot) {
        Map<Integer, List<DrawnSvg.Stroke>> hatches = svg.strokes.stream()
                .filter(s -> Math.abs(s.width() - 0.18) < 0.005 && isAt45Degrees(s))
                .filter(s -> s.middleY() < foot)
                .collect(Collectors.groupingBy(DrawnSvg.Stroke::path));
        double area = 0;
        for (List<DrawnSvg.Stroke> hatch : hatches.values()) {
            double length = hatch.stream().mapToDouble(DrawnSvg.Stroke::length).sum();
            area += length * apart(hatch);
        }
        return area;
    }

    /** As hatching is drawn; what slopes beyond the plane is as thin, but not at that angle. */
    private static boolean isAt45Degrees(DrawnSvg.Stroke stroke) {
        double across = Math.abs(stroke.line().getX2() - stroke.line().getX1());
        double up = Math.abs(stroke.line().getY2() - stroke.line().getY1());
        return Math.abs(across - up) < 0.02 * (across + up);
    }

    private static double apart(List<DrawnSvg.Stroke> hatch) {
        DrawnSvg.Stroke first = hatch.get(0);
        boolean rising = (first.line().getX2() - first.line().getX1())
                        * (first.line().getY2() - first.line().getY1())
                < 0;
        double[] offsets = hatch.stream()
                .mapToDouble(s -> (s.middleX() * (rising ? 1 : -1) + s.middleY()) / Math.sqrt(2))
                .sorted()
                .toArray();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < offsets.length; i++) {
            double apart = offsets[i] - offsets[i - 1];
            least = apart > 0.5 ? Math.min(least, apart) : least;
        }
        return least == Double.POSITIVE_INFINITY ? 0 : least;
    }

    private static double blackened(DrawnSvg svg, double foot) {
        double area = 0;
        for (var shape : svg.black) {
            Rectangle2D box = shape.getBounds2D();
            if (box.getCenterY() > foot) {
                continue;
            }
            double step = 0.05;
            for (double x = box.getMinX() + step / 2; x < box.getMaxX(); x += step) {
                for (double y = box.getMinY() + step / 2; y < box.getMaxY(); y += step) {
                    area += shape.contains(x, y) ? step * step : 0;
                }
            }
        }
        return area;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void takenApart_pointsAtEveryLetterOnce(String name, Plan plan) {
        Set<String> letters = plan.placed().stream().map(PlacedPart::letter).collect(Collectors.toSet());
        for (Paper paper : Paper.values()) {
            BuildPicture apart = (BuildPicture) drawing(plan, "taken apart", paper.measure(), 200);
            assertThat(apart.notPointedAt()).as("on " + paper).isEmpty();
            List<String> said =
                    svg(apart).words.stream().map(DrawnSvg.Words::text).toList();
            assertThat(said).containsExactlyInAnyOrderElementsOf(letters);
        }
    }

    @Test
    void sheets_ofAllSamples_fitTheirPaperAndSayWhatTheyShow() {
        for (Sample sample : Sample.ALL) {
            Plan plan = sample.plan();
            for (Paper paper : Paper.values()) {
                for (Drawings.Named named : Drawings.of(plan).all()) {
                    DrawingSheet sheet = DrawingSheet.of(plan, named, paper.measure(), paper.usable());
                    assertThat(sheet.width()).as(named.name()).isLessThanOrEqualTo(paper.measure() + 1e-6);
                    assertThat(sheet.height()).as(named.name()).isLessThanOrEqualTo(paper.usable() + 1e-6);
                    DrawnSvg svg = new DrawnSvg(sheet.svg());
                    assertThat(svg.words).as("letters are outlines").isEmpty();
                    assertThat(svg.title).contains(named.title(), plan.title());
                    assertThat(svg.description).isEqualTo(named.says()).endsWith(".");
                    assertThat(sheet.svg()).isEqualTo(sheet.svg());
                }
            }
        }
    }

    @Test
    void drawings_ofTheCabinet_haveNamesThatStay() {
        assertThat(Drawings.of(Sample.CABINET.plan()).all())
                .extracting(Drawings.Named::name)
                .containsExactly(
                        "front",
                        "side",
                        "top",
                        "views",
                        "slice",
                        "taken apart",
                        "rain",
                        "lift",
                        "part A",
                        "part B",
                        "part C",
                        "part E",
                        "part F",
                        "part G",
                        "part H",
                        "part K",
                        "part N",
                        "part P",
                        "step 3",
                        "step 4",
                        "step 5",
                        "step 7",
                        "step 9",
                        "step 10",
                        "step 11");
    }
}
