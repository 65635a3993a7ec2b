"""Fastener marks: the hood's own holes at their place on the wall, and what each of them meets there."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any

from routeviz.catalog import table
from routeviz.geometry import bounds, clip
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.scene import Assumption, Fastener, Scene, WallFrame, WallSide
from routeviz.model.solids import Frame, Solid, SolidKind
from routeviz.model.takeoff import Mark
from routeviz.takeoff.words import own_in
from routeviz.units import MM_PER_IN, inch_text, length_text

__all__ = [
    "assumptions",
    "bracket_slopes",
    "bracket_words",
    "fastener_for",
    "hood_marks",
    "marks_in_wood",
    "screw_for",
    "screw_words",
]

_LEVEL_IN = 1 / 64
_TOUCHING_IN = 1 / 16
_WOOD = (
    SolidKind.STUD, SolidKind.JACK, SolidKind.CRIPPLE, SolidKind.HEADER, SolidKind.SILL, SolidKind.PLATE,
    SolidKind.BLOCKING, SolidKind.BEAM,
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Backing:
    """What a screw at one place goes into."""

    words: str
    wood: bool
    solid_wall: bool = False  # masonry, concrete or log: holds everywhere
    at_edge_of: str = ""
    edge_in: float | None = None
    cover_in: float = 0.0  # of board or plaster that a screw goes through first
    gap_in: float = 0.0  # empty between that and a solid wall


def hood_marks(scene: Scene, frame: Frame) -> tuple[Mark, ...]:
    """Give every mark on the hood wall: the hood's holes, then the cover's bracket, left to right, top first.

    The hood must have a mounting height; without one there are no marks.
    """
    bottom = scene.hood_bottom_in
    if bottom is None:
        return ()
    rows = sorted(scene.hood.fasteners, key=lambda f: (-f.up_in, f.across_in))
    found = [_hood_mark(n, f, bottom, scene, frame) for n, f in enumerate(rows, start=1)]
    return tuple(found) + _bracket(scene, frame)


def marks_in_wood(marks: tuple[Mark, ...]) -> int:
    """Count the hood's own screws (not the bracket's) that hold in wood."""
    return sum(1 for m in marks if m.wood and m.row != "bracket")


def _hood_mark(number: int, hole: Fastener, bottom_in: float, scene: Scene, frame: Frame) -> Mark:
    row = table("stock")["fastener"]["large"]
    left, height = scene.hood.centre_in + hole.across_in, bottom_in + hole.up_in
    proud = float(row["proud_in"]) if hole.row == "upper" else 0.0
    return _mark(f"S{number}", left, height, row, proud, hole.row, scene, frame)


def _bracket(scene: Scene, frame: Frame) -> tuple[Mark, ...]:
    if scene.hood.cover is None:
        return ()
    row = table("stock")["fastener"]["bracket"]
    half = scene.hood.cover.width_in / 2 - float(row["from_side_in"])
    places = (scene.hood.centre_in - half, scene.hood.centre_in + half)
    below, down = (own_in(_own(row, scene), name, metric=scene.metric) for name in ("below_ceiling", "holes_down"))
    ceiling = [ceiling_at_in(scene, x) for x in places]
    if bracket_slopes(scene):  # it lies along the slope, and its screws sit square under its edge
        down *= math.hypot(1.0, (ceiling[1] - ceiling[0]) / (places[1] - places[0]))
    else:  # level: under a ridge its lower side decides
        ceiling = [min(ceiling)] * 2
    marks = (
        _mark(f"B{n}", x, top - below - down, row, 0.0, "bracket", scene, frame)
        for n, (x, top) in enumerate(zip(places, ceiling, strict=True), start=1)
    )
    return tuple(replace(mark, piece=f"bracket's {bracket_words(scene)}") for mark in marks)


def bracket_slopes(scene: Scene) -> bool:
    """Whether the cover's bracket lies along a sloped ceiling: one slope over the whole of it."""
    if scene.hood.cover is None:
        return False
    x, half = scene.hood.centre_in, scene.hood.cover.width_in / 2
    left, middle, right = (ceiling_at_in(scene, x + at) for at in (-half, 0.0, half))
    return abs(right - left) > _LEVEL_IN and abs(left + right - 2 * middle) < _LEVEL_IN


def bracket_words(scene: Scene) -> str:
    """Say where the bracket's own edge lies; its screws sit lower."""
    row = table("stock")["fastener"]["bracket"]
    along = " and along its slope" if bracket_slopes(scene) else ""
    below = own_in(_own(row, scene), "below_ceiling", metric=scene.metric)
    return f"top edge {length_text(below, metric=scene.metric)} below the ceiling{along}"


def assumptions(scene: Scene) -> tuple[Assumption, ...]:
    """Give what the marks take for granted about the cover's bracket, which no scene describes."""
    if scene.hood.cover is None:
        return ()
    row = _own(table("stock")["fastener"]["bracket"], scene)
    down = length_text(own_in(row, "holes_down", metric=scene.metric), metric=scene.metric)
    return (Assumption("hood.cover", f"bracket's {bracket_words(scene)}, its screws {down} under that edge",
                       "common practice; the bracket's own holes decide"),)  # fmt: skip


def _own(row: dict[str, Any], scene: Scene) -> dict[str, Any]:
    """Give a fastener's row in the scene's units."""
    return {**row, **row["metric"]} if scene.metric else row


def screw_words(mark: Mark) -> str:
    """Name the screw that is driven at a mark: the fastener itself, or what goes into its anchor."""
    return mark.screw or mark.fastener


def screw_for(row: dict[str, Any], into: str, through_in: float, proud_in: float, scene: Scene) -> str:
    """Give the screw of an anchor or plug, the shortest that is sold and long enough; "" where the fastener is one."""
    own = _own(row, scene)
    if into == "screw":
        return ""
    need = through_in + proud_in + own_in(own, f"{into}_into", metric=scene.metric)
    unit = MM_PER_IN if scene.metric else 1.0
    sold = own["screw_mm" if scene.metric else "screw_in"]
    long = next((s for s in sold if s >= need * unit - 1e-9), math.ceil(need * unit))
    said = f"{long}" if scene.metric else inch_text(float(long)).removesuffix(" in")
    return str(own[f"{into}_screw"]).format(said)


def _mark(
    label: str, left_in: float, height_in: float, row: dict[str, Any], proud_in: float, kind: str,
    scene: Scene, frame: Frame,
) -> Mark:  # fmt: skip
    backing = _backing(left_in, height_in, float(row["edge_in"]) if "edge_in" in row else 0.25, scene, frame)
    into = "plug" if backing.solid_wall else "screw" if backing.wood else "anchor"
    fastener, pilot_in = fastener_for(row, into, metric=scene.metric)
    return Mark(
        label=label,
        left_in=left_in,
        height_in=height_in,
        holds=backing.words,
        fastener=fastener,
        pilot_in=pilot_in,
        wood=backing.wood,
        stand_off_in=proud_in,
        row=kind,
        edge_in=backing.edge_in,
        at_edge_of=backing.at_edge_of,
        screw=screw_for(row, into, backing.cover_in + backing.gap_in, proud_in, scene),
        gap_in=backing.gap_in,
    )


def fastener_for(row: dict[str, Any], into: str, *, metric: bool) -> tuple[str, float]:
    """Give the fastener's words and its drill [in], from the trade's own sizes of the scene's units."""
    if metric:
        own = row["metric"]
        drill = own["pilot_wood_mm"] if into == "screw" else own[f"pilot_{into}_mm"]
        return str(own[into]), float(drill) / MM_PER_IN
    return str(row[into]), float(row["pilot_wood_in"] if into == "screw" else row["pilot_anchor_in"])


def _backing(x: float, z: float, edge_in: float, scene: Scene, frame: Frame) -> _Backing:
    wall = scene.wall(WallSide.HOOD)
    if wall.frame is WallFrame.LOG:
        return _Backing("log wall", wood=True)
    if wall.frame in (WallFrame.MASONRY, WallFrame.CONCRETE):
        return _solid_wall(f"{wall.frame.value} wall", x, z, scene, frame)
    behind = wall.thickness_in + 1.0
    near_edge: str = ""
    best: _Backing | None = None
    for solid in frame.solids:
        edge = _inside(solid, x, z, behind)
        if edge is None:
            continue
        if edge < edge_in:
            near_edge = solid.label
        elif best is None or best.edge_in is None or edge > best.edge_in:
            steel = wall.frame is WallFrame.STEEL and solid.kind is not SolidKind.BLOCKING
            words = f"{solid.label}, steel" if steel else solid.label
            best = _Backing(words, wood=not steel, edge_in=edge)
    if best is None and near_edge:
        best = _Backing(f"board only: {near_edge} is too near its edge here", wood=False, at_edge_of=near_edge)
    return replace(best or _Backing("board only", wood=False), cover_in=_crossed(x, z, wall.thickness_in / 2, frame))


def _solid_wall(words: str, x: float, z: float, scene: Scene, frame: Frame) -> _Backing:
    """Say how a screw meets masonry or concrete: through what lies on it, and over which gap."""
    behind = scene.wall(WallSide.HOOD).thickness_in
    met = [_depths(s, x, z, behind) for s in frame.solids if s.kind in (SolidKind.MASONRY, SolidKind.SLAB)]
    starts = [span[0] for span in met if span is not None]
    if not starts:
        return _Backing(words, wood=False, solid_wall=True)
    deep = min(starts)
    filled = _crossed(x, z, deep, frame)
    gap = max(0.0, deep - filled)
    if gap < _TOUCHING_IN:
        return _Backing(words, wood=False, solid_wall=True, cover_in=filled)
    said = f"{words} behind a {length_text(gap, metric=scene.metric)} gap: pack the gap first"
    return _Backing(said, wood=False, solid_wall=True, cover_in=filled, gap_in=gap)


def _crossed(x: float, z: float, deep_in: float, frame: Frame) -> float:
    """Give how much board and strip lies between the wall's face and a depth behind it, at one place [in]."""
    kinds = (SolidKind.BOARD, SolidKind.FURRING)
    spans = [_depths(s, x, z, deep_in) for s in frame.solids if s.kind in kinds]
    return math.fsum(span[1] - span[0] for span in spans if span is not None)


def _depths(solid: Solid, x: float, z: float, behind_in: float) -> tuple[float, float] | None:
    """Give from where to where a line straight back from the wall's face lies in a solid [in]."""
    met = clip(solid.shape, (x, 0.0, z), (x, behind_in, z)) if behind_in > 0 else None
    return None if met is None else (met[0] * behind_in, met[1] * behind_in)


def _inside(solid: Solid, x: float, z: float, behind_in: float) -> float | None:
    """Distance from (x, z) to the nearer side of a member in the hood wall's core; None when it is not behind."""
    if solid.kind not in _WOOD or (solid.side is not None and solid.side is not WallSide.HOOD):
        return None
    box = bounds(solid.shape)
    lo, hi = box.lo, box.hi
    if hi[1] <= 0 or lo[1] >= behind_in:
        return None
    edge = min(x - lo[0], hi[0] - x, z - lo[2], hi[2] - z)
    return edge if edge >= 0 else None
