package org.kerfleaf.rules;

import java.util.OptionalDouble;

/**
 * A rule held against the plan. It shows and advises, it never blocks.
 *
 * @param name the rule's name, with the part it was held against: {@code Screw reach: Back to Floor}
 * @param result the sum in one sentence, with the values
 * @param margin what is left or lacking, in words with its unit; empty if the verdict is not known
 * @param level the margin as a share of what was wanted: 0 at the line, positive holds, negative short
 * @param verdict whether it holds
 * @param advice what would hold, or which datum is missing; empty if it holds
 * @param source where the rule is from
 */
public record Check(
        String name,
        String result,
        String margin,
        OptionalDouble level,
        Verdict verdict,
        String advice,
        String source) {
    /** Whether a check holds. */
    public enum Verdict {
        HOLDS("holds"),
        SHORT("short"),
        NOT_KNOWN("not known");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
