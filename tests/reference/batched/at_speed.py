"""Whether a bump leaves or reaches its low at speed, as a hand on a string does and a body that stands cannot.

Each bump is fitted by smooth ways (usual, abrupt, soft, in two strokes) and by quarter sines to the powers 1 and 0.6, which are
quickest at the low end; the better of either kind stands for it. The first and the last bump are looked at, and where one of them
is drawn by a hand those further in as well.
"""

import dataclasses

import numpy

import repetition_stretches
import smooth_move
import sway_noise
import way_shapes

NOISE = (sway_noise.USUAL_SWAY, sway_noise.USUAL_TIME_S, 0.001)
# bumps from either end that a hand may have drawn; a set of many is never drawn by a hand: what most of its bumps show is a manner
EDGE, LEAST_FOR_MANNER = 8, 10
# log-likelihood ratio from which a bump is no repetition; neighbouring samples repeat each other: a fifth of them counts
LEAST_RATIO, REPEATS, MOST = 3.0, 5, 20.0
SMOOTH = numpy.array([[2, 2, 0, 0], [1, 1, 0, 0], [3, 3, 0, 0], [2.7, 2.7, 6, 0]], float)
SUDDEN = (1, 0.6)
ROUNDS, LEAST_GAIN = 8, 1e-2


def tables():
    """Cells of all shapes one after the other, those of the way up and those of the way down."""
    shapes = SMOOTH.copy()
    shapes[:, :2] = numpy.log(shapes[:, :2])
    smooth = way_shapes.ways_of(shapes)
    sudden = numpy.sin(numpy.pi / 2 * way_shapes.TIMES) ** numpy.array(SUDDEN)[:, None]
    up = numpy.concatenate((smooth, sudden))
    return way_shapes.cells_of(up), way_shapes.cells_of(numpy.concatenate((smooth, 1 - sudden[:, ::-1])))


UP, DOWN = tables()
KINDS = len(SMOOTH) + len(SUDDEN)


def misfits(stack, guesses, up_cells, down_cells):
    """Misfit of the way up and of the way down of each repetition fitted for itself, by Levenberg and Marquardt."""
    p = smooth_move.in_order(guesses.copy(), stack.shortest)
    best = smooth_move.tried(stack, p, up_cells, down_cells)
    damping = numpy.full(p.shape[:2], 1e-2)
    going = numpy.ones(p.shape[:2], bool)
    room = smooth_move.room_for(stack, smooth_move.SIZE)
    for _ in range(ROUNDS):
        smooth_move.slopes(stack, best, room)
        normal = smooth_move.products(stack, best, room)
        last = smooth_move.SIZE
        step = numpy.linalg.solve(smooth_move.damped(normal[..., :last, :last], damping[..., None]), normal[..., :last, last])
        after = smooth_move.in_order(best.p + step * going[..., None], stack.shortest)
        after = smooth_move.tried(stack, after, up_cells, down_cells)
        cost = best.misfit.sum(axis=2)
        gain = cost - after.misfit.sum(axis=2)
        better = (gain > 0) & going
        going &= numpy.where(better, gain > LEAST_GAIN * cost, damping < 1e3)
        damping = numpy.where(better, numpy.maximum(1e-6, damping / 8), damping * 6)
        if not better.all():
            p = numpy.where(better[..., None], after.p, best.p)
            after = smooth_move.tried(stack, p, up_cells, down_cells)
        best = after
        if not going.any():
            break
    rising = stack.times < (best.p[..., 1] + best.p[..., 2])[..., None] / 2
    up = (best.misfit * rising).sum(axis=2)
    return up, best.misfit.sum(axis=2) - up


def ratios(stack, guesses):
    """Log-likelihood ratio of each bump for a start and end at speed, over smooth ones: sets x bumps."""
    sets, count = guesses.shape[:2]
    kind = numpy.tile(numpy.arange(KINDS), count)
    offset = (kind * (way_shapes.STEPS + 2))[:, None]
    guess = numpy.repeat(guesses, KINDS, axis=1)
    # a sudden move begins later and ends sooner than a smooth one through the same crossings
    later = 0.2 * (kind >= len(SMOOTH))
    guess[..., 0] += later * (guess[..., 1] - guess[..., 0])
    guess[..., 3] -= later * (guess[..., 3] - guess[..., 2])
    samples = {name: numpy.repeat(getattr(stack, name), KINDS, axis=1) for name in ("times", "level", "weight")}
    all_ = dataclasses.replace(stack, **samples)
    half = numpy.maximum(1, stack.weight.sum(axis=2) / 2)
    sum_ = numpy.zeros((sets, count))
    for misfit in misfits(all_, guess, (*UP, offset), (*DOWN, offset)):
        misfit = misfit.reshape(sets, count, KINDS)
        best, rival = misfit[..., : len(SMOOTH)].min(axis=2), misfit[..., len(SMOOTH) :].min(axis=2)
        sum_ += numpy.log((best + half) / (rival + half))
    return numpy.minimum(MOST, numpy.maximum(-MOST, half * sum_ / REPEATS))


def bumps_of(sets, guesses, edges, step):
    """Stack and guesses of some bumps of each set."""
    some = [(times[edge], level[edge], there[edge], thin) for (times, level, there, thin), edge in zip(sets, edges)]
    count = max(len(edge) for edge in edges)
    picked = repetition_stretches.filled([guess[edge] for guess, edge in zip(guesses, edges)], count)
    return repetition_stretches.stack_of(some, [NOISE] * len(sets), step), picked


def drawn_by_hand(sets, guesses, step):
    """Which bumps at either end are no repetitions, a mask for each set of stretches that lie so far apart in time."""
    counts = [len(guess) for guess in guesses]
    drawn = [numpy.zeros(count, bool) for count in counts]
    outer = [numpy.array([0, count - 1]) for count in counts]
    found = ratios(*bumps_of(sets, guesses, outer, step))
    for k in numpy.flatnonzero((found > LEAST_RATIO).any(axis=1)):
        count = counts[k]
        edge = numpy.unique(numpy.r_[0 : min(EDGE, count), max(0, count - EDGE) : count])
        found = ratios(*bumps_of(sets[k : k + 1], guesses[k : k + 1], [edge], step))[0]
        manner = max(0.0, float(numpy.median(found))) if len(edge) >= LEAST_FOR_MANNER else 0.0
        sudden = numpy.zeros(count, bool)
        sudden[edge] = found - manner > LEAST_RATIO
        # from the outside in: the first that is none ends it
        drawn[k] = numpy.logical_and.accumulate(sudden) | numpy.logical_and.accumulate(sudden[::-1])[::-1]
    return drawn
