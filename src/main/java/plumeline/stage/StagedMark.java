package plumeline.stage;

import plumeline.plan.Mark;

/// One mark of a shot with the numbers that finding its place needs, all in SI.
///
/// @param mark the mark as written
/// @param startSi its value, or a middling start where it is free
/// @param lowSi least value it may take where it is free, or would be
/// @param highSi largest value it may take where it is free, or would be
/// @param reachSi how far from its value leeway is looked for
/// @param stepSi what a hand can set
public record StagedMark(Mark mark, double startSi, double lowSi, double highSi, double reachSi, double stepSi) {
    /// Gives the placing error at a value.
    ///
    /// @param valueSi the mark's value, SI
    /// @return the half-width, SI
    public double placingErrorSi(double valueSi) {
        return mark.error().at(valueSi);
    }
}
