"""Checks on the house: walls, openings, spaces, ceiling, roof, names."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator
from difflib import get_close_matches
from typing import Any

from routeviz.model.roofline import on_rafters
from routeviz.model.scene import AboveKind, OpeningKind, RoofForm, RunDirection, SpaceKind, WallFrame, WallSide
from routeviz.scenefile.check_heel import check_heel
from routeviz.scenefile.check_members import check_layout
from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.document import Document
from routeviz.scenefile.fields import is_blank
from routeviz.scenefile.house import OpeningTable, RoofTable, ServiceTable, SpaceTable, WallTable
from routeviz.scenefile.paths import Path

__all__ = ["check_house", "follows_rafters"]

_OUTDOORS, _ROOM = "outdoors", "room"
_RESERVED = (_OUTDOORS, _ROOM, "kitchen")
_LEAST_WALL_IN = 12.0  # room for plates and board
_OVERHEAD = (SpaceKind.ATTIC, SpaceKind.STOREY)  # words by which the house calls its own spaces
_ACROSS = (WallSide.HOOD, WallSide.FRONT)
_HOLLOW = (WallFrame.WOOD, WallFrame.STEEL)


def check_house(document: Document, notes: Notes) -> None:
    """Check everything that is built."""
    _check_names(document, notes)
    for wall, path, length, height in _walls(document):
        _check_wall(wall, path, length, height, document, notes)
    for number, space in enumerate(document.spaces):
        _check_space(space, ("spaces", number), document, notes)
    _check_ceiling(document, notes)
    _check_above(document, notes)
    if document.roof is not None:
        _check_roof(document.roof, document, notes)


def _walls(document: Document) -> Iterator[tuple[WallTable, Path, float, float]]:
    """Give every wall with its place, length and height [in]."""
    kitchen = document.kitchen
    for side in WallSide:
        wall = getattr(document.walls, side.value)
        if wall is not None:
            yield wall, ("walls", side.value), kitchen.width if side in _ACROSS else kitchen.depth, kitchen.ceiling
    for number, space in enumerate(document.spaces):
        along = kitchen.width if space.behind in _ACROSS else kitchen.depth
        width = along if space.width is None else space.width
        height = kitchen.ceiling if space.height is None else space.height
        for side_name in ("front", "left", "right"):
            wall = getattr(space.walls, side_name)
            if wall is not None:
                length = width if side_name == "front" else space.deep
                yield wall, ("spaces", number, "walls", side_name), length, height


def follows_rafters(document: Document) -> bool:
    """Whether the ceiling is fixed to the rafters, so that its height is not the same everywhere."""
    roof, ceiling = document.roof, document.ceiling
    framing = roof.framing if roof is not None else None
    return roof is not None and on_rafters(
        document.above.kind,
        joists=ceiling.joists is not None,
        slab=ceiling.slab > 0,
        framed=framing.kind if framing is not None else None,
    )


def _named(document: Document) -> Iterator[tuple[str, Path]]:
    for wall, path, _, _ in _walls(document):
        for key in ("openings", "services"):
            for n, row in enumerate(getattr(wall, key)):
                yield row.name, (*path, key, n, "name")
    lists: tuple[tuple[Path, tuple[Any, ...]], ...] = (
        (("ceiling", "beams"), document.ceiling.beams),
        (("spaces",), document.spaces),
        (("obstacles",), document.obstacles),
        (("outdoors",), document.outdoors),
    )
    for path, table_rows in lists:
        for n, row in enumerate(table_rows):
            yield row.name, (*path, n, "name")


def _check_names(document: Document, notes: Notes) -> None:
    seen: dict[str, str] = {}
    for name, path in _named(document):
        if is_blank(name):
            continue
        read = _as_read(name)
        if read in seen:
            twice = "this name is used twice" if name == seen[read] else f'this name reads the same as "{seen[read]}"'
            notes.add(path, twice, f'Give each thing its own name, like "{name[:36]}-2"')
        seen.setdefault(read, name)
        if read in _RESERVED:
            notes.add(path, "this word has a meaning of its own", "Choose another name")
    for number, space in enumerate(document.spaces):
        word = "" if is_blank(space.name) else _as_read(space.name)
        if word in _OVERHEAD and space.kind != word:
            problem = f"the {word} is what lies over the kitchen"
            notes.add(("spaces", number, "name"), problem, f'Choose another name, or write kind = "{word}"')


def _as_read(name: str) -> str:
    """Give a name as people tell it from others: without capitals, and hyphens as good as spaces."""
    return " ".join(re.sub(r"[^\w]|_", " ", name.casefold()).split())


def _check_beyond(beyond: str, path: Path, known: list[str], notes: Notes) -> None:
    if not is_blank(beyond) and beyond not in known:
        near = get_close_matches(beyond, known, n=1)
        meant = f'Did you mean "{near[0]}"? ' if near else ""
        remedy = f"{meant}Write one of: {', '.join(known)}; or add a [[spaces]] of that name"
        notes.add(path, "there is no space of this name", remedy)


def _check_wall(wall: WallTable, path: Path, length: float, height: float, document: Document, notes: Notes) -> None:
    known = [_OUTDOORS, _ROOM, *(s.name for s in document.spaces if s.name is not None)]
    _check_beyond(wall.beyond, (*path, "beyond"), known, notes)
    _check_structure(wall, path, length, notes)
    if wall.lot_line is not None and wall.beyond in (_ROOM, *(s.name for s in document.spaces)):
        notes.add((*path, "lot_line"), "outdoors does not begin at this wall", "Give it at a wall with outdoors beyond")
    for n, opening in enumerate(wall.openings):
        _check_opening(opening, (*path, "openings", n), length, height, notes)
        for m, other in enumerate(wall.openings[:n]):
            if _overlap(opening, other):
                named = other.name or f"number {m + 1}"
                notes.add((*path, "openings", n), f"lies over {named}", "Check left, sill, width and height of both")
    for n, service in enumerate(wall.services):
        _check_service(service, (*path, "services", n), length, notes)


def _check_structure(wall: WallTable, path: Path, length: float, notes: Notes) -> None:
    hollow = wall.frame in _HOLLOW
    if hollow and wall.studs is None:
        notes.missing((*path, "studs"), 'Add studs = { size = "2x6", spacing = "16 in", first = "3/4 in" }')
    if hollow and wall.outside is None and wall.beyond == _OUTDOORS:
        notes.missing((*path, "outside"), 'Add outside = ["OSB sheathing 7/16 in", "wood lap siding 3/4 in"]')
    if not is_blank(wall.frame) and not hollow and wall.core is None:
        notes.missing((*path, "core"), f'Add core = "8 in", the thickness of the {wall.frame}')
    if wall.studs is None:
        return
    check_layout(wall.studs, (*path, "studs"), length, "stud", notes)
    if wall.studs.direction is not None:
        notes.add((*path, "studs", "direction"), "studs always follow their wall", "Take it out")
    if hollow and wall.core is not None:
        notes.add((*path, "core"), "the studs already say how deep the wall is", "Take it out")


def _check_opening(opening: OpeningTable, path: Path, length: float, height: float, notes: Notes) -> None:
    if opening.sill is None and opening.kind is OpeningKind.WINDOW:
        notes.missing((*path, "sill"), 'Add sill = "44 in" (lower edge above the floor)')
    sill = opening.sill or 0.0
    if opening.left + opening.width > length + 1e-9:
        reach = notes.length(opening.left + opening.width)
        notes.add(
            (*path, "width"), f"reaches to {reach}, but the wall ends at {notes.length(length)}", "Check left and width"
        )
    if sill + opening.height > height + 1e-9:
        reach = notes.length(sill + opening.height)
        notes.add(
            (*path, "height"), f"reaches up to {reach}, but the wall to {notes.length(height)}", "Check sill and height"
        )


def _overlap(a: OpeningTable, b: OpeningTable) -> bool:
    low_a, low_b = a.sill or 0.0, b.sill or 0.0
    across = a.left < b.left + b.width and b.left < a.left + a.width
    return across and low_a < low_b + b.height and low_b < low_a + a.height


def _check_service(service: ServiceTable, path: Path, length: float, notes: Notes) -> None:
    if service.left + service.width > length + 1e-9:
        reach = notes.length(service.left + service.width)
        notes.add(
            (*path, "width"), f"reaches to {reach}, but the wall ends at {notes.length(length)}", "Check left and width"
        )


def _check_space(space: SpaceTable, path: Path, document: Document, notes: Notes) -> None:
    sides = [s for s in WallSide if (w := getattr(document.walls, s.value)) is not None and w.beyond == space.name]
    if sides and not is_blank(space.behind) and space.behind not in sides:
        problem = f"the {sides[0]} wall says that {space.name} lies beyond it"
        notes.add((*path, "behind"), problem, f'Write behind = "{sides[0]}", or change beyond of that wall')
    known = [
        _OUTDOORS,
        _ROOM,
        "attic",
        "storey",
        *(s.name for s in document.spaces if s.name not in (None, space.name)),
    ]
    _check_beyond(space.above, (*path, "above"), known, notes)
    for side in ("front", "left", "right"):
        wall = getattr(space.walls, side)
        if wall is not None and wall.beyond == space.name and not is_blank(space.name):
            notes.add((*path, "walls", side, "beyond"), "a space cannot lie beyond its own wall", "Name what is beyond")


def _check_ceiling(document: Document, notes: Notes) -> None:
    ceiling, kitchen = document.ceiling, document.kitchen
    slab = ceiling.slab > 0
    if document.above.kind is AboveKind.SLAB and ceiling.slab == 0:
        notes.missing(("ceiling", "slab"), 'Add slab = "200 mm", the thickness of the concrete')
    if slab and ceiling.joists is not None:
        notes.add(("ceiling", "joists"), "a concrete ceiling has no joists", "Take out joists, or slab")
    framed = document.roof is not None and document.roof.framing is not None
    bare = document.above.kind is AboveKind.ROOF and framed
    if ceiling.slab == 0 and ceiling.joists is None and not bare and document.above.kind is not AboveKind.SLAB:
        example = '{ size = "2x8", spacing = "16 in", first = "14 in", direction = "out" }'
        notes.missing(("ceiling", "joists"), f"Add joists = {example}")
    joists = ceiling.joists
    if joists is not None:
        path: Path = ("ceiling", "joists")
        if joists.direction is None and not notes.is_set((*path, "direction")):
            remedy = 'Add direction = "out" (square to the hood wall) or "along" (parallel to it)'
            notes.missing((*path, "direction"), remedy)
        reach = _reach(joists.direction, kitchen.width, kitchen.depth)
        check_layout(joists, path, reach, "joist", notes)
    for n, beam in enumerate(ceiling.beams):
        if beam.start is not None and beam.end is not None and beam.end <= beam.start:
            notes.add(("ceiling", "beams", n, "end"), "not beyond its start", "Check start and end")


def _reach(direction: RunDirection | None, width: float, depth: float) -> float:
    """Give how far members may stand: across the room from the reference edge."""
    if direction is RunDirection.OUT:
        return width
    return depth if direction is RunDirection.ALONG else math.nan


def _check_above(document: Document, notes: Notes) -> None:
    kind = document.above.kind
    if kind in (AboveKind.ATTIC, AboveKind.ROOF) and document.roof is None and not notes.is_set(("roof",)):
        notes.missing(
            ("roof",), f"Add a table [roof]: over the kitchen is {'an attic' if kind is AboveKind.ATTIC else 'a roof'}"
        )
    if not is_blank(kind) and kind is not AboveKind.SLAB and document.ceiling.slab > 0:
        notes.add(("ceiling", "slab"), f"above.kind says {kind}", 'Write kind = "slab" under [above], or take slab out')
    for key in ("storey_height", "floor"):
        if kind in (AboveKind.ATTIC, AboveKind.ROOF) and key in document.above.model_fields_set:
            notes.add(("above", key), f"there is no storey above, but {kind}", "Take it out, or change kind")


def _check_roof(roof: RoofTable, document: Document, notes: Notes) -> None:
    flat = roof.form is RoofForm.FLAT
    if is_blank(roof.form):
        return
    if not flat and roof.pitch is None:
        notes.missing(("roof", "pitch"), 'Add pitch = "6/12" (rise over run)')
    if not flat and roof.pitch == 0:
        notes.add(("roof", "pitch"), f"a {roof.form} roof has a slope", 'Write the pitch, or form = "flat"')
    if flat and roof.pitch is not None and roof.pitch > 1 / 12:
        notes.add(("roof", "pitch"), "too steep for a flat roof", "Write a pitch up to 1/12, or another form")
    if roof.form is RoofForm.GABLE:
        for key, example in (("ridge", '"along"'), ("ridge_at", '"11 ft"')):
            if getattr(roof, key) is None:
                notes.missing(("roof", key), f"Add {key} = {example}")
    if roof.form is RoofForm.SHED and roof.high_side is None:
        notes.missing(("roof", "high_side"), 'Add high_side = "front", the wall at the high edge')
    if roof.form is not RoofForm.SHED and roof.high_side is not None:
        notes.add(("roof", "high_side"), "only a shed roof has a high side", 'Take it out, or write form = "shed"')
    if not flat and roof.framing is None:
        notes.missing(("roof", "framing"), 'Add framing = { size = "2x6", spacing = "16 in", first = "14 in" }')
    ridge = _ridge(roof)
    _check_roof_framing(roof, ridge, document, notes)
    check_heel(roof, document, notes, on_rafters=follows_rafters(document), ridge=ridge)
    kitchen = document.kitchen
    if roof.high_side is WallSide.HOOD and roof.pitch is not None and follows_rafters(document):
        low = kitchen.ceiling - roof.pitch * kitchen.depth  # the ceiling is measured at the hood wall
        if low < _LEAST_WALL_IN:
            fall = notes.length(roof.pitch * kitchen.depth)
            problem = f"over the kitchen's depth the ceiling would fall by {fall}, from {notes.length(kitchen.ceiling)} at the hood wall"
            notes.add(("roof", "pitch"), problem, "Check pitch, high_side, and the kitchen's depth and ceiling")


def _ridge(roof: RoofTable) -> RunDirection | None:
    """Give which way the ridge runs; a shed roof's high side says it."""
    if roof.form is RoofForm.SHED and roof.high_side is not None:
        return RunDirection.ALONG if roof.high_side in _ACROSS else RunDirection.OUT
    return roof.ridge


def _check_roof_framing(roof: RoofTable, ridge: RunDirection | None, document: Document, notes: Notes) -> None:
    if roof.framing is None:
        return
    if roof.ridge is not None and roof.ridge is not ridge:
        notes.add(("roof", "ridge"), f"does not go with high_side = {roof.high_side}", "Take it out")
    kitchen = document.kitchen
    reach = kitchen.width if ridge is not RunDirection.OUT else kitchen.depth
    check_layout(roof.framing, ("roof", "framing"), reach, "rafter", notes)
    if roof.framing.direction is not None and roof.framing.direction is ridge:
        notes.add(("roof", "framing", "direction"), "rafters run square to the ridge", "Take it out")
