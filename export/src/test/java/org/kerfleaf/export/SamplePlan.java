package org.kerfleaf.export;

import static org.kerfleaf.reason.Given.given;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.Department;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.BoardSize;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetSize;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.plan.Buying;
import org.kerfleaf.plan.Chain;
import org.kerfleaf.plan.Chain.Held;
import org.kerfleaf.plan.Chain.Link;
import org.kerfleaf.plan.Doors;
import org.kerfleaf.plan.Fastening;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Paintwork;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.site.Access;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Reach;

/**
 * A plan built by hand from the sizes of a seed-swap cabinet, 22 x 11 in inside, 24 in at the eaves, roof at 30 degrees.
 * It stands in for a planner's: figures come from the same arithmetic, words are a maker's.
 */
public final class SamplePlan {
    static final CurrencyUnit USD = CurrencyUnit.USD;
    static final LocalDate DAY = LocalDate.of(2026, 4, 20);

    private final MeasureStyle style;
    private final Length t = Length.ofSixtyFourths(46);
    private final Length wide = Length.ofInches(22);
    private final Length deep = Length.ofInches(11);
    private final Length eaves = Length.ofInches(24);
    private final Angle slope = Angle.ofDegrees(30);
    private final Length front = wide.plus(t, t);
    private final Length sideInside = eaves.plus(slope.rise(t));
    private final Length peak = eaves.plus(slope.rise(front.half()));
    private final Length roofUnder = slope.lengthOver(front.half()).plus(Length.ofInches(2));
    private final Length roofLong = roofUnder.plus(slope.rise(t));
    private final Length roofDeep = deep.plus(t, t, Length.ofInches(4));
    private final Length eaveTrim = roofDeep.plus(Length.ofInches(1.5));
    private final Length kerf = Length.ofSixtyFourths(8);

    private SamplePlan(MeasureStyle style) {
        this.style = style;
    }

    /** In inches to 1/32. */
    public static Plan inches() {
        return new SamplePlan(MeasureStyle.INCHES).plan();
    }

    /** The same sizes printed in millimetres. */
    public static Plan millimetres() {
        return new SamplePlan(MeasureStyle.MILLIMETRES).plan();
    }

    private List<Chain> chains() {
        Link side = new Link("Side", "C", t);
        Link floor = new Link("Floor", "A", wide);
        Link roof = new Link("Roof", "F", t.times(1 / slope.cos()));
        return List.of(
                new Chain(
                        0,
                        "Floor",
                        Axis.X,
                        List.of(side, floor, side),
                        front,
                        List.of(new Held("Width inside", wide, "between Side and Side"))),
                new Chain(
                        0,
                        "Floor",
                        Axis.Y,
                        List.of(new Link("Front", "E", t), new Link("Floor", "A", deep), new Link("Back", "B", t)),
                        deep.plus(t, t),
                        List.of(new Held("Depth inside", deep, "between Front and Back"))),
                new Chain(
                        0,
                        "Floor",
                        Axis.Z,
                        List.of(new Link("Back", "B", peak), roof),
                        peak.plus(roof.size()),
                        List.of()));
    }

    private Plan plan() {
        return new Plan(
                "A seed-swap cabinet for the garden gate",
                style,
                DAY,
                USD,
                Optional.of(LocalDate.of(2026, 4, 12)),
                List.of(),
                parts(),
                List.of(),
                List.of(),
                new Fastening(List.of(), List.of(), List.of(), markings()),
                List.of(sheet()),
                boards(),
                bounds(),
                sawSettings(),
                List.of(),
                List.of(),
                Paintwork.NONE,
                cost(),
                checks(),
                SampleSteps.steps(),
                new Schedule(
                        figure(Duration.ofMinutes(655), "the sum of the steps' hours"),
                        List.of(1),
                        List.of(new Schedule.Ahead("Ask for buried lines to be located", 3)),
                        Optional.empty()),
                Buying.NOTHING,
                Optional.of(new SitePlan(
                        figure(Volume.ofCubicMillimetres(56_633_693), "π · r² · depth"),
                        figure(Volume.ofCubicMillimetres(5_148_518), "π · r² · depth of the gravel"),
                        figure(Length.ofInches(40), "hole less gravel"),
                        Optional.of(figure(Length.ofInches(33.5), "post top and seat")),
                        Optional.of(figure(Length.ofInches(45.5), "box bottom and door")),
                        figure(Volume.ofCubicMillimetres(70_792_116), "hole · 1.25"),
                        Optional.empty(),
                        Optional.of(figure(Length.ofInches(32), "post - in the ground")),
                        Optional.empty(),
                        Access.of(List.of(Reach.ADULT), MeasureStyle.of(LengthUnit.INCHES)),
                        Optional.empty(),
                        Optional.empty())),
                Loads.NONE,
                Optional.empty(),
                Doors.NONE,
                SampleSteps.cautions(),
                Optional.of(new Plan.Overall(
                        figure(front.plus(slope.lengthOver(Length.ofInches(4))), "over the roof"),
                        figure(roofDeep, "over the roof"),
                        figure(Length.ofInches(31.59576), "roof top at the peak"))),
                chains(),
                Optional.of(figure(Mass.ofPounds(58.4), "volumes by densities")),
                List.of());
    }

    private static <T> Figure<T> figure(T value, String rule) {
        return Figure.of(value, rule, Reason.GEOMETRY);
    }

    private String say(Length length) {
        return length.in(style);
    }

    private List<PlannedPart> parts() {
        List<PlannedPart> parts = new ArrayList<>();
        parts.add(panel("A", "Floor", 1, wide, deep, List.of(), "two weep holes " + say(Length.ofSixtyFourths(24))));
        parts.add(panel(
                "B",
                "Side",
                2,
                sideInside,
                deep,
                List.of(PlannedEdge.bevel("top", figure(slope, "roof slope"), figure(slope.rise(t), "t · tan"))),
                ""));
        parts.add(panel("C", "Back", 1, peak, front, List.of(), "gable at 30°; two vents " + say(Length.ofInches(1))));
        parts.add(panel(
                "D",
                "Front",
                1,
                peak,
                front,
                List.of(),
                "gable at 30°; opening “doorway” " + say(Length.ofInches(16)) + " × " + say(Length.ofInches(18))));
        parts.add(panel("E", "Shelf", 2, wide, Length.ofInches(8), List.of(), ""));
        parts.add(panel(
                "F",
                "Roof",
                2,
                roofDeep,
                roofLong,
                List.of(PlannedEdge.bevel(
                        "ridge", figure(slope, "half of 180° less 120°"), figure(slope.rise(t), "t · tan"))),
                ""));
        parts.add(panel(
                "G",
                "Door",
                1,
                Length.ofInches(20),
                Length.ofInches(18),
                List.of(),
                "opening “window” " + say(Length.ofInches(13)) + " × " + say(Length.ofInches(15)) + ", rabbet inside "
                        + say(Length.ofSixtyFourths(12)) + " deep"));
        parts.add(board("H", "Rake trim", 4, "1x2", roofLong, Length.ofSixtyFourths(96), Length.ofSixtyFourths(48)));
        parts.add(board("J", "Eave trim", 2, "1x2", eaveTrim, Length.ofSixtyFourths(96), Length.ofSixtyFourths(48)));
        parts.add(board(
                "K", "Ridge cap", 1, "aluminium ridge angle", eaveTrim, Length.ofInches(2), Length.ofSixtyFourths(4)));
        parts.add(board("L", "Post", 1, "4x4", Length.ofInches(72), Length.ofInches(3.5), Length.ofInches(3.5)));
        parts.add(board("M", "Arm", 2, "2x8", Length.ofInches(18), Length.ofInches(7.25), Length.ofInches(1.5)));
        parts.add(board("N", "Seat", 1, "2x8", Length.ofInches(20), Length.ofInches(7.25), Length.ofInches(1.5)));
        parts.add(new PlannedPart(
                "P",
                "Pane",
                PartKind.PANE,
                1,
                false,
                "acrylic",
                "acrylic, sold as 1/8 in",
                figure(Length.ofSixtyFourths(1020), "P / 1.0024, down to 1/16"),
                figure(Length.ofSixtyFourths(892), "P / 1.0024, down to 1/16"),
                figure(Length.ofSixtyFourths(8), "as sold"),
                false,
                figure(Length.ofInches(14).by(Length.ofInches(16)), "length by width"),
                List.of(),
                List.of("keep the film on"),
                Optional.of("Measure the pocket twice each way before you cut."),
                Optional.empty()));
        return parts;
    }

    private PlannedPart panel(
            String letter, String name, int count, Length length, Length width, List<PlannedEdge> edges, String then) {
        return new PlannedPart(
                letter,
                name,
                PartKind.PANEL,
                count,
                count == 2 && !edges.isEmpty(),
                "exterior plywood",
                "exterior plywood, sold as 3/4 in",
                figure(length, "from the sizes"),
                figure(width, "from the sizes"),
                Figure.said(t, "caliper"),
                true,
                figure(length.by(width), "length by width"),
                edges,
                then.isEmpty() ? List.of() : List.of(then),
                Optional.empty(),
                Optional.empty());
    }

    private PlannedPart board(
            String letter, String name, int count, String stock, Length length, Length width, Length thickness) {
        return new PlannedPart(
                letter,
                name,
                PartKind.BOARD,
                count,
                false,
                stock,
                stock,
                figure(length, "from the roof"),
                figure(width, "dressed size"),
                figure(thickness, "dressed size"),
                true,
                figure(length.by(width), "length by width"),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private SheetLayout sheet() {
        SheetSize size = new SheetSize(
                "exterior plywood",
                Length.ofInches(96),
                Length.ofInches(48),
                Length.ofSixtyFourths(16),
                kerf,
                Integer.MAX_VALUE);
        return new SampleSheet(size)
                .row(piece("Back", peak, front), piece("Front", peak, front))
                .row(
                        piece("Side", sideInside, deep),
                        piece("Side", sideInside, deep),
                        piece("Door", Length.ofInches(20), Length.ofInches(18)))
                .row(piece("Roof", roofDeep, roofLong), piece("Roof", roofDeep, roofLong))
                .row(
                        piece("Floor", wide, deep),
                        piece("Shelf", wide, Length.ofInches(8)),
                        piece("Shelf", wide, Length.ofInches(8)))
                .laidOut();
    }

    private static SampleSheet.Piece piece(String part, Length length, Length width) {
        return new SampleSheet.Piece(part, length, width, false);
    }

    private List<BoardLayout> boards() {
        Length eight = Length.ofInches(96);
        return List.of(
                boardOf("4x4", eight, "14.60", List.of("Post"), List.of(Length.ofInches(72))),
                boardOf(
                        "2x8",
                        eight,
                        "11.20",
                        List.of("Arm", "Arm", "Seat"),
                        List.of(Length.ofInches(18), Length.ofInches(18), Length.ofInches(20))),
                boardOf(
                        "1x2",
                        eight,
                        "4.10",
                        List.of("Rake trim", "Rake trim", "Rake trim", "Rake trim", "Eave trim"),
                        List.of(roofLong, roofLong, roofLong, roofLong, eaveTrim)),
                boardOf("1x2", eight, "4.10", List.of("Eave trim"), List.of(eaveTrim)),
                boardOf("aluminium ridge angle", Length.ofInches(72), "7.80", List.of("Ridge cap"), List.of(eaveTrim)));
    }

    private BoardLayout boardOf(String stock, Length length, String price, List<String> parts, List<Length> lengths) {
        BoardSize size =
                new BoardSize(stock, length, Length.ZERO, kerf, Optional.of(Money.of(USD, Double.parseDouble(price))));
        List<BoardLayout.BoardPlacement> placements = new ArrayList<>();
        Length at = Length.ZERO;
        for (int i = 0; i < parts.size(); i++) {
            placements.add(new BoardLayout.BoardPlacement(parts.get(i), at, lengths.get(i)));
            at = at.plus(lengths.get(i), kerf);
        }
        return new BoardLayout(size, placements, length.minus(at).max(Length.ZERO));
    }

    private List<StockBound> bounds() {
        return List.of(
                new StockBound(
                        "exterior plywood",
                        1,
                        1,
                        true,
                        "One sheet is enough. Fewer is impossible: the parts need one."),
                new StockBound("4x4", 1, 1, true, "One board; fewer is impossible."),
                new StockBound("2x8", 1, 1, true, "One board; fewer is impossible."),
                new StockBound(
                        "1x2",
                        2,
                        2,
                        true,
                        "Two boards. One is impossible: the pieces are "
                                + say(roofLong.times(4).plus(eaveTrim.times(2))) + " long in all and a board is "
                                + say(Length.ofInches(96)) + "."),
                new StockBound("aluminium ridge angle", 1, 1, true, "One length; fewer is impossible."));
    }

    private List<SawSetting> sawSettings() {
        Figure<Angle> square = figure(Angle.ZERO, "square");
        Figure<Angle> tilted = figure(slope, "the roof's slope");
        Figure<Length> shallow = figure(t.plus(Length.ofSixtyFourths(16)), "t + 1/4 in");
        Figure<Length> depth = Figure.of(
                slope.lengthOver(t).plus(Length.ofSixtyFourths(16)),
                "t / cos tilt + 1/4 in",
                Reason.GEOMETRY,
                given("t", t));
        var left = new SawSetting.Straightedge("left of the line", Figure.said(Length.ofInches(1.5), "saw"));
        var right = new SawSetting.Straightedge("right of the line", Figure.said(Length.ofInches(5), "saw"));
        Figure<Angle> scale = Figure.of(
                Angle.ofDegrees(30),
                "a mitre scale reads from square: 90° less half of the angle between the pieces",
                Reason.GEOMETRY,
                given("between the pieces", Angle.ofDegrees(120)));
        return List.of(
                new SawSetting(
                        "circular saw",
                        List.of("A", "B", "C", "D", "E", "F", "G"),
                        "all straight cuts",
                        "good face down",
                        square,
                        Optional.empty(),
                        Optional.of(shallow),
                        List.of(left, right),
                        List.of(),
                        List.of(new SawSetting.Guide(
                                Length.ofInches(11),
                                List.of(new SawSetting.NumberedCut(1, 7), new SawSetting.NumberedCut(1, 8)),
                                List.of(new SawSetting.Straightedge(
                                        left.where(), Figure.said(Length.ofInches(9.5), "saw"))))),
                        ""),
                new SawSetting(
                        "circular saw",
                        List.of("B"),
                        "top edge, long point inside",
                        "good face down",
                        tilted,
                        Optional.empty(),
                        Optional.of(depth),
                        List.of(left),
                        List.of(),
                        List.of(),
                        "Try it on a scrap first."),
                new SawSetting(
                        "circular saw",
                        List.of("F"),
                        "ridge edge, long point on top",
                        "good face down",
                        tilted,
                        Optional.empty(),
                        Optional.of(depth),
                        List.of(left),
                        List.of(),
                        List.of(),
                        "Both halves from one setting."),
                new SawSetting(
                        "mitre saw",
                        List.of("H"),
                        "upper end, at the ridge",
                        "good face up",
                        square,
                        Optional.of(scale),
                        Optional.empty(),
                        List.of(),
                        List.of(new Reading(
                                "stop block, long point, H, 4 pieces", Figure.said(Length.ofInches(16), "rake"))),
                        List.of(),
                        "Two left, two right."),
                new SawSetting(
                        "mitre saw",
                        List.of("J", "K", "L", "M", "N"),
                        "square ends",
                        "good face up",
                        square,
                        Optional.of(figure(Angle.ZERO, "square ends")),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of(),
                        ""),
                new SawSetting(
                        "jigsaw",
                        List.of("D", "G"),
                        "doorway and window",
                        "good face down",
                        square,
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of(),
                        "Start from a hole in each corner."));
    }

    private Cost cost() {
        List<CostLine> lines = List.of(
                line(
                        Department.TIMBER,
                        "exterior plywood",
                        say(Length.ofInches(48)) + " × " + say(Length.ofInches(96)) + ", sold as "
                                + say(Length.ofSixtyFourths(48)) + ", measures " + say(t),
                        1,
                        0.75,
                        "61.50"),
                line(
                        Department.TIMBER,
                        "4x4, treated",
                        say(Length.ofInches(96)) + " long, for the post",
                        1,
                        0.75,
                        "14.60"),
                line(
                        Department.TIMBER,
                        "2x8, treated",
                        say(Length.ofInches(96)) + " long, for arms and seat",
                        1,
                        0.59,
                        "11.20"),
                line(Department.TIMBER, "1x2", say(Length.ofInches(96)) + " long, for the trim", 2, 0.53, "4.10"),
                line(Department.TIMBER, "aluminium ridge angle", say(Length.ofInches(72)) + " long", 1, 0.25, "7.80"),
                line(
                        Department.GLAZING,
                        "acrylic",
                        say(Length.ofInches(18)) + " × " + say(Length.ofInches(24)) + ", "
                                + say(Length.ofSixtyFourths(8)) + " thick",
                        1,
                        0.52,
                        "17.90"),
                line(Department.GLAZING, "glazing tape", say(Length.ofSixtyFourths(4)) + " thick", 1, 0.4, "6.20"),
                line(
                        Department.IRONMONGER,
                        "wood screws, No. 6 x 1 5/8 in, stainless",
                        "box of 100; 58 are used",
                        1,
                        0.58,
                        "9.40"),
                line(Department.IRONMONGER, "hinges, overlay, self-closing", "stainless", 2, 1, "4.75"),
                line(
                        Department.IRONMONGER,
                        "carriage bolts, 3/8 x 7 1/2 in",
                        "hot-dip galvanised, with washers and nuts",
                        2,
                        1,
                        null),
                line(Department.IRONMONGER, "magnetic catch", "for the door", 2, 1, "3.20"),
                line(Department.FINISH, "exterior PVA glue", "8 fl oz", 1, 0.45, "5.60"),
                line(Department.FINISH, "paintable acrylic latex caulk", "10.1 fl oz cartridge", 1, 0.6, "4.30"),
                line(Department.FINISH, "exterior primer", "1 qt, one coat inside and outside", 1, 0.7, "13.90"),
                line(
                        Department.FINISH,
                        "exterior latex, two colours",
                        "1 qt, two coats inside and outside",
                        2,
                        0.8,
                        "17.50"),
                line(Department.GROUND, "gravel", "under the post", 1, 0.36, null));
        Money bought = lines.stream().flatMap(l -> l.bought().stream()).reduce(Money.zero(USD), Money::plus);
        Money total = Money.of(USD, 273);
        return new Cost(
                lines,
                Optional.of(Figure.of(bought, "packs times price", Reason.THE_WORKBOOK)),
                Optional.of(Figure.of(Money.of(USD, 148.23), "price times the share used", Reason.THE_WORKBOOK)),
                List.of("carriage bolts, 3/8 x 7 1/2 in", "gravel"),
                List.of(new Cost.KitComparison(
                        "A ready-made cabinet",
                        Money.of(USD, 199),
                        Optional.of(Money.of(USD, 74)),
                        Figure.of(total, "price and freight", Reason.THE_WORKBOOK),
                        Optional.of(Figure.of(total.minus(bought), "kit less build", Reason.THE_WORKBOOK)),
                        List.of("post", "paint"),
                        Optional.empty())),
                1);
    }

    private CostLine line(Department department, String what, String detail, int packs, double share, String price) {
        return new CostLine(
                department,
                what,
                detail,
                Figure.of(packs, "need by pack, up", Reason.COMMON_PRACTICE),
                Optional.of(Figure.of(Ratio.of(share), "need by packs", Reason.COMMON_PRACTICE)),
                Optional.ofNullable(price).map(p -> Money.of(USD, Double.parseDouble(p))));
    }

    private List<Check> checks() {
        String wood = "Wood Handbook, chapter 8";
        return List.of(
                check(
                        "Screw reach: Back to Floor",
                        "Through " + say(t) + " of back, head " + say(Length.ofSixtyFourths(4))
                                + " down, a No. 6 x 1 5/8 in screw reaches " + say(Length.ofSixtyFourths(62))
                                + ". Wanted: " + say(Length.ofSixtyFourths(53)) + ".",
                        say(Length.ofSixtyFourths(9)),
                        0.17,
                        "",
                        wood),
                check(
                        "Screw in the edge: Floor",
                        "The line is " + say(t.half()) + " from the face; wanted 2.5 diameters, "
                                + say(Length.ofSixtyFourths(22)) + ".",
                        say(Length.ofSixtyFourths(1)),
                        0.05,
                        "",
                        wood),
                check(
                        "Frame round the window",
                        "The frame is " + say(Length.ofInches(2.5)) + " wide; wanted " + say(Length.ofInches(2)) + ".",
                        say(Length.ofInches(0.5)),
                        0.25,
                        "",
                        Reason.COMMON_PRACTICE),
                check(
                        "Rabbet lip",
                        "The lip left is " + say(Length.ofSixtyFourths(34)) + "; wanted "
                                + say(Length.ofSixtyFourths(16)) + ".",
                        say(Length.ofSixtyFourths(18)),
                        1.1,
                        "",
                        Reason.COMMON_PRACTICE),
                check(
                        "Pane's bite when cold",
                        "60 F down, the pane still lies " + say(Length.ofSixtyFourths(29)) + " in the rabbet; wanted "
                                + say(Length.ofSixtyFourths(24)) + ".",
                        say(Length.ofSixtyFourths(5)),
                        0.2,
                        "",
                        "facts of the maker of the sheet"),
                check(
                        "Weatherstrip squeeze",
                        "3/16 in squeezed to 1/8 in is 33 %; wanted 25 to 50 %.",
                        "8 %",
                        0.32,
                        "",
                        Reason.COMMON_PRACTICE),
                check(
                        "Reach to the knob",
                        "The knob is " + say(Length.ofInches(45.5)) + " above the ground; wanted "
                                + say(Length.ofInches(15)) + " to " + say(Length.ofInches(48)) + ".",
                        say(Length.ofInches(2.5)),
                        0.05,
                        "",
                        "ADA Standards 308"),
                check(
                        "Overhang past the door",
                        "The roof passes the door by " + say(Length.ofSixtyFourths(74)) + "; wanted "
                                + say(Length.ofInches(1)) + ".",
                        say(Length.ofSixtyFourths(10)),
                        0.16,
                        "",
                        Reason.COMMON_PRACTICE),
                new Check(
                        "Post in the ground: wind",
                        "An estimate: P " + "75.4 lb at 47.8 in needs " + say(Length.ofInches(50.1))
                                + " in sand; the post has " + say(Length.ofInches(40))
                                + ". With the doubling of IBC 1806.3.4 it needs " + say(Length.ofInches(38.2)) + ".",
                        "lacks " + say(Length.ofInches(10.1)),
                        OptionalDouble.of(-0.2),
                        Check.Verdict.SHORT,
                        "A hole " + say(Length.ofInches(55)) + " deep would hold. " + SitePlan.DEFERS,
                        "IBC 1807.3.2.1, ASCE 7-22"),
                new Check(
                        "Frost depth",
                        "The hole's foot is " + say(Length.ofInches(44)) + " below grade.",
                        "",
                        OptionalDouble.empty(),
                        Check.Verdict.NOT_KNOWN,
                        "Say how deep the ground freezes where it stands: .frost(\"36 in\").",
                        "local building code"),
                new Check(
                        "Shelf's sag",
                        "The load on a shelf was not said.",
                        "",
                        OptionalDouble.empty(),
                        Check.Verdict.NOT_KNOWN,
                        "Say the load: .carries(\"20 lb\").",
                        wood),
                check(
                        "Hinges carry the door",
                        "The door weighs 6.2 lb; two hinges carry 12 lb.",
                        "5.8 lb",
                        0.48,
                        "",
                        Reason.COMMON_PRACTICE));
    }

    private static Check check(String name, String result, String margin, double level, String advice, String source) {
        return new Check(name, result, margin, OptionalDouble.of(level), Check.Verdict.HOLDS, advice, source);
    }

    /** One part seen from either face, crowded; the second too narrow for the words at its lines. */
    private static List<Marking> markings() {
        Outline outline = Outline.rectangle(Length.ofInches(22), Length.ofInches(11))
                .opening("weep", Outline.circle(Length.ofInches(0.375)).moved(Length.ofInches(2), Length.ofInches(1)));
        List<Vector> holes = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            holes.add(new Vector(40 + 36 * i, i % 2 == 0 ? 9 : 250, 0));
        }
        List<GuideLine> guides = List.of(
                new GuideLine(new Vector(0, 9, 0), new Vector(558.8, 9, 0), "middle of Back"),
                new GuideLine(new Vector(550, 0, 0), new Vector(550, 279.4, 0), "middle of right Side"));
        List<Marking> markings = new ArrayList<>();
        for (SheetSide up : SheetSide.values()) {
            markings.add(new Marking(
                    "Floor",
                    "A Floor, " + up,
                    Solid.of(outline, Length.ofInches(0.75)),
                    up,
                    guides,
                    holes,
                    up + " up, the back at the top.",
                    "Mark both alike.",
                    "At each small cross: a finish nail 1 1/2 in long."));
        }
        markings.add(new Marking(
                "Cleat",
                "B Cleat",
                Solid.of(Outline.rectangle(Length.ofInches(20), Length.ofInches(0.75)), Length.ofInches(0.75)),
                SheetSide.INSIDE,
                List.of(new GuideLine(new Vector(0, 9, 0), new Vector(508, 9, 0), "middle of Floor")),
                List.of(new Vector(40, 9, 0), new Vector(470, 9, 0)),
                "INSIDE up.",
                "",
                ""));
        return markings;
    }
}
