package org.kerfleaf.export.planform;

import org.kerfleaf.plan.Buying;

/** The member about what to know in the shop, and how it all gets home. */
final class BuyingSection {
    private BuyingSection() {}

    static void write(Buying buying, Member form) {
        form.list(
                        "sheets",
                        buying.sheets(),
                        (sheet, of) -> sheet.words("stock", of.stock())
                                .figure("thinnest", of.thinnest(), Member::millimetres)
                                .figure("thickest", of.thickest(), Member::millimetres)
                                .figure("shortest", of.shortest(), Member::millimetres)
                                .figure("narrowest", of.narrowest(), Member::millimetres)
                                .figure("diagonals", of.diagonals(), Member::millimetres))
                .list(
                        "boards",
                        buying.boards(),
                        (yard, of) -> yard.words("stock", of.stock())
                                .length("length", of.length())
                                .number("count", of.count())
                                .figure("boardFeet", of.measure(), feet -> Member.decimal(feet.boardFeet())))
                .optional("home", buying.home(), BuyingSection::home)
                .list(
                        "instead",
                        buying.instead(),
                        (one, of) ->
                                one.words("size", of.label()).list("choices", of.choices(), BuyingSection::choice));
    }

    private static void choice(Member form, Buying.Choice choice) {
        form.words("stock", choice.stock())
                .isTrue("planned", choice.planned())
                .isTrue("fits", choice.fits())
                .words("fit", choice.fit())
                .number("bought", choice.bought())
                .money("price", choice.price())
                .money("all", choice.all())
                .words("sags", choice.sags())
                .figure("sag", choice.sag(), Member::millimetres)
                .figure("moves", choice.moves(), Member::millimetres)
                .figure("weight", choice.weight(), Member::grams);
    }

    private static void home(Member form, Buying.Home home) {
        form.words("vehicle", home.vehicle())
                .lengthOrNull("wide", home.wide())
                .lengthOrNull("long", home.longest())
                .list("loads", home.loads(), BuyingSection::load);
    }

    private static void load(Member form, Buying.Load load) {
        form.words("stock", load.stock())
                .words("kind", load.isSheet() ? "sheet" : "board")
                .numbers("which", load.which())
                .length("length", load.length())
                .lengthOrNull("width", load.width())
                .words("goes", load.way().words())
                .list(
                        "cuts",
                        load.cuts(),
                        (cut, of) -> cut.isTrue("across", of.across())
                                .figure("at", of.at(), Member::millimetres)
                                .words("cut", of.number().map(String::valueOf))
                                .words("between", of.between()))
                .list(
                        "pieces",
                        load.pieces(),
                        (piece, of) -> piece.length("length", of.length()).lengthOrNull("width", of.width()))
                .figure("weight", load.weight(), Member::grams)
                .words("words", load.words());
    }
}
