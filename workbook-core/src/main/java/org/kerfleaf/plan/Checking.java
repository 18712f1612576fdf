package org.kerfleaf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.rules.Check;

/** Holds the trade's rules against the plan: stock and wood, places, joints and grooves, parts and saws, roof, rain and paint, door and glazing, site, cost. */
final class Checking {
    private Checking() {}

    static List<Check> all(Planned planned, List<Hung> hung, Cost cost, LocalDate day) {
        List<Check> checks = new ArrayList<>();
        checks.addAll(new PlaceChecking(planned).all());
        checks.addAll(new StockChecking(planned).all());
        checks.addAll(new MovementChecking(planned).all());
        checks.addAll(new JointChecking(planned).all());
        checks.addAll(new HoldChecking(planned).all());
        checks.addAll(Gluing.checks(planned));
        checks.addAll(new GrooveChecking(planned).all());
        checks.addAll(new PartChecking(planned).all());
        checks.addAll(new RoofChecking(planned, hung).all());
        checks.addAll(new RainChecking(planned).all());
        checks.addAll(new PaintChecking(planned).all());
        checks.addAll(new DryChecking(planned).all());
        checks.addAll(new Airing(planned).all());
        checks.addAll(new DoorChecking(planned).all());
        checks.addAll(new SwingChecking(planned, hung).all());
        checks.addAll(new LoadChecking(planned).all());
        checks.addAll(new SiteChecking(planned).all(cost, day));
        return checks;
    }
}
