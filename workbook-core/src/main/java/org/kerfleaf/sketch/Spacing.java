package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/** How far apart fasteners stand at most. @group joints */
public record Spacing(Length atMost) {
    /** Nearer than this nothing that is driven finds wood of its own: about two shanks of a small screw. */
    private static final Length LEAST = Length.ofMillimetres(6L);

    /** @throws SketchException if it is less than 6 mm, about 1/4 in */
    public Spacing {
        if (atMost.isShorterThan(LEAST)) {
            throw new SketchException(
                    "Every %s is nearer than fasteners can stand. 1/4 in (6 mm) or more would be right; 5 in (125 mm) is usual."
                            .formatted(atMost));
        }
    }
}
