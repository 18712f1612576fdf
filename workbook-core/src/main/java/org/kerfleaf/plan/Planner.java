package org.kerfleaf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Given;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Prices;
import org.kerfleaf.sketch.Size;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Units;

/**
 * Makes the plan of a sketch: {@code Plan = f(Sketch, day)}, pure, the same to the last byte.
 *
 * <p>What does not make sense becomes a problem with the cell that said it; everything else is still planned.
 */
public final class Planner {
    private final Sketch sketch;
    private final LocalDate day;
    private final MeasureStyle style;
    private final Problems problems = new Problems();

    private Planner(Sketch sketch, LocalDate day, Optional<LengthUnit> printIn) {
        this.sketch = sketch;
        this.day = day;
        this.style = printIn.map(MeasureStyle::of).orElseGet(this::saidStyle);
    }

    /**
     * Plans a sketch.
     *
     * @param day the day the plan is made for: for dates on paper and the age of prices
     */
    public static Plan plan(Sketch sketch, LocalDate day) {
        return new Planner(sketch, day, Optional.empty()).plan();
    }

    /** Plans a sketch and prints it in another unit than the workbook's. */
    public static Plan plan(Sketch sketch, LocalDate day, LengthUnit printIn) {
        return new Planner(sketch, day, Optional.of(printIn)).plan();
    }

    private MeasureStyle saidStyle() {
        List<Units> said = sketch.all(Units.class);
        if (said.isEmpty()) {
            problems.add(Origin.NOWHERE, "No unit is said. Begin with measureIn(INCHES) or measureIn(MILLIMETRES).");
        }
        return said.isEmpty() ? MeasureStyle.MILLIMETRES : said.get(0).style();
    }

    private Plan plan() {
        Sizing sizing = new Sizing(sketch, style, problems);
        Places places = new Places(sketch, sizing, problems);
        Assembly assembly = new Assembly(sketch, sizing, places, problems);
        List<PlannedPart> parts = new Parts(sketch, sizing, style, problems).all();
        Bodies bodies = new Bodies(sketch, sizing, assembly, problems);
        new Resting(sketch, assembly, bodies, style, problems).look();
        List<PlannedJoint> joints = new Joining(sketch, sizing, assembly, bodies, style, problems).all();
        Batch batch = Batch.of(sketch, problems);
        Stocking stocking = new Stocking(sketch, parts, batch, style, problems);
        Hardware hardware = new Hardware(sketch, sizing, joints, batch, style);
        Raining raining = new Raining(sketch, sizing, assembly, bodies, joints, style);
        Painting painting = new Painting(sketch, sizing, assembly, bodies, parts, joints);
        Finishing finishing = new Finishing(sketch, painting, raining, joints, batch, problems);
        Paintwork paintwork = new PaintOrder(sketch, painting).paintwork(problems);
        Siting siting = new Siting(sketch, assembly, bodies, style);
        siting.look(problems);
        Carrying carrying = new Carrying(sketch, assembly);
        Storing storing = new Storing(sketch, assembly, bodies, style);
        Snowing snowing = new Snowing(sketch, assembly, bodies);
        Buying buying = new Shopping(sketch, stocking, parts, style).buying();
        Cost cost = new Costing(sketch, stocking, parts, hardware, finishing, siting, batch, currency(), style).cost();
        List<SawSetting> settings = new Sawing(sketch, parts, sizing, style).settings(stocking.sheets());
        List<Plan.PlannedSize> sizes =
                sketch.all(Size.class).stream().map(Planner::size).toList();
        List<Chain> chains = new Chains(sketch, assembly, bodies, parts, sizes).all();
        List<DrivenContact> driven = new Driving(joints, sizing, bodies, problems).all();
        Lifting lifting = new Lifting(sketch, assembly, bodies, parts, driven);
        List<Loads.Filled> filled = new Fillings(sketch, assembly, bodies, lifting, style, problems).all();
        FastenerSettings fastenerSettings = new FastenerSettings(sketch, sizing, bodies);
        Borne borne = new Borne(sketch, joints, driven, fastenerSettings, carrying);
        Optional<Rain> rain = raining.rain();
        Movements movements = new Movements(sketch, assembly, parts);
        Planned planned = new Planned(
                sketch,
                style,
                sizing,
                assembly,
                bodies,
                parts,
                chains,
                joints,
                driven,
                fastenerSettings,
                settings,
                stocking,
                siting,
                carrying,
                lifting,
                borne,
                filled,
                rain,
                paintwork,
                movements,
                painting);
        List<Hung> hung = Hanging.all(planned);
        List<HungDoor> doors = hung.stream().map(new HingePlaces(planned)::of).toList();
        Fastening fastening = new Fasten(sketch, fastenerSettings, sizing, bodies, hardware, style)
                .all(joints, driven, parts, HingeMarks.of(planned, hung, doors));
        Steps steps = new Steps(sketch, parts, joints, hardware, fastening.joints(), style);
        List<PlacedPart> placed = placed(assembly, bodies, parts);
        Handling handling = new Handling(sketch, assembly, parts);
        Scheduling scheduling = new Scheduling(sketch, handling, day);
        Schedule schedule = scheduling.schedule();
        List<Check> checks = new ArrayList<>(Checking.all(planned, hung, cost, day));
        checks.addAll(storing.checks());
        checks.addAll(snowing.checks(style));
        checks.addAll(BuyingChecking.all(buying, style));
        checks.addAll(new StepChecking(planned, placed, handling, scheduling).all());
        return new Plan(
                sketch.title(),
                style,
                day,
                currency(),
                sketch.all(Prices.class).stream().map(Prices::day).findFirst(),
                sizes,
                parts,
                placed,
                movements.all(),
                fastening,
                stocking.sheets(),
                stocking.boards(),
                stocking.bounds(),
                settings,
                hardware.all().stream().map(Hardware.Bought::line).toList(),
                finishing.lines(),
                paintwork,
                cost,
                List.copyOf(checks),
                steps.all(),
                schedule,
                buying,
                siting.plan(),
                new Loads(
                        storing.all(),
                        List.copyOf(carrying.all().values()),
                        snowing.snow(),
                        List.copyOf(lifting.all().values()),
                        filled,
                        borne.onJoints(),
                        borne.brackets()),
                rain,
                new Doors(doors, new GlazedPanes(planned).all()),
                steps.cautions(),
                overall(assembly, parts),
                chains,
                weight(parts),
                problems.all());
    }

    private List<PlacedPart> placed(Assembly assembly, Bodies bodies, List<PlannedPart> parts) {
        WaysOut ways = new WaysOut(sketch, assembly, bodies);
        List<PlacedPart> placed = new ArrayList<>();
        bodies.all().forEach((piece, solid) -> {
            Origin placing = piece.placing();
            placed.add(placed(assembly, placing, placing.step(), false, ways.of(piece), solid, parts));
        });
        bodies.panes().forEach((glazing, solid) -> {
            Origin placing = glazing.into().get(0);
            WayOut way = ways.of(glazing, solid);
            placed.add(placed(assembly, placing, glazing.origin().step(), true, way, solid, parts));
        });
        return placed;
    }

    private PlacedPart placed(
            Assembly assembly,
            Origin placing,
            int step,
            boolean seeThrough,
            WayOut way,
            PlacedSolid solid,
            List<PlannedPart> parts) {
        int mounted = sketch.all(Mount.class).stream()
                .filter(m -> assembly.number(m.what()) == assembly.number(placing))
                .mapToInt(m -> m.origin().step())
                .max()
                .orElse(0);
        return new PlacedPart(letter(parts, solid), step, assembly.number(placing), mounted, seeThrough, way, solid);
    }

    private static String letter(List<PlannedPart> parts, PlacedSolid solid) {
        return parts.stream()
                .filter(p -> p.name().equals(solid.part()))
                .map(PlannedPart::letter)
                .findFirst()
                .orElse("");
    }

    private CurrencyUnit currency() {
        return sketch.all(Prices.class).stream()
                .map(p -> CurrencyUnit.of(p.currency()))
                .findFirst()
                .orElse(Plan.NO_CURRENCY);
    }

    private static Plan.PlannedSize size(Size size) {
        return new Plan.PlannedSize(
                size.label(),
                quantity(size, size.value()),
                size.least().map(text -> quantity(size, text)),
                size.most().map(text -> quantity(size, text)));
    }

    private static Quantity quantity(Size size, String text) {
        return switch (size.kind()) {
            case LENGTH -> Length.parse(text);
            case ANGLE -> Angle.parse(text);
            case COUNT -> Count.of(Long.parseLong(text));
            case CHOICE -> new Said(text);
        };
    }

    /** Outside sizes are known when every panel and board has a place and all hangs together. */
    private Optional<Plan.Overall> overall(Assembly assembly, List<PlannedPart> parts) {
        List<Piece> pieces = assembly.all();
        boolean allPlaced = parts.stream()
                .filter(p -> p.kind() != PartKind.PANE)
                .allMatch(p -> pieces.stream().anyMatch(piece -> piece.part().equals(p.name())));
        if (!assembly.isOne() || !allPlaced) {
            return Optional.empty();
        }
        Box hull = Assembly.hull(pieces);
        return Optional.of(new Plan.Overall(overall(hull, Axis.X), overall(hull, Axis.Y), overall(hull, Axis.Z)));
    }

    private static Figure<Length> overall(Box hull, Axis axis) {
        return Figure.of(
                hull.extent(axis), "from the outermost part to the outermost part, " + axis.words(), Reason.GEOMETRY);
    }

    /** The weight is known when every part's is. */
    private Optional<Figure<Mass>> weight(List<PlannedPart> parts) {
        if (parts.isEmpty() || parts.stream().anyMatch(p -> p.weight().isEmpty())) {
            return Optional.empty();
        }
        Mass sum = Mass.ZERO;
        for (PlannedPart part : parts) {
            sum = sum.plus(part.weight().orElseThrow().value().times(part.count()));
        }
        return Optional.of(Figure.of(sum, "the sum of all parts", Reason.GEOMETRY, Given.given("parts", parts.size())));
    }
}
