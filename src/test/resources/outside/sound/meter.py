# Makes meter.csv: loudness and true peak of made-up noise by libebur128 1.2.6 (MIT; Debian libebur128-1) and numpy.
# Run: python3 meter.py > meter.csv. Noise: s = (1103515245 s + 12345) mod 2^31, u = s / 2^30 - 1, through
# y += soft * (u - y), times a level that steps every 0.7 s through the levels of the row, as 32-bit floats.
import ctypes, ctypes.util, numpy as np

lib = ctypes.CDLL("libebur128.so.1")
lib.ebur128_init.restype = ctypes.c_void_p
lib.ebur128_init.argtypes = [ctypes.c_uint, ctypes.c_ulong, ctypes.c_int]
lib.ebur128_add_frames_float.argtypes = [ctypes.c_void_p, ctypes.c_void_p, ctypes.c_size_t]
lib.ebur128_set_channel.argtypes = [ctypes.c_void_p, ctypes.c_uint, ctypes.c_int]
for name in ("loudness_global", "loudness_momentary", "loudness_shortterm", "loudness_range"):
    getattr(lib, "ebur128_" + name).argtypes = [ctypes.c_void_p, ctypes.POINTER(ctypes.c_double)]
lib.ebur128_true_peak.argtypes = [ctypes.c_void_p, ctypes.c_uint, ctypes.POINTER(ctypes.c_double)]
MODE = 1 << 0 | 1 << 1 | 1 << 2 | 1 << 3 | 1 << 4 | 1 << 5  # momentary, short-term, integrated, range, peaks

# Places of channels in libebur128: left 1, right 2, centre 3, unused 0, left surround 4, right surround 5.
PLACES = {1: [3], 2: [1, 2], 6: [1, 2, 3, 0, 4, 5]}

def noise(count, seed, soft):
    s, y, out = seed, 0.0, np.empty(count)
    for i in range(count):
        s = (1103515245 * s + 12345) & 0x7FFFFFFF
        y += soft * (s / 2.0**30 - 1 - y)
        out[i] = y
    return out

def sound(rate, channels, seconds, soft, levels):
    count = int(rate * seconds)
    steps = np.array([10 ** (levels[int(i / (0.7 * rate)) % len(levels)] / 20) for i in range(count)])
    return np.stack([noise(count, 7 + 10 * c, soft) * steps for c in range(channels)], axis=1).astype(np.float32)

def get(function, st):
    out = ctypes.c_double()
    function(st, ctypes.byref(out))
    return out.value

def loudness_range(values):
    # Tech 3342: the library steps by 1 s, too coarse for short sounds; so of its short-term values every 100 ms.
    heard = np.array([v for v in values if v > -70])
    gate = 10 * np.log10(np.mean(10 ** (heard / 10))) - 20
    kept = np.sort(heard[heard >= gate])
    return kept[int(round((len(kept) - 1) * 0.95))] - kept[int(round((len(kept) - 1) * 0.10))]

def fourier_peak(samples):
    padded = np.concatenate([np.zeros(4096), samples, np.zeros(4096)])
    return np.abs(np.fft.irfft(np.fft.rfft(padded), 32 * len(padded)) * 32).max()

ROWS = [
    (48000, 2, 24, 0.15, [-6, -12, -20, -3, -35, -9]),
    (48000, 1, 12, 0.05, [-4, -10]),
    (48000, 6, 10, 0.2, [-12, -18, -15, -30, -50]),
    (44100, 2, 14, 0.15, [-6, -26, -11]),
    (96000, 2, 7, 0.05, [-3, -13, -23, -33]),
    (48000, 2, 6, 1.0, [0, -1]),
]

print("# rate Hz, channels, length s, soft, levels dB, integrated LUFS, most momentary LUFS, most short-term LUFS, range LU, true peak dBTP by it, by Fourier at 32 places")
for rate, channels, seconds, soft, levels in ROWS:
    data = sound(rate, channels, seconds, soft, levels)
    st = lib.ebur128_init(channels, rate, MODE)
    for c, place in enumerate(PLACES[channels]):
        lib.ebur128_set_channel(st, c, place)
    momentary = shortterm = -1e9
    values = []
    hop = rate // 100
    for at in range(0, len(data) - hop + 1, hop):
        part = np.ascontiguousarray(data[at:at + hop])
        lib.ebur128_add_frames_float(st, part.ctypes.data, hop)
        if at + hop >= 40 * hop:
            momentary = max(momentary, get(lib.ebur128_loudness_momentary, st))
        if at + hop >= 300 * hop:
            value = get(lib.ebur128_loudness_shortterm, st)
            shortterm = max(shortterm, value)
            if (at // hop + 1) % 10 == 0:
                values.append(value)
    peak = 0
    for c in range(channels):
        out = ctypes.c_double()
        lib.ebur128_true_peak(st, c, ctypes.byref(out))
        peak = max(peak, out.value)
    exact = max(fourier_peak(data[:, c].astype(float)) for c in range(channels))
    print("%d,%d,%d,%s,%s,%.4f,%.4f,%.4f,%.4f,%.4f,%.4f" % (rate, channels, seconds, soft, " ".join(map(str, levels)),
        get(lib.ebur128_loudness_global, st), momentary, shortterm, loudness_range(values),
        20 * np.log10(peak), 20 * np.log10(exact)))
