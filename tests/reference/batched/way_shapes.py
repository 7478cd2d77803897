"""Shapes of a way: share of the way against share u of its time, tabulated, with their derivatives by four parameters.

With x = 2 u - 1 the speed goes as u^start (1 - u)^end (1 + tilt x + spread x^2), the last factor never below a fiftieth: start =
end = 2 without spread and tilt is minimum jerk (Flash & Hogan 1985, J Neurosci 5:1688-1703). A shape is four numbers: logarithm of
start, logarithm of end, spread, tilt. A table has a cell for each step of time, one before the way and one after it.
"""

import numpy

STEPS = 128
TIMES = numpy.linspace(0, 1, STEPS + 1)
X = 2 * TIMES - 1
with numpy.errstate(divide="ignore"):
    LOG_GONE, LOG_LEFT = numpy.log(TIMES), numpy.log(TIMES[::-1])
# the ends of the speed are 0, whatever the exponents
INNER = slice(1, STEPS)
MINIMUM_JERK = numpy.array([numpy.log(2), numpy.log(2), 0, 0])


def speeds(shapes):
    """Speed of each shape at the inner steps, and its last factor before it is held up, a row for each shape."""
    start, end = numpy.exp(shapes[:, :2, None]).swapaxes(0, 1)
    soft = numpy.exp(start * LOG_GONE[INNER] + end * LOG_LEFT[INNER])
    stroke = 1 + X[INNER] * (shapes[:, 3, None] + X[INNER] * shapes[:, 2, None])
    return soft, stroke, start, end


def integrals(speed):
    """Trapezoids from the start to each step; the speed is 0 at both ends."""
    way = numpy.zeros(speed.shape[:-1] + (STEPS + 1,))
    numpy.cumsum(speed, axis=-1, out=way[..., INNER])
    way[..., STEPS] = way[..., STEPS - 1]
    way[..., INNER] -= speed / 2
    return way


def ways_of(shapes):
    """Share of the way at each step, a row for each shape."""
    soft, stroke, _, _ = speeds(shapes)
    way = integrals(soft * numpy.maximum(0.02, stroke))
    return way / way[:, -1:]


def slopes_of(shapes):
    """How the share of the way at each step changes with each of the four parameters, and the speed: 4 and 1 x shapes x steps."""
    soft, stroke, start, end = speeds(shapes)
    free = numpy.where(stroke > 0.02, soft, 0)
    whole = soft * numpy.maximum(0.02, stroke)
    x = X[INNER]
    changes = (whole, start * LOG_GONE[INNER] * whole, end * LOG_LEFT[INNER] * whole, x * x * free, x * free)
    way = integrals(numpy.stack(changes))
    lengths = way[..., -1:]
    speed = numpy.zeros(way.shape[1:])
    speed[:, INNER] = STEPS * whole / lengths[0]
    return (way[1:] - way[0] * (lengths[1:] / lengths[0])) / lengths[0], speed


def moments_of(ways):
    """Mean time of a way, weighted by its speed, and the standard deviation of it, for each row."""
    left = 1 - ways
    mean = (left[..., :-1] + left[..., 1:]).sum(axis=-1) / (2 * STEPS)
    twice = left * TIMES
    return mean, numpy.sqrt((twice[..., :-1] + twice[..., 1:]).sum(axis=-1) / STEPS - mean * mean)


def moment_slopes(mean, spread, slopes):
    """How mean and standard deviation change with the four parameters, 4 x shapes each."""
    means = -slopes.sum(axis=-1) / STEPS
    squares = -2 * (slopes @ TIMES) / STEPS
    return means, (squares - 2 * mean * means) / (2 * spread)


def cells_of(ways):
    """Level at the start of each cell and the rise over it: straight lines between the steps, level before and after."""
    base, rise = numpy.zeros((2,) + ways.shape[:-1] + (STEPS + 2,))
    base[..., 1:] = ways
    rise[..., 1:-1] = numpy.diff(ways, axis=-1)
    return base, rise


def middles_of(slopes):
    """Value in the middle of each cell: as near as a step of Gauss and Newton needs it."""
    middles = numpy.zeros(slopes.shape[:-1] + (STEPS + 2,))
    middles[..., 1:-1] = (slopes[..., 1:] + slopes[..., :-1]) / 2
    return middles


def places(times, start, end):
    """Cell of each time of a way from start to end, and how far into it the time is."""
    x = (times - start) * (STEPS / (end - start))
    numpy.maximum(x, -1, out=x)
    numpy.minimum(x, STEPS, out=x)
    x += 1
    cell = x.astype(numpy.intp)
    x -= cell
    return cell, x
