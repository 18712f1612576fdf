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

    /** Left to right. */
    public Part wide(Length length) {
        return once(new Trait.Wide(positive("wide", length)), "wide");
    }

    /** Left to right. */
    public Part wide(String length) {
        return wide(SketchRun.length(length));
    }

    /** Front to back. */
    public Part deep(Length length) {
        return once(new Trait.Deep(positive("deep", length)), "deep");
    }

    /** Front to back. */
    public Part deep(String length) {
        return deep(SketchRun.length(length));
    }

    /** Bottom to top. */
    public Part high(Length length) {
        return once(new Trait.High(positive("high", length)), "high");
    }

    /** Bottom to top. */
    public Part high(String length) {
        return high(SketchRun.length(length));
    }

    /** The length a board is cut to. */
    public Part cutTo(Length length) {
        return once(new Trait.CutTo(positive("long", length)), "cutTo");
    }

    /** The length a board is cut to. */
    public Part cutTo(String length) {
        return cutTo(SketchRun.length(length));
    }

    /** Its height was said on this face, INSIDE or OUTSIDE. */
    public Part sizedOn(Side face) {
        return once(new Trait.SizedOn(face), "sizedOn");
    }

    /** Its top edge is bevelled and rises from the outside face to the inside face. */
    public Part topRisesInward(Angle slope) {
        return once(new Trait.TopBevel(slope), "topRisesInward");
    }

    /** Its top edge is bevelled and falls from the outside face to the inside face. */
    public Part topFallsInward(Angle slope) {
        return once(new Trait.TopBevel(Angle.ZERO.minus(slope)), "topFallsInward");
    }

    /** Upright to the eaves, then sloping up to a ridge in the middle. */
    public Part gable(Length eaves, Angle slope) {
        return once(new Trait.Gable(positive("high at the eaves", eaves), slope), "gable");
    }

    /** Its top slopes from one height at the front to another at the back. */
    public Part highFrontToBack(Length front, Length back) {
        return once(
                new Trait.SlopingTop(positive("high in front", front), positive("high at the back", back)),
                "highFrontToBack");
    }

    /** So wide at its top, where that differs from its foot; one is centred over the other. */
    public Part wideAtTop(Length length) {
        return once(new Trait.WideAtTop(positive("wide at its top", length)), "wideAtTop");
    }

    /** So wide at its top, where that differs from its foot; one is centred over the other. */
    public Part wideAtTop(String length) {
        return wideAtTop(SketchRun.length(length));
    }

    /** A disc, lying flat. */
    public Part round(Length across) {
        return once(new Trait.RoundDisc(positive("across", across)), "round");
    }

    /** A disc, lying flat. */
    public Part round(String across) {
        return round(SketchRun.length(across));
    }

    /** Within its two sizes it has these corners, going round with the wood on the left: {@code corners(at("0 in", "0 in"), ...)}. */
    public Part corners(Shape.At... corners) {
        if (corners.length < 3) {
            throw new SketchException(
                    "“%s” has %d corners. Three or more would be right.".formatted(name, corners.length));
        }
        return once(new Trait.Corners(List.of(corners)), "corners");
    }

    /** All its corners are rounded. */
    public Part roundedCorners(String radius) {
        return once(
                new Trait.RoundedCorners(positive("rounded at its corners", SketchRun.length(radius))),
                "roundedCorners");
    }

    /** One edge is sawn with the blade tilted so much from square; the face named keeps its size. */
    public Part bevelled(Side edge, Angle tilt, Side longOn) {
        return with(new Trait.Bevelled(edge, tilt, longOn));
    }

    /** One edge is sawn with the blade tilted so much from square; the face named keeps its size. */
    public Part bevelled(Side edge, String tilt, Side longOn) {
        return bevelled(edge, Angle.parse(tilt), longOn);
    }

    /** One end is sawn so much from square; the long point stays at the edge named. */
    public Part mitred(Side end, Angle scale, Side longAt) {
        return with(new Trait.Mitred(end, scale, longAt));
    }

    /** One end is sawn so much from square; the long point stays at the edge named. */
    public Part mitred(Side end, String scale, Side longAt) {
        return mitred(end, Angle.parse(scale), longAt);
    }

    /** A round hole with a name. */
    public Part hole(String called, Shape shape) {
        return with(new Trait.HoleIn(called, shape));
    }

    /** An opening with a name. */
    public Part opening(String called, Shape shape) {
        return with(new Trait.OpeningIn(called, shape));
    }

    /** The opening of that name, for another part to lap, fit or hang over. */
    public OpeningOf opening(String called) {
        return new OpeningOf(name, called);
    }

    /** A step cut round an opening, on one face. */
    public Part rabbet(Side face, String opening, Trait.Wide wide, Trait.Deep deep) {
        return with(new Trait.RabbetIn(face, opening, wide.length(), deep.length()));
    }

    /** A step cut along a whole edge, on one face. */
    public Part rabbet(Side face, Side edge, Trait.Wide wide, Trait.Deep deep) {
        return with(new Trait.RabbetAlong(face, edge, wide.length(), deep.length()));
    }

    /** A groove on one face from edge to edge, its near side so far from the edge it runs along. */
    public Part groove(String called, Side face, Shape.From near, Trait.Wide wide, Trait.Deep deep) {
        return with(new Trait.GrooveIn(called, face, near.edge(), near.distance(), wide.length(), deep.length()));
    }

    /** A groove across the grain: {@code dado("for the shelf", INSIDE, from(BOTTOM, "8 in"), wide("23/32 in"), deep("1/4 in"))}. */
    public Part dado(String called, Side face, Shape.From near, Trait.Wide wide, Trait.Deep deep) {
        return groove(called, face, near, wide, deep);
    }

    /** One left, one right, mirrored. */
    public Part pair() {
        return once(new Trait.Pair(), "pair");
    }

    /** One left, one right, both from one blank with one sloping cut between them. */
    public Part pairFromOneBlank() {
        return pair().once(new Trait.OneBlank(), "pairFromOneBlank");
    }

    /** So many, where it is not placed. */
    public Part times(int count) {
        return once(new Trait.Times(SketchRun.atLeastOne("“" + name + "” times", count)), "times");
    }

    /** It lies on the slopes of these gables. */
    public Part overGables(Part... gables) {
        return once(new Trait.OverGables(Arrays.stream(gables).map(Part::name).toList()), "overGables");
    }

    /** It lies on the one slope that these carry together. */
    public Part overSlope(Part... supports) {
        return once(new Trait.OverSlope(Arrays.stream(supports).map(Part::name).toList()), "overSlope");
    }

    /** Its end on that side is cut plumb, to meet what stands there. */
    public Part plumbAt(Side side) {
        return once(new Trait.PlumbAt(side), "plumbAt");
    }

    /** One of so many equal sides that stand in a ring, each leaning out from upright; its width is said on top, outside. */
    public Part ringOf(int sides, Angle leansOut) {
        if (sides < 3) {
            throw new SketchException(
                    "“%s” is one of a ring of %d. Three or more would be right.".formatted(name, sides));
        }
        return once(new Trait.RingOf(sides, leansOut), "ringOf");
    }

    /** One of so many equal sides that stand in a ring, each leaning out from upright; its width is said on top, outside. */
    public Part ringOf(int sides, String leansOut) {
        return ringOf(sides, Angle.parse(leansOut));
    }

    /** A floor that fits into a ring of these, its underside so far up from the foot. */
    public Part fitsInRing(Part side, String up) {
        return fitsInRing(side, SketchRun.length(up));
    }

    /** A floor that fits into a ring of these, its underside so far up from the foot. */
    public Part fitsInRing(Part side, Length up) {
        return once(new Trait.FitsRing(side.name, up), "fitsInRing");
    }

    /** It goes past the EAVES or the end of a slope, measured along the slope, or past the GABLES or sides. */
    public Part past(Side edge, Length by) {
        return with(new Trait.Past(edge, by));
    }

    /** It meets its twin at the ridge, the joint plumb. */
    public Part meetsTwin(Side edge) {
        return once(new Trait.MeetsTwin(edge), "meetsTwin");
    }

    /** It runs along an edge of another part. */
    public Part along(EdgeOf edge) {
        return once(new Trait.Along(edge), "along");
    }

    /** Its upper end is mitred at the ridge. */
    public Part mitredAtRidge() {
        return once(new Trait.MitredAtRidge(), "mitredAtRidge");
    }

    /** It is longer by the other part's thickness at both ends. */
    public Part coversEndsOf(Part other) {
        return once(new Trait.CoversEndsOf(other.name), "coversEndsOf");
    }

    /** It laps an opening by so much all round. */
    public Part laps(OpeningOf opening, String by) {
        return laps(opening, SketchRun.length(by));
    }

    /** It laps an opening by so much all round. */
    public Part laps(OpeningOf opening, Length by) {
        return once(new Trait.Laps(opening, by), "laps");
    }

    /** It fits the rabbet round an opening. */
    public Part fits(OpeningOf opening) {
        return once(new Trait.FitsOpening(opening), "fits");
    }

    /** It fits a frame of boards, clear so wide and so high, rabbeted all round once the frame is together. */
    public Part fitsFrame(Length clearWide, Length clearHigh, Trait.Wide rabbetWide, Trait.Deep rabbetDeep) {
        return once(new Trait.FitsRabbet(clearWide, clearHigh, rabbetWide.length(), rabbetDeep.length()), "fitsFrame");
    }

    /** How much warmer than on the day of cutting it gets: {@code "60 F"}. */
    public Part warmer(String change) {
        return once(new Trait.Warmer(TemperatureChange.parse(change)), "warmer");
    }

    /** How much colder than on the day of cutting it gets. */
    public Part colder(String change) {
        return once(new Trait.Colder(TemperatureChange.parse(change)), "colder");
    }

    /** It stays damp for long, and swells. */
    public Part inDamp() {
        return once(new Trait.InDamp(), "inDamp");
    }

    /** The list's size is not to be trusted: measure on the piece. */
    public Part takenFromTheWork(String words) {
        return once(new Trait.TakenFromTheWork(words), "takenFromTheWork");
    }

    /** Its grain runs towards this side and the one opposite. */
    public Part grainTowards(Side side) {
        return once(new Trait.GrainTowards(side), "grainTowards");
    }

    /** A roof's sloping edge. */
    public EdgeOf rake() {
        return new EdgeOf(name, EdgeOf.Edge.RAKE);
    }

    /** A roof's lower edge. */
    public EdgeOf eave() {
        return new EdgeOf(name, EdgeOf.Edge.EAVE);
    }

    /** A roof's upper edge. */
    public EdgeOf ridge() {
        return new EdgeOf(name, EdgeOf.Edge.RIDGE);
    }

    /** The angle between a roof and its twin; known when planned. */
    public Asked ridgeAngle() {
        return new Asked(name, Asked.Question.RIDGE_ANGLE);
    }

    /** The number to set on a mitre saw's scale, which reads from square; known when planned. */
    public Asked mitreScale() {
        return new Asked(name, Asked.Question.MITRE_SCALE);
    }

    /** How many are cut; known when planned. */
    public Asked count() {
        return new Asked(name, Asked.Question.COUNT);
    }

    /** How long it is cut along its grain; known when planned. */
    public Asked cutLength() {
        return new Asked(name, Asked.Question.LENGTH);
    }

    /** How wide it is cut across its grain; known when planned. */
    public Asked cutWidth() {
        return new Asked(name, Asked.Question.WIDTH);
    }
}
