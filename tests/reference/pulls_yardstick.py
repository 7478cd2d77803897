"""What an evening with SciPy gives: isometric efforts from force traces, the yardstick of their measurement.

Usage: python3 pulls_yardstick.py FOLDER COUNT
FOLDER holds 0.f64 .. COUNT-1.f64, each the times [s] and then the forces [N] of one recording as float64. Writes
FOLDER/found.json: for each file a list of {"onset_s", "peak_s", "peak", "mean", "rate_200"}.

Method: resample to the median rate; baseline = median of the first 1.5 s; zero-lag Butterworth low-pass (4th order in all,
20 Hz); efforts are stretches above 20 % of the greatest force that last 0.3 s; the onset is the last sample before
that lies within 3 standard deviations of the mean of the quiet second before; peak of the low-passed force; greatest mean over
0.5 s; mean rate over 0.2 s from the onset.
"""

import json
import pathlib
import sys

import numpy
from scipy import signal


def efforts(times, force):
    rate = 1 / numpy.median(numpy.diff(times))
    grid = numpy.arange(times[0], times[-1], 1 / rate)
    raw = numpy.interp(grid, times, force)
    raw = raw - numpy.median(raw[: int(1.5 * rate)])
    smooth = signal.sosfiltfilt(signal.butter(2, min(20, 0.4 * rate), fs=rate, output="sos"), raw)
    above = smooth > 0.2 * smooth.max()
    edges = numpy.flatnonzero(numpy.diff(above.astype(int), prepend=0, append=0))
    found = []
    for start, end in zip(edges[::2], edges[1::2]):
        if end - start < 0.3 * rate:
            continue
        quiet = smooth[max(0, start - int(2 * rate)) : max(4, start - int(1 * rate))]
        low, high = quiet.mean() - 3 * quiet.std(), quiet.mean() + 3 * quiet.std()
        onset = start
        while onset > 0 and not low <= smooth[onset] <= high:
            onset -= 1
        base = quiet.mean()
        window = int(round(0.5 * rate))
        held = raw[start:end]
        if len(held) < window:
            continue
        sums = numpy.concatenate(([0.0], numpy.cumsum(held)))
        top = start + int(numpy.argmax(smooth[start:end]))
        later = onset + int(round(0.2 * rate))
        found.append(
            {
                "onset_s": grid[onset],
                "peak_s": grid[top],
                "peak": smooth[top] - base,
                "mean": float(((sums[window:] - sums[:-window]) / window).max() - base),
                "rate_200": (smooth[later] - smooth[onset]) / 0.2 if later < len(smooth) else None,
            }
        )
    return found


folder = pathlib.Path(sys.argv[1])
results = []
for index in range(int(sys.argv[2])):
    values = numpy.fromfile(folder / f"{index}.f64")
    results.append(efforts(values[: len(values) // 2], values[len(values) // 2 :]))
(folder / "found.json").write_text(json.dumps(results))
