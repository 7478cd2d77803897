"""How fast NumPy gets at the work of the command line: the joint fits of 32 recordings at once, in the same calls, on all cores.

Usage: python3 many_joint_fits.py FOLDER OUT WORKERS
FOLDER holds files with a first row of names: `time [s]` and `heel_height [mm]`, or those of a foot (`acc_x [m/s2]` ...), whose
lever is taken as 186 mm. Writes OUT-repetitions.csv and OUT-sets.csv. Prints one JSON object: versions, files, repetitions,
seconds from start to end without the start of Python, processor time of all processes [s], and their peak memory [MB].

For each file: SHA-256 of its bytes, the height, peaks (find_peaks), those at either end that a hand at the string made
(at_speed.py), sway and noise at rest (sway_noise.py), smooth moves fitted to all repetitions together with the shapes of the ways
as continuous parameters (shared_shapes.py), the floor as a slow line with steps (floor_line.py, floor_steps.py), heights above
it with their uncertainty, a reference from the best two of the first five, the criteria of height, return, rest and gap with
probabilities, the end after two faults of one kind in a row, and the bounds of the counts from 2000 draws through criteria and
end rule (set_counts.py). What is heavy is done for a batch of files in the same calls, so that little time goes into calling.

Not done here: strides and footfalls beside the set are not told from raises, tops with dips are fitted as one, gaps only cost
the verdict, and tempo, bounce and the like are not judged.
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
from scipy import signal

# judged_set and yardstick lie a folder above
sys.path.append(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))

import at_speed
import floor_line
import floor_steps
import judged_set
import repetition_stretches
import set_counts
import shared_shapes
import sway_noise
import yardstick

RATE_HZ = 100
LOW_PASS = signal.butter(2, 6, fs=RATE_HZ, output="sos")
# files that a process takes at once at most
BATCH = 32
# larger files are read by pandas, which is slower to begin and quicker to go on [bytes]
LARGE = 1 << 20


def columns_of(data):
    """Names without units, and the values of each."""
    if len(data) > LARGE:
        table = pandas.read_csv(io.BytesIO(data), comment="#", engine="c", dtype=float)
        return [name.split(" ")[0] for name in table.columns], [table[name].to_numpy() for name in table.columns]
    lines = io.BytesIO(data)
    while (head := lines.readline()).startswith(b"#"):
        pass
    return [name.split(" ")[0] for name in head.decode().split(",")], numpy.loadtxt(lines, delimiter=",", ndmin=2).T


class Recording:
    """One file: its name, its level, and its peaks with first guesses of the moves."""

    def __init__(self, path):
        with open(path, "rb") as file:
            data = file.read()
        self.name, self.digest = os.path.basename(path), hashlib.sha256(data).hexdigest()
        self.grid, self.level, self.smooth, self.gap_s = heights(data)
        self.peaks, found = signal.find_peaks(self.smooth, prominence=judged_set.RISE, distance=RATE_HZ // 2)
        self.prominences = found["prominences"]
        self.keep(slice(None))

    def keep(self, some):
        """Leaves some of the peaks; whether there are any."""
        self.peaks, self.prominences = self.peaks[some], self.prominences[some]
        if len(self.peaks):
            lows = repetition_stretches.lows_between(self.smooth, self.peaks)
            self.guesses = repetition_stretches.guesses_of(self.smooth, self.grid, self.peaks, lows)
            self.reaches = repetition_stretches.reaches_of(self.grid, lows, self.guesses)
            self.stretches = repetition_stretches.stretches_of(self.level, self.grid, self.reaches)
        return len(self.peaks) > 0

    def row(self):
        return {"file": self.name, "sha256": self.digest}


def heights(data):
    """Times and height at 100 Hz, as it is and low-passed, and the longest interval between samples."""
    names, columns = columns_of(data)
    times = columns[0]
    gap = float(numpy.diff(times).max())
    if len(names) > 2:
        grid, level = yardstick.foot_height(dict(zip(names, columns)), 0.186)
        return grid, level, level, gap
    grid = numpy.arange(times[0], times[-1], 1 / RATE_HZ)
    level = numpy.interp(grid, times, columns[1] / 1000)
    return grid, level, signal.sosfiltfilt(LOW_PASS, level), gap


def floors_of(recordings, moves):
    """For each recording the level at rest at the tops and its uncertainty there, the rests, and the level in their middles."""
    rests = [floor_line.rests_of(one.grid, move[:, 0], move[:, 3], RATE_HZ) for one, move in zip(recordings, moves)]
    votes = [floor_line.votes_of(one.smooth, one.grid, rest, RATE_HZ) for one, rest in zip(recordings, rests)]
    tops = [numpy.stack(((move[:, 1] + move[:, 2]) / 2, move[:, 5]), axis=1) for move in moves]
    moments = [floor_line.moments_of(*vote) for vote in votes]
    steps = floor_steps.steps_of(list(zip(moments, tops)))
    middles = [one.grid[0] + rest.mean(axis=1) / RATE_HZ for one, rest in zip(recordings, rests)]
    instants = [numpy.concatenate((top[:, 0], middle)) for top, middle in zip(tops, middles)]
    found = zip(floor_line.floors_at(instants, votes, steps), tops, rests)
    return [(level[: len(top)], u[: len(top)], rest, level[len(top) :]) for (level, u), top, rest in found]


def without_hands(recordings):
    """Takes out of recordings the peaks that a hand at the string made."""
    looked_at = [one for one in recordings if len(one.peaks)]
    while looked_at:
        sets, guesses = [one.stretches for one in looked_at], [one.guesses for one in looked_at]
        drawn = at_speed.drawn_by_hand(sets, guesses, 1 / RATE_HZ)
        looked_at = [one for one, mask in zip(looked_at, drawn) if mask.any() and one.keep(~mask)]


def fits_of(recordings):
    """For each recording parameters and standard uncertainties (start, top, end, level of the top); a fit that ran off is none."""
    noises = [
        sway_noise.measured(one.level, rests, floors, RATE_HZ)
        for one, (_, _, rests, floors) in zip(recordings, floors_of(recordings, [one.guesses for one in recordings]))
    ]
    stack = repetition_stretches.stack_of([one.stretches for one in recordings], noises, 1 / RATE_HZ)
    counts = numpy.array([len(one.guesses) for one in recordings])
    guesses = repetition_stretches.filled([one.guesses for one in recordings], counts.max())
    moves, c = shared_shapes.fit(stack, guesses, numpy.arange(counts.max()) < counts[:, None])
    variances = (c[..., 0, 0], (c[..., 1, 1] + c[..., 2, 2] + 2 * c[..., 1, 2]) / 4, c[..., 3, 3], c[..., 5, 5])
    spreads = numpy.sqrt(numpy.stack(variances, axis=-1))
    found = []
    for one, move, spread, noise, count in zip(recordings, moves, spreads, noises, counts):
        move, spread = move[:count].copy(), spread[:count].copy()
        left, right = one.reaches
        lost = ~((left - 1 < move[:, 0]) & (move[:, 0] < move[:, 3]) & (move[:, 3] < right + 1))
        move[lost], spread[lost] = one.guesses[lost], (0.1, 0.1, 0.1, 2 * noise[0])
        found.append((move, spread))
    return found


def slope_of(times, values):
    """Median of the slopes between all pairs (Theil-Sen)."""
    i, j = numpy.triu_indices(len(times), 1)
    return float(numpy.median((values[j] - values[i]) / (times[j] - times[i])))


def assess(paths):
    """Columns of the repetitions and a row for the set of each file."""
    recordings = [Recording(path) for path in paths]
    without_hands(recordings)
    some = [one for one in recordings if len(one.peaks)]
    fits = fits_of(some) if some else []
    floors = floors_of(some, [moves for moves, _ in fits]) if some else []
    told = (judgement(one, *fit, floor[:2]) for one, fit, floor in zip(some, fits, floors))
    return [next(told) if len(one.peaks) else (None, {**one.row(), "attempted": 0}) for one in recordings]


def judgement(recording, fits, spread, floor):
    bounds_of, (rise, gap_s) = set_counts.bounds, (recording.prominences, recording.gap_s)
    return judged_set.judgement(recording.row(), fits, spread, floor, rise, gap_s, bounds_of, slope_of)


def main():
    folder, out, workers = sys.argv[1], sys.argv[2], int(sys.argv[3])
    start = time.perf_counter()
    paths = sorted(glob.glob(os.path.join(folder, "*.csv")))
    with multiprocessing.Pool(workers) as pool:
        size = max(1, min(BATCH, -(-len(paths) // workers)))
        batches = [paths[k : k + size] for k in range(0, len(paths), size)]
        results = [one for batch in pool.imap(assess, batches) for one in batch]
        pool.close()
        pool.join()
    judged_set.write(results, out, len(paths), start, workers)


if __name__ == "__main__":
    main()
