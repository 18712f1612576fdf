package org.kerfleaf.sketch;

/** Anything a maker says in a cell that counts: a stock, a part, where it goes, how it is joined. */
public sealed interface Declaration
        permits Units,
                Prices,
                Size,
                Sheet,
                Lumber,
                Fastener,
                Supply,
                Saw,
                MitreSaw,
                Jigsaw,
                Router,
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
                Contents,
                Instead,
                Vehicle,
                WorkTime,
                Waiting,
                Session,
                Ladder,
                Loud,
                FreeTime,
                Ahead,
                People,
                CutAll,
                BoughtKit,
                Tool {
    /** Where it was said. */
    Origin origin();
}
