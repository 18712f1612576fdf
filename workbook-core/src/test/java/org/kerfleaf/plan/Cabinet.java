package org.kerfleaf.plan;

import static org.kerfleaf.measure.LengthUnit.INCHES;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.sketch.Side.EAVES;
import static org.kerfleaf.sketch.Side.FRONT;
import static org.kerfleaf.sketch.Side.GABLES;
import static org.kerfleaf.sketch.Side.INSIDE;
import static org.kerfleaf.sketch.Side.LEFT;
import static org.kerfleaf.sketch.Side.OUTSIDE;
import static org.kerfleaf.sketch.Side.RIDGE;
import static org.kerfleaf.sketch.Side.RIGHT;
import static org.kerfleaf.sketch.Side.TOP;
import static org.kerfleaf.sketch.Way.LEFT_TO_RIGHT;
import static org.kerfleaf.words.Words.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Screw;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.SketchRun;
import org.kerfleaf.words.Gathering;

/** A cabinet like the sample's, said in the same words, so that the planner can be tried at many sizes without the kernel. */
final class Cabinet {
    Length width = Length.parse("22 in");
    Length depth = Length.parse("11 in");
    Length eaves = Length.parse("24 in");
    Angle slope = Angle.ofDegrees(30);
    Length overhang = Length.parse("2 in");
    Length doorWide = Length.parse("16 in");
    Length doorHigh = Length.parse("18 in");
    String caliper = "23/32 in";
    int gauge = 6;

    private final List<Object> values = new ArrayList<>();
    private int ordinal;

    private <T> T keep(T value) {
        values.add(value);
        return value;
    }

    private void step(int number) {
        SketchRun.current().at(++ordinal, ordinal * 10, number);
    }

    Sketch sketch() {
        return new SketchRun(Map.of()).doing(() -> {
            say();
            List<Sketch.Step> steps = new ArrayList<>();
            for (String title : List.of(
                    "Cut",
                    "Back and floor",
                    "Sides and shelves",
                    "Front",
                    "Paint inside",
                    "Paint outside",
                    "Door",
                    "Post",
                    "Mount")) {
                steps.add(new Sketch.Step(steps.size() + 1, title));
            }
            Gathering.Gathered gathered = Gathering.gather("A cabinet", steps, values);
            if (!gathered.problems().isEmpty()) {
                throw new AssertionError(gathered.problems());
            }
            return gathered.sketch();
        });
    }

    private void say() {
        keep(measureIn(INCHES));
        keep(pricesIn("USD", "2026-04-12"));
        Sheet ply = keep(sheet("exterior plywood", "48 in", "96 in")
                .soldAs("3/4 in")
                .measured(caliper)
                .costs("61.50"));
        Sheet clear = keep(sheet("acrylic", "32 in", "36 in").soldAs("1/8 in").costs("17.90"));
        Lumber post4 = keep(lumber("4x4").treated().lengths("8 ft").costs("14.60"));
        Lumber arm8 = keep(lumber("2x8").treated().lengths("8 ft").costs("11.20"));
        Lumber trim = keep(lumber("1x2").lengths("8 ft").costs("4.10"));
        Lumber angle = keep(moulding("aluminium ridge angle")
                .section("1/8 in", "4 in")
                .lengths("6 ft")
                .costs("7.80"));
        Screw screws = keep(woodScrew(gauge, "1 5/8 in").stainless().box(100).costs("9.40"));
        var glue = keep(woodGlue("exterior PVA").bottle("8 fl oz").costs("5.60"));
        var sealer =
                keep(caulk("paintable acrylic latex").cartridge("10.1 fl oz").costs("4.30"));
        var primer = keep(paint("exterior primer")
                .covers("350 sq ft", perGallon())
                .cans("1 qt")
                .costs("13.90"));
        var colour = keep(paint("exterior latex")
                .covers("350 sq ft", perGallon())
                .cans("1 qt")
                .costs("17.50"));
        keep(circularSaw()
                .kerf("1/8 in")
                .baseToBlade(LEFT, "1 1/2 in")
                .baseToBlade(RIGHT, "5 in")
                .trimsSheetBy("1/4 in"));
        Length t = ply.thickness();

        Part floor = keep(panel("Floor", ply)
                .wide(width)
                .deep(depth)
                .hole("left weep", round("3/8 in").from(LEFT, "2 in").from(FRONT, "1 in"))
                .hole("right weep", round("3/8 in").from(RIGHT, "2 in").from(FRONT, "1 in")));
        Part side = keep(panel("Side", ply)
                .deep(depth)
                .high(eaves)
                .sizedOn(OUTSIDE)
                .topRisesInward(slope)
                .pair());
        Part back = keep(panel("Back", ply)
                .wide(width.plus(t, t))
                .gable(eaves, slope)
                .hole("left vent", round("1 in").from(LEFT, "5 in").up("16 in"))
                .hole("right vent", round("1 in").from(RIGHT, "5 in").up("16 in")));
        Part front = keep(panel("Front", ply)
                .wide(width.plus(t, t))
                .gable(eaves, slope)
                .opening(
                        "doorway",
                        rectangle(doorWide, doorHigh).centred().up("3 in").rounded("1/4 in")));
        Part shelf = keep(panel("Shelf", ply).wide(width).deep("8 in"));
        Part roof = keep(panel("Roof", ply)
                .overGables(front, back)
                .past(EAVES, overhang)
                .past(GABLES, overhang)
                .meetsTwin(RIDGE)
                .pair());
        Part rake = keep(board("Rake trim", trim).along(roof.rake()).mitredAtRidge());
        Part eave = keep(board("Eave trim", trim).along(roof.eave()).coversEndsOf(rake));
        Part cap = keep(board("Ridge cap", angle).along(roof.ridge()).coversEndsOf(rake));
        Part door = keep(panel("Door", ply)
                .laps(front.opening("doorway"), "1 in")
                .opening("window", frame("2 1/2 in"))
                .rabbet(INSIDE, "window", wide("1/2 in"), deep("3/16 in")));
        Part pane = keep(
                pane("Pane", clear).fits(door.opening("window")).warmer("60 F").colder("60 F"));

        step(1);
        keep(cutAll());
        keep(takes("3 h"));
        step(2);
        var floorIn = keep(place(floor));
        var backIn = keep(place(back).behind(floorIn).flushAt(BOTTOM));
        keep(fasten(backIn).to(floorIn).glued(glue).screwed(screws, every("5 in")));
        keep(takes("25 min"));
        step(3);
        var sidesIn = keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
        var shelves = keep(place(shelf).above(floorIn, "5 in", "11 in").against(backIn));
        keep(fasten(sidesIn).to(floorIn).glued(glue).screwed(screws, every("5 in")));
        keep(fasten(backIn).to(sidesIn).glued(glue).screwed(screws, every("5 in")));
        keep(fasten(sidesIn, backIn).to(shelves).screwed(screws, every("5 in")));
        step(4);
        var frontIn = keep(place(front).inFrontOf(floorIn).flushAt(BOTTOM));
        keep(fasten(frontIn).to(floorIn, sidesIn).glued(glue).screwed(screws, every("5 in")));
        step(5);
        keep(seal(insideSeams()).with(sealer, bead("1/4 in")));
        keep(coat(insideFaces()).with(primer).with(colour, times(2)));
        step(6);
        var roofs = keep(place(roof).restsOn(frontIn, backIn, sidesIn).centredFrontToBack());
        keep(fasten(roofs).to(frontIn, backIn, sidesIn).glued(glue).screwed(screws, every("5 in")));
        var rakes = keep(place(rake).along(roofs));
        var eavesIn = keep(place(eave).along(roofs));
        keep(fasten(rakes, eavesIn)
                .to(roofs)
                .nailed(finishNail("1 1/2 in").stainless().box(50).costs("5.80"), every("6 in")));
        keep(place(cap).over(roofs));
        keep(coat(outsideFaces(), facesOf(door)).with(primer).with(colour, times(2)));
        step(7);
        var doorIn = keep(place(door).inFrontOf(frontIn).over("doorway"));
        keep(glaze(pane)
                .into(doorIn)
                .bedded(glazingTape("1/16 in").costs("6.20"))
                .held(beads("3/4 in").costs("3.60")));
        keep(fit(hinge("overlay").stainless().costs("4.75")).times(2).at(doorIn, LEFT));
        keep(fit(knob().through("3/16 in").costs("2.90")).at(doorIn, RIGHT));
        keep(fit(weatherstrip(wide("3/8 in"), thick("3/16 in"))
                        .squeezedTo("1/8 in")
                        .roll("10 ft")
                        .costs("5.40"))
                .around(doorIn, "doorway"));
        step(8);
        Part post = keep(board("Post", post4).cutTo("72 in"));
        Part arm = keep(board("Arm", arm8).cutTo("18 in"));
        Part seat = keep(board("Seat", arm8).cutTo("20 in"));
        var postIn = keep(place(post).standing());
        keep(dig(across("10 in"), deep("44 in"))
                .gravel("4 in")
                .bags("0.5 cu ft")
                .costs("5.20")
                .frost("36 in")
                .forPost(postIn));
        keep(site().besidePath("24 in"));
        step(9);
        var armsIn =
                keep(place(arm).running(LEFT_TO_RIGHT).frontAndBackOf(postIn).flushAt(TOP));
        keep(fasten(armsIn)
                .to(postIn)
                .bolted(carriageBolt("3/8 in").hotDipGalvanised().costs("2.70"))
                .times(2));
        var seatIn =
                keep(place(seat).running(LEFT_TO_RIGHT).flat().onTopOf(armsIn).centred());
        keep(fasten(seatIn)
                .to(armsIn)
                .screwed(woodScrew(10, "3 in").stainless().costs("0.55"))
                .times(4));
        keep(mount(floorIn).onTopOf(seatIn).centred());
        keep(fasten(floorIn)
                .to(seatIn)
                .screwed(woodScrew(10, "2 in").stainless().costs("0.40"))
                .times(4));
        keep(needsPeople(2));
        keep(boughtKit("A ready-made cabinet").costs("199.00").freight("74.00").lacks("post", "paint"));
    }
}
