"""The repetitions of each set fitted together: each has its own move, and the shapes of the ways and the usual parts are common.

Posterior mode by Levenberg and Marquardt (Marquardt 1963, J Soc Ind Appl Math 11:431-441): the own parameters of each repetition
are eliminated (Schur complement), then the few shared ones solved for. Shared are the shape of the way up, of the way down
(way_shapes.py), and the usual length of way up, hold and way down. People move near minimum jerk, and down about as up backwards.

While the shape of a way changes its mean time and spread stay, so that the search goes along the valley in which softer ways last
longer, and finds ways in two strokes from minimum jerk as well: a second start there made no figure better. It ends after a few
rounds: what it would still gain is mostly sway that is taken for shape, and costs accuracy (simulated sets, seeds 1 to 200 and 1001
to 1200).
"""

import dataclasses

import numpy

import smooth_move
import sway_noise
import way_shapes

SIZE = smooth_move.SIZE
SHAPES, PARTS = 8, 3
SHARED = SHAPES + PARTS
ROUNDS = 10
DAMPING, TOLERANCE = 0.01, 1e-3
# fewer repetitions show no habit
LEAST_FOR_HABIT = 4
# spread of the parts of one person: all together, each apart [-], and at least [s]
COMMON, OWN, LEAST_OWN_S = 0.2, 0.03, 0.01
LOW = numpy.tile([numpy.log(0.7), numpy.log(0.7), -0.9, -3], 2)
HIGH = numpy.tile([numpy.log(5), numpy.log(5), 15, 3], 2)
# parts are differences of the four times
DIFFERENCES = numpy.diff(numpy.eye(4), axis=0)
ORIGIN = numpy.tile(way_shapes.MINIMUM_JERK, 2)


def precision_of_shapes():
    """Inverse covariance of the shapes of people about minimum jerk."""
    precision = numpy.diag(1 / numpy.tile([0.4, 0.4, 3, 0.7], 2) ** 2)
    # who nears the top slowly leaves it slowly, and so at the bottom: what answers what, and with which sign
    for rising, falling, sign, spread in ((1, 0, 1, 0.06), (0, 1, 1, 0.06), (2, 2, 1, 0.7), (3, 3, -1, 0.5)):
        apart = numpy.zeros(SHAPES)
        apart[rising], apart[4 + falling] = 1, -sign
        precision += numpy.outer(apart, apart) / spread**2
    return precision


SHAPE_PRECISION = precision_of_shapes()


def precision_roots(usual, counts):
    """Roots of the inverse covariances of the parts about the usual ones [1/s]: rows of parts times them are independent."""
    spread = OWN * usual
    covariance = COMMON**2 * usual[:, :, None] * usual[:, None, :] + (spread**2 + LEAST_OWN_S**2)[:, :, None] * numpy.eye(PARTS)
    roots = numpy.linalg.inv(numpy.linalg.cholesky(covariance)).swapaxes(1, 2)
    return roots * (counts >= LEAST_FOR_HABIT)[:, None, None]


@dataclasses.dataclass
class Problem:
    """Samples of sets, which repetitions there are (sets x repetitions), and roots of the precision of their parts."""

    stack: smooth_move.Stack
    there: numpy.ndarray
    roots: numpy.ndarray

    def of(self, sets):
        return Problem(self.stack.of(sets), self.there[sets], self.roots[sets])


@dataclasses.dataclass
class Together:
    """What was found at own and shared parameters of sets, with the misfit of each set."""

    shared: numpy.ndarray
    ways: numpy.ndarray
    found: smooth_move.Tried
    # departures of the parts from the habit, and their roots
    off: numpy.ndarray
    root: numpy.ndarray
    cost: numpy.ndarray

    def of(self, sets):
        shared, ways, off, root, cost = (one[sets] for one in (self.shared, self.ways, self.off, self.root, self.cost))
        return Together(shared, ways, self.found.of(sets), off, root, cost)


def ways_of(shared):
    return way_shapes.ways_of(shared[:, :SHAPES].reshape(-1, 4)).reshape(len(shared), 2, -1)


def offsets(sets):
    """Where the cells of the way up and of the way down of each set begin in tables of both for all sets."""
    up = (2 * (way_shapes.STEPS + 2) * numpy.arange(sets))[:, None, None]
    return up, up + way_shapes.STEPS + 2


def tried(problem, p, shared):
    """Misfit of sets at parameters."""
    ways = ways_of(shared)
    base, rise = way_shapes.cells_of(ways)
    up, down = offsets(len(p))
    found = smooth_move.tried(problem.stack, p, (base, rise, up), (base, rise, down))
    off = (p[..., 1:4] - p[..., :3] - shared[:, None, SHAPES:]) @ problem.roots
    root = sway_noise.soft_root((off**2).sum(axis=2))
    habit = (sway_noise.soft_misfit(root) * problem.there).sum(axis=1)
    far = shared[:, :SHAPES] - ORIGIN
    cost = found.misfit.sum(axis=(1, 2)) + habit + ((far @ SHAPE_PRECISION) * far).sum(axis=1)
    return Together(shared, ways, found, off, root, cost)


def shape_slopes(at):
    """How shares of the way (4 x sets x ways x steps), and start and end of ways of a second (4 x sets x ways), change with shapes.

    Mean time and spread of a way are held: what a fit knows well stays where it is when the shape changes.
    """
    slopes, speed = way_shapes.slopes_of(at.shared[:, :SHAPES].reshape(-1, 4))
    ways = at.ways.reshape(slopes.shape[1:])
    mean, spread = way_shapes.moments_of(ways)
    means, spreads = way_shapes.moment_slopes(mean, spread, slopes)
    longer = -spreads / spread
    start = -means - mean * longer
    slopes -= speed * (start[..., None] + longer[..., None] * way_shapes.TIMES)
    shape = (4,) + at.ways.shape[:2]
    return slopes.reshape(shape + (-1,)), start.reshape(shape), (start + longer).reshape(shape)


def level_slopes(at, slopes, room):
    """Derivatives of the levels by the shapes, behind those by the own parameters."""
    tables = smooth_move.single(way_shapes.middles_of(slopes))
    p = at.found.p
    for way, ((cell, _, _), offset) in enumerate(zip((at.found.up, at.found.down), offsets(len(p)))):
        place = cell + offset
        tall = smooth_move.single(p[..., 5 + way] - p[..., 4 + way])[..., None]
        for k in range(4):
            numpy.multiply(tables[k].take(place), tall, out=room[:, SIZE + 4 * way + k])


def time_slopes(start, end):
    """How the four times change with the eight parameters of the shapes, for ways of a second: sets x 4 x 8."""
    changes = numpy.zeros((start.shape[1], 4, SHAPES))
    for way in (0, 1):
        here = slice(4 * way, 4 * way + 4)
        changes[:, 2 * way, here], changes[:, 2 * way + 1, here] = start[..., way].T, end[..., way].T
    return changes


def habit_slopes(problem, at, times):
    """Derivatives of what a repetition departs from the habit by its unknowns and the shared ones."""
    p, usual = at.found.p, at.shared[:, None, SHAPES:]
    slopes = numpy.zeros(p.shape[:2] + (PARTS, SIZE + SHARED))
    slopes[..., :4] = DIFFERENCES
    longer = p[..., [1, 3]] - p[..., [0, 2]] - usual[..., [0, 2]]
    slopes[..., SIZE : SIZE + SHAPES] = numpy.repeat(longer, 4, axis=2)[:, :, None, :] * (DIFFERENCES @ times)[:, None]
    slopes[..., SIZE + SHAPES :] = -numpy.eye(PARTS)
    return problem.roots.swapaxes(1, 2)[:, None] @ slopes


def equations(problem, at):
    """Own matrices, own right sides with what couples them to the shared ones, and matrix and right side of the shared ones."""
    slopes, *edges = shape_slopes(at)
    last = SIZE + SHAPES
    room = smooth_move.room_for(problem.stack, last)
    smooth_move.slopes(problem.stack, at.found, room)
    level_slopes(at, slopes, room)
    seen = smooth_move.products(problem.stack, at.found, room)
    habit = habit_slopes(problem, at, time_slopes(*edges))
    weighted = habit.swapaxes(2, 3) * (problem.there / at.root)[..., None, None]
    normal = weighted @ habit
    right = -(weighted @ at.off[..., None])
    normal[..., :last, :last] += seen[..., :last, :last]
    right[..., :last, :] += seen[..., :last, last:]
    sides = numpy.concatenate((right[..., :SIZE, :], normal[..., :SIZE, SIZE:]), axis=3)
    shared, shared_right = normal[..., SIZE:, SIZE:].sum(axis=1), right[..., SIZE:, 0].sum(axis=1)
    shared[:, :SHAPES, :SHAPES] += SHAPE_PRECISION
    shared_right[:, :SHAPES] -= (at.shared[:, :SHAPES] - ORIGIN) @ SHAPE_PRECISION
    return [normal[..., :SIZE, :SIZE], sides, shared, shared_right]


def step_of(own, sides, shared, right, damping):
    """Steps of the own and of the shared parameters, and the gain that they promise."""
    sets, count = own.shape[:2]
    solved = numpy.linalg.solve(smooth_move.damped(own, damping[:, None, None]), sides)
    taken = sides[..., 1:].reshape(sets, -1, SHARED).swapaxes(1, 2) @ solved.reshape(sets, -1, 1 + SHARED)
    left = smooth_move.damped(shared, damping[:, None]) - taken[..., 1:]
    free = right - taken[..., 0]
    common = numpy.linalg.solve(left, free)
    promised = (sides[..., 0] * solved[..., 0]).sum(axis=(1, 2)) + (common * free).sum(axis=1)
    return solved[..., 0] - (solved[..., 1:] @ common[:, None, :, None])[..., 0], common, promised


def stretched(times, old, new):
    """Start and end of ways that keep mean time and spread when their shape changes, in place."""
    length = times[..., 1] - times[..., 0]
    longer = length * (old[1] / new[1])[:, None]
    times[..., 0] += length * old[0][:, None] - longer * new[0][:, None]
    numpy.add(times[..., 0], longer, out=times[..., 1])


def reshaped(p, shared, old_ways, new_ways):
    """Own times and usual parts follow the shapes, in place."""
    usual = numpy.zeros((len(p), 1, 4))
    numpy.cumsum(shared[:, None, SHAPES:], axis=2, out=usual[..., 1:])
    times = numpy.concatenate((p[..., :4], usual), axis=1)
    old, new = way_shapes.moments_of(old_ways), way_shapes.moments_of(new_ways)
    for way in (0, 1):
        stretched(times[..., 2 * way : 2 * way + 2], *([one[:, way] for one in moments] for moments in (old, new)))
    p[..., :4] = times[:, :-1]
    numpy.maximum(0, numpy.diff(times[:, -1]), out=shared[:, SHAPES:])


def moved(state, own_step, common_step, shortest):
    """Parameters after a step."""
    p, shared, ways = state.p + own_step, state.shared.copy(), state.ways
    shared += numpy.minimum(0.7, numpy.maximum(-0.7, common_step))
    shared[:, :SHAPES] = numpy.minimum(HIGH, numpy.maximum(LOW, shared[:, :SHAPES]))
    reshaped(p, shared, ways, ways_of(shared))
    return smooth_move.in_order(p, shortest), shared


@dataclasses.dataclass
class State:
    """The best so far of each set."""

    p: numpy.ndarray
    shared: numpy.ndarray
    ways: numpy.ndarray
    cost: numpy.ndarray
    # misfit of each repetition
    misfit: numpy.ndarray
    system: list

    def rows(self):
        return [self.p, self.shared, self.ways, self.cost, self.misfit, *self.system]

    def of(self, sets):
        p, shared, ways, cost, misfit, *system = (one[sets] for one in self.rows())
        return State(p, shared, ways, cost, misfit, system)

    def take(self, sets, other):
        for mine, theirs in zip(self.rows(), other.rows()):
            mine[sets] = theirs


def state_of(problem, at):
    return State(at.found.p, at.shared, at.ways, at.cost, at.found.misfit.sum(axis=2), equations(problem, at))


def search(problem, p, shared):
    """The likeliest parameters of each set near a start, damped by what the last step gained (Nielsen 1999, IMM-REP-1999-05)."""
    best = state_of(problem, tried(problem, p, shared))
    least = TOLERANCE * problem.stack.weight.sum(axis=(1, 2))
    active, here, now = numpy.arange(len(p)), problem, best.of(slice(None))
    damping, growth = numpy.full(len(p), DAMPING), numpy.full(len(p), 4.0)
    for _ in range(ROUNDS):
        *steps, promised = step_of(*now.system, damping)
        at = tried(here, *moved(now, *steps, here.stack.shortest))
        gain = now.cost - at.cost
        better = gain > 0
        if better.all():
            now = state_of(here, at)
        elif better.any():
            some = numpy.flatnonzero(better)
            now.take(some, state_of(here.of(some), at.of(some)))
        ratio = numpy.maximum(1 / 9, 1 - (2 * gain / promised - 1) ** 3)
        damping = numpy.where(better, numpy.maximum(1e-6, damping * ratio), damping * growth)
        growth = numpy.where(better, 4.0, 2 * growth)
        going = ~(better & (gain < numpy.maximum(least[active], TOLERANCE * now.cost))) & (damping < 1e4)
        if not going.all():
            best.take(active, now)
            going = numpy.flatnonzero(going)
            active, here, now, damping, growth = active[going], here.of(going), now.of(going), damping[going], growth[going]
            if len(active) == 0:
                return best
    best.take(active, now)
    return best


def start_of(stack, guesses, there):
    """Guesses in order, with minimum jerk and the usual parts of each set."""
    p = smooth_move.in_order(guesses.copy(), stack.shortest)
    parts = numpy.where(there[..., None], p[..., 1:4] - p[..., :3], numpy.nan)
    usual = numpy.nanmedian(parts, axis=1)
    return p, numpy.concatenate((numpy.tile(ORIGIN, (len(p), 1)), usual), axis=1)


def fit(stack, guesses, there):
    """Parameters of each repetition of each set, and their covariance with the shapes as they are."""
    p, shared = start_of(stack, guesses, there)
    problem = Problem(stack, there, precision_roots(shared[:, SHAPES:], there.sum(axis=1)))
    best = search(problem, p, shared)
    surprise = numpy.sqrt(best.misfit / numpy.maximum(1, stack.weight.sum(axis=2)))
    covariance = numpy.linalg.inv(smooth_move.damped(best.system[0], 1e-9))
    return best.p, covariance * numpy.maximum(1, surprise)[..., None, None] ** 2
