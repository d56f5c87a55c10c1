package plumeline.cli;

/// Which version this is.
final class Version {
    private Version() {}

    /// The version that the jar says it is; a folder of classes has none.
    static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "(unpacked)" : version;
    }
}
