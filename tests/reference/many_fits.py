"""The same work as the command line in SciPy and pandas: every repetition of a folder fitted, judged and counted, on all cores.

Usage: python3 many_fits.py FOLDER OUT WORKERS
FOLDER holds files with a first row of names: `time [s]` and `heel_height [mm]`, or those of a foot (`acc_x [m/s2]` ...), whose
lever is taken as 186 mm. Writes OUT-repetitions.csv and OUT-sets.csv. Prints one JSON object: versions, files, repetitions,
seconds from start to end without the start of Python, processor time of all processes [s], and their peak memory [MB].

For each file: SHA-256 of its bytes, the height, peaks, the shapes of the ways that suit the set, a least-squares fit of a smooth
move to each repetition (smooth_move.py), the floor as a line through the rests, heights above it with their uncertainty, a reference from the best two of the first five, the
criteria of height, return, rest and gap with probabilities, the end after two faults of one kind in a row, and the bounds of
the counts from 2000 draws through criteria and end rule.
"""

import glob
import hashlib
import io
import multiprocessing
import os
import sys
import time

import numpy
import pandas
from scipy import signal, stats

import judged_set
import smooth_move
import yardstick

RATE_HZ = 100
LOW_PASS = signal.butter(2, 6, fs=RATE_HZ, output="sos")
# 10 to 90 % takes about this share of a smooth move
WHOLE_SHARE = 0.55
SAMPLES = 60
# repetitions that show the shapes of the ways
LOOKED_AT = 8
DRAWS = 2000


def heights(data):
    """Times and height at 100 Hz, as it is and low-passed, and the longest interval between samples."""
    table = pandas.read_csv(io.BytesIO(data), comment="#", engine="c", dtype=float)
    times = table.iloc[:, 0].to_numpy()
    gap = float(numpy.diff(times).max())
    if len(table.columns) > 2:
        columns = {name.split(" ")[0]: table[name].to_numpy() for name in table.columns}
        grid, level = yardstick.foot_height(columns, 0.186)
        return grid, level, level, gap
    grid = numpy.arange(times[0], times[-1], 1 / RATE_HZ)
    level = numpy.interp(grid, times, table.iloc[:, 1].to_numpy() / 1000)
    return grid, level, signal.sosfiltfilt(LOW_PASS, level), gap


def crossings(smooth, low, peak, share):
    """Where the way from a low up to a peak, or from a peak down to a low, passes a share of it last, or first."""
    level = smooth[low] + share * (smooth[peak] - smooth[low])
    if low < peak:
        below = numpy.flatnonzero(smooth[low:peak] <= level)
        return low + (int(below[-1]) if len(below) else 0)
    below = numpy.flatnonzero(smooth[peak : low + 1] <= level)
    return peak + (int(below[0]) if len(below) else low - peak)


def guess_of(smooth, grid, before, peak, after):
    ten, ninety = (grid[crossings(smooth, before, peak, share)] for share in (0.1, 0.9))
    from_ninety, to_ten = (grid[crossings(smooth, after, peak, share)] for share in (0.9, 0.1))
    up, down = (ninety - ten) / WHOLE_SHARE, (to_ten - from_ninety) / WHOLE_SHARE
    start, end = (ten + ninety - up) / 2, (from_ninety + to_ten + down) / 2
    high_from = min(start + up, grid[peak])
    return numpy.array([start, high_from, max(end - down, grid[peak]), end, smooth[before], smooth[peak], smooth[after]])


def stretches_of(grid, level, smooth, peaks):
    """Times and levels of each repetition up to its neighbours, in means of some 60, with a first guess and how many a mean holds."""
    edges = numpy.concatenate(([0], peaks, [len(smooth) - 1]))
    lows = [a + int(numpy.argmin(smooth[a : b + 1])) for a, b in zip(edges[:-1], edges[1:])]
    guesses = [guess_of(smooth, grid, before, peak, after) for before, peak, after in zip(lows, peaks, lows[1:])]
    stretches = []
    for k, guess in enumerate(guesses):
        before = guesses[k - 1][3] if k > 0 else -numpy.inf
        after = guesses[k + 1][0] if k + 1 < len(guesses) else numpy.inf
        left = max(min(before, grid[lows[k]]), guess[0] - max(0.25, 0.5 * (guess[1] - guess[0])))
        right = min(max(after, grid[lows[k + 1]]), guess[3] + max(0.25, 0.5 * (guess[3] - guess[2])))
        first, last = numpy.searchsorted(grid, (left, right))
        thin = max(1, (last - first) // SAMPLES)
        count = (last - first) // thin
        taken = slice(first, first + count * thin)
        times, means = (values[taken].reshape(count, thin).mean(axis=1) for values in (grid, level))
        stretches.append((times, means, guess, thin))
    return stretches


def shapes_of(stretches, likeness, noise):
    """The shapes of the ways that suit some repetitions of the set best."""
    some = stretches[:: max(1, len(stretches) // LOOKED_AT)][:LOOKED_AT]
    misfits = numpy.zeros(len(smooth_move.SHAPES))
    for times, level, guess, thin in some:
        for k, (rising, falling) in enumerate(smooth_move.SHAPES):
            found = smooth_move.fit(times, level, guess, likeness**thin, noise, rising, falling)
            misfits[k] += found[2] if found is not None else 10 * len(times)
    return smooth_move.SHAPES[misfits.argmin()]


def fits_of(stretches, likeness, noise):
    """Parameters and standard uncertainties (start, top, end, level of the top), a row for each; a fit that ran off is none."""
    rising, falling = shapes_of(stretches, likeness, noise)
    found, spread = numpy.empty((len(stretches), 7)), numpy.empty((len(stretches), 4))
    for k, (times, level, guess, thin) in enumerate(stretches):
        fit = smooth_move.fit(times, level, guess, likeness**thin, noise, rising, falling)
        if fit is None or not (times[0] - 1 < fit[0][0] < fit[0][3] < times[-1] + 1):
            found[k], spread[k] = guess, (0.1, 0.1, 0.1, 2 * noise)
            continue
        p, c, _ = fit
        found[k] = p
        spread[k] = numpy.sqrt((c[0, 0], (c[1, 1] + c[2, 2] + 2 * c[1, 2]) / 4, c[3, 3], c[5, 5]))
    return found, spread


def sway_of(level, smooth, peaks):
    """Likeness of neighbouring samples at rest, and their standard deviation [m]: from the first second before the set."""
    rest = level[: max(50, int(peaks[0]) - RATE_HZ)] if len(peaks) else level
    rest = rest - signal.savgol_filter(rest, 49, 1) if len(rest) > 49 else rest - rest.mean()
    var = float(rest @ rest) / len(rest)
    likeness = min(0.97, max(0.0, float(rest[1:] @ rest[:-1]) / len(rest) / var)) if var > 0 else 0.0
    return likeness, max(0.0005, float(numpy.sqrt(var)) * numpy.sqrt(1 - likeness**2))


def floor_of(grid, smooth, fits):
    """The level at rest at each top, and its uncertainty: a robust line through the middles of the rests (Theil-Sen)."""
    starts, ends = fits[:, 0], fits[:, 3]
    rests = [(max(grid[0], starts[0] - 2), starts[0]), *zip(ends[:-1], starts[1:]), (ends[-1], min(grid[-1], ends[-1] + 2))]
    at, levels = [], []
    for a, b in rests:
        i, j = numpy.searchsorted(grid, (a, b))
        if j - i >= 3:
            at.append((a + b) / 2)
            levels.append(numpy.median(smooth[i:j]))
    tops = (fits[:, 1] + fits[:, 2]) / 2
    if len(at) < 3:
        return numpy.full(len(tops), numpy.median(levels) if levels else smooth.min()), 0.003
    slope, intercept, _, _ = stats.theilslopes(levels, at)
    left = numpy.array(levels) - (intercept + slope * numpy.array(at))
    return intercept + slope * tops, max(0.0005, 1.4826 * float(numpy.median(numpy.abs(left))) / numpy.sqrt(len(at)))


def counts_of(share, share_u, reference_u, came_down, went_on, exists):
    """95 % bounds of valid and scored counts by draws: heights, reference and the other criteria anew, then the end rule."""
    random = numpy.random.default_rng(1)
    shape = (DRAWS, len(share))
    limit = judged_set.HEIGHT * (1 + reference_u * random.standard_normal((DRAWS, 1)))
    low = share + share_u * random.standard_normal(shape) < limit
    there = random.random(shape) < exists
    returned, rested = (random.random(shape) >= probability for probability in (came_down, went_on))
    valid = there & ~low & ~returned & ~rested
    ended = numpy.full(DRAWS, len(share))
    for faults in (low & there, rested & there):
        row = faults[:, 1:] & faults[:, :-1]
        ended = numpy.minimum(ended, numpy.where(row.any(axis=1), row.argmax(axis=1) + 1, len(share)))
    scored = valid & (numpy.arange(len(share)) <= ended[:, None])
    return [numpy.quantile(one.sum(axis=1), (0.025, 0.975), method="inverted_cdf") for one in (valid, scored)]


def slope_of(times, values):
    return stats.theilslopes(values, times)[0]


def assess(path):
    with open(path, "rb") as file:
        data = file.read()
    name, digest = os.path.basename(path), hashlib.sha256(data).hexdigest()
    grid, level, smooth, gap_s = heights(data)
    peaks, found = signal.find_peaks(smooth, prominence=judged_set.RISE, distance=RATE_HZ // 2)
    if len(peaks) == 0:
        return None, {"file": name, "sha256": digest, "attempted": 0}
    likeness, noise = sway_of(level, smooth, peaks)
    fits, spread = fits_of(stretches_of(grid, level, smooth, peaks), likeness, noise)
    file, floor = {"file": name, "sha256": digest}, floor_of(grid, smooth, fits)
    return judged_set.judgement(file, fits, spread, floor, found["prominences"], gap_s, counts_of, slope_of)


def main():
    folder, out, workers = sys.argv[1], sys.argv[2], int(sys.argv[3])
    start = time.perf_counter()
    paths = sorted(glob.glob(os.path.join(folder, "*.csv")))
    with multiprocessing.Pool(workers) as pool:
        results = list(pool.imap(assess, paths, chunksize=8))
        pool.close()
        pool.join()
    judged_set.write(results, out, len(paths), start, workers)


if __name__ == "__main__":
    main()
