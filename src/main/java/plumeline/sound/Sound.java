package plumeline.sound;

import java.util.List;

/// Sound as samples, wherever they lie. It never changes.
public interface Sound {
    /// Gives how many samples a second of it has.
    ///
    /// @return 1/s, > 0
    int samplesPerSecond();

    /// Gives how long it is.
    ///
    /// @return samples of each channel
    long samples();

    /// Lists where its channels are heard from.
    ///
    /// @return one place a channel, at least one
    List<Speaker> speakers();

    /// Reads a stretch of every channel.
    ///
    /// @param first its first sample, ≥ 0
    /// @param count how many, up to the end at most
    /// @param into a row a channel, written from 0: shares of full scale, finite
    void read(long first, int count, double[][] into);

    /// Gives how long it is.
    ///
    /// @return s
    default double seconds() {
        return (double) samples() / samplesPerSecond();
    }
}
