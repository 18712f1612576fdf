package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Volume;

/** A caulk or sealant. */
public record Caulk(Origin origin, String name, Optional<Volume> pack, Optional<Money> price) implements Supply {
    public Caulk cartridge(String holds) {
        return new Caulk(origin, name, Optional.of(Volume.parse(holds)), price);
    }

    public Caulk costs(String each) {
        return new Caulk(origin, name, pack, Optional.of(SketchRun.price(each)));
    }
}
