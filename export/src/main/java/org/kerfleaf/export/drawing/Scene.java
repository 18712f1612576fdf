package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/**
 * Pieces as a drawing shows them: shortened where long parts are interrupted, sliced, joined to their places by chain lines.
 *
 * @param shown where they are drawn
 * @param broken where they are interrupted
 * @param cut the faces in the plane of a slice
 * @param chains from a piece's place to where it is drawn
 * @param driven fasteners whose heads are shown
 */
record Scene(List<Shown> shown, Broken broken, CutFaces cut, List<Chain> chains, List<DrivenFastener> driven) {
    /** A straight way in the build, in millimetres. */
    record Chain(Vector from, Vector to) {}

    /** @throws IllegalArgumentException if there are no pieces */
    Scene {
        if (shown.isEmpty()) {
            throw new IllegalArgumentException("A drawing of no pieces: there should be one at least.");
        }
        shown = List.copyOf(shown);
        chains = List.copyOf(chains);
        driven = List.copyOf(driven);
    }

    /** The pieces whole and in their places. */
    static Scene of(List<Shown> shown) {
        return new Scene(shown, Broken.NOWHERE, CutFaces.NONE, List.of(), List.of());
    }

    /** The pieces in their places, interrupted where only long thin parts go on. */
    static Scene interrupted(List<Shown> shown) {
        Broken broken = Broken.of(solids(shown));
        return new Scene(broken.shortened(shown), broken, CutFaces.NONE, List.of(), List.of());
    }

    /** What is left behind a plane square to the line of sight, interrupted like the whole. @param level of the plane, toward the eye */
    static Scene sliced(List<Shown> shown, View view, double level) {
        Broken broken = Broken.of(solids(shown));
        List<Shown> behind = new ArrayList<>();
        for (Shown one : shown) {
            one.solid().behind(view.toEye(), level).ifPresent(rest -> behind.add(one.as(rest)));
        }
        List<Shown> drawn = broken.shortened(behind);
        return new Scene(drawn, broken, CutFaces.of(drawn, view, level), List.of(), List.of());
    }

    /** The same with the heads of fasteners that are driven into the pieces where they are. */
    Scene driving(List<DrivenFastener> fasteners) {
        List<DrivenFastener> moved = fasteners.stream().map(broken::moved).toList();
        return new Scene(shown, broken, cut, chains, moved);
    }

    private static List<PlacedSolid> solids(List<Shown> shown) {
        return shown.stream().map(Shown::drawn).toList();
    }

    List<Body> bodies() {
        return shown.stream().map(Body::of).toList();
    }
}
