"""Openings in framed walls: king and jack studs, header, sill and cripples."""

from __future__ import annotations

from routeviz.catalog import table
from routeviz.framing.layout import slots
from routeviz.framing.materials import member_burns
from routeviz.framing.place import Place
from routeviz.framing.sheets import Rect
from routeviz.model.scene import MemberKind, MemberLayout, Opening, OpeningKind
from routeviz.model.solids import Crossing, Member, Solid, SolidKind
from routeviz.model.spoken import spoken

__all__ = ["frame_openings", "header_depth_in", "name_of"]

Part = tuple[SolidKind, str, str, Rect]


def name_of(opening: Opening) -> str:
    """Name an opening for people: its id in words, with window or door if the id does not say so."""
    words, kind = spoken(opening.id), opening.kind.value
    return words if kind in words else f"{kind} {words}"


def header_depth_in(span_in: float) -> float:
    """Give the depth of a header over an opening [in], by its span, from the table of usual headers."""
    rows = table("timber")["header"]
    for row in rows:
        if span_in <= row["span_in"]:
            return float(row["depth_in"])
    return float(rows[-1]["depth_in"])


def _parts(opening: Opening, layout: MemberLayout, floor: float, z: tuple[float, float]) -> list[Part]:
    """Give the members round one rough opening, most important first, as rectangles along and up the wall."""
    w, words = layout.width_in, name_of(opening)
    left, right = opening.left_in, opening.left_in + opening.width_in
    sill, top = floor + opening.sill_in, floor + opening.sill_in + opening.height_in
    head = min(top + header_depth_in(opening.width_in), z[1])
    found: list[Part] = [
        (SolidKind.HEADER, "header", f"header over the {words}", Rect(left - w, right + w, top, head)),
        (SolidKind.JACK, "jack-1", f"jack stud left of the {words}", Rect(left - w, left, z[0], top)),
        (SolidKind.JACK, "jack-2", f"jack stud right of the {words}", Rect(right, right + w, z[0], top)),
        (SolidKind.STUD, "king-1", f"king stud left of the {words}", Rect(left - 2 * w, left - w, *z)),
        (SolidKind.STUD, "king-2", f"king stud right of the {words}", Rect(right + w, right + 2 * w, *z)),
    ]
    has_sill = opening.kind is OpeningKind.WINDOW and sill - w > z[0]
    if has_sill:
        found.append((SolidKind.SILL, "sill", f"sill under the {words}", Rect(left, right, sill - w, sill)))
    for slot in slots(layout, left - w, right + w):
        number = slot.number
        above, below = Rect(slot.lo, slot.hi, head, z[1]), Rect(slot.lo, slot.hi, z[0], sill - w)
        found.append((SolidKind.CRIPPLE, f"cripple-{number}-above", f"cripple {number} over the {words}", above))
        if has_sill:
            found.append((SolidKind.CRIPPLE, f"cripple-{number}", f"cripple {number} under the {words}", below))
    return found


def _clipped(rect: Rect, place: Place) -> Rect | None:
    """Keep a member inside the wall's frame; None when nothing sensible is left."""
    s0, s1 = max(rect.s0, place.core[0]), min(rect.s1, place.core[1])
    if s1 - s0 < 1.0 - 1e-9 or rect.z1 - rect.z0 < 0.5:
        return None
    return Rect(s0, s1, rect.z0, rect.z1)


def frame_openings(
    place: Place, layout: MemberLayout, floor: float, z: tuple[float, float]
) -> tuple[list[Solid], list[tuple[float, float]]]:
    """Frame all openings of a wall between its plates.

    Parameters
    ----------
    place : Place
        The wall.
    layout : MemberLayout
        Its studs; cripples keep the layout's places and numbers.
    floor : float
        Height that sills are measured from [in].
    z : tuple of float
        Top of the bottom plate and underside of the top plates [in].

    Returns
    -------
    solids : list of Solid
        Members that do not overlap; where two openings stand close, the later one's member gives way.
    taken : list of (float, float)
        Spans along the wall where no layout stud stands.
    """
    solids: list[Solid] = []
    placed: list[Rect] = [
        Rect(o.left_in, o.left_in + o.width_in, floor + o.sill_in, floor + o.sill_in + o.height_in)
        for o in place.wall.openings
    ]
    taken: list[tuple[float, float]] = []
    for opening in place.wall.openings:
        width = layout.width_in
        taken.append((opening.left_in - 2 * width, opening.left_in + opening.width_in + 2 * width))
        for kind, key, words, whole in _parts(opening, layout, floor, z):
            rect = _clipped(whole, place)
            if rect is None or any(rect.overlaps(other) for other in placed):
                continue
            placed.append(rect)
            solids.append(_solid(place, layout, opening, kind, key, words, rect))
    return solids, taken


def _solid(
    place: Place, layout: MemberLayout, opening: Opening, kind: SolidKind, key: str, words: str, rect: Rect
) -> Solid:
    flat = kind in (SolidKind.HEADER, SolidKind.SILL)
    depth = rect.z1 - rect.z0 if kind is SolidKind.HEADER else layout.depth_in
    engineered = layout.kind if kind is not SolidKind.HEADER or layout.kind is MemberKind.STEEL else MemberKind.SAWN
    member = Member(
        engineered, layout.size, place.wall.core_in if kind is SolidKind.HEADER else layout.width_in, depth,
        place.run_axis if flat else 2, bearing=place.wall.bearing, exterior=place.wall.beyond == "outdoors",
    )  # fmt: skip
    return Solid(
        f"{place.prefix}-{opening.id}-{key}", kind, words,
        place.box((rect.s0, rect.s1), place.core_n, (rect.z0, rect.z1)), Crossing.NEVER,
        f"walls.{place.prefix}.openings", member, "steel" if layout.kind is MemberKind.STEEL else "timber",
        side=place.kitchen_side, space=place.space, combustible=member_burns(layout.kind), wall=place.words,
        rated=place.wall.fire_rated,
    )  # fmt: skip
