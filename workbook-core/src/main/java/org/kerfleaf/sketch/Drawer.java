package org.kerfleaf.sketch;

import java.util.List;

/**
 * The screws a maker has; a joint that is screwed from it gets the one that suits it.
 *
 * @group what we buy
 */
public record Drawer(List<Screw> screws) {
    public Drawer {
        screws = List.copyOf(screws);
        if (screws.isEmpty()) {
            throw new SketchException(
                    "The drawer is empty. Say what lies in it: drawer(woodScrew(6, \"1 1/4 in\"), woodScrew(8, \"2 in\")).");
        }
    }
}
