package org.kerfleaf.shape;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.kerfleaf.measure.Length;

/**
 * The inside corners between boxes that touch: where a bead of caulk can go.
 *
 * <p>Each edge of a contact is cut where a face of another box crosses it. A piece of it is a seam if just beyond the
 * edge, on one side of the shared plane, there is air. The seam is inside if from that air something stands to the left, to
 * the right, in front and behind: walled in on all four sides. (Openings do not count as open, a lid or floor is not asked for.)
 */
public final class Seams {
    /** Just beyond an edge: far enough to leave the wood, nearer than any part is thick. */
    private static final Length BEYOND = new Length(200_000);

    private final List<Box> boxes;

    public Seams(List<Box> boxes) {
        this.boxes = List.copyOf(boxes);
    }

    /** The length of all inside seams. */
    public Length inside() {
        Length sum = Length.ZERO;
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                sum = sum.plus(
                        boxes.get(i).contact(boxes.get(j)).map(this::inside).orElse(Length.ZERO));
            }
        }
        return sum;
    }

    private Length inside(Contact contact) {
        Length sum = Length.ZERO;
        for (Axis run : contact.plane()) {
            Axis off =
                    contact.plane().stream().filter(a -> a != run).findFirst().orElseThrow();
            Length from = contact.first().low(run).max(contact.second().low(run));
            Length to = contact.first().high(run).min(contact.second().high(run));
            Length lower = contact.first().low(off).max(contact.second().low(off));
            Length upper = contact.first().high(off).min(contact.second().high(off));
            sum = sum.plus(edge(contact, run, from, to, off, lower.minus(BEYOND)));
            sum = sum.plus(edge(contact, run, from, to, off, upper.plus(BEYOND)));
        }
        return sum;
    }

    /** The inside seam along one edge of a contact, probed at {@code beyond} on the axis that leaves the contact. */
    private Length edge(Contact contact, Axis run, Length from, Length to, Axis off, Length beyond) {
        TreeSet<Length> stops = new TreeSet<>(List.of(from, to));
        for (Box box : boxes) {
            for (Length face : List.of(box.low(run), box.high(run))) {
                if (face.isLongerThan(from) && face.isShorterThan(to)) {
                    stops.add(face);
                }
            }
        }
        Length sum = Length.ZERO;
        Length start = from;
        for (Length stop : stops.tailSet(from, false)) {
            Map<Axis, Length> point = new EnumMap<>(Axis.class);
            point.put(run, start.plus(stop).half());
            point.put(off, beyond);
            boolean seam = false;
            for (Length side : List.of(BEYOND.half(), BEYOND.half().negated())) {
                point.put(contact.axis(), contact.at().plus(side));
                seam |= isAir(point) && isWalledIn(point);
            }
            sum = seam ? sum.plus(stop.minus(start)) : sum;
            start = stop;
        }
        return sum;
    }

    private boolean isAir(Map<Axis, Length> point) {
        return boxes.stream().noneMatch(box -> box.holds(point));
    }

    private boolean isWalledIn(Map<Axis, Length> point) {
        return sees(point, Axis.X, true)
                && sees(point, Axis.X, false)
                && sees(point, Axis.Y, true)
                && sees(point, Axis.Y, false);
    }

    /** Whether a straight look along an axis, up it or down it, meets a box. */
    private boolean sees(Map<Axis, Length> point, Axis along, boolean up) {
        return boxes.stream().anyMatch(box -> {
            boolean ahead = up
                    ? box.high(along).isLongerThan(point.get(along))
                    : box.low(along).isShorterThan(point.get(along));
            for (Axis axis : Axis.values()) {
                Length at = point.get(axis);
                ahead &= axis == along || at.isLongerThan(box.low(axis)) && at.isShorterThan(box.high(axis));
            }
            return ahead;
        });
    }
}
