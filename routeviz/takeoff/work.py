"""The order of work: steps, what must come before them, and where to stop and look."""

from __future__ import annotations

from collections.abc import Iterable

from routeviz.model.finding import Finding
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.solids import Frame
from routeviz.model.takeoff import Hole, Mark, MeasureFirst, Step
from routeviz.takeoff.cautions import with_heights
from routeviz.takeoff.fall import fall_words
from routeviz.takeoff.heavy import heavy_steps
from routeviz.takeoff.masonry import cored, of_board
from routeviz.takeoff.mending import is_mended, mending_steps
from routeviz.takeoff.rise import rise_steps
from routeviz.takeoff.work_closing import closing_steps, duct_steps, end_steps, hood_steps
from routeviz.takeoff.work_opening import before_steps, marking_steps, opening_up_steps

__all__ = ["in_order", "order_of_work"]


def order_of_work(
    route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...],
    holes: tuple[Hole, ...], marks: tuple[Mark, ...], measure: tuple[MeasureFirst, ...],
) -> tuple[Step, ...]:  # fmt: skip
    """Give the steps in an order that respects what each of them needs; ties keep the usual order of the trade."""
    if is_mended(route, findings):
        return in_order(
            [
                *before_steps(findings, measure, scene),
                *mending_steps(findings, route, board=_board(route, frame)),
                *end_steps(route, scene, findings),
            ]
        )
    fall = fall_words(route, scene, findings)
    steps = [
        *before_steps(findings, measure, scene),
        *marking_steps(scene, marks),
        *heavy_steps(scene),
        *opening_up_steps(route, scene, frame, holes),
        *rise_steps(route, scene, frame),
        *duct_steps(route, scene, frame, fall),
        *closing_steps(route, scene, frame, findings, marks),
        *hood_steps(route, scene, frame, findings, marks),
        *end_steps(route, scene, findings),
    ]
    return in_order(with_heights(steps, route, scene, holes, marks))


def _board(route: Route, frame: Frame) -> bool:
    """Whether board hides any of the run, or it meets no masonry at all."""
    return bool(of_board(route, frame)) or not cored(route, frame)


def in_order(steps: Iterable[Step]) -> tuple[Step, ...]:
    """Sort steps so that each comes after the ones it names; steps that are not there are dropped from `after`.

    Raises
    ------
    ValueError
        If two steps wait for each other, or an id stands twice.
    """
    import networkx as nx

    listed = list(steps)
    place = {step.id: n for n, step in enumerate(listed)}
    if len(place) != len(listed):
        raise ValueError("a step's id stands twice")
    graph: nx.DiGraph[str] = nx.DiGraph()
    graph.add_nodes_from(place)
    graph.add_edges_from((before, step.id) for step in listed for before in step.after if before in place)
    try:
        order = list(nx.lexicographical_topological_sort(graph, key=lambda step_id: place[step_id]))
    except nx.NetworkXUnfeasible as fault:
        raise ValueError("two steps wait for each other") from fault
    return tuple(_kept(listed[place[step_id]], place) for step_id in order)


def _kept(step: Step, known: dict[str, int]) -> Step:
    after = tuple(a for a in step.after if a in known)
    return Step(step.id, step.text, after, step.hold, step.caution, step.drawing)
