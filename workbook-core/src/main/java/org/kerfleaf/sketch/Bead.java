package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/** How thick a bead of caulk is, measured across. @group sealing and paint */
public record Bead(Length across) {}
