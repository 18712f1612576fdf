package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.saw.Openings;
import org.kerfleaf.saw.SawCut;
import org.kerfleaf.saw.SawKind;
import org.kerfleaf.sketch.Jigsaw;
import org.kerfleaf.sketch.Saw;
import org.kerfleaf.sketch.Sketch;

/** How openings are cut: with the jigsaw from a start hole, and their straight sides by plunge cuts if the blade is known. */
final class OpeningCuts {
    private final Optional<Length> jigsawBlade;
    private final boolean inches;

    OpeningCuts(Sketch sketch, MeasureStyle style) {
        this.jigsawBlade = sketch.all(Jigsaw.class).stream()
                .flatMap(jigsaw -> jigsaw.blade().stream())
                .findFirst();
        this.inches = style.unit() == LengthUnit.INCHES;
    }

    List<SawCut> of(String letter, Length thickness, SizedPart part, Optional<Saw> saw) {
        List<SawCut> cuts = new ArrayList<>();
        for (Cutout cutout : part.cutouts()) {
            if (cutout.opening()) {
                String words = "opening “" + cutout.name() + "”";
                cuts.add(jigsaw(letter, words, thickness, cutout));
                saw.filter(s -> !s.table())
                        .flatMap(Saw::blade)
                        .ifPresent(blade -> cuts.add(plunge(letter, words, thickness, blade)));
            }
        }
        return cuts;
    }

    private SawCut jigsaw(String letter, String words, Length thickness, Cutout cutout) {
        SawCut cut = SawCut.of(letter, SawKind.JIGSAW, words, thickness, Edges.SQUARE);
        return hole(cutout)
                .map(bit -> cut.with(Openings.marks(bit, letter)))
                .orElseGet(() -> cut.noting(
                        "The bit for the start hole is not known, since the jigsaw's blade was not said: it is"
                                + " %s wider than the blade.".formatted(inches ? "1/8 in" : "3 mm")));
    }

    /** How wide the jigsaw's blade is, if said. */
    Optional<Length> blade() {
        return jigsawBlade;
    }

    /** The bit for the start hole of an opening, if it is known. */
    Optional<Figure<Length>> hole(Cutout cutout) {
        return Openings.startHole(
                cutout.radius(),
                jigsawBlade,
                inches ? Length.ofSixtyFourths(8) : Length.ofMillimetres(3),
                inches ? Length.ofSixtyFourths(4) : Length.ofMillimetres(1));
    }

    private static SawCut plunge(String letter, String words, Length thickness, Length blade) {
        return SawCut.of(letter, SawKind.CIRCULAR_SAW, words + " by plunge cuts", thickness, Edges.SQUARE)
                .with(Openings.plunge(blade, thickness))
                .noting(
                        "A plunge cut stops where the face that is up is cut to the corner; finish the face below by hand saw.");
    }
}
