package org.kerfleaf.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.IntFunction;
import org.commonmark.node.Block;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.kerfleaf.workbook.Prose.Block.Items;
import org.kerfleaf.workbook.Prose.Run;
import org.kerfleaf.workbook.Prose.Style;

/** Turns a parsed workbook into its words, with the live values filled in. */
final class Telling {
    private static final String INTO_INNER_LIST = " \u2013 ";
    private static final String NEXT_IN_INNER_LIST = "; ";

    private final IntFunction<String> values;
    private final List<Passage> passages = new ArrayList<>();
    private Passage current = new Passage(Outline.Begins.TITLE, "", 0);

    Telling(IntFunction<String> values) {
        this.values = values;
    }

    Prose tell(Node document, String untitled) {
        Passage lead = current;
        var outline = new Outline(document);
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Heading heading) {
                Outline.Begins begins = outline.enter(heading);
                if (begins == Outline.Begins.TITLE) {
                    current = lead;
                } else if (begins == Outline.Begins.PART_OF_STEP) {
                    current.paragraph(inline(heading, Style.STRONG).list());
                } else {
                    current = new Passage(begins, words(heading), heading.getLevel());
                    passages.add(current);
                }
            } else {
                block(node);
            }
        }
        Heading title = Outline.titleOf(document);
        String words = title == null ? "" : words(title);
        return new Prose(words.isEmpty() ? untitled : words, lead.blocks, sections(), steps());
    }

    private List<Prose.Section> sections() {
        // What stands under "Build steps" before the first of them has no step to go to, and must not get lost.
        return passages.stream()
                .filter(p -> p.begins == Outline.Begins.SECTION
                        || p.begins == Outline.Begins.BUILD_STEPS && !p.blocks.isEmpty())
                .map(Passage::asSection)
                .toList();
    }

    private List<Prose.Step> steps() {
        var steps = new ArrayList<Prose.Step>();
        for (Passage passage : passages) {
            if (passage.begins == Outline.Begins.STEP) {
                steps.add(passage.asStep(steps.size() + 1));
            }
        }
        return steps;
    }

    private String words(Heading heading) {
        return inline(heading, Style.PLAIN).text().strip();
    }

    private void block(Node node) {
        if (node instanceof Paragraph) {
            current.paragraph(inline(node, Style.PLAIN).list());
        } else if (node instanceof ListBlock list) {
            items(list);
        } else if (node instanceof BlockQuote quote) {
            current.quote(flat(quote));
        } else {
            current.paragraph(code(node).list());
        }
    }

    private void items(ListBlock list) {
        var items = new ArrayList<List<Run>>();
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            Runs runs = flat(item);
            if (!runs.isEmpty()) {
                items.add(runs.list());
            }
        }
        if (!items.isEmpty()) {
            current.blocks.add(new Items(List.copyOf(items), list instanceof OrderedList));
        }
    }

    /** All that stands in a list item or a quote as one line of text; a caution in it goes to its step. */
    private Runs flat(Node container) {
        var runs = new Runs();
        for (Node node = container.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof ListBlock list) {
                innerItems(list, runs);
            } else {
                Runs more = flatBlock(node);
                if (!more.isEmpty()) {
                    runs.addBetween(" ");
                    runs.addAll(more.list());
                }
            }
        }
        return runs;
    }

    private Runs flatBlock(Node node) {
        if (node instanceof BlockQuote quote) {
            Runs said = flat(quote);
            return current.keepApart(said) ? new Runs() : said;
        }
        if (node instanceof Heading) {
            return inline(node, Style.STRONG);
        }
        return node instanceof Paragraph ? inline(node, Style.PLAIN) : code(node);
    }

    private void innerItems(ListBlock list, Runs to) {
        String before = INTO_INNER_LIST;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            Runs inner = flat(item);
            if (!inner.isEmpty()) {
                to.addBetween(before);
                to.addAll(inner.list());
                before = NEXT_IN_INNER_LIST;
            }
        }
    }

    /** The text of a code block that is neither cell nor view; nothing for any other block. */
    private static Runs code(Node node) {
        var runs = new Runs();
        if (node instanceof IndentedCodeBlock block) {
            runs.add(block.getLiteral().stripTrailing(), Style.CODE);
        } else if (node instanceof FencedCodeBlock block) {
            String kind = Fence.kind(block);
            if (!kind.equals(Workbook.CELL) && !kind.equals(Workbook.VIEW)) {
                runs.add(block.getLiteral().stripTrailing(), Style.CODE);
            }
        }
        return runs;
    }

    private Runs inline(Node parent, Style style) {
        var runs = new Runs();
        inlineInto(runs, parent, style);
        return runs;
    }

    private void inlineInto(Runs runs, Node parent, Style style) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Text text) {
                runs.add(text.getLiteral(), style);
            } else if (node instanceof Code code) {
                runs.add(code.getLiteral(), Style.CODE);
            } else if (node instanceof SoftLineBreak) {
                runs.add(" ", style);
            } else if (node instanceof HardLineBreak) {
                runs.add("\n", style);
            } else if (node instanceof LiveNode live) {
                runs.add(live.isStray() ? live.source() : value(live), live.isStray() ? style : Style.VALUE);
            } else if (!(node instanceof Block)) {
                inlineInto(runs, node, innerStyle(node, style));
            }
        }
    }

    private static Style innerStyle(Node node, Style outer) {
        if (node instanceof StrongEmphasis) {
            return Style.STRONG;
        }
        return node instanceof Emphasis ? Style.EMPHASIS : outer;
    }

    private String value(LiveNode live) {
        return Objects.requireNonNull(
                values.apply(live.ordinal),
                () -> "No text for live value %d, %s".formatted(live.ordinal, live.source()));
    }
}
