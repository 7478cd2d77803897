"""The same job in SciPy: repetitions of a foot set from six columns. Times itself, after loading.

Usage: python3 pipeline.py FOLDER REPEATS
FOLDER/columns.bin holds rows of time [s], acc x y z [m/s2], gyro x y z [rad/s] as float64, FOLDER/set.json the heel lever.
Prints one JSON object: version, median milliseconds, repetitions.

Method, all of it in whole columns: wild single samples out by a running median, zero-lag low-pass of the six columns, the
axis of flexion from the gyroscope, gravity at rest from the still start, tilt from the accelerometer, integral of the
gyroscope, a complementary filter of the two forward and backward, a line through the levels between the raises, peaks.
"""

import json
import pathlib
import statistics
import sys
import time

import numpy
import scipy
from scipy import integrate, ndimage, signal

G = 9.80665


def find_raises(times, columns, lever_m):
    rate_hz = 1 / numpy.median(numpy.diff(times))
    clean = ndimage.median_filter(columns, size=(3, 1))
    smooth = signal.sosfiltfilt(signal.butter(2, 6, fs=rate_hz, output="sos"), clean, axis=0)
    force, turn = smooth[:, :3], smooth[:, 3:]
    still = slice(0, int(2 * rate_hz))
    turn = turn - turn[still].mean(axis=0)
    _, vectors = numpy.linalg.eigh(turn.T @ turn)
    axis = vectors[:, -1]
    down = force[still].mean(axis=0)
    down /= numpy.linalg.norm(down)
    axis = axis - (axis @ down) * down
    axis /= numpy.linalg.norm(axis)
    ahead = numpy.cross(axis, down)
    tilt = numpy.arctan2(-(force @ ahead), force @ down)
    rate = turn @ axis
    if numpy.dot(numpy.gradient(tilt), rate) < 0:
        rate = -rate
    pitch = integrate.cumulative_trapezoid(rate, times, initial=0)
    # complementary: the integral of the gyroscope, its slow error taken from the tilt where |a| is gravity
    weight = numpy.exp(-(((numpy.linalg.norm(force, axis=1) - G) / 0.5) ** 2))
    slow = signal.butter(1, 0.1, fs=rate_hz, output="sos")
    error = signal.sosfiltfilt(slow, weight * (tilt - pitch)) / signal.sosfiltfilt(slow, weight)
    pitch = pitch + error
    if -pitch.min() > pitch.max():
        pitch = -pitch
    height = lever_m * numpy.sin(pitch)
    peaks, _ = signal.find_peaks(height, prominence=0.02, distance=int(0.5 * rate_hz))
    edges = numpy.concatenate(([0], (peaks[1:] + peaks[:-1]) // 2, [len(height)]))
    floor = numpy.polyfit(times[edges[:-1]], [numpy.percentile(height[a:b], 20) for a, b in zip(edges, edges[1:])], 1)
    raises = []
    for peak, a, b in zip(peaks, edges, edges[1:]):
        base = numpy.polyval(floor, times[peak])
        top = height[peak] - base
        high = numpy.flatnonzero(height[a:b] - base > 0.9 * top)
        raises.append({"topS": float(times[a + (high[0] + high[-1]) // 2]), "heightM": float(top)})
    return raises


def main():
    folder, repeats = pathlib.Path(sys.argv[1]), int(sys.argv[2])
    table = numpy.fromfile(folder / "columns.bin").reshape(-1, 7)
    times, columns = table[:, 0].copy(), table[:, 1:].copy()
    lever_m = json.loads((folder / "set.json").read_text())["heelLeverM"]
    spent = []
    for _ in range(repeats):
        start = time.perf_counter()
        raises = find_raises(times, columns, lever_m)
        spent.append(1000 * (time.perf_counter() - start))
    print(json.dumps({"version": scipy.__version__, "medianMs": statistics.median(spent), "raises": raises}))


main()
