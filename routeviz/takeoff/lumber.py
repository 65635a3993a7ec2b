"""Lumber and ties for the members that the duct passes."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.catalog import table
from routeviz.geometry import bounds
from routeviz.model.finding import Finding, MemberRuling, MemberVerdict
from routeviz.model.route import Penetration, Route
from routeviz.model.scene import Scene
from routeviz.model.solids import JOIST_KINDS, RAFTER_KINDS, STUD_KINDS, Frame, Solid, SolidKind
from routeviz.model.takeoff import BuyLine
from routeviz.takeoff.holes import main_axis
from routeviz.units import length_text

__all__ = ["Opening", "cut_members", "lumber_lines", "openings", "ruled_words"]

_FRAMED = (SolidKind.STUD, SolidKind.JACK, SolidKind.JOIST, SolidKind.RAFTER)


@dataclass(frozen=True, slots=True)
class Opening:
    """A member that the duct cuts through, and the framed opening that takes over its load."""

    member: str
    label: str
    nominal: str
    header_in: float  # clear length between the neighbours
    plies: int
    hangers: bool
    upright: bool  # a stud: header above, sill below
    deep_in: float = 0.0  # the header's depth: the member's


def openings(route: Route, frame: Frame) -> tuple[Opening, ...]:
    """Give a framed opening for every stud, joist or rafter that the duct passes through.

    Header of the member's own size between the neighbouring members; doubled above 4 ft, in hangers above 6 ft.
    Whether the member may be cut at all is the findings' answer, not this list's.
    """
    rule = table("stock")["header"]
    found: list[Opening] = []
    for crossing in route.penetrations:
        solid = frame.solid(crossing.solid)
        if solid.kind not in _FRAMED or solid.member is None or solid.id in {o.member for o in found}:
            continue
        span = _between_neighbours(solid, frame)
        found.append(
            Opening(
                member=solid.id,
                label=solid.label,
                nominal=solid.member.nominal,
                header_in=span,
                plies=2 if span > float(rule["double_over_in"]) or solid.kind is SolidKind.STUD else 1,
                hangers=span > float(rule["hangers_over_in"]),
                upright=solid.member.axis == 2,
                deep_in=solid.member.depth_in,
            )
        )
    return tuple(found)


def cut_members(route: Route, frame: Frame) -> list[str]:
    """Give the members of the frame that the duct passes through, by label."""
    kinds = (*JOIST_KINDS, *RAFTER_KINDS, *STUD_KINDS)
    labels = [s.label for p in route.penetrations if (s := frame.solid(p.solid)).kind in kinds]
    return list(dict.fromkeys(labels))


def ruled_words(label: str, verdict: MemberVerdict) -> str:
    """Name a member in a note, with what its finding says unless it allows the cut."""
    allowed = (MemberVerdict.ALLOWED, MemberVerdict.WITHIN)
    return label if verdict in allowed else f"{label}: {verdict.value}"


def _between_neighbours(solid: Solid, frame: Frame) -> float:
    """Clear distance [in] between the members on both sides of `solid` in its row; its own bay twice when alone."""
    member = solid.member
    assert member is not None
    box = bounds(solid.shape)
    lo, hi = box.lo, box.hi
    across = 0 if member.axis != 0 else 1
    if member.axis == 2 and hi[0] - lo[0] > hi[1] - lo[1] + 1e-9:
        across = 1  # a stud of a side wall: its row runs along y
    before, after = -math.inf, math.inf
    for other in frame.solids:
        if other.id == solid.id or other.kind is not solid.kind or other.side is not solid.side:
            continue
        their = bounds(other.shape)
        low, high = their.lo, their.hi
        if any(high[k] <= lo[k] + 1e-9 or low[k] >= hi[k] - 1e-9 for k in range(3) if k != across):
            continue
        if high[across] <= lo[across] + 1e-9:
            before = max(before, high[across])
        elif low[across] >= hi[across] - 1e-9:
            after = min(after, low[across])
    width = hi[across] - lo[across]
    left = lo[across] - before if math.isfinite(before) else 14.5
    right = after - hi[across] if math.isfinite(after) else 14.5
    return left + width + right


def _opening_lines(found: tuple[Opening, ...], *, metric: bool = False) -> list[BuyLine]:
    """Give the lumber for the framed openings."""
    lines: list[BuyLine] = []
    for opening in found:
        count = 2 * opening.plies  # a header on each side of the cut; for a stud one above, one below as sill
        what = "header and sill" if opening.upright else "headers"
        lines.append(
            BuyLine(
                f"lumber for {what}, {opening.nominal}",
                length_text(opening.header_in, metric=metric),
                count,
                "each",
                f"{opening.label} is cut: frame the opening first; only where the findings allow the cut",
                (opening.member,),
            )
        )
        if opening.hangers:
            lines.append(BuyLine("hangers for the headers", opening.nominal, count * 2, "each", opening.label))
    return lines


def lumber_lines(route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...]) -> list[BuyLine]:
    """Give headers, sills, trimmers and ties: as the findings rule for a member, else by the general rule."""
    rulings = {f.ruling.solid: f.ruling for f in findings if f.ruling is not None}
    passed = list(dict.fromkeys(p.solid for p in route.penetrations))
    lines: list[BuyLine] = []
    for solid_id in passed:
        if solid_id in rulings:
            lines += _as_ruled(rulings[solid_id], scene)
    unruled = tuple(o for o in openings(route, frame) if o.member not in rulings)
    lines += _opening_lines(unruled, metric=scene.metric)
    return lines + _ties(route, scene, frame, set(rulings))


def _as_ruled(ruling: MemberRuling, scene: Scene) -> list[BuyLine]:
    lines: list[BuyLine] = []
    for piece in ruling.framing:
        if piece.name == "sleeve":
            continue  # listed with the size of its own hole
        length = "" if piece.length_in is None else f", {length_text(piece.length_in, metric=scene.metric)}"
        note = ruled_words(ruling.label, ruling.verdict) + (f"; {piece.note}" if piece.note else "")
        lines.append(BuyLine(piece.name, f"{piece.size}{length}", piece.count, "each", note, (ruling.solid,)))
    return lines


def _ties(route: Route, scene: Scene, frame: Frame, ruled: set[str]) -> list[BuyLine]:
    rule = table("stock")["tie"]
    found: list[BuyLine] = []
    for crossing in route.penetrations:
        solid = frame.solid(crossing.solid)
        member = solid.member
        if (
            solid.id in ruled
            or solid.kind is not SolidKind.PLATE
            or member is None
            or not (member.bearing or member.exterior)
        ):
            continue
        along, cut, width = _plate_cut(crossing, solid)
        if cut <= float(rule["share"]) * width + 1e-9:
            continue
        length = along + 2 * float(rule["past_in"])
        found.append(
            BuyLine(
                f"galvanized tie, {rule['thick_metric' if scene.metric else 'thick']}",
                length_text(length, metric=scene.metric),
                1,
                "each",
                f"{solid.label}: {rule['nails_each_side']} nails 10d on each side of the opening",
                (solid.id,),
            )
        )
    return found


def _plate_cut(crossing: Penetration, plate: Solid) -> tuple[float, float, float]:
    """Give the hole's length along the plate, its size across the plate, and the plate's width [in]."""
    box = bounds(plate.shape)
    lo, hi = box.lo, box.hi
    run, wide = (0, 1) if hi[0] - lo[0] >= hi[1] - lo[1] else (1, 0)
    half = crossing.hole_in[0] / 2, crossing.hole_in[1] / 2
    if main_axis(crossing.direction) != 2:
        return 2 * max(half), 2 * min(half), hi[wide] - lo[wide]
    side = half[wide if crossing.shape != "round" else 0]
    low, high = crossing.centre[wide] - side, crossing.centre[wide] + side
    cut = max(0.0, min(high, hi[wide]) - max(low, lo[wide]))
    return 2 * half[run if crossing.shape != "round" else 0], cut, hi[wide] - lo[wide]
