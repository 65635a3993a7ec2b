"""The moves of a duct: which way a run may go, how elbows turn it, and what room each takes."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import NamedTuple

from routeviz.model.freespace import FreeSpace, Limits, Section
from routeviz.model.scene import SectionShape

__all__ = ["END", "START", "Body", "Moves", "State", "Turn", "lying", "moves"]

START = -1  # the entry of a run that begins at the collar
END = -1  # the exit of a run that ends at the cap

Body = tuple[tuple[int, int], tuple[int, int], tuple[int, int]]


class State(NamedTuple):
    """A run's direction, and the axis along which a rectangular section's wide side lies (-1 for round)."""

    axis: int
    sign: int
    wide: int


class Turn(NamedTuple):
    """An elbow from one state into another: its kind, and the number of the body it takes round its corner."""

    source: int
    target: int
    kind: int
    body: int


@dataclass(frozen=True)
class Moves:
    """States, turns and lengths of one section.

    `bodies` are the boxes that an elbow takes round its corner, `tubes` what its two straight halves alone take;
    the true elbow lies between them. `legs` are two boxes inside the true elbow, one at each end, where its centre line
    has left the straight by no more than a quarter of the duct. `take_off` is the length from the corner to the end of the fitting, per kind.
    """

    states: tuple[State, ...]
    turns: tuple[Turn, ...]
    bodies: tuple[Body, ...]
    tubes: tuple[Body, ...]
    legs: tuple[tuple[Body, ...], tuple[Body, ...]]
    take_off: tuple[int, ...]
    section: Section
    limits: Limits

    def parts(self, *, relaxed: bool, legs: bool) -> tuple[tuple[Body, ...], ...]:
        """Give what elbows take, as bodies by number: one whole body, or the parts that are surely inside the true one."""
        if not relaxed:
            return (self.bodies,)
        return (self.tubes, *self.legs) if legs else (self.tubes,)

    def half(self, state: State) -> tuple[int, int, int]:
        """Give the half sizes across the run along x, y and z; 0 along the run itself."""
        sizes = [self.section.half_high] * 3
        if state.wide >= 0:
            sizes[state.wide] = self.section.half_wide
        sizes[state.axis] = 0
        return sizes[0], sizes[1], sizes[2]

    def lag(self, entry: int, leave: int) -> int:
        """Give the least centre-line length of a run that begins with `entry` and ends with `leave`.

        Both are elbow kinds, or `START` and `END`. A run with an elbow at both ends holds both take-offs and the
        wanted straight between them.
        """
        if entry == START and leave == END:
            return max(self.limits.first, self.limits.last, 1)
        length = self.take_off[entry] if entry >= 0 else self.limits.first
        length += self.take_off[leave] if leave >= 0 else self.limits.last
        return length + (self.limits.between if entry >= 0 and leave >= 0 else 0)

    def number(self, axis: int, sign: int, wide: int) -> int:
        """Give a state's number."""
        return self.states.index(State(axis, sign, wide))


def lying(space: FreeSpace, table: Moves) -> Iterator[State]:
    """Give the ways in which the duct may lie on the collar."""
    for state in table.states:
        if state[:2] == (space.start.axis, space.start.sign) and (
            state.wide < 0 or state.wide in space.start.wide_axes
        ):
            yield state


def _turned(section: Section, state: State, axis: int) -> tuple[int, int, int, int, int]:
    """Give what a turn towards `axis` does: wide axis after, kind, half in the bend's plane, half across, radius."""
    if state.wide < 0:
        return -1, 0, section.half_high, section.half_high, section.radius_high
    if state.wide == axis:  # the wide side lies in the plane of the bend and turns with it: the hard way
        return state.axis, 1, section.half_wide, section.half_high, section.radius_wide
    return state.wide, 0, section.half_high, section.half_wide, section.radius_high


def _extent(sign: int, half: int, reach: int) -> tuple[int, int]:
    """Give the extent of an elbow's body along one of its two axes; it leaves the corner towards `sign`."""
    return (-half, reach) if sign > 0 else (-reach, half)


_INSIDE = 0.866  # half the chord of a circle at half its radius, rounded down


def _legs(section: Section, state: State, axis: int, sign: int) -> tuple[Body, Body]:
    """Give a box inside each end of an elbow that turns a run towards `sign` along `axis`."""
    _, _, in_plane, across, radius = _turned(section, state, axis)
    if radius <= in_plane:
        thin = (-in_plane, in_plane)
        return (thin, thin, thin), (thin, thin, thin)
    length = math.isqrt(radius * in_plane - in_plane * in_plane // 4 - 1)
    side = across if section.size.shape is SectionShape.RECT else int(across * _INSIDE)
    found = []
    for along, toward, other, aside in ((state.axis, -state.sign, axis, sign), (axis, sign, state.axis, -state.sign)):
        box = [(-side, side)] * 3
        box[along] = _extent(toward, length - radius, radius)
        box[other] = _extent(aside, 0, in_plane // 2)
        found.append((box[0], box[1], box[2]))
    return found[0], found[1]


def moves(section: Section, limits: Limits) -> Moves:
    """Build the table of moves: 6 states for round and square duct, 12 for rectangular and oval duct."""
    wides = [[t for t in range(3) if t != a] if section.turns else [-1] for a in range(3)]
    states = tuple(State(a, s, w) for a in range(3) for s in (1, -1) for w in wides[a])
    bodies: dict[Body, int] = {}
    tubes: list[Body] = []
    legs: list[tuple[Body, Body]] = []
    turns = []
    for source, state in enumerate(states):
        for axis in range(3):
            if axis == state.axis:
                continue
            wide, kind, in_plane, across, radius = _turned(section, state, axis)
            for sign in (1, -1):
                full, thin = [(-across, across)] * 3, [(-across, across)] * 3
                full[state.axis] = _extent(-state.sign, in_plane, max(radius, in_plane))
                full[axis] = _extent(sign, in_plane, max(radius, in_plane))
                thin[state.axis] = thin[axis] = (-in_plane, in_plane)
                body: Body = (full[0], full[1], full[2])
                if body not in bodies:
                    bodies[body] = len(bodies)
                    tubes.append((thin[0], thin[1], thin[2]))
                    legs.append(_legs(section, state, axis, sign))
                turns.append(Turn(source, states.index(State(axis, sign, wide)), kind, bodies[body]))
    ends = tuple(pair[0] for pair in legs), tuple(pair[1] for pair in legs)
    radii = (section.radius_high, section.radius_wide) if section.turns else (section.radius_high,)
    return Moves(states, tuple(turns), tuple(bodies), tuple(tubes), ends, radii, section, limits)
