"""A smooth up-hold-down fitted to the samples of one repetition by scipy.optimize, with uncertainties from its curvature.

Parameters: start, high from, high to, end [s]; level before, at the top, after [m]. The speed of a way goes as u^a (1 - u)^b with
u the share of its time: a = b = 2 is minimum jerk (Flash & Hogan 1985, J Neurosci 5:1688-1703). Departures are whitened as a first-order autoregression (Cochrane & Orcutt 1949, J Am Stat Assoc
44:32-61), so that sway counts as the one movement it is; wild samples are clipped before.
"""

import numpy
from scipy import integrate, optimize

SHORTEST_S = 0.06
STEPS = numpy.linspace(0, 1, 129)


def shape(a, b, strokes=0):
    """Way and speed at equal steps of time; above 0 a way in two strokes."""
    speed = STEPS**a * (1 - STEPS) ** b * (1 + strokes * (2 * STEPS - 1) ** 2)
    way = integrate.cumulative_trapezoid(speed, STEPS, initial=0)
    return way / way[-1], speed / way[-1]


# what people are tried for: the way up, and the way down as the same backwards, so that no shape shifts the top
SHAPES = [
    (shape(a, b, strokes), shape(b, a, strokes))
    for a, b, strokes in ((2, 2, 0), (1, 1, 0), (3, 3, 0), (1.3, 2.6, 0), (2.6, 1.3, 0), (2.7, 2.7, 6))
]


def in_order(p):
    """Times in order, each way at least so long: what a step of the fit may break."""
    start, high_from, high_to, end = p[:4]
    if high_to < high_from:
        high_from = high_to = (high_from + high_to) / 2
    return min(start, high_from - SHORTEST_S), high_from, high_to, max(end, high_to + SHORTEST_S)


def shares(p, times):
    """Share of the time of the way up and down that is gone at each time, and the lengths of the ways."""
    start, high_from, high_to, end = in_order(p)
    up_s, down_s = high_from - start, end - high_to
    u = numpy.minimum(1, numpy.maximum(0, (times - start) / up_s))
    v = numpy.minimum(1, numpy.maximum(0, (times - high_to) / down_s))
    return u, v, up_s, down_s


def whitened(values, likeness):
    """Rows are samples: what each holds that the one before it did not foretell."""
    fresh = values.copy()
    fresh[1:] -= likeness * values[:-1]
    return fresh


def fit(times, level, guess, likeness, noise, rising, falling):
    """The move, its covariance, and its misfit; None where it does not settle."""
    (up_way, up_speed), (down_way, down_speed) = rising, falling

    def residuals(p):
        u, v, _, _ = shares(p, times)
        before, top, after = p[4:]
        up, down = numpy.interp(u, STEPS, up_way), numpy.interp(v, STEPS, down_way)
        return whitened((before + (top - before) * up + (after - top) * down - level) / noise, likeness)

    def slopes(p):
        u, v, up_s, down_s = shares(p, times)
        before, top, after = p[4:]
        up, down = numpy.interp(u, STEPS, up_way), numpy.interp(v, STEPS, down_way)
        pull_up = ((top - before) / up_s) * numpy.interp(u, STEPS, up_speed)
        pull_down = ((after - top) / down_s) * numpy.interp(v, STEPS, down_speed)
        columns = numpy.empty((7, len(times)))
        columns[0] = pull_up * (u - 1)
        columns[1] = -pull_up * u
        columns[2] = pull_down * (v - 1)
        columns[3] = -pull_down * v
        columns[4] = 1 - up
        columns[5] = up - down
        columns[6] = down
        columns /= noise
        columns[:, 1:] -= likeness * columns[:, :-1].copy()
        return columns

    if len(times) < 9:
        return None
    p, covariance, _, _, status = optimize.leastsq(
        residuals, guess, Dfun=slopes, col_deriv=True, full_output=True, ftol=1e-4, xtol=1e-4, maxfev=60
    )
    if status not in (1, 2, 3, 4, 5) or covariance is None:
        return None
    p[:4] = in_order(p)
    left = residuals(p)
    misfit = float(left @ left)
    return p, covariance * max(1.0, misfit / (len(times) - 7)), misfit
