"""The whole-wall map: what is possible for every place and height of the hood, ready to be carried by a page.

A map is filled from plans, one per place and height::

    cells = tuple(tuple(cell_of(plan_at(x, h)) for x in positions) for h in heights)
    wall_map = WallMap(positions, heights, cells)

The page reads it as JSON of this form (`as_json`)::

    x        hood centres from the left wall [in], rising
    h        heights of the hood's underside above the cooktop [in], rising
    words    distinct ways in words; "" for none
    lines    distinct centre lines, each {p: points, b: bends, s: section, w: wide axes, f: face id}; a point is
             [x relative to the hood's centre, y, z] [in]; the first point is the hood's outlet and its z is relative
             to the hood's underside
    rules    distinct findings without their numbers: {code, title, must, relation, unit, source, detail, remedy,
             where, waived}, where being the ids of what it is about
    whys     distinct reasons: {wanted, goes, blockers: [[id, label, overlap, x, y, z, kind]], shift, other, middle, sure, cook,
             against} with shifts relative to the hood's place; cook: the cooktop goes along, against: what advice it breaks
    verdicts the four verdict words, in the order of their numbers in the cells
    follows  whether the cooktop moves with the hood
    cells    one list per height, each with one cell per place:
             [verdict, words, line, length, elbows, boxed, air, why, [[rule, state, measured, limit, margin, x, y, z]],
             reason, turns]
             where words, line, why and turns (a row of words) are numbers of rows or -1, and state is 0 broken, 1 close, 2 fine, 3 not checked
"""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Any

from routeviz.model.airflow import AirStatus
from routeviz.model.finding import Finding, State, Verdict
from routeviz.model.path import Centreline, WhyNot
from routeviz.model.plan import Plan
from routeviz.model.solids import Vec3

__all__ = ["MapCell", "WallMap", "as_json", "cell_of", "line_json"]

VERDICTS = (Verdict.WORKS, Verdict.TIGHT, Verdict.BLOCKED, Verdict.NO_PLACE)
STATES = (State.BROKEN, State.CLOSE, State.FINE, State.NOT_CHECKED)


@dataclass(frozen=True, slots=True)
class MapCell:
    """The answer for one hood place.

    `words` is the way and the exit in words, `turns` its elbows and offsets in words, `line` its centre line, all empty
    when there is no way out.
    `length_in` is the true length along the duct, `elbows` in 90-degree equivalents, `boxed_in` what would need
    boxing in the room, `air_cfm` the flow at full speed (None when it is not known). `why` tells what stands in the
    way of a simpler route, with the least verified shift. `findings` are the scene's and the route's. `reason` says
    why the hood cannot hang here, for ``Verdict.NO_PLACE``.
    """

    verdict: Verdict
    words: str = ""
    line: Centreline | None = None
    length_in: float = 0.0
    elbows: float = 0.0
    boxed_in: float = 0.0
    air_cfm: float | None = None
    why: WhyNot | None = None
    findings: tuple[Finding, ...] = ()
    reason: str = ""
    turns: str = ""


@dataclass(frozen=True, slots=True)
class WallMap:
    """Cells by height, then by place; see the module's text for what a page makes of it.

    `cooktop_follows` says that the cells were planned with the cooktop under the hood at every place.
    """

    positions_in: tuple[float, ...]
    heights_in: tuple[float, ...]
    cells: tuple[tuple[MapCell, ...], ...]
    cooktop_follows: bool = True

    def __post_init__(self) -> None:
        """Refuse a map whose cells do not fit its places and heights, or that are out of order."""
        for name, values in (("positions", self.positions_in), ("heights", self.heights_in)):
            if not values or any(a >= b for a, b in pairwise(values)):
                raise ValueError(f"{name} of a wall map must rise")
        if len(self.cells) != len(self.heights_in) or any(len(row) != len(self.positions_in) for row in self.cells):
            raise ValueError("a wall map needs one cell for every place at every height")

    @property
    def reach_in(self) -> tuple[float, float] | None:
        """Give the least and greatest place where the hood can hang; None when it can hang nowhere."""
        held = [
            x
            for row in self.cells
            for x, cell in zip(self.positions_in, row, strict=True)
            if cell.verdict is not Verdict.NO_PLACE
        ]
        return (min(held), max(held)) if held else None


def cell_of(plan: Plan) -> MapCell:
    """Give the map's cell of a plan: its best way out, or what blocks it."""
    why, best = plan.paths.told_first, plan.best
    reason = plan.answer if plan.verdict is Verdict.NO_PLACE else ""
    if best is None:
        return MapCell(plan.verdict, why=why, findings=plan.all_findings, reason=reason)
    route, air = best.route, best.air
    flow = None if air.full.status is AirStatus.NO_FAN else air.full.flow_cfm
    return MapCell(
        plan.verdict, route.words, route.centreline, route.length_in, route.elbows, route.boxed_in, flow, why,
        plan.all_findings, reason, route.turns,
    )  # fmt: skip


@dataclass
class _Table:
    """Rows that are stored once; `number` gives a row's place."""

    rows: list[Any] = field(default_factory=list)
    _seen: dict[Hashable, int] = field(default_factory=dict)

    def number(self, key: Hashable, row: Any) -> int:
        if key not in self._seen:
            self._seen[key] = len(self.rows)
            self.rows.append(row)
        return self._seen[key]


def _r(value: float, digits: int = 3) -> float | int:
    rounded = round(value, digits)
    return int(rounded) if rounded == int(rounded) else rounded


def line_json(line: Centreline, *, hood_x: float, hood_z: float) -> dict[str, Any]:
    """Give a centre line relative to the hood, as the page draws it."""
    points: list[list[float]] = [[_r(x - hood_x), _r(y), _r(z)] for x, y, z in line.points]
    points[0][2] = _r(line.points[0][2] - hood_z)
    return {
        "p": points,
        "b": [[_r(b.radius_in), _r(b.angle_deg)] for b in line.bends],
        "s": [line.section.shape.value, _r(line.section.width_in), _r(line.section.height_in)],
        "w": [-1 if a is None else a for a in line.wide_axis],
        "f": line.face,
    }


def _why_json(why: WhyNot) -> dict[str, Any]:
    return {
        "wanted": why.wanted,
        "goes": why.goes,
        "blockers": [[b.id, b.label, _r(b.overlap_in), *(_r(v, 2) for v in b.at), b.kind] for b in why.told],
        "shift": None if why.shift_in is None else _r(why.shift_in),
        "other": None if why.shift_other_in is None else _r(why.shift_other_in),
        "middle": None if why.middle_in is None else _r(why.middle_in),
        "sure": why.verified,
        "cook": why.takes_cooktop,
        "against": list(why.alone_breaks),
    }


def rule_json(finding: Finding) -> dict[str, Any]:
    """Give what a finding says without its numbers."""
    return {
        "code": finding.code, "title": finding.title, "must": finding.must, "relation": finding.relation,
        "unit": finding.unit, "source": finding.source_text, "detail": finding.detail, "remedy": finding.remedy,
        "where": list(finding.where), "waived": finding.waived,
    }  # fmt: skip


def finding_json(finding: Finding, rule: int, place: Vec3 | None) -> list[Any]:
    """Give a finding's numbers: rule, state, measured, limit, margin, place."""
    numbers = [None if v is None else _r(v, 4) for v in (finding.measured, finding.limit, finding.margin)]
    return [rule, STATES.index(finding.state), *numbers, *([_r(v, 1) for v in place] if place else [])]


def _key(row: Any) -> Hashable:
    if isinstance(row, dict):
        return tuple((k, _key(v)) for k, v in row.items())
    return tuple(_key(v) for v in row) if isinstance(row, list) else row


def as_json(wall_map: WallMap, *, cooktop_height_in: float) -> dict[str, Any]:
    """Give a map as the plain data that a page carries.

    Parameters
    ----------
    wall_map : WallMap
        The map.
    cooktop_height_in : float
        Height of the cooking surface above the floor; heights of the map count from it.
    """
    words, lines, rules, whys = _Table(), _Table(), _Table(), _Table()

    def put(table: _Table, row: Any) -> int:
        return table.number(_key(row), row)

    def cell_json(cell: MapCell, x: float, h: float) -> list[Any]:
        line = None if cell.line is None else line_json(cell.line, hood_x=x, hood_z=cooktop_height_in + h)
        shown = [f for f in cell.findings if f.state in STATES]
        return [
            VERDICTS.index(cell.verdict), put(words, cell.words) if cell.words else -1,
            -1 if line is None else put(lines, line), _r(cell.length_in), _r(cell.elbows), _r(cell.boxed_in),
            None if cell.air_cfm is None else _r(cell.air_cfm, 6), -1 if cell.why is None else put(whys, _why_json(cell.why)),
            [finding_json(f, put(rules, rule_json(f)), f.place) for f in shown], cell.reason,
            put(words, cell.turns) if cell.turns else -1,
        ]  # fmt: skip

    cells = [
        [cell_json(cell, x, h) for x, cell in zip(wall_map.positions_in, row, strict=True)]
        for h, row in zip(wall_map.heights_in, wall_map.cells, strict=True)
    ]
    return {
        "x": list(wall_map.positions_in), "h": list(wall_map.heights_in), "words": words.rows, "lines": lines.rows,
        "rules": rules.rows, "whys": whys.rows, "verdicts": [v.value for v in VERDICTS],
        "follows": wall_map.cooktop_follows, "cells": cells,
    }  # fmt: skip
