"""The sheets that are lists: parts and cuts, holes, order of work, measure first."""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from itertools import pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.flow import Cell, Column, Flow, settled, tick_box
from routeviz.drawings.hole_sketches import SKETCH, draw_hole_sketch
from routeviz.drawings.lettering import fitted, width
from routeviz.drawings.primitives import Anchor, Face, Text
from routeviz.drawings.sheet import Paper, Sheet
from routeviz.drawings.words import figure, hole_size, length, unit_note
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Cut, Hole
from routeviz.model.takeoff import Sheet as Name
from routeviz.units import length_text

__all__ = ["TEMPLATE", "has_cut_list", "holes_sheets", "is_mended", "measure_sheets", "order_sheets", "parts_sheets"]

_CUTS_TOGETHER = 110.0  # so long a cut list stays on one sheet with its bars [mm]
TEMPLATE = "template"  # the full-size pages, among the sheets that steps name
_TO_CUT = "To cut"
_BY_TEMPLATE = ("marks", "screws")  # steps that it helps
_CHOICES = ("duct", "cap", "tolerances", "rules")
CAUTION = (
    "Plan only: the local code, the makers' instructions and licensed trades decide. Power off and gas closed before "
    "anything is cut; wires, pipes and gas may run where the scene shows nothing. Ladders tied; as many hands for the hood as its step says. "
    "Houses from before 1980 may hold asbestos and lead paint. Open-flue appliances and a strong hood together can draw "
    "carbon monoxide into the house: test before use."
)
_CEILING_DEEP_IN = 1.5  # a hole so near the ceiling's face is in its board
_PIECES = 64  # of a line along a ceiling
_SLOPES_IN = 1 / 16  # less than this a tape along the ceiling does not tell from a level one


def parts_sheets(plan: Plan, option: Option, paper: Paper, number: str) -> list[Sheet]:
    """What to buy, and how to cut the duct."""
    return settled(lambda flow: _parts(flow, plan.scene, option), paper, Name.PARTS, "Parts and cuts", number,
                   unit_note(plan.scene))  # fmt: skip


def _parts(flow: Flow, scene: Scene, option: Option) -> None:
    taken = option.takeoff
    flow.head("What the run takes, as it stands in the scene" if option.route.as_built else "To buy")
    columns = (Column("", 0.03), Column("what", 0.30), Column("size", 0.20), Column("count", 0.07, Face.NARROW_BOLD, right=True),
               Column("", 0.07), Column("note", 0.36))  # fmt: skip
    rows: list[list[str | Cell]] = [
        [Cell("", tick_box), b.item, b.size, f"{b.count:g}", "" if b.unit == "each" else b.unit, b.note]
        for b in taken.buy
    ]
    flow.table(columns, rows)
    if taken.cuts and not is_mended(option):  # nothing is cut for a run to be mended
        bars = sum(math.ceil(p.count / 2) for p in taken.stock)
        flow.head(_TO_CUT, keep=min(_CUTS_TOGETHER, 16.0 + 5.6 * len(taken.cuts) + 6.0 * bars))
        flow.paragraph(_cut_words(option, scene), ink.SMALL, colour=ink.INK2)
        cutting = (Column("", 0.03), Column("piece", 0.07, Face.BOLD), Column("duct", 0.14), Column("shows", 0.11, Face.NARROW, right=True),
                   Column("cut to", 0.11, Face.NARROW_BOLD, right=True), Column("from section", 0.12, Face.NARROW, right=True),
                   Column("how", 0.42))  # fmt: skip
        flow.table(cutting, [_cut_row(c, scene) for c in taken.cuts])
        _stock_bars(flow, option, scene)


def is_mended(option: Option) -> bool:
    """Whether the run stands and is mended, so that its list tells what is there."""
    return any(s.id == "compare" for s in option.takeoff.steps)


def has_cut_list(sheet: Sheet) -> bool:
    """Whether the list of cuts begins on a sheet of parts and cuts."""
    return sheet.name == Name.PARTS and any(isinstance(i, Text) and i.text == _TO_CUT for i in sheet.sketch.items)


def _cut_words(option: Option, scene: Scene) -> str:
    plans = "; ".join(f"{p.section}: {p.words}" for p in option.takeoff.stock)
    total = option.takeoff.account
    run = length_text(total.length_in, metric=scene.metric, long=not scene.metric)
    named = (("straights", total.straight_in), ("elbows", total.arcs_in), ("other fittings", total.others_in))
    shares = ", ".join(f"{name} {length(value, scene)}" for name, value in named if value > 0)
    return f"{plans}. Along its centre line the run is {run}: {shares}. Cut from exact lengths; every figure is rounded once, here."


def _cut_row(cut: Cut, scene: Scene) -> list[str | Cell]:
    note = cut.note
    if cut.past_in:
        note += f"; {length(cut.past_in, scene)} stands past the outer surface"
    return [
        Cell("", tick_box),
        cut.id,
        cut.section,
        length(cut.visible_in, scene),
        length(cut.cut_in, scene),
        str(cut.stock),
        note,
    ]


def _stock_bars(flow: Flow, option: Option, scene: Scene) -> None:
    """Draw each stock section as a bar with its pieces."""
    cuts = option.takeoff.cuts
    flow.gap(2.0)
    column = (flow.right - flow.left) / 2
    for plan in option.takeoff.stock:
        used = sorted({c.stock for c in cuts if c.section == plan.section})
        for n, stock in enumerate(used):
            if n % 2 == 0:
                flow.need(5.0)
            wide = column - 40.0
            left = flow.left + column * (n % 2)
            x0, y, sketch = left + 34.0, flow.y, flow.sheet.sketch
            name, _ = fitted(f"section {stock}, {plan.section}", ink.LEAST, Face.SANS, x0 - 1.0 - left, ink.LEAST)
            sketch.text((left, y - 2.8), name, ink.LEAST)
            scale = wide / plan.stock_in
            sketch.rect((x0, y - 4.0), (x0 + wide, y), ink.FINE, fill=ink.WHITE)
            at = 0.0
            for cut in (c for c in cuts if c.stock == stock):
                a, b = x0 + at * scale, x0 + (at + cut.cut_in) * scale
                sketch.rect((a, y - 4.0), (b, y), ink.FINE, fill=ink.STEEL)
                named = [f"{cut.id}  {figure(cut.cut_in, scene)}", cut.id]
                fits = [w for w in named if width(w, ink.LEAST, Face.NARROW_BOLD) <= b - a - 1.2]
                if fits:
                    sketch.label([((a + 1.0, y - 2.9), Anchor.LEFT)], fits[0], ink.LEAST, Face.NARROW_BOLD)
                at += cut.cut_in + plan.kerf_in
            if n % 2 or stock == used[-1]:
                flow.y -= 6.0


def holes_sheets(plan: Plan, option: Option, paper: Paper, number: str) -> list[Sheet]:
    """The hole schedule: each layer, its size and its centre from two edges."""
    under = f"centres from two edges a tape can hook on. {unit_note(plan.scene)}"
    return settled(lambda flow: _holes(flow, plan.scene, option), paper, Name.HOLES, "Holes", number, under)


def _holes(flow: Flow, scene: Scene, option: Option) -> None:
    if not option.takeoff.holes:
        flow.paragraph("This route needs no hole.")
        return
    first = next(
        (
            f" First: {s.text[:1].lower()}{s.text[1:]} Then the full hole."
            for s in option.takeoff.steps
            if s.id == "look"
        ),
        "",
    )
    begun = "Rows with the same letter are drilled from one centre."
    if is_mended(option):
        begun = "The run stands: these are its holes, to be compared. Cut none before what is broken is settled."
    flow.paragraph(f"{begun}{first}", ink.SMALL, colour=ink.INK2)
    columns = (Column("", 0.03), Column("", 0.03, Face.BOLD), Column("layer", 0.16), Column("hole", 0.15, Face.NARROW_BOLD),
               Column("duct there", 0.11), Column("centre", 0.19), Column("and", 0.19), Column("notes", 0.30))  # fmt: skip
    rows = []
    seen: set[tuple[int, str]] = set()
    for hole in option.takeoff.holes:
        again = (hole.group, hole.layer) in seen  # the same board on both faces of a wall
        seen.add((hole.group, hole.layer))
        rows.append(_hole_row(hole, scene, ", far side" if again else ""))
    flow.table(columns, rows)
    _hole_sketches(flow, option, scene)


def _hole_sketches(flow: Flow, option: Option, scene: Scene) -> None:
    """Draw the first hole of each group from its edges, several in a row."""
    firsts = {h.group: h for h in reversed(option.takeoff.holes)}
    flow.gap(3.0)
    column = 0
    for group in sorted(firsts):
        if column == 0:
            flow.need(SKETCH[1] + 2.0)
        at = (flow.left + column * (SKETCH[0] + 6.0), flow.y - SKETCH[1])
        draw_hole_sketch(flow.sheet.sketch, at, _letter(group), firsts[group], scene)
        column += 1
        if flow.left + (column + 1) * (SKETCH[0] + 6.0) > flow.right + 6.0:
            column, flow.y = 0, flow.y - SKETCH[1] - 4.0


def _letter(group: int) -> str:
    return chr(ord("A") + (group - 1) % 26)


def _hole_row(hole: Hole, scene: Scene, side_words: str = "") -> list[str | Cell]:
    notes = [n for n in (hole.note, hole.member, hole.outside) if n]
    if hole.from_centre_in is not None and abs(hole.from_centre_in) > 1 / 64:
        side = "right" if hole.from_centre_in > 0 else "left"
        notes.insert(0, f"{length(abs(hole.from_centre_in), scene)} {side} of the hood's centre line")
    elif hole.from_centre_in is not None:
        notes.insert(0, "on the hood's centre line")
    over = hole.centre[2] - ceiling_at_in(scene, hole.centre[0])
    if hole.from_other_name == "above the floor" and over > 0:
        notes.insert(0, f"{length(over, scene)} above the ceiling's face")
    from_left, from_other = _in_slope(hole, scene)
    return [
        Cell("", tick_box), _letter(hole.group), f"{hole.layer}{side_words}", hole_size(hole, scene),
        _size("", hole.duct_in, scene), from_left, from_other, ". ".join(f"{n[:1].upper()}{n[1:]}" for n in notes),
    ]  # fmt: skip


def _in_slope(hole: Hole, scene: Scene) -> tuple[str, str]:
    """Give a hole's places from its two edges; in a sloped ceiling also as a tape reads that lies along the ceiling."""
    x, y, z = hole.centre
    named = (hole.from_left_name, hole.from_other_name) == ("from the left wall", "out from the hood wall")
    in_ceiling = named and abs(z - ceiling_at_in(scene, x, -y)) < _CEILING_DEEP_IN
    across = _along(lambda u: ceiling_at_in(scene, u, -y), x) if in_ceiling else 0.0
    out = _along(lambda u: ceiling_at_in(scene, x, u), -y) if in_ceiling else 0.0

    def told(level: float, along: float, name: str) -> str:
        if along - level < _SLOPES_IN:
            return f"{length(level, scene)} {name}"
        return f"{length(level, scene)} level ({figure(along, scene)} along the slope) {name}"

    return told(hole.from_left_in, across, hole.from_left_name), told(hole.from_other_in, out, hole.from_other_name)


def _along(height: Callable[[float], float], end: float) -> float:
    """Give the length of a line that follows a height from 0 to `end` [in]; exact where its pieces are straight."""
    at = [end * k / _PIECES for k in range(_PIECES + 1)]
    return math.fsum(math.dist((a, height(a)), (b, height(b))) for a, b in pairwise(at))


def _size(shape: str, size: tuple[float, float], scene: Scene) -> str:
    if abs(size[0] - size[1]) < 1 / 64 and shape != "rectangular":
        return f"{length(size[0], scene)} {shape}".strip()
    return f"{figure(size[0], scene)} x {length(size[1], scene)} {shape}".strip()


def order_sheets(plan: Plan, option: Option, paper: Paper, number: str, where: dict[str, str]) -> list[Sheet]:
    """The order of work, numbered, with holds and cautions; `where` gives the number of each named sheet."""
    del plan
    under = "each step after the ones it needs; stop where it says hold"
    return settled(lambda flow: _order(flow, option, where), paper, Name.ORDER, "Order of work", number, under)


def _order(flow: Flow, option: Option, where: dict[str, str]) -> None:
    place = {s.id: n for n, s in enumerate(option.takeoff.steps, start=1)}
    columns = (Column("", 0.03), Column("", 0.035, Face.BOLD), Column("step", 0.40), Column("hold until", 0.26),
               Column("caution", 0.22), Column("after", 0.08, Face.NARROW), Column("sheet", 0.07, Face.NARROW))  # fmt: skip
    rows: list[list[str | Cell]] = []
    for step in option.takeoff.steps:
        after = ", ".join(str(n) for n in sorted(place[a] for a in step.after))
        sheet = where.get(step.drawing, "")
        if step.id in _BY_TEMPLATE and TEMPLATE in where:
            sheet += f"; template {where[TEMPLATE]}"
        rows.append([Cell("", tick_box), str(place[step.id]), step.text, Cell(step.hold, bold=False), step.caution, after,
                     sheet])  # fmt: skip
    flow.table(columns, rows, ink.SMALL + 0.1)
    flow.gap()
    flow.paragraph(CAUTION, ink.SMALL, colour=ink.INK2)


def measure_sheets(plan: Plan, option: Option, paper: Paper, number: str) -> list[Sheet]:
    """What to measure first, and everything that was assumed."""
    under = "what nobody measured comes first, then what has the least room"
    return settled(lambda flow: _measure(flow, plan, option), paper, Name.MEASURE, "Measure first", number, under)


def _measure(flow: Flow, plan: Plan, option: Option) -> None:
    scene = plan.scene
    flow.paragraph("Write what you find beside each number. If one is past the number under “the plan changes at”, stop and plan again.",
                   ink.SMALL, colour=ink.INK2)  # fmt: skip
    columns = (Column("", 0.03), Column("what", 0.27), Column("the plan takes", 0.22), Column("the plan changes at", 0.18),
               Column("spare", 0.09, Face.NARROW_BOLD, right=True), Column("may be off by", 0.10, Face.NARROW, right=True),
               Column("found", 0.16))  # fmt: skip
    rows: list[list[str | Cell]] = []
    for item in option.takeoff.measure_first:
        known = " (nobody measured it)" if item.assumed_only else ""
        off = length(item.tolerance_in, scene) if item.tolerance_in else ""
        rows.append(
            [
                Cell("", tick_box),
                f"{item.what[:1].upper()}{item.what[1:]}{known}",
                item.assumed,
                item.changes_at,
                length(item.slack_in, scene),
                off,
                "",
            ]
        )
    flow.table(columns, rows)
    facts = [a for a in plan.assumptions if a.field.split(".")[0] not in _CHOICES]
    choices = [a for a in plan.assumptions if a.field.split(".")[0] in _CHOICES]
    if facts:
        flow.head("Taken as usual, not measured: look before you trust it")
        taken = (Column("", 0.03), Column("what", 0.30), Column("taken", 0.25), Column("why", 0.42))
        flow.table(taken, [[Cell("", tick_box), _field_words(a.field), a.value, a.reason] for a in facts], ink.SMALL)
    if choices:
        flow.head("Chosen for the plan, where the scene says nothing")
        flow.paragraph("; ".join(f"{_field_words(a.field)} {a.value} ({a.reason})" for a in choices) + ".", ink.SMALL)


def _field_words(name: str) -> str:
    """Say a scene field's name: ``walls.hood.plates`` is the hood wall's plates."""
    head, *rest = name.split(".")
    if head == "walls" and rest:
        head, rest = f"{rest[0]} wall", rest[1:]
    if rest[:1] == ["openings"] and len(rest) > 1:
        head, rest = f"{' '.join(rest[1:])} in the {head}", []
        return re.sub("[-_]", " ", head)
    words = [head.removesuffix("s") if head == "tolerances" else head, *rest]
    return " ".join(w.replace("_", " ") for w in words)
