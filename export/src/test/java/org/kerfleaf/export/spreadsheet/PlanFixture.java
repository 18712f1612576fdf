package org.kerfleaf.export.spreadsheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.caution.Topic;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.Cost.KitComparison;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.Department;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.BoardLayout.BoardPlacement;
import org.kerfleaf.cutting.BoardSize;
import org.kerfleaf.cutting.Offcut;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPlacement;
import org.kerfleaf.cutting.SheetSize;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.plan.Buying;
import org.kerfleaf.plan.Chain;
import org.kerfleaf.plan.Chain.Held;
import org.kerfleaf.plan.Chain.Link;
import org.kerfleaf.plan.Change;
import org.kerfleaf.plan.Doors;
import org.kerfleaf.plan.Fastened;
import org.kerfleaf.plan.Fastening;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Paintwork;
import org.kerfleaf.plan.Paintwork.Bare;
import org.kerfleaf.plan.Paintwork.CoatedFace;
import org.kerfleaf.plan.Paintwork.PaintBy;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Plan.Overall;
import org.kerfleaf.plan.Plan.PlannedSize;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.plan.PlannedStep.Take;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Given;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.saw.SawSetting.Straightedge;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.site.Access;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.sketch.Reach;

/**
 * A small plan made by hand, for the tests of what leaves the workbook: a potting tray with a sloped back. It is no
 * build to follow; it has one of everything an exporter meets. Its sums are computed here, never typed.
 */
public final class PlanFixture {
    public static final CurrencyUnit USD = CurrencyUnit.USD;
    private static final Length PLY = Length.ofSixtyFourths(46);
    private static final Length KERF = inches(0, 8);
    private static final String SHEET = "exterior plywood";
    private static final String STRIP = "1x2";

    private PlanFixture() {}

    /** In inches to 1/32 in. */
    public static Plan inches() {
        return plan(MeasureStyle.INCHES, List.of());
    }

    /** The same lengths, printed in millimetres. */
    public static Plan millimetres() {
        return plan(MeasureStyle.MILLIMETRES, List.of());
    }

    /** With a problem that the planner found. */
    public static Plan withProblem() {
        return plan(
                MeasureStyle.INCHES,
                List.of(new Problem(
                        new Origin(2, 0, 41, 0), "Shelf and Back are in one place: 1/4 × 7 1/4 × 18 7/8 in of both.")));
    }

    /** With lines to buy of which no price is known. */
    public static Plan withoutPrices() {
        Plan plan = inches();
        List<CostLine> lines = plan.cost().lines().stream()
                .map(line -> new CostLine(
                        line.department(), line.what(), line.detail(), line.packs(), line.share(), Optional.empty()))
                .toList();
        Cost cost = new Cost(
                lines,
                Optional.empty(),
                Optional.empty(),
                lines.stream().map(CostLine::what).toList(),
                plan.cost().compare().stream()
                        .map(kit -> new KitComparison(
                                kit.name(),
                                kit.price(),
                                kit.freight(),
                                kit.total(),
                                Optional.empty(),
                                kit.lacks(),
                                Optional.empty()))
                        .toList(),
                1);
        return new Plan(
                plan.title(),
                plan.style(),
                plan.day(),
                plan.currency(),
                Optional.empty(),
                plan.sizes(),
                plan.parts(),
                plan.placed(),
                plan.movement(),
                plan.fastening(),
                plan.sheets(),
                plan.boards(),
                plan.bounds(),
                plan.sawSettings(),
                plan.hardware(),
                plan.finish(),
                plan.paintwork(),
                cost,
                plan.checks(),
                plan.steps(),
                plan.schedule(),
                plan.buying(),
                plan.site(),
                plan.loads(),
                plan.rain(),
                plan.doors(),
                plan.cautions(),
                plan.overall(),
                plan.chains(),
                plan.weight(),
                plan.problems());
    }

    /** A workbook that has said nothing but its title. */
    public static Plan bare() {
        Figure<Money> nothing = Figure.of(Money.zero(USD), "nothing is bought", Reason.GEOMETRY);
        return new Plan(
                "An empty bench",
                MeasureStyle.MILLIMETRES,
                LocalDate.of(2026, 4, 12),
                USD,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Fastening.NONE,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Paintwork.NONE,
                new Cost(List.of(), Optional.of(nothing), Optional.of(nothing), List.of(), List.of(), 1),
                List.of(),
                List.of(),
                new Schedule(figure(Duration.ZERO, "no step"), List.of(), List.of(), Optional.empty()),
                Buying.NOTHING,
                Optional.empty(),
                Loads.NONE,
                Optional.empty(),
                Doors.NONE,
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of());
    }

    /** The same plan with pieces in their places. */
    public static Plan withPlaced(Plan plan, List<PlacedPart> placed) {
        return new Plan(
                plan.title(),
                plan.style(),
                plan.day(),
                plan.currency(),
                plan.pricesOf(),
                plan.sizes(),
                plan.parts(),
                List.copyOf(placed),
                plan.movement(),
                plan.fastening(),
                plan.sheets(),
                plan.boards(),
                plan.bounds(),
                plan.sawSettings(),
                plan.hardware(),
                plan.finish(),
                plan.paintwork(),
                plan.cost(),
                plan.checks(),
                plan.steps(),
                plan.schedule(),
                plan.buying(),
                plan.site(),
                plan.loads(),
                plan.rain(),
                plan.doors(),
                plan.cautions(),
                plan.overall(),
                plan.chains(),
                plan.weight(),
                plan.problems());
    }

    /** With one contact whose fasteners have their places. */
    public static Plan fastened(Fastened contact) {
        return plan(MeasureStyle.INCHES, List.of(), new Fastening(List.of(contact), List.of(), List.of(), List.of()));
    }

    private static Plan plan(MeasureStyle style, List<Problem> problems) {
        return plan(style, problems, Fastening.NONE);
    }

    private static Plan plan(MeasureStyle style, List<Problem> problems, Fastening fastening) {
        return new Plan(
                "A potting tray & its shelf",
                style,
                LocalDate.of(2026, 4, 20),
                USD,
                Optional.of(LocalDate.of(2026, 4, 12)),
                List.of(
                        new PlannedSize("Width inside", inches(18, 56), bound(16), bound(30)),
                        new PlannedSize("Back slope", Angle.ofDegrees(14.5), Optional.empty(), Optional.empty())),
                parts(),
                List.of(),
                List.of(),
                fastening,
                List.of(sheet()),
                boards(),
                List.of(
                        new StockBound(
                                SHEET,
                                1,
                                1,
                                true,
                                "One half sheet is enough. Fewer is impossible: there is no smaller sheet on your list."),
                        new StockBound(STRIP, 2, 1, false, "2 boards; 1 is not ruled out.")),
                sawSettings(),
                hardware(),
                finish(),
                paintwork(),
                cost(),
                checks(),
                steps(),
                new Schedule(
                        figure(Duration.ofMinutes(195), "the sum of the steps that say their time"),
                        List.of(4),
                        List.of(new Schedule.Ahead("Ask for buried lines to be located", 3)),
                        Optional.empty()),
                Buying.NOTHING,
                Optional.of(site()),
                Loads.NONE,
                Optional.empty(),
                Doors.NONE,
                cautions(),
                Optional.of(new Overall(
                        figure(inches(20, 20), "width and two thicknesses"),
                        figure(inches(9, 0), "deep"),
                        figure(inches(11, 2), "high"))),
                chains(),
                Optional.empty(),
                problems);
    }

    /** A floor painted before its step closes it in, a back that comes too late, and a strip that is masked. */
    private static Paintwork paintwork() {
        return new Paintwork(
                List.of(new CoatedFace(
                        2,
                        "Floor",
                        "inside face",
                        1,
                        figure(Area.ofSquareMillimetres(100_000), "what of it lies open"),
                        List.of("exterior latex"),
                        2)),
                List.of(
                        new PaintBy("Floor", "inside face", 3, "Back", OptionalInt.of(2), true),
                        new PaintBy("Back", "inside face", 4, "Cleat", OptionalInt.empty(), false)),
                List.of(new Bare(
                        "Floor",
                        "inside face",
                        2,
                        3,
                        List.of("Back"),
                        Area.ofSquareMillimetres(9_000),
                        inches(0, 46),
                        Optional.of(true))));
    }

    /** Left to right a chain that closes on a size that is held, up and down one that is 1/64 in short. */
    private static List<Chain> chains() {
        Link side = new Link("Side", "B", inches(0, 46));
        Link floor = new Link("Floor", "A", inches(18, 56));
        return List.of(
                new Chain(
                        0,
                        "Floor",
                        Axis.X,
                        List.of(side, floor, side),
                        inches(20, 20),
                        List.of(new Held("Width inside", inches(18, 56), "between Side and Side"))),
                new Chain(
                        0,
                        "Floor",
                        Axis.Z,
                        List.of(new Link("Floor", "A", inches(0, 46)), new Link("Back", "C", inches(10, 19))),
                        inches(11, 2),
                        List.of()));
    }

    /** What a wider tray changes: a size, a part, a part that went, a verdict. */
    public static List<Change> changes() {
        return List.of(
                new Change(
                        Change.Topic.SIZES,
                        "Width inside",
                        "",
                        Optional.of(inches(18, 56)),
                        Optional.of(inches(20, 0))),
                new Change(
                        Change.Topic.PARTS,
                        "Floor",
                        "along the grain",
                        Optional.of(inches(18, 56)),
                        Optional.of(inches(20, 0))),
                new Change(Change.Topic.PARTS, "Cleat", "", Optional.of(Count.of(2)), Optional.empty()),
                new Change(
                        Change.Topic.SAWS,
                        "mitre saw, upper end",
                        "scale",
                        Optional.of(Angle.ofDegrees(30)),
                        Optional.of(Angle.ofDegrees(35))));
    }

    private static List<PlannedPart> parts() {
        return List.of(
                part(
                        "A",
                        "Floor",
                        PartKind.PANEL,
                        1,
                        SHEET,
                        inches(18, 56),
                        inches(7, 16),
                        PLY,
                        List.of(),
                        List.of("two weep holes 3/8 in")),
                part(
                        "B",
                        "Side",
                        PartKind.PANEL,
                        2,
                        SHEET,
                        inches(11, 2),
                        inches(7, 16),
                        PLY,
                        List.of(PlannedEdge.bevel(
                                "top",
                                figure(Angle.ofDegrees(14.5), "the slope of the back"),
                                Figure.of(
                                        PLY.times(Angle.ofDegrees(14.5).tan()),
                                        "t · tan tilt",
                                        Reason.GEOMETRY,
                                        Given.given("t", PLY)))),
                        List.of()),
                part(
                        "C",
                        "Back",
                        PartKind.PANEL,
                        1,
                        SHEET,
                        inches(20, 20),
                        inches(11, 2),
                        PLY,
                        List.of(),
                        List.of("opening “hand hole” 1 1/4 x 4 in")),
                part("D", "Shelf", PartKind.PANEL, 2, SHEET, inches(18, 56), inches(5, 23), PLY, List.of(), List.of()),
                part(
                        "E",
                        "Rail",
                        PartKind.BOARD,
                        6,
                        STRIP,
                        Length.ofInches(28.4061),
                        inches(1, 32),
                        inches(0, 48),
                        List.of(PlannedEdge.mitre(
                                "both ends",
                                figure(Angle.ofDegrees(22.5), "half of 45°"),
                                figure(Length.ZERO, "square"))),
                        List.of()),
                new PlannedPart(
                        "F",
                        "Pane",
                        PartKind.PANE,
                        1,
                        false,
                        "acrylic",
                        "acrylic, sold as 1/8 in",
                        figure(inches(17, 61), "the pocket less room to grow"),
                        figure(inches(6, 2), "the pocket less room to grow"),
                        figure(inches(0, 7), "by caliper"),
                        false,
                        figure(inches(17, 61).by(inches(6, 2)), "length by width"),
                        List.of(),
                        List.of(),
                        Optional.of("Measure the pocket twice each way before you cut."),
                        Optional.empty()));
    }

    private static PlannedPart part(
            String letter,
            String name,
            PartKind kind,
            int count,
            String stock,
            Length length,
            Length width,
            Length thick,
            List<PlannedEdge> edges,
            List<String> then) {
        Area face = length.by(width);
        return new PlannedPart(
                letter,
                name,
                kind,
                count,
                name.equals("Side"),
                stock,
                stock + ", sold as 3/4 in",
                Figure.of(
                        length, "inside width and nothing more", Reason.GEOMETRY, Given.given("width", inches(18, 56))),
                figure(width, "said"),
                figure(thick, "by caliper"),
                true,
                figure(face, "length by width"),
                edges,
                then,
                Optional.empty(),
                Optional.of(figure(Mass.ofGrams(face.by(thick).inLitres() * 550), "volume by 550 kg/m³")));
    }

    private static SheetLayout sheet() {
        SheetSize half =
                new SheetSize(SHEET, Length.ofInches(48), Length.ofInches(24), inches(0, 16), KERF, Integer.MAX_VALUE);
        return new SheetLayout(
                half,
                List.of(
                        new SheetPlacement("Back", inches(0, 16), inches(0, 16), inches(20, 20), inches(11, 2), false),
                        new SheetPlacement(
                                "Floor", inches(20, 44), inches(0, 16), inches(18, 56), inches(7, 16), false),
                        new SheetPlacement(
                                "Shelf", inches(0, 16), inches(11, 26), inches(18, 56), inches(5, 23), false),
                        new SheetPlacement(
                                "Shelf", inches(0, 16), inches(16, 57), inches(18, 56), inches(5, 23), false),
                        new SheetPlacement("Side", inches(20, 44), inches(11, 26), inches(11, 2), inches(7, 16), false),
                        new SheetPlacement("Side", inches(31, 54), inches(11, 26), inches(7, 16), inches(11, 2), true)),
                List.of(
                        new SheetCut(
                                1,
                                false,
                                inches(11, 18),
                                inches(0, 16),
                                inches(47, 48),
                                inches(11, 2),
                                "the strip of Back and Floor"),
                        new SheetCut(2, true, inches(20, 36), inches(0, 16), inches(11, 18), inches(20, 20), "Back"),
                        new SheetCut(3, true, inches(39, 36), inches(0, 16), inches(11, 18), inches(18, 56), "Floor"),
                        new SheetCut(4, false, inches(16, 49), inches(0, 16), inches(19, 8), inches(5, 23), "Shelf")),
                List.of(new Offcut(inches(39, 44), inches(0, 16), inches(8, 4), inches(11, 2), true)));
    }

    private static List<BoardLayout> boards() {
        BoardSize strip = new BoardSize(STRIP, Length.ofInches(96), inches(0, 16), KERF, Optional.of(money("4.10")));
        Length rail = Length.ofInches(28.4061);
        List<BoardLayout> boards = new ArrayList<>();
        for (int board = 0; board < 2; board++) {
            List<BoardPlacement> placed = new ArrayList<>();
            for (int piece = 0; piece < 3; piece++) {
                placed.add(new BoardPlacement(
                        "Rail", strip.trim().plus(rail.plus(KERF).times(piece)), rail));
            }
            boards.add(new BoardLayout(
                    strip, placed, strip.usable().minus(rail.plus(KERF).times(3))));
        }
        return boards;
    }

    private static List<SawSetting> sawSettings() {
        return List.of(
                new SawSetting(
                        "circular saw",
                        List.of("A", "C", "D"),
                        "all straight cuts",
                        "good face down",
                        figure(Angle.ZERO, "square"),
                        Optional.empty(),
                        Optional.of(Figure.of(
                                PLY.plus(Length.ofSixtyFourths(16)),
                                "t / cos tilt + 1/4 in",
                                Reason.COMMON_PRACTICE,
                                Given.given("t", PLY))),
                        List.of(
                                new Straightedge(
                                        "left of the saw, on the keep side",
                                        figure(inches(1, 32), "base edge to blade")),
                                new Straightedge(
                                        "left of the saw, on the waste side",
                                        figure(inches(1, 40), "base edge to blade and the kerf"))),
                        List.of(),
                        List.of(new SawSetting.Guide(
                                inches(11, 0),
                                List.of(new SawSetting.NumberedCut(1, 2)),
                                List.of(new Straightedge(
                                        "left of the saw, on the keep side",
                                        figure(inches(9, 32), "set − base edge to blade"))))),
                        ""),
                new SawSetting(
                        "circular saw",
                        List.of("B"),
                        "top edge, long point inside",
                        "good face down",
                        figure(Angle.ofDegrees(14.5), "the slope"),
                        Optional.empty(),
                        Optional.of(figure(inches(1, 0), "t / cos tilt + 1/4 in")),
                        List.of(),
                        List.of(),
                        List.of(),
                        "Measure base to blade again at this tilt."),
                new SawSetting(
                        "mitre saw",
                        List.of("E"),
                        "both ends",
                        "good face up",
                        figure(Angle.ZERO, "square"),
                        Optional.of(Figure.of(
                                Angle.ofDegrees(22.5),
                                "the scale reads from square: half the corner",
                                Reason.GEOMETRY,
                                Given.given("corner", Angle.ofDegrees(45)))),
                        Optional.empty(),
                        List.of(),
                        List.of(new Reading("stop block, long point, E, 2 pieces", figure(inches(18, 0), "length"))),
                        List.of(),
                        ""));
    }

    private static List<HardwareLine> hardware() {
        return List.of(
                new HardwareLine(
                        "No. 8 x 1 5/8 in wood screw, stainless",
                        figure(146, "the sum of all joints"),
                        100,
                        figure(2, "need over pack, rounded up"),
                        List.of("Back to Floor: 5", "Sides to Floor: 8", "Rails: 133")),
                new HardwareLine(
                        "butt hinge, 2 in", figure(2, "said"), 1, figure(2, "each"), List.of("Pane frame to Back: 2")),
                new HardwareLine(
                        "coat hook",
                        figure(10, "said"),
                        4,
                        figure(4, "need over pack, rounded up, and a spare pack"),
                        List.of("Rails: 10")));
    }

    private static List<FinishLine> finish() {
        return List.of(
                new FinishLine(
                        "exterior latex",
                        FinishLine.Task.PAINT,
                        figure(Area.ofSquareMillimetres(1_650_000), "all faces in sight"),
                        2,
                        figure(Volume.ofGallons(0.11), "area over spread"),
                        Volume.ofGallons(0.25),
                        figure(1, "rounded up to cans"),
                        figure(Area.ofSquareMillimetres(15_000_000), "by the can")),
                new FinishLine(
                        "exterior PVA",
                        FinishLine.Task.GLUE,
                        figure(Area.ofSquareMillimetres(64_000), "contacts"),
                        1,
                        figure(Volume.ofLitres(0.016), "area by film"),
                        Volume.ofLitres(0.2366),
                        figure(1, "rounded up to bottles"),
                        figure(Area.ofSquareMillimetres(15_000_000), "by the can")));
    }

    private static Cost cost() {
        List<CostLine> lines = List.of(
                line(Department.TIMBER, SHEET, "48 x 24 in, sold as 3/4 in", 1, 0.6152, "34.75"),
                line(Department.TIMBER, STRIP, "8 ft, for the rails", 2, 0.8877, "4.10"),
                line(Department.GLAZING, "acrylic", "18 x 24 in", 1, 0.2503, "17.90"),
                line(Department.IRONMONGER, "No. 8 x 1 5/8 in wood screw, stainless", "box of 100", 2, 0.73, "9.40"),
                line(Department.IRONMONGER, "butt hinge, 2 in", "loose", 2, 1, "1.85"),
                line(Department.IRONMONGER, "coat hook", "card of 4", 4, 0.625, "3.20"),
                line(Department.FINISH, "exterior latex", "1 qt can", 1, 0.44, "17.50"),
                line(Department.FINISH, "exterior PVA", "8 fl oz bottle", 1, 0.0676, null));
        Money bought = lines.stream().flatMap(line -> line.bought().stream()).reduce(Money.zero(USD), Money::plus);
        Money used = lines.stream()
                .flatMap(PlanFixture::used)
                .reduce(BigMoney.zero(USD), BigMoney::plus)
                .toMoney(RoundingMode.HALF_UP);
        Money kit = money("79.90");
        Money freight = money("24.00");
        return new Cost(
                lines,
                Optional.of(figure(bought, "the sum of packs by price")),
                Optional.of(figure(used, "the sum of what is used")),
                List.of("exterior PVA"),
                List.of(
                        new KitComparison(
                                "Garden tray kit",
                                kit,
                                Optional.of(freight),
                                figure(kit.plus(freight), "price and freight"),
                                Optional.of(figure(
                                        kit.plus(freight).minus(bought), "the kit's total less the build as bought")),
                                List.of("paint", "glue"),
                                Optional.empty()),
                        new KitComparison(
                                "Bare kit",
                                kit,
                                Optional.empty(),
                                figure(kit, "price"),
                                Optional.of(figure(kit.minus(bought), "the kit's total less the build as bought")),
                                List.of(),
                                Optional.empty())),
                1);
    }

    private static Stream<BigMoney> used(CostLine line) {
        BigDecimal share = BigDecimal.valueOf(line.share().orElseThrow().value().value());
        return line.bought().stream().map(bought -> bought.toBigMoney().multipliedBy(share));
    }

    private static CostLine line(
            Department department, String what, String detail, int packs, double share, String each) {
        return new CostLine(
                department,
                what,
                detail,
                Figure.of(packs, "rounded up to whole packs", Reason.GEOMETRY),
                Optional.of(figure(Ratio.of(share), "used of what is bought")),
                Optional.ofNullable(each).map(PlanFixture::money));
    }

    private static List<Check> checks() {
        return List.of(
                new Check(
                        "Edge distance: Side to Floor",
                        "The screw stands 23/64 in from the edge. Wanted: 11/32 in.",
                        "1/64 in more",
                        OptionalDouble.of(0.045),
                        Verdict.HOLDS,
                        "",
                        "NDS 2018, 12.1.6 as a guide"),
                new Check(
                        "Screw reach: Back to Floor",
                        "A No. 8 x 1 5/8 in screw reaches 31/32 in. Wanted: 63/64 in.",
                        "short by 1/64 in",
                        OptionalDouble.of(-0.016),
                        Verdict.SHORT,
                        "A 1 3/4 in screw would hold.",
                        "6 diameters, Wood Handbook FPL-GTR-282, 8-4"),
                new Check(
                        "Wind on the post",
                        "The wind where it will stand is not said.",
                        "",
                        OptionalDouble.empty(),
                        Verdict.NOT_KNOWN,
                        "Say the wind: wind(\"115 mph\").",
                        "ASCE 7-16, 26.5"));
    }

    private static List<PlannedStep> steps() {
        return List.of(
                new PlannedStep(
                        1,
                        "Cut and mark",
                        List.of(),
                        Optional.of(Duration.ofMinutes(120)),
                        1,
                        List.of(sawCaution()),
                        List.of(),
                        Optional.empty()),
                new PlannedStep(
                        2,
                        "Floor and back",
                        List.of(
                                new Take(Optional.of("A"), "Floor"),
                                new Take(Optional.of("C"), "Back"),
                                new Take(Optional.empty(), "5 screws, No. 8 x 1 5/8 in")),
                        Optional.of(Duration.ofMinutes(45)),
                        1,
                        List.of(),
                        List.of(),
                        Optional.empty()),
                new PlannedStep(
                        3,
                        "Sides and shelves",
                        List.of(new Take(Optional.of("B"), "Side, 2"), new Take(Optional.of("D"), "Shelf, 2")),
                        Optional.of(Duration.ofMinutes(30)),
                        2,
                        List.of(),
                        List.of(),
                        Optional.empty()),
                new PlannedStep(
                        4,
                        "Paint",
                        List.of(new Take(Optional.empty(), "exterior latex")),
                        Optional.empty(),
                        1,
                        List.of(),
                        List.of(),
                        Optional.empty()));
    }

    private static List<Caution> cautions() {
        return List.of(
                sawCaution(),
                new Caution(
                        Topic.GLUE_AND_PAINT,
                        "Paint where air moves. Keep rags in a closed metal can.",
                        List.of(),
                        Reason.COMMON_PRACTICE));
    }

    private static Caution sawCaution() {
        return new Caution(
                Topic.CIRCULAR_SAW,
                "Pull the plug before you touch the blade. Support the piece on both sides of the cut. Let the blade stop before you lift the saw.",
                List.of(1),
                "OSHA 1910.243(a)(1)");
    }

    private static SitePlan site() {
        return new SitePlan(
                figure(Volume.ofCubicMillimetres(8.1e7), "π r² by depth"),
                figure(Volume.ofCubicMillimetres(1.0e7), "π r² by 6 in"),
                figure(Length.ofInches(28), "a third of the post"),
                Optional.of(figure(Length.ofInches(30), "said")),
                Optional.empty(),
                figure(Volume.ofCubicMillimetres(1.01e8), "hole · 1.25"),
                Optional.empty(),
                Optional.of(figure(Length.ofInches(56), "post - in the ground")),
                Optional.empty(),
                Access.of(List.of(Reach.ADULT), MeasureStyle.of(LengthUnit.INCHES)),
                Optional.empty(),
                Optional.empty());
    }

    private static Optional<Quantity> bound(long inches) {
        return Optional.of(Length.ofInches(inches));
    }

    private static Length inches(long whole, long sixtyFourths) {
        return Length.ofInches(whole).plus(Length.ofSixtyFourths(sixtyFourths));
    }

    private static Money money(String amount) {
        return Money.of(USD, new BigDecimal(amount));
    }

    private static <T> Figure<T> figure(T value, String rule) {
        return Figure.of(value, rule, Reason.COMMON_PRACTICE);
    }
}
