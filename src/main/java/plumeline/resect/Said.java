package plumeline.resect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.quantity.PaperUnit;

/// Findings in sentences.
///
/// @param unit the papers' unit of length
public record Said(PaperUnit unit) {
    private static final int MOST_PAIRS = 3;

    /// Says what the clicks tell, the plainest first.
    ///
    /// @param findings the findings
    /// @return sentences
    public List<String> of(Findings findings) {
        List<String> said = new ArrayList<>();
        misclicks(findings).ifPresent(said::add);
        if (findings.singles().isEmpty()) {
            said.addAll(eachOff(findings));
        } else {
            said.addAll(singles(findings));
        }
        findings.otherwise().forEach(otherwise -> said.add(otherwise(otherwise)));
        said.addAll(notTold(findings));
        pairs(findings).ifPresent(said::add);
        if (findings.widened() > 1) {
            said.add("Clicks and marks disagree " + number(findings.widened(), 1)
                    + " times more than their errors say; every ± is that much wider. Look for another reason: another"
                    + " lens, another take, a still that was cropped or straightened.");
        }
        return said;
    }

    private static Optional<String> misclicks(Findings findings) {
        List<String> names = findings.places().stream()
                .filter(Findings.Place::isMisclick)
                .map(place -> place.name() + " (" + number(place.leftPixels(), 0) + " px off)")
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of("Clicked beside its place, as the other clicks have it, and left out: "
                        + String.join(", ", names) + ". Click it again.");
    }

    /// What is off, owner by owner; one sentence where nothing is.
    private List<String> eachOff(Findings findings) {
        List<String> said = new ArrayList<>();
        List<String> owners = findings.offs().stream()
                .map(off -> off.sought().owner())
                .distinct()
                .toList();
        for (String owner : owners) {
            List<String> parts = findings.offs().stream()
                    .filter(off -> off.sought().owner().equals(owner) && off.isOff())
                    .map(off -> stands(off.sought(), off.offSi()) + " (± " + size(off.sought(), off.halfSi()) + ")"
                            + (off.told() == Findings.Told.APART
                                    ? ", far more than its "
                                            + size(off.sought(), off.sought().errorSi())
                                    : ""))
                    .toList();
            if (!parts.isEmpty()) {
                said.add(capital(subject(owner)) + " " + join(parts) + ".");
            }
        }
        if (said.isEmpty()) {
            said.add("Nothing seems off beyond what these clicks can tell.");
        }
        return said;
    }

    /// The plainest explanation, and those as good.
    private List<String> singles(Findings findings) {
        List<String> said = new ArrayList<>();
        Findings.Single first = findings.singles().getFirst();
        boolean isAside = !first.looks().isEmpty() && !first.owner().equals("camera");
        said.add("All clicks fit if " + only(first) + (isAside ? " and the camera's aim are" : " alone is")
                + " off and all else is at its mark: " + single(first) + ".");
        List<Findings.Single> others =
                findings.singles().subList(1, findings.singles().size());
        if (!others.isEmpty()) {
            said.add("Or it is "
                    + others.stream()
                            .map(other -> only(other) + ": " + single(other))
                            .collect(Collectors.joining("; or "))
                    + ". These points don't tell which: click places at other depths.");
        }
        return said;
    }

    private static String only(Findings.Single single) {
        return switch (single.what()) {
            case ALL -> subject(single.owner());
            case AIM -> "the camera's aim";
            case PLACE -> "the camera's place";
        };
    }

    private String single(Findings.Single single) {
        List<String> parts = measured(single.offs());
        String said = parts.isEmpty() ? "how far isn't told" : subject(single.owner()) + " " + join(parts);
        List<String> looks = measured(single.looks());
        return looks.isEmpty()
                ? said
                : said + (single.owner().equals("camera") ? ", and " : ", and the camera ") + join(looks);
    }

    private List<String> measured(List<Findings.Off> offs) {
        return offs.stream()
                .filter(Findings.Off::isOff)
                .map(off -> stands(off.sought(), off.offSi()) + " (± " + size(off.sought(), off.halfSi()) + ")")
                .toList();
    }

    private String otherwise(Findings.Otherwise otherwise) {
        return capital(cause(otherwise.taken())) + ", or "
                + otherwise.others().stream().map(this::cause).collect(Collectors.joining(", or "))
                + ": these points don't tell which. Click places at other depths.";
    }

    private String cause(Findings.Cause cause) {
        return switch (cause) {
            case Findings.Cause.Misclicked(String place) -> "the click on " + place + " is beside its place";
            case Findings.Cause.Misplaced(String names, List<Findings.Moved> moved) -> {
                boolean isAll = names.startsWith("every thing");
                List<Findings.Moved> told = isAll ? moved.subList(0, 1) : moved;
                yield (isAll ? "everything" : subject(moved.getFirst().sought().owner())) + " "
                        + join(told.stream()
                                .map(one -> stands(one.sought(), one.offSi()))
                                .toList());
            }
        };
    }

    /// What the clicks don't tell: what stays at its mark, and what is only known not to.
    private static List<String> notTold(Findings findings) {
        List<String> loose = findings.singles().stream()
                .flatMap(single -> single.offs().stream())
                .map(off -> off.sought().name())
                .toList();
        List<String> names = findings.offs().stream()
                .filter(off -> off.told() == Findings.Told.NOT)
                .map(off -> off.sought().name())
                .toList();
        List<String> kept = names.stream().filter(name -> !loose.contains(name)).toList();
        List<String> open = names.stream().filter(loose::contains).toList();
        List<String> said = new ArrayList<>();
        if (!open.isEmpty()) {
            said.add("How far off is not told by these points: " + String.join(", ", open) + ".");
        }
        if (!kept.isEmpty()) {
            said.add("Not told by these points, and so taken to be within its placing error: " + String.join(", ", kept)
                    + ".");
        }
        return said;
    }

    private static Optional<String> pairs(Findings findings) {
        List<String> pairs = findings.pairs().stream()
                .limit(MOST_PAIRS)
                .map(pair -> pair.one().name() + " and " + pair.other().name())
                .toList();
        return pairs.isEmpty()
                ? Optional.empty()
                : Optional.of("Told only together, not one by one: " + String.join("; ", pairs) + ".");
    }

    /// Says what owns a number.
    private static String subject(String owner) {
        return owner.equals("camera") || owner.equals("tank") ? "the " + owner : owner;
    }

    /// Says how something stands that is so far off: `stands 11 mm too far left`.
    ///
    /// @param sought the number
    /// @param offSi by how much it is more than set, SI
    /// @return the words, without who
    public String stands(Sought sought, double offSi) {
        String far = size(sought, Math.abs(offSi));
        boolean isMore = offSi > 0;
        boolean isCamera = sought.owner().equals("camera");
        return switch (sought.part()) {
            case "x" -> "stands " + far + " too far " + (isMore ? "right" : "left");
            case "y" ->
                "stands " + far + " too far " + (isCamera ? isMore ? "forward" : "back" : isMore ? "back" : "forward");
            case "z" -> "stands " + far + " too " + (isMore ? "high" : "low");
            case "turn" ->
                isCamera
                        ? "looks " + far + " too far " + (isMore ? "right" : "left")
                        : "is turned " + far + " too far " + (isMore ? "clockwise" : "anticlockwise")
                                + ", seen from above";
            case "tilt" ->
                isCamera
                        ? "looks " + far + " too far " + (isMore ? "up" : "down")
                        : "leans " + far + " too far " + (isMore ? "right" : "left");
            case "roll" -> "is rolled " + far + " " + (isMore ? "clockwise" : "anticlockwise") + ", seen from behind";
            case "focal_length" -> "sees as if its focal length were " + far + " " + (isMore ? "longer" : "shorter");
            case "focus" -> "is focused " + far + " too " + (isMore ? "far" : "near");
            default -> "is " + far + " " + (isMore ? "over" : "under") + " its " + sought.part();
        };
    }

    /// Writes how large a number is: `11 mm`, `0.4 mm`, `0.35 deg`, `1.2 %`.
    ///
    /// @param sought the number
    /// @param si how large, SI, 0 or more
    /// @return the figure with its unit
    public String size(Sought sought, double si) {
        return switch (sought.kind()) {
            case LENGTH ->
                switch (unit) {
                    case MILLIMETRES -> number(si * 1e3, si < 0.00995 ? 1 : 0) + " mm";
                    case INCHES -> number(si / 0.0254, 2) + " in";
                };
            case ANGLE -> number(Math.toDegrees(si), 2) + " deg";
            case SHARE -> number(si * 100, 1) + " %";
        };
    }

    /// Writes a number with its sign: `+11 mm`, `-0.35 deg`, `0.0 mm`.
    ///
    /// @param sought the number
    /// @param si it, SI
    /// @return the figure with its unit
    public String signed(Sought sought, double si) {
        String size = size(sought, Math.abs(si));
        return size.matches("0(\\.0+)? .*") ? size : (si < 0 ? "-" : "+") + size;
    }

    /// Joins what is said of one, its verb once where it is the same.
    private static String join(List<String> all) {
        List<String> parts = new ArrayList<>();
        for (String part : all) {
            boolean isSame = !parts.isEmpty()
                    && part.startsWith("stands ")
                    && all.getFirst().startsWith("stands ");
            parts.add(isSame ? part.substring("stands ".length()) : part);
        }
        return parts.size() < 2
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.getLast();
    }

    private static String number(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
