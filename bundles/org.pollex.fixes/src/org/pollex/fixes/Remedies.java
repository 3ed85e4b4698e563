/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.fixes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.pollex.edit.AddSideCommand;
import org.pollex.edit.Arrange;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.geometry.placement.Fit;
import org.pollex.geometry.placement.LargestPlacement;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;
import org.pollex.print.Printed;
import org.pollex.print.PrintedMark;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Finding;
import org.pollex.rules.Fixes;
import org.pollex.rules.SideFit;
import org.pollex.rules.Suite;

/**
 * What can be done about the findings of one design. Answers with commands over the design; changes nothing itself.
 *
 * <p>Where art is moved or scaled for one place, the marks that print at that place go along, the others stay. What
 * would not fit the safe zone is refused, with the size that would.
 */
public final class Remedies {

    /** A hair inside what fits exactly, so that rounding never crosses the edge. */
    static final double KEEP = 1e-6;
    /** A hair over the limit, so that the mended place passes. */
    private static final double OVER = 1.002;

    /** Remedies that place everything on a side. */
    private static final List<String> WHOLE_SIDE = List.of(Fixes.PLACE_LARGEST, Fixes.BEST_TURN, Fixes.MOVE_PROPOSED);

    private static final Map<String, String> LABELS = labels();

    private final Suite suite;
    private final Design design;
    private final Printed printed;
    private final UnaryOperator<EObject> original;

    /**
     * Remedies for a design.
     *
     * @param printed  the print of the design as it is now; it may be of a copy with the same ids
     */
    public Remedies(Suite suite, Design design, Printed printed) {
        this(suite, design, printed, UnaryOperator.identity());
    }

    /**
     * Remedies for a design that is open, found in the background: only the copy is read, and the commands change the
     * original. They may be done as long as the original is as it was when it was copied.
     *
     * @param copy      a copy of the design
     * @param printed   the print of the copy, or of another copy with the same ids
     * @param original  what an element of the copy was copied from
     */
    public Remedies(Suite suite, Design copy, Printed printed, UnaryOperator<EObject> original) {
        this.suite = suite;
        this.design = copy;
        this.printed = printed;
        this.original = original;
    }

    /** The element that commands are to change. */
    @SuppressWarnings("unchecked")
    private <T extends EObject> T original(T each) {
        return (T) original.apply(each);
    }

    private static Map<String, String> labels() {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put(Fixes.PLACE_LARGEST, "Place as large as fits");
        labels.put(Fixes.BEST_TURN, "Turn to where most fits");
        labels.put(Fixes.MOVE_INTO_SAFE, "Move into the safe zone");
        labels.put(Fixes.MOVE_TO_OTHER_SIDE, "Move to the other side");
        labels.put(Fixes.MOVE_PROPOSED, "Move the proposed marks to the other side");
        labels.put(Fixes.SCALE_UP, "Scale up to the limit");
        labels.put(Fixes.NEAREST_INK, "Choose the nearest ink");
        labels.put(Fixes.DROP_SPECKS, "Leave specks out");
        return labels;
    }

    /** What a remedy is called; its id when it has no name. */
    public static String label(String remedy) {
        return LABELS.getOrDefault(remedy, remedy);
    }

    /** What a remedy comes to for a finding. */
    public Remedy apply(String remedy, Finding finding) {
        try {
            return switch (remedy) {
                case Fixes.PLACE_LARGEST -> largest(finding, OptionalDouble.of(0));
                case Fixes.BEST_TURN -> largest(finding, OptionalDouble.empty());
                case Fixes.MOVE_INTO_SAFE -> moveIntoSafe(finding);
                case Fixes.MOVE_TO_OTHER_SIDE -> toOtherSide(finding);
                case Fixes.MOVE_PROPOSED -> new SplitRemedy(suite, design, printed, original).moved(finding);
                case Fixes.SCALE_UP -> scaleUp(finding);
                case Fixes.NEAREST_INK -> new InkRemedy(suite, design, printed, original).nearest(finding);
                case Fixes.DROP_SPECKS -> new SpeckRemedy(printed, original).leaveOut(finding, marks(finding));
                default -> new Remedy.Refused("This installation does not know the remedy " + remedy + ".");
            };
        } catch (IllegalArgumentException e) {
            return new Remedy.Refused("The art here is too thin to be placed by itself; move it by hand.");
        }
    }

    /**
     * One remedy for many findings, as one step of undo. A place mended twice is mended once: findings on marks that
     * an earlier one moved already are passed over.
     */
    public Remedy applyAll(String remedy, List<Finding> findings) {
        CompoundCommand all = new CompoundCommand(label(remedy));
        List<Object> touched = new ArrayList<>();
        String why = "There is nothing to mend.";
        // a mark is mended once, so by the finding that needs most
        List<Finding> worst = new ArrayList<>(findings);
        worst.sort(Comparator.comparingDouble(each -> -need(each)));
        for (Finding finding : worst) {
            List<Object> keys = new ArrayList<>(marks(finding));
            keys.add(WHOLE_SIDE.contains(remedy) ? finding.side()
                    : remedy.equals(Fixes.NEAREST_INK) ? finding.region() : finding);
            if (keys.stream().anyMatch(touched::contains)) {
                continue;
            }
            Remedy one = apply(remedy, finding);
            if (one instanceof Remedy.Done done) {
                all.add(done.command());
                touched.addAll(keys);
            } else if (one instanceof Remedy.Refused refused) {
                why = refused.why();
            }
        }
        return all.isEmpty() ? new Remedy.Refused(why) : new Remedy.Done(all.unwrap(), label(remedy) + ".");
    }

    private static double need(Finding finding) {
        return finding.measured().isPresent() && finding.limit().isPresent() && finding.measured().getAsDouble() > 0
                ? finding.limit().getAsDouble() / finding.measured().getAsDouble() : 0;
    }

    private Optional<Side> side(String name) {
        return design.getSides().stream().filter(each -> name.equals(each.getName())).findFirst();
    }

    /** The marks of the design that print where a finding is; all of the side when none can be told. */
    private List<Mark> marks(Finding finding) {
        List<Mark> all = new ArrayList<>();
        side(finding.side()).ifPresent(each -> each.getLayers().forEach(layer -> all.addAll(layer.getMarks())));
        List<String> there = new ArrayList<>();
        for (PrintedMark mark : printedMarks(finding.side())) {
            if (mark.id().equals(finding.region()) || !finding.where().isEmpty()
                    && DistanceOp.isWithinDistance(mark.area(), finding.where(), 0.01)) {
                there.add(mark.id());
            }
        }
        List<Mark> marks = all.stream().filter(each -> there.contains(each.getId())).toList();
        return marks.isEmpty() ? all : marks;
    }

    private List<PrintedMark> printedMarks(String side) {
        return printed.side(side).map(PrintedSide::marks).orElse(List.of());
    }

    private Geometry area(String side, List<Mark> marks) {
        List<Geometry> areas = printedMarks(side).stream()
                .filter(each -> marks.stream().anyMatch(mark -> each.id().equals(mark.getId())))
                .map(PrintedMark::area).toList();
        return printed.item().face(side).orElseThrow().safe().getFactory().buildGeometry(areas);
    }

    private Remedy largest(Finding finding, OptionalDouble turn) {
        Optional<Side> side = side(finding.side());
        Optional<SideFit> found = suite.fit(printed, finding.side(), turn);
        if (side.isEmpty() || found.isEmpty()) {
            return new Remedy.Refused("Nothing is printed on this side.");
        }
        Fit fit = found.get().fit();
        Fit kept = new Fit(fit.scale() * (1 - KEEP), fit.dx(), fit.dy(), fit.turn(), fit.contacts(), fit.certified(),
                fit.upperBound());
        String label = turn.isPresent() ? "Place as large as fits" : "Turn to where most fits";
        CompoundCommand all = new CompoundCommand(label);
        for (SideFit.Moved moved : new SideFit(finding.side(), kept, 0, 0).moved(side.get())) {
            all.add(new PlaceMarkCommand(label, original(moved.mark()), new Pose(moved.x(), moved.y(), moved.scale(),
                    moved.turn(), moved.mark().isMirror())));
        }
        return new Remedy.Done(all.unwrap(), String.format(java.util.Locale.ROOT,
                "Everything on the %s is placed at %.0f %% of its size, turned by %.0f degrees.", finding.side(),
                kept.scale() * 100, kept.turn()));
    }

    private Remedy moveIntoSafe(Finding finding) {
        List<Mark> marks = marks(finding);
        ItemFace face = printed.item().face(finding.side()).orElseThrow();
        Fit fit = LargestPlacement.in(face.safe()).at(area(finding.side(), marks), 0);
        if (fit.scale() < 1) {
            return new Remedy.Refused(String.format(java.util.Locale.ROOT,
                    "The art is too large for the safe zone: only %.0f %% of its size would fit; place it as large as "
                    + "fits instead.", Math.floor(fit.scale() * 100)));
        }
        Coordinate shift = shortest(face, fit, 1);
        CompoundCommand all = new CompoundCommand("Move into the safe zone");
        marks.forEach(mark -> all.add(new PlaceMarkCommand("Move into the safe zone", original(mark),
                Pose.of(mark).moved(shift.x, shift.y))));
        return new Remedy.Done(all.unwrap(), String.format(java.util.Locale.ROOT, "Moved by %.1f mm.",
                Math.hypot(shift.x, shift.y)));
    }

    /**
     * A short move that brings art into the zone at a scale below the largest. Where the largest placement takes p to
     * {@code s p + d}, shrinking it about a point c of a convex zone keeps it inside: {@code f p + c (1 - f/s) + d f/s}
     * for a factor f. The c that moves least is taken, as far as the zone holds it.
     */
    private static Coordinate shortest(ItemFace face, Fit fit, double factor) {
        double s = fit.scale() * (1 - KEEP);
        double rest = 1 - factor / s;
        if (rest < 1e-9) {
            return new Coordinate(fit.dx(), fit.dy());
        }
        Coordinate ideal = new Coordinate(-fit.dx() * factor / s / rest, -fit.dy() * factor / s / rest);
        Coordinate c = DistanceOp.nearestPoints(face.safe(), face.safe().getFactory().createPoint(ideal))[0];
        return new Coordinate(c.x * rest + fit.dx() * factor / s, c.y * rest + fit.dy() * factor / s);
    }

    private Remedy toOtherSide(Finding finding) {
        List<String> faces = printed.item().faces().stream().map(ItemFace::name).toList();
        Optional<String> other = faces.stream().filter(each -> !each.equals(finding.side())).findFirst();
        if (other.isEmpty()) {
            return new Remedy.Refused("This product is printed on one side only.");
        }
        List<Mark> marks = marks(finding);
        if (marks.isEmpty()) {
            return new Remedy.Refused("There is no art here to move.");
        }
        Design whole = original(design);
        List<Mark> moved = marks.stream().map(this::original).toList();
        Command all = new Later("Move to the other side", () -> toSide(whole, other.get(), moved));
        return new Remedy.Done(all, marks.size() == 1 ? "Moved to the " + other.get() + "."
                : marks.size() + " marks moved to the " + other.get() + ".");
    }

    /** Moves marks to a side of a design, which is made when the design has none of that name. */
    static Command toSide(Design whole, String name, List<Mark> moved) {
        CompoundCommand steps = new CompoundCommand("Move to the other side");
        Optional<Side> there = whole.getSides().stream().filter(each -> name.equals(each.getName())).findFirst();
        Side side = there.orElseGet(() -> {
            Side made = DesignFactory.eINSTANCE.createSide();
            made.setName(name);
            return made;
        });
        if (there.isEmpty()) {
            steps.add(new AddSideCommand(whole, side));
        }
        steps.add(Arrange.toSide(moved, side));
        return steps;
    }

    private Remedy scaleUp(Finding finding) {
        if (finding.measured().isEmpty() || finding.limit().isEmpty() || finding.measured().getAsDouble() <= 0) {
            return new Remedy.Refused("It is not known how much larger this must be; scale it by hand.");
        }
        double ratio = finding.limit().getAsDouble() / finding.measured().getAsDouble();
        // areas grow with the square of the scale
        double factor = OVER * ("mm2".equals(finding.unit()) ? Math.sqrt(ratio) : ratio);
        if (factor <= 1) {
            return new Remedy.Refused("It is large enough already.");
        }
        List<Mark> marks = marks(finding);
        Geometry area = area(finding.side(), marks);
        Coordinate middle = area.getEnvelopeInternal().centre();
        ItemFace face = printed.item().face(finding.side()).orElseThrow();
        Fit fit = LargestPlacement.in(face.safe()).at(area, 0);
        if (fit.scale() < factor) {
            return new Remedy.Refused(String.format(java.util.Locale.ROOT,
                    "It would have to be %.2f times as large, but only %.2f times fits the safe zone; simplify the "
                    + "art, thicken it, or choose a larger product.", factor, fit.scale()));
        }
        Coordinate shift = fitsInPlace(area, face, factor, middle)
                ? new Coordinate(middle.x * (1 - factor), middle.y * (1 - factor)) : shortest(face, fit, factor);
        CompoundCommand all = new CompoundCommand("Scale up to the limit");
        for (Mark mark : marks) {
            all.add(new PlaceMarkCommand("Scale up to the limit", original(mark), new Pose(
                    mark.getX() * factor + shift.x, mark.getY() * factor + shift.y, mark.getScale() * factor,
                    mark.getTurn(), mark.isMirror())));
        }
        return new Remedy.Done(all.unwrap(), String.format(java.util.Locale.ROOT, "Scaled to %.0f %%.", factor * 100));
    }

    private static boolean fitsInPlace(Geometry area, ItemFace face, double factor, Coordinate middle) {
        Geometry grown = org.locationtech.jts.geom.util.AffineTransformation
                .scaleInstance(factor, factor, middle.x, middle.y).transform(area.convexHull());
        Envelope box = grown.getEnvelopeInternal();
        return face.safe().getEnvelopeInternal().contains(box) && face.safe().covers(grown);
    }

    /** Marks of a design, in order. */
    static List<Mark> all(Design design) {
        List<Mark> marks = new ArrayList<>();
        for (Side side : design.getSides()) {
            for (Layer layer : side.getLayers()) {
                marks.addAll(layer.getMarks());
            }
        }
        return marks;
    }

    /** A compound of commands, or the only one. */
    static Command of(String label, List<Command> commands) {
        CompoundCommand all = new CompoundCommand(label);
        commands.forEach(all::add);
        return all.unwrap();
    }
}
