"""Sway and noise of a level at rest, and the matrix that makes departures from a move independent.

Sway is noise through two equal low-pass stages, alike after a time t as (1 + t/T) exp(-t/T), beside noise of single samples. The
rows of the inverse root of the covariance give what each sample tells that those before it did not (Cholesky; the same numbers
as the innovations of a Kalman filter, Kalman 1960, J Basic Eng 82:35-45).
"""

import numpy
from scipy import linalg

# a standing heel [m, s], and what the noise is never taken to be less than [m]
USUAL_SWAY, USUAL_TIME_S, LEAST_SWAY, LEAST_WHITE = 0.002, 0.5, 0.0004, 0.0001
# samples are taken together over this time, and compared after that many of them
BLOCK_S, LAG = 0.06, 3
# rest that what is usual weighs as much as [s]
USUAL_WEIGHT_S = 1
# median of the size of a standard normal number
HALF = 0.6745
# softness of the loss: departures beyond it count less and less
SOFT = 3


def likeness(times):
    return (1 + times) * numpy.exp(-times)


# time constants after which the sway is so alike, read backwards
AGES = numpy.linspace(4, 0.1, 400)
LIKE = likeness(AGES)


def blocks_of(level, rests, per_block, floors):
    """Means of blocks within the rests about the floor there, and for each the number of its rest."""
    counts = (rests[:, 1] - rests[:, 0]) // per_block
    rest = numpy.repeat(numpy.arange(len(rests)), counts)
    within = numpy.arange(len(rest)) - numpy.repeat(numpy.cumsum(counts) - counts, counts)
    first = rests[rest, 0] + per_block * within
    sums = numpy.concatenate(([0.0], numpy.cumsum(level)))
    return (sums[first + per_block] - sums[first]) / per_block - floors[rest], rest


def spread_of(changes):
    return (float(numpy.median(numpy.abs(changes))) / HALF) ** 2 if len(changes) else 0.0


def measured(level, rests, floors, rate_hz):
    """Sway [m], its time constant [s] and noise of a sample [m], by moments; few seconds of rest count with what is usual."""
    per_block = max(1, round(BLOCK_S * rate_hz))
    blocks, rest = blocks_of(level, rests, per_block, floors)
    bends = (blocks[1:-1] - (blocks[:-2] + blocks[2:]) / 2)[rest[2:] == rest[:-2]]
    changes = (blocks[LAG:] - blocks[:-LAG])[rest[LAG:] == rest[:-LAG]]
    # the middle of two neighbours carries half a variance
    bent = spread_of(bends) / 1.5
    sizes = numpy.abs(blocks)
    calm = blocks[sizes <= max(0.002, 4 * 1.4826 * numpy.median(sizes))] if len(blocks) else blocks
    calm_s, changes_s, lag_s = len(calm) * BLOCK_S, len(changes) * BLOCK_S, LAG * BLOCK_S
    changed = spread_of(changes) / 2
    ours = bent
    for _ in range(3):
        usual = USUAL_WEIGHT_S * (USUAL_SWAY**2 + ours)
        sway = max(LEAST_SWAY**2, (float(calm @ calm) * BLOCK_S + usual) / (calm_s + USUAL_WEIGHT_S) - ours)
        forgotten = sway * (1 - likeness(lag_s / USUAL_TIME_S))
        forgot = max(0.0, changed - ours) * changes_s + forgotten * USUAL_WEIGHT_S
        time_s = lag_s / numpy.interp(1 - forgot / (changes_s + USUAL_WEIGHT_S) / sway, LIKE, AGES)
        ages = BLOCK_S / time_s
        # sway bends a little too
        ours = max(0.1 * bent, bent - sway * (1.5 - 2 * likeness(ages) + 0.5 * likeness(2 * ages)) / 1.5)
    white = numpy.sqrt(ours * per_block) if len(bends) else LEAST_WHITE
    return float(numpy.sqrt(sway)), float(time_s), max(LEAST_WHITE, float(white))


def whitener(noise, interval_s, thin, count):
    """Transposed whitening matrix for so many means of `thin` samples: rows of departures times it are independent."""
    sway, time_s, white = noise
    column = sway**2 * likeness(numpy.arange(count) * (interval_s / time_s))
    column[0] += white**2 / thin
    root = linalg.cholesky(linalg.toeplitz(column), lower=True, check_finite=False)
    inverse, _ = linalg.lapack.dtrtri(root, lower=1)
    return inverse.T


def soft_root(squares):
    """Root by which a departure counts less (soft L1, Triggs et al. 2000, LNCS 1883:298-372): 1 for a small one."""
    return numpy.sqrt(1 + squares / SOFT**2)


def soft_misfit(root):
    return 2 * SOFT**2 * (root - 1)
