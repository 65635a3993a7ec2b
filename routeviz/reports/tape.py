"""The tape in the terminal: the hood wall from left to right, and what each inch of it gives."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from routeviz.geometry import bounds
from routeviz.model.finding import Verdict
from routeviz.model.plan import Plan, broken_everywhere
from routeviz.model.solids import Frame, SolidKind
from routeviz.reports.words import wrap
from routeviz.units import length_text

__all__ = ["LEGEND", "tape_text"]

LEGEND = "↑ straight up  → straight back  1 2 3 elbows  □ boxed in the room  ▨ blocked  · no place for the hood"


def tape_text(plans: Sequence[Plan], *, width: int = 80) -> str:
    """Draw one row of plans along the wall, and list its stretches in words.

    Parameters
    ----------
    plans : sequence of Plan
        The same scene with the hood at rising places along the wall.
    width : int
        Columns of the terminal.
    """
    scene, frame = plans[0].scene, plans[0].frame
    wall = scene.kitchen.width_in
    columns = width - 10
    step = wall / columns
    places = [plan.scene.hood.centre_in for plan in plans]

    def nearest(x: float) -> Plan | None:
        i = min(range(len(places)), key=lambda n: abs(places[n] - x))
        return plans[i] if abs(places[i] - x) <= max(step, 1.0) else None

    everywhere = broken_everywhere(plans)
    marks = "".join(_mark(nearest((c + 0.5) * step), everywhere) for c in range(columns))
    rows = [
        _row("joists", _members(frame, SolidKind.JOIST, columns, step)),
        _row("route", marks),
        _row("tape mm" if scene.metric else "tape in", _ruler(columns, step, metric=scene.metric)),
        _row("studs", _members(frame, SolidKind.STUD, columns, step)),
    ]
    lines = [*rows, "", wrap(LEGEND, width, "  "), ""]
    if everywhere:
        lines += [wrap(f"Still to clear, wherever the hood hangs: {', '.join(everywhere.values())}.", width, "  "), ""]
    if any(plan.scene.cooktop.centre_in != scene.cooktop.centre_in for plan in plans):
        lines += [wrap("The cooktop goes with the hood.", width, "  "), ""]
    return "\n".join([*lines, *_stretches(plans, width, everywhere)])


def _row(name: str, text: str) -> str:
    return f"{name:>8}  {text}".rstrip()


def _mark(plan: Plan | None, everywhere: Collection[str]) -> str:
    if plan is None or plan.verdict is Verdict.NO_PLACE:
        return "·"
    if plan.best is None or any(f.code not in everywhere for f in plan.must_broken):
        return "▨"
    route = plan.best.route
    if route.boxed_in > 0:
        return "□"
    if route.elbows == 0:
        return "↑" if route.parts[0].direction[2] > 0.5 else "→"
    return f"{min(round(route.elbows), 9)}"


def _members(frame: Frame, kind: SolidKind, columns: int, step: float) -> str:
    """Mark members of the hood wall or ceiling that the tape meets end on, by the last digit of their number."""
    cells = [" "] * columns
    for solid in frame.solids:
        if solid.kind is not kind or solid.member is None or solid.member.axis == 0:
            continue
        if kind is SolidKind.STUD and solid.label.startswith(("left", "right", "front")):
            continue
        box = bounds(solid.shape)
        column = int((box.lo[0] + box.hi[0]) / 2 / step)
        if 0 <= column < columns and solid.space == "kitchen":
            cells[column] = str(solid.member.number % 10)
    return "".join(cells)


def _ruler(columns: int, step: float, *, metric: bool) -> str:
    every = 500 / 25.4 if metric else 12.0
    cells = ["─"] * columns
    n = 0
    while n * every < columns * step:
        text = f"{n * 500}" if metric else f"{n * 12}"
        at = int(n * every / step)
        if at + len(text) <= columns:  # the beginning of a number is another number
            cells[at : at + len(text)] = text
        n += 1
    return "".join(cells)


def _stretches(plans: Sequence[Plan], width: int, everywhere: Collection[str]) -> list[str]:
    """Say in words what each stretch of the wall gives, one line a stretch."""
    lines: list[str] = []
    begun = 0
    for i in range(1, len(plans) + 1):
        if i == len(plans) or _same(plans[i], everywhere) != _same(plans[begun], everywhere):
            first, last = plans[begun], plans[i - 1]
            metric = first.scene.metric
            low, high = (length_text(p.scene.hood.centre_in, metric=metric) for p in (first, last))
            span = low if low == high else f"{low} to {high}"
            lines.append(wrap(f"{_mark(first, everywhere)} {span}: {_words(first, everywhere)}", width, "  "))
            begun = i
    return lines


def _same(plan: Plan, everywhere: Collection[str]) -> tuple[str, str]:
    return _mark(plan, everywhere), _words(plan, everywhere)


def _words(plan: Plan, everywhere: Collection[str]) -> str:
    if plan.verdict is Verdict.NO_PLACE:
        return "no place for the hood"
    if plan.best is None:
        first = [w.told[0] for w in plan.paths.why_not if w.blockers]
        named = [b.label for b in sorted(first, key=lambda b: b.kind == "zone") if b.id]
        return f"blocked by {named[0]}" if named else "blocked"
    route = plan.best.route
    way = f"{route.words}, {route.turns}{', boxed in the room' if route.boxed_in > 0 else ''}"
    broken = [f.title for f in plan.must_broken if f.code not in everywhere]
    if broken:
        return f"{plan.verdict}: {', '.join(dict.fromkeys(broken))}. {way}"
    return way if everywhere else f"{plan.verdict}. {way}"
