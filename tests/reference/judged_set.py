"""What follows from fitted moves and a floor, and how it is written: the same in every script that fits repetitions."""

import json
import time

import numpy
import pandas
import scipy
from scipy import special

import many_yardstick

# share of the reference, the heel down [m] and [share of the reference], a rest [s], a gap [s]
HEIGHT, RETURN_M, RETURN, REST_S, GAP_S = 0.75, 0.01, 0.1, 0.6, 0.25
# errors that no repetition knows of: of the bottom and of the model [m], of either end [s]
BOTTOM_U, MODEL_U, EDGE_U = 0.0015, 0.0008, 0.012
# lowest rise of a repetition, and how exactly it is known [m]
RISE, RISE_U = 0.02, 0.004


def judged(probability):
    return numpy.where(probability >= 0.95, "yes", numpy.where(probability <= 0.05, "no", "cannot_tell"))


def judgement(file, fits, spread, floor, rise, gap_s, bounds_of, slope_of):
    """Columns of the repetitions of a set, and the row of the set.

    file: what is known of it, its name under "file"
    fits: start, end of the way up, begin of the way down, end [s], low before, top, low after [m], a row a repetition
    spread: standard uncertainty of start, top, end [s] and height [m]
    floor: level where the heel is down, at each repetition, and its uncertainty [m]
    rise: prominence of each peak [m]
    bounds_of: of shares of the reference, their uncertainty, that of the reference, return, rest and existence
    slope_of: of times and heights
    """
    floor, floor_u = floor
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
    exists = special.ndtr((rise - RISE) / RISE_U)
    relative_u = reference_u / reference
    bounds = bounds_of(height / reference, height_u / reference, relative_u, came_down, went_on, exists)
    end = len(height)
    for faults in (high_enough < 0.5, went_on < 0.5):
        row = numpy.flatnonzero(faults[1:] & faults[:-1])
        end = min(end, int(row[0]) + 2) if len(row) else end
    repetitions = {
        "file": numpy.full(len(tops), file["file"]),
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
    row = {
        **file,
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
        "height_slope_mm_per_s": 1000 * (slope_of(tops, height) if len(tops) > 2 else numpy.nan),
    }
    return repetitions, row


def write(results, out, files, started, workers):
    """Writes both tables and prints what it took: of each file columns or None, and a row."""
    columns = [one for one, _ in results if one is not None]
    table = pandas.DataFrame({name: numpy.concatenate([one[name] for one in columns]) for name in columns[0]})
    table.to_csv(f"{out}-repetitions.csv", index=False)
    pandas.DataFrame([row for _, row in results]).to_csv(f"{out}-sets.csv", index=False)
    spent = time.perf_counter() - started
    own, child = many_yardstick.peak_mb()
    versions = {"numpy": numpy.__version__, "scipy": scipy.__version__, "pandas": pandas.__version__}
    found = {"versions": versions, "files": files, "repetitions": len(table), "seconds": spent}
    cpu = many_yardstick.processor_s()
    print(json.dumps({**found, "cpuSeconds": cpu, "peakMb": own + workers * child}))
