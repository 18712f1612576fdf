package org.kerfleaf.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.sketch.*;

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
                "import static org.kerfleaf.words.Words.*;");
    }

    // ---- sizes -------------------------------------------------------------------------------------------------

    /** The unit the workbook measures and prints in: {@code measureIn(INCHES)}. */
    public static Units measureIn(LengthUnit unit) {
        return Units.of(unit);
    }

    /** The currency of all prices and the day they were true: {@code pricesIn("USD", "2026-04-12")}. */
    public static Prices pricesIn(String currency, String day) {
        return Prices.in(currency, day);
    }

    /** A length the reader may change. */
    public static Length size(String label, String value) {
        return Sizes.length(label, value, Optional.empty());
    }

    /** A length the reader may change, within a range: {@code "16 in to 30 in"}. */
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

    /** A length held inside or outside, within a range: {@code held(INSIDE, "Width", "22 in", "16 in to 30 in")}. */
    public static Held held(Side at, String label, String value, String range) {
        return Held.ask(at, label, value, Optional.of(range));
    }

    /** A slope the reader may change: {@code "30 deg"}, {@code "6 in 12"}. */
    public static Angle slope(String label, String value) {
        return Sizes.angle(label, value, Optional.empty());
    }

    /** A slope the reader may change, within a range: {@code "20 deg to 45 deg"}. */
    public static Angle slope(String label, String value, String range) {
        return Sizes.angle(label, value, Optional.of(range));
    }

    /** A number of things the reader may change, within a range: {@code "1 to 4"}. */
    public static int count(String label, int value, String range) {
        return Sizes.count(label, value, Optional.of(range));
    }

    /** A word the reader may change to another of these. */
    public static String pick(String label, String value, String... among) {
        return Sizes.choice(label, value, among);
    }

    /** A length that does not change. */
    public static Length length(String text) {
        return Sizes.fixed(text);
    }

    /** So many of something, made one after the other and kept together: {@code repeat(4, i -> panel(...))}. */
    public static <T> List<T> repeat(int times, IntFunction<T> make) {
        return IntStream.range(0, times).mapToObj(make).toList();
    }

    // ---- what we buy -------------------------------------------------------------------------------------------

    /** A sheet: its name, and its two sides as sold, in either order; the grain runs along the longer. */
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
                Optional.empty());
    }

    /** Dressed lumber by its nominal size: {@code lumber("2x8")}. */
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
                List.of());
    }

    /** A moulding or angle, sold by length. */
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
                List.of());
    }

    /** A wood screw by gauge and length: {@code woodScrew(6, "1 5/8 in")}. */
    public static Screw woodScrew(int gauge, String length) {
        return new Screw(here(), gauge, Sizes.fixed(length), Metal.NOT_SAID, 1, Optional.empty());
    }

    /** A finish nail by length. */
    public static Nail finishNail(String length) {
        return new Nail(here(), Sizes.fixed(length), Metal.NOT_SAID, 1, Optional.empty());
    }

    /** A carriage bolt by diameter; its length follows from what it goes through. */
    public static Bolt carriageBolt(String diameter) {
        return new Bolt(here(), Sizes.fixed(diameter), Metal.NOT_SAID, 1, Optional.empty());
    }

    public static Glue woodGlue(String name) {
        return new Glue(here(), name, Optional.empty(), Optional.empty());
    }

    public static Caulk caulk(String name) {
        return new Caulk(here(), name, Optional.empty(), Optional.empty());
    }

    /** A paint, primer or oil. */
    public static Paint paint(String name) {
        return new Paint(here(), name, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public static Volume perGallon() {
        return Volume.ofGallons(1);
    }

    public static Volume perLitre() {
        return Volume.ofLitres(1);
    }

    /** The saw that cuts the sheets. */
    public static Saw circularSaw() {
        return new Saw(here(), Optional.empty(), Optional.empty(), Optional.empty(), Length.ZERO);
    }

    // ---- parts -------------------------------------------------------------------------------------------------

    /** A part cut from a sheet. */
    public static Part panel(String name, Sheet from) {
        return new Part(here(), name, PartKind.PANEL, from.name(), List.of());
    }

    /** A part cut from a board or moulding. */
    public static Part board(String name, Lumber from) {
        return new Part(here(), name, PartKind.BOARD, from.name(), List.of());
    }

    /** A part cut from a glazing sheet. */
    public static Part pane(String name, Sheet from) {
        return new Part(here(), name, PartKind.PANE, from.name(), List.of());
    }

    /** A round hole of that diameter; say where with {@code from} and {@code up}. */
    public static Shape round(String diameter) {
        Length across = Sizes.fixed(diameter);
        return new Shape(Shape.Kind.ROUND, across, across, across.half(), List.of());
    }

    /** A rectangle so wide and so high; say where with {@code from} and {@code up}. */
    public static Shape rectangle(Length wide, Length high) {
        return new Shape(Shape.Kind.RECTANGLE, wide, high, Length.ZERO, List.of());
    }

    /** What is left open when a frame of this width stays all round. */
    public static Shape frame(String width) {
        Length all = Sizes.fixed(width);
        return new Shape(Shape.Kind.FRAME, all, all, Length.ZERO, List.of());
    }

    /** A corner of an outline: so far along its first size, so far along its second. */
    public static Shape.At at(String along, String up) {
        return new Shape.At(Sizes.fixed(along), Sizes.fixed(up));
    }

    /** A corner of an outline: so far along its first size, so far along its second. */
    public static Shape.At at(Length along, Length up) {
        return new Shape.At(along, up);
    }

    /** So far from that edge. */
    public static Shape.From from(Side edge, String distance) {
        return new Shape.From(edge, Sizes.fixed(distance));
    }

    /** So far from that edge. */
    public static Shape.From from(Side edge, Length distance) {
        return new Shape.From(edge, distance);
    }

    /** So wide. */
    public static Trait.Wide wide(Length length) {
        return new Trait.Wide(length);
    }

    /** So deep. */
    public static Trait.Deep deep(Length length) {
        return new Trait.Deep(length);
    }

    public static Trait.Wide wide(String length) {
        return new Trait.Wide(Sizes.fixed(length));
    }

    public static Trait.Deep deep(String length) {
        return new Trait.Deep(Sizes.fixed(length));
    }

    public static Thick thick(String length) {
        return new Thick(Sizes.fixed(length));
    }

    public static Across across(String length) {
        return new Across(Sizes.fixed(length));
    }

    // ---- putting together --------------------------------------------------------------------------------------

    /** Puts a part in its place; what nothing fixes is centred on the first part named. */
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

    /** Fastens these to others; the fastener is driven through these. */
    public static Joint fasten(Placing... these) {
        List<Origin> keys = Arrays.stream(these).map(Placing::origin).toList();
        return new Joint(
                here(), keys, List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** This far apart at most. */
    public static Spacing every(String length) {
        return new Spacing(Sizes.fixed(length));
    }

    /** Caulks seams. */
    public static Seal seal(Seal.Seams seams) {
        return new Seal(here(), seams, Optional.empty(), Optional.empty());
    }

    /** The inside corners of everything put together so far. */
    public static Seal.Seams insideSeams() {
        return new Seal.Seams(Optional.empty());
    }

    /** Seams of that length in all, measured on the work. */
    public static Seal.Seams seamsOf(Length length) {
        return new Seal.Seams(Optional.of(length));
    }

    /** A bead so thick. */
    public static Bead bead(String across) {
        return new Bead(Sizes.fixed(across));
    }

    /** Paints or oils faces. */
    public static Coat coat(Coat.Faces... faces) {
        return new Coat(here(), List.of(faces), List.of());
    }

    /** The inside faces of everything put together so far. */
    public static Coat.Faces insideFaces() {
        return new Coat.Faces(Coat.Which.INSIDE, Optional.empty());
    }

    /** The outside faces of everything put together so far. */
    public static Coat.Faces outsideFaces() {
        return new Coat.Faces(Coat.Which.OUTSIDE, Optional.empty());
    }

    /** Both faces of every piece of this part. */
    public static Coat.Faces facesOf(Part part) {
        return new Coat.Faces(Coat.Which.BOTH_OF, Optional.of(part.name()));
    }

    /** Both cut ends of every piece of this part. */
    public static Coat.Faces cutEndsOf(Part part) {
        return new Coat.Faces(Coat.Which.ENDS_OF, Optional.of(part.name()));
    }

    public static Coats times(int coats) {
        return new Coats(coats);
    }

    // ---- door and glazing --------------------------------------------------------------------------------------

    /** Puts a pane in. */
    public static Glazing glaze(Part pane) {
        return new Glazing(here(), pane.name(), List.of(), Optional.empty(), Optional.empty());
    }

    public static Item glazingTape(String thick) {
        return Item.of(Item.Kind.GLAZING_TAPE, "glazing tape").thick(Sizes.fixed(thick));
    }

    public static Item beads(String wide) {
        return Item.of(Item.Kind.BEADS, "glazing beads").wide(Sizes.fixed(wide));
    }

    /** Fits something bought; say how many and where. */
    public static Fitting fit(Item item) {
        return new Fitting(here(), item, 1, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public static Item hinge(String which) {
        return Item.of(Item.Kind.HINGE, which + " hinge");
    }

    public static Item magneticCatch() {
        return Item.of(Item.Kind.CATCH, "magnetic catch");
    }

    public static Item knob() {
        return Item.of(Item.Kind.KNOB, "knob");
    }

    /** What keeps a door or lid open: {@code stay("chain")}. */
    public static Item stay(String which) {
        return Item.of(Item.Kind.STAY, which + " stay");
    }

    public static Item weatherstrip(Trait.Wide wide, Thick thick) {
        return Item.of(Item.Kind.WEATHERSTRIP, "weatherstrip")
                .wide(wide.length())
                .thick(thick.length());
    }

    /** Any other fitting, by the name a shop knows. */
    public static Item fitting(String name) {
        return Item.of(Item.Kind.OTHER, name);
    }

    // ---- the place ---------------------------------------------------------------------------------------------

    /** A hole in the ground. */
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
                Optional.empty());
    }

    /** The place it stands in. */
    public static SiteSaid site() {
        return new SiteSaid(here(), Optional.empty());
    }

    /** Moves everything that hangs together with this placing onto another. */
    public static Mount mount(Placing by) {
        return new Mount(here(), by.origin(), Optional.empty(), List.of(), Optional.empty(), Length.ZERO);
    }

    // ---- the work ----------------------------------------------------------------------------------------------

    /** All parts are cut in this step. */
    public static CutAll cutAll() {
        return new CutAll(here());
    }

    /** How long this step takes: {@code takes("25 min")}. */
    public static WorkTime takes(String time) {
        return WorkTime.of(time);
    }

    /** How many people this step needs. */
    public static People needsPeople(int number) {
        return People.of(number);
    }

    /** Something to ask for or order before the first step. */
    public static Ahead ahead(String what, int workingDays) {
        return new Ahead(here(), what, workingDays);
    }

    public static int workingDays(int number) {
        return number;
    }

    /** A kit that could be bought instead. */
    public static BoughtKit boughtKit(String name) {
        return new BoughtKit(here(), name, Optional.empty(), Optional.empty(), List.of());
    }

    private static Origin here() {
        return SketchRun.current().next();
    }
}
