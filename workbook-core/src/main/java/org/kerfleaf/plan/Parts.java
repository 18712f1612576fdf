package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.stock.Density;

/** Counts the parts, gives them letters in the order in which the document uses them, and describes how each is cut. */
final class Parts {
    private final Sketch sketch;
    private final Sizing sizing;
    private final MeasureStyle style;
    private final Problems problems;

    Parts(Sketch sketch, Sizing sizing, MeasureStyle style, Problems problems) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.style = style;
        this.problems = problems;
    }

    List<PlannedPart> all() {
        List<SizedPart> sized = sketch.all(Part.class).stream()
                .sorted(Comparator.comparing(this::isUnused).thenComparing(this::firstUse))
                .flatMap(part -> sizing.of(part.name()).stream())
                .toList();
        List<String> letters = Letters.first(sized.size());
        List<PlannedPart> planned = new ArrayList<>();
        for (SizedPart part : sized) {
            planned.add(describe(letters.get(planned.size()), part));
        }
        return planned;
    }

    private boolean isUnused(Part part) {
        return use(part).isEmpty();
    }

    /** Where the document first does something with a part: places or glazes it, or else makes it. */
    private Origin firstUse(Part part) {
        return use(part).orElse(part.origin());
    }

    private Optional<Origin> use(Part part) {
        Optional<Origin> placed = sketch.all(Placing.class).stream()
                .filter(p -> p.part().equals(part.name()))
                .map(Placing::origin)
                .findFirst();
        Optional<Origin> glazed = sketch.all(Glazing.class).stream()
                .filter(g -> g.pane().equals(part.name()))
                .map(Glazing::origin)
                .findFirst();
        return placed.or(() -> glazed);
    }

    /** How many are cut: as often as it is placed or glazed; where it is neither, as often as was said. */
    int count(Part part) {
        int placed = sketch.all(Placing.class).stream()
                .filter(p -> p.part().equals(part.name()))
                .mapToInt(Placing::count)
                .sum();
        int glazed = (int) sketch.all(Glazing.class).stream()
                .filter(g -> g.pane().equals(part.name()))
                .count();
        Optional<Integer> said = part.trait(Trait.Times.class).map(Trait.Times::count);
        int used = placed + glazed;
        if (used > 0 && said.isPresent() && said.get() != used) {
            problems.add(
                    part.origin(),
                    "“%s” is said %d times but used %d times. What is placed is counted; leave .times(%d) away."
                            .formatted(part.name(), said.get(), used, said.get()));
        }
        if (used > 0) {
            return used;
        }
        return said.orElse(part.trait(Trait.Pair.class).isPresent() ? 2 : 1);
    }

    private PlannedPart describe(String letter, SizedPart part) {
        boolean upAlong = grainRunsUp(part);
        Figure<Length> length = upAlong ? part.up() : part.across();
        Figure<Length> width = upAlong ? part.across() : part.up();
        Area face = part.largerFace();
        Figure<Area> area = Figure.of(
                face,
                "outline less openings and holes, on the larger face",
                Reason.GEOMETRY,
                given("across", part.across().value()),
                given("up", part.up().value()));
        return new PlannedPart(
                letter,
                part.said().name(),
                part.said().kind(),
                count(part.said()),
                part.said().trait(Trait.Pair.class).isPresent(),
                part.said().stock(),
                material(part.said()),
                length,
                width,
                part.thickness(),
                part.said().kind() != PartKind.PANE,
                area,
                part.edges(),
                then(part),
                part.said().trait(Trait.TakenFromTheWork.class).map(Trait.TakenFromTheWork::words),
                weight(part));
    }

    /** Grain runs upright, or along the longer way where nothing is upright, unless it was said. */
    private static boolean grainRunsUp(SizedPart part) {
        boolean longerUp = part.up().value().isLongerThan(part.across().value());
        if (part.said().kind() == PartKind.BOARD) {
            return !part.isTurnedWhenPlaced();
        }
        Optional<Side> said = part.said().trait(Trait.GrainTowards.class).map(Trait.GrainTowards::side);
        if (said.isPresent()) {
            boolean vertical = said.get() == Side.TOP || said.get() == Side.BOTTOM;
            boolean depth = said.get() == Side.FRONT || said.get() == Side.BACK;
            return vertical || part.standing() == Standing.LIES && depth;
        }
        boolean upright = part.standing() == Standing.FACES_FRONT || part.standing() == Standing.FACES_SIDE;
        return part.said().kind() == PartKind.PANE || !upright ? longerUp : true;
    }

    private String material(Part part) {
        Optional<String> soldAs =
                sketch.sheet(part.stock()).flatMap(Sheet::soldAs).map(label -> ", sold as " + label.in(style));
        boolean treated = sketch.lumber(part.stock()).map(l -> l.preserved()).orElse(false);
        Optional<String> species =
                sketch.lumber(part.stock()).flatMap(Lumber::species).map(wood -> ", " + wood);
        return part.stock() + soldAs.orElse("") + species.orElse("") + (treated ? ", treated" : "");
    }

    private Optional<Figure<Mass>> weight(SizedPart part) {
        if (part.thickness().value().isZero()) {
            return Optional.empty();
        }
        String wood = sketch.lumber(part.said().stock())
                .flatMap(Lumber::species)
                .orElse(part.said().stock());
        return Density.named(wood)
                .map(density -> Figure.of(
                        density.value().of(part.solid().volume()),
                        "volume · density",
                        density.reason().source(),
                        given("volume", part.solid().volume()),
                        given("density", density.value())));
    }

    /** What is left at its sides where that is not the same, so that nobody marks it out from the middle. */
    private String rails(SizedPart part, Cutout cutout) {
        Length left = cutout.from();
        Length right = part.across().value().minus(left).minus(cutout.wide());
        if (left.equals(right)) {
            return "";
        }
        boolean side = part.standing() == Standing.FACES_SIDE;
        boolean low = left.isShorterThan(right);
        return ", %s off the middle, to the %s: %s left there, %s at the other side"
                .formatted(
                        left.minus(right).absolute().half().in(style),
                        side ? (low ? "front" : "back") : low ? "left" : "right",
                        left.min(right).in(style),
                        left.max(right).in(style));
    }

    // ---- what is done after cutting to size --------------------------------------------------------------------

    private List<String> then(SizedPart part) {
        List<String> then = new ArrayList<>();
        part.said()
                .trait(Trait.Gable.class)
                .ifPresent(gable -> then.add("gable from %s at the eaves, %s slope"
                        .formatted(gable.eaves().in(style), gable.slope().in(style))));
        part.said()
                .trait(Trait.SlopingTop.class)
                .ifPresent(top -> then.add("top slopes from %s in front to %s at the back%s"
                        .formatted(
                                top.front().in(style),
                                top.back().in(style),
                                part.said().trait(Trait.OneBlank.class).isPresent() ? ", both from one blank" : "")));
        for (Cutout cutout : part.cutouts()) {
            String size = cutout.opening()
                    ? cutout.wide().read(style).text() + " × " + cutout.high().in(style)
                    : cutout.wide().in(style);
            String words = "%s “%s” %s".formatted(cutout.opening() ? "opening" : "hole", cutout.name(), size);
            then.add(cutout.opening() ? words + rails(part, cutout) : words);
        }
        for (Trait.RabbetIn rabbet : part.said().traits(Trait.RabbetIn.class)) {
            then.add("rabbet round “%s”, %s face, %s wide, %s deep"
                    .formatted(
                            rabbet.opening(),
                            rabbet.face().words(),
                            rabbet.wide().in(style),
                            rabbet.deep().in(style)));
        }
        for (Trait.RabbetAlong rabbet : part.said().traits(Trait.RabbetAlong.class)) {
            then.add("rabbet at %s, %s face, %s wide, %s deep"
                    .formatted(
                            rabbet.edge().words(),
                            rabbet.face().words(),
                            rabbet.wide().in(style),
                            rabbet.deep().in(style)));
        }
        for (Trait.GrooveIn groove : part.said().traits(Trait.GrooveIn.class)) {
            then.add("groove “%s”, %s face, %s from %s, %s wide, %s deep"
                    .formatted(
                            groove.name(),
                            groove.face().words(),
                            groove.from().in(style),
                            groove.along().words(),
                            groove.wide().in(style),
                            groove.deep().in(style)));
        }
        part.said()
                .trait(Trait.RoundedCorners.class)
                .ifPresent(rounded ->
                        then.add("corners rounded, radius " + rounded.radius().in(style)));
        part.said()
                .trait(Trait.WideAtTop.class)
                .ifPresent(top -> then.add(
                        "tapers to %s at its top".formatted(top.length().in(style))));
        part.said()
                .trait(Trait.Corners.class)
                .ifPresent(said -> then.add("corners at "
                        + said.corners().stream()
                                .map(at -> at.along().read(style).text()
                                        + " across, "
                                        + at.up().in(style) + " up")
                                .collect(Collectors.joining("; "))));
        part.said()
                .trait(Trait.RoundDisc.class)
                .ifPresent(disc -> then.add("a disc " + disc.across().in(style) + " across"));
        if (part.said().trait(Trait.Pair.class).isPresent()) {
            then.add(
                    switch (part.solid().hands()) {
                        case EQUAL -> "two equal pieces";
                        case TURNED_OVER -> "two equal pieces, one of them turned over";
                        case LEFT_AND_RIGHT -> "one left, one right";
                    });
        }
        return then;
    }
}
