"""CARVE: a framed scene and a duct section become the search's problem in whole ticks.

What the search may rely on:

* never optimistic: every barrier covers its solid and the gap wanted round it; round bars count as square ones and
  sloped prisms as their convex hulls; keep-outs on faces are exact, rounded corners included, but for what a
  sloped roof overlooks: that is covered in level bands, exact only where a straight way up leaves;
* sheets (board, sheathing, deck) and members that may be crossed stop runs along their length and width, and every
  elbow body, but not a run squarely through them;
* a place in no zone is inside something solid: there only the solids decide.
"""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.freespace.barriers import barrier, region, up
from routeviz.freespace.ends import StartError, collar, exits, reach_x
from routeviz.freespace.zones import Place, passage_regions, places
from routeviz.model.freespace import Barrier, BarrierKind, FreeSpace, Limits, OffsetChoice, Section
from routeviz.model.overhead import ceiling_over_hood_in
from routeviz.model.scene import Scene, SectionSize
from routeviz.model.solids import Frame, Passage
from routeviz.units import TICKS_PER_IN, ticks

__all__ = ["StartError", "carve", "reach_x"]

_SHIFT_STEP_IN = 0.25  # offsets are offered in steps that a tape shows
_SHIFT_STEP_MM = 5.0
_COVER_ZONE = "in-cover"  # belongs to one place of the hood; the start carries what it hides


def _section(scene: Scene, size: SectionSize) -> Section:
    """Give half sizes, rounded up, and the centre-line radius for a bend in the plane of either side."""
    duct = scene.duct

    def radius(side_in: float) -> int:
        return ticks(duct.elbow_radius_in if duct.elbow_radius_in is not None else duct.elbow_ratio * side_in)

    return Section(size, up(size.width_in / 2), up(size.height_in / 2), radius(size.width_in), radius(size.height_in))


_NO_ROOF, _NO_CAP = "there is no roof to leave through", "the scene allows no cap on the roof"


def _limits(scene: Scene, size: SectionSize) -> Limits:
    duct = scene.duct
    return Limits(
        elbows=duct.max_elbows,
        between=ticks(duct.min_straight_in),
        first=ticks(duct.first_run_in + scene.transition_in(size)),
        last=ticks(duct.last_run_in),
        contact=ticks(duct.clearance_in),
        boxing=duct.boxing_allowed,
        hole=ticks(duct.clearance_in),
    )


def _offsets(scene: Scene) -> tuple[OffsetChoice, ...]:
    step = _SHIFT_STEP_MM / 25.4 if scene.metric else _SHIFT_STEP_IN
    count = int(scene.duct.offset_max_in / step + 1e-9)
    shifts = tuple(ticks(step * n) for n in range(1, count + 1))
    return tuple(OffsetChoice(angle, shifts) for angle in scene.duct.offset_angles_deg)


def _cover_top_in(frame: Frame, scene: Scene) -> float:
    """Give how high the chimney cover reaches: to the ceiling over it, flat or sloped."""
    tops = [region(z.shape).hi[2] / TICKS_PER_IN for z in frame.zones if z.id == _COVER_ZONE]
    return max(tops, default=ceiling_over_hood_in(scene))


def _closed(found: tuple[Place, ...]) -> tuple[Barrier, ...]:
    kinds = {Passage.CLOSED: BarrierKind.CLOSED, Passage.OUTDOORS: BarrierKind.OUTDOORS}
    return tuple(
        Barrier(p.zone.id, p.zone.label, kinds[p.zone.passage], p.region, (True, True, True))
        for p in found
        if p.zone.passage in kinds
    )


def carve(
    frame: Frame,
    scene: Scene,
    section: SectionSize,
    *,
    heights_in: tuple[float, float] | None = None,
    places_in: Sequence[tuple[float, float]] | None = None,
) -> FreeSpace:
    """Turn a framed scene into the search's problem for one duct section.

    Parameters
    ----------
    frame : Frame
        Solids, zones and exit faces of the scene.
    scene : Scene
        Hood place, duct, cap and clearances. The hood must have a mounting height.
    section : SectionSize
        The duct to lay.
    heights_in : two floats, optional
        Between which mounting heights the hood may move when that makes a duct simpler [in].
    places_in : sequence of two floats, optional
        Closed intervals of hood centres at which the hood has room; the whole wall when left out [in].

    Returns
    -------
    FreeSpace
        Barriers, boxing, exits, start and limits in whole ticks.

    Raises
    ------
    StartError
        If the hood has no mounting height.
    """
    made = (barrier(s, scene.duct.clearance_in) for s in frame.solids)
    solids = [b for b in made if b is not None]
    zones = tuple(z for z in frame.zones if z.id != _COVER_ZONE)
    found = places(zones, frame.bounds)
    limit = region(frame.bounds)
    half_in = max(section.width_in, section.height_in) / 2
    hidden = tuple((p.zone.bay or p.zone.label, p.region) for p in found if p.zone.passage is Passage.HIDDEN)
    return FreeSpace(
        lo=limit.lo,
        hi=limit.hi,
        section=_section(scene, section),
        start=collar(scene, half_in, _cover_top_in(frame, scene), heights_in, places_in),
        limits=_limits(scene, section),
        barriers=tuple(solids) + _closed(found),
        boxing=passage_regions(found, Passage.BOXING),
        exits=exits(frame.faces, scene, section),
        offsets=_offsets(scene),
        no_roof=_NO_CAP if scene.roof is not None and not scene.cap.roof else _NO_ROOF,
        bays=hidden,
    )
