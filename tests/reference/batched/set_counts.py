"""95 % bounds of how many repetitions of a set are valid, and of how many of those come before the end of the test."""

import numpy

from judged_set import HEIGHT

DRAWS = 2000
# chances nearer to 0 or 1 than this need no draws, nor heights so many standard deviations from the limit
SURE, SURE_SDS = 1e-7, 6.0


def happens(random, chances):
    """Draws of what happens with each chance, a row for each draw."""
    drawn = numpy.empty((DRAWS, len(chances)), bool)
    drawn[:] = chances >= 0.5
    open_ = numpy.flatnonzero((chances > SURE) & (chances < 1 - SURE))
    drawn[:, open_] = random.random((DRAWS, len(open_))) < chances[open_]
    return drawn


def too_low(random, share, share_u, reference_u):
    """Draws of which heights miss their share of the reference; the reference is drawn once for all of a draw."""
    apart, spread = share - HEIGHT, numpy.hypot(share_u, HEIGHT * reference_u)
    low = numpy.empty((DRAWS, len(share)), bool)
    low[:] = apart < 0
    near = numpy.flatnonzero(numpy.abs(apart) < SURE_SDS * spread)
    if len(near):
        limit = HEIGHT * (1 + reference_u * random.standard_normal((DRAWS, 1)))
        low[:, near] = share[near] + share_u[near] * random.standard_normal((DRAWS, len(near))) < limit
    return low


def ended_at(faults):
    """Number of repetitions up to the second of two faults of one kind in a row, for each draw."""
    row = faults[:, 1:] & faults[:, :-1]
    return numpy.where(row.any(axis=1), row.argmax(axis=1) + 1, faults.shape[1])


def bounds_of(counts):
    """Smallest counts that 2.5 % and 97.5 % of the draws do not exceed."""
    sums = numpy.cumsum(numpy.bincount(counts))
    return numpy.searchsorted(sums, numpy.ceil(numpy.array((0.025, 0.975)) * DRAWS))


def bounds(share, share_u, reference_u, came_down, went_on, exists):
    """Bounds of valid and scored counts: heights, reference and the other criteria drawn anew, then the end rule."""
    random = numpy.random.default_rng(1)
    low = too_low(random, share, share_u, reference_u)
    there, down, on = (happens(random, chances) for chances in (exists, came_down, went_on))
    valid = there & ~low & down & on
    scored = valid
    ends = [faults for faults in (low & there, there & ~on) if faults.any()]
    if ends:
        ended = numpy.minimum.reduce([ended_at(faults) for faults in ends])
        scored = valid & (numpy.arange(len(share)) <= ended[:, None])
    return bounds_of(valid.sum(axis=1)), bounds_of(scored.sum(axis=1))
