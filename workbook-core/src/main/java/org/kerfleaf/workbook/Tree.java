package org.kerfleaf.workbook;

import java.util.function.Consumer;
import org.commonmark.node.Node;

/** Walks a parsed document in document order. */
final class Tree {
    private Tree() {}

    /** Hands over the node itself and everything in it. */
    static void eachUnder(Node top, Consumer<Node> to) {
        Node node = top;
        while (node != null) {
            to.accept(node);
            node = node.getFirstChild() != null ? node.getFirstChild() : nextAfter(node, top);
        }
    }

    private static Node nextAfter(Node from, Node top) {
        Node node = from;
        while (node != top && node.getNext() == null) {
            node = node.getParent();
        }
        return node == top ? null : node.getNext();
    }
}
