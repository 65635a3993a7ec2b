"""What stands beside a hole, at the hole's own level: how far its edge is from the members there."""

from __future__ import annotations

from routeviz.geometry import clip
from routeviz.model.members import together
from routeviz.model.route import Penetration
from routeviz.model.solids import JOIST_KINDS, RAFTER_KINDS, STUD_KINDS, Crossing, Frame, Solid, Vec3
from routeviz.units import length_text

__all__ = ["beside"]

_MEMBERS = (*JOIST_KINDS, *RAFTER_KINDS, *STUD_KINDS)
_REACH_IN = 16.0  # from the hole's edge
_LEVEL_IN = 1.5  # before and behind the layer: framing that it is fixed to is met there, over sheathing too
_TOUCHES_IN = 1 / 64
_MOST = 2


def beside(
    crossing: Penetration, size_in: tuple[float, float], axis: int, frame: Frame, cut: frozenset[str], *, metric: bool
) -> str:
    """Say how far the edge of a hole of `size_in` is from the nearest members at its level; "" where none is near.

    Measured squarely from the hole's middle line. `cut` are the solids that the duct passes anyhow.
    """
    gaps = _gaps(crossing, size_in, axis, frame, cut)
    nearest = sorted(gaps.items(), key=lambda pair: (round(pair[1], 4), pair[0]))[:_MOST]
    alike: dict[str, list[str]] = {}
    for label, gap in nearest:
        alike.setdefault(_said(gap, metric=metric), []).append(label)
    words = ", ".join(f"{said} {together(labels)}" for said, labels in alike.items())
    return f"edge {words}" if words else ""


def _said(gap_in: float, *, metric: bool) -> str:
    if abs(gap_in) < _TOUCHES_IN:
        return "touching"
    return f"{length_text(abs(gap_in), metric=metric)} {'clear of' if gap_in > 0 else 'over'}"


def _gaps(
    crossing: Penetration, size_in: tuple[float, float], axis: int, frame: Frame, cut: frozenset[str]
) -> dict[str, float]:
    """Give the nearest member on each of the four sides, by its label."""
    half = [side / along / 2 for side, along in zip(size_in, crossing.stretch, strict=True)]
    found: dict[str, float] = {}
    for own, across in zip(half, (k for k in range(3) if k != axis), strict=True):
        for sign in (-1.0, 1.0):
            met = [
                (gap, solid.label) for solid in frame.solids if _stands(solid, cut)
                if (gap := _gap(solid, crossing, axis, across, sign, own)) is not None
            ]  # fmt: skip
            if met:
                gap, label = min(met)
                found[label] = min(gap, found.get(label, gap))
    return found


def _stands(solid: Solid, cut: frozenset[str]) -> bool:
    return solid.kind in _MEMBERS and solid.crossing is not Crossing.GHOST and solid.id not in cut


def _gap(solid: Solid, crossing: Penetration, axis: int, across: int, sign: float, half_in: float) -> float | None:
    """Give the clear distance [in] from the hole's edge to a solid on one side; None where it stands at another level."""
    way = 1.0 if crossing.direction[axis] >= 0 else -1.0
    levels = (crossing.centre[axis] - way * _LEVEL_IN, crossing.centre[axis], crossing.leave[axis] + way * _LEVEL_IN)
    gaps = []
    for level in levels:
        start = _set(_set(crossing.centre, axis, level), across, crossing.centre[across])
        long = half_in + _REACH_IN
        met = clip(solid.shape, start, _set(start, across, start[across] + sign * long))
        if met is not None:
            gaps.append(met[0] * long - half_in)
    return min(gaps, default=None)


def _set(at: Vec3, axis: int, value: float) -> Vec3:
    x, y, z = (value if k == axis else c for k, c in enumerate(at))
    return x, y, z
