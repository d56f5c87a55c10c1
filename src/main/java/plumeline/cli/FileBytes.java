package plumeline.cli;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import plumeline.plume.DyeFilm;

/// The bytes of an open file of any size. It is read, not mapped: a mapped file that someone cuts short ends the
/// process.
///
/// @param file the file
record FileBytes(FileChannel file) implements DyeFilm.Source {
    @Override
    public long size() throws IOException {
        return file.size();
    }

    @Override
    public ByteBuffer read(long at, int length) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(length);
        while (bytes.hasRemaining()) {
            if (file.read(bytes, at + bytes.position()) < 0) {
                throw new EOFException("a film ends before byte " + (at + length));
            }
        }
        return bytes.flip();
    }
}
