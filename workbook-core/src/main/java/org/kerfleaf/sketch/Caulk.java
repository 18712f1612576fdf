package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Volume;

/** A caulk or sealant. @group what we buy */
public record Caulk(Origin origin, String name, Optional<Volume> pack, Optional<Money> price) implements Supply {
    /** What one cartridge holds. @example caulk("acrylic latex").cartridge("10.1 fl oz") */
    public Caulk cartridge(String holds) {
        return new Caulk(origin, name, Optional.of(Volume.parse(holds)), price);
    }

    /** The price of one cartridge. @example caulk("acrylic latex").cartridge("10.1 fl oz").costs("4.30") */
    public Caulk costs(String each) {
        return new Caulk(origin, name, pack, Optional.of(SketchRun.price(each)));
    }
}
