package org.kerfleaf.kernel.help;

/**
 * Something that can stand at a place of a cell.
 *
 * @param name what a reader sees: {@code wide}, {@code ply}
 * @param insert what is put into the text: {@code pair()}, {@code wide(} where more must be said, {@code ply}
 * @param what what kind of thing it is or gives, in a maker's words: {@code a length}
 * @param sentence what it means, empty if nothing is said of it
 * @param kind where it comes from
 * @param fits whether it is of the type that is wanted here
 */
public record Completion(String name, String insert, String what, String sentence, Kind kind, boolean fits) {
    /** Where it comes from; what comes earlier here is shown earlier. */
    public enum Kind {
        /** A name of this workbook. */
        OWN,
        /** A word of the vocabulary. */
        WORD,
        /** What kind of thing a name is: {@code Part}, {@code Length}. */
        TYPE,
        /** Whatever else can be said here. */
        OTHER
    }
}
