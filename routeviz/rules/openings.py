"""The framing that an opening needs: header, sill, cripples and trimmers with their lengths, hangers and ties."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz import catalog
from routeviz.model.finding import FramingPiece
from routeviz.model.solids import Frame, Solid, SolidKind
from routeviz.rules.cuts import UPRIGHT_KINDS, Cut, extent, length_in, overlap_in
from routeviz.units import length_text

__all__ = ["HeaderRule", "ceiling_opening", "header_rule", "neighbours_of", "plate_tie", "wall_opening"]


@dataclass(frozen=True, slots=True)
class HeaderRule:
    """What the header of a framed floor, ceiling or roof opening must be, by its span."""

    plies: int
    trimmers: int  # plies of the joists on either side
    hangers: bool
    source: str


def header_rule(span_in: float) -> HeaderRule:
    """Give the rule for a header that spans `span_in` between its trimmers.

    A single header does up to 4 ft; above that header and trimmers are doubled; above 6 ft hangers carry its ends.
    """
    rows = catalog.table("members")["opening"]
    single, hangers = rows["single_header_to_in"], rows["hangers_above_in"]
    double = span_in > single["value"] + 1e-9
    hung = span_in > hangers["value"] + 1e-9
    source = hangers["source"] if hung else single["source"]
    return HeaderRule(2 if double else 1, 2 if double else 1, hung, source)


def _group(solid: Solid) -> str:
    return f"{solid.space}/{solid.side}/{solid.origin}" if solid.kind in UPRIGHT_KINDS else solid.origin


def neighbours_of(solid: Solid, frame: Frame) -> tuple[Solid | None, Solid | None]:
    """Give the members of the same kind and group next to this one, below and above it in true coordinates."""
    if solid.member is None:
        return None, None
    lo, hi = extent(solid.shape)
    across = _across(solid)
    before: tuple[float, Solid] | None = None
    after: tuple[float, Solid] | None = None
    for other in frame.solids:
        if other.id == solid.id or other.member is None or other.member.axis != solid.member.axis:
            continue
        if other.kind is not solid.kind or _group(other) != _group(solid):
            continue
        a, b = extent(other.shape)
        run = solid.member.axis
        if overlap_in((a[run], b[run]), (lo[run], hi[run])) <= 0:
            continue
        if b[across] <= lo[across] + 1e-6 and (before is None or b[across] > before[0]):
            before = (b[across], other)
        if a[across] >= hi[across] - 1e-6 and (after is None or a[across] < after[0]):
            after = (a[across], other)
    return before[1] if before else None, after[1] if after else None


def _across(solid: Solid) -> int:
    """Give the axis along which members of this group repeat."""
    run = solid.member.axis if solid.member else 2
    if run != 2:
        return 1 - run
    lo, hi = extent(solid.shape)
    return min((0, 1), key=lambda a: hi[a] - lo[a])


def _clear_span(solid: Solid, frame: Frame) -> float | None:
    before, after = neighbours_of(solid, frame)
    if before is None or after is None:
        return None
    across = _across(solid)
    return extent(after.shape)[0][across] - extent(before.shape)[1][across]


def wall_opening(solid: Solid, cut: Cut, frame: Frame | None) -> tuple[FramingPiece, ...]:
    """Give the pieces that frame an opening where a stud is cut, like a small window's.

    Header and sill reach between the two neighbour studs; short pieces of the cut stud stand above and below.
    """
    rows = catalog.table("members")["wall_opening"]
    header, sill = rows["header"], rows["sill"]
    size, high_in, thick_in = _stud_size(solid, header["size"]), header["height_in"], sill["height_in"]
    if (
        solid.member is not None and solid.member.nominal
    ):  # of the stud's own stuff: on edge as high as the stud is deep
        high_in, thick_in = solid.member.depth_in, solid.member.width_in / solid.member.plies
    span = _clear_span(solid, frame) if frame is not None else None
    lo, hi = extent(solid.shape)
    above = below = high = None
    if cut.box is not None:
        high = cut.box.hi[2] - cut.box.lo[2]
        above = max(0.0, hi[2] - cut.box.hi[2] - high_in)
        below = max(0.0, cut.box.lo[2] - thick_in - lo[2])
    pieces = [
        FramingPiece("header", size, span, header["plies"], "on edge, between the neighbour studs"),
        FramingPiece("sill", size, span, sill["plies"], "flat, between the neighbour studs"),
        FramingPiece("cripple above", size, above, 1, "from the header up, where the stud stood"),
        FramingPiece("cripple below", size, below, 1, "from the sill down, where the stud stood"),
        FramingPiece("trimmer", size, high, 2, "beside the hole, between sill and header"),
    ]
    return tuple(p for p in pieces if p.length_in is None or p.length_in > 0)


def _stud_size(solid: Solid, usual: str) -> str:
    return solid.member.nominal if solid.member and solid.member.nominal else usual


def ceiling_opening(solid: Solid, frame: Frame | None, *, metric: bool = False) -> tuple[FramingPiece, ...]:
    """Give the pieces that frame an opening where one joist or rafter is cut: headers between its neighbours."""
    kind = "rafter" if solid.kind is SolidKind.RAFTER else "joist"
    size = solid.member.nominal if solid.member and solid.member.nominal else f"as the {kind}s"
    span = _clear_span(solid, frame) if frame is not None else None
    rule = header_rule(span if span is not None else 0.0)
    long = length_in(solid)
    pieces = [
        FramingPiece("header", size, span, 2 * rule.plies, f"one on each side of the opening, same size as the {kind}s")
    ]
    if rule.trimmers > 1:
        pieces.append(FramingPiece("trimmer", size, long, 2, f"one beside each neighbour {kind}"))
    if rule.hangers:
        pieces.append(FramingPiece("joist hanger", "to fit the header", None, 4, "at the header's ends"))
    tail = catalog.table("members")["opening"]["tail_anchor_above_in"]["value"]
    if long > tail:
        over = length_text(tail, metric=metric, long=True)
        pieces.append(
            FramingPiece("framing anchor or 2x2 ledger", "to fit", None, 2, f"at tail {kind}s over {over} long")
        )
    return tuple(pieces)


def plate_tie(cut: Cut, count: int = 1, *, metric: bool = False) -> FramingPiece:
    """Give the strap over a cut top plate, long enough to pass the opening on both sides."""
    tie = catalog.table("members")["plate"]["tie"]
    note = f"{tie['nails_each_side']} nails 10d on each side of the opening"
    return FramingPiece(
        "plate tie", tie["size_metric" if metric else "size"], cut.along_in + 2 * tie["past_in"], count, note
    )
