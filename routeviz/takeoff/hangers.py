"""Hangers by the spacing rule."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.catalog import table
from routeviz.model.route import Part, PartKind, Route
from routeviz.units import length_text

__all__ = ["Hanger", "hanger_places", "hangers"]


@dataclass(frozen=True, slots=True)
class Hanger:
    """One support: on which part, and how far along it from its start [in]."""

    part: str
    at_in: float
    riser: bool


def hangers(route: Route) -> tuple[Hanger, ...]:
    """Place supports: within 2 ft of each elbow, nowhere more than 10 ft apart, one for each 10 ft of a riser.

    A straight that leans less than 45 degrees off plumb counts as a riser. The hood's collar and the cap hold the
    ends of the run: a straight no longer than the rule's 2 ft needs no hanger of its own unless an elbow is at both ends.
    """
    stock = table("stock")
    spacing, within = float(stock["hanger"]["spacing_in"]), float(stock["hanger_elbow"]["within_in"])
    least = float(stock["hanger_riser"]["from_in"])
    found: list[Hanger] = []
    for at, part in enumerate(route.parts):
        if part.kind not in (PartKind.STRAIGHT, PartKind.FLEX):
            continue
        if abs(part.direction[2]) > math.sqrt(0.5):
            found += _on_riser(part, spacing, least)
        else:
            elbow_before = at > 0 and route.parts[at - 1].kind is PartKind.ELBOW
            elbow_after = at + 1 < len(route.parts) and route.parts[at + 1].kind is PartKind.ELBOW
            found += _on_run(part, elbow_before, elbow_after, spacing, within)
    return tuple(found)


def hanger_places(route: Route, every: tuple[Hanger, ...], *, metric: bool) -> str:
    """Say where the hangers go, in the order of the run: ``100 1/4 in above the floor`` or ``72 in from the left wall``."""
    parts = {p.id: p for p in route.parts}
    said: dict[str, list[str]] = {}
    for hanger in every:
        part = parts[hanger.part]
        at = [c + d * hanger.at_in for c, d in zip(part.start, part.direction, strict=True)]
        axis = 2 if hanger.riser else max((0, 1), key=lambda k: abs(part.direction[k]))
        edge = (
            "from the left wall",
            "out from the hood wall" if at[1] < 0 else "behind the hood wall's face",
            "above the floor",
        )
        said.setdefault(edge[axis], []).append(length_text(abs(at[axis]), metric=metric))
    return " and ".join(f"{' and '.join(places)} {edge}" for edge, places in said.items())


def _on_riser(part: Part, spacing_in: float, least_in: float) -> list[Hanger]:
    if part.length_in < least_in:
        return []
    count = math.ceil(part.length_in / spacing_in - 1e-9)
    return [Hanger(part.id, part.length_in * (k + 0.5) / count, True) for k in range(count)]


def _on_run(part: Part, before: bool, after: bool, spacing_in: float, within_in: float) -> list[Hanger]:
    length = part.length_in
    if not (before and after) and length <= within_in:
        return []
    if not (before or after):
        count = math.ceil(length / spacing_in - 1e-9)
        return [Hanger(part.id, length * (k + 0.5) / count, False) for k in range(count)]
    first = min(within_in, length / 2) if before else 0.0
    last = length - min(within_in, length / 2) if after else length
    ends = ([first] if before else []) + ([last] if after else [])
    if before and after and last - first <= 1e-9:
        return [Hanger(part.id, length / 2, False)]
    if before and after and length <= 2 * within_in:
        return [Hanger(part.id, length / 2, False)]
    between = math.ceil((last - first) / spacing_in - 1e-9) - 1
    step = (last - first) / (between + 1)
    inner = [first + step * (k + 1) for k in range(between)]
    return [Hanger(part.id, at, False) for at in sorted([*ends, *inner])]
