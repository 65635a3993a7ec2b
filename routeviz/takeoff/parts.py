"""The parts list: what to buy, with sizes and counts."""

from __future__ import annotations

import math
from collections import Counter

from routeviz.catalog import table
from routeviz.model.finding import Finding, State
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Scene, SectionSize
from routeviz.model.solids import FaceKind, Frame
from routeviz.model.takeoff import BuyLine, Cut, Mark, StockPlan
from routeviz.takeoff.backing import backing_lines
from routeviz.takeoff.building import building_lines
from routeviz.takeoff.duct import joints
from routeviz.takeoff.hangers import hanger_places, hangers
from routeviz.takeoff.heavy import is_heavy, weight_text
from routeviz.takeoff.joining import joint_words, screwed, screws_at
from routeviz.takeoff.mending import is_mended
from routeviz.takeoff.packing import pack_lines
from routeviz.takeoff.words import angle_text, running, section_text
from routeviz.units import MM_PER_IN, length_text, sheet_text

__all__ = ["buy_list", "girth_in", "screws_at"]

_WANT_A_CAP = frozenset({"DCT-DAMPER", "TRM-CAP", "TRM-OUTDOORS"})  # a run without one breaks these for want of it


def buy_list(
    route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...],
    cuts: tuple[Cut, ...], plans: tuple[StockPlan, ...], marks: tuple[Mark, ...],
) -> tuple[BuyLine, ...]:  # fmt: skip
    """Give the whole list: duct, fittings, joints and hangers, the house, the hood's fixings."""
    lines = _stock(cuts, plans, scene, mended=is_mended(route, findings))
    broken = frozenset(f.code for f in findings if f.state is State.BROKEN and not f.waived)
    lines += _fittings(route, scene, broken)
    lines += _joints(route, scene, frame, mended=is_mended(route, findings))
    lines += _hangers(route, scene)
    lines += building_lines(route, scene, frame, findings)
    lines += backing_lines(scene, frame, marks)
    lines += pack_lines(scene, marks)
    lines += _fixings(marks, scene)
    return tuple(lines)


def girth_in(section: SectionSize) -> float:
    """Length round a section [in].

    Examples
    --------
    >>> from routeviz.model.scene import SectionShape
    >>> girth_in(SectionSize(SectionShape.RECT, 10.0, 3.25))
    26.5
    """
    if section.is_round:
        return math.pi * section.width_in
    if section.shape.value == "oval":
        return math.pi * section.height_in + 2 * (section.width_in - section.height_in)
    return 2 * (section.width_in + section.height_in)


def _stock(cuts: tuple[Cut, ...], plans: tuple[StockPlan, ...], scene: Scene, *, mended: bool) -> list[BuyLine]:
    lines: list[BuyLine] = []
    for plan in plans:
        parts = tuple(dict.fromkeys(c.part for c in cuts if c.section == plan.section))
        waste = length_text(plan.waste_in, metric=scene.metric)
        size = f"{plan.section}, {length_text(plan.stock_in, metric=scene.metric)}"
        note = "as found; what mends it may change its width" if mended else f"{plan.words}; {waste} left over"
        sheet = scene.duct.sheet_in
        thick = "" if sheet is None or mended else f", {sheet_text(sheet, metric=scene.metric)} thick or more"
        lines.append(BuyLine(f"duct, {scene.duct.material}{thick}", size, plan.count, "section", note, parts))
    return lines


def _fittings(route: Route, scene: Scene, broken: frozenset[str]) -> list[BuyLine]:
    """Give elbows, transitions and the cap; of a run as built, what mends it in place of what must go."""
    lines: list[BuyLine] = []
    elbows = [p for p in route.parts if p.kind is PartKind.ELBOW]
    wanted = Counter(_elbow_key(p, scene) for p in elbows)
    for key, count in wanted.items():
        of_this = tuple(p.id for p in elbows if _elbow_key(p, scene) == key)
        lines.append(BuyLine(key[0], key[1], count, "each", key[2], of_this))
    for part in route.parts:
        if part.kind is PartKind.TRANSITION:
            ends = (section_text(s, metric=scene.metric) for s in (part.section, part.section_out))
            size = " to ".join(ends)
            length = length_text(part.length_in, metric=scene.metric)
            lines.append(BuyLine("transition", size, 1, "each", f"{length} long", (part.id,)))
        elif part.kind is PartKind.FLEX:
            count, unit = running(part.length_in, metric=scene.metric)
            size = section_text(part.section, metric=scene.metric)
            if "DCT-SMOOTH" in broken:
                lines.append(
                    BuyLine(
                        f"duct, {_rigid(scene)}", size, count, unit, "smooth, in place of the flexible duct", (part.id,)
                    )
                )
            else:
                lines.append(
                    BuyLine(
                        "flexible duct", size, count, unit, "as found; smooth rigid duct is better here", (part.id,)
                    )
                )
        elif part.kind is PartKind.DAMPER:
            size = section_text(part.section, metric=scene.metric)
            lines.append(BuyLine("backdraft damper", size, 1, "each", "in line", (part.id,)))
        elif part.kind is PartKind.CAP:
            lines += _cap(part, route, scene, mended="DCT-DAMPER" in broken)
    if not route.capped and broken & _WANT_A_CAP:
        lines += _cap(route.parts[-1], route, scene, mended=True)
    return lines


def _rigid(scene: Scene) -> str:
    """Give the metal that a rigid piece is made of: that of the run as built, unless that is the hose itself."""
    own = scene.as_built.material if scene.as_built is not None else ""
    return own if own and "flex" not in own.lower() else scene.duct.material


def _elbow_key(part: Part, scene: Scene) -> tuple[str, str, str]:
    size = section_text(part.section, metric=scene.metric)
    radius = f"centre-line radius {length_text(part.radius_in, metric=scene.metric)}"
    if part.section.is_round:
        made = part.note or scene.duct.elbow_construction
        return f"elbow, {made}, set to {angle_text(part.angle_deg)}", size, radius
    axis = _axis(part.direction, part.turn_to)
    flat = part.wide is not None and abs(part.wide[axis]) > 0.5
    way = "turning on the flat (wide side square to the turn)" if flat else "turning on edge (wide side in the turn)"
    return f"elbow {angle_text(part.angle_deg)}, {way}", size, radius


def _axis(before: tuple[float, float, float], after: tuple[float, float, float]) -> int:
    """Axis about which a bend turns: the greatest part of the cross product."""
    cross = (
        before[1] * after[2] - before[2] * after[1],
        before[2] * after[0] - before[0] * after[2],
        before[0] * after[1] - before[1] * after[0],
    )
    return max(range(3), key=lambda k: abs(cross[k]))


def _turned(part: Part, route: Route) -> str:
    """Say which way a flat duct's wide side lies on a slope; "" for a round one, and on the level."""
    slopes = [p for p in route.penetrations if p.sloped]
    if part.section.is_round or part.wide is None or not slopes:
        return ""
    up = slopes[-1].stretch[0] > 1.0  # the slope runs along the hood wall
    return f", the wide side {'up the slope' if (abs(part.wide[0]) > 0.5) is up else 'along the eave'}"


def _cap(part: Part, route: Route, scene: Scene, *, mended: bool) -> list[BuyLine]:
    """Give the cap with what seals it; `mended` says that it brings the damper that the run lacks."""
    size = section_text(part.section, metric=scene.metric)
    inline = any(p.kind is PartKind.DAMPER for p in route.parts)
    damper = "with backdraft damper" if (scene.cap.damper or mended) and not inline else "no damper of its own"
    if route.termination.kind is FaceKind.ROOF:
        pitch = f"for a roof of {scene.roof.pitch * 12:g} in 12{_turned(part, route)}" if scene.roof else ""
        return [
            BuyLine(f"roof cap {damper}", size, 1, "each", "no screen", (part.id,)),
            BuyLine("roof flashing", size, 1, "each", pitch),
        ]
    if route.termination.kind is None:  # it ends inside the house: where it is carried out to is not known yet
        return [
            BuyLine(
                f"roof or wall cap {damper}",
                size,
                1,
                "each",
                "no screen; after the way outdoors is planned",
                (part.id,),
            )
        ]
    return [
        BuyLine(f"wall cap {damper}", size, 1, "each", "no screen; the flap must swing free", (part.id,)),
        BuyLine("exterior sealant", "for the cap's flange", 1, "cartridge", "top and sides; leave the bottom open"),
    ]


def _joints(route: Route, scene: Scene, frame: Frame, *, mended: bool) -> list[BuyLine]:
    stock = table("stock")
    every = joints(route, scene, frame)
    if not every:
        return []
    driven = screwed(route, scene, frame)  # a collar that goes back into the wall is sealed alone
    taped_in = math.fsum(girth_in(j.section) for j in driven) * float(stock["tape"]["turns"])
    needed, unit = running(taped_in, metric=scene.metric)
    rolls = math.ceil(taped_in / 12.0 / float(stock["tape"]["roll_ft"]) - 1e-9)
    own = "_metric" if scene.metric else ""
    cartridges = math.ceil(len(every) / int(stock["sealant"]["joints_per_cartridge"]))
    sealant = BuyLine(stock["sealant"]["item"], "for the joints", cartridges, "cartridge", _counted(len(every), mended=mended))
    if not driven:
        return [sealant]
    screws = sum(screws_at(j.section) for j in driven)
    note = f"{_counted(len(driven), mended=mended)}: {joint_words(driven)}"
    if len(driven) < len(every):
        note += "; the hood's collar is sealed without screws"
    return [
        BuyLine("sheet-metal screws", stock["joint"][f"screw_size{own}"], screws, "each", note),
        sealant,
        BuyLine(stock["tape"][f"item{own}"], f"{needed} {unit} needed", rolls, "roll",
                f"over {'each joint' if len(driven) == len(every) else 'the screwed joints'}; wipe the metal first"),
    ]  # fmt: skip


def _counted(joint_count: int, *, mended: bool) -> str:
    """Count the joints; of a run that is mended those that stand, for its new way is not planned yet."""
    said = "1 joint" if joint_count == 1 else f"{joint_count} joints"
    return f"{said} as found, new ones on top" if mended else said


def _hangers(route: Route, scene: Scene) -> list[BuyLine]:
    stock = table("stock")
    every = hangers(route)
    if not every:
        return []
    most, within = float(stock["hanger"]["spacing_in"]), float(stock["hanger_elbow"]["within_in"])
    apart, near = (f"{v * MM_PER_IN / 1000:.1g} m" if scene.metric else f"{v / 12:g} ft" for v in (most, within))
    note = f"at {hanger_places(route, every, metric=scene.metric)}"
    if len(every) > 1:
        note += f"; at most {apart} apart"
    if any(p.kind is PartKind.ELBOW for p in route.parts) and any(not h.riser for h in every):
        note += f"; within {near} of each elbow"
    item = stock["hanger"]["item_metric" if scene.metric else "item"]
    return [BuyLine(item, "with two screws each", len(every), "each", note,
                    tuple(dict.fromkeys(h.part for h in every)))]  # fmt: skip


def _fixings(marks: tuple[Mark, ...], scene: Scene) -> list[BuyLine]:
    """Give the screws and anchors of the marks as they are drilled, and the screws that go into the anchors."""
    lines = []
    decides = (
        f"; the maker's fixing for {weight_text(scene)} decides, see the step that asks for it"
        if is_heavy(scene)
        else ""
    )
    for screws in (False, True):
        wanted = Counter((m.screw if screws else m.fastener, m.row == "bracket") for m in marks)
        for (item, bracket), count in wanted.items():
            held = [m for m in marks if (m.screw if screws else m.fastener) == item and (m.row == "bracket") == bracket]
            use = "one in each anchor" if screws else f"for the {'cover bracket' if bracket else 'hood'}"
            note = f"marks {' '.join(m.label for m in held)}" + ("" if bracket else decides)
            lines += [BuyLine(item, use, count, "each", note)] if item else []
    return lines
