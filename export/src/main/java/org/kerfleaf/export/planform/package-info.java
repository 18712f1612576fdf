/**
 * The plan as JSON, a stable form for other programs. Start at {@link org.kerfleaf.export.planform.PlanForm}.
 *
 * <p>The form, version 1:
 *
 * <ul>
 *   <li><b>Lengths</b> are numbers in millimetres, exact to the nanometre, without an exponent ({@code 18.25625}); areas
 *       are square millimetres, volumes millilitres, masses grams, angles degrees, work minutes, shares numbers from 0 to 1.
 *       The workbook's own unit stands at the top as {@code units} and changes no number.
 *   <li><b>Money</b> is a number with exactly the decimal places its currency has ({@code 34.50}). All money is in the
 *       one currency named at the top as {@code currency} (ISO 4217; {@code XXX} if the
 *       workbook says none). Read it as a decimal, not as a binary fraction.
 *   <li><b>What is not known</b> is {@code null}; the member is there. Days are ISO 8601 ({@code 2026-04-12}).
 *   <li><b>Order</b> is that of the plan and of this list, always the same.
 * </ul>
 *
 * <p>Members at the top: {@code workbook} (the title), {@code units} ({@code in} or {@code mm}), {@code sizes},
 * {@code parts}, {@code sheets}, {@code boards}, {@code bounds}, {@code sawSettings}, {@code hardware}, {@code fastened}, {@code chosen}
 * (screws chosen from a drawer, and why each other one was not: {@code joint}, {@code screw}, whether it {@code suits}, {@code length}, {@code refused}, and if none suits what
 * {@code wouldSuit}),
 * {@code glued} (each glued joint: {@code area}, {@code grams}, {@code closing} and {@code openFor} in minutes, {@code clamps}),
 * {@code movement} (each board that moves across its grain: {@code wood}, {@code rings}, {@code width}, moistures {@code now}, {@code driest}
 * and {@code dampest} in percent, {@code coefficient}, {@code shrinkage} in percent, what it is wider {@code atDriest} and
 * {@code atDampest}, below zero narrower, and the {@code gap} beside it, {@code now}, {@code whenDriest}, {@code whenDampest}),
 * {@code hung} (each door or lid: its {@code hinges}, the same {@code onCarcass} and its {@code catches}, each {@code at} so far
 * {@code from} the end named; its {@code edges}, each with the {@code size} of the gap beside it if it is {@code inset}, else of the
 * lap; {@code room}: the {@code gap} away from the hinges, what {@code film} and {@code swelling} take of it and what is {@code left};
 * what lies {@code under} its swing; {@code standOff}, {@code knobHole}, {@code backset}), {@code panes} (pocket, cut, bite when cold, what
 * {@code fills} the rabbet's {@code deep}, {@code lip}, lengths of beads at the long point),
 * {@code finish} (what is needed and bought, what is {@code left} over, and how far one pack {@code goes}: an area in one coat or joint, or
 * the length of a bead, nothing wasted), {@code paintwork},
 * {@code cost}, {@code checks}, {@code steps}, {@code schedule}, {@code buying}, {@code site} (an empty object if nothing stands in the
 * ground), {@code rain} (an empty object if none falls), {@code cautions}; then {@code day}, {@code currency}, {@code pricesOf}, {@code overall}, {@code chains},
 * {@code weight}, {@code problems} and {@code form} (the version's number).
 *
 * <p>{@code chains}: for each build, from 0, and each {@code axis} ({@code x} to the right, {@code y} to the back, {@code z}
 * up) the pieces that touch one after the other, {@code {"build", "first", "axis", "links": [{"part", "letter", "size"}],
 * "overall", "lacks", "closes", "held": [{"size", "value", "span"}]}}; {@code first} is the part the build begins with,
 * {@code held} the maker's sizes that a span of the chain is as long as.
 *
 * <p>{@code schedule}: {@code {"work", "stepsWithoutTime", "ahead", "course"}}; {@code course} is {@code null} without steps, else {@code
 * {"finish", "alone", "ready", "critical", "notKnown", "steps": [{"step", "start", "end", "slack", "first": [{"step", "wait",
 * "because"}]}], "days": [{"step", "from", "to", "ends"}]}}. All times are minutes, counted from the first work; {@code alone} is
 * for one pair of hands, {@code finish} for as many as may work at once. {@code from} and {@code to} are ISO 8601 local times.
 *
 * <p>{@code rain}: what rain finds on the finished build, {@code {"limits", "marks": [{"number", "kind", "parts", "where", "length",
 * "words", "advice", "at": [{"point"}]}]}}; {@code number} is the mark's in the drawing {@code rain}, {@code advice} is empty where the
 * workbook already does something about it.
 *
 * <p>{@code paintwork}: {@code {"faces": [{"part", "face", "step", "pieces", "area", "coats", "with"}], "order": [{"part", "face",
 * "closedIn", "by", "painted", "inTime"}], "bare": [{"part", "face", "painted", "glued", "to", "area", "across", "masked"}]}}: what
 * is coated; the step after which no brush comes to a face, what closes it and the step it is painted in ({@code null} if no coat
 * comes to it); and faces that are glued after their piece was painted. Steps are 0 above the first.
 *
 * <p>Where sizes were tried there is one more member, {@code changes}: everything that is otherwise than in the workbook as
 * written, {@code {"topic", "subject", "aspect", "before", "after"}}. {@code aspect} is empty for the thing itself; {@code
 * before} is {@code null} for what appeared, {@code after} for what went; what is no measure and no count, money too, is in
 * words.
 *
 * <p>{@code fastened} has a member for every contact that fasteners are driven through: {@code step}, {@code joint},
 * {@code fastener}, {@code count}, {@code setting} (how each is set: {@code in} what it holds, holes, {@code sunk} and
 * {@code head} of the countersink, {@code reach}, the same in {@code diameters}, {@code tip} (wood beyond it), {@code thread} in the
 * second part, {@code gravity} of its wood, {@code holds} against a straight pull and {@code holdsDamp}, both in newtons,
 * {@code notHeld} why that is not known, {@code note} that the load is an estimate), {@code nearest} ({@code end},
 * {@code edge}, {@code row}: how near one stands), {@code through} and each of {@code into} as {@code part} and {@code piece} (from 1, in the
 * order of placing), {@code moved} (how far the row went along the contact so that no two meet), and {@code driven}, each with
 * {@code head} (on the face it is driven from) and {@code tip} as {@code [x, y, z]}: x to the right, y to the back, z up.
 *
 * <p>{@code site}, empty where nothing is dug in: {@code hole}, {@code gravel}, {@code spoil}, heights above the ground, and
 * {@code filling} ({@code with}, {@code volume}, {@code bags} or {@code lifts}, {@code toPutSomewhere}). {@code wind} on the box and
 * {@code windOnAll} on everything above the ground: {@code pressure} in pascals at strength level, {@code push} in newtons at allowable
 * stress level, {@code moment} in newton metres, {@code depth} and {@code depthBearingDoubled} of the post, {@code null} beyond 12 ft or
 * where the ground is not known.
 *
 * <p>{@code buying}: {@code sheets} (what each may measure and be what its label says: {@code thinnest}, {@code thickest}, {@code shortest},
 * {@code narrowest}, how far its {@code diagonals} may differ), {@code boards} (each length bought in {@code boardFeet}) and {@code home},
 * {@code null} if no vehicle was said: its {@code loads}, equal ones once, with {@code which} layouts they are of (from 1), how each {@code
 * goes}, the {@code cuts} to ask the shop for ({@code at} from the factory edge, {@code cut} its number in the layout) and the
 * {@code pieces} they leave; {@code instead}: stocks of which one is bought, each with whether it {@code fits} and what the whole
 * plan comes to with it ({@code bought}, {@code price} of these, cost of {@code all}, {@code sag} of the part that {@code sags} most, how much the one that {@code moves} most across its grain does).
 *
 * <p>{@code loads}: {@code contents} (things on a part, how many on {@code each} piece of it, and each way the clear size they
 * {@code need} and what is {@code there}, {@code null} where it is open), {@code snow} ({@code pressure} in pascals, and what each
 * roof or lid {@code carried}; {@code null} if no snow was said), {@code carried} ({@code load} in grams over {@code area}; {@code bending} with the {@code section} of one piece, {@code stiffness} in pascals,
 * {@code sag} and {@code sagInTime}, and of each of the usual {@code limits} what it {@code allowed} and the {@code longest} span) and
 * {@code lifted} ({@code weight}, where it balances, the {@code limit} of the people who lift it,
 * {@code tipping} about the post in newton metres). What is not known is {@code null}.
 *
 * <p>With reasons there is one more member, {@code reasons}: from the place of a figure in this document, written as a JSON
 * Pointer (RFC 6901, {@code /parts/0/length}), to {@code {"because", "given": [{"name", "value"}], "source"}}. The given
 * values are words in the workbook's unit. All other members are the same with and without reasons.
 */
package org.kerfleaf.export.planform;
