package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.export.drawing.BuildPicture;
import org.kerfleaf.export.drawing.Shown;
import org.kerfleaf.export.drawing.View;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;

/** The build as it is placed, whole or step by step, always from the same viewpoint. */
final class Pictures {
    private Pictures() {}

    /** All of it, without letters; empty if nothing is placed. */
    static Optional<BuildPicture> whole(Plan plan, double width, double height) {
        List<Shown> shown =
                plan.placed().stream().map(p -> shown(p, "", Shown.State.PLAIN)).toList();
        return picture(shown, List.of(), width, height);
    }

    /** What a step adds, with its letters, to what is there, and the heads of what it drives; empty if it does neither. */
    static Optional<BuildPicture> step(Plan plan, int step, double width, double height) {
        List<Shown> shown = new ArrayList<>();
        plan.there(step).forEach(p -> shown.add(shown(p, "", Shown.State.EARLIER)));
        plan.added(step).forEach(p -> shown.add(shown(p, p.letter(), Shown.State.NEW)));
        List<DrivenFastener> driven = plan.fastened(step).stream()
                .flatMap(contact -> contact.driven().stream())
                .toList();
        return plan.added(step).isEmpty() && driven.isEmpty()
                ? Optional.empty()
                : picture(shown, driven, width, height);
    }

    private static Shown shown(PlacedPart part, String letter, Shown.State state) {
        return new Shown(part.solid(), letter, state, part.seeThrough(), Optional.empty());
    }

    private static Optional<BuildPicture> picture(
            List<Shown> shown, List<DrivenFastener> driven, double width, double height) {
        return shown.isEmpty()
                ? Optional.empty()
                : Optional.of(BuildPicture.of(shown, driven, View.DIMETRIC, width, height));
    }
}
