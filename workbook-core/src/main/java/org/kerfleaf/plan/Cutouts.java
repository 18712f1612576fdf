package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Shape;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Trait;

/** Finds where a part's holes and openings are in its face; what no distance fixes is in the middle. */
final class Cutouts {
    private final Part part;
    private final Standing standing;
    private final Length across;
    private final Length up;
    private final MeasureStyle style;

    Cutouts(Part part, Standing standing, Length across, Length up, MeasureStyle style) {
        this.part = part;
        this.standing = standing;
        this.across = across;
        this.up = up;
        this.style = style;
    }

    List<Cutout> all() {
        List<Cutout> cutouts = new ArrayList<>();
        for (Trait trait : part.said()) {
            if (trait instanceof Trait.OpeningIn opening) {
                cutouts.add(place(opening.name(), true, opening.shape()));
            } else if (trait instanceof Trait.HoleIn hole) {
                cutouts.add(place(hole.name(), false, hole.shape()));
            }
        }
        return cutouts;
    }

    private Cutout place(String name, boolean opening, Shape shape) {
        boolean frame = shape.kind() == Shape.Kind.FRAME;
        Length wide = frame ? across.minus(shape.wide(), shape.wide()) : shape.wide();
        Length high = frame ? up.minus(shape.high(), shape.high()) : shape.high();
        Length from = near(shape, lowSide(), highSide(), across, wide);
        Length above = near(
                shape,
                standing == Standing.LIES ? Side.FRONT : Side.BOTTOM,
                standing == Standing.LIES ? Side.BACK : Side.TOP,
                up,
                high);
        boolean within = wide.isPositive()
                && high.isPositive()
                && !from.isNegative()
                && !above.isNegative()
                && !from.plus(wide).isLongerThan(across)
                && !above.plus(high).isLongerThan(up);
        if (!within) {
            throw new Unplannable(
                    part.origin(),
                    "“%s” of “%s” is %s by %s and does not lie within its %s by %s. Smaller, or placed elsewhere, would do."
                            .formatted(
                                    name, part.name(), wide.in(style), high.in(style), across.in(style), up.in(style)));
        }
        return new Cutout(name, opening, from, above, wide, high, shape.radius());
    }

    private Side lowSide() {
        return standing == Standing.FACES_SIDE ? Side.FRONT : Side.LEFT;
    }

    private Side highSide() {
        return standing == Standing.FACES_SIDE ? Side.BACK : Side.RIGHT;
    }

    /** The near side of a shape: distances go to the centre of a round hole, and to the near side of a rectangle. */
    private static Length near(Shape shape, Side low, Side high, Length whole, Length extent) {
        Length back = shape.kind() == Shape.Kind.ROUND ? extent.half() : Length.ZERO;
        Optional<Length> fromLow = said(shape, low);
        if (fromLow.isPresent()) {
            return fromLow.get().minus(back);
        }
        Length room = whole.minus(extent);
        return said(shape, high).map(d -> room.minus(d).plus(back)).orElseGet(room::half);
    }

    private static Optional<Length> said(Shape shape, Side side) {
        return shape.from().stream()
                .filter(f -> f.edge() == side)
                .map(Shape.From::distance)
                .findFirst();
    }
}
