"""Holes through masonry, concrete and logs: the pilot that goes first, the core, and what is made good round it."""

from __future__ import annotations

import math

from routeviz.catalog import table
from routeviz.model.members import together
from routeviz.model.route import Penetration, Route
from routeviz.model.scene import Scene
from routeviz.model.solids import Frame, SolidKind
from routeviz.model.takeoff import BuyLine, Sheet, Step
from routeviz.takeoff.cautions import outside_caution
from routeviz.takeoff.words import hole_text, own_in
from routeviz.units import MM_PER_IN, drill_text, length_text

__all__ = [
    "core_step",
    "cored",
    "is_log",
    "lies_on",
    "making_good",
    "mortar_in",
    "needs_sleeve",
    "of_board",
    "pilot_text",
    "plastered",
    "sleeve_in",
    "sleeved_in",
]

_TOUCHING_IN = 1 / 16
_LOG = "log"


def needs_sleeve(kind: SolidKind) -> bool:
    """Whether a hole through such a solid is lined with a sleeve."""
    return kind in (SolidKind.MASONRY, SolidKind.SLAB)


def sleeved_in(crossing: Penetration) -> tuple[float, float]:
    """Give the hole for a sleeve and the mortar round it [in]: the duct and an allowance, never less than its clearance.

    The sleeve itself is `sleeve_in`.
    """
    return crossing.lined_in(float(table("members")["masonry"]["sleeve_in"]["value"]))


def mortar_in(*, metric: bool) -> float:
    """Give how thick the mortar, or what seals it in, lies round a sleeve [in]."""
    return own_in(table("stock")["sleeve"], "mortar", metric=metric)


def sleeve_in(crossing: Penetration, *, metric: bool) -> tuple[float, float]:
    """Give the sleeve [in]: its hole less the mortar all round, in whole trade steps, and never less than the duct."""
    step, gap = own_in(table("stock")["sleeve"], "step", metric=metric), 2 * mortar_in(metric=metric)
    first, second = (
        max(duct, math.floor((hole - gap) / step + 1e-9) * step)
        for hole, duct in zip(sleeved_in(crossing), crossing.size_in, strict=True)
    )
    return first, second


def cored(route: Route, frame: Frame) -> list[Penetration]:
    """Give the crossings of masonry, concrete and logs, in order from the hood."""
    return [p for p in route.penetrations if needs_sleeve(frame.solid(p.solid).kind)]


def lies_on(crossing: Penetration, route: Route, frame: Frame) -> Penetration | None:
    """Give the masonry that a layer lies on, hole behind hole; None for a layer over framing or a cavity."""
    if frame.solid(crossing.solid).kind not in (SolidKind.BOARD, SolidKind.CLADDING):
        return None
    for other in cored(route, frame):
        if min(math.dist(crossing.leave, other.centre), math.dist(other.leave, crossing.centre)) < _TOUCHING_IN:
            return other
    return None


def plastered(crossing: Penetration, route: Route, frame: Frame) -> bool:
    """Whether a layer is plaster or render on masonry: made good with mortar, never patched with board."""
    solid = frame.solid(crossing.solid)
    return "board" not in f"{solid.label} {solid.material}".lower() and lies_on(crossing, route, frame) is not None


def of_board(route: Route, frame: Frame) -> list[Penetration]:
    """Give the crossings of board, and of plaster that hangs on lath: what can be opened and patched."""
    return [
        p for p in route.penetrations if frame.solid(p.solid).kind is SolidKind.BOARD and not plastered(p, route, frame)
    ]


def is_log(crossing: Penetration, frame: Frame) -> bool:
    """Whether what is crossed is a wall of logs: sawn and sealed, where masonry is cored and mortared."""
    return frame.solid(crossing.solid).material == _LOG


def pilot_text(scene: Scene) -> str:
    """Write the drill that goes through the wall first."""
    row = table("stock")["pilot_through"]
    size = float(row["drill_mm"]) / MM_PER_IN if scene.metric else float(row["drill_in"])
    return drill_text(size, metric=scene.metric)


def making_good(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """Give mortar for the sleeves, and finishing plaster where the room's side is plastered."""
    lines: list[BuyLine] = []
    sleeves = [p for p in cored(route, frame) if not is_log(p, frame)]
    for crossing in sleeves:
        size = hole_text(crossing.shape, sleeved_in(crossing), metric=scene.metric)
        lines.append(BuyLine("repair mortar", f"round the sleeve, in a hole of {size}", 1, "bag", frame.solid(crossing.solid).label,
                             (crossing.solid,)))  # fmt: skip
    for crossing in route.penetrations:
        solid = frame.solid(crossing.solid)
        if solid.kind is SolidKind.BOARD and plastered(crossing, route, frame):
            deep = length_text(crossing.through_in, metric=scene.metric)
            lines.append(
                BuyLine("finishing plaster", f"{deep} deep round the duct", 1, "bag", solid.label, (solid.id,))
            )
    return lines


def core_step(
    crossing: Penetration, step: str, after: tuple[str, ...], route: Route, scene: Scene, frame: Frame
) -> Step:
    """Give the step that opens the wall along its pilot, with the caution that its dust asks for."""
    solid = frame.solid(crossing.solid)
    size = hole_text(crossing.shape, sleeved_in(crossing), metric=scene.metric)
    ladder = f" {outside_caution(route)}" if step == "outside" else ""
    if is_log(crossing, frame):
        return Step(step, f"Cut the hole through the {solid.label}, {size}, from both faces along the pilot.", after,
                    "Both cuts meet on the pilot.", f"Eye protection; logs hide old spikes.{ladder}", Sheet.OUTSIDE)  # fmt: skip
    how = "Core-drill" if crossing.shape == "round" else "Chain-drill and cut"
    lying = [frame.solid(p.solid).label for p in route.penetrations if lies_on(p, route, frame) is crossing]
    on_it = f" and the {together(lying)} on it" if lying else ""
    text = (f"{how} {size} through the {solid.label}{on_it}, along the pilot and from both faces so that nothing "
            "breaks out.")  # fmt: skip
    return Step(step, text, after, "The hole falls a little to outdoors, and its edges hold.",
                "Dust of masonry holds silica: drill wet or with suction at the bit, wear a fitted mask. A core drill that jams "
                f"turns the one who holds it: clutch on, both hands, or fixed to a stand.{ladder}", Sheet.OUTSIDE)  # fmt: skip
