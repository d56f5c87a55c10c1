package plumeline.cut.list;

/// Counts with what they count.
final class Words {
    private Words() {}

    static String frames(long count) {
        return count + (count == 1 ? " frame" : " frames");
    }

    static String recorded(long count) {
        return count + (count == 1 ? " recorded frame" : " recorded frames");
    }
}
