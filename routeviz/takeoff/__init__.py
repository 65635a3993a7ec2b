"""COUNT: a route becomes parts, cuts, holes, marks and an order of work."""

from __future__ import annotations

from routeviz.model.finding import Finding
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.solids import Frame
from routeviz.model.takeoff import Mark, TakeOff
from routeviz.takeoff.backing import backed, in_bays
from routeviz.takeoff.cabinets import cabinet_space
from routeviz.takeoff.cover import as_hung
from routeviz.takeoff.duct import account, cut_list
from routeviz.takeoff.fall import with_fall
from routeviz.takeoff.holes import hole_schedule
from routeviz.takeoff.marks import assumptions, hood_marks
from routeviz.takeoff.measure import measure_first
from routeviz.takeoff.mending import is_mended
from routeviz.takeoff.parts import buy_list
from routeviz.takeoff.rise import rise_first
from routeviz.takeoff.work import order_of_work

__all__ = ["assumptions", "count", "marks_of"]


def marks_of(scene: Scene, frame: Frame) -> tuple[Mark, ...]:
    """Give the marks of the hood and its cover's bracket where the hood stands, as they are drilled."""
    return in_bays(scene, frame, backed(scene, hood_marks(scene, frame)))


def count(route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...] = ()) -> TakeOff:
    """Count everything that one route needs.

    Parameters
    ----------
    route : Route
        Parts in order from the hood, with penetrations and gaps measured. Lengths are exact; nothing is rounded here
        except inside texts.
    scene : Scene
        As planned: without a mounting height there are no fastener marks.
    findings : tuple of Finding
        The scene's and the route's; they decide about lumber for cut members, makeup air and what to settle first.

    Returns
    -------
    TakeOff
        Parts, cuts with a proven or stated bound, holes, marks, steps and what to measure first.
    """
    cuts, plans = cut_list(route, scene, frame)
    hangs = is_mended(route, findings)  # its screws are in, and no step hangs it anew
    marks = () if hangs else marks_of(as_hung(scene, findings), frame)
    holes = with_fall(hole_schedule(route, scene, frame), route, scene, findings)
    measure = rise_first(route, scene, frame, measure_first(route, scene, frame, findings), cuts)
    return TakeOff(
        buy=buy_list(route, scene, frame, findings, cuts, plans, marks),
        cuts=cuts,
        stock=plans,
        holes=holes,
        marks=marks,
        steps=order_of_work(route, scene, frame, findings, holes, marks, measure),
        measure_first=measure,
        account=account(route),
        cabinets=cabinet_space(route, scene),
    )
