package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import plumeline.light.Thirds;
import plumeline.search.Axis;
import plumeline.search.Leeway;
import plumeline.stage.StagedMark;

/// The marks of a shot as axes of the search. An f-number's axis counts in stops, 2 log₂ N, as its ring does.
final class Axes {
    private final List<StagedMark> marks;

    Axes(List<StagedMark> marks) {
        this.marks = List.copyOf(marks);
    }

    List<StagedMark> marks() {
        return marks;
    }

    boolean anyFree() {
        return marks.stream().anyMatch(mark -> mark.mark().isFree());
    }

    /// The axes with the marks at some SI values; placing errors are those there.
    List<Axis> at(double[] si) {
        List<Axis> axes = new ArrayList<>(si.length);
        for (int i = 0; i < si.length; i++) {
            axes.add(axis(i, si[i], marks.get(i).mark().isFree()));
        }
        return axes;
    }

    /// The same axes with one locked mark made free.
    List<Axis> withFree(double[] si, int index) {
        List<Axis> axes = at(si);
        axes.set(index, axis(index, si[index], true));
        return axes;
    }

    private Axis axis(int index, double si, boolean free) {
        StagedMark mark = marks.get(index);
        Axis.Freedom freedom = free
                ? new Axis.Freedom.Free(fromSi(index, mark.lowSi()), fromSi(index, mark.highSi()))
                : new Axis.Freedom.Locked();
        return new Axis(
                mark.mark().path(),
                fromSi(index, si),
                mark.placingErrorSi(si),
                freedom,
                mark.stepSi(),
                isStops(index) ? 14 : mark.reachSi());
    }

    private boolean isStops(int index) {
        return marks.get(index).mark().path().equals("camera.f_number");
    }

    double fromSi(int index, double si) {
        return isStops(index) ? 2 * Math.log(Math.max(si, 0.01)) / Math.log(2) : si;
    }

    double toSi(int index, double axis) {
        return isStops(index) ? Math.pow(2, axis / 2) : axis;
    }

    double[] fromSi(double[] si) {
        double[] axis = new double[si.length];
        for (int i = 0; i < si.length; i++) {
            axis[i] = fromSi(i, si[i]);
        }
        return axis;
    }

    double[] toSi(double[] axis) {
        double[] si = new double[axis.length];
        for (int i = 0; i < axis.length; i++) {
            si[i] = toSi(i, axis[i]);
        }
        return si;
    }

    /// As a hand sets it: a free f-number at its engraved figure.
    double[] engraved(double[] si) {
        return engraved(si, -1);
    }

    /// As a hand sets it where one locked mark, by its index, was made free too.
    double[] engraved(double[] si, int freed) {
        double[] set = si.clone();
        for (int i = 0; i < set.length; i++) {
            if (isStops(i) && (marks.get(i).mark().isFree() || i == freed)) {
                set[i] = Thirds.nearest(Thirds.F_NUMBERS, set[i]);
            }
        }
        return set;
    }

    /// A leeway found on an axis, in SI.
    Leeway toSi(int index, double si, Leeway leeway) {
        if (!isStops(index)) {
            return leeway;
        }
        double axis = fromSi(index, si);
        return new Leeway(
                side(leeway.minus(), si - toSi(index, axis - leeway.minus().distance())),
                side(leeway.plus(), toSi(index, axis + leeway.plus().distance()) - si));
    }

    private static Leeway.Side side(Leeway.Side side, double distance) {
        return switch (side) {
            case Leeway.Side.Endless endless -> endless;
            case Leeway.Side.Ends(double _) -> new Leeway.Side.Ends(distance);
        };
    }
}
