package plumeline.answer;

/// Files, and others for the names under which there is none.
///
/// @param first the files
/// @param others those for other names; their reason isn't told
record Both(Beside first, Beside others) implements Beside {
    @Override
    public File find(String name, int mostBytes) {
        File found = first.find(name, mostBytes);
        return found instanceof File.Absent && others.find(name, mostBytes) instanceof File.There other ? other : found;
    }

    @Override
    public File findSound(String name, int mostBytes) {
        File found = first.findSound(name, mostBytes);
        return found instanceof File.Absent && others.findSound(name, mostBytes) instanceof File.There other
                ? other
                : found;
    }
}
