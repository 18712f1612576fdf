package org.kerfleaf.export.booklet;

/**
 * A column of a table.
 *
 * @param head what stands above it
 * @param share of the room that is left once columns without a share have what they need; 0 for those
 * @param right whether the head ends at the right, as numbers do
 */
record Column(String head, double share, boolean right) {
    /** As wide as its widest cell. */
    static Column fit(String head) {
        return new Column(head, 0, false);
    }

    /** As wide as its widest cell, the head flush right. */
    static Column number(String head) {
        return new Column(head, 0, true);
    }

    /** Shares the room that is left. */
    static Column share(String head, double share) {
        return new Column(head, share, false);
    }
}
