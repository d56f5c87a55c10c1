package plumeline.want;

import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.quantity.PaperUnit;

/// The first want of a plan's first shot, judged where its marks are.
interface FirstWant {
    Plan plan();

    default Want want() {
        return Wanted.want(plan());
    }

    default Moments moments() {
        return Wanted.start(plan());
    }

    default double margin() {
        return want().margin(want().parts(moments()));
    }

    default String standing() {
        return want().findStanding(moments(), PaperUnit.MILLIMETRES).orElseThrow();
    }

    default String caution() {
        return want().findCaution(moments()).orElse("");
    }

    default Optional<String> tight() {
        return want().findTight(moments());
    }

    default String lack() {
        return want().findLack(moments()).orElse("");
    }

    /// Why it is unknown, whatever the marks or with these.
    default String unknown() {
        return want().findUnknown().or(() -> want().findUnknown(moments())).orElse("known");
    }
}
