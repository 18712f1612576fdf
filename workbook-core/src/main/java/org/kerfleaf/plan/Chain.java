package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Touching;

/**
 * The pieces of one build that touch one after the other in one direction: their sizes must add up to the whole (geometry).
 *
 * @param build which of the builds, from 0, as in {@link PlacedPart}
 * @param first the part the build begins with, for people to tell builds apart
 * @param axis the direction
 * @param links the pieces from the left, the front or the bottom on; a roof's link is what it adds to the height
 * @param overall from end to end; left to right and front to back without what lies on a slope
 * @param held the maker's sizes that are the whole, a clear space between two links, or one link
 */
public record Chain(int build, String first, Axis axis, List<Link> links, Length overall, List<Held> held) {
    public Chain {
        links = List.copyOf(links);
        held = List.copyOf(held);
    }

    /** One piece of the chain and its extent in the chain's direction. */
    public record Link(String part, String letter, Length size) {}

    /**
     * A size of the maker's that this chain keeps.
     *
     * @param label of the size
     * @param span which span of the chain is as long: {@code outside}, {@code between Side and Side}, {@code Floor}
     */
    public record Held(String label, Length value, String span) {}

    /** All links, end to end. */
    public Length sum() {
        return links.stream().map(Link::size).reduce(Length.ZERO, Length::plus);
    }

    /** What the links lack to the whole. */
    public Length lacks() {
        return overall.minus(sum());
    }

    /** Whether the links make up the whole, within what counts as touching. */
    public boolean closes() {
        return sum().isWithin(overall, Touching.TOLERANCE);
    }

    /** {@code Side 23/32 + Floor 22 + Side 23/32}, without the unit. */
    public String linksIn(MeasureStyle style) {
        return links.stream()
                .map(link -> link.part() + " " + link.size().read(style).text())
                .collect(Collectors.joining(" + "));
    }

    /** What the links lack to the whole, to 1/64 in or 0.5 mm; empty if it closes. */
    public Optional<String> lacksIn(MeasureStyle style) {
        return closes() ? Optional.empty() : Optional.of(Clashes.distance(lacks(), style));
    }

    /** {@code Side 23/32 + Floor 22 + Side 23/32 = 23 7/16 in outside}; what it lacks is said behind. */
    public String words(MeasureStyle style) {
        String all = overall.in(style) + " outside";
        Optional<String> lacking = lacksIn(style);
        if (lacking.isPresent()) {
            return "%s = %s, not %s: short by %s".formatted(linksIn(style), sum().in(style), all, lacking.get());
        }
        return links.size() == 1 ? links.get(0).part() + " " + all : linksIn(style) + " = " + all;
    }

    /** {@code Width inside 22 in}; empty if no size of the maker's is held. */
    public String heldIn(MeasureStyle style) {
        return held.stream()
                .map(size -> size.label() + " " + size.value().in(style))
                .collect(Collectors.joining(", "));
    }
}
