package org.kerfleaf.workbook;

import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/**
 * Follows the headings of a document from the top and says what each begins. Only headings that stand in the document
 * itself count, not those inside a quote or a list.
 */
final class Outline {
    static final String BUILD_STEPS = "Build steps";

    /** What a heading begins. */
    enum Begins {
        TITLE,
        SECTION,
        BUILD_STEPS,
        STEP,
        PART_OF_STEP
    }

    private final Heading title;
    private int buildStepsLevel;
    private int stepLevel;
    private int steps;

    Outline(Node document) {
        title = titleOf(document);
    }

    /** The first level-1 heading, null where there is none. */
    static Heading titleOf(Node document) {
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Heading heading && heading.getLevel() == 1) {
                return heading;
            }
        }
        return null;
    }

    Begins enter(Heading heading) {
        int level = heading.getLevel();
        if (buildStepsLevel > 0 && level > buildStepsLevel) {
            if (stepLevel > 0 && level > stepLevel) {
                return Begins.PART_OF_STEP;
            }
            stepLevel = level;
            steps++;
            return Begins.STEP;
        }
        stepLevel = 0;
        boolean buildSteps = textOf(heading).equalsIgnoreCase(BUILD_STEPS);
        buildStepsLevel = buildSteps ? level : 0;
        if (buildSteps) {
            return Begins.BUILD_STEPS;
        }
        return heading == title ? Begins.TITLE : Begins.SECTION;
    }

    /** The number of the step reached, 0 outside the build steps. */
    int step() {
        return stepLevel > 0 ? steps : 0;
    }

    /** The heading's words without marks; a live value as it is written. */
    static String textOf(Heading heading) {
        var text = new StringBuilder();
        Tree.eachUnder(heading, node -> {
            if (node instanceof Text words) {
                text.append(words.getLiteral());
            } else if (node instanceof Code code) {
                text.append(code.getLiteral());
            } else if (node instanceof LiveNode live) {
                text.append(live.source());
            } else if (node instanceof SoftLineBreak) {
                text.append(' ');
            }
        });
        return text.toString().strip();
    }
}
