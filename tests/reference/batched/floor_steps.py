"""Lasting steps of the level at rest: the sensor was moved.

Each rest is down at the floor, or stays somewhat above it, or is a stray; tops lie about a line and single ones stray. A step is
taken where two floors instead of one, and tops that step by as much, make both far likelier: the greatest likelihood ratio over
its place, its size and the scatter. Moments are rows of times [s] and levels [m].
"""

import numpy

# rests on either side that speak for a step, and at least; steps that are looked for
SIDE, SIDE_LEAST, STEPS_MOST = 12, 2, 3
RAISED_SHARE, RAISED_MOST, STRAY_SHARE, STRAY_REACH = 0.25, 0.04, 0.02, 0.1
SCATTERS, USUAL = (0.0015, 0.003, 0.006), 1
LEAST_GAIN, LEAST_STEP = 9.0, 0.003
# tops by which the size is guessed, and fewest of them about a line; their spreads, share of strays and reach
TOPS_NEAR, TOPS_LEAST, TOP_SPREADS = 3, 5, numpy.float32([0.003, 0.005, 0.008, 0.012])
TOP_STRAY_SHARE, TOP_STRAY_REACH = 0.1, 0.1
# where the density of rests that are not down changes, and what it is between
EDGES = numpy.float32([-STRAY_REACH, 0, RAISED_MOST, STRAY_REACH])
NEAR_STRAY, FAR_STRAY = STRAY_SHARE / (2 * STRAY_REACH), 1e-3 * STRAY_SHARE
BESIDE = numpy.float32([FAR_STRAY, NEAR_STRAY, NEAR_STRAY + RAISED_SHARE / RAISED_MOST, NEAR_STRAY, FAR_STRAY])
ROOT_TAU = float(numpy.sqrt(2 * numpy.pi))
WINDOW = numpy.arange(-SIDE, SIDE)


def floor_likelihoods(levels, held, scatter):
    """Likeliest floor among the levels of each row, moved to the mean of those about it, and its log likelihood."""
    near = numpy.abs(levels[:, :, None] - levels[:, None, :]) < 2 * scatter
    near = near * held[:, None, :]
    floors = (near @ levels[:, :, None])[..., 0] / numpy.maximum(1, near.sum(axis=2))
    above = levels[:, None, :] - floors[:, :, None]
    density = above * above
    density *= -0.5 / scatter**2
    numpy.exp(density, out=density)
    density *= (1 - RAISED_SHARE - STRAY_SHARE) / (ROOT_TAU * scatter)
    beside = BESIDE[numpy.searchsorted(EDGES, above.ravel())].reshape(above.shape)
    density += beside
    sums = (numpy.log(density, out=density) @ held[:, :, None])[..., 0]
    sums[held == 0] = -numpy.inf
    best = sums.argmax(axis=1)
    rows = numpy.arange(len(levels))
    return floors[rows, best], sums[rows, best]


def line_likelihoods(times, levels, held):
    """Greatest log likelihood of the tops of each row about a line: weighted anew as often as it takes to settle."""
    spreads = TOP_SPREADS[:, None, None]
    weights = numpy.broadcast_to(held, (len(spreads),) + levels.shape)
    for _ in range(4):
        total = weights.sum(axis=2, keepdims=True)
        x = times - (weights * times).sum(axis=2, keepdims=True) / total
        y = levels - (weights * levels).sum(axis=2, keepdims=True) / total
        wx = weights * x
        wide = (wx * x).sum(axis=2, keepdims=True)
        left = y - x * ((wx * y).sum(axis=2, keepdims=True) / numpy.where(wide > 0, wide, 1))
        weights = held / (1 + (left / (2 * spreads)) ** 2)
    density = ((1 - TOP_STRAY_SHARE) / ROOT_TAU) * numpy.exp(-0.5 * (left / spreads) ** 2) / spreads
    density += TOP_STRAY_SHARE * numpy.where(numpy.abs(left) < TOP_STRAY_REACH, 1 / (2 * TOP_STRAY_REACH), 1e-3)
    found = (numpy.log(density) * held).sum(axis=2).max(axis=0)
    return numpy.where(held.sum(axis=1) >= TOPS_LEAST, found, 0)


def windows(moments, before):
    """Times, levels and which there are of the moments about places with so many before them; single precision is plenty."""
    at = before[:, None] + WINDOW
    held = (at >= 0) & (at < len(moments))
    near = moments[numpy.minimum(len(moments) - 1, numpy.maximum(0, at))]
    # times from the place on: they stay small
    near[..., 0] -= near[:, SIDE, 0][:, None]
    return (*numpy.float32(near).transpose(2, 0, 1), numpy.float32(held))


def median_held(values, held):
    """Median of the held values of each row, infinite where there is none."""
    count = numpy.count_nonzero(held, axis=-1)
    ordered = numpy.sort(numpy.where(held, values, numpy.inf), axis=-1)
    places = numpy.stack((numpy.maximum(0, count - 1) // 2, count // 2), axis=-1)
    return numpy.take_along_axis(ordered, places, axis=-1).mean(axis=-1)


def sizes_of(places):
    """Sizes that a step would have by the rests and by the tops, two columns; nan where they cannot tell."""
    (_, low, low_held), (_, high, high_held) = places.rests, places.tops
    before, _ = floor_likelihoods(low[:, :SIDE], low_held[:, :SIDE], SCATTERS[0])
    after, _ = floor_likelihoods(low[:, SIDE:], low_held[:, SIDE:], SCATTERS[0])
    # as many tops on one side as on the other
    beside = slice(SIDE, SIDE + TOPS_NEAR)
    after_held = high_held[:, beside] * high_held[:, SIDE - TOPS_NEAR : SIDE][:, ::-1]
    top_before = median_held(high[:, SIDE - TOPS_NEAR : SIDE], after_held[:, ::-1])
    top_after = median_held(high[:, beside], after_held)
    of_tops = numpy.full(len(high), numpy.nan)
    some = after_held.sum(axis=1) > 1
    of_tops[some] = top_after[some] - top_before[some]
    return numpy.stack(((after - before)[places.rest], of_tops), axis=1)


def places_of(rests, tops):
    """Instants between rests or tops with enough rests on either side, and how many rests lie before each."""
    times = numpy.sort(numpy.concatenate((rests[:, 0], tops[:, 0])))
    places = (times[1:] + times[:-1]) / 2
    before = numpy.searchsorted(rests[:, 0], places, side="right")
    some = (before >= SIDE_LEAST) & (len(rests) - before >= SIDE_LEAST)
    return places[some], before[some]


class Places:
    """Possible places of steps of many sets, with the rests and tops about each; places between two tops share their rests."""

    def __init__(self, sets):
        places, befores = zip(*(places_of(*one) for one in sets))
        self.owner = numpy.repeat(numpy.arange(len(sets)), [len(one) for one in places])
        self.times = numpy.concatenate(places)
        some = [numpy.unique(before) for before in befores]
        self.rests = joined(windows(rests, at) for (rests, _), at in zip(sets, some))
        self.tops = joined(windows(tops, numpy.searchsorted(tops[:, 0], at, side="right")) for (_, tops), at in zip(sets, places))
        firsts = numpy.cumsum([0] + [len(one) for one in some])
        self.rest = numpy.concatenate([first + numpy.searchsorted(one, at) for first, one, at in zip(firsts, some, befores)])


def joined(windows_of_sets):
    return [numpy.concatenate(one) for one in zip(*windows_of_sets)]


def gains_of(places, place, size):
    """How much likelier steps of sizes at places make rests and tops; -inf where it is plain that they do not."""
    after = numpy.float32(WINDOW >= 0)
    (_, low, low_held), (times, high, high_held), rest = places.rests, places.tops, places.rest[place]
    shift = numpy.float32(size)[:, None] * after
    gain = line_likelihoods(times[place], high[place] - shift, high_held[place])
    gain -= line_likelihoods(times, high, high_held)[place]
    still = floor_likelihoods(low, low_held, SCATTERS[USUAL])[1][rest]
    stepped, held = low[rest] - shift, low_held[rest]
    usual = floor_likelihoods(stepped, held, SCATTERS[USUAL])[1]
    # the usual scatter alone shows whether there is anything to weigh
    some = numpy.flatnonzero(usual - still + gain >= 0)
    gains = numpy.full(len(place), -numpy.inf)
    best, without = (
        numpy.max([floor_likelihoods(levels, held[some], scatter)[1] for scatter in SCATTERS], axis=0)
        for levels in (stepped[some], low[rest[some]])
    )
    gains[some] = best - without + gain[some]
    return gains


def likeliest_steps(sets):
    """Time and size of the likeliest step of each set of rests and tops; none where nothing is far likelier than no step."""
    places, steps = Places(sets), [None] * len(sets)
    if len(places.times) == 0:
        return steps
    sizes = sizes_of(places)
    place, which = numpy.nonzero(numpy.abs(sizes) > LEAST_STEP)
    if len(place) == 0:
        return steps
    size = sizes[place, which]
    gains = gains_of(places, place, size)
    for k in numpy.unique(places.owner[place[gains > LEAST_GAIN]]):
        best = numpy.argmax(numpy.where(places.owner[place] == k, gains, -numpy.inf))
        steps[k] = (places.times[place[best]], size[best])
    return steps


def steps_of(sets):
    """Times and sizes of the steps of each set, its rests and tops, in the order of their likelihood."""
    found = [[] for _ in sets]
    left = {k: tuple(moments.copy() for moments in one) for k, one in enumerate(sets)}
    for _ in range(STEPS_MOST):
        steps = dict(zip(left, likeliest_steps(list(left.values()))))
        left = {k: left[k] for k, step in steps.items() if step is not None}
        for k, both in left.items():
            found[k].append(steps[k])
            for moments in both:
                moments[moments[:, 0] > steps[k][0], 1] -= steps[k][1]
        if not left:
            break
    return found
