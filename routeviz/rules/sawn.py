"""Sawn members: joists and rafters, studs, plates, rims. The numbers are in ``catalog/members.toml``."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.model.finding import FramingPiece, MemberRuling, MemberVerdict
from routeviz.model.solids import Frame, Solid, SolidKind
from routeviz.rules.cuts import Cut, extent, overlap_in
from routeviz.rules.openings import ceiling_opening, neighbours_of, plate_tie, wall_opening
from routeviz.rules.outcome import EPSILON_IN
from routeviz.rules.ruling import Asked, edge_is_tighter, fits, row, ruling

__all__ = ["doubled_in_a_row", "hole_limit_in", "joist_ruling", "plate_ruling", "rim_ruling", "stud_ruling"]

_FLOOR_AND_PLATE_IN = 6.0  # a stud of the storey above stands no higher than this over the rim: subfloor and plate


def hole_limit_in(depth_in: float) -> float:
    """Give the largest hole in a sawn joist or rafter: a third of its depth, with 2 in left at both edges.

    Examples
    --------
    >>> round(hole_limit_in(9.25), 4)
    3.0833
    >>> hole_limit_in(3.5)
    0.0
    """
    share, edge = row("sawn", "hole_share")[0], row("sawn", "hole_edge_in")[0]
    return min(depth_in * share, max(0.0, depth_in - 2 * edge))


def joist_ruling(solid: Solid, cut: Cut, asked: Asked) -> MemberRuling:
    """Judge a cut in a sawn joist or rafter."""
    group = "rafter" if solid.kind is SolidKind.RAFTER else "sawn"
    source = row(group, "hole_share")[1]
    around = ceiling_opening(solid, asked.frame, metric=asked.metric)
    way_out = "Shift the duct into the bay beside it, or frame an opening with headers to its neighbours."
    limit, edge = hole_limit_in(cut.depth_in), row(group, "hole_edge_in")[0]
    rule = f"a hole of at most {asked.most(limit)}: a third of the depth, with {asked.length(edge)} left at both edges"
    if cut.severs:
        return ruling(solid, MemberVerdict.NOT_ALLOWED, rule, "hole", limit, cut.size_in, source, framing=around,
                       detail="the duct would take its whole section", remedy=way_out)  # fmt: skip
    if cut.is_notch:
        return _joist_notch(solid, cut, asked, group, around, way_out)
    if cut.size_in <= limit + EPSILON_IN and cut.edge_in < edge - EPSILON_IN:
        return ruling(solid, MemberVerdict.NOT_ALLOWED, f"{asked.length(edge)} of wood at both edges of a hole", "wood left at the edge",
                       edge, cut.edge_in, source, framing=around, remedy="Move the hole to the middle of the depth.")  # fmt: skip
    if edge_is_tighter(cut, edge, limit):
        return ruling(solid, MemberVerdict.WITHIN, rule, "wood left at the edge", edge, cut.edge_in, source)
    verdict = fits(limit, cut.size_in)
    bad = verdict is MemberVerdict.NOT_ALLOWED
    return ruling(solid, verdict, rule, "hole", limit, cut.size_in, source, framing=around if bad else (),
                   remedy=way_out if bad else "")  # fmt: skip


def _joist_notch(
    solid: Solid, cut: Cut, asked: Asked, group: str, around: tuple[FramingPiece, ...], way_out: str
) -> MemberRuling:
    """Judge a notch: first its depth, then its place along the span, then its length."""
    share, source = row(group, "notch_share")
    at_end = cut.from_end_in is not None and cut.from_end_in <= cut.along_in / 2 + EPSILON_IN
    allowed = cut.depth_in * (row("sawn", "end_notch_share")[0] if at_end else share)
    longest = cut.depth_in * row("sawn", "notch_length_share")[0]
    place = cut.end_share
    rule, measure, most, ours = (
        f"a notch of at most {'a quarter' if at_end else 'a sixth'} of the depth, {asked.most(allowed)}", "notch", allowed,
        cut.notch_in,
    )  # fmt: skip
    if ours <= allowed + EPSILON_IN and not at_end:
        if place is not None and place > row("sawn", "notch_not_in_middle_share")[0]:
            rule, most = "no notch in the middle third of the span", 0.0
        elif cut.along_in > longest + EPSILON_IN:
            rule, measure = "a notch no longer than a third of the depth", "notch length"
            most, ours = longest, cut.along_in
    verdict = fits(most, ours)
    bad = verdict is MemberVerdict.NOT_ALLOWED
    return ruling(solid, verdict, rule, measure, most, ours, source, framing=around if bad else (),
                  remedy=way_out if bad else "")  # fmt: skip


def bored_as_doubled(solid: Solid, cut: Cut) -> bool:
    """Whether a hole in a bearing or exterior stud is wider than a single one may have, so that it must be doubled."""
    member = solid.member
    if member is None or member.plies < 2 or not (member.bearing or member.exterior) or cut.severs or cut.is_notch:
        return False
    return cut.size_in > cut.depth_in * row("stud", "bore_bearing_share")[0] + EPSILON_IN


def stud_ruling(solid: Solid, cut: Cut, asked: Asked) -> MemberRuling:
    """Judge a cut in a stud."""
    member = solid.member
    loaded = member is None or member.bearing or member.exterior
    doubled = member is not None and member.plies >= 2
    key = "bore_doubled_share" if loaded and doubled else "bore_bearing_share" if loaded else "bore_partition_share"
    share, source = row("stud", key)
    edge = row("stud", "bore_edge_in")[0]
    limit = min(cut.depth_in * share, cut.depth_in - 2 * edge)
    kind = "doubled bearing stud" if loaded and doubled else "bearing or exterior stud" if loaded else "partition stud"
    rule = f"a bore of at most {share * 100:.0f} of 100 parts of a {kind}'s depth, {asked.most(limit)}, {asked.length(edge)} from its edges"
    around = wall_opening(solid, cut, asked.frame)
    way_out = "Shift the hole between the studs, or frame an opening like a small window."
    if cut.severs:
        return ruling(solid, MemberVerdict.NOT_ALLOWED, rule, "bore", limit, cut.size_in, source, framing=around,
                       detail="the duct would take its whole section", remedy=way_out)  # fmt: skip
    if cut.is_notch:
        notch_share, source = row("stud", "notch_bearing_share" if loaded else "notch_partition_share")
        allowed = cut.depth_in * notch_share
        verdict = fits(allowed, cut.notch_in)
        bad = verdict is MemberVerdict.NOT_ALLOWED
        return ruling(solid, verdict, f"a notch of at most {asked.most(allowed)}", "notch", allowed, cut.notch_in,
                       source, framing=around if bad else (), remedy=way_out if bad else "")  # fmt: skip
    if cut.size_in <= limit + EPSILON_IN and cut.edge_in < edge - EPSILON_IN:
        return ruling(solid, MemberVerdict.NOT_ALLOWED, f"{asked.length(edge)} of wood at both edges of a bore",
                       "wood left at the edge", edge, cut.edge_in, source, framing=around,
                       remedy="Move the bore to the middle of the stud.")  # fmt: skip
    most, cited = row("stud", "bore_doubled_in_a_row")
    if bored_as_doubled(solid, cut) and cut.size_in <= limit + EPSILON_IN and asked.in_a_row > most:
        single = cut.depth_in * row("stud", "bore_bearing_share")[0]
        return ruling(solid, MemberVerdict.NOT_ALLOWED, f"at most {most:.0f} successive doubled studs are bored wider than {asked.length(single)}",
                       "bore", single, cut.size_in, cited, framing=around,
                       detail=f"it would be number {asked.in_a_row} in a row",
                       remedy="Leave the wall after the second stud, or use a duct small enough for a single stud.")  # fmt: skip
    if edge_is_tighter(cut, edge, limit):
        return ruling(solid, MemberVerdict.WITHIN, rule, "wood left at the edge", edge, cut.edge_in, source)
    verdict = fits(limit, cut.size_in)
    bad = verdict is MemberVerdict.NOT_ALLOWED
    return ruling(solid, verdict, rule, "bore", limit, cut.size_in, source, framing=around if bad else (),
                   remedy=way_out if bad else "")  # fmt: skip


def doubled_in_a_row(cuts: Sequence[tuple[Solid, Cut]], frame: Frame) -> dict[str, int]:
    """Say for each doubled stud bored too wide for a single one which of such successive studs it is, in the order given."""
    rows: dict[str, int] = {}
    for solid, cut in cuts:
        if not bored_as_doubled(solid, cut):
            continue
        many = 1
        for side in (0, 1):
            beside = neighbours_of(solid, frame)[side]
            while beside is not None and beside.id in rows:
                many += 1
                beside = neighbours_of(beside, frame)[side]
        rows[solid.id] = many
    return rows


def plate_ruling(solid: Solid, cut: Cut, asked: Asked) -> MemberRuling:
    """Judge a cut in a plate."""
    member = solid.member
    share, source = row("plate", "tie_above_share")
    limit = cut.depth_in * share
    taken = cut.depth_in - max(0.0, cut.left_in[0]) - max(0.0, cut.left_in[1]) if cut.left_in else cut.size_in
    if cut.severs and not cut.left_in:
        taken = cut.depth_in
    loaded = member is None or member.bearing or member.exterior
    bottom = solid.id.rpartition("plate-")[2].startswith("bottom") or "bottom plate" in solid.label
    top = not bottom and solid.kind is SolidKind.PLATE
    if cut.lengthwise:
        return ruling(solid, MemberVerdict.NOT_ALLOWED, "a plate is crossed, never cut along its length", "cut of the width",
                       limit, taken, source, remedy="Run the duct beside the plate, or cross it square.")  # fmt: skip
    if taken <= limit + EPSILON_IN or not loaded:
        why = "no tie up to half the width" if loaded else "a plate that carries nothing needs no tie"
        return ruling(solid, MemberVerdict.WITHIN if loaded else MemberVerdict.ALLOWED, why, "cut of the width",
                       limit if loaded else None, taken, source)  # fmt: skip
    if not top:
        return ruling(solid, MemberVerdict.ALLOWED, "a bottom plate between studs may be cut", "cut of the width", None,
                       taken, "common-practice", detail="fix both ends of the plate to the floor")  # fmt: skip
    return ruling(
        solid, MemberVerdict.WITHIN, "a top plate cut by more than half its width needs a steel tie across the cut",
        "cut of the width", cut.depth_in, min(taken, cut.depth_in), source, framing=(plate_tie(cut, metric=asked.metric),),
        detail=f"{asked.length(taken)} of {asked.length(cut.depth_in)} is cut, more than half: a tie is needed",
        remedy="Nail a steel tie over the cut plate.",
    )  # fmt: skip


def _stands_on(solid: Solid, cut: Cut, frame: Frame | None) -> str:
    """Name what bears on the rim where the hole is: a joist's end (more than one bay is cut) or a stud above."""
    if frame is None or cut.box is None or solid.member is None:
        return ""
    lo, hi = extent(solid.shape)
    run = solid.member.axis
    across = 1 - run
    for other in frame.solids:
        a, b = extent(other.shape)
        if overlap_in((a[run], b[run]), (cut.box.lo[run], cut.box.hi[run])) <= EPSILON_IN:
            continue
        beside = overlap_in((a[across], b[across]), (lo[across], hi[across])) >= -EPSILON_IN
        ends = other.kind is SolidKind.JOIST and overlap_in((a[2], b[2]), (lo[2], hi[2])) > 0
        above = other.kind in (SolidKind.STUD, SolidKind.JACK) and 0 <= a[2] - hi[2] <= _FLOOR_AND_PLATE_IN
        if beside and (ends or above):
            return other.label
    return ""


def rim_ruling(solid: Solid, cut: Cut, asked: Asked) -> MemberRuling:
    """Judge a hole in a rim by the wood left above and below it; nothing may bear on the rim there.

    No print says how much wood must stay. By common practice a strip must be left on either side: without one the rim
    is cut through, and what lies on it or under it is met.
    """
    edge, source = row("rim", "between_joists_edge_in")
    rule = "a rim that lies on its wall may be cut in one bay, between two joists and under no stud"
    bears, left = _stands_on(solid, cut, asked.frame), _wood_left(cut, asked)
    if bears:
        return ruling(solid, MemberVerdict.NOT_ALLOWED, rule, "hole", None, cut.size_in, source,
                       framing=ceiling_opening(solid, asked.frame, metric=asked.metric), detail=f"{bears} bears on it there",
                       remedy="Move the hole between the joists and out from under the stud.")  # fmt: skip
    if cut.severs or cut.edge_in < edge - EPSILON_IN:
        through = f"{left}: it is cut through; at least {asked.length(edge)} must stay on either side"
        return ruling(solid, MemberVerdict.NOT_ALLOWED, rule, "wood left at the edge", edge, max(0.0, cut.edge_in), source,
                       framing=ceiling_opening(solid, asked.frame, metric=asked.metric), detail=through,
                       remedy="Use a smaller or flatter duct at the rim, or move the hole to its middle.")  # fmt: skip
    return ruling(solid, MemberVerdict.WITHIN, rule, "wood left at the edge", None, cut.edge_in, source,
                   detail=f"{left}; tolerated; inspectors differ", remedy="Ask the inspector before cutting the rim.")  # fmt: skip


def _wood_left(cut: Cut, asked: Asked) -> str:
    """Say how much wood a hole leaves below and above it."""
    low, high = (max(0.0, side) for side in cut.left_in or (cut.edge_in, cut.edge_in))
    if abs(low - high) < EPSILON_IN:
        return f"{asked.length(low)} of wood left above and below the hole"
    return f"{asked.length(low)} of wood left below the hole, {asked.length(high)} above it"
