"""Smooth up-hold-downs fitted to the samples of many repetitions of many sets at once.

Parameters of one: start, high from, high to, end [s]; level before, at the top, after [m]. A stack is sets x repetitions x samples;
what fills up the shorter ones weighs nothing. Departures are whitened (sway_noise.py) and counted by the soft L1 loss, so that sway
counts as the one movement it is and wild samples count little.
"""

import dataclasses

import numpy

import sway_noise
import way_shapes

SIZE = 7
SHORTEST_S = 0.06


@dataclasses.dataclass
class Stack:
    """Samples of the repetitions of sets."""

    times: numpy.ndarray
    level: numpy.ndarray
    # 1 for a sample of a stretch, 0 beyond its end and in place of a repetition
    weight: numpy.ndarray
    # a matrix for each set
    whitener: numpy.ndarray
    # shortest way of each set, sets x 1 [s]
    shortest: numpy.ndarray

    def of(self, sets):
        return Stack(*(getattr(self, field.name)[sets] for field in dataclasses.fields(self)))


@dataclasses.dataclass
class Tried:
    """What was found at parameters: where the samples lie on both ways, whitened departures, roots and misfits."""

    p: numpy.ndarray
    up: tuple
    down: tuple
    white: numpy.ndarray
    root: numpy.ndarray
    misfit: numpy.ndarray

    def of(self, sets):
        up, down = (tuple(one[sets] for one in way) for way in (self.up, self.down))
        return Tried(self.p[sets], up, down, self.white[sets], self.root[sets], self.misfit[sets])


def in_order(p, shortest):
    """Times in order, each way at least so long, in place."""
    crossed = p[..., 2] < p[..., 1]
    if crossed.any():
        p[crossed, 1] = p[crossed, 2] = (p[crossed, 1] + p[crossed, 2]) / 2
    numpy.minimum(p[..., 0], p[..., 1] - shortest, out=p[..., 0])
    numpy.maximum(p[..., 3], p[..., 2] + shortest, out=p[..., 3])
    return p


def columns_of(p):
    """The seven parameters, each to go with the samples."""
    return numpy.moveaxis(p, -1, 0)[..., None]


def tried(stack, p, up_cells, down_cells):
    """Misfit of each sample; cells of shapes follow each other in the tables, those of a repetition after its offset."""
    columns = columns_of(p)
    ways = []
    level = stack.level - columns[4]
    for (base, rise, offset), at, low in ((up_cells, 0, 4), (down_cells, 2, 5)):
        cell, into = way_shapes.places(stack.times, columns[at], columns[at + 1])
        place = cell + offset
        speed = rise.take(place)
        gone = base.take(place)
        into *= speed
        gone += into
        level -= (columns[low + 1] - columns[low]) * gone
        ways.append((cell, gone, speed))
    white = level @ stack.whitener
    root = sway_noise.soft_root(white * white)
    return Tried(p, *ways, white, root, sway_noise.soft_misfit(root) * stack.weight)


def slopes(stack, found, room):
    """Derivatives of the levels by the seven parameters, first in the room: sets x parameters x repetitions x samples."""
    columns = columns_of(found.p)
    for (cell, gone, speed), at, low in ((found.up, 0, 4), (found.down, 2, 5)):
        length = columns[at + 1] - columns[at]
        pull = single((columns[low + 1] - columns[low]) * (way_shapes.STEPS / length)) * single(speed)
        u = single((columns[at] - stack.times) / length)
        u *= pull
        room[:, at + 1] = u
        u += pull
        numpy.negative(u, out=room[:, at])
    up, down = single(found.up[1]), single(found.down[1])
    numpy.subtract(1, up, out=room[:, 4])
    numpy.subtract(up, down, out=room[:, 5])
    room[:, 6] = down


def single(values):
    """In single precision, which is plenty for a step: what it leads to is judged in double precision."""
    return values.astype(numpy.float32)


def room_for(stack, unknowns):
    """Room for derivatives by so many unknowns, and for the departures."""
    sets, count, samples = stack.times.shape
    return numpy.zeros((sets, unknowns + 1, count, samples), numpy.float32)


def products(stack, found, room):
    """Normal equations of each repetition from its derivatives, whitened here: the last row and column hold the right side."""
    white = (room.reshape(len(room), -1, room.shape[-1]) @ single(stack.whitener)).reshape(room.shape)
    white[:, -1] = found.white
    white *= single(numpy.sqrt(stack.weight / found.root))[:, None]
    rows = white.swapaxes(1, 2)
    return (rows @ rows.swapaxes(2, 3)).astype(float)


def damped(own, damping):
    """Own normal matrices with their diagonals raised by a share."""
    raised = own.copy()
    diagonal = numpy.einsum("...ii->...i", raised)
    diagonal *= 1 + damping
    diagonal += 1e-6
    return raised
