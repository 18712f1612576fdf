package org.kerfleaf.kernel.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.help.Completion.Kind;
import org.kerfleaf.kernel.help.Signature.Parameter;

/** What is offered at a place of a cell, and what is said of the word there. The place is marked with a bar. */
class CellHelpTest {
    private static final String STOCK = """
            measureIn(INCHES);
            Length width = size("Width", "22 in");
            Sheet ply = sheet("ply", "48 in", "96 in").soldAs("3/4 in");
            var floor = panel("Floor", ply).wide(width).deep("11 in");
            Length twice(Length one) { return one.plus(one); }
            """;

    private static CellHelp help;

    @BeforeAll
    static void open() {
        help = new CellHelp();
    }

    @AfterAll
    static void close() {
        help.close();
    }

    private static WorkbookSource book(String... cells) {
        List<CellSource> sources = new ArrayList<>();
        for (String text : cells) {
            sources.add(new CellSource(sources.size(), text, 1, 0));
        }
        return new WorkbookSource("A box", List.of(), sources, List.of());
    }

    /** What is offered at the bar in the last cell. */
    private static Completions at(String... cells) {
        String last = cells[cells.length - 1];
        int bar = last.indexOf('|');
        cells[cells.length - 1] = last.replace("|", "");
        return help.complete(book(cells), cells.length - 1, bar);
    }

    private static List<String> names(Completions completions) {
        return completions.all().stream().map(Completion::name).toList();
    }

    private static Completion one(Completions completions, String name) {
        return completions.all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " is not among " + names(completions)));
    }

    private static Optional<WordHelp> explained(String... cells) {
        String last = cells[cells.length - 1];
        int bar = last.indexOf('|');
        cells[cells.length - 1] = last.replace("|", "");
        return help.explain(book(cells), cells.length - 1, bar);
    }

    private static WorkbookSource prose(String expression) {
        WorkbookSource cells = book(STOCK, "Length below = width.half();");
        return new WorkbookSource(cells.title(), List.of(), cells.cells(), List.of(new ProseSource(0, expression, 9)));
    }

    @Test
    void completeLive_inProse_offersWhatAnyCellDeclaresAndNoKindOfThing() {
        assertThat(names(help.completeLive(prose("bel"), 0, 3))).containsExactly("below");
        assertThat(names(help.completeLive(prose("floor."), 0, 6))).contains("mitreScale", "times");
        assertThat(help.completeLive(prose(""), 0, 0).all())
                .extracting(Completion::kind)
                .contains(Kind.OWN, Kind.WORD)
                .doesNotContain(Kind.TYPE);
    }

    @Test
    void explainLive_inProse_saysWhatTheWordTakes() {
        WordHelp help =
                CellHelpTest.help.explainLive(prose("width.minus(below)"), 0, 8).orElseThrow();

        assertThat(help.signatures().get(0).word()).isEqualTo("minus");
    }

    @Test
    void complete_behindAPartsDot_offersItsWordsAndNothingOfJavas() {
        Completions offered = at(STOCK, "Part lid = panel(\"Lid\", ply).|");

        assertThat(names(offered))
                .contains("wide", "rabbet", "overGables", "times")
                .doesNotContain("wait", "notify", "notifyAll", "getClass", "hashCode", "equals", "toString");
        assertThat(one(offered, "wide"))
                .isEqualTo(new Completion("wide", "wide(", "a part", "Its size left to right.", Kind.WORD, true));
        assertThat(one(offered, "pair").insert()).isEqualTo("pair()");
        assertThat(offered.from()).isEqualTo(offered.to()).isEqualTo(29);
    }

    @Test
    void complete_wordsThatGiveWhatIsWanted_standFirst() {
        Completions offered = at(STOCK, "Part lid = panel(\"Lid\", ply).|");
        List<Completion> all = offered.all();
        int firstOther = (int) all.stream().takeWhile(Completion::fits).count();

        assertThat(all.subList(0, firstOther)).allMatch(one -> one.what().equals("a part"));
        assertThat(all.subList(firstOther, all.size())).noneMatch(Completion::fits);
        assertThat(one(offered, "mitreScale").fits()).isFalse();
    }

    @Test
    void complete_whereALengthIsWanted_offersOwnLengthsThenWordsThatGiveOne() {
        List<Completion> offered =
                at(STOCK, "Part lid = panel(\"Lid\", ply).wide(|").all();

        assertThat(offered.stream().map(Completion::name).limit(2)).containsExactly("twice", "width");
        assertThat(offered.get(1).what()).isEqualTo("a length");
        assertThat(offered.stream()
                        .filter(one -> one.kind() == Kind.WORD && one.fits())
                        .map(Completion::name))
                .contains("length", "size", "pick");
        assertThat(offered.stream().map(Completion::name).toList().indexOf("ply"))
                .as("a sheet is no length")
                .isGreaterThan(offered.stream().map(Completion::name).toList().indexOf("length"));
    }

    @Test
    void complete_whereAPlacingIsWanted_offersThePlacings() {
        List<Completion> offered = at(
                        STOCK,
                        "var floorIn = place(floor);\nvar lid = 3;",
                        "var on = fasten(floorIn).to(|).screwed(woodScrew(6, \"1 in\"))")
                .all();
        assertThat(offered.get(0))
                .isEqualTo(new Completion("floorIn", "floorIn", "a part in its place", "", Kind.OWN, true));
        assertThat(offered.get(1).name()).isEqualTo("place");
    }

    @Test
    void complete_nameBegun_replacesAllOfItAndIgnoresCase() {
        Completions offered = at(STOCK, "Length a = WI|dh;");

        assertThat(names(offered)).containsExactly("width", "wide", "wireNail");
        assertThat(offered.from()).isEqualTo(11);
        assertThat(offered.to()).isEqualTo(15);
    }

    @Test
    void complete_atTheBeginningOfAPiece_offersNamesWordsAndTypes() {
        assertThat(names(at(STOCK, "pla|"))).containsExactly("place");
        assertThat(names(at(STOCK, "Pla|"))).contains("place", "Placing");
        assertThat(one(at(STOCK, "|"), "Sheet").insert()).isEqualTo("Sheet ");
    }

    @Test
    void complete_whereASideIsWanted_offersTheSides() {
        List<Completion> offered = at(STOCK, "var f = place(floor).flushAt(|").all();
        assertThat(offered.stream().filter(Completion::fits).map(Completion::name))
                .containsExactly(
                        "BACK", "BOTTOM", "EAVES", "FRONT", "GABLES", "INSIDE", "LEFT", "OUTSIDE", "RIDGE", "RIGHT",
                        "TOP");
        assertThat(offered.get(0).what()).isEqualTo("a side");
    }

    @Test
    void complete_inACommentInQuotesOrWhereANameIsGiven_offersNothing() {
        assertThat(at(STOCK, "// pan|").all()).isEmpty();
        assertThat(at(STOCK, "Part p = panel(\"wi|\", ply);").all()).isEmpty();
        assertThat(at(STOCK, "Part wi|").all()).isEmpty();
    }

    @Test
    void complete_namesFurtherDown_areNotOffered() {
        assertThat(names(at(STOCK + "Length late|r = wi;"))).isEmpty();
        assertThat(names(at("Length a = wi|;\n" + STOCK))).doesNotContain("width");
    }

    @Test
    void complete_inACellThatDoesNotCompile_stillKnowsWhatStandsAbove() {
        String broken = "Part a = pannel(\"A\", ply).wide(;\nLength b = length(\"3 in\");";
        assertThat(names(at(STOCK, broken, "Part lid = panel(\"Lid\", ply).wide(wid|")))
                .startsWith("width");
        assertThat(names(at(STOCK + "Part b = panel(\"B\", nothing);\nvar p = floor.hi|\nLength c = 7 in;")))
                .startsWith("high");
    }

    @Test
    void complete_inALambdaAndInAMethodOfTheCell_knowsItsNames() {
        assertThat(names(at(STOCK, "var all = repeat(3, index -> panel(\"D\" + inde|")))
                .containsExactly("index");
        assertThat(names(
                        at(STOCK, "Part shelf(Length deepness) {\n  return panel(\"S\", ply).wide(width).deep(deepn|")))
                .containsExactly("deepness");
        assertThat(names(at(STOCK, "Part shelf(Length deepness) {\n  return panel(\"S\", ply).wide(wid|")))
                .startsWith("width");
    }

    @Test
    void complete_typeOfAnInferredName_isKnown() {
        assertThat(names(at(STOCK, "var lid = floor.tim|"))).containsExactly("times");
        assertThat(names(at(STOCK, "var lids = List.of(floor);", "Part p = lids.get(0).wideA|")))
                .containsExactly("wideAtTop");
    }

    @Test
    void explain_insideBrackets_saysWhichParameter() {
        WordHelp rabbet = explained(STOCK, "var a = floor.rabbet(INSIDE, TOP, wide(\"1/2 in\"), |")
                .orElseThrow();

        assertThat(rabbet.parameter()).isEqualTo(3);
        assertThat(rabbet.signatures()).hasSize(2);
        Signature first = rabbet.signatures().get(0);
        assertThat(first.parameters().get(3)).isEqualTo(new Parameter("deep", "a depth, like deep(\"3/16 in\")", ""));
        assertThat(first.gives()).isEqualTo("a part");
        assertThat(first.written()).startsWith("rabbet(face, ").endsWith(", wide, deep)");
        assertThat(first.example().orElseThrow()).contains("rabbet(");
    }

    @Test
    void explain_insideQuotes_isAboutTheWordAround() {
        WordHelp size =
                explained(STOCK, "Length d = size(\"De|pth\", \"11 in\");").orElseThrow();
        assertThat(size.parameter()).isZero();
        assertThat(size.signatures())
                .extracting(Signature::written)
                .containsExactly("size(label, value)", "size(label, value, range)");
    }

    @Test
    void explain_thirdOfSize_showsTheOneThatTakesThreeFirst() {
        WordHelp size =
                explained(STOCK, "Length d = size(\"Depth\", \"11 in\", |").orElseThrow();
        assertThat(size.parameter()).isEqualTo(2);
        assertThat(size.signatures().get(0).written()).isEqualTo("size(label, value, range)");
    }

    @Test
    void explain_anyNumber_staysInTheLastParameter() {
        WordHelp to = explained(STOCK, "var f = place(floor);\nvar j = fasten(f).to(f, f, f|, f);")
                .orElseThrow();
        assertThat(to.signatures().get(0).written()).isEqualTo("f");
        WordHelp around = explained(STOCK, "var f = place(floor);\nvar j = fasten(f).to(f, f, |")
                .orElseThrow();
        assertThat(around.signatures().get(0).written()).isEqualTo("to(others)");
        assertThat(around.parameter()).isZero();
        assertThat(around.signatures().get(0).parameters().get(0).what())
                .isEqualTo("any number, each a part in its place, like place(floor)");
    }

    @Test
    void explain_onAWord_saysItsMeaning() {
        WordHelp panel = explained(STOCK, "Part p = pan|el(\"A\", ply);").orElseThrow();
        assertThat(panel.parameter()).isEqualTo(-1);
        assertThat(panel.signatures()).singleElement().satisfies(one -> {
            assertThat(one.text()).isEqualTo("A part cut from a sheet; its name is its identity.");
            assertThat(one.parameters()).extracting(Parameter::what).containsExactly("a text in quotes", "a sheet");
        });
    }

    @Test
    void explain_onANameOrMethodOfTheWorkbook_saysWhatItIs() {
        assertThat(explained(STOCK, "var w = wid|th;").orElseThrow().signatures())
                .containsExactly(new Signature("width", false, List.of(), "a length", "", List.of(), Optional.empty()));
        assertThat(explained(STOCK, "var w = twice(|")
                        .orElseThrow()
                        .signatures()
                        .get(0)
                        .parameters())
                .containsExactly(new Parameter("one", "a length", ""));
    }

    @Test
    void explain_nothingThere_isEmpty() {
        assertThat(explained(STOCK, "  |  ")).isEmpty();
        assertThat(explained(STOCK, "var a = nothing.known(|")).isEmpty();
        assertThat(explained(STOCK, "var a = (|")).isEmpty();
    }
}
