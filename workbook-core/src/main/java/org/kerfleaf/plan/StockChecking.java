package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.SealChecks;
import org.kerfleaf.rules.StockChecks;
import org.kerfleaf.rules.WoodChecks;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.sketch.Caulk;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Saw;
import org.kerfleaf.sketch.Seal;
import org.kerfleaf.sketch.Sheet;

/** Whether what is bought is what the plan takes it for, and stands where it will stand. */
final class StockChecking {
    private final Planned planned;

    StockChecking(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        for (Sheet sheet : planned.sketch().all(Sheet.class)) {
            List<PlannedPart> from = from(sheet.name());
            boolean panels = from.stream().anyMatch(p -> p.kind() == PartKind.PANEL);
            if (panels) {
                checks.add(StockChecks.thicknessMeasured(
                        sheet.name(), sheet.soldAs(), sheet.measured(), sheet.surface(), planned.style()));
                checks.add(widest(sheet, from));
                checks.add(WoodChecks.exposedSheet(sheet.name(), sheet.bond().map(b -> b.words())));
            }
        }
        checks.addAll(equalPieces());
        boolean painted = !planned.sketch().all(Coat.class).isEmpty();
        planned.sketch().all(Seal.class).stream()
                .flatMap(seal -> seal.caulk().stream())
                .map(Caulk::name)
                .distinct()
                .forEach(caulk -> checks.add(SealChecks.caulkUnderPaint(caulk, painted, planned.style())));
        planned.siting().hole().ifPresent(hole -> checks.addAll(nearTheGround()));
        for (Lumber lumber : planned.sketch().all(Lumber.class)) {
            if (lumber.preserved() && !from(lumber.name()).isEmpty()) {
                checks.add(WoodChecks.cutTreatedWood(lumber.name(), namesOf(lumber), uncoated(lumber)));
            }
        }
        return checks;
    }

    private List<PlannedPart> from(String stock) {
        return planned.parts().stream().filter(p -> p.stock().equals(stock)).toList();
    }

    /** The part that takes most of a sheet's width or length. */
    private Check widest(Sheet sheet, List<PlannedPart> parts) {
        Length trims = planned.sketch().all(Saw.class).stream()
                .map(Saw::trims)
                .findFirst()
                .orElse(Length.ZERO)
                .times(2);
        PlannedPart tightest = parts.get(0);
        Length least = null;
        boolean across = true;
        for (PlannedPart part : parts) {
            Length left = sheet.width().minus(part.width().value());
            Length leftLong = sheet.length().minus(part.length().value());
            Length smaller = left.min(leftLong);
            if (least == null || smaller.isShorterThan(least)) {
                least = smaller;
                tightest = part;
                across = !leftLong.isShorterThan(left);
            }
        }
        return StockChecks.fullWidthPart(
                tightest.name(),
                across ? tightest.width().value() : tightest.length().value(),
                across ? sheet.width() : sheet.length(),
                trims,
                planned.style());
    }

    /** Boards cut into pieces of one length, and boards that would give one piece more if a saw cut nothing away. */
    private List<Check> equalPieces() {
        boolean kerf = planned.sketch().all(Saw.class).stream()
                .anyMatch(saw -> saw.kerf().isPresent());
        Map<String, Check> checks = new LinkedHashMap<>();
        for (PlannedPart part : planned.parts()) {
            if (part.kind() != PartKind.BOARD || part.count() < 2) {
                continue;
            }
            if (!kerf) {
                checks.put(part.name(), StockChecks.equalPiecesNotKnown(part.name(), planned.style()));
            }
            for (BoardLayout layout : planned.stocking().boards()) {
                equalPieces(part, layout).ifPresent(check -> checks.putIfAbsent(part.name() + layout.board(), check));
            }
        }
        return List.copyOf(checks.values());
    }

    private Optional<Check> equalPieces(PlannedPart part, BoardLayout layout) {
        Length length = part.length().value();
        int there = (int) layout.placements().stream()
                .filter(p -> p.part().equals(part.name()))
                .count();
        int hoped = (int) Math.min(part.count(), layout.board().usable().dividedBy(length));
        boolean alone = there > 1 && there == layout.placements().size();
        if (there == 0 || !alone && hoped <= there) {
            return Optional.empty();
        }
        Check check = StockChecks.equalPieces(
                part.name(),
                Math.max(there, hoped),
                length,
                layout.board().usable(),
                layout.board().kerf(),
                planned.style());
        return Optional.of(check).filter(c -> alone || c.verdict() == Check.Verdict.SHORT);
    }

    /** Every placed part against the ground: what stands in it is treated, what is not stays well above. */
    private List<Check> nearTheGround() {
        List<Check> checks = new ArrayList<>();
        Optional<Piece> lowestUntreated = Optional.empty();
        for (Piece piece : planned.assembly().all()) {
            Optional<Lumber> lumber = planned.sketch()
                    .part(piece.part())
                    .flatMap(p -> planned.sketch().lumber(p.stock()));
            boolean treated = lumber.map(Lumber::preserved).orElse(false);
            Length low = piece.box().low(Axis.Z);
            if (low.isNegative()) {
                checks.add(WoodChecks.groundContact(piece.part(), treated));
            } else if (!treated
                    && lowestUntreated
                            .map(p -> low.isShorterThan(p.box().low(Axis.Z)))
                            .orElse(true)) {
                lowestUntreated = Optional.of(piece);
            }
        }
        lowestUntreated.ifPresent(
                p -> checks.add(WoodChecks.aboveSoil(p.part(), p.box().low(Axis.Z), planned.style())));
        return checks;
    }

    private List<String> namesOf(Lumber lumber) {
        return from(lumber.name()).stream().map(PlannedPart::name).toList();
    }

    private List<String> uncoated(Lumber lumber) {
        List<String> coated = planned.sketch().all(Coat.class).stream()
                .flatMap(coat -> coat.faces().stream())
                .filter(faces -> faces.which().holdsEnds())
                .flatMap(faces -> faces.part().stream())
                .toList();
        return namesOf(lumber).stream().filter(name -> !coated.contains(name)).toList();
    }
}
