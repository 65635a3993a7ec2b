"""One stage: a plan as named, tagged meshes with marks, from which every picture is made."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from routeviz.model.finding import State
from routeviz.model.plan import Plan
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import SectionSize
from routeviz.model.solids import Vec3
from routeviz.model.spoken import spoken
from routeviz.views.blocked import wanted_pieces
from routeviz.views.caps import cap_pieces
from routeviz.views.ducts import band, metal, wide_sides
from routeviz.views.furnishing import cook_pieces, furnishing_pieces, hood_pieces
from routeviz.views.house import CutAway, cut_away, house_pieces, member_numbers, stud_numbers
from routeviz.views.marks import broken_ids, flags, notes, slack_dimensions
from routeviz.views.outdoors import next_room_pieces, outdoor_pieces
from routeviz.views.parts import Dimension, Flag, Group, Layer, MemberNumber, Note, Piece
from routeviz.views.shapes import barred
from routeviz.views.zones import zone_pieces

__all__ = ["Stage", "build", "duct_pieces"]

BAND_IN = 1.1


@dataclass(frozen=True)
class Stage:
    """Everything that a view of one plan shows; lengths in inches in the house frame."""

    plan: Plan
    pieces: tuple[Piece, ...]
    flags: tuple[Flag, ...]
    notes: tuple[Note, ...]
    dimensions: tuple[Dimension, ...]
    numbers: tuple[MemberNumber, ...]
    studs: tuple[MemberNumber, ...]  # of the hood wall, for stills
    broken: frozenset[str]
    cut: CutAway

    def piece(self, name: str) -> Piece:
        """Give a piece by name.

        Raises
        ------
        KeyError
            If there is none.
        """
        for piece in self.pieces:
            if piece.name == name:
                return piece
        raise KeyError(name)


Array = npt.NDArray[np.float64]
Joint = tuple[str, Vec3, Vec3, Array, SectionSize, float]


def _bands(parts: tuple[Part, ...], sides: list[Array]) -> Iterator[Joint]:
    """Give where two parts meet; a band is narrower where the parts are short, so that bands never run together."""
    run = [
        (p, s)
        for p, s in zip(parts, sides, strict=True)
        if p.length_in > 1e-6 and p.kind not in (PartKind.CAP, PartKind.OPEN_END)
    ]
    for (before, _), (after, side) in pairwise(run):
        width = min(BAND_IN, before.length_in / 3, after.length_in / 3)
        if width > 0.15:
            yield f"band-{after.id}", after.start, after.direction, side, after.section, width
    if run:
        first, side = run[0]
        yield (
            f"band-{first.id}",
            _on(first, min(0.8, first.length_in / 2)),
            first.direction,
            side,
            first.section,
            min(BAND_IN, first.length_in / 2),
        )


def _on(part: Part, along: float) -> Vec3:
    return tuple(a + d * along for a, d in zip(part.start, part.direction, strict=True))  # type: ignore[return-value]


def _seams(part: Part, stock_in: float, side: Array) -> list[tuple[Vec3, Array]]:
    """Give where lengths of stock duct meet on a long straight."""
    if part.kind is not PartKind.STRAIGHT or part.length_in <= stock_in + 6:
        return []
    count = int(np.ceil(part.length_in / stock_in))
    return [(_on(part, stock_in * k), side) for k in range(1, count) if part.length_in - stock_in * k > 3]


def duct_pieces(plan: Plan, route: Route) -> list[Piece]:
    """Give a route as sheet metal: its parts, the bands where they meet, and its cap."""
    sides = wide_sides(route.parts)
    pieces: list[Piece] = []
    for part, side in zip(route.parts, sides, strict=True):
        made = metal(part, side)
        if made is None:
            continue
        smooth = part.section.is_round or part.section != part.section_out
        pieces.append(Piece(f"duct-{part.id}", spoken(part.id), Layer.DUCT, "duct", made.mesh, Group.ROUTE,
                            lines=tuple(np.vstack([s, s[:1]]) for s in made.seams), smooth=smooth))  # fmt: skip
        for k, (at, across) in enumerate(_seams(part, plan.scene.duct.stock_in, side), 1):
            ring = band(at, part.direction, across, part.section, BAND_IN)
            pieces.append(Piece(f"seam-{part.id}-{k}", "joint", Layer.DUCT, "duct", ring.mesh, Group.ROUTE,
                                lines=tuple(np.vstack([s, s[:1]]) for s in ring.seams)))  # fmt: skip
    for name, at, direction, side, section, width in _bands(route.parts, sides):
        ring = band(at, direction, side, section, width)
        pieces.append(Piece(name, "joint", Layer.DUCT, "duct", ring.mesh, Group.ROUTE,
                            lines=tuple(np.vstack([s, s[:1]]) for s in ring.seams)))  # fmt: skip
    return [*pieces, *cap_pieces(plan, route)]


def _barred(piece: Piece) -> list[Piece]:
    red, white = barred(piece.mesh)
    return [
        replace(piece, name=f"{piece.name}-bars", material="bar red", mesh=red, smooth=False),
        replace(piece, name=f"{piece.name}-gaps", material="bar white", mesh=white, lines=(), smooth=False),
    ]


def _mark_broken(pieces: list[Piece], broken: frozenset[str]) -> list[Piece]:
    found: list[Piece] = []
    for piece in pieces:
        named = piece.solid in broken or piece.name in broken or piece.name.removeprefix("duct-") in broken
        if named and piece.mesh.is_watertight and piece.layer is not Layer.ZONES:
            found += _barred(piece)
        else:
            found.append(piece)
    return found


def build(
    plan: Plan, *, reach: tuple[float, float] | None = None, bars: bool = True, route: Route | None = None
) -> Stage:
    """Turn a plan into one stage of named meshes and marks.

    Parameters
    ----------
    plan : Plan
        The plan to show, with or without a route.
    reach : tuple of float, optional
        Least and greatest hood centre that the cut-away must serve [in]; the hood's own place when left out.
    bars : bool
        Wrap broken members and parts in bars; a view that marks them itself asks for False.
    route : Route, optional
        The way out to draw; the plan's best when left out.

    Returns
    -------
    Stage
        Pieces with unique names in a fixed order, closed meshes in inches, flags numbered as in every list.
    """
    cut = cut_away(plan, reach=reach)
    pieces = house_pieces(plan, cut) + furnishing_pieces(plan, cut) + cook_pieces(plan) + hood_pieces(plan)
    outdoors = [*outdoor_pieces(plan), *next_room_pieces(plan)]
    pieces += outdoors
    shown = route if route is not None else (plan.best.route if plan.best is not None else None)
    if shown is not None:
        pieces += duct_pieces(plan, shown)
    else:
        pieces += wanted_pieces(plan)
    pieces += zone_pieces(plan)
    broken = broken_ids(plan)
    parts = {w for f in plan.all_findings if f.state is State.BROKEN and not f.waived for w in f.where}
    marked = broken | {p.id for p in (shown.parts if shown else ()) if p.id in parts}
    marked |= {p.solid for p in outdoors if p.solid in parts and p.material != "glass"}
    return Stage(
        plan=plan,
        pieces=tuple(_unique(_mark_broken(pieces, frozenset(marked)) if bars else pieces)),
        flags=flags(plan),
        notes=notes(plan),
        dimensions=slack_dimensions(plan),
        numbers=tuple(member_numbers(plan, cut)),
        studs=tuple(stud_numbers(plan)),
        broken=broken,
        cut=cut,
    )


def _unique(pieces: list[Piece]) -> Iterator[Piece]:
    seen: dict[str, int] = {}
    for piece in pieces:
        if len(piece.mesh.faces) == 0:
            continue
        count = seen.get(piece.name, 0) + 1
        seen[piece.name] = count
        yield piece if count == 1 else replace(piece, name=f"{piece.name}-again-{count}")
