"""What an evening with SciPy gives: repetitions from CSV traces, the yardstick that detection is measured against.

Usage: python3 yardstick.py FOLDER
FOLDER/list.csv has the columns file,placement,heel_lever_m; each file has a first row of names, `time [s]` and
`heel_height [m]` or `acc_x [m/s2]` (y, z; gyro_x [rad/s] ...) or `force [N]`. Writes FOLDER/found.json: for each file
{"raises": [{"startS", "topS", "heightM"}]}.

Method: resample to 100 Hz, zero-lag Butterworth low-pass (4th order in all, 6 Hz), scipy.signal.find_peaks with a
prominence of 20 mm. Trunk and platform: band-pass 0.2-3 Hz, integrate twice with a high-pass at 0.2 Hz after each.
"""

import csv
import json
import pathlib
import sys

import numpy
from scipy import signal

RATE_HZ = 100
G = 9.80665


def read(path):
    with open(path) as file:
        names = file.readline().strip().split(",")
    values = numpy.loadtxt(path, delimiter=",", skiprows=1, ndmin=2)
    return {name.split(" ")[0]: values[:, index] for index, name in enumerate(names)}


def low_pass(samples, cutoff_hz=6):
    return signal.sosfiltfilt(signal.butter(2, cutoff_hz, fs=RATE_HZ, output="sos"), samples, axis=0)


def high_pass(samples, cutoff_hz=0.2):
    return signal.sosfiltfilt(signal.butter(2, cutoff_hz, btype="high", fs=RATE_HZ, output="sos"), samples, axis=0)


def on_grid(columns, names):
    times = columns["time"]
    grid = numpy.arange(times[0], times[-1], 1 / RATE_HZ)
    return grid, numpy.stack([numpy.interp(grid, times, columns[name]) for name in names], axis=1)


def raises_of(times, height, above_floor):
    """Peaks with a prominence of 20 mm; each starts where a tenth of its way up from the lowest point before it is gone."""
    peaks, _ = signal.find_peaks(height, prominence=0.02, distance=RATE_HZ // 2)
    raises = []
    previous = 0
    for peak in peaks:
        low = previous + int(numpy.argmin(height[previous : peak + 1]))
        level = height[low] + 0.1 * (height[peak] - height[low])
        start = peak
        while start > low and height[start] > level:
            start -= 1
        tall = height[peak] - (0 if above_floor else height[low])
        raises.append({"startS": times[start], "topS": times[peak], "heightM": tall})
        previous = peak
    return raises


def position_raises(times, height):
    return raises_of(times, height - numpy.percentile(height, 10), True)


def body_raises(times, acceleration):
    band = signal.butter(2, [0.2, 3], btype="band", fs=RATE_HZ, output="sos")
    velocity = high_pass(numpy.cumsum(signal.sosfiltfilt(band, acceleration)) / RATE_HZ)
    return raises_of(times, high_pass(numpy.cumsum(velocity) / RATE_HZ), False)


def tilt(force):
    """Angle from the posture of the first second, in the plane in which the foot turns most; positive where it goes far."""
    rest = force[:RATE_HZ].mean(axis=0)
    rest = rest / numpy.linalg.norm(rest)
    across = force - numpy.outer(force @ rest, rest)
    _, _, axes = numpy.linalg.svd(across - across.mean(axis=0), full_matrices=False)
    angle = numpy.arctan2(across @ axes[0], force @ rest)
    return angle * (1 if numpy.percentile(angle, 98) > -numpy.percentile(angle, 2) else -1)


def foot_height(columns, lever_m):
    times, force = on_grid(columns, ["acc_x", "acc_y", "acc_z"])
    angle = tilt(low_pass(force))
    if "gyro_x" in columns:
        _, turn = on_grid(columns, ["gyro_x", "gyro_y", "gyro_z"])
        turn = low_pass(turn - numpy.median(turn[:RATE_HZ], axis=0))
        _, _, axes = numpy.linalg.svd(turn, full_matrices=False)
        turned = numpy.cumsum(turn @ axes[0]) / RATE_HZ
        fast, slow = high_pass(turned, 0.1), angle - high_pass(angle, 0.1)
        angle = slow + fast * (1 if numpy.dot(fast, high_pass(angle, 0.1)) > 0 else -1)
    return times, lever_m * numpy.sin(numpy.clip(angle - numpy.percentile(angle, 10), -1.5, 1.5))


def assess(path, placement, lever_m):
    columns = read(path)
    if placement == "heel":
        times, height = on_grid(columns, ["heel_height"])
        return position_raises(times, low_pass(height[:, 0]))
    if placement == "foot":
        times, height = foot_height(columns, lever_m)
        return position_raises(times, height)
    if placement == "trunk":
        times, force = on_grid(columns, ["acc_x", "acc_y", "acc_z"])
        return body_raises(times, low_pass(numpy.linalg.norm(force, axis=1)) - G)
    times, force = on_grid(columns, ["force"])
    weight = numpy.median(force)
    return body_raises(times, low_pass(force[:, 0] - weight) / (weight / G))


def main():
    folder = pathlib.Path(sys.argv[1])
    found = {}
    with open(folder / "list.csv") as file:
        for row in csv.DictReader(file):
            lever_m = float(row["heel_lever_m"] or "nan")
            found[row["file"]] = {"raises": assess(folder / row["file"], row["placement"], lever_m)}
    (folder / "found.json").write_text(json.dumps(found))


if __name__ == "__main__":
    main()
