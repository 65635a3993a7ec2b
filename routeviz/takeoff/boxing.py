"""Boxing round duct in the open room: strips along its edges, board over them, and the step."""

from __future__ import annotations

from routeviz.catalog import table
from routeviz.model.finding import Finding
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.takeoff import BuyLine, Sheet, Step
from routeviz.takeoff.words import covering, running, size_text
from routeviz.units import length_text

__all__ = ["box_sides_in", "box_steps", "boxed_in", "boxing_lines"]

_EDGES = 4


def boxed_in(route: Route, findings: tuple[Finding, ...]) -> float:
    """Give how much duct runs in the open room [in]; of a route as built the finding has followed it."""
    told = [f.measured for f in findings if f.code == "FIT-BOXING" and f.measured is not None]
    return max(told, default=route.boxed_in)


def box_sides_in(route: Route, scene: Scene) -> tuple[float, float]:
    """Give the boxing's outer sides [in], less the board: the duct, its clearance and a strip on both sides."""
    more = 2 * (scene.duct.clearance_in + float(table("stock")["boxing"]["strip_in"]))
    return route.section.width_in + more, route.section.height_in + more


def boxing_lines(route: Route, scene: Scene, findings: tuple[Finding, ...]) -> list[BuyLine]:
    """Give strips and board for four sides; a side against wall or ceiling needs no board."""
    length, rows = boxed_in(route, findings), table("stock")["boxing"]
    if length <= 0:
        return []
    first, second = box_sides_in(route, scene)
    strips, unit = running(_EDGES * length, metric=scene.metric)
    board, area = covering(2 * (first + second) * length, metric=scene.metric)
    own = "_metric" if scene.metric else ""
    over = f"over {length_text(length, metric=scene.metric)}"
    return [
        BuyLine("strip for the boxing", rows[f"strip{own}"], strips, unit, f"one along each of its four edges, {over}"),
        BuyLine("board for the boxing", f"sides {size_text(first, second, metric=scene.metric)}", board, area,
                f"four sides {over}; one against wall or ceiling needs none"),
    ]  # fmt: skip


def box_steps(route: Route, scene: Scene, findings: tuple[Finding, ...]) -> list[Step]:
    """Give the boxing, last of what hides the duct."""
    length = boxed_in(route, findings)
    if length <= 0:
        return []
    sides = size_text(*box_sides_in(route, scene), metric=scene.metric)
    clear = length_text(scene.duct.clearance_in, metric=scene.metric)
    text = (f"Box the duct in over {length_text(length, metric=scene.metric)}: strips along its four edges, {clear} clear of the "
            f"duct, {sides} outside them, and board on every open side; then finish the boxing.")  # fmt: skip
    return [
        Step("box", text, ("connect", "cover", "inspect"), "The run is inspected, and nothing of the boxing touches the duct.",
             "No screw through the board reaches the duct.", Sheet.SECTION)
    ]  # fmt: skip
