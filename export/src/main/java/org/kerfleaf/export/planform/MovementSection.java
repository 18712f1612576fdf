package org.kerfleaf.export.planform;

import org.kerfleaf.plan.Moving;

/** How boards move across their grain; moisture in percent of the dry wood's weight. */
final class MovementSection {
    private MovementSection() {}

    static void write(Member form, Moving moving) {
        form.words("part", moving.part())
                .words("wood", moving.wood().wood())
                .words("rings", moving.wood().rings().words())
                .figure("width", moving.wide(), Member::millimetres)
                .figure("now", moving.now(), of -> Member.decimal(of.number()))
                .figure("driest", moving.driest(), of -> Member.decimal(of.number()))
                .figure("dampest", moving.dampest(), of -> Member.decimal(of.number()))
                .figure("coefficient", moving.wood().coefficient(), of -> Member.decimal(of.value()))
                .figure("shrinkage", moving.wood().shrinkage(), of -> Member.decimal(of.number()))
                .figure("atDriest", moving.atDriest(), Member::millimetres)
                .figure("atDampest", moving.atDampest(), Member::millimetres)
                .optional(
                        "gap",
                        moving.gap(),
                        (gap, of) -> gap.figure("now", of.now(), Member::millimetres)
                                .figure("whenDriest", of.whenDriest(), Member::millimetres)
                                .figure("whenDampest", of.whenDampest(), Member::millimetres));
    }
}
