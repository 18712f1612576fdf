package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;

/** The build as it is placed, whole, taken apart or step by step, always from the same viewpoint. */
public final class Pictures {
    private Pictures() {}

    /** All of it, without letters, long parts interrupted; empty if nothing is placed. */
    public static Optional<BuildPicture> whole(Plan plan, double width, double height) {
        List<Shown> shown =
                plan.placed().stream().map(p -> shown(p, "", Shown.State.PLAIN)).toList();
        return shown.isEmpty()
                ? Optional.empty()
                : Optional.of(BuildPicture.filling(Scene.interrupted(shown), View.DIMETRIC, width, height));
    }

    /** What a step adds, with its letters, to what is there, and the heads of what it drives; empty if it does neither. */
    public static Optional<BuildPicture> step(Plan plan, int step, double width, double height) {
        List<Shown> shown = new ArrayList<>();
        plan.there(step).forEach(p -> shown.add(shown(p, "", Shown.State.EARLIER)));
        plan.added(step).forEach(p -> shown.add(shown(p, p.letter(), Shown.State.NEW)));
        List<DrivenFastener> driven = plan.fastened(step).stream()
                .flatMap(contact -> contact.driven().stream())
                .toList();
        boolean nothing = shown.isEmpty() || plan.added(step).isEmpty() && driven.isEmpty();
        return nothing ? Optional.empty() : Optional.of(BuildPicture.of(shown, driven, View.DIMETRIC, width, height));
    }

    /** How what a step lifts is lifted; empty if it lifts nothing, or nobody knows what that weighs. */
    public static Optional<Drawing> lift(Plan plan, int step, double width, double height) {
        return plan.loads().lifted().stream()
                .filter(lifted -> lifted.step() == step)
                .filter(LiftDrawing::canBeDrawn)
                .findFirst()
                .map(lifted -> new LiftDrawing(plan, lifted, width, height));
    }

    static Shown shown(PlacedPart part, String letter, Shown.State state) {
        return new Shown(part.solid(), letter, state, part.seeThrough(), Optional.empty());
    }
}
