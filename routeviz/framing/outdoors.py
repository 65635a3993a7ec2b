"""What stands outdoors: openings, listed things, vented soffits and lot lines in space, and how a face sees them.

Everything is gathered once, with the wall or roof that it belongs to. Each outer face then takes all of it that its
cap can reach through the open air, so that a corner, a wall further out or a roof hides nothing.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from routeviz.framing.openings import name_of
from routeviz.framing.place import House, Place
from routeviz.framing.roofshape import RoofShape
from routeviz.framing.sheets import Rect, pieces
from routeviz.framing.spaces import Beyond, space_name
from routeviz.model.scene import Opening, OpeningKind, OutdoorKind, OutdoorThing, WallSide
from routeviz.model.solids import KeepOut, Vec3
from routeviz.model.spoken import spoken

__all__ = ["Outdoors", "View", "behind", "outdoors", "seen", "seen_from_above", "view"]

_OWN = (OutdoorKind.WALKWAY, OutdoorKind.OTHER)  # they bar what is on their own face, and nothing else
_GLASS = (OutdoorKind.OPERABLE_WINDOW, OutdoorKind.FIXED_WINDOW, OutdoorKind.DOOR)  # they lie in a wall
_OUT = "outdoors"
_ROOF = "roof"


@dataclass(frozen=True, slots=True)
class Outdoors:
    """One thing outdoors as a flat box in space [in]; a lot line has no ends.

    `axis` and `sign` tell which way its wall or roof faces, `place` and `where` name that.
    """

    id: str
    label: str
    kind: OutdoorKind
    lo: Vec3
    hi: Vec3
    axis: int
    sign: int
    place: str
    where: str
    off: float = 0.0  # of a thing on the roof: how far it stands off it


@dataclass(frozen=True, slots=True)
class View:
    """An outer wall face that looks for things: its plane, and the part of it where a cap may sit [in]."""

    place: str
    axis: int
    sign: int
    at: float
    lo: tuple[float, float]
    hi: tuple[float, float]


def view(place: Place, lo: tuple[float, float], hi: tuple[float, float]) -> View:
    """Give the view from a part of a wall's outer face."""
    return View(place.prefix, place.normal_axis, place.normal_sign, place.outer, lo, hi)


def behind(place: Place, others: Sequence[Beyond]) -> list[tuple[str, Rect]]:
    """Give what spaces cover of the outside of a kitchen wall, their walls included."""
    found = []
    for other in others:
        if other.space.beyond is not place.kitchen_side:
            continue
        ends = [p.outer for p in other.places if p.normal_axis == place.run_axis]
        axis = place.run_axis
        lo, hi = min([other.inside.lo[axis], *ends]), max([other.inside.hi[axis], *ends])
        found.append((space_name(other.space), Rect(lo, hi, other.inside.lo[2], other.inside.hi[2])))
    return found


def outdoors(
    house: House, shape: RoofShape | None, tops: Mapping[WallSide, float], others: Sequence[Beyond]
) -> tuple[Outdoors, ...]:
    """Gather everything outdoors that a cap may have to keep away from."""
    names = {space.id for space in house.scene.spaces}
    found: list[Outdoors] = []
    for place in house.places:
        if place.wall.beyond == _OUT:
            found += _things(place, place.wall.side.value, house.scene.outdoors)
        if place.wall.beyond == _OUT or place.wall.beyond in names:
            found += _openings(place, 0.0, [rect for _, rect in behind(place, others)])
        found += _soffit_vent(place, shape, tops) if place.wall.beyond == _OUT else []
    for other in others:
        for place in other.places:
            if place.wall.beyond == _OUT:
                found += _things(place, f"{other.space.id}/{place.wall.side}", house.scene.outdoors)
                found += _openings(place, other.space.floor_in, [])
    found += _lot_lines([*house.places, *(place for other in others for place in other.places)])
    return (*found, *(_on_roof(thing, shape) for thing in house.scene.outdoors if thing.face == _ROOF and shape))


def _flat(place: Place, s: tuple[float, float], away: float, z: tuple[float, float]) -> tuple[Vec3, Vec3]:
    """Give a rectangle along and up a wall that stands so far off its outer face, `s` in the house's measure."""
    lo, hi = [0.0, 0.0, z[0]], [0.0, 0.0, z[1]]
    lo[place.run_axis], hi[place.run_axis] = s
    lo[place.normal_axis] = hi[place.normal_axis] = place.outer + place.normal_sign * away
    return (lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])


def _at(place: Place, name: str, label: str, kind: OutdoorKind, box: tuple[Vec3, Vec3]) -> Outdoors:
    return Outdoors(name, label, kind, *box, place.normal_axis, place.normal_sign, place.prefix, place.words)


def _kind(opening: Opening) -> OutdoorKind:
    if opening.kind is OpeningKind.DOOR:
        return OutdoorKind.DOOR
    return OutdoorKind.OPERABLE_WINDOW if opening.operable else OutdoorKind.FIXED_WINDOW


def _openings(place: Place, floor: float, covered: list[Rect]) -> Iterator[Outdoors]:
    """Give the openings of a wall, as far as no space lies behind them."""
    for o in place.wall.openings:
        lo, hi = place.span((o.left_in, o.left_in + o.width_in))
        parts = pieces(Rect(lo, hi, floor + o.sill_in, floor + o.sill_in + o.height_in), covered)
        if parts:
            s = min(p.s0 for p in parts), max(p.s1 for p in parts)
            z = min(p.z0 for p in parts), max(p.z1 for p in parts)
            yield _at(place, f"{place.prefix}-{o.id}", name_of(o), _kind(o), _flat(place, s, 0.0, z))


def _things(place: Place, face: str, listed: Sequence[OutdoorThing]) -> Iterator[Outdoors]:
    for t in listed:
        if t.face == face:
            s, z = place.span((t.left_in, t.left_in + t.width_in)), (t.bottom_in, t.bottom_in + t.height_in)
            yield _at(place, t.id, _thing_words(t), t.kind, _flat(place, s, t.away_in, z))


def _thing_words(thing: OutdoorThing) -> str:
    words = spoken(thing.id)
    return words if thing.kind.value.split()[-1] in words else f"{thing.kind.value} {words}"


def _soffit_vent(place: Place, shape: RoofShape | None, tops: Mapping[WallSide, float]) -> list[Outdoors]:
    side = place.wall.side
    if shape is None or not shape.roof.soffit_vented or side not in shape.eaves:
        return []
    along = _flat(place, place.span(place.cover), 0.0, (tops[side], tops[side]))
    return [_at(place, f"soffit-vent-{place.prefix}", "soffit vent", OutdoorKind.SOFFIT_VENT, along)]


def _lot_lines(places: Sequence[Place]) -> Iterator[Outdoors]:
    """Give the lot lines: upright planes without end, so far off the walls that tell of them; each line once."""
    told: set[tuple[int, float]] = set()
    for place in places:
        if place.wall.lot_line_in is None or place.wall.beyond != _OUT:
            continue
        ends = -math.inf, math.inf
        line = _flat(place, ends, place.wall.lot_line_in, ends)
        stands = place.normal_axis, line[0][place.normal_axis]
        if stands not in told:
            told.add(stands)
            yield _at(place, f"lot-line-{place.prefix}", "lot line", OutdoorKind.LOT_LINE, line)


def _on_roof(thing: OutdoorThing, shape: RoofShape) -> Outdoors:
    """Give a thing on the roof as a box from the lowest to the highest point of what it covers."""
    lo = thing.left_in, -thing.bottom_in - thing.height_in
    hi = thing.left_in + thing.width_in, -thing.bottom_in
    heights = [shape.surface(u) + thing.away_in for u in shape.profile(lo[1 - shape.axis], hi[1 - shape.axis])]
    return Outdoors(thing.id, _thing_words(thing), thing.kind, (*lo, min(heights)), (*hi, max(heights)), 2, 1, _ROOF,
                    "the roof", thing.away_in)  # fmt: skip


def seen(everything: Sequence[Outdoors], at: View, keep_away: Mapping[str, float]) -> list[KeepOut]:
    """Give what a cap on a wall's outer face must keep away from.

    The distance behind or before the face goes into `away_in`, so that a gap measured with it is the true one in
    space. Only what the house or a space hides is left out: what has its back to the face, and what is behind one of
    two walls that meet and before the other.
    """
    return [_kept(one, at, keep_away) for one in everything if _in_sight(one, at)]


def _in_sight(one: Outdoors, at: View) -> bool:
    if one.place == at.place:
        return True
    if one.kind in _OWN:
        return False
    before, past = _sides(one.lo[at.axis], one.hi[at.axis], at.at, at.sign)  # of the face's plane
    if one.axis == at.axis:
        return one.sign == at.sign or not past
    if one.axis == 2:
        return True
    ahead, back = _sides(at.lo[0], at.hi[0], one.lo[one.axis], one.sign)  # of the thing's own wall
    return not (past and ahead) and not (before and back)


def _sides(lo: float, hi: float, plane: float, sign: int) -> tuple[bool, bool]:
    """Tell whether all of a span lies before a plane that faces a way, and whether all of it lies behind."""
    if sign < 0:
        lo, hi, plane = -hi, -lo, -plane
    return lo >= plane, hi <= plane


def _kept(one: Outdoors, at: View, keep_away: Mapping[str, float]) -> KeepOut:
    u, v = (t for t in range(3) if t != at.axis)
    away = max(one.lo[at.axis] - at.at, at.at - one.hi[at.axis], 0.0)
    if one.kind is OutdoorKind.LOT_LINE and one.axis == at.axis:
        away = max(0.0, (one.lo[at.axis] - at.at) * at.sign)  # nothing of the lot lies beyond it
    return KeepOut(one.id, _label(one, at), one.kind.value, _bounded((one.lo[u], one.lo[v]), at.lo),
                   _bounded((one.hi[u], one.hi[v]), at.hi), keep_away.get(one.kind.value, 0.0), away)  # fmt: skip


def _bounded(ends: tuple[float, float], face: tuple[float, float]) -> tuple[float, float]:
    """Let what has no end of its own end with the face."""
    u, v = (own if math.isfinite(own) else edge for own, edge in zip(ends, face, strict=True))
    return u, v


def _label(one: Outdoors, at: View) -> str:
    if one.place == at.place or one.kind is OutdoorKind.LOT_LINE:
        return one.label
    if one.place != _ROOF and one.axis != at.axis:
        return f"{one.label} round the corner"
    return f"{one.label} {'in' if one.kind in _GLASS else 'on'} {one.where}"


def seen_from_above(
    everything: Sequence[Outdoors], lo: tuple[float, float], hi: tuple[float, float], keep_away: Mapping[str, float]
) -> list[KeepOut]:
    """Give what a cap on the roof must keep away from; what is on walls keeps its heights. Soffit vents lie under it."""
    found = []
    for one in everything:
        wanted = keep_away.get(one.kind.value, 0.0)
        lower, upper = _bounded((one.lo[0], one.lo[1]), lo), _bounded((one.hi[0], one.hi[1]), hi)
        if one.place == _ROOF:
            found.append(KeepOut(one.id, one.label, one.kind.value, lower, upper, wanted, one.off))
        elif one.kind is OutdoorKind.LOT_LINE:
            found.append(KeepOut(one.id, one.label, one.kind.value, lower, upper, wanted))
        elif one.kind not in (*_OWN, OutdoorKind.SOFFIT_VENT):
            heights = one.lo[2], one.hi[2]
            found.append(KeepOut(one.id, one.label, one.kind.value, lower, upper, wanted, heights_in=heights))
    return found
