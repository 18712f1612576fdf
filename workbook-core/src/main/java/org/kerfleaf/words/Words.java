package org.kerfleaf.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.SpreadLoad;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.sketch.*;
import org.kerfleaf.stock.Rings;
import org.kerfleaf.stock.Surface;

/**
 * Every word a cell can begin with. What follows a word is said of its value: {@code panel("Floor", ply).wide(width)}.
 *
 * <p>Texts that measure something name their unit ({@code "22 in"}, {@code "309.6 mm"}); a number alone is in the
 * workbook's unit. A text that cannot be read is a {@link org.kerfleaf.measure.MeasureTextException}, a value that makes
 * no sense a {@link SketchException}; both show what was written and what would be right.
 */
public final class Words {
    private Words() {}

    /** What every cell sees without saying so, as import lines. */
    public static List<String> imports() {
        return List.of(
                "import java.util.*;",
                "import org.kerfleaf.measure.*;",
                "import org.kerfleaf.sketch.*;",
                "import org.kerfleaf.words.*;",
                "import static org.kerfleaf.measure.LengthUnit.*;",
                "import static org.kerfleaf.sketch.Side.*;",
                "import static org.kerfleaf.sketch.Way.*;",
                "import static org.kerfleaf.sketch.Soil.*;",
                "import static org.kerfleaf.sketch.Exposure.*;",
                "import static org.kerfleaf.sketch.Reach.*;",
                "import static org.kerfleaf.sketch.SagLimit.*;",
                "import static org.kerfleaf.words.Words.*;");
    }

    // ---- sizes -------------------------------------------------------------------------------------------------

    /** The unit the workbook measures and prints in; a number without a unit is in it. @example measureIn(INCHES) */
    public static Units measureIn(LengthUnit unit) {
        return Units.of(unit);
    }

    /** The currency of all prices (three letters, ISO 4217) and the day they were true (year, month, day). @example pricesIn("USD", "2026-04-12") */
    public static Prices pricesIn(String currency, String day) {
        return Prices.in(currency, day);
    }

    /** A length the reader may change. @group sizes */
    public static Length size(String label, String value) {
        return Sizes.length(label, value, Optional.empty());
    }

    /** A length the reader may change, within a range. @group sizes @example Length shelfDeep = size("Shelf, deep", "8 in", "6 in to 10 in") */
    public static Length size(String label, String value, String range) {
        return Sizes.length(label, value, Optional.of(range));
    }

    /**
     * A length the reader may change, held inside or outside: {@code held(INSIDE, "Width", "22 in").between(ply, ply)} is the clear
     * width between two walls. Held {@code OUTSIDE}, the length said is the outside one, and the clear width is what the walls
     * leave. Which of the two is held the reader may change too: the size {@code Width is held}, inside or outside.
     */
    public static Held held(Side at, String label, String value) {
        return Held.ask(at, label, value, Optional.empty());
    }

    /**
     * A length held INSIDE or OUTSIDE, within a range.
     *
     * @example Length clear = held(INSIDE, "Clear width", "22 in", "16 in to 30 in").between(ply, ply)
     */
    public static Held held(Side at, String label, String value, String range) {
        return Held.ask(at, label, value, Optional.of(range));
    }

    /** A slope the reader may change, in degrees or as rise in run: {@code "30 deg"}, {@code "6 in 12"}. @group sizes */
    public static Angle slope(String label, String value) {
        return Sizes.angle(label, value, Optional.empty());
    }

    /**
     * A slope the reader may change, within a range: {@code "20 deg to 45 deg"}.
     *
     * @group sizes
     * @example Angle lean = slope("Lean of the lid", "15 deg", "5 deg to 30 deg")
     */
    public static Angle slope(String label, String value, String range) {
        return Sizes.angle(label, value, Optional.of(range));
    }

    /**
     * A number of things the reader may change, within a range: {@code "1 to 4"}.
     *
     * @group sizes
     * @example int shelfCount = count("Shelves", 2, "1 to 4")
     */
    public static int count(String label, int value, String range) {
        return Sizes.count(label, value, Optional.of(range));
    }

    /** A word the reader may change to another of these. @group sizes @example String wall = pick("It hangs on", "brick", "brick", "timber") */
    public static String pick(String label, String value, String... among) {
        return Sizes.choice(label, value, among);
    }

    /** A length that does not change. @group sizes @example Length gap = length("1/8 in") */
    public static Length length(String text) {
        return Sizes.fixed(text);
    }

    /**
     * So many of something, numbered from 0, made one after the other and kept together.
     *
     * @group sizes
     * @example List<Part> dividers = repeat(3, i -> panel("Divider " + (i + 1), ply).deep("6 in").high("4 in").times(1))
     */
    public static <T> List<T> repeat(int times, IntFunction<T> make) {
        return IntStream.range(0, times).mapToObj(make).toList();
    }

    // ---- what we buy -------------------------------------------------------------------------------------------

    /**
     * A sheet: its name, and its two sides as sold, in either order; the grain runs along the longer.
     *
     * @example Sheet thin = sheet("thin plywood", "48 in", "96 in").soldAs("1/4 in")
     */
    public static Sheet sheet(String name, String oneSide, String otherSide) {
        Length one = Sizes.fixed(oneSide);
        Length other = Sizes.fixed(otherSide);
        return new Sheet(
                here(),
                name,
                one.min(other),
                one.max(other),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Damp.NOT_SAID,
                Surface.UNSANDED);
    }

    /** Dressed lumber by its nominal size, thickness first. @example Lumber rails = lumber("2x4").lengths("8 ft") */
    public static Lumber lumber(String nominal) {
        return new Lumber(
                here(),
                nominal,
                false,
                false,
                Optional.empty(),
                Optional.empty(),
                Length.ZERO,
                Optional.empty(),
                Optional.empty(),
                Rings.NOT_SAID,
                Damp.NOT_SAID,
                List.of());
    }

    /**
     * A moulding or angle, sold by length; say its section too.
     *
     * @example Lumber bead = moulding("quarter round").section("1/2 in", "1/2 in").lengths("8 ft")
     */
    public static Lumber moulding(String name) {
        return new Lumber(
                here(),
                name,
                true,
                false,
                Optional.empty(),
                Optional.empty(),
                Length.ZERO,
                Optional.empty(),
                Optional.empty(),
                Rings.NOT_SAID,
                Damp.NOT_SAID,
                List.of());
    }

    /** Air of that temperature and humidity, in which wood comes to its moisture. @example lumber("1x6").species("white oak").driedIn(air("68 F", "45 %")) */
    public static Air air(String temperature, String humidity) {
        return Air.of(temperature, humidity);
    }

    /** A wood screw by gauge and length. @example Screw long8 = woodScrew(8, "2 in").stainless() */
    public static Screw woodScrew(int gauge, String length) {
        return new Screw(here(), gauge, Sizes.fixed(length), Metal.NOT_SAID, 1, Optional.empty());
    }

    /** A finish nail by length. @example Nail nails = finishNail("1 1/2 in").hotDipGalvanised() */
    public static Nail finishNail(String length) {
        return Nail.of(here(), "finish nail", Sizes.fixed(length), Optional.empty());
    }

    /** A common nail by its penny, 6d to 40d; its length and diameter follow. @example Nail nails = commonNail("8d").hotDipGalvanised() */
    public static Nail commonNail(String penny) {
        return Nail.common(here(), penny);
    }

    /** A smooth round nail by diameter and length. @example Nail nails = wireNail("3.1 mm", "65 mm").hotDipGalvanised() */
    public static Nail wireNail(String diameter, String length) {
        return Nail.of(
                here(), "wire nail " + diameter.strip(), Sizes.fixed(length), Optional.of(Sizes.fixed(diameter)));
    }

    /** A carriage bolt by diameter; its length follows from what it goes through. @example Bolt bolts = carriageBolt("3/8 in").hotDipGalvanised() */
    public static Bolt carriageBolt(String diameter) {
        return new Bolt(here(), Sizes.fixed(diameter), Metal.NOT_SAID, 1, Optional.empty());
    }

    /** A lag screw by diameter and length; it wants two holes, one for its shank and one for its thread. @example Lag lag = lagScrew("3/8 in", "4 in").hotDipGalvanised() */
    public static Lag lagScrew(String diameter, String length) {
        return new Lag(here(), Sizes.fixed(diameter), Sizes.fixed(length), Metal.NOT_SAID, 1, Optional.empty());
    }

    /** The screws that lie in the drawer; a joint screwed from it gets the one that suits it best. @example Drawer mine = drawer(woodScrew(6, "1 1/4 in"), woodScrew(8, "1 1/2 in")) */
    public static Drawer drawer(Screw... screws) {
        return new Drawer(List.of(screws));
    }

    /** What brings the stock home; say how wide and how long it is inside. @example vehicle("station wagon").wideInside("41 in").longInside("70 in") */
    public static Vehicle vehicle(String name) {
        return new Vehicle(here(), name, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** A wood glue, by the name on its bottle. @example Glue pva = woodGlue("exterior PVA").bottle("8 fl oz") */
    public static Glue woodGlue(String name) {
        return new Glue(
                here(),
                name,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A caulk or sealant, by the name on its cartridge. @example Caulk latex = caulk("acrylic latex").cartridge("10.1 fl oz") */
    public static Caulk caulk(String name) {
        return new Caulk(
                here(), name, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** A paint, primer or oil, by the name on its can. @example Paint oil = paint("linseed oil").covers("400 sq ft", perGallon()).cans("1 qt") */
    public static Paint paint(String name) {
        return new Paint(
                here(),
                name,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A US gallon, as the volume that covers an area. @group what we buy @example paint("primer").covers("350 sq ft", perGallon()) */
    public static Volume perGallon() {
        return Volume.ofGallons(1);
    }

    /** A litre, as the volume that covers an area. @group what we buy @example paint("primer").covers("12 m2", perLitre()) */
    public static Volume perLitre() {
        return Volume.ofLitres(1);
    }

    /** The saw that cuts the sheets. @example Saw mine = circularSaw().kerf("1/8 in") */
    public static Saw circularSaw() {
        return Saw.of(here(), false);
    }

    /** A table saw, where it cuts the sheets. @example Saw mine = tableSaw().kerf("1/8 in") */
    public static Saw tableSaw() {
        return Saw.of(here(), true);
    }

    /** The saw that cuts boards to length, square and mitred. @example MitreSaw mine = mitreSaw().stopsAt("50 deg") */
    public static MitreSaw mitreSaw() {
        return new MitreSaw(here(), Optional.empty());
    }

    /** The saw that cuts openings. @example Jigsaw mine = jigsaw().blade("5/16 in") */
    public static Jigsaw jigsaw() {
        return new Jigsaw(here(), Optional.empty());
    }

    /** The router that cuts rabbets and grooves. @example Router mine = router().cutter("1 3/8 in").bite("1/8 in") */
    public static Router router() {
        return new Router(here(), Optional.empty(), Optional.empty());
    }

    // ---- parts -------------------------------------------------------------------------------------------------

    /** A part cut from a sheet; its name is its identity. @example Part lid = panel("Lid", ply).wide("20 in").deep("10 in").times(1) */
    public static Part panel(String name, Sheet from) {
        return new Part(here(), name, PartKind.PANEL, from.name(), List.of());
    }

    /** A part cut from a board or moulding; its name is its identity. @example Part cleat = board("Cleat", strip).cutTo("10 in").times(2) */
    public static Part board(String name, Lumber from) {
        return new Part(here(), name, PartKind.BOARD, from.name(), List.of());
    }

    /**
     * A part cut from a glazing sheet; its name is its identity.
     *
     * @example Part glass = pane("Window pane", clear).fits(door.opening("window")).warmer("60 F").colder("60 F").times(1)
     */
    public static Part pane(String name, Sheet from) {
        return new Part(here(), name, PartKind.PANE, from.name(), List.of());
    }

    /**
     * A round hole of that diameter; say where with {@code from} and {@code up}.
     *
     * @example panel("Lid", ply).wide("20 in").deep("10 in").hole("cable", round("2 in").from(LEFT, "4 in")).times(1)
     */
    public static Shape round(String diameter) {
        Length across = Sizes.fixed(diameter);
        return new Shape(Shape.Kind.ROUND, across, across, across.half(), List.of());
    }

    /**
     * A rectangle so wide and so high; say where with {@code from} and {@code up}.
     *
     * @example panel("Face", ply).wide("20 in").high("24 in").opening("slot", rectangle(length("8 in"),
     *     length("2 in")).up("15 in")).times(1)
     */
    public static Shape rectangle(Length wide, Length high) {
        return new Shape(Shape.Kind.RECTANGLE, wide, high, Length.ZERO, List.of());
    }

    /**
     * What is left open when a frame of this width stays all round.
     *
     * @example panel("Sash", ply).wide("12 in").high("14 in").opening("light", frame("2 1/2 in")).times(1)
     */
    public static Shape frame(String width) {
        Length all = Sizes.fixed(width);
        return new Shape(Shape.Kind.FRAME, all, all, Length.ZERO, List.of());
    }

    /**
     * A corner of an outline: so far along its first size, so far along its second.
     *
     * @example panel("Bracket", ply).deep("8 in").high("10 in").corners(at("0 in", "0 in"), at("8 in", "10 in"), at("0 in",
     *     "10 in")).times(1)
     */
    public static Shape.At at(String along, String up) {
        return new Shape.At(Sizes.fixed(along), Sizes.fixed(up));
    }

    /** A corner of an outline: so far along its first size, so far along its second. */
    public static Shape.At at(Length along, Length up) {
        return new Shape.At(along, up);
    }

    /**
     * So far from that edge.
     *
     * @example panel("End", ply).deep("8 in").high("20 in").dado("shelf", INSIDE, from(BOTTOM, "9 in"), wide(t), deep("1/4 in")).times(1)
     */
    public static Shape.From from(Side edge, String distance) {
        return new Shape.From(edge, Sizes.fixed(distance));
    }

    /** So far from that edge. */
    public static Shape.From from(Side edge, Length distance) {
        return new Shape.From(edge, distance);
    }

    /**
     * The corner between two boards, as an angle finder reads it, from more than 0 to less than 180 degrees.
     *
     * @example board("Bay trim", strip).cutTo("20 in").mitred(RIGHT, corner("110 deg"), BOTTOM).times(2)
     */
    public static Meets corner(String measured) {
        return new Meets(Meets.Kind.CORNER, between(Angle.parse(measured), Angle.RIGHT.times(2), "corner"), Angle.ZERO);
    }

    /**
     * A peak between two slopes that need not be equal, each from level.
     *
     * @example board("Uneven rake", strip).cutTo("20 in").mitred(RIGHT, peak("30 deg", "50 deg"), TOP).times(2)
     */
    public static Meets peak(String oneSlope, String otherSlope) {
        return peak(Angle.parse(oneSlope), Angle.parse(otherSlope));
    }

    /** A peak between two slopes that need not be equal, each from level. */
    public static Meets peak(Angle oneSlope, Angle otherSlope) {
        return new Meets(
                Meets.Kind.PEAK, between(oneSlope, Angle.RIGHT, "slope"), between(otherSlope, Angle.RIGHT, "slope"));
    }

    /**
     * Where fascia and rake meet at an eave, mitred by the blade's tilt alone: both of them where the fascia stands square to the
     * roof, and the fascia where it stands plumb.
     *
     * @example board("Fascia", strip).cutTo("20 in").mitred(RIGHT, eaveCorner(), BOTTOM).times(2)
     */
    public static Meets eaveCorner() {
        return new Meets(Meets.Kind.EAVE, Angle.ZERO, Angle.ZERO);
    }

    /**
     * The rake's end at an eave where the fascia stands plumb, on a roof of that slope.
     *
     * @example board("Rake", strip).cutTo("20 in").mitred(LEFT, eaveCorner("35 deg"), BOTTOM).times(4)
     */
    public static Meets eaveCorner(String slope) {
        return eaveCorner(Angle.parse(slope));
    }

    /** The rake's end at an eave where the fascia stands plumb, on a roof of that slope. */
    public static Meets eaveCorner(Angle slope) {
        return new Meets(Meets.Kind.PLUMB_EAVE, between(slope, Angle.RIGHT, "slope"), Angle.ZERO);
    }

    private static Angle between(Angle angle, Angle most, String what) {
        if (angle.nanodegrees() <= 0 || angle.compareTo(most) >= 0) {
            throw new SketchException(
                    "A %s of %s: more than 0 and less than %s would be right.".formatted(what, angle, most));
        }
        return angle;
    }

    /** So far out, of a brace. @example board("Brace", strip).brace(out("12 in"), down("16 in")).times(2) */
    public static Trait.Out out(String far) {
        return out(length(far));
    }

    /** So far out, of a brace. */
    public static Trait.Out out(Length length) {
        return new Trait.Out(length);
    }

    /** So far down, of a brace. @example board("Brace", strip).brace(out("12 in"), down("16 in")).times(2) */
    public static Trait.Down down(String far) {
        return down(length(far));
    }

    /** So far down, of a brace. */
    public static Trait.Down down(Length length) {
        return new Trait.Down(length);
    }

    /** So wide, as the second size of a rabbet, groove or strip. */
    public static Trait.Wide wide(Length length) {
        return new Trait.Wide(length);
    }

    /** So deep: of a rabbet, a groove or a hole in the ground. */
    public static Trait.Deep deep(Length length) {
        return new Trait.Deep(length);
    }

    /**
     * So wide, as the second size of a rabbet, groove or strip.
     *
     * @example panel("End", ply).deep("8 in").high("20 in").rabbet(INSIDE, TOP, wide("3/4 in"), deep("3/8 in")).times(1)
     */
    public static Trait.Wide wide(String length) {
        return new Trait.Wide(Sizes.fixed(length));
    }

    /** So deep: of a rabbet, a groove or a hole in the ground. @example dig(across("10 in"), deep("30 in")) */
    public static Trait.Deep deep(String length) {
        return new Trait.Deep(Sizes.fixed(length));
    }

    /** So thick, of a strip. @example fit(weatherstrip(wide("3/8 in"), thick("3/16 in"))).around(doorIn, "doorway") */
    public static Thick thick(String length) {
        return new Thick(Sizes.fixed(length));
    }

    /** So wide across, of something round. @example dig(across("10 in"), deep("30 in")) */
    public static Across across(String length) {
        return new Across(Sizes.fixed(length));
    }

    // ---- putting together --------------------------------------------------------------------------------------

    /** Puts a part in its place; what nothing fixes is centred on the first part named. @example var shelfIn = place(shelf).above(floorIn, "8 in") */
    public static Placing place(Part part) {
        return new Placing(
                here(),
                part.name(),
                part.trait(Trait.RingOf.class)
                        .map(Trait.RingOf::sides)
                        .orElse(part.trait(Trait.MeetsTwin.class).isPresent() ? 2 : 1),
                part.trait(Trait.Along.class).map(along -> along.edge().edge()),
                List.of());
    }

    /**
     * Fastens these to others; the fastener is driven through these.
     *
     * @example var sidesOn = fasten(sidesIn).to(floorIn).glued(glue).screwed(screw, every("5 in"))
     */
    public static Joint fasten(Placing... these) {
        List<Origin> keys = Arrays.stream(these).map(Placing::origin).toList();
        return Joint.of(here(), keys);
    }

    /** Fasteners this far apart at most, along the joint. @example fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")) */
    public static Spacing every(String length) {
        return new Spacing(Sizes.fixed(length));
    }

    /** Caulks seams; say with what. @example var seams = seal(insideSeams()).with(sealer, bead("1/4 in")) */
    public static Seal seal(Seal.Seams seams) {
        return new Seal(here(), seams, Optional.empty(), Optional.empty());
    }

    /** The inside corners of everything put together so far. @example seal(insideSeams()).with(sealer, bead("1/4 in")) */
    public static Seal.Seams insideSeams() {
        return new Seal.Seams(Seal.Which.INSIDE, Optional.empty());
    }

    /** The seams of the finished build that rain reaches, where it would run into the wood. @example seal(wetSeams()).with(sealer, bead("1/8 in")) */
    public static Seal.Seams wetSeams() {
        return new Seal.Seams(Seal.Which.WET, Optional.empty());
    }

    /** Seams of that length in all, measured on the work. @example seal(seamsOf(length("6 ft"))).with(sealer, bead("1/4 in")) */
    public static Seal.Seams seamsOf(Length length) {
        return new Seal.Seams(Seal.Which.SAID, Optional.of(length));
    }

    /** A round bead of caulk so thick, measured across. @example seal(insideSeams()).with(sealer, bead("3/16 in")) */
    public static Bead bead(String across) {
        Length wide = Sizes.fixed(across);
        return new Bead(wide, wide, Bead.Lies.ROUND);
    }

    /** Paints or oils faces; say with what, first coat first. @example var inside = coat(insideFaces()).with(primer).with(colour, times(2)) */
    public static Coat coat(Coat.Faces... faces) {
        return new Coat(here(), List.of(faces), List.of(), false);
    }

    /** The inside faces of everything put together so far. @example coat(insideFaces()).with(primer) */
    public static Coat.Faces insideFaces() {
        return new Coat.Faces(Coat.Which.INSIDE, Optional.empty());
    }

    /** The outside faces of everything put together so far. @example coat(outsideFaces()).with(primer) */
    public static Coat.Faces outsideFaces() {
        return new Coat.Faces(Coat.Which.OUTSIDE, Optional.empty());
    }

    /** Both faces of every piece of this part. @example coat(facesOf(shelf)).with(colour) */
    public static Coat.Faces facesOf(Part part) {
        return new Coat.Faces(Coat.Which.BOTH_OF, Optional.of(part.name()));
    }

    /** The underside of every piece of this part, which lies or slopes. @example coat(undersideOf(roof)).with(primer) */
    public static Coat.Faces undersideOf(Part part) {
        return new Coat.Faces(Coat.Which.UNDERSIDE_OF, Optional.of(part.name()));
    }

    /** Both cut ends of every piece of this part. @example coat(cutEndsOf(post)).with(colour) */
    public static Coat.Faces cutEndsOf(Part part) {
        return new Coat.Faces(Coat.Which.ENDS_OF, Optional.of(part.name()));
    }

    /** All edges of every piece of this part that lie open, round its openings too; they drink twice as much paint as a face. @example coat(edgesOf(front)).with(primer) */
    public static Coat.Faces edgesOf(Part part) {
        return new Coat.Faces(Coat.Which.EDGES_OF, Optional.of(part.name()));
    }

    /** So many coats, 1 or more. @example coat(outsideFaces()).with(primer).with(colour, times(2)) */
    public static Coats times(int coats) {
        return new Coats(coats);
    }

    // ---- door and glazing --------------------------------------------------------------------------------------

    /** Puts a pane in; say into what. @example var paneIn = glaze(pane).into(doorIn) */
    public static Glazing glaze(Part pane) {
        return new Glazing(here(), pane.name(), List.of(), Optional.empty(), Optional.empty(), false);
    }

    /** Glazing tape of that thickness, for a pane to lie on. @example glaze(pane).into(doorIn).bedded(glazingTape("1/16 in")) */
    public static Item glazingTape(String thick) {
        return Item.of(Item.Kind.GLAZING_TAPE, "glazing tape").thick(Sizes.fixed(thick));
    }

    /** Glazing beads of that width, to hold a pane. @example glaze(pane).into(doorIn).held(beads("3/8 in")) */
    public static Item beads(String wide) {
        return Item.of(Item.Kind.BEADS, "glazing beads").wide(Sizes.fixed(wide));
    }

    /** Fits something bought; say how many and where. @example var knobs = fit(knob()).times(2).at(doorIn, RIGHT) */
    public static Fitting fit(Item item) {
        return new Fitting(
                here(),
                item,
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A hinge of that kind, as a shop calls it. @example fit(hinge("overlay").stainless()).times(2).at(doorIn, LEFT) */
    public static Item hinge(String which) {
        return Item.of(Item.Kind.HINGE, which + " hinge");
    }

    /** A magnetic catch, to hold a door shut. @example fit(magneticCatch()).times(2).at(doorIn, RIGHT) */
    public static Item magneticCatch() {
        return Item.of(Item.Kind.CATCH, "magnetic catch");
    }

    /** A knob to open a door by. @example fit(knob().through("3/16 in")).at(doorIn, RIGHT) */
    public static Item knob() {
        return Item.of(Item.Kind.KNOB, "knob");
    }

    /** What keeps a door or lid open, of that kind. @example fit(stay("chain").stopsAt("95 deg")).at(doorIn, LEFT) */
    public static Item stay(String which) {
        return Item.of(Item.Kind.STAY, which + " stay");
    }

    /**
     * Weatherstrip so wide and, before it is squeezed, so thick.
     *
     * @example fit(weatherstrip(wide("3/8 in"), thick("3/16 in")).roll("10 ft")).around(doorIn, "doorway")
     */
    public static Item weatherstrip(Trait.Wide wide, Thick thick) {
        return Item.of(Item.Kind.WEATHERSTRIP, "weatherstrip")
                .wide(wide.length())
                .thick(thick.length());
    }

    /** Any other fitting, by the name a shop knows. @example fit(fitting("shelf bracket").costs("4.25")).times(2).at(backIn, BOTTOM) */
    public static Item fitting(String name) {
        return Item.of(Item.Kind.OTHER, name);
    }

    // ---- the place ---------------------------------------------------------------------------------------------

    /** A hole in the ground, round, so wide across and so deep. @example var hole = dig(across("10 in"), deep("44 in")).forPost(postIn) */
    public static Hole dig(Across across, Trait.Deep deep) {
        return new Hole(
                here(),
                across.length(),
                deep.length(),
                Length.ZERO,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A bag of dry concrete mix, by what it holds. @example dig(across("10 in"), deep("36 in")).setInConcrete(bag("60 lb").costs("5.80")) */
    public static Bag bag(String holds) {
        return new Bag(Mass.parse(holds), Optional.empty());
    }

    /** The place it stands in; say what of it. @example site().besidePath("24 in") */
    public static SiteSaid site() {
        return new SiteSaid(here(), List.of());
    }

    // ---- what it carries ---------------------------------------------------------------------------------------

    /**
     * What lies on it, spread evenly: along its length (20 lb/ft, 30 kg/m), on its area (40 lb/sq ft, 200 kg/m2) or in all
     * (120 lb, 50 kg). Its own weight is not counted.
     *
     * @group what it carries
     * @example var books = carries(floorIn, "20 lb/ft").spans("22 in").heldTo(VISIBLE)
     */
    public static Carries carries(Placing what, String load) {
        return Carries.of(what, SpreadLoad.parse(load));
    }

    /**
     * A share of what lies on something else, spread evenly along this.
     *
     * @group what it carries
     * @example var books = carries(floorIn, "40 lb/sq ft"); var onBack = carries(backIn, halfOf(books)).spans("22 in")
     */
    public static Carries carries(Placing what, Carries.Share share) {
        return Carries.of(what, share);
    }

    /**
     * Things that stand on it: their weight is its load, and whether there is room for them is looked at.
     *
     * @group what it carries
     * @example carries(floorIn, contents("Seed box").wide("7 in").deep("5 in").high("4 in").weighs("2 lb")).between(sidesIn)
     */
    public static Carries carries(Placing what, Contents... things) {
        return Carries.of(what, List.of(things));
    }

    /**
     * What must go in: the largest of its kind with its sizes as it stands there, how many, what each weighs. Say on what they
     * stand with {@code carries}.
     *
     * @group what it carries
     * @example var boxes = contents("Seed box").wide("7 in").deep("5 in").high("4 in").weighs("2 lb").times(3); var onFloor = carries(floorIn, boxes)
     */
    public static Contents contents(String name) {
        return Contents.of(name);
    }

    /**
     * What hangs on a joint: it pushes straight down across its fasteners, which share it alike.
     *
     * @group what it carries
     * @example var onSides = carries(fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")), "60 lb")
     */
    public static JointLoad carries(Joint joint, String load) {
        return JointLoad.of(joint, Mass.parse(load));
    }

    /**
     * A share of what lies on something else hangs on a joint.
     *
     * @group what it carries
     * @example var books = carries(floorIn, "40 lb/sq ft"); var onSides = carries(fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")), halfOf(books))
     */
    public static JointLoad carries(Joint joint, Carries.Share share) {
        return JointLoad.of(joint, share);
    }

    /** Fills what stands round; say between which heights, and how heavy it is. @example var soil = fill(floorIn, "potting soil").from("1 in").upTo("2 1/2 in").weighs("90 lb/cu ft") */
    public static Fill fill(Placing round, String what) {
        return Fill.of(round, what);
    }

    /** Half of what lies on something. @group what it carries @example carries(backIn, halfOf(carries(floorIn, "40 lb/sq ft"))).spans("22 in") */
    public static Carries.Share halfOf(Carries load) {
        return new Carries.Share(load.origin(), 0.5);
    }

    /** Moves everything that hangs together with this placing onto another. @example var boxIn = mount(floorIn).onTopOf(postIn) */
    public static Mount mount(Placing by) {
        return new Mount(
                here(), by.origin(), Optional.empty(), List.of(), Optional.empty(), Length.ZERO, Optional.empty());
    }

    // ---- the work ----------------------------------------------------------------------------------------------

    /** All parts are cut in this step. @example cutAll() */
    public static CutAll cutAll() {
        return new CutAll(here());
    }

    /** How long this step takes, in hours and minutes. @example takes("1 h 30 min") */
    public static WorkTime takes(String time) {
        return WorkTime.of(time);
    }

    /** How long to wait after this step before anything goes on that builds on it, and for what. @example waits("2 days", "the concrete sets") */
    public static Waiting waits(String time, String until) {
        return new Waiting(here(), Times.of(time), until);
    }

    /** Free for the build on every evening from Monday to Friday; the booklet then says which step falls on which day. @example evenings("19:00 to 21:30") */
    public static FreeTime evenings(String fromTo) {
        return FreeTime.of(FreeTime.When.EVENINGS, fromTo);
    }

    /** Free for the build on Saturdays. @example saturdays("9:00 to 16:00") */
    public static FreeTime saturdays(String fromTo) {
        return FreeTime.of(FreeTime.When.SATURDAYS, fromTo);
    }

    /** Free for the build on Sundays. @example sundays("10:00 to 13:00") */
    public static FreeTime sundays(String fromTo) {
        return FreeTime.of(FreeTime.When.SUNDAYS, fromTo);
    }

    /** A session of a group in which everybody builds one; say how many they are and what tools they share. @example session("90 min").builders(24) */
    public static Session session(String time) {
        return new Session(here(), Times.of(time), Optional.empty(), Optional.empty(), Optional.empty(), false);
    }

    /** Makes so many kits in one go, each with everything for one piece: what is cut and bought is for all of them. @example kits(25) */
    public static Kits kits(int many) {
        return Kits.of(here(), many);
    }

    /** This step needs a ladder. @example needsLadder() */
    public static Ladder needsLadder() {
        return new Ladder(here());
    }

    /**
     * How cold it gets in this step and until what is glued, caulked or painted in it has dried; above the steps, in all that say
     * nothing else.
     *
     * @example coldest("50 F")
     */
    public static Coldest coldest(String temperature) {
        return Coldest.of(temperature);
    }

    /** How loud this step is at the ear, in dB(A), as a meter or the tool's own sheet says. @example loud("98 dB") */
    public static Loud loud(String decibels) {
        return Loud.of(decibels);
    }

    /** How many people this step needs, 1 or more. @example needsPeople(2) */
    public static People needsPeople(int number) {
        return People.of(number);
    }

    /**
     * Something to ask for or order so many working days before the first step.
     *
     * @example ahead("Ask for buried lines to be located", workingDays(3))
     */
    public static Ahead ahead(String what, int workingDays) {
        return new Ahead(here(), what, workingDays);
    }

    /** So many working days. @group the work @example ahead("Order the acrylic", workingDays(5)) */
    public static int workingDays(int number) {
        return number;
    }

    /** A kit that could be bought instead, to compare what both cost. @example boughtKit("A ready-made shelf").costs("129.00") */
    public static BoughtKit boughtKit(String name) {
        return new BoughtKit(here(), name, Optional.empty(), Optional.empty(), List.of());
    }

    /** A tool that the difference to a bought kit might pay for; say its price. @example tool("Track saw").costs("389.00") */
    public static Tool tool(String name) {
        return new Tool(here(), name, Optional.empty());
    }

    private static Origin here() {
        return SketchRun.current().next();
    }
}
