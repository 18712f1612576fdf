package org.kerfleaf.export.drawing;

import java.util.Optional;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/**
 * A placed piece in a drawing.
 *
 * @param letter of its part; empty for a piece nobody points at
 * @param seeThrough glass and the like: drawn as an outline, and hides nothing
 * @param pulled how far it is drawn away from its place, in millimetres of the build
 */
public record Shown(PlacedSolid solid, String letter, State state, boolean seeThrough, Optional<Vector> pulled) {
    /** What a piece is to the picture it stands in. */
    public enum State {
        /** Was there before this step: white, thin lines. */
        EARLIER,
        /** One among equals. */
        PLAIN,
        /** Comes with this step: tinted, heavy lines. */
        NEW
    }

    /** Where it belongs, in a picture in which all pieces are equal. */
    public static Shown plain(PlacedSolid solid, String letter) {
        return new Shown(solid, letter, State.PLAIN, false, Optional.empty());
    }

    /** Where it belongs, in a picture of a step. */
    public static Shown of(PlacedSolid solid, String letter, State state) {
        return new Shown(solid, letter, state, false, Optional.empty());
    }

    /** The same piece as glass. */
    public Shown asGlass() {
        return new Shown(solid, letter, state, true, pulled);
    }

    /** The same piece drawn away from its place. */
    public Shown pulled(Vector by) {
        return new Shown(solid, letter, state, seeThrough, Optional.of(by));
    }

    /** Another solid shown the same way: a stub of it, or what a slice leaves. */
    Shown as(PlacedSolid other) {
        return new Shown(other, letter, state, seeThrough, pulled);
    }

    /** The solid where it is drawn. */
    PlacedSolid drawn() {
        return pulled.map(by -> solid.at(solid.pose().moved(by))).orElse(solid);
    }
}
