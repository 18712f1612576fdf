package org.kerfleaf.sketch;

/**
 * A question only the plan can answer, printed in prose and views after planning; cells cannot calculate with it.
 *
 * @param subject the name of the part or stock it is about
 * @param question what is asked
 */
public record Asked(String subject, Question question) {
    /** What can be asked. */
    public enum Question {
        BOUGHT,
        RIDGE_ANGLE,
        MITRE_SCALE,
        COUNT,
        LENGTH,
        WIDTH
    }

    @Override
    public String toString() {
        return "(" + subject + ": "
                + question.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + ", known when planned)";
    }
}
