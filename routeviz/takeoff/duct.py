"""Straights become pieces of stock; every joint has its overlap and nothing is counted twice."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import pairwise

from routeviz.catalog import table
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Scene, SectionSize
from routeviz.model.solids import FaceKind, Frame
from routeviz.model.takeoff import Account, Cut, StockPlan
from routeviz.takeoff.stock import pack
from routeviz.takeoff.words import own_in, section_text

__all__ = ["Joint", "Piece", "account", "cut_list", "joints", "pieces"]

_BODIES = (PartKind.STRAIGHT, PartKind.ELBOW, PartKind.TRANSITION, PartKind.FLEX, PartKind.DAMPER)


@dataclass(frozen=True, slots=True)
class Piece:
    """One length of duct between two joints. `visible_in` is what of it counts in the route."""

    part: str
    section: SectionSize
    visible_in: float
    lap_in: float  # the crimped end that disappears in the next part
    collar_in: float  # what slides down over the collar of a top outlet
    past_in: float  # what stands past the outer surface, into the cap
    splice: bool  # it ends at another piece of the same straight
    material: str = ""

    @property
    def cut_in(self) -> float:
        """Give the length to cut [in]."""
        return self.visible_in + self.lap_in + self.collar_in + self.past_in


@dataclass(frozen=True, slots=True)
class Joint:
    """A connection between two parts; `section` is the duct there, `where` the step in which it is made."""

    before: str
    after: str
    section: SectionSize
    where: str = "run"  # "hood", "run" or "cap"


def account(route: Route) -> Account:
    """Add the route up from its parts [in]; elbow arcs and take-offs side by side.

    Take-off of an elbow of angle t and centre-line radius R: R tan(t/2). Exact geometry.
    """
    straight = math.fsum(p.length_in for p in route.parts if p.kind is PartKind.STRAIGHT)
    elbows = [p for p in route.parts if p.kind is PartKind.ELBOW]
    return Account(
        straight_in=straight,
        arcs_in=math.fsum(p.length_in for p in elbows),
        take_offs_in=math.fsum(2 * p.radius_in * math.tan(math.radians(p.angle_deg) / 2) for p in elbows),
        others_in=math.fsum(p.length_in for p in route.parts if p.kind not in (PartKind.STRAIGHT, PartKind.ELBOW)),
    )


def stub_in(route: Route, frame: Frame) -> float:
    """How far the route's end stands over the roof's surface [in]; 0 on walls and indoors."""
    face = next((f for f in frame.faces if f.id == route.termination.face), None)
    if face is None or face.kind is not FaceKind.ROOF:
        return 0.0
    x, y, z = route.termination.point
    return max(0.0, z - (face.plane[0] + face.plane[1] * x + face.plane[2] * y))


def past_end_in(route: Route, scene: Scene, frame: Frame) -> float:
    """What the last straight needs beyond the route's end [in].

    Into a wall cap: how far the cap takes the duct. On a roof: the rest of the stub, or of what the cap takes.
    """
    if not route.capped:
        return 0.0
    taken = scene.cap.overlap_in
    if taken is None:
        taken = own_in(table("stock")["cutting"], "cap_overlap", metric=scene.metric)
    if route.termination.kind is FaceKind.ROOF:
        return max(0.0, max(scene.cap.roof_stub_in, taken) - stub_in(route, frame))
    return taken


def pieces(route: Route, scene: Scene, frame: Frame) -> tuple[Piece, ...]:
    """Give every piece of straight duct, in order from the hood.

    A straight longer than one stock section is made of whole sections and one rest, so it has the fewest joints;
    no other division with as few joints needs less stock. The sum of `visible_in` over a straight is its length.
    """
    bodies = [p for p in route.parts if p.kind in _BODIES]
    past = past_end_in(route, scene, frame)
    found: list[Piece] = []
    for at, part in enumerate(bodies):
        if part.kind is not PartKind.STRAIGHT:
            continue
        last = at == len(bodies) - 1
        found += _divide(
            part,
            stock_in=scene.duct.stock_in,
            lap_in=scene.duct.overlap_in,
            collar_in=_over_collar(scene) if at == 0 and not route.as_built else 0.0,
            past_in=past if last else 0.0,
            end_lap_in=0.0 if last else scene.duct.overlap_in,
        )
    return tuple(found)


def _over_collar(scene: Scene) -> float:
    """Give what the first piece has beyond the route's start [in].

    Over a top outlet the route starts at the collar's rim, and the duct slides down over the collar. Behind a rear outlet
    it starts at the wall's face, where the collar lies inside the duct already.
    """
    outlet = scene.hood.outlet
    return 0.0 if outlet.place == "rear" else min(outlet.collar_in, scene.duct.overlap_in)


def _divide(
    part: Part, *, stock_in: float, lap_in: float, collar_in: float, past_in: float, end_lap_in: float
) -> list[Piece]:
    plain = Piece(part.id, part.section, 0.0, lap_in, 0.0, 0.0, True, part.material)
    if stock_in <= lap_in + collar_in + past_in:
        raise ValueError(f"a stock length of {stock_in} in is used up by its own overlaps")
    found: list[Piece] = []
    rest, collar = part.length_in, collar_in
    while rest + collar + past_in + end_lap_in > stock_in + 1e-9:
        visible = min(rest, stock_in - lap_in - collar)
        if rest - visible < 1.0:  # never leave a sliver that cannot be joined
            visible = rest - min(rest / 2, 12.0)
        found.append(replace(plain, visible_in=visible, collar_in=collar))
        rest, collar = rest - visible, 0.0
    found.append(replace(plain, visible_in=rest, lap_in=end_lap_in, collar_in=collar, past_in=past_in, splice=False))
    return found


def joints(route: Route, scene: Scene, frame: Frame) -> tuple[Joint, ...]:
    """Give every joint of the run: collar, parts, splices in long straights, cap."""
    found: list[Joint] = []
    ends = [p for p in route.parts if p.kind is not PartKind.OPEN_END]
    if ends and ends[0].kind is not PartKind.COLLAR and not route.as_built:
        found.append(Joint("hood collar", ends[0].id, ends[0].section, "hood"))
    made = pieces(route, scene, frame)
    for before, after in pairwise(ends):
        where = "hood" if before.kind is PartKind.COLLAR else "cap" if after.kind is PartKind.CAP else "run"
        found.append(Joint(before.id, after.id, after.section, where))
    found += [Joint(p.part, p.part, p.section) for p in made if p.splice]
    return tuple(found)


def cut_list(route: Route, scene: Scene, frame: Frame) -> tuple[tuple[Cut, ...], tuple[StockPlan, ...]]:
    """Cut the pieces from as few stock sections as can be proven; one plan for each duct section.

    Returns
    -------
    tuple
        The cuts in order from the hood, and the stock plans in order of first use.
    """
    kerf = float(table("stock")["cutting"]["kerf_in"])
    over = stub_in(route, frame)
    made = pieces(route, scene, frame)
    cuts: dict[int, Cut] = {}
    plans: list[StockPlan] = []
    first_stock = 0
    for section in dict.fromkeys(p.section for p in made):
        chosen = [i for i, p in enumerate(made) if p.section == section]
        words = section_text(section, metric=scene.metric)
        packed = pack([made[i].cut_in for i in chosen], scene.duct.stock_in, kerf)
        seen: set[int] = set()
        for i, bin_number in zip(chosen, packed.bins, strict=True):
            stock = first_stock + bin_number
            cut = _cut(i + 1, made[i], stock, bin_number in seen, words, scene.duct.stock_in)
            cuts[i] = replace(cut, past_in=made[i].past_in + over) if i == len(made) - 1 else cut
            seen.add(bin_number)
        plans.append(
            StockPlan(scene.duct.stock_in, packed.count, packed.bound, packed.count == packed.bound, packed.waste_in,
                      words, kerf)
        )  # fmt: skip
        first_stock += packed.count
    return tuple(cuts[i] for i in sorted(cuts)), tuple(plans)


def _cut(number: int, piece: Piece, stock: int, not_first: bool, words: str, stock_in: float) -> Cut:
    if piece.cut_in >= stock_in - 1e-9:
        note = "whole section, no cut"
    elif piece.lap_in == 0.0:
        note = "plain end into the cap"
    elif not_first:
        note = "crimp the downstream end by hand"
    else:
        note = "keep the factory crimp, cut the plain end"
    return Cut(f"D{number}", piece.part, piece.visible_in, piece.cut_in, stock, note, words, piece.past_in)
