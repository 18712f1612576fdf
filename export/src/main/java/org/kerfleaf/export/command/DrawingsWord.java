package org.kerfleaf.export.command;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.kerfleaf.export.booklet.Paper;
import org.kerfleaf.export.command.Planned.Made;
import org.kerfleaf.export.drawing.DrawingSheet;
import org.kerfleaf.export.drawing.Drawings;
import org.kerfleaf.plan.Plan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "drawings",
        header = "Keep every drawing of the build as a file of its own: views, slice, taken apart, steps.",
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {"0:if the drawings are kept", "2:if the workbook does not run or they cannot be kept"})
final class DrawingsWord extends Word {
    private static final double DOTS_PER_INCH = 200;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where to. Without it, a folder NAME-drawings in this folder; it is made if it is not there.")
    private String out;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            description = "What they are to fit on. Without it, letter for inches and a4 for millimetres.")
    private String paper;

    @Option(names = "--png", description = "Keep them as PNG at 200 dots to the inch instead of SVG.")
    private boolean png;

    DrawingsWord(Bench bench) {
        super(bench);
    }

    @Override
    void checkArguments() {
        PaperSaid.check(paper);
    }

    @Override
    int with(Made made) {
        Plan plan = made.plan();
        Paper sheet = PaperSaid.of(paper, plan.style().unit()) == BookletWriter.Format.A4 ? Paper.A4 : Paper.LETTER;
        List<Drawings.Named> drawings = Drawings.of(plan).all();
        if (drawings.isEmpty()) {
            throw new Refused("There is nothing to draw yet: no part has a place. Say where with place(…).");
        }
        String ending = png ? ".png" : ".svg";
        Map<String, Consumer<OutputStream>> files = new LinkedHashMap<>();
        for (Drawings.Named drawing : drawings) {
            DrawingSheet one = DrawingSheet.of(plan, drawing, sheet.measure(), sheet.usable());
            files.put(drawing.name().replace(' ', '-') + ending, to -> write(one, to));
        }
        KeptFolder.keep(
                bench(),
                out,
                WorkbookFile.name(arguments().file(bench())) + "-drawings",
                ending,
                files,
                Drawings::isOurs);
        return ExitStatus.FINE;
    }

    private void write(DrawingSheet drawing, OutputStream to) {
        if (png) {
            drawing.png(DOTS_PER_INCH, to);
            return;
        }
        try {
            to.write(drawing.svg().getBytes(StandardCharsets.UTF_8));
        } catch (IOException failed) {
            throw new UncheckedIOException("The drawing could not be written.", failed);
        }
    }
}
