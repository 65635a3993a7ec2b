"""Small numerics: interpolation and a bracketing root finder, in plain Python so that nothing heavy is loaded."""

from __future__ import annotations

import bisect
import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

__all__ = ["MonotoneCurve", "between", "root"]


def between(x: float, xs: Sequence[float], ys: Sequence[float]) -> float:
    """Interpolate linearly in a table; beyond its ends the end value holds.

    Examples
    --------
    >>> between(1.25, [1.0, 1.5], [0.22, 0.15])
    0.185
    """
    if x <= xs[0]:
        return ys[0]
    if x >= xs[-1]:
        return ys[-1]
    at = bisect.bisect_right(xs, x)
    share = (x - xs[at - 1]) / (xs[at] - xs[at - 1])
    return ys[at - 1] * (1 - share) + ys[at] * share


@dataclass(frozen=True, slots=True)
class MonotoneCurve:
    """A smooth curve through points that never overshoots them: cubic pieces with limited slopes.

    The slopes are those of Fritsch and Butland (1984): the weighted harmonic mean of the neighbouring chords,
    0 where the chords change sign. Beyond the ends the end value holds.
    """

    xs: tuple[float, ...]
    ys: tuple[float, ...]
    slopes: tuple[float, ...]

    @classmethod
    def through(cls, points: Sequence[tuple[float, float]]) -> MonotoneCurve:
        """Build the curve through at least two points with rising x."""
        xs, ys = tuple(x for x, _ in points), tuple(y for _, y in points)
        if len(xs) < 2 or any(b <= a for a, b in pairwise(xs)):
            raise ValueError("a curve needs at least two points with rising x")
        return cls(xs, ys, _slopes(xs, ys))

    def __call__(self, x: float) -> float:
        """Give the curve's height at x."""
        xs = self.xs
        if x <= xs[0]:
            return self.ys[0]
        if x >= xs[-1]:
            return self.ys[-1]
        at = bisect.bisect_right(xs, x) - 1
        h = xs[at + 1] - xs[at]
        t = (x - xs[at]) / h
        t2, t3 = t * t, t * t * t
        return (
            self.ys[at] * (2 * t3 - 3 * t2 + 1)
            + h * self.slopes[at] * (t3 - 2 * t2 + t)
            + self.ys[at + 1] * (3 * t2 - 2 * t3)
            + h * self.slopes[at + 1] * (t3 - t2)
        )


def _slopes(xs: tuple[float, ...], ys: tuple[float, ...]) -> tuple[float, ...]:
    h = [b - a for a, b in pairwise(xs)]
    chords = [(d - c) / w for (c, d), w in zip(pairwise(ys), h, strict=True)]
    if len(chords) == 1:
        return (chords[0], chords[0])
    inner = [_inner(h[i], h[i + 1], chords[i], chords[i + 1]) for i in range(len(chords) - 1)]
    return (_end(h[0], h[1], chords[0], chords[1]), *inner, _end(h[-1], h[-2], chords[-1], chords[-2]))


def _inner(left: float, right: float, before: float, after: float) -> float:
    if before * after <= 0:
        return 0.0
    w1, w2 = 2 * right + left, right + 2 * left
    return (w1 + w2) / (w1 / before + w2 / after)


def _end(h0: float, h1: float, near: float, far: float) -> float:
    """Three-point slope at an end, limited so that the curve stays monotone."""
    slope = ((2 * h0 + h1) * near - h0 * far) / (h0 + h1)
    if slope * near <= 0:
        return 0.0
    if near * far <= 0 and abs(slope) > 3 * abs(near):
        return 3 * near
    return slope


def root(function: Callable[[float], float], low: float, high: float, *, tolerance: float = 1e-9) -> float:
    """Find where a continuous function changes sign between two ends.

    Bisection guarded inverse quadratic interpolation (Chandrupatla 1997): never leaves the bracket and never
    needs many more steps than bisection.

    Parameters
    ----------
    function : callable
        Continuous on [low, high], with different signs (or a zero) at the ends.
    tolerance : float
        Width of the last bracket, relative to `high - low` at the start.

    Raises
    ------
    ValueError
        If both ends have the same sign.

    Examples
    --------
    >>> round(root(lambda x: x * x - 2, 0.0, 2.0), 8)
    1.41421356
    """
    a, b = high, low
    fa, fb = function(a), function(b)
    if fa == 0 or fb == 0:
        return a if fa == 0 else b
    if (fa > 0) == (fb > 0):
        raise ValueError("the function has the same sign at both ends")
    width, share = tolerance * (high - low), 0.5
    c, fc = a, fa
    for _ in range(200):
        x = a + share * (b - a)
        fx = function(x)
        if (fx > 0) == (fa > 0):
            c, fc = a, fa
        else:
            c, b, fc, fb = b, a, fb, fa
        a, fa = x, fx
        best = a if abs(fa) < abs(fb) else b
        limit = 0.5 * width / abs(b - a) if b != a else 1.0
        if limit >= 0.5 or fa == 0 or math.isclose(a, b, rel_tol=1e-15):
            return best
        share = _next_share(a, b, c, fa, fb, fc)
        share = min(max(share, limit), 1 - limit)
    return best


def _next_share(a: float, b: float, c: float, fa: float, fb: float, fc: float) -> float:
    if fa in (fb, fc) or fb == fc:
        return 0.5
    xi, phi = (a - b) / (c - b), (fa - fb) / (fc - fb)
    if not (phi**2 < xi and (1 - phi) ** 2 < 1 - xi):
        return 0.5
    return fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
