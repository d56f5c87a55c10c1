package plumeline.ask;

import java.util.ArrayList;
import java.util.List;

/// What an answer says beside its numbers.
///
/// @param because what the numbers rest on and mean
/// @param attempts what to try, each tried here first
/// @param cautions what can hurt, or spoil the picture whatever the numbers say
/// @param sources where the laws come from
public record Notes(List<String> because, List<String> attempts, List<String> cautions, List<String> sources) {
    static final Notes NONE = new Notes(List.of(), List.of(), List.of(), List.of());

    /// Copies the lists.
    public Notes {
        because = List.copyOf(because);
        attempts = List.copyOf(attempts);
        cautions = List.copyOf(cautions);
        sources = List.copyOf(sources);
    }

    Notes withBecause(String more) {
        List<String> all = new ArrayList<>(because);
        all.add(more);
        return new Notes(all, attempts, cautions, sources);
    }
}
