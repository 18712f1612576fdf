package org.kerfleaf.export.terminal;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.saw.SawKind;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.saw.SawSetting.Guide;
import org.kerfleaf.saw.SawSetting.Straightedge;

/** A card for every set-up of every saw: what is cut, what is set, what to watch. */
final class SawSection {
    private static final String INSET = "    ";

    private final Plan plan;
    private final MeasureStyle style;

    private SawSection(Plan plan) {
        this.plan = plan;
        this.style = plan.style();
    }

    static Section of(Plan plan) {
        int count = plan.sawSettings().size();
        return new Section(
                "Saw settings",
                Words.counted(count, "setting") + ", each made once; angles from square",
                count > 0,
                new SawSection(plan)::cards);
    }

    private void cards(Page page) {
        page.paragraph("Make a test cut in scrap before every setting.");
        for (int at = 0; at < plan.sawSettings().size(); at++) {
            SawSetting setting = plan.sawSettings().get(at);
            page.blank();
            page.hanging(
                    "%2d  ".formatted(at + 1),
                    "%s, %s: %s".formatted(setting.saw(), String.join(" ", setting.parts()), setting.cut()));
            page.hanging(INSET, main(setting));
            numbers(page, setting);
            if (!setting.guides().isEmpty()) {
                guides(page, setting);
            }
            if (!setting.notes().isEmpty()) {
                page.hanging(INSET, setting.notes());
            }
            why(page, setting);
        }
    }

    /** {@code scale 35°, tilt 0°, 31/32 in deep, good face up}. */
    private String main(SawSetting setting) {
        List<String> words = new ArrayList<>();
        setting.scale().ifPresent(scale -> words.add("scale " + scale.value().in(style)));
        if (!setting.saw().equals(SawKind.ROUTER.words())) {
            words.add("tilt " + setting.tilt().value().in(style));
        }
        setting.bladeDepth()
                .ifPresent(depth -> words.add("blade depth " + depth.value().in(style)));
        words.add(setting.faceUp());
        return String.join(", ", words);
    }

    private void numbers(Page page, SawSetting setting) {
        Grid grid = new Grid().words("").words("").words("");
        for (Straightedge edge : setting.straightedge()) {
            grid.row(
                    Cell.of("  "),
                    Cell.of("straightedge from the line, " + edge.where()),
                    Cell.of(edge.distance().value().in(style)));
        }
        for (Reading reading : setting.set()) {
            grid.row(Cell.of("  "), Cell.of(reading.what()), Cell.of(reading.in(style)));
        }
        page.gridWithoutHead(grid);
    }

    /** Each size the sheets are cut to, once. */
    private void guides(Page page, SawSetting setting) {
        List<String> ways =
                setting.straightedge().stream().map(Straightedge::brief).toList();
        page.blank();
        page.hanging(
                INSET,
                ways.isEmpty()
                        ? "Cuts of the sheets, by the size to set:"
                        : "Cuts of the sheets: the line, and the straightedge, both from the edge of the piece in hand:");
        Grid grid = new Grid().words("  ").tape("Line").words("Cuts");
        ways.forEach(grid::tape);
        for (Guide guide : setting.guides()) {
            List<Cell> row =
                    new ArrayList<>(List.of(Cell.EMPTY, Cell.of(guide.set(), style), Cell.of(guide.cutWords())));
            for (String way : ways) {
                row.add(guide.straightedge().stream()
                        .filter(edge -> edge.brief().equals(way))
                        .findFirst()
                        .map(edge -> Cell.of(edge.distance().value(), style))
                        .orElse(Cell.of("–")));
            }
            grid.row(row.toArray(Cell[]::new));
        }
        page.grid(grid);
        if (!setting.notes().isEmpty()) {
            page.blank();
        }
    }

    private void why(Page page, SawSetting setting) {
        page.why("tilt", setting.tilt());
        page.why("scale", setting.scale());
        page.why("blade", setting.bladeDepth());
        setting.straightedge().forEach(edge -> page.why("straightedge, " + edge.where(), edge.distance()));
        setting.set().forEach(reading -> page.why(reading.what(), reading.value()));
        for (Guide guide : setting.guides()) {
            guide.straightedge()
                    .forEach(edge -> page.why(
                            "straightedge for %s, %s".formatted(guide.set().in(style), edge.brief()), edge.distance()));
        }
    }
}
