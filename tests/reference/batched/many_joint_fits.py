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
import json
import multiprocessing
import os
import sys
import time

import numpy
import pandas
import scipy
from scipy import signal, special

# many_yardstick and yardstick lie a folder above
sys.path.append(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))

import at_speed
import floor_line
import floor_steps
import many_yardstick
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
# share of the reference, the heel down [m] and [share of the reference], a rest [s], a gap [s]
HEIGHT, RETURN_M, RETURN, REST_S, GAP_S = set_counts.HEIGHT, 0.01, 0.1, 0.6, 0.25
# errors that no repetition knows of: of the bottom and of the model [m], of either end [s]
BOTTOM_U, MODEL_U, EDGE_U = 0.0015, 0.0008, 0.012
# lowest rise of a repetition, and how exactly it is known [m]
RISE, RISE_U = 0.02, 0.004


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
        self.peaks, found = signal.find_peaks(self.smooth, prominence=RISE, distance=RATE_HZ // 2)
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


def judged(probability):
    return numpy.where(probability >= 0.95, "yes", numpy.where(probability <= 0.05, "no", "cannot_tell"))


def assess(paths):
    """Columns of the repetitions and a row for the set of each file."""
    recordings = [Recording(path) for path in paths]
    without_hands(recordings)
    some = [one for one in recordings if len(one.peaks)]
    fits = fits_of(some) if some else []
    floors = floors_of(some, [moves for moves, _ in fits]) if some else []
    told = iter(judgement(one, *fit, *floor[:2]) for one, fit, floor in zip(some, fits, floors))
    return [next(told) if len(one.peaks) else (None, {**one.row(), "attempted": 0}) for one in recordings]


def judgement(recording, fits, spread, floor, floor_u):
    """Columns of the repetitions of a set, and the row of the set."""
    gap_s = recording.gap_s
    tops = (fits[:, 1] + fits[:, 2]) / 2
    height = fits[:, 5] - floor
    height_u = numpy.sqrt(spread[:, 3] ** 2 + floor_u**2 + MODEL_U**2)
    best = numpy.argsort(-height[:5])[:2]
    reference, reference_u = height[best].mean(), numpy.sqrt((height_u[best] ** 2).sum()) / len(best)
    edge_u = numpy.hypot(spread[:, [0, 2]], EDGE_U)
    low_after = fits[:, 6] - floor
    rest_s = numpy.append(fits[1:, 0] - fits[:-1, 3], 0)
    rest_u = numpy.append(numpy.hypot(edge_u[:-1, 1], edge_u[1:, 0]), EDGE_U)
    share_u = numpy.hypot(height_u, HEIGHT * reference_u) / reference
    high_enough = special.ndtr((height / reference - HEIGHT) / share_u)
    down_limit = max(RETURN_M, RETURN * reference)
    came_down = special.ndtr((down_limit - low_after) / numpy.hypot(BOTTOM_U, floor_u))
    went_on = special.ndtr((REST_S - rest_s) / rest_u)
    no_gap = gap_s <= GAP_S
    valid = high_enough * came_down * went_on * no_gap
    passes = (high_enough >= 0.5) & (came_down >= 0.5) & (went_on >= 0.5) & no_gap
    exists = special.ndtr((recording.prominences - RISE) / RISE_U)
    relative_u = reference_u / reference
    bounds = set_counts.bounds(height / reference, height_u / reference, relative_u, came_down, went_on, exists)
    end = len(height)
    for faults in (high_enough < 0.5, went_on < 0.5):
        row = numpy.flatnonzero(faults[1:] & faults[:-1])
        end = min(end, int(row[0]) + 2) if len(row) else end
    repetitions = {
        "index": numpy.arange(1, len(tops) + 1),
        "start_s": fits[:, 0],
        "start_u_s": edge_u[:, 0],
        "top_s": tops,
        "top_u_s": numpy.hypot(spread[:, 1], 0.003 * (fits[:, 3] - fits[:, 0])),
        "end_s": fits[:, 3],
        "end_u_s": edge_u[:, 1],
        "height_mm": 1000 * height,
        "height_u_mm": 1000 * height_u,
        "percent_of_reference": 100 * height / reference,
        "percent_of_reference_u": 100 * share_u,
        "up_s": fits[:, 1] - fits[:, 0],
        "top_hold_s": fits[:, 2] - fits[:, 1],
        "down_s": fits[:, 3] - fits[:, 2],
        "low_s": rest_s,
        "period_s": numpy.append(numpy.nan, numpy.diff(tops)),
        "passes": passes,
        "valid": judged(valid),
        "probability_valid": valid,
        "probability": exists,
        "gap_ms": numpy.full(len(tops), 1000 * gap_s),
        "after_end": numpy.arange(len(tops)) >= end,
        "height_probability": high_enough,
        "height_verdict": judged(high_enough),
        "return_mm": 1000 * low_after,
        "return_probability": came_down,
        "return_verdict": judged(came_down),
        "rest_probability": went_on,
        "rest_verdict": judged(went_on),
    }
    slope = slope_of(tops, height) if len(tops) > 2 else numpy.nan
    row = {
        **recording.row(),
        "attempted": len(tops),
        "valid": int(passes.sum()),
        "scored": int(passes[:end].sum()),
        "valid_low": bounds[0][0],
        "valid_high": bounds[0][1],
        "scored_low": bounds[1][0],
        "scored_high": bounds[1][1],
        "reference_mm": 1000 * reference,
        "reference_u_mm": 1000 * reference_u,
        "end_at": end,
        "peak_height_mm": 1000 * height.max(),
        "mean_height_mm": 1000 * height.mean(),
        "displacement_m": height.sum(),
        "mean_period_s": numpy.diff(tops).mean() if len(tops) > 1 else numpy.nan,
        "height_slope_mm_per_s": 1000 * slope,
    }
    return {"file": numpy.full(len(tops), recording.name), **repetitions}, row


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
    columns = [one for one, _ in results if one is not None]
    table = pandas.DataFrame({name: numpy.concatenate([one[name] for one in columns]) for name in columns[0]})
    table.to_csv(f"{out}-repetitions.csv", index=False)
    pandas.DataFrame([row for _, row in results]).to_csv(f"{out}-sets.csv", index=False)
    spent = time.perf_counter() - start
    own, child = many_yardstick.peak_mb()
    versions = {"numpy": numpy.__version__, "scipy": scipy.__version__, "pandas": pandas.__version__}
    found = {"versions": versions, "files": len(paths), "repetitions": len(table), "seconds": spent}
    cpu = many_yardstick.processor_s()
    print(json.dumps({**found, "cpuSeconds": cpu, "peakMb": own + workers * child}))


if __name__ == "__main__":
    main()
