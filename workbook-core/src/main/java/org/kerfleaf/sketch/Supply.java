package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Volume;

/** Something that is used up: glue, caulk, paint. */
public sealed interface Supply extends Declaration permits Glue, Caulk, Paint {
    /** Its name, as on its label. */
    String name();

    /** What one bottle, cartridge or can holds, if said. */
    Optional<Volume> pack();

    /** Price of one pack, if said. */
    Optional<Money> price();
}
