package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.joint.GluedJoint;
import org.kerfleaf.joint.SettingWords;
import org.kerfleaf.plan.FastenedAlike;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.site.SitePlan;

/** How the joints of a step are fastened: what to drill, how far it reaches, what one holds. */
final class FasteningTable {
    private FasteningTable() {}

    /** Empty for a step that fastens nothing. */
    static Optional<Block> of(Plan plan, int step) {
        List<FastenedAlike> alike = plan.fastening().alike().stream()
                .filter(one -> one.step() == step)
                .toList();
        List<GluedJoint> glued = plan.fastening().glued().stream()
                .filter(one -> one.step() == step)
                .toList();
        if (alike.isEmpty() && glued.isEmpty()) {
            return Optional.empty();
        }
        SettingWords words = new SettingWords(plan.style());
        Table table = new Table(
                        Column.share("Fasten", 1),
                        Column.share("Drill", 1),
                        Column.share("Reach", 0.7),
                        Column.share("One holds", 1.2))
                .tight();
        for (FastenedAlike one : alike) {
            table.row(
                    Cell.text(one.contact() + ": " + one.count() + " × " + one.fastener()),
                    Cell.text(words.holes(one.setting())),
                    Cell.text(words.reach(one.setting())),
                    Cell.text(words.bothWays(one.setting())));
        }
        boolean loads = alike.stream().anyMatch(one -> SettingWords.tellsAForce(one.setting()));
        Block note = loads
                ? Paragraph.of(SettingWords.LOADS + " " + SitePlan.DEFERS, Style.CAPTION.in(Ink.GRAPHITE), 1.3, 1)
                : Block.space(0);
        List<Block> more = new ArrayList<>();
        glued.forEach(one -> more.add(Paragraph.of(
                Rich.of("Glue, " + one.joint() + ": ", Style.LABEL_SEMI).plus(words.glued(one) + ".", Style.LABEL),
                Style.LABEL,
                1.3,
                1)));
        List<Block> chosen = plan.fastening().choices().stream()
                .filter(choice ->
                        plan.fastened(step).stream().anyMatch(f -> f.joint().equals(choice.joint())))
                .<Block>map(choice -> Paragraph.of(words.chosen(choice), Style.LABEL, 1.3, 1))
                .toList();
        more.addAll(chosen);
        return Optional.of(new Block() {
            private Block all(double width) {
                return Block.stack(broken(width));
            }

            @Override
            public List<Block> broken(double width) {
                List<Block> parts = new ArrayList<>();
                List<Block> rows = table.blocks(width);
                for (int i = 0; i < rows.size(); i++) {
                    parts.add(
                            i > 0
                                    ? rows.get(i)
                                    : Block.stack(List.of(Block.space(1.5), table.head(width), rows.get(i))));
                }
                parts.add(note);
                parts.addAll(more);
                parts.add(Block.space(1.5));
                return parts;
            }

            @Override
            public double height(double width) {
                return all(width).height(width);
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                all(width).paint(ink, x, y, width);
            }
        });
    }
}
