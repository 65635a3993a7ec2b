"""The tape as a drawing of its own: each inch of the hood wall, height over height, with joists above and studs below."""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass
from itertools import groupby, pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.lettering import width
from routeviz.drawings.primitives import Anchor, Face, Page, Point
from routeviz.drawings.sketch import Sketch, hatch_lines
from routeviz.drawings.tape import TAPE_HEIGHT, draw_tape
from routeviz.geometry import bounds
from routeviz.model.finding import Verdict
from routeviz.model.plan import Plan, broken_everywhere
from routeviz.model.solids import Solid, SolidKind
from routeviz.units import length_text

__all__ = ["Kind", "Stretch", "stretches", "tape_page"]

_WIDTH, _LEFT, _RIGHT = 297.0, 30.0, 12.0
_BAND, _BAR = 15.5, 11.0  # one height's row, and the tallest bar in it
_MEMBER = 4.0


@dataclass(frozen=True, slots=True)
class Kind:
    """How one kind of answer is drawn: its words, the bar's height as a share, its fill, and the glyph's strokes."""

    words: str
    height: float
    fill: str | None
    edge: str | None
    glyph: tuple[tuple[Point, ...], ...] = ()


_UP = (((0, -5), (0, 5)), ((-3, 2), (0, 5.4), (3, 2)))
# straight back is the tail of an arrow that goes into the wall
_RING = tuple((4.6 * math.sin(math.pi * k / 8), 4.6 * math.cos(math.pi * k / 8)) for k in range(17))
_BACK = (_RING, ((-3, -3), (3, 3)), ((-3, 3), (3, -3)))
_ONE = (((-3, -5), (-3, 0), (-2.5, 1.6), (-0.5, 2.5), (4, 2.5)), ((1.4, 5), (4.4, 2.5), (1.4, 0)))
_TWO = (((-3, -5.4), (-3, -2), (3, 1), (3, 5)), ((0.4, 2.6), (3, 5.6), (5.6, 2.6)))
KINDS = {
    "up": Kind("straight up, no elbow", 1.0, ink.UP, None, _UP),
    "back": Kind("straight back, no elbow", 1.0, ink.UP, None, _BACK),
    "one": Kind("one elbow", 0.72, ink.WAY_WALL, None, _ONE),
    "two": Kind("two elbows", 0.46, ink.WAY_OFF, ink.WAY_OFF_EDGE, _TWO),
    "more": Kind("three elbows or more", 0.38, ink.WAY_OFF, ink.WAY_OFF_EDGE),
    "blocked": Kind("blocked, by the member named", 0.3, ink.WHITE, ink.BAR),
    "none": Kind("no place for the hood", 0.12, None, None),
}


@dataclass(frozen=True, slots=True)
class Stretch:
    """Neighbouring places along the wall with the same kind of answer, from edge to edge [in]."""

    low: float
    high: float
    kind: str
    boxed: bool
    by: str  # the member that blocks, in short


def _by(plan: Plan) -> str:
    """Name the first member that blocks in short: J4 for joist 4."""
    first = [way.told[0] for way in plan.paths.why_not if way.blockers]
    labels = [b.label for b in first if b.kind != "zone"]
    if not labels:
        return ""
    digits = "".join(c for c in labels[0] if c.isdigit())
    return labels[0][0].upper() + digits if digits else ""


def _answer(plan: Plan, everywhere: Collection[str]) -> tuple[str, bool, str]:
    if plan.verdict is Verdict.NO_PLACE:
        return "none", False, ""
    if plan.best is None or any(f.code not in everywhere for f in plan.must_broken):
        return "blocked", False, _by(plan)
    route = plan.best.route
    boxed = route.boxed_in > 0
    if route.elbows == 0:
        return "up" if route.parts[0].direction[2] > 0.5 else "back", boxed, ""
    return "one" if route.elbows <= 1 else "two" if route.elbows <= 2 else "more", boxed, ""


def stretches(row: Sequence[Plan], everywhere: Collection[str] = ()) -> tuple[Stretch, ...]:
    """Join the places of one height; each place reaches half way to its neighbours.

    Must-findings of the codes `everywhere` say nothing of a place.
    """
    places = [plan.scene.hood.centre_in for plan in row]
    step = min((b - a for a, b in pairwise(places)), default=1.0)
    found = []
    for (kind, boxed, by), group in groupby(
        zip(places, row, strict=True), key=lambda entry: _answer(entry[1], everywhere)
    ):
        members = [place for place, _ in group]
        found.append(Stretch(members[0] - step / 2, members[-1] + step / 2, kind, boxed, by))
    return tuple(found)


def tape_page(rows: Sequence[Sequence[Plan]], *, hood_at: tuple[float, float] | None = None) -> Page:
    """Draw one row for each height, the highest on top.

    Parameters
    ----------
    rows : sequence of sequences of Plan
        By height, rising, then by place along the wall, rising.
    hood_at : (centre, mounting height), optional
        The hood's own place; a pointer and the coloured height mark it [in].

    Returns
    -------
    Page
        A single drawing in millimetres, as high as its rows need.
    """
    plan = rows[0][0]
    scene, long = plan.scene, plan.scene.kitchen.width_in
    scale = (_WIDTH - _LEFT - _RIGHT) / long
    high = 18.0 + 11.0 + _BAND * len(rows) + TAPE_HEIGHT + 18.0 + 20.0
    sketch = Sketch((2.0, 2.0, _WIDTH - 2.0, high - 2.0))
    sketch.text((_LEFT, high - 9.0), f"{scene.name}: the tape", ink.TITLE, Face.SERIF)
    everywhere = broken_everywhere(plan for row in rows for plan in row)
    under = "what each place along the hood wall gives, as seen from the room; taller is better"
    if everywhere:
        under += f"; still to clear everywhere: {', '.join(everywhere.values())}"
    sketch.text((_LEFT, high - 13.5), under, ink.BODY, colour=ink.INK2)
    top = high - 25.0
    base = top - _BAND * len(rows) - TAPE_HEIGHT - 7.5

    def across(x: float) -> float:
        return _LEFT + x * scale

    centre, own = hood_at or (None, None)
    joists, studs = _joists(plan), _studs(plan)
    for solid in joists:
        middle = across(_middle(solid))
        sketch.line((middle, top), (middle, base + TAPE_HEIGHT), ink.HAIR, colour=ink.BOARD)
    _members(sketch, joists, across, (top, top + _MEMBER), "joists", above=True)
    for n, row in enumerate(reversed(rows)):
        floor = top - _BAND * (n + 1)
        _height(sketch, row[0], floor, own)
        for stretch in stretches(row, everywhere):
            _bar(sketch, stretch, across, floor)
        sketch.line((_LEFT, floor), (_WIDTH - _RIGHT, floor), ink.FINE)
    draw_tape(
        sketch,
        _LEFT,
        base,
        long,
        scale,
        metric=scene.metric,
        pointer_in=centre,
        pointer_words="" if centre is None else length_text(centre, metric=scene.metric),
    )
    _members(sketch, studs, across, (base - 1.0 - _MEMBER, base - 1.0), "studs", above=False)
    _legend(
        sketch,
        {s.kind for row in rows for s in stretches(row, everywhere)},
        any(s.boxed for row in rows for s in stretches(row, everywhere)),
    )
    return Page("tape", f"{scene.name}: the tape", _WIDTH, high, tuple(sketch.items))


def _height(sketch: Sketch, plan: Plan, floor: float, own: float | None) -> None:
    mount = plan.scene.hood.mount_in or 0.0
    here = own is not None and abs(mount - own) < 1e-6
    words = length_text(mount, metric=plan.scene.metric)
    sketch.text((_LEFT - 3.0, floor + 5.6), words, ink.HEADING, Face.NARROW_BOLD, Anchor.RIGHT,
                colour=ink.UP if here else ink.INK)  # fmt: skip
    sketch.text((_LEFT - 3.0, floor + 2.2), "above cooktop", ink.LEAST, Face.NARROW, Anchor.RIGHT, colour=ink.INK2)


def _bar(sketch: Sketch, stretch: Stretch, across: Callable[[float], float], floor: float) -> None:
    """Draw one stretch: its height, fill and edge tell the kind, so that grey print keeps it."""
    kind = KINDS[stretch.kind]
    x0, x1 = across(stretch.low) + 0.1, across(stretch.high) - 0.1
    tall = _BAR * kind.height
    _swatch(sketch, stretch.kind, (x0, floor), (x1, floor + tall), boxed=stretch.boxed)
    if kind.glyph and x1 - x0 > 4.0:
        _glyph(sketch, stretch.kind, ((x0 + x1) / 2, floor + tall / 2), min(0.36, (x1 - x0) / 16, tall / 14))
    if stretch.by and width(stretch.by, ink.LEAST, Face.NARROW_BOLD) <= x1 - x0:
        place = ((x0 + x1) / 2, floor + tall + 0.9)
        sketch.label([(place, Anchor.MIDDLE)], stretch.by, ink.LEAST, Face.NARROW_BOLD, colour=ink.BAR)


def _swatch(sketch: Sketch, name: str, a: Point, b: Point, *, boxed: bool) -> None:
    kind = KINDS[name]
    if name == "none":
        n = max(1, round((b[0] - a[0]) / 1.7))
        for k in range(n):
            sketch.disc((a[0] + (k + 0.5) * (b[0] - a[0]) / n, a[1] + 0.8), 0.35, 0.0, fill=ink.NO_PLACE)
        return
    sketch.rect(a, b, 0.0, fill=kind.fill)
    if name == "one":
        for k in range(1, int((b[1] - a[1]) / 1.5)):
            sketch.line((a[0], a[1] + 1.5 * k), (b[0], a[1] + 1.5 * k), ink.FINE, colour=ink.WHITE)
    if name == "more":
        for k in range(1, int((b[0] - a[0]) / 1.6) + 1):
            sketch.line((a[0] + 1.6 * k - 0.8, a[1]), (a[0] + 1.6 * k - 0.8, b[1]), ink.FINE, colour=ink.WAY_OFF_EDGE)
    if name == "blocked":
        inner = (
            (a[0] + 0.35, a[1] + 0.35),
            (b[0] - 0.35, a[1] + 0.35),
            (b[0] - 0.35, b[1] - 0.35),
            (a[0] + 0.35, b[1] - 0.35),
        )
        for p, q in hatch_lines(inner, 1.7, 45.0):
            sketch.line(p, q, 0.8, colour=ink.BAR)
    edge = kind.edge or (ink.INK if boxed else None)
    if edge is not None:
        sketch.rect(a, b, ink.FINE if not boxed else 0.3, colour=edge, dash=(0.9, 0.6) if boxed else ())


def _glyph(sketch: Sketch, name: str, at: Point, size: float) -> None:
    colour = ink.WAY_OFF_EDGE if name in ("two", "more") else ink.WHITE
    if name == "one":
        sketch.rect(
            (at[0] - 5.5 * size, at[1] - 6 * size), (at[0] + 5.5 * size, at[1] + 6 * size), 0.0, fill=ink.WAY_WALL
        )
    for stroke in KINDS[name].glyph:
        sketch.path([(at[0] + x * size, at[1] + y * size) for x, y in stroke], 0.34, colour=colour)


def _middle(solid: Solid) -> float:
    box = bounds(solid.shape)
    return (box.lo[0] + box.hi[0]) / 2


def _joists(plan: Plan) -> list[Solid]:
    """Give the members over the ceiling that run out from the hood wall, one for each number."""
    kinds = (SolidKind.JOIST,) if plan.scene.ceiling.joists else (SolidKind.CHORD, SolidKind.RAFTER)
    found = [
        s for s in plan.frame.solids
        if s.kind in kinds and s.member is not None and s.member.axis == 1 and s.member.number and s.space != "storey"
    ]  # fmt: skip
    return list({round(_middle(s), 2): s for s in found}.values())


def _studs(plan: Plan) -> list[Solid]:
    """Give the hood wall's studs and furring strips."""
    kinds, other = (SolidKind.STUD, SolidKind.FURRING), ("left", "right", "front")
    found = [
        s for s in plan.frame.solids
        if s.kind in kinds and s.space == "kitchen" and s.member is not None and s.member.number
        and not s.label.startswith(other) and 0.0 <= _middle(s) <= plan.scene.kitchen.width_in
    ]  # fmt: skip
    return list({round(_middle(s), 2): s for s in found}.values())


def _members(
    sketch: Sketch, found: list[Solid], across: Callable[[float], float], span: tuple[float, float], word: str, *, above: bool
) -> None:  # fmt: skip
    """Draw members at their true width with the framer's X and their numbers."""
    low, high = span
    if not found:
        return
    sketch.text((_LEFT - 3.0, low + 1.0), word, ink.LEAST, Face.NARROW, Anchor.RIGHT, colour=ink.INK2)
    for solid in found:
        box = bounds(solid.shape)
        a, b = (across(box.lo[0]), low), (across(box.hi[0]), high)
        sketch.rect(a, b, ink.FINE, fill=ink.TIMBER, colour=ink.TIMBER_EDGE, name=solid.id)
        sketch.cross(a, b)
        at = ((a[0] + b[0]) / 2, high + 0.9 if above else low - 0.9 - 0.72 * ink.LEAST)
        number = solid.member.number if solid.member is not None else 0
        sketch.label([(at, Anchor.MIDDLE)], str(number), ink.LEAST, Face.NARROW_BOLD, colour=ink.TIMBER_EDGE)


def _legend(sketch: Sketch, kinds: set[str], boxed: bool) -> None:
    """Explain the marks that are there, the best first."""
    x, y = _LEFT, 11.0
    entries = [(name, KINDS[name].words, False) for name in KINDS if name in kinds]
    entries += [("two", "dashed edge: boxed in the room", True)] if boxed else []
    for name, words, dashed in entries:
        long = 8.0 + width(words, ink.SMALL, Face.SANS) + 6.0
        if x + long > _WIDTH - _RIGHT:
            x, y = _LEFT, y - 6.5
        tall = max(1.2, 4.6 * KINDS[name].height)
        _swatch(sketch, name, (x, y), (x + 6.0, y + tall), boxed=dashed)
        sketch.text((x + 7.5, y + 0.4), words, ink.SMALL)
        x += long
