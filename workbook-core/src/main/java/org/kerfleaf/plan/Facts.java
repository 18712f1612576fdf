package org.kerfleaf.plan;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.plan.Change.Topic;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.site.WindLoad;

/** A plan as one flat list: what of which thing has which value. The first fact of a thing stands for the thing itself. */
final class Facts {
    private final Map<Fact, Quantity> all = new LinkedHashMap<>();
    private final Map<String, String> oldNames;

    /** What of a thing; of equals, which one from 0. */
    record Fact(Topic topic, String subject, String aspect, int nth) {}

    /** @param oldNames the name under which a thing is told, where it is another than its own */
    Facts(Plan plan, Map<String, String> oldNames) {
        this.oldNames = oldNames;
        plan.problems()
                .forEach(problem -> put(
                        Topic.PROBLEMS,
                        problem.words(),
                        "",
                        new Said("line " + problem.origin().line())));
        plan.sizes().forEach(size -> put(Topic.SIZES, size.label(), "", size.value()));
        outside(plan);
        plan.parts().forEach(this::part);
        plan.movement().forEach(this::moving);
        plan.sawSettings().forEach(this::saw);
        plan.bounds().forEach(bound -> put(Topic.STOCK, bound.stock(), "bought", Count.of(bound.bought())));
        plan.hardware().forEach(this::hardware);
        plan.finish().forEach(this::finish);
        plan.buying().home().ifPresent(this::home);
        cost(plan.cost());
        plan.site().ifPresent(this::site);
        loads(plan.loads());
        work(plan.schedule());
        plan.checks()
                .forEach(check -> put(
                        Topic.CHECKS,
                        name(check.name()),
                        "",
                        new Said(check.verdict().word())));
    }

    Map<Fact, Quantity> all() {
        return all;
    }

    private void put(Topic topic, String subject, String aspect, Quantity value) {
        int nth = 0;
        while (all.containsKey(new Fact(topic, subject, aspect, nth))) {
            nth++;
        }
        all.put(new Fact(topic, subject, aspect, nth), value);
    }

    private void put(Topic topic, String subject, String aspect, Figure<? extends Quantity> figure) {
        put(topic, subject, aspect, figure.value());
    }

    private void put(Topic topic, String subject, String aspect, Money money) {
        put(topic, subject, aspect, new Said(money.getAmount().toPlainString()));
    }

    private String name(String own) {
        return oldNames.getOrDefault(own, own);
    }

    // ---- topic by topic ------------------------------------------------------------------------------------------

    private void outside(Plan plan) {
        String whole = "the whole";
        plan.overall().ifPresent(overall -> {
            put(Topic.OUTSIDE, whole, "wide", overall.wide());
            put(Topic.OUTSIDE, whole, "deep", overall.deep());
            put(Topic.OUTSIDE, whole, "high", overall.high());
        });
        plan.weight().ifPresent(weight -> put(Topic.OUTSIDE, whole, "weight", weight));
        for (Chain chain : plan.chains()) {
            boolean told = plan.overall()
                    .filter(overall -> of(overall, chain.axis()).equals(chain.overall()))
                    .isPresent();
            if (!told) {
                String build = "what holds together with " + chain.first();
                put(Topic.OUTSIDE, build, chain.axis().words(), chain.overall());
            }
        }
    }

    private static Length of(Plan.Overall overall, Axis axis) {
        return switch (axis) {
            case X -> overall.wide().value();
            case Y -> overall.deep().value();
            case Z -> overall.high().value();
        };
    }

    private void part(PlannedPart part) {
        put(Topic.PARTS, part.name(), "how many", Count.of(part.count()));
        put(Topic.PARTS, part.name(), "letter", new Said(part.letter()));
        put(Topic.PARTS, part.name(), "along the grain", part.length());
        put(Topic.PARTS, part.name(), "across the grain", part.width());
        put(Topic.PARTS, part.name(), "thickness", part.thickness());
        for (PlannedPart.PlannedEdge edge : part.edges()) {
            boolean bevel = edge.cut() == PlannedPart.PlannedEdge.Cut.BEVEL;
            put(Topic.PARTS, part.name(), edge.name() + (bevel ? ": bevel" : ": mitre"), edge.angle());
            put(Topic.PARTS, part.name(), edge.name() + ": short side less by", edge.shorter());
        }
        part.then().forEach(words -> put(Topic.PARTS, part.name(), "then", new Said(words)));
    }

    private void moving(Moving moving) {
        put(Topic.PARTS, moving.part(), "wider when driest", moving.atDriest());
        put(Topic.PARTS, moving.part(), "wider when dampest", moving.atDampest());
        moving.gap().ifPresent(gap -> {
            put(Topic.PARTS, moving.part(), "gap when driest", gap.whenDriest());
            put(Topic.PARTS, moving.part(), "gap when dampest", gap.whenDampest());
        });
    }

    private void saw(SawSetting setting) {
        String subject = setting.saw() + ", " + setting.cut();
        put(Topic.SAWS, subject, "parts", new Said(String.join(", ", setting.parts())));
        put(Topic.SAWS, subject, "tilt", setting.tilt());
        setting.scale().ifPresent(scale -> put(Topic.SAWS, subject, "scale", scale));
        setting.bladeDepth().ifPresent(depth -> put(Topic.SAWS, subject, "blade depth", depth));
        setting.straightedge()
                .forEach(edge -> put(Topic.SAWS, subject, "straightedge " + edge.where(), edge.distance()));
        setting.set().forEach(reading -> put(Topic.SAWS, subject, reading.what(), reading.value()));
        for (SawSetting.Guide guide : setting.guides()) {
            put(Topic.SAWS, subject, "sheet cuts set to", guide.set());
        }
        if (!setting.notes().isEmpty()) {
            put(Topic.SAWS, subject, "watch", new Said(setting.notes()));
        }
    }

    private void hardware(HardwareLine line) {
        String subject = name(line.what());
        put(Topic.HARDWARE, subject, "needed", Count.of(line.need().value()));
        put(Topic.HARDWARE, subject, "which", new Said(line.what()));
        put(Topic.HARDWARE, subject, "packs", Count.of(line.packs().value()));
        line.uses().forEach(use -> put(Topic.HARDWARE, subject, "where", new Said(use)));
    }

    private void finish(FinishLine line) {
        put(Topic.FINISH, line.what(), "packs", Count.of(line.packs().value()));
        put(Topic.FINISH, line.what(), "to " + line.task().name().toLowerCase(Locale.ROOT), line.extent());
        put(Topic.FINISH, line.what(), "coats", Count.of(line.coats()));
        put(Topic.FINISH, line.what(), "needed", line.need());
    }

    private void cost(Cost cost) {
        for (CostLine line : cost.lines()) {
            line.bought().ifPresent(money -> put(Topic.COST, name(line.what()), "", money));
        }
        total("as bought", cost.bought());
        total("as used", cost.used());
        if (cost.kits() > 1) {
            put(Topic.COST, "kits", "", Count.of(cost.kits()));
            total("one kit, as bought", cost.boughtEach());
        }
        for (Cost.KitComparison kit : cost.compare()) {
            total("less than “%s”".formatted(kit.name()), kit.difference());
        }
    }

    private void home(Buying.Home home) {
        for (Buying.Load load : home.loads()) {
            put(Topic.STOCK, load.name(), "home", new Said(load.way().words()));
            load.cuts().forEach(cut -> put(Topic.STOCK, load.name(), "cut in the shop at", cut.at()));
        }
    }

    private void loads(Loads loads) {
        for (Loads.Contained things : loads.contents()) {
            String subject = things.name() + " on " + things.on();
            put(Topic.LOADS, subject, "on each", Count.of(things.each()));
            for (Loads.Room room : things.rooms()) {
                put(Topic.LOADS, subject, "needs clear, " + room.way(), room.need());
                room.there().ifPresent(there -> put(Topic.LOADS, subject, "clear there, " + room.way(), there));
            }
        }
        loads.carried().forEach(carried -> carried(name(carried.part()), carried));
        loads.snow()
                .ifPresent(snow -> snow.carried().forEach(carried -> carried("snow on " + carried.part(), carried)));
        for (Loads.Lifted lifted : loads.lifted()) {
            lifted.weight().ifPresent(weight -> put(Topic.LOADS, name(lifted.part()), "lifted", weight));
        }
        for (Loads.Filled filled : loads.filled()) {
            put(Topic.LOADS, filled.what(), "", filled.volume());
            filled.together().ifPresent(all -> put(Topic.LOADS, name(filled.part()), "filled", all));
        }
    }

    private void carried(String subject, Loads.Carried carried) {
        put(Topic.LOADS, subject, "carries", carried.load());
        carried.bending().ifPresent(bent -> {
            put(Topic.LOADS, subject, "hangs free over", bent.span());
            put(Topic.LOADS, subject, "sags", bent.sag());
        });
    }

    private void total(String subject, Optional<Figure<Money>> sum) {
        sum.ifPresent(money -> put(Topic.COST, subject, "", money.value()));
    }

    private void work(Schedule schedule) {
        put(Topic.WORK, "work", "", new Said(StepChecking.time(schedule.work().value())));
        schedule.course().ifPresent(course -> {
            put(
                    Topic.WORK,
                    "to the last work",
                    "",
                    new Said(StepChecking.time(course.alone().value())));
            put(
                    Topic.WORK,
                    "until all has cured",
                    "",
                    new Said(StepChecking.time(course.ready().value())));
        });
    }

    private void site(SitePlan site) {
        put(Topic.SITE, "hole", "", site.hole());
        put(Topic.SITE, "gravel", "", site.gravel());
        put(Topic.SITE, "post in the ground", "", site.inGround());
        site.boxBottom().ifPresent(height -> put(Topic.SITE, "underside above ground", "", height));
        site.latch().ifPresent(height -> put(Topic.SITE, "latch above ground", "", height));
        site.filling().ifPresent(filling -> {
            put(Topic.SITE, filling.with() + " round the post", "", filling.volume());
            filling.bags().ifPresent(bags -> put(Topic.SITE, "bags of concrete", "", Count.of(bags.value())));
        });
        site.wind().ifPresent(wind -> {
            put(Topic.SITE, "wind on the box", "push", wind.push());
            put(Topic.SITE, "wind on the box", "turning at the ground", wind.moment());
            wind.needs()
                    .flatMap(WindLoad.Needs::doubled)
                    .ifPresent(depth -> put(Topic.SITE, "wind on the box", "depth with bearing doubled", depth));
        });
    }
}
