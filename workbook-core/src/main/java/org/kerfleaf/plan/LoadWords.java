package org.kerfleaf.plan;

import static org.kerfleaf.plan.Told.Filling.NOT_KNOWN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Bracket;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Filled;
import org.kerfleaf.plan.Loads.Lifted;
import org.kerfleaf.plan.Loads.OnJoint;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.SagChecks;

/** What parts carry, what hangs on joints and brackets, and what people lift, in words. */
public final class LoadWords {
    private final MeasureStyle style;

    public LoadWords(MeasureStyle style) {
        this.style = style;
    }

    /** Every group. */
    public List<Told> of(Loads loads) {
        List<Told> told = new ArrayList<>();
        loads.carried().forEach(carried -> told.add(carried("On " + carried.part(), carried)));
        told.addAll(held(loads));
        return told;
    }

    /** Of what goes in, snow, joints, brackets and lifts: all but what parts were said to carry. */
    public List<Told> held(Loads loads) {
        List<Told> told = new ArrayList<>();
        loads.contents().forEach(things -> told.add(contained(things)));
        loads.snow()
                .ifPresent(snow ->
                        snow.carried().forEach(carried -> told.add(carried("Snow on " + carried.part(), carried))));
        loads.onJoints().forEach(on -> told.add(onJoint(on)));
        loads.brackets().forEach(bracket -> told.add(bracket(bracket)));
        loads.lifted().forEach(lifted -> told.add(lifted(lifted)));
        loads.filled().forEach(filled -> told.add(filled(filled)));
        return told;
    }

    private Told contained(Loads.Contained things) {
        Told.Filling group = new Told.Filling(things.name() + " on " + things.on(), style)
                .line("on each", things.each() + ", side by side " + things.sideBySide());
        for (Loads.Room room : things.rooms()) {
            group.line("need clear, " + room.way(), room.need());
            room.there()
                    .ifPresentOrElse(
                            there -> group.line("clear there, " + room.way(), there),
                            () -> group.line("clear there, " + room.way(), "open"));
        }
        return group.done();
    }

    private Told carried(String title, Carried carried) {
        Optional<Bending> bending = carried.bending();
        Told.Filling group = new Told.Filling(title, style)
                .line("load", carried.load())
                .asked("hangs free over", bending.map(Bending::span))
                .maybe("load on that", bending.map(Bending::onSpan))
                .maybe("stiffness", bending.map(Bending::stiffness));
        sag(group, "sags at first", bending.map(Bending::sag));
        sag(group, "sags in time", bending.map(Bending::sagInTime));
        return group.done();
    }

    private void sag(Told.Filling group, String what, Optional<Figure<Length>> sag) {
        sag.ifPresentOrElse(
                known -> group.line(what, SagChecks.thousandths(known.value(), style), known),
                () -> group.line(what, NOT_KNOWN));
    }

    private Told onJoint(OnJoint on) {
        Told.Filling group = new Told.Filling("Hangs on " + on.joint(), style)
                .line("load", on.load())
                .line("fasteners that share it", on.fasteners() + "")
                .line("sideways on each", on.each());
        on.holds()
                .ifPresentOrElse(
                        holds -> group.line("one holds sideways", holds),
                        () -> group.line("one holds sideways", NOT_KNOWN + ": " + on.notHeld()));
        return group.done();
    }

    private Told bracket(Bracket bracket) {
        Told.Filling group = new Told.Filling("Brackets under " + bracket.on(), style)
                .line("load on all", bracket.load().in(style))
                .line("from the wall", bracket.out().in(style))
                .line(
                        "between upper and lower screws",
                        bracket.height().map(high -> high.in(style)).orElse(NOT_KNOWN))
                .line("brackets", bracket.count() + "")
                .asked("pull at each top screw", bracket.pull());
        bracket.pull()
                .map(Figure::value)
                .map(each -> each.times(bracket.count()))
                .ifPresent((Force all) -> group.line("at the top screws of all", all.in(style)));
        return group.asked("that screw holds", bracket.holds()).done();
    }

    private Told filled(Filled filled) {
        return new Told.Filling("%s holds %s".formatted(filled.part(), filled.what()), style)
                .line("volume", filled.volume().value().bulk(style), filled.volume())
                .asked("that weighs", filled.weight())
                .asked("filled it weighs", filled.together())
                .done();
    }

    private Told lifted(Lifted lifted) {
        Told.Filling group = new Told.Filling("Lifted with " + lifted.part(), style)
                .asked("weight", lifted.weight())
                .asked("balances from its left", lifted.fromLeft())
                .asked("balances from its front", lifted.fromFront())
                .asked("balances above its underside", lifted.up())
                .line("lifted by", lifted.people() == 1 ? "1 person" : lifted.people() + " people")
                .asked("the one with most holds", lifted.share());
        lifted.reach()
                .ifPresent(reach -> group.line("hands out from the ankles", reach.out())
                        .line("left for that", reach.outShare())
                        .line("left for the height of the hands", reach.heightShare())
                        .line("left for the way up", reach.wayShare()));
        return group.asked("they may lift", lifted.limit())
                .maybe("from the post, level", lifted.outOfPost())
                .maybe("tips about the post", lifted.tipping())
                .line(
                        "fixings before anybody lets go, each side",
                        lifted.holding().eachSide() + "")
                .done();
    }
}
