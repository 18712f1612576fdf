package org.kerfleaf.export.drawing;

import java.util.List;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;

/**
 * What is marked on one part, in its own (u, v): looking at its INSIDE, u to the right, v up.
 *
 * @param title letter and name
 * @param guides lines to draw on it
 * @param pilots middles of pilot holes, in millimetres; w is not looked at
 * @param faceUp which face lies up, in words
 * @param hand which hand it is and what its twin is, in words; may be empty
 */
public record Marking(
        Solid solid, String title, List<GuideLine> guides, List<Vector> pilots, String faceUp, String hand) {
    public Marking {
        guides = List.copyOf(guides);
        pilots = List.copyOf(pilots);
    }
}
