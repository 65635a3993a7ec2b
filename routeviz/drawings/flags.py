"""Marks of findings that survive a grey print: shape first, colour second."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import ends_of, flat
from routeviz.drawings.house import View, duct_boxes
from routeviz.drawings.primitives import Anchor, Face, Point
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.taken import Rect, overlaps
from routeviz.model.finding import Finding, State, Verdict
from routeviz.model.plan import Plan
from routeviz.model.solids import Vec3

__all__ = ["barred", "draw_flags", "flag", "flag_key", "in_the_way", "numbered", "place_of", "verdict_mark"]

_MOST_AT_ONE_PLACE = 3


def numbered(plan: Plan) -> list[tuple[int, Finding]]:
    """Give all findings with their numbers: broken, close, fine, not checked; the same numbers on every sheet."""
    shown = [f for f in plan.all_findings if f.state is not State.DOES_NOT_APPLY]
    return list(enumerate(shown, start=1))


def place_of(plan: Plan, finding: Finding) -> Vec3 | None:
    """Give where a finding's flag stands: its own place, or the middle of the first thing framed that it names."""
    if finding.place is not None:
        return finding.place
    ids = {s.id: s for s in plan.frame.solids}
    named = next((ids[i] for i in finding.where if i in ids), None)
    if named is None:
        return None
    x, y, z = (sum(ends_of(named.shape, k)) / 2 for k in range(3))
    return x, y, z


def flag_key(plan: Plan) -> str:
    """Say what the flags of a drawing are and where their numbers are told; "" where there is none."""
    flown = [(n, f) for n, f in numbered(plan) if f.state in (State.BROKEN, State.CLOSE)]
    if not flown:
        return ""
    kinds = {State.BROKEN: "barred flag: broken", State.CLOSE: "dashed flag: close"}
    told = ", ".join(words for state, words in kinds.items() if any(f.state is state for _, f in flown))
    loose = [str(n) for n, f in flown if place_of(plan, f) is None]
    without = f"; {' and '.join(loose)} without a place" if loose else ""
    return f"{told[:1].upper()}{told[1:]}, numbers as under Findings and sources{without}"


def verdict_mark(sketch: Sketch, x: float, y: float, verdict: Verdict) -> float:
    """Draw a verdict's sign with its lower left at (x, y), told by shape before colour; give how wide it is [mm].

    As in the pictures: a tick in a disc where the plan works, a barred pennant where it does not.
    """
    if verdict in (Verdict.WORKS, Verdict.TIGHT):
        sketch.disc((x + 2.2, y + 1.1), 2.2, 0.0, fill=ink.UP)
        sketch.path(((x + 1.1, y + 1.1), (x + 1.9, y + 0.3), (x + 3.4, y + 2.1)), ink.HEAVY, colour=ink.WHITE)
        return 5.8
    sketch.line((x + 0.3, y - 1.4), (x + 0.3, y + 3.4), ink.MEDIUM)
    barred(sketch, [(x + 0.3, y), (x + 6.6, y), (x + 5.4, y + 1.6), (x + 6.6, y + 3.2), (x + 0.3, y + 3.2)])
    return 8.4


def barred(sketch: Sketch, outline: list[Point]) -> None:
    """Fill an area with the bars that mean broken and nothing else."""
    sketch.path(outline, 0.0, fill=ink.WHITE, closed=True)
    for k in range(3):
        shifted = [(x + 0.18 * k, y) for x, y in outline]
        sketch.hatch(shifted, 1.8, colour=ink.BAR)
    sketch.path(outline, ink.MEDIUM, colour=ink.BAR, closed=True)


def flag(sketch: Sketch, x: float, y: float, state: State, number: int) -> None:
    """Draw a finding's mark with its lower left at (x, y): pennant, dashed square, tick, or ring."""
    words = str(number)
    if state is State.BROKEN:
        tail = [(x, y - 0.6), (x + 7.6, y - 0.6), (x + 6.2, y + 1.1), (x + 7.6, y + 2.8), (x, y + 2.8)]
        barred(sketch, tail)
        sketch.disc((x + 2.6, y + 1.1), 1.65, ink.HAIR, fill=ink.WHITE, colour=ink.BAR)
        sketch.text((x + 2.6, y + 0.2), words, ink.LEAST, Face.NARROW_BOLD, Anchor.MIDDLE)
    elif state is State.CLOSE:
        sketch.rect((x, y - 0.6), (x + 5.2, y + 2.8), ink.MEDIUM, fill=ink.WHITE, colour="#7a4a00", dash=(0.9, 0.6))
        sketch.text((x + 2.6, y + 0.2), words, ink.LEAST, Face.NARROW_BOLD, Anchor.MIDDLE)
    elif state is State.FINE:
        sketch.path(((x + 0.4, y + 0.9), (x + 1.4, y), (x + 3.0, y + 2.4)), ink.HEAVY, colour=ink.UP)
        sketch.text((x + 4.0, y + 0.2), words, ink.LEAST, Face.NARROW)
    else:
        sketch.disc((x + 1.6, y + 1.0), 1.2, ink.FINE, colour=ink.INK2, dash=(0.5, 0.5))
        sketch.text((x + 4.0, y + 0.2), words, ink.LEAST, Face.NARROW)


def in_the_way(plan: Plan) -> set[str]:
    """Give the ids of the solids that a plan without a route names as blocking."""
    if plan.best is not None:
        return set()
    return {b.id for why in plan.paths.why_not for b in why.blockers if b.kind == "solid"}


def draw_flags(sketch: Sketch, view: View, plan: Plan, plane: float | None = None) -> None:
    """Plant the marks of broken and close findings at their places, with their numbers.

    With a `plane`, only findings within a foot of it belong to the view.
    """
    planted: dict[tuple[float, float], int] = {}
    taken = duct_boxes(view, plan.best.route) if plan.best is not None else []
    for number, finding in numbered(plan):
        place = place_of(plan, finding)
        if place is None or finding.state not in (State.BROKEN, State.CLOSE):
            continue
        if plane is not None and abs(place[view.axis] - plane) > 12.0:
            continue
        u, v = flat(place, view.axis)
        if not (view.region[0] <= u <= view.region[2] and view.region[1] <= v <= view.region[3]):
            continue
        tip = view.at(u, v)
        key = (round(tip[0]), round(tip[1]))
        if planted.get(key, 0) >= _MOST_AT_ONE_PLACE:
            continue
        spot = (
            _free_spot(sketch, tip, taken, over_lines=False)
            or _free_spot(sketch, tip, taken)
            or _free_spot(sketch, tip, [])
        )
        if spot is None:
            continue
        planted[key] = planted.get(key, 0) + 1
        x, y = spot
        sketch.line((x, y - 0.6), tip, ink.FINE)
        flag(sketch, x, y, finding.state, number)
        sketch.reserve((x, y - 0.8, x + 7.8, y + 3.0))


def _free_spot(sketch: Sketch, tip: Point, taken: list[Rect], *, over_lines: bool = True) -> Point | None:
    for reach in (6.0, 10.0, 15.0, 21.0, 28.0):
        for a, b in (
            (0.7, 0.7),
            (-1.0, 0.7),
            (0.7, -1.0),
            (-1.0, -1.0),
            (1.0, 0.0),
            (-1.4, 0.0),
            (0.0, 1.0),
            (0.0, -1.3),
        ):
            x, y = tip[0] + a * reach, tip[1] + b * reach
            spot = (x - 0.3, y - 1.0, x + 8.0, y + 3.2)
            if not sketch.taken.is_free(spot) or any(overlaps(spot, box) for box in taken):
                continue
            if over_lines or not sketch.taken.is_struck(spot):
                return x, y
    return None
