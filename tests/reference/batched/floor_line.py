"""The level at rest through a set: a slow robust line with steps through the rests.

Locally weighted regression (Cleveland 1979, J Am Stat Assoc 74:829-836) with weights that trust a rest the less the higher it
stays; steps of floor_steps.py are taken off first.
"""

import numpy

import floor_steps

PIECE_S, MOST_PIECES, LEAST_WEIGHT, BESIDE_S = 0.5, 3, 0.3, 8.0
REACH_S, USUAL_SLOPE, SLOPE_SCATTER, LEAST_SCATTER = 20.0, 0.003 / 60, 0.002, 0.001
# where no vote is [m]
FAR = 1e6
# votes on either side by which one is first judged, and which share of them counts as the floor
SIDE, NEAR = 12, 0.35
ABOVE, BELOW, HELD_FROM, ROUNDS = 2, 3, 0.3, 4


def rests_of(grid, starts, ends, rate_hz):
    """First and last sample of each rest, one before the first move, between moves, and one after the last."""
    froms = numpy.concatenate(([starts[0] - BESIDE_S], ends))
    tos = numpy.concatenate((starts, [ends[-1] + BESIDE_S]))
    first = numpy.ceil((numpy.maximum(froms, grid[0]) - grid[0]) * rate_hz).astype(int)
    last = numpy.floor((numpy.minimum(tos, grid[-1]) - grid[0]) * rate_hz).astype(int) + 1
    return numpy.stack((first, last), axis=1)[last > first]


def votes_of(smooth, grid, rests, rate_hz):
    """Time, level and weight of the pieces of rests, and the number of the rest of each."""
    piece = round(PIECE_S * rate_hz)
    lengths = rests[:, 1] - rests[:, 0]
    pieces = numpy.clip(numpy.rint(lengths / piece), 1, MOST_PIECES).astype(int)
    rest = numpy.repeat(numpy.arange(len(rests)), pieces)
    within = numpy.arange(len(rest)) - numpy.repeat(numpy.cumsum(pieces) - pieces, pieces)
    begin, end = (rests[rest, 0] + numpy.rint(lengths[rest] * k / pieces[rest]).astype(int) for k in (within, within + 1))
    some = end > begin
    begin, end, rest = begin[some], end[some], rest[some]
    levels = numpy.array([middle_of(smooth[a:b]) for a, b in zip(begin, end)])
    times = grid[0] + (begin + end - 1) / 2 / rate_hz
    return times, levels, LEAST_WEIGHT + numpy.minimum(1, (end - begin) / piece), rest


def middle_of(values):
    """Median of a few values, without what numpy.median does besides."""
    half = len(values) // 2
    ordered = values.copy()
    ordered.sort()
    return ordered[half] if len(values) % 2 else (ordered[half - 1] + ordered[half]) / 2


def moments_of(times, levels, _, rest):
    """One time and level for each rest, the medians of its pieces: they share its fate."""
    firsts = numpy.flatnonzero(numpy.diff(rest, prepend=-1))
    at = firsts[:, None] + numpy.arange(MOST_PIECES)
    held = at < numpy.append(firsts[1:], len(rest))[:, None]
    both = numpy.stack((times, levels))[:, numpy.minimum(at, len(rest) - 1)]
    return floor_steps.median_held(both, numpy.broadcast_to(held, both.shape)).T


def trusted(left, scatter):
    x = left / numpy.where(left > 0, ABOVE * scatter, BELOW * scatter)
    return 1 / (1 + x**4)


def low_near(levels, held):
    """The low quantile of the votes near each, sets x votes; the held ones come first."""
    count, most = held.sum(axis=1)[:, None, None], levels.shape[1]
    at = numpy.arange(most)[:, None] + numpy.arange(-SIDE, SIDE + 1)
    there = (at >= 0) & (at < count)
    ordered = numpy.sort(numpy.where(there, levels[:, numpy.minimum(most - 1, numpy.maximum(0, at))], FAR), axis=2)
    last = numpy.maximum(0, there.sum(axis=2) - 1)
    left = (NEAR * last).astype(int)
    low, high = (numpy.take_along_axis(ordered, at[..., None], 2)[..., 0] for at in (left, numpy.minimum(left + 1, last)))
    return low + (NEAR * last - left) * (high - low)


class Kernel:
    """Weights of votes about instants, by which local lines are drawn: sets x instants x votes."""

    def __init__(self, instants, votes):
        x = votes[:, None, :] - instants[:, :, None]
        self.near = numpy.exp(-0.5 * (x / REACH_S) ** 2) * (numpy.abs(x) <= 4 * REACH_S)
        self.x = x * self.near
        self.xx = x * self.x

    def line(self, weights, levels):
        """Level of the line at each instant; a slope far above what a sensor at rest has must be well supported."""
        sums = numpy.stack((weights, weights * levels), axis=2)
        total, y = numpy.moveaxis(self.near @ sums, 2, 0)
        x, xy = numpy.moveaxis(self.x @ sums, 2, 0)
        xx = (self.xx @ weights[..., None])[..., 0]
        total = numpy.maximum(total, 1e-9)
        slope = (xy - x / total * y) / (xx - x * x / total + (SLOPE_SCATTER / USUAL_SLOPE) ** 2)
        return (y - slope * x) / total

    def support(self, weights):
        weights = weights[..., None]
        return ((self.near @ weights) ** 2 / numpy.maximum(1e-18, self.near**2 @ weights**2))[..., 0]


def stepped(times, steps):
    """By how much the level has stepped at each time."""
    return sum((size * (times >= time) for time, size in steps), numpy.zeros(len(times)))


def filled(rows, most):
    """Rows of different lengths one below the other, the last value of each repeated."""
    return numpy.stack([row[numpy.minimum(numpy.arange(most), len(row) - 1)] for row in rows])


def scatter_of(left, held):
    """Spread of what is held about the line, never less than the least: 1.4826 times the median of its size, sets x 1."""
    middle = floor_steps.median_held(left, held)[:, None]
    spread = 1.4826 * floor_steps.median_held(numpy.abs(left - numpy.where(numpy.isfinite(middle), middle, 0)), held)
    return numpy.maximum(LEAST_SCATTER, numpy.where(held.sum(axis=1) > 3, spread, 0))[:, None]


def floors_at(instants, votes, steps):
    """Level at rest at the instants of each set, and its uncertainty there."""
    most = max(len(vote[0]) for vote in votes)
    held = numpy.arange(most) < numpy.array([len(vote[0]) for vote in votes])[:, None]
    times, weights = (filled([vote[k] for vote in votes], most) for k in (0, 2))
    middles = numpy.array([middle_of(levels) for _, levels, _, _ in votes])[:, None]
    flat = [levels - stepped(times, step) for (times, levels, _, _), step in zip(votes, steps)]
    levels, weights = filled(flat, most) - middles, weights * held
    trust = trusted(levels - low_near(levels, held), 2 * LEAST_SCATTER)
    kernel = Kernel(times, times)
    for _ in range(ROUNDS):
        left = levels - kernel.line(weights * trust, levels)
        scatter = scatter_of(left, held & (trust > HELD_FROM))
        trust = trusted(left, scatter)
    here = Kernel(filled(instants, max(len(one) for one in instants)), times)
    level = here.line(weights * trust, levels) + middles
    uncertainty = scatter / numpy.sqrt(numpy.maximum(1, here.support(weights * trust)))
    return [
        (one[: len(at)] + stepped(at, step), u[: len(at)]) for one, u, at, step in zip(level, uncertainty, instants, steps)
    ]
