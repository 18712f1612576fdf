package org.kerfleaf.export.planform;

import org.kerfleaf.plan.Paintwork;

/** What is painted face by face, by when, and what stays bare for glue. */
final class PaintSection {
    private PaintSection() {}

    static void write(Paintwork work, Member form) {
        form.list("faces", work.faces(), PaintSection::face)
                .list("order", work.order(), PaintSection::order)
                .list("bare", work.bare(), PaintSection::bare);
    }

    private static void face(Member form, Paintwork.CoatedFace face) {
        form.words("part", face.part())
                .words("face", face.face())
                .number("step", face.step())
                .number("pieces", face.pieces())
                .figure("area", face.area(), Member::squareMillimetres)
                .number("coats", face.coats())
                .texts("with", face.with());
    }

    private static void order(Member form, Paintwork.PaintBy by) {
        form.words("part", by.part())
                .words("face", by.face())
                .number("closedIn", by.closedIn())
                .words("by", by.by());
        form.node()
                .set(
                        "painted",
                        by.painted().isPresent() ? Member.count(by.painted().getAsInt()) : null);
        form.isTrue("inTime", by.inTime());
    }

    private static void bare(Member form, Paintwork.Bare bare) {
        form.words("part", bare.part())
                .words("face", bare.face())
                .number("painted", bare.painted())
                .number("glued", bare.glued())
                .texts("to", bare.to());
        form.node().set("area", Member.squareMillimetres(bare.area()));
        form.length("across", bare.across());
        form.isTrue("masked", bare.masked().orElse(false));
    }
}
