package org.kerfleaf.stock;

/** How a row of a published table came here. */
enum Sure {
    SEEN("seen in a copy"),
    FROM_MEMORY("from memory");

    private final String words;

    Sure(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
