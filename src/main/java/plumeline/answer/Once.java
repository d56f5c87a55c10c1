package plumeline.answer;

import java.util.HashMap;
import java.util.Map;

/// Files that are looked up once each.
final class Once implements Beside {
    private final Beside files;
    private final Map<Asked, File> found = new HashMap<>();

    Once(Beside files) {
        this.files = files;
    }

    private enum As {
        BYTES,
        SOUND
    }

    private record Asked(String name, int mostBytes, As as) {}

    @Override
    public File find(String name, int mostBytes) {
        return found.computeIfAbsent(new Asked(name, mostBytes, As.BYTES), _ -> files.find(name, mostBytes));
    }

    @Override
    public File findSound(String name, int mostBytes) {
        return found.computeIfAbsent(new Asked(name, mostBytes, As.SOUND), _ -> files.findSound(name, mostBytes));
    }
}
