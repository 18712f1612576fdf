package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.saw.Routing;
import org.kerfleaf.saw.SawCut;
import org.kerfleaf.saw.SawKind;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Router;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;

/** What the router cuts: rabbets and grooves of parts, and the rabbet of a frame once it is together. */
final class RouterCuts {
    private static final String INSIDE =
            "Inside an opening the router goes round clockwise, seen from above: against the turn of the cutter.";
    private static final String OUTSIDE =
            "Round an outer edge the router goes anticlockwise, seen from above: against the turn of the cutter.";
    private static final String ALONG =
            "Against a straightedge, with the straightedge on the left of the way you push: then the cutter pulls towards it.";

    private final Sketch sketch;
    private final List<PlannedPart> parts;
    private final Sizing sizing;
    private final Optional<Length> cutter;
    private final Length bite;

    RouterCuts(Sketch sketch, List<PlannedPart> parts, Sizing sizing, MeasureStyle style) {
        this.sketch = sketch;
        this.parts = parts;
        this.sizing = sizing;
        Optional<Router> router = sketch.all(Router.class).stream().findFirst();
        this.cutter = router.flatMap(Router::cutter);
        this.bite = router.flatMap(Router::bite)
                .orElse(style.unit() == LengthUnit.INCHES ? Length.ofSixtyFourths(8) : Length.ofMillimetres(3));
    }

    List<SawCut> of(PlannedPart part, SizedPart own) {
        List<SawCut> cuts = new ArrayList<>();
        Length thickness = part.thickness().value();
        for (Trait.RabbetIn rabbet : own.said().traits(Trait.RabbetIn.class)) {
            Optional<Length> corner = own.cutout(rabbet.opening()).map(Cutout::radius);
            Routing routing = new Routing(rabbet.deep(), rabbet.wide(), thickness, bite);
            String words = "rabbet round “%s”, %s face"
                    .formatted(rabbet.opening(), rabbet.face().words());
            cuts.add(rabbet(part.letter(), words, routing, corner, INSIDE));
        }
        for (Trait.RabbetAlong rabbet : own.said().traits(Trait.RabbetAlong.class)) {
            Routing routing = new Routing(rabbet.deep(), rabbet.wide(), thickness, bite);
            String words = "rabbet at %s, %s face"
                    .formatted(rabbet.edge().words(), rabbet.face().words());
            cuts.add(rabbet(part.letter(), words, routing, Optional.empty(), OUTSIDE));
        }
        for (Trait.GrooveIn groove : own.said().traits(Trait.GrooveIn.class)) {
            Routing routing = new Routing(groove.deep(), groove.wide(), thickness, bite);
            String words = "groove “%s”, %s face"
                    .formatted(groove.name(), groove.face().words());
            cuts.add(cut(part.letter(), words, thickness, routing.groove(), ALONG));
        }
        frame(own).ifPresent(cuts::add);
        return cuts;
    }

    /** The rabbet a pane lies in, of a frame of boards that is rabbeted once it is together. */
    private Optional<SawCut> frame(SizedPart pane) {
        Optional<Trait.FitsRabbet> rabbet = pane.said().trait(Trait.FitsRabbet.class);
        Optional<PlannedPart> board = sketch.all(Glazing.class).stream()
                .filter(glazing -> glazing.pane().equals(pane.said().name()))
                .flatMap(glazing -> glazing.into().stream())
                .flatMap(into -> sketch.placing(into).stream())
                .map(Placing::part)
                .flatMap(name -> parts.stream().filter(p -> p.name().equals(name)))
                .findFirst();
        if (rabbet.isEmpty() || board.isEmpty()) {
            return Optional.empty();
        }
        Routing routing = new Routing(
                rabbet.get().rabbetDeep(),
                rabbet.get().rabbetWide(),
                board.get().thickness().value(),
                bite);
        return Optional.of(rabbet(
                board.get().letter(),
                "rabbet of the frame, once it is together",
                routing,
                Optional.of(Length.ZERO),
                INSIDE));
    }

    private SawCut rabbet(String letter, String words, Routing routing, Optional<Length> corner, String way) {
        List<Reading> set = routing.rabbet(cutter, corner);
        String lacking = routing.lacking(cutter);
        return cut(letter, words, routing.thickness(), set, lacking.isEmpty() ? way : way + " " + lacking);
    }

    private static SawCut cut(String letter, String words, Length thickness, List<Reading> set, String notes) {
        return SawCut.of(letter, SawKind.ROUTER, words, thickness, Edges.SQUARE)
                .with(set)
                .noting(notes);
    }
}
