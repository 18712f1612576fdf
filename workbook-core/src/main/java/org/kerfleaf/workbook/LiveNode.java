package org.kerfleaf.workbook;

import org.commonmark.node.CustomNode;

/** What {@link LiveValueParser} leaves in the tree: a live value, or a <code>${</code> that is none. */
final class LiveNode extends CustomNode {
    /** The expression as it is run; empty for a stray opening, whose {@link #slip} says what is wrong. */
    final String expression;

    final String slip;
    final int offset;
    final int length;
    /** Set once, while the file is read. */
    int ordinal = -1;

    private LiveNode(String expression, String slip, int offset, int length) {
        this.expression = expression;
        this.slip = slip;
        this.offset = offset;
        this.length = length;
    }

    static LiveNode value(String expression, int offset, int length) {
        return new LiveNode(expression, "", offset, length);
    }

    static LiveNode stray(String words, int offset) {
        return new LiveNode("", words, offset, 2);
    }

    boolean isStray() {
        return !slip.isEmpty();
    }

    /** As it stands in the file. */
    String source() {
        return isStray() ? "${" : "${" + expression + "}";
    }
}
