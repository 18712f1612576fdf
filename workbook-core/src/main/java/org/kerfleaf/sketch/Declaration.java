package org.kerfleaf.sketch;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** Anything a maker says in a cell that counts: a stock, a part, where it goes, how it is joined. */
@JsonTypeInfo(use = JsonTypeInfo.Id.SIMPLE_NAME, property = "said")
public sealed interface Declaration
        permits Units,
                Prices,
                Size,
                Sheet,
                Lumber,
                Fastener,
                Supply,
                Saw,
                Part,
                Placing,
                Joint,
                Seal,
                Coat,
                Fitting,
                Glazing,
                Hole,
                SiteSaid,
                Mount,
                Carries,
                WorkTime,
                Ahead,
                People,
                CutAll,
                BoughtKit,
                Tool {
    /** Where it was said. */
    Origin origin();
}
