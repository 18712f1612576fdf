package org.kerfleaf.sketch;

import java.util.List;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.TemperatureChange;

/** One thing said of a part. */
public sealed interface Trait {
    /** Its extent left to right. @group shapes */
    record Wide(Length length) implements Trait {}

    /** Its extent front to back. @group shapes */
    record Deep(Length length) implements Trait {}

    /** Its extent upright; of a part with a sloping top, at the face or edge that {@link SizedOn} names. */
    record High(Length length) implements Trait {}

    /** The length a board is cut to. */
    record CutTo(Length length) implements Trait {}

    /** On which face its height was said; the other face follows from the bevel. */
    record SizedOn(Side face) implements Trait {}

    /** Its top edge is bevelled: it rises (or, if negative, falls) from the outside face to the inside face. */
    record TopBevel(Angle rises) implements Trait {}

    /** Its top is a gable: upright to the eaves at both ends, then sloping up to a ridge in the middle. */
    record Gable(Length eaves, Angle slope) implements Trait {}

    /** Its top slopes in its own plane from one height at the front (or left) to another at the back (or right). */
    record SlopingTop(Length front, Length back) implements Trait {}

    /** How wide its top is, where that is not as wide as its foot; both are centred. */
    record WideAtTop(Length length) implements Trait {}

    /** A disc of this diameter. */
    record RoundDisc(Length across) implements Trait {}

    /** The corners of its outline, one after the other counter-clockwise, seen as its sizes are said. */
    record Corners(List<Shape.At> corners) implements Trait {
        public Corners {
            corners = List.copyOf(corners);
        }
    }

    /** Its corners are rounded. */
    record RoundedCorners(Length radius) implements Trait {}

    /** One edge is sawn with the blade tilted; the face named keeps its size. */
    record Bevelled(Side edge, Angle tilt, Side longOn) implements Trait {}

    /** One end is sawn across to meet something; the long point stays at the edge named. */
    record Mitred(Side end, Meets meets, Side longAt) implements Trait {}

    /** It braces what stands so far out from a post, so far down it. */
    record Brace(Length out, Length down) implements Trait {}

    /** So far out. @group shapes */
    record Out(Length length) {}

    /** So far down. @group shapes */
    record Down(Length length) {}

    /** A round hole with a name. */
    record HoleIn(String name, Shape shape) implements Trait {}

    /** An opening with a name. */
    record OpeningIn(String name, Shape shape) implements Trait {}

    /** A rabbet round an opening. */
    record RabbetIn(Side face, String opening, Length wide, Length deep) implements Trait {}

    /** A rabbet along a whole edge. */
    record RabbetAlong(Side face, Side edge, Length wide, Length deep) implements Trait {}

    /** A groove or dado with a name, from edge to edge, side by side with the edge named. */
    record GrooveIn(String name, Side face, Side along, Length from, Length wide, Length deep) implements Trait {}

    /** It is one of a left and a right hand, mirrored. */
    record Pair() implements Trait {}

    /** Both of a pair come from one blank, parted by one sloping cut. */
    record OneBlank() implements Trait {}

    /** How many, where it is not placed. */
    record Times(int count) implements Trait {}

    /** It lies on the slopes of these gables; its length along the slope follows from them. */
    record OverGables(List<String> gables) implements Trait {}

    /** It goes past the eaves or the end of a slope (measured along the slope), or past the gables or sides. */
    record Past(Side edge, Length by) implements Trait {}

    /** It lies on one slope, on the sloping edges of these; its length along the slope follows from them. */
    record OverSlope(List<String> supports) implements Trait {
        public OverSlope {
            supports = List.copyOf(supports);
        }
    }

    /** Its end on that side is cut plumb, to meet what stands there. */
    record PlumbAt(Side side) implements Trait {}

    /** It is one of so many equal sides of a ring, each leaning out from upright, mitred to its neighbours. */
    record RingOf(int sides, Angle leansOut) implements Trait {}

    /** A floor that fits within a ring, its underside so far up from the ring's foot. */
    record FitsRing(String side, Length up) implements Trait {}

    /** It meets its twin at the ridge, plumb. */
    record MeetsTwin(Side edge) implements Trait {}

    /** It runs along an edge of another part; its length follows. */
    record Along(EdgeOf edge) implements Trait {}

    /** Its upper end is mitred to meet its neighbour at the ridge. */
    record MitredAtRidge() implements Trait {}

    /** It is longer at both ends by the other part's thickness, and covers that part's ends. */
    record CoversEndsOf(String part) implements Trait {}

    /** It laps an opening of another part by so much all round. */
    record Laps(OpeningOf opening, Length by) implements Trait {}

    /** It fits into the rabbet round an opening of another part. */
    record FitsOpening(OpeningOf opening) implements Trait {}

    /** It fits a frame of boards with this clear opening, rabbeted so wide and so deep all round once it is together. */
    record FitsRabbet(Length clearWide, Length clearHigh, Length rabbetWide, Length rabbetDeep) implements Trait {}

    /** How much warmer than on the day of cutting it gets. */
    record Warmer(TemperatureChange change) implements Trait {}

    /** How much colder than on the day of cutting it gets. */
    record Colder(TemperatureChange change) implements Trait {}

    /** It stays damp for long, and swells. */
    record InDamp() implements Trait {}

    /** What must be measured on the piece. */
    record TakenFromTheWork(String words) implements Trait {}

    /** Its grain runs this way: BOTTOM to TOP, LEFT to RIGHT or FRONT to BACK, named by either end. */
    record GrainTowards(Side side) implements Trait {}
}
