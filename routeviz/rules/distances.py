"""Distances from the cap's opening to what it must keep away from, edge to edge."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from routeviz import catalog
from routeviz.model.finding import Finding
from routeviz.model.route import Route, Termination
from routeviz.model.scene import OutdoorKind, SectionSize, Waiver
from routeviz.model.solids import ExitFace, FaceKind, Frame, KeepOut
from routeviz.rules.context import Context
from routeviz.rules.outcome import Named, at_least, judge_number, not_checked
from routeviz.rules.profiles import Limit, Profile
from routeviz.rules.registry import all_rules
from routeviz.rules.sections import half_sizes

__all__ = ["Meeting", "aside_in", "bounded", "distance_findings", "keep_away", "meetings", "opening_gap_in"]


def keep_away(profile: Profile) -> dict[str, float]:
    """Give how far [in] a cap must keep from each kind of outdoor thing.

    Keys are the values of `OutdoorKind`. Kinds for which the place has no number are left out: the rules then
    report "not checked" and say what to ask. So are kinds on which inspectors differ (soffit vents, walkways): they
    are judged, but do not bound where a cap may sit.
    """
    found = {}
    for kind, row in catalog.table("rules")["outdoors"].items():
        limit = profile.get(row["limit"])
        if limit is not None and row["hard"]:
            found[kind] = limit.number
    return found


def bounded(frame: Frame, profile: Profile, waivers: Sequence[Waiver] = ()) -> Frame:
    """Give a frame whose caps need not keep a distance that a height excuses, or that someone has waived."""
    return replace(frame, faces=tuple(_face_bounded(face, profile, waivers) for face in frame.faces))


def _face_bounded(face: ExitFace, profile: Profile, waivers: Sequence[Waiver]) -> ExitFace:
    rows = catalog.table("rules")["outdoors"]

    def own(keep: KeepOut) -> KeepOut:
        row = rows.get(keep.kind)
        if row is None:
            return keep
        waived = any(w.answers_for(_code_of(row["limit"]), (keep.id,)) for w in waivers)
        high = face.kind is not FaceKind.ROOF or keep.heights_in is not None  # else nobody knows how it stands over it
        above = profile.get(row["above"]) if "above" in row and high else None
        return replace(
            keep, distance_in=0.0 if waived else keep.distance_in, above_in=None if above is None else above.number
        )

    return replace(face, keep_outs=tuple(own(keep) for keep in face.keep_outs))


@lru_cache
def _code_of(limit: str) -> str:
    """Give the rule that judges a cap's distance by this limit."""
    return next(rule.code for rule in all_rules() if limit in rule.limits and rule.code.startswith("TRM-"))


@dataclass(frozen=True, slots=True)
class Meeting:
    """One outdoor thing near the cap: the gap between edges [in] and how the cap stands to it in height [in]."""

    thing: KeepOut
    gap_in: float
    above_in: float | None  # cap's lower edge over the thing's top; None on roofs


def face_of(frame: Frame, end: Termination) -> ExitFace | None:
    """Give the face where the duct ends, or None when it ends at none."""
    return next((f for f in frame.faces if f.id == end.face), None)


def opening_gap_in(
    centre: tuple[float, float], section: SectionSize, thing: KeepOut, *, wide_first: bool = True
) -> float:
    """Give the distance [in] from the edge of a duct's opening to the edge of a thing, in space.

    Parameters
    ----------
    centre : tuple of float
        Of the opening, in the face's two axes.
    section : SectionSize
        Round openings are circles; others rectangles whose wide side lies along the first axis if `wide_first`.

    Returns
    -------
    float
        0 when they touch or overlap. A thing that stands off the face counts with that distance too.

    Examples
    --------
    A 6 in round opening whose centre is 38 in beside a window: 35 in between the edges.

    >>> from routeviz.model.scene import SectionShape
    >>> window = KeepOut("w", "window", "operable window", (0.0, 40.0), (30.0, 80.0), 36.0)
    >>> opening_gap_in((68.0, 60.0), SectionSize(SectionShape.ROUND, 6.0, 6.0), window)
    35.0
    """
    half = (0.0, 0.0)
    if not section.is_round:
        half = (section.width_in / 2, section.height_in / 2)
        half = half if wide_first else (half[1], half[0])
    apart = [
        max(lo - (c + h), (c - h) - hi, 0.0) for c, h, lo, hi in zip(centre, half, thing.lo, thing.hi, strict=True)
    ]
    flat = math.hypot(*apart)
    if section.is_round:
        flat = max(0.0, flat - section.width_in / 2)
    return math.hypot(flat, thing.away_in)


def aside_in(route: Route, thing: KeepOut, axis: int, index: int = 0) -> float:
    """Give the room [in] between the opening's edge and a thing along one of the face's two axes; negative: they overlap.

    `axis` is that axis in space, `index` its place (0 or 1) among the face's two.
    """
    at, half = route.termination.point[axis], half_sizes(route.parts[-1], leaving=True)[axis]
    return max(thing.lo[index] - at - half, at - half - thing.hi[index])


def meetings(context: Context) -> Iterator[Meeting]:
    """Give every outdoor thing on the face where the duct ends, with its gap to the opening."""
    route = context.the_route()
    face = face_of(context.frame, route.termination)
    if face is None or route.termination.space != "outdoors":
        return
    last = route.parts[-1]
    axes = [a for a in range(3) if a != face.axis]
    centre = (route.termination.point[axes[0]], route.termination.point[axes[1]])
    first, second = (half_sizes(last, leaving=True)[a] for a in axes)
    for thing in face.seen_from(route.termination.point):
        gap = opening_gap_in(centre, last.section_out, thing, wide_first=first >= second)
        above = None if face.kind is FaceKind.ROOF else centre[1] - second - thing.hi[1]
        if thing.heights_in is not None:
            above = route.termination.point[2] - thing.heights_in[1]
        yield Meeting(thing, gap, above)


def distance_findings(
    context: Context, rule: Named, kinds: tuple[OutdoorKind, ...], key: str, *, remedy: str, must: bool | None = None
) -> Iterator[Finding]:
    """Give a finding for each thing of these kinds on the face where the duct ends."""
    for met in meetings(context):
        if met.thing.kind not in kinds:
            continue
        yield from judge_number(
            rule, context, key, met.gap_in, "in", where=("cap", met.thing.id), place=context.the_route().termination.point,
            title=f"Cap to the {met.thing.label}", remedy=_short(context, key, met.gap_in, remedy), must=must,
        )  # fmt: skip


def _short(context: Context, key: str, gap_in: float, remedy: str) -> str:
    limit = context.limit(key)
    if limit is None or gap_in >= limit.number:
        return remedy
    return f"Move the cap {context.length(limit.number - gap_in)} farther away{remedy}"


def either(
    context: Context, rule: Named, met: Meeting, limit: Limit, other: Limit | None, *, remedy: str
) -> Finding:  # fmt: skip
    """Judge a distance that a second limit may excuse: the cap stands that much above the thing."""
    place = context.the_route().termination.point
    title, where = f"Cap to the {met.thing.label}", ("cap", met.thing.id)
    above = met.above_in
    if met.gap_in < limit.number and other is not None and above is not None and above >= 0:
        return at_least(rule, other, above, where=where, place=place, title=f"{title}, height above it", remedy=remedy)
    return at_least(rule, limit, met.gap_in, where=where, place=place, title=title, remedy=remedy)


def unasked(context: Context, rule: Named, met: Meeting, key: str) -> Iterator[Finding]:
    """Say that the place's distance is not known, if there is something to ask."""
    if context.profile.asked(key):
        yield not_checked(rule, context, key, measured=met.gap_in, unit="in", where=("cap", met.thing.id),
                          place=context.the_route().termination.point, title=f"Cap to the {met.thing.label}")  # fmt: skip
