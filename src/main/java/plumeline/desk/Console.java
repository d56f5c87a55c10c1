package plumeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/// Standard input, output and error, always in UTF-8 whatever the machine's settings.
public final class Console {
    private final InputStream in;
    private final OutputStream out;
    private final OutputStream err;
    private final boolean isWatched;

    /// A console that nobody watches: what is said on it is the same however long the work takes.
    ///
    /// @param in standard input
    /// @param out standard output
    /// @param err standard error
    public Console(InputStream in, OutputStream out, OutputStream err) {
        this(in, out, err, false);
    }

    private Console(InputStream in, OutputStream out, OutputStream err, boolean isWatched) {
        this.in = in;
        this.out = out;
        this.err = err;
        this.isWatched = isWatched;
    }

    /// Gives the console of this process.
    ///
    /// @return the console
    public static Console ofProcess() {
        return new Console(
                new FileInputStream(FileDescriptor.in),
                new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err),
                true);
    }

    /// Writes an answer to standard output at once.
    ///
    /// @param text the answer
    /// @throws ReaderGone where whoever was reading has stopped, as `head` does
    /// @throws IOException where it cannot be written for another reason, such as a full disk
    public void answer(String text) throws IOException {
        try {
            out.write(text.getBytes(UTF_8));
            out.flush();
        } catch (IOException e) {
            String why = String.valueOf(e.getMessage());
            if (why.contains("Broken pipe") || why.contains("pipe is being closed")) {
                throw new ReaderGone(e);
            }
            throw new IOException("standard output cannot be written: " + why, e);
        }
    }

    /// Writes a line of progress or a problem to standard error; nobody listening is no failure.
    ///
    /// @param line the line, without its end
    public void say(String line) {
        try {
            err.write((line + "\n").getBytes(UTF_8));
            err.flush();
        } catch (IOException e) {
            // There is no one left to tell.
        }
    }

    /// Tells whether someone waits before it and wants to know what takes so long.
    ///
    /// @return whether someone watches
    public boolean isWatched() {
        return isWatched;
    }

    /// Reads standard input, but never more than the bytes given.
    byte[] readInput(int mostBytes) throws IOException {
        return in.readNBytes(mostBytes);
    }

    /// Standard output's reader has gone away: no failure of ours, and nothing more to do.
    public static final class ReaderGone extends IOException {
        private static final long serialVersionUID = 1L;

        ReaderGone(IOException cause) {
            super(cause);
        }
    }
}
