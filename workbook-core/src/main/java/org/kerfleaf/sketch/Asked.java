package org.kerfleaf.sketch;

/**
 * A question only the plan can answer, printed in prose and views after planning; cells cannot calculate with it.
 *
 * @param subject the name of the part or stock it is about
 * @param question what is asked
 * @group asked of the plan
 */
public record Asked(String subject, Question question) {
    /** What can be asked. */
    public enum Question {
        /** How many are bought. */
        BOUGHT,
        /** The angle between a roof and its twin. */
        RIDGE_ANGLE,
        /** What to set on a mitre saw's scale. */
        MITRE_SCALE,
        /** How many are cut. */
        COUNT,
        /** How long it is cut. */
        LENGTH,
        /** How wide it is cut. */
        WIDTH
    }

    @Override
    public String toString() {
        return "(" + subject + ": "
                + question.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + ", known when planned)";
    }
}
