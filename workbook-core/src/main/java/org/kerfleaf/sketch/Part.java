package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.TemperatureChange;

/**
 * A part, as far as it was said.
 *
 * @param name its identity
 * @param kind panel, board or pane
 * @param stock the name of the sheet or board it is cut from
 * @param said what was said of it, in order
 * @group parts
 */
public record Part(Origin origin, String name, PartKind kind, String stock, List<Trait> said) implements Declaration {
    public Part {
        said = List.copyOf(said);
    }

    /** What was said of one kind, if anything. */
    public <T extends Trait> Optional<T> trait(Class<T> kindOfTrait) {
        return said.stream()
                .filter(kindOfTrait::isInstance)
                .map(kindOfTrait::cast)
                .findFirst();
    }

    /** Everything that was said of one kind, in order. */
    public <T extends Trait> List<T> traits(Class<T> kindOfTrait) {
        return said.stream()
                .filter(kindOfTrait::isInstance)
                .map(kindOfTrait::cast)
                .toList();
    }

    private Part with(Trait trait) {
        List<Trait> more = new ArrayList<>(said);
        more.add(trait);
        return new Part(origin, name, kind, stock, more);
    }

    /** Says something that can be said once only. */
    private Part once(Trait trait, String word) {
        if (trait(trait.getClass()).isPresent()) {
            throw new SketchException("“%s” has “%s” twice. Once is right.".formatted(name, word));
        }
        return with(trait);
    }

    private Length positive(String word, Length length) {
        if (!length.isPositive()) {
            throw new SketchException("“%s” is %s %s. More than nothing would be right.".formatted(name, length, word));
        }
        return length;
    }

    /** Its size left to right. */
    public Part wide(Length length) {
        return once(new Trait.Wide(positive("wide", length)), "wide");
    }

    /** Its size left to right. @example panel("Lid", ply).wide("20 in").deep("10 in").times(1) */
    public Part wide(String length) {
        return wide(SketchRun.length(length));
    }

    /** Its size front to back. */
    public Part deep(Length length) {
        return once(new Trait.Deep(positive("deep", length)), "deep");
    }

    /** Its size front to back. @example panel("Lid", ply).wide("20 in").deep("10 in").times(1) */
    public Part deep(String length) {
        return deep(SketchRun.length(length));
    }

    /** Its size bottom to top. */
    public Part high(Length length) {
        return once(new Trait.High(positive("high", length)), "high");
    }

    /** Its size bottom to top. @example panel("End", ply).deep("8 in").high("20 in").times(1) */
    public Part high(String length) {
        return high(SketchRun.length(length));
    }

    /** The length a board is cut to. */
    public Part cutTo(Length length) {
        return once(new Trait.CutTo(positive("long", length)), "cutTo");
    }

    /** The length a board is cut to. @example board("Cleat", strip).cutTo("10 in").times(1) */
    public Part cutTo(String length) {
        return cutTo(SketchRun.length(length));
    }

    /**
     * Its height was said on this face, INSIDE or OUTSIDE; the other face follows from the bevel.
     *
     * @group shapes
     * @example panel("Low front", ply).wide("20 in").high("12 in").sizedOn(OUTSIDE).topRisesInward(slope).times(1)
     */
    public Part sizedOn(Side face) {
        return once(new Trait.SizedOn(face), "sizedOn");
    }

    /**
     * Its top edge is bevelled and rises from the outside face to the inside face.
     *
     * @group shapes
     * @example panel("Low front", ply).wide("20 in").high("12 in").sizedOn(OUTSIDE).topRisesInward(slope).times(1)
     */
    public Part topRisesInward(Angle slope) {
        return once(new Trait.TopBevel(slope), "topRisesInward");
    }

    /**
     * Its top edge is bevelled and falls from the outside face to the inside face.
     *
     * @group shapes
     * @example panel("High back", ply).wide("20 in").high("18 in").sizedOn(OUTSIDE).topFallsInward(slope).times(1)
     */
    public Part topFallsInward(Angle slope) {
        return once(new Trait.TopBevel(Angle.ZERO.minus(slope)), "topFallsInward");
    }

    /**
     * Upright to the eaves, then sloping up to a ridge in the middle.
     *
     * @group shapes
     * @example panel("Gable end", ply).wide("20 in").gable(length("16 in"), slope).times(1)
     */
    public Part gable(Length eaves, Angle slope) {
        return once(new Trait.Gable(positive("high at the eaves", eaves), slope), "gable");
    }

    /**
     * Its top slopes from one height at the front to another at the back.
     *
     * @group shapes
     * @example panel("Sloping end", ply).deep("10 in").highFrontToBack(length("12 in"), length("16 in")).pair().times(2)
     */
    public Part highFrontToBack(Length front, Length back) {
        return once(
                new Trait.SlopingTop(positive("high in front", front), positive("high at the back", back)),
                "highFrontToBack");
    }

    /** So wide at its top, where that differs from its foot; one is centred over the other. */
    public Part wideAtTop(Length length) {
        return once(new Trait.WideAtTop(positive("wide at its top", length)), "wideAtTop");
    }

    /**
     * So wide at its top, where that differs from its foot; one is centred over the other.
     *
     * @group shapes
     * @example panel("Splayed back", ply).wide("16 in").wideAtTop("20 in").high("14 in").times(1)
     */
    public Part wideAtTop(String length) {
        return wideAtTop(SketchRun.length(length));
    }

    /** A disc of that diameter, lying flat. @group shapes */
    public Part round(Length across) {
        return once(new Trait.RoundDisc(positive("across", across)), "round");
    }

    /** A disc of that diameter, lying flat. @group shapes @example panel("Turntable", ply).round("12 in").times(1) */
    public Part round(String across) {
        return round(SketchRun.length(across));
    }

    /**
     * Within its two sizes it has these corners, going round with the wood on the left: {@code corners(at("0 in", "0 in"), ...)}.
     *
     * @group shapes
     * @example panel("Bracket", ply).deep("8 in").high("10 in").corners(at("0 in", "0 in"), at("8 in", "10 in"), at("0 in",
     *     "10 in")).times(1)
     */
    public Part corners(Shape.At... corners) {
        if (corners.length < 3) {
            throw new SketchException(
                    "“%s” has %d corners. Three or more would be right.".formatted(name, corners.length));
        }
        return once(new Trait.Corners(List.of(corners)), "corners");
    }

    /**
     * All its corners are rounded with that radius.
     *
     * @group shapes
     * @example panel("Table top", ply).wide("30 in").deep("20 in").roundedCorners("2 in").times(1)
     */
    public Part roundedCorners(String radius) {
        return once(
                new Trait.RoundedCorners(positive("rounded at its corners", SketchRun.length(radius))),
                "roundedCorners");
    }

    /** One edge is sawn with the blade tilted so much from square; the face named keeps its size. @group shapes */
    public Part bevelled(Side edge, Angle tilt, Side longOn) {
        return with(new Trait.Bevelled(edge, tilt, longOn));
    }

    /**
     * One edge is sawn with the blade tilted so much from square; the face named keeps its size.
     *
     * @group shapes
     * @example panel("Bevelled lid", ply).wide("20 in").deep("10 in").bevelled(BACK, "15 deg", TOP).times(1)
     */
    public Part bevelled(Side edge, String tilt, Side longOn) {
        return bevelled(edge, Angle.parse(tilt), longOn);
    }

    /** One end is sawn so much from square; the long point stays at the edge named. @group shapes */
    public Part mitred(Side end, Angle scale, Side longAt) {
        return mitred(end, Meets.scale(scale), longAt);
    }

    /**
     * One end is sawn to meet its neighbour; the long point stays at the edge named.
     *
     * @group shapes
     * @example board("Bay trim", strip).cutTo("20 in").mitred(RIGHT, corner("110 deg"), BOTTOM).times(2)
     */
    public Part mitred(Side end, Meets meets, Side longAt) {
        return with(new Trait.Mitred(end, meets, longAt));
    }

    /**
     * A brace from a post to what stands out from it, so far out and so far down; its length and both its ends follow.
     *
     * @group shapes
     * @example board("Brace", strip).brace(out("12 in"), down("16 in")).times(2)
     */
    public Part brace(Trait.Out out, Trait.Down down) {
        Length reach = positive("out", out.length());
        Angle rises = positive("down", down.length()).over(reach);
        return once(new Trait.Brace(reach, down.length()), "brace")
                .cutTo(rises.lengthOver(reach))
                .mitred(Side.LEFT, new Meets(Meets.Kind.POST, rises, Angle.ZERO), Side.BOTTOM)
                .mitred(Side.RIGHT, new Meets(Meets.Kind.UNDERSIDE, rises, Angle.ZERO), Side.BOTTOM);
    }

    /**
     * One end is sawn so much from square; the long point stays at the edge named.
     *
     * @group shapes
     * @example board("Mitred trim", strip).cutTo("20 in").mitred(LEFT, "45 deg", BOTTOM).times(2)
     */
    public Part mitred(Side end, String scale, Side longAt) {
        return mitred(end, Angle.parse(scale), longAt);
    }

    /**
     * A round hole with a name; without a distance it is in the middle.
     *
     * @group shapes
     * @example panel("Lid", ply).wide("20 in").deep("10 in").hole("cable", round("2 in").from(LEFT, "4 in")).times(1)
     */
    public Part hole(String called, Shape shape) {
        return with(new Trait.HoleIn(called, shape));
    }

    /**
     * An opening with a name; without a distance it is in the middle.
     *
     * @group shapes
     * @example panel("Sash", ply).wide("12 in").high("14 in").opening("light", frame("2 1/2 in")).times(1)
     */
    public Part opening(String called, Shape shape) {
        return with(new Trait.OpeningIn(called, shape));
    }

    /** The opening of that name, for another part to lap, fit or hang over. @group shapes */
    public OpeningOf opening(String called) {
        return new OpeningOf(name, called);
    }

    /** A step cut round an opening, on one face. @group shapes */
    public Part rabbet(Side face, String opening, Trait.Wide wide, Trait.Deep deep) {
        return with(new Trait.RabbetIn(face, opening, wide.length(), deep.length()));
    }

    /**
     * A step cut along a whole edge, on one face.
     *
     * @group shapes
     * @example panel("End", ply).deep("8 in").high("20 in").rabbet(INSIDE, TOP, wide("3/4 in"), deep("3/8 in")).times(1)
     */
    public Part rabbet(Side face, Side edge, Trait.Wide wide, Trait.Deep deep) {
        return with(new Trait.RabbetAlong(face, edge, wide.length(), deep.length()));
    }

    /**
     * A groove on one face from edge to edge, its near side so far from the edge it runs along.
     *
     * @group shapes
     * @example panel("Drawer side", ply).deep("12 in").high("4 in").groove("bottom", INSIDE, from(BOTTOM, "3/8 in"), wide("1/4 in"),
     *     deep("1/4 in")).times(2)
     */
    public Part groove(String called, Side face, Shape.From near, Trait.Wide wide, Trait.Deep deep) {
        return with(new Trait.GrooveIn(called, face, near.edge(), near.distance(), wide.length(), deep.length()));
    }

    /**
     * A groove across the grain, its near side so far from the edge it runs along.
     *
     * @group shapes
     * @example panel("End", ply).deep("8 in").high("20 in").dado("shelf", INSIDE, from(BOTTOM, "9 in"), wide(t), deep("1/4 in")).times(1)
     */
    public Part dado(String called, Side face, Shape.From near, Trait.Wide wide, Trait.Deep deep) {
        return groove(called, face, near, wide, deep);
    }

    /** One left, one right, mirrored. @example panel("End", ply).deep("8 in").high("20 in").pair().times(2) */
    public Part pair() {
        return once(new Trait.Pair(), "pair");
    }

    /**
     * One left, one right, both from one blank with one sloping cut between them.
     *
     * @group shapes
     * @example panel("Sloping end", ply).deep("10 in").highFrontToBack(length("12 in"), length("16 in")).pairFromOneBlank().times(2)
     */
    public Part pairFromOneBlank() {
        return pair().once(new Trait.OneBlank(), "pairFromOneBlank");
    }

    /** So many of it, 1 or more, where it is not placed. @example board("Cleat", strip).cutTo("10 in").times(4) */
    public Part times(int count) {
        return once(new Trait.Times(SketchRun.atLeastOne("“" + name + "” times", count)), "times");
    }

    /**
     * It lies on the slopes of these gables.
     *
     * @group what follows others
     * @example panel("Wide roof", ply).overGables(front, back).past(EAVES, length("2 in")).past(GABLES,
     *     length("2 in")).meetsTwin(RIDGE).pair()
     */
    public Part overGables(Part... gables) {
        return once(new Trait.OverGables(Arrays.stream(gables).map(Part::name).toList()), "overGables");
    }

    /**
     * It lies on the one slope that these carry together.
     *
     * @group what follows others
     * @example panel("Slope", ply).overSlope(lowSide).past(FRONT, length("1 in")).times(1)
     */
    public Part overSlope(Part... supports) {
        return once(new Trait.OverSlope(Arrays.stream(supports).map(Part::name).toList()), "overSlope");
    }

    /**
     * Its end on that side is cut plumb, to meet what stands there.
     *
     * @group what follows others
     * @example panel("Slope", ply).overSlope(lowSide).plumbAt(BACK).times(1)
     */
    public Part plumbAt(Side side) {
        return once(new Trait.PlumbAt(side), "plumbAt");
    }

    /**
     * One of so many equal sides that stand in a ring, each leaning out from upright; its width is said on top, outside.
     *
     * @group what follows others
     */
    public Part ringOf(int sides, Angle leansOut) {
        if (sides < 3) {
            throw new SketchException(
                    "“%s” is one of a ring of %d. Three or more would be right.".formatted(name, sides));
        }
        return once(new Trait.RingOf(sides, leansOut), "ringOf");
    }

    /**
     * One of so many equal sides that stand in a ring, each leaning out from upright; its width is said on top, outside.
     *
     * @group what follows others
     * @example Part stave = panel("Stave", ply).wide("10 in").high("12 in").ringOf(6, "15 deg");
     *     var ring = place(stave).round()
     */
    public Part ringOf(int sides, String leansOut) {
        return ringOf(sides, Angle.parse(leansOut));
    }

    /**
     * A floor that fits into a ring of these, its underside so far up from the foot.
     *
     * @group what follows others
     * @example Part stave = panel("Stave", ply).wide("10 in").high("12 in").ringOf(6, "15 deg");
     *     var ring = place(stave).round();
     *     Part base = panel("Base", ply).fitsInRing(stave, "1 in");
     *     var baseIn = place(base).restsIn(ring)
     */
    public Part fitsInRing(Part side, String up) {
        return fitsInRing(side, SketchRun.length(up));
    }

    /** A floor that fits into a ring of these, its underside so far up from the foot. */
    public Part fitsInRing(Part side, Length up) {
        return once(new Trait.FitsRing(side.name, up), "fitsInRing");
    }

    /**
     * It goes past the EAVES or the end of a slope, measured along the slope, or past the GABLES or sides.
     *
     * @group what follows others
     * @example panel("Slope", ply).overSlope(lowSide).past(FRONT, length("1 in")).times(1)
     */
    public Part past(Side edge, Length by) {
        return with(new Trait.Past(edge, by));
    }

    /**
     * It meets its twin at the ridge, the joint plumb.
     *
     * @group what follows others
     * @example panel("Wide roof", ply).overGables(front, back).meetsTwin(RIDGE).pair()
     */
    public Part meetsTwin(Side edge) {
        return once(new Trait.MeetsTwin(edge), "meetsTwin");
    }

    /** It runs along an edge of another part; its length follows. @group what follows others @example board("Trim", strip).along(roof.eave()) */
    public Part along(EdgeOf edge) {
        return once(new Trait.Along(edge), "along");
    }

    /** Its upper end is mitred at the ridge. @group what follows others @example board("Trim", strip).along(roof.rake()).mitredAtRidge() */
    public Part mitredAtRidge() {
        return once(new Trait.MitredAtRidge(), "mitredAtRidge");
    }

    /**
     * It is longer by the other part's thickness at both ends.
     *
     * @group what follows others
     * @example board("Trim", strip).along(roof.eave()).coversEndsOf(rake)
     */
    public Part coversEndsOf(Part other) {
        return once(new Trait.CoversEndsOf(other.name), "coversEndsOf");
    }

    /**
     * It laps an opening by so much all round.
     *
     * @group what follows others
     * @example panel("Wide door", ply).laps(front.opening("doorway"), "1 1/2 in").times(1)
     */
    public Part laps(OpeningOf opening, String by) {
        return laps(opening, SketchRun.length(by));
    }

    /** It laps an opening by so much all round. */
    public Part laps(OpeningOf opening, Length by) {
        return once(new Trait.Laps(opening, by), "laps");
    }

    /**
     * It fits into the rabbet round an opening, with room to grow where warmth and damp were said.
     *
     * @group what follows others
     * @example pane("Window pane", clear).fits(door.opening("window")).warmer("60 F").colder("60 F").times(1)
     */
    public Part fits(OpeningOf opening) {
        return once(new Trait.FitsOpening(opening), "fits");
    }

    /**
     * It fits a frame of boards, clear so wide and so high, rabbeted all round once the frame is together.
     *
     * @group what follows others
     * @example pane("Lid pane", clear).fitsFrame(length("14 in"), length("12 in"), wide("1/2 in"), deep("1/4 in")).warmer("60 F").colder("60 F").times(1)
     */
    public Part fitsFrame(Length clearWide, Length clearHigh, Trait.Wide rabbetWide, Trait.Deep rabbetDeep) {
        return once(new Trait.FitsRabbet(clearWide, clearHigh, rabbetWide.length(), rabbetDeep.length()), "fitsFrame");
    }

    private TemperatureChange change(String word, String said) {
        TemperatureChange change = TemperatureChange.parse(said);
        if (change.compareTo(TemperatureChange.ZERO) < 0) {
            throw new SketchException(
                    "“%s” gets %s %s. By how much, not less than nothing, would be right.".formatted(name, said, word));
        }
        return change;
    }

    /**
     * How much warmer than on the day of cutting it gets, in degrees F or C.
     *
     * @group door and glazing
     * @example pane("Window pane", clear).fits(door.opening("window")).warmer("60 F").colder("60 F").times(1)
     */
    public Part warmer(String change) {
        return once(new Trait.Warmer(change("warmer", change)), "warmer");
    }

    /**
     * How much colder than on the day of cutting it gets, in degrees F or C.
     *
     * @group door and glazing
     * @example pane("Window pane", clear).fits(door.opening("window")).warmer("60 F").colder("60 F").times(1)
     */
    public Part colder(String change) {
        return once(new Trait.Colder(change("colder", change)), "colder");
    }

    /**
     * It stays damp for long, and swells.
     *
     * @group door and glazing
     * @example pane("Window pane", clear).fits(door.opening("window")).warmer("60 F").colder("60 F").inDamp().times(1)
     */
    public Part inDamp() {
        return once(new Trait.InDamp(), "inDamp");
    }

    /**
     * The list's size is not to be trusted: measure on the piece.
     *
     * @example board("Cleat", strip).cutTo("10 in").takenFromTheWork("Hold it in place and mark it.").times(1)
     */
    public Part takenFromTheWork(String words) {
        return once(new Trait.TakenFromTheWork(words), "takenFromTheWork");
    }

    /** Its grain runs towards this side and the one opposite. @example panel("End", ply).deep("8 in").high("20 in").grainTowards(FRONT).times(1) */
    public Part grainTowards(Side side) {
        return once(new Trait.GrainTowards(side), "grainTowards");
    }

    /** A roof's sloping edge. @group what follows others @example board("Trim", strip).along(roof.rake()).mitredAtRidge() */
    public EdgeOf rake() {
        return new EdgeOf(name, EdgeOf.Edge.RAKE);
    }

    /** A roof's lower edge. @group what follows others @example board("Trim", strip).along(roof.eave()) */
    public EdgeOf eave() {
        return new EdgeOf(name, EdgeOf.Edge.EAVE);
    }

    /** A roof's upper edge. @group what follows others @example board("Cap", strip).along(roof.ridge()) */
    public EdgeOf ridge() {
        return new EdgeOf(name, EdgeOf.Edge.RIDGE);
    }

    /** The angle between a roof and its twin; known when planned. @group asked of the plan @example roof.ridgeAngle() */
    public Asked ridgeAngle() {
        return new Asked(name, Asked.Question.RIDGE_ANGLE);
    }

    /** The number to set on a mitre saw's scale, which reads from square; known when planned. @group asked of the plan @example rake.mitreScale() */
    public Asked mitreScale() {
        return new Asked(name, Asked.Question.MITRE_SCALE);
    }

    /** How many are cut; known when planned. @group asked of the plan @example side.count() */
    public Asked count() {
        return new Asked(name, Asked.Question.COUNT);
    }

    /** How long it is cut along its grain; known when planned. @group asked of the plan @example side.cutLength() */
    public Asked cutLength() {
        return new Asked(name, Asked.Question.LENGTH);
    }

    /** How wide it is cut across its grain; known when planned. @group asked of the plan @example side.cutWidth() */
    public Asked cutWidth() {
        return new Asked(name, Asked.Question.WIDTH);
    }
}
