package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/** How much sag is too much. The usual limits differ by a factor of four, so the one meant is named. @group what it carries */
public enum SagLimit {
    /** Span / 144, at first and with time. @example carries(floorIn, "20 lb/ft").spans("22 in").heldTo(WOODWORK_STANDARD) */
    WOODWORK_STANDARD("span / 144", "Architectural Woodwork Standards 2009, 1.2.21 (seen in a copy)"),
    /** 1/32 in for each foot, what an eye sees. @example carries(floorIn, "20 lb/ft").spans("22 in").heldTo(VISIBLE) */
    VISIBLE("1/32 in for each foot", "common practice, no source"),
    /** 0.02 in for each foot, when first loaded. @example carries(floorIn, "20 lb/ft").spans("22 in").heldTo(FIRST_LOAD) */
    FIRST_LOAD("0.02 in for each foot when first loaded", "shop guidelines (seen in a copy)");

    private static final Length FOOT = Length.ofInches(12);

    private final String words;
    private final String source;

    SagLimit(String words, String source) {
        this.words = words;
        this.source = source;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }

    /** Where it is from. */
    public String source() {
        return source;
    }

    /** The sag allowed over a span. */
    public Length over(Length span) {
        return switch (this) {
            case WOODWORK_STANDARD -> span.dividedBy(144);
            case VISIBLE -> Length.ofSixtyFourths(2).times(span.dividedBy(FOOT));
            case FIRST_LOAD -> Length.ofInches(0.02).times(span.dividedBy(FOOT));
        };
    }
}
