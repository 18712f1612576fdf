package org.kerfleaf.samples;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.kerfleaf.export.drawing.Lettering;
import org.kerfleaf.export.drawing.Measure;
import org.kerfleaf.export.drawing.Shown;
import org.kerfleaf.export.drawing.View;
import org.kerfleaf.export.drawing.ViewDrawing;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.sketch.Sketch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What the geometry of a build costs, warm: its solids and contacts, a dimensioned view of it, and the whole plan of a cabinet. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 2, time = 2)
@Fork(2)
public class GeometryBenchmark {
    /** A build of so many parts. */
    @State(Scope.Benchmark)
    public static class Build {
        @Param({"10", "60", "300"})
        int parts;
    }

    /** What the sample workbook's cells declare. */
    @State(Scope.Benchmark)
    public static class Cabinet {
        Sketch sketch;

        @Setup
        public void run() {
            sketch = Sample.CABINET.sketch();
        }
    }

    /** Every solid made, placed, and held against every other. */
    @Benchmark
    public List<Touching> solidsAndContacts(Build build) {
        return Touching.all(Bays.of(build.parts));
    }

    /** The same, and a front view with its overall sizes. */
    @Benchmark
    public List<Object> withADimensionedView(Build build) {
        List<PlacedSolid> solids = Bays.of(build.parts);
        List<Touching> contacts = Touching.all(solids);
        List<Shown> shown = solids.stream().map(s -> Shown.plain(s, "")).toList();
        Lettering words = new Lettering(List.of(), MeasureStyle.MILLIMETRES);
        return List.of(contacts, ViewDrawing.of(shown, View.FRONT, Measure.overall(shown), words, 180, 240));
    }

    /** From what the cells declare to everything that follows. */
    @Benchmark
    public Plan wholePlan(Cabinet cabinet) {
        return Planner.plan(cabinet.sketch, Sample.DAY);
    }
}
