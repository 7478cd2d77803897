"""The stretch of each repetition of a set and a first guess of its move, all at once with whole columns."""

import numpy

import smooth_move
import sway_noise

# 10 to 90 % takes about this share of a smooth move
WHOLE_SHARE = 0.55
# means of as many samples as leave some so many in a stretch, and at most so many in the longest
SAMPLES, MOST_SAMPLES = 60, 180
# rest beside a move: half its way, or a quarter of a second where that is longer
BESIDE_S = 0.25


def lows_between(smooth, peaks):
    """The lowest sample before, between and after peaks."""
    edges = numpy.concatenate(([0], peaks, [len(smooth) - 1]))
    return numpy.array([a + int(smooth[a : b + 1].argmin()) for a, b in zip(edges[:-1], edges[1:])])


def last_below(smooth, starts, ends, levels):
    """Between each start and end, the last sample that is not above a level; the start where there is none."""
    lengths = ends - starts
    at = numpy.arange(lengths.sum()) + numpy.repeat(starts - (numpy.cumsum(lengths) - lengths), lengths)
    below = numpy.where(smooth[at] <= numpy.repeat(levels, lengths), at, 0)
    firsts = numpy.cumsum(lengths) - lengths
    return numpy.maximum(starts, numpy.maximum.reduceat(below, firsts))


def guesses_of(smooth, grid, peaks, lows):
    """First guesses of all moves, see smooth_move.py, a row for each."""
    before, after = lows[:-1], lows[1:]
    low, top, next_ = smooth[before], smooth[peaks], smooth[after]
    ten, ninety = (grid[last_below(smooth, before, peaks, low + share * (top - low))] for share in (0.1, 0.9))
    last = len(smooth) - 1
    back, turned = smooth[::-1], [last - after[::-1], last - peaks[::-1]]
    to_ten, from_ninety = (
        grid[last - last_below(back, *turned, (next_ + share * (top - next_))[::-1])[::-1]] for share in (0.1, 0.9)
    )
    up, down = (ninety - ten) / WHOLE_SHARE, (to_ten - from_ninety) / WHOLE_SHARE
    start, end = (ten + ninety - up) / 2, (from_ninety + to_ten + down) / 2
    peak = grid[peaks]
    return numpy.stack((start, numpy.minimum(start + up, peak), numpy.maximum(end - down, peak), end, low, top, next_), axis=1)


def reaches_of(grid, lows, guesses):
    """First and last instant that belongs to each repetition."""
    start, high_from, high_to, end = guesses.T[:4]
    before = numpy.concatenate(([-numpy.inf], end[:-1]))
    after = numpy.concatenate((start[1:], [numpy.inf]))
    left = numpy.maximum(numpy.minimum(before, grid[lows[:-1]]), start - numpy.maximum(BESIDE_S, 0.5 * (high_from - start)))
    right = numpy.minimum(numpy.maximum(after, grid[lows[1:]]), end + numpy.maximum(BESIDE_S, 0.5 * (end - high_to)))
    return left, right


def stretches_of(level, grid, reaches):
    """Samples of the stretches of one set: times, levels, which there are, and how many samples each is the mean of."""
    firsts, lasts = (numpy.searchsorted(grid, reach) for reach in reaches)
    lengths = lasts - firsts
    thin = max(1, int(numpy.median(lengths)) // SAMPLES, int(lengths.max()) // MOST_SAMPLES)
    counts = lengths // thin
    most = int(counts.max())
    places = numpy.minimum(firsts[:, None] + thin * numpy.arange(most + 1), len(level))
    sums = numpy.concatenate(([0.0], numpy.cumsum(level)))
    means = numpy.diff(sums[places], axis=1) / thin
    times = grid[firsts][:, None] + (grid[1] - grid[0]) * (thin * numpy.arange(most) + (thin - 1) / 2)
    return times, means, numpy.arange(most) < counts[:, None], thin


def filled(sets, count):
    """Rows of sets one above the other, so many of each: the last fills up the shorter ones."""
    return numpy.stack([rows[numpy.minimum(numpy.arange(count), len(rows) - 1)] for rows in sets])


def stack_of(sets, noises, step):
    """Stretches of sets (from stretches_of) with their whitening, at samples that lie so far apart."""
    count = max(len(times) for times, _, _, _ in sets)
    most = max(times.shape[1] for times, _, _, _ in sets)
    times, level, weight = numpy.zeros((3, len(sets), count, most))
    for k, (at, means, there, _) in enumerate(sets):
        rows, samples = at.shape
        times[k, :, :samples] = filled([at], count)[0]
        level[k, :rows, :samples] = means
        weight[k, :rows, :samples] = there
    thins = [thin for _, _, _, thin in sets]
    whitener = numpy.stack([sway_noise.whitener(noise, thin * step, thin, most) for noise, thin in zip(noises, thins)])
    shortest = numpy.maximum(smooth_move.SHORTEST_S, 3 * step * numpy.array(thins))[:, None]
    return smooth_move.Stack(times, level, weight, whitener, shortest)
