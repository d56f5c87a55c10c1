package plumeline.tidy;

import java.util.List;

/// What the silent rooms may not touch, as prefixes of full names, and why.
final class Bans {
    private Bans() {}

    /// A ban on types or members whose full name starts so; a name that ends in `)` must match whole.
    record Ban(String prefix, String why) {
        boolean covers(String fullName) {
            return prefix.endsWith(")") ? fullName.equals(prefix) : fullName.startsWith(prefix);
        }
    }

    static final List<Ban> TYPES = List.of(
            new Ban("java.nio.file.", "files"),
            new Ban("java.nio.channels.", "files and sockets"),
            new Ban("java.io.File", "files"),
            new Ban("java.io.RandomAccessFile", "files"),
            new Ban("java.io.PrintStream", "printing"),
            new Ban("java.io.Console", "the console"),
            new Ban("java.net.", "sockets"),
            new Ban("javax.net.", "sockets"),
            new Ban("java.sql.", "databases"),
            new Ban("java.awt.", "screens"),
            new Ban("javax.swing.", "screens"),
            new Ban("java.util.logging.", "logs"),
            new Ban("java.util.Scanner", "default locale"),
            new Ban("java.lang.Process", "processes"),
            new Ban("java.security.SecureRandom", "chance without a seed"),
            new Ban("java.util.concurrent.ThreadLocalRandom", "chance without a seed"),
            new Ban("java.util.Date", "the clock"),
            new Ban("java.util.Calendar", "the clock"),
            new Ban("java.time.Clock", "the clock"));

    static final List<Ban> MEMBERS = List.of(
            new Ban("java.lang.System.currentTimeMillis", "the clock"),
            new Ban("java.lang.System.nanoTime", "the clock"),
            new Ban("java.lang.System.getenv", "the environment"),
            new Ban("java.lang.System.getProperty", "the environment"),
            new Ban("java.lang.System.getProperties", "the environment"),
            new Ban("java.lang.System.lineSeparator", "the environment"),
            new Ban("java.lang.System.getLogger", "logs"),
            new Ban("java.lang.System.in", "standard input"),
            new Ban("java.lang.Boolean.getBoolean", "the environment"),
            new Ban("java.lang.Integer.getInteger", "the environment"),
            new Ban("java.lang.Long.getLong", "the environment"),
            new Ban("java.lang.Runtime.", "the environment"),
            new Ban("java.lang.Thread.sleep", "the clock"),
            new Ban("java.time.Instant.now", "the clock"),
            new Ban("java.time.LocalDate.now", "the clock"),
            new Ban("java.time.LocalTime.now", "the clock"),
            new Ban("java.time.LocalDateTime.now", "the clock"),
            new Ban("java.time.ZonedDateTime.now", "the clock"),
            new Ban("java.time.ZoneId.systemDefault", "the environment"),
            new Ban("java.util.TimeZone.getDefault", "the environment"),
            new Ban("java.util.Locale.getDefault", "default locale"),
            new Ban("java.nio.charset.Charset.defaultCharset", "default locale"),
            new Ban("java.lang.String.getBytes()", "default charset: name UTF_8"),
            new Ban("java.lang.String.<init>([B)", "default charset: name UTF_8"),
            new Ban(
                    "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
                    "default locale: pass Locale.ROOT"),
            new Ban("java.lang.String.formatted(", "default locale: use String.format(Locale.ROOT, …)"),
            new Ban("java.lang.String.toUpperCase()", "default locale: pass Locale.ROOT"),
            new Ban("java.lang.String.toLowerCase()", "default locale: pass Locale.ROOT"),
            new Ban("java.util.Formatter.<init>()", "default locale: pass Locale.ROOT"),
            new Ban("java.util.Formatter.<init>(java.lang.Appendable)", "default locale: pass Locale.ROOT"),
            new Ban("java.text.DecimalFormat.<init>(java.lang.String)", "default locale: pass symbols of Locale.ROOT"),
            new Ban("java.text.NumberFormat.getInstance()", "default locale: pass Locale.ROOT"),
            new Ban("java.text.NumberFormat.getNumberInstance()", "default locale: pass Locale.ROOT"),
            new Ban("java.util.Random.<init>()", "chance without a seed"),
            new Ban("java.lang.Math.random", "chance without a seed"),
            new Ban("java.util.UUID.randomUUID", "chance without a seed"));

    /// What only `cli` and `desk` may touch.
    static final List<Ban> PRINTING_AND_EXITING = List.of(
            new Ban("java.lang.System.out", "printing"),
            new Ban("java.lang.System.err", "printing"),
            new Ban("java.lang.System.exit", "ending the process"),
            new Ban("java.lang.Runtime.exit", "ending the process"),
            new Ban("java.lang.Runtime.halt", "ending the process"),
            new Ban("java.lang.Throwable.printStackTrace()", "printing"));
}
