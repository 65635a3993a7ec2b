"""The table beside the marked wall: each mark with its place, what it goes into and its drill; the notes below."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.catalog import table
from routeviz.drawings import palette as ink
from routeviz.drawings.backing import backing_pieces
from routeviz.drawings.conflict_words import STOP, banner
from routeviz.drawings.lettering import wrapped
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sheet import Sheet, section_title
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.supply import supply_at, supply_meets
from routeviz.drawings.words import figure, length
from routeviz.model.backing import Backing
from routeviz.model.plan import Plan
from routeviz.model.scene import Scene, WallFrame, WallSide
from routeviz.model.takeoff import Mark
from routeviz.units import drill_text

__all__ = ["draw_table"]

_MANY = 8  # more marks than these stand closer together
_CLOSER = 1.5  # by so much [mm]
_NEAR_EDGE_IN = 3 / 8  # a screw nearer to the edge of its wood is told so; our own warning, no limit
_SOLID_WALLS = ("masonry wall", "concrete wall")


def draw_table(
    sheet: Sheet, plan: Plan, marks: Sequence[Mark], free: Sequence[tuple[float, str]], ends: tuple[float, float], *,
    stop: bool,
) -> None:  # fmt: skip
    """Write the table of marks with its notes between the `ends` [mm]; `stop` where there is no route yet."""
    scene, sketch, (left, right) = plan.scene, sheet.sketch, ends
    y = sheet.room[3] - 14.0
    if stop:
        y = banner(sheet, (left, sheet.room[3] - 3.0), right, STOP) - 6.0
    y = section_title(sheet, (left, y), "Marks where the hood stands now" if stop else "Marks", right)
    heads = ((0.0, "", Anchor.LEFT), (22.0, "from left", Anchor.RIGHT), (37.0, "above floor", Anchor.RIGHT), (40.0, "goes into", Anchor.LEFT),
             (74.0, "pilot", Anchor.LEFT), (88.0, "leave proud", Anchor.LEFT))  # fmt: skip
    for dx, words, anchor in heads:
        sketch.text((left + dx, y), words, ink.LEAST, anchor=anchor, colour=ink.INK2)
    y -= 4.6
    closer = 0.0 if len(marks) <= _MANY else _CLOSER
    for mark in marks:
        y = _mark_row(sketch, mark, scene, left, right, y) + closer
    y = _supply_row(sketch, plan, marks, left, right, y) - 2.0
    for words in [
        *_free_words(free, scene),
        *_backing_words(scene, marks),
        *_notes(plan, marks),
        *_edge_words(scene, marks),
    ]:
        for line in _wrapped(words, right - left):
            if y < sheet.room[1] + 1.0:
                return
            sketch.text((left, y), line, ink.SMALL)
            y -= 3.6
        y -= 1.0


def _wrapped(words: str, room: float) -> list[str]:
    return wrapped(words, ink.SMALL, Face.SANS, room)


def _mark_row(sketch: Sketch, mark: Mark, scene: Scene, left: float, right: float, y: float) -> float:
    if mark.wood:
        sketch.disc((left + 1.4, y + 0.9), 1.05, ink.FINE, fill=ink.INK)
    else:
        sketch.rect((left + 0.4, y - 0.1), (left + 2.4, y + 1.9), ink.MEDIUM, fill=ink.WHITE)
    sketch.text((left + 4.0, y), mark.label, ink.BODY, Face.BOLD)
    sketch.text((left + 22.0, y), figure(mark.left_in, scene), ink.BODY, Face.NARROW_BOLD, Anchor.RIGHT)
    sketch.text((left + 37.0, y), figure(mark.height_in, scene), ink.BODY, Face.NARROW_BOLD, Anchor.RIGHT)
    holds = _wrapped(mark.holds, 33.0)
    for n, line in enumerate(holds):
        sketch.text((left + 40.0, y - 3.5 * n), line, ink.SMALL)
    sketch.text((left + 74.0, y), drill_text(mark.pilot_in, metric=scene.metric), ink.SMALL, Face.NARROW_BOLD)
    sketch.text((left + 88.0, y), length(mark.stand_off_in, scene) if mark.stand_off_in else "tight", ink.SMALL)
    low = y - 3.5 * len(holds)
    sketch.text((left + 40.0, low), mark.driven, ink.LEAST, colour=ink.INK2)
    low -= 1.5
    sketch.line((left, low), (right, low), ink.HAIR, colour="#b9ad99")
    return low - 4.0


def _supply_row(sketch: Sketch, plan: Plan, marks: Sequence[Mark], left: float, right: float, y: float) -> float:
    """Write where the supply comes out of the wall, and what it meets there."""
    at = supply_at(plan.scene)
    if at is None:
        return y
    sketch.rect((left + 0.4, y - 0.1), (left + 2.4, y + 1.9), ink.FINE, fill=ink.WHITE)
    sketch.line((left + 0.4, y - 0.1), (left + 2.4, y + 1.9), ink.FINE)
    sketch.line((left + 0.4, y + 1.9), (left + 2.4, y - 0.1), ink.FINE)
    sketch.text((left + 4.0, y), "supply", ink.SMALL, Face.BOLD)
    for end, value in zip((22.0, 37.0), at, strict=True):
        sketch.text((left + end, y), figure(value, plan.scene), ink.BODY, Face.NARROW_BOLD, Anchor.RIGHT)
    lines = _wrapped(supply_meets(plan, marks), right - left - 40.0)
    for n, line in enumerate(lines):
        sketch.text((left + 40.0, y - 3.5 * n), line, ink.SMALL)
    low = y - 3.5 * (len(lines) - 1) - 1.5
    sketch.line((left, low), (right, low), ink.HAIR, colour="#b9ad99")
    return low - 4.0


def _backing_words(scene: Scene, marks: Sequence[Mark]) -> list[str]:
    """Say where the board is opened for backing and how long each piece is, one sentence for each height."""
    size = str(table("stock")["backing"]["size_metric" if scene.metric else "size"])
    level: dict[str, list[str]] = {}
    for piece in backing_pieces(marks):
        level.setdefault(_opened(piece, scene), []).append(
            f"{' and '.join(piece.marks)} {figure(piece.left_in, scene)} to {length(piece.right_in, scene)} from the left wall "
            f"({figure(piece.length_in, scene)} long)"
        )
    return [f"Backing, {size}: {'; '.join(places)}. Open the board there {opened}." for opened, places in level.items()]


def _opened(piece: Backing, scene: Scene) -> str:
    """Say from where to where the board is opened round a piece of backing; a ceiling that it meets ends it."""
    low, high = piece.opened_in
    if piece.meets_ceiling(scene):
        return f"from {length(low, scene)} above the floor to the ceiling"
    return f"from {figure(low, scene)} to {length(high, scene)} above the floor"


def _edge_words(scene: Scene, marks: Sequence[Mark]) -> list[str]:
    """Say which screws stand so near to the edge of their wood that a drill must not wander."""
    near = [m for m in marks if m.wood and not m.backed and m.edge_in is not None and m.edge_in <= _NEAR_EDGE_IN]
    if not near:
        return []
    least = min(m.edge_in for m in near if m.edge_in is not None)
    names = " and ".join([", ".join(m.label for m in near[:-1]), near[-1].label] if len(near) > 1 else [near[0].label])
    return [f"{names}: {length(least, scene)} from the edge of the wood, so drill true."]


def _free_words(free: Sequence[tuple[float, str]], scene: Scene) -> list[str]:
    if not free:
        return []
    told = "; ".join(f"{length(at, scene)} from the left wall ({words})" for at, words in free)
    return [f"Or the centre line stands at {told}. The screws keep their distances from both lines; what they meet there "
            "is told when that place is planned."]  # fmt: skip


def _notes(plan: Plan, marks: Sequence[Mark]) -> list[str]:
    wood = sum(1 for m in marks if m.wood and m.row != "bracket")
    hood = sum(1 for m in marks if m.row != "bracket")
    square = "screw into the backing" if any(m.backed for m in marks) else "anchor"
    if square != "anchor" and any(not (m.wood or m.backed) for m in marks):
        square = "screw into the backing, for the bracket an anchor"
    notes = [
        f"Filled disc: screw into wood. Open square: {square}. Pilots and sizes are common practice; the fastener's maker decides.",
    ]
    if plan.scene.wall(WallSide.HOOD).frame in (WallFrame.WOOD, WallFrame.STEEL):
        notes.append("Find every stud again with a magnet or a fine nail before drilling; then mark from both lines.")
    if hood and all(m.holds.startswith(_SOLID_WALLS) for m in marks):
        notes.insert(
            0,
            f"The whole {plan.scene.wall(WallSide.HOOD).frame.value} wall holds: drill for the anchors, never into a joint.",
        )
    elif hood:
        backing = "" if wood >= min(2, hood) else (
            " Let backing into the wall first: anchors alone do not carry a hood.")  # fmt: skip
        notes.insert(0, f"{wood} of {hood} hood screws meet wood.{backing}")
    if piece := next((m.piece for m in marks if m.row == "bracket" and m.piece), ""):
        notes.append(
            f"{piece[:1].upper()}{piece[1:]}, its screws where such brackets usually have them: use its own holes."
        )
    return notes
