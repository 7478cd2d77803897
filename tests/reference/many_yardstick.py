"""What an evening with SciPy and pandas gives for a folder of recordings: repetitions of heels in a table, on all cores.

Usage: python3 many_yardstick.py FOLDER OUT WORKERS
FOLDER holds files with a first row of names: `time [s]` and `heel_height [mm]`, or those of a foot (`acc_x [m/s2]` ...), whose
lever is taken as 186 mm. Writes a row for each repetition into OUT.csv: file, index, start, top, height. Prints one JSON object:
versions, files, repetitions, seconds from start to end without the start of Python, processor time of all processes [s], and their
peak memory [MB].

Method, that of yardstick.py (feet by its own code): to 100 Hz, zero-lag Butterworth low-pass (4th order in all, 6 Hz), find_peaks with a prominence of
20 mm, height above the tenth percentile. Whole columns throughout; files go to a pool of processes in chunks.
"""

import glob
import json
import multiprocessing
import os
import resource
import sys
import time

import numpy
import pandas
import scipy
from scipy import signal

import yardstick

RATE_HZ = 100
LOW_PASS = signal.butter(2, 6, fs=RATE_HZ, output="sos")


def assess(path):
    table = pandas.read_csv(path, comment="#", engine="c", dtype=float)
    if len(table.columns) > 2:
        columns = {name.split(" ")[0]: table[name].to_numpy() for name in table.columns}
        grid, smooth = yardstick.foot_height(columns, 0.186)
    else:
        times, height = table.iloc[:, 0].to_numpy(), table.iloc[:, 1].to_numpy() / 1000
        grid = numpy.arange(times[0], times[-1], 1 / RATE_HZ)
        smooth = signal.sosfiltfilt(LOW_PASS, numpy.interp(grid, times, height))
    smooth = smooth - numpy.percentile(smooth, 10)
    peaks, found = signal.find_peaks(smooth, prominence=0.02, distance=RATE_HZ // 2)
    lows = [previous + int(numpy.argmin(smooth[previous : peak + 1])) for previous, peak in zip([0, *peaks], peaks)]
    starts = []
    for low, peak in zip(lows, peaks):
        below = numpy.flatnonzero(smooth[low:peak] <= smooth[low] + 0.1 * (smooth[peak] - smooth[low]))
        starts.append(low + (int(below[-1]) if len(below) else 0))
    return pandas.DataFrame(
        {
            "file": os.path.basename(path),
            "index": numpy.arange(1, len(peaks) + 1),
            "start_s": grid[starts],
            "top_s": grid[peaks],
            "height_mm": 1000 * smooth[peaks],
        }
    )


def peak_mb():
    own, children = (resource.getrusage(who).ru_maxrss for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    return own / 1024, children / 1024


def processor_s():
    return sum(sum(resource.getrusage(who)[:2]) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))


def main():
    folder, out, workers = sys.argv[1], sys.argv[2], int(sys.argv[3])
    start = time.perf_counter()
    paths = sorted(glob.glob(os.path.join(folder, "*.csv")))
    with multiprocessing.Pool(workers) as pool:
        tables = list(pool.imap(assess, paths, chunksize=8))
        pool.close()
        pool.join()
    table = pandas.concat(tables, ignore_index=True)
    table.to_csv(f"{out}.csv", index=False)
    spent = time.perf_counter() - start
    own, child = peak_mb()
    versions = {"numpy": numpy.__version__, "scipy": scipy.__version__, "pandas": pandas.__version__}
    found = {"versions": versions, "files": len(paths), "repetitions": len(table), "seconds": spent}
    print(json.dumps({**found, "cpuSeconds": processor_s(), "peakMb": own + workers * child}))


if __name__ == "__main__":
    main()
