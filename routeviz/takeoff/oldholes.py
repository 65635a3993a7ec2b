"""Closing an old hole that the new duct does not use: layer by layer what it takes, and its step."""

from __future__ import annotations

from routeviz.catalog import table
from routeviz.geometry import bounds, clip
from routeviz.model.members import together
from routeviz.model.oldholes import ToClose, axis_of, centre_of, size_in, to_close
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.solids import Crossing, Frame, Solid, SolidKind, Vec3
from routeviz.model.takeoff import BuyLine, Sheet, Step
from routeviz.takeoff.cautions import caution_at
from routeviz.takeoff.masonry import needs_sleeve
from routeviz.takeoff.words import own_in, size_text
from routeviz.units import length_text

__all__ = ["FACE", "closing_lines", "old_hole_steps"]

_OUTER = (SolidKind.CLADDING, SolidKind.COVERING)
_PIECES = {
    SolidKind.SHEATHING: "sheathing patch", SolidKind.DECK: "deck patch", SolidKind.SUBFLOOR: "subfloor patch",
    SolidKind.CLADDING: "cladding piece", SolidKind.COVERING: "roofing piece",
}  # fmt: skip
_TOUCHING_IN = 1 / 16
FACE = "-face"  # ends the id of the step that closes the outer face, after the cap


def closing_lines(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """Give what closes each old hole: masonry with masonry, frame with backing, board, insulation; sealant outside."""
    return [line for old in to_close(scene, route) for line in _lines(old, scene, frame)]


def _lines(old: ToClose, scene: Scene, frame: Frame) -> list[BuyLine]:
    rows, layers = table("stock")["old_hole"], _layers(old, frame)
    wide = size_in(old.hole)
    side = wide + 2 * own_in(table("stock")["patch"], "margin", metric=scene.metric)
    patch = size_text(side, side, metric=scene.metric)
    shown, note = length_text(wide, metric=scene.metric), f"closes the {old.name}"
    solid = _solid(layers)
    round_it = "" if old.whole else "; cut round the new hole"
    lines: list[BuyLine] = []
    if solid:
        deep = length_text(sum(_depth(s, old) for s in solid), metric=scene.metric)
        lines.append(BuyLine("brick pieces and mortar", f"{shown} wide, {deep} deep", 1, "set", note))
    for layer in layers:
        if layer in solid:
            continue
        if _on(layer, solid, old):
            if layer.kind is SolidKind.BOARD:
                lines.append(BuyLine("finishing plaster", f"over {shown}", 1, "bag", f"{layer.label}, {note}"))
        elif layer.kind is SolidKind.BOARD:
            strip = f"{rows['strip_metric' if scene.metric else 'strip']}, {length_text(side, metric=scene.metric)}"
            lines.append(BuyLine("backing strips behind a patch", strip, 2, "each", note))
            lines.append(BuyLine("board patch", patch, 1, "each", f"{layer.label}, {note}{round_it}"))
        elif layer.kind in _PIECES:
            lines.append(BuyLine(_PIECES[layer.kind], patch, 1, "each", f"{layer.label}, {note}{round_it}"))
    if layers and not solid:
        lines.append(BuyLine("insulation", f"for a hole {shown} wide", 1, "piece", note))
    if any(s.kind in _OUTER for s in layers) or solid:
        lines.append(BuyLine("exterior sealant", "round the closed hole", 1, "cartridge", note))
    return lines


def old_hole_steps(route: Route, scene: Scene, frame: Frame) -> list[Step]:
    """Give the steps that close each old hole: what lies behind the face before the cap is set, the face after it."""
    steps = []
    for n, old in enumerate(to_close(scene, route), start=1):
        layers = _layers(old, frame)
        solid = _solid(layers)
        round_it = "" if old.whole else ", each piece cut round the new hole" if not solid else ", round the new sleeve"
        how = f"fill it with brick pieces in mortar{round_it}, and plaster inside" if solid else (
            f"fill the cavity with insulation, close {_behind(layers)}{round_it}, and set backing strips and a board patch inside")  # fmt: skip
        what = "Close" if old.whole else "Close what the new hole leaves of"
        shown = length_text(size_in(old.hole), metric=scene.metric)
        steps.append(
            Step(f"old-hole-{n}", f"{what} the {old.name}, {shown} wide, {_place(old, scene)}: take out what is left in it, {how}.",
                 ("look", "outside", "sleeve"), "No light and no draught comes through.",
                 "Look in before anything is filled: wires may use it.", Sheet.PARTS)
        )  # fmt: skip
        outer = [s for s in layers if s.kind in _OUTER and s not in solid]
        if outer or solid:
            face = "Seal the closed hole's face outside" if not outer or _on(outer[0], solid, old) else (
                f"Close the {together(s.label for s in outer)} over the {old.name}"
                f"{'' if old.whole else ', cut round the cap and what it sits on'}, and seal it")  # fmt: skip
            steps.append(
                Step(f"old-hole-{n}{FACE}", f"{face}.", (f"old-hole-{n}", "cap"), "Water runs over every edge, not behind it.",
                     caution_at(roof=any(s.kind is SolidKind.COVERING for s in outer)), Sheet.PARTS)
            )  # fmt: skip
    return steps


def _behind(layers: list[Solid]) -> str:
    """Name the sheets under the outer face, such as sheathing."""
    names = [_PIECES[s.kind].removesuffix(" patch") for s in layers if s.kind in _PIECES and s.kind not in _OUTER]
    return together(f"the {name}" for name in names) if names else "what lies behind the face"


def _layers(old: ToClose, frame: Frame) -> list[Solid]:
    """Give the sheets and masonry that the old hole's middle line passes."""
    axis, centre = axis_of(old.hole), centre_of(old.hole)
    half = (old.hole.width_in, old.hole.depth_in, old.hole.height_in)[axis] / 2 + _TOUCHING_IN
    a, b = _along(centre, axis, -half), _along(centre, axis, half)
    kinds = (SolidKind.BOARD, SolidKind.MASONRY, SolidKind.SLAB, *_PIECES)
    met = [s for s in frame.solids if s.kind in kinds and s.crossing is not Crossing.GHOST and clip(s.shape, a, b)]
    return sorted(met, key=lambda s: bounds(s.shape).lo[axis])


def _along(centre: Vec3, axis: int, by: float) -> Vec3:
    x, y, z = (c + by if k == axis else c for k, c in enumerate(centre))
    return x, y, z


def _solid(layers: list[Solid]) -> list[Solid]:
    return [s for s in layers if needs_sleeve(s.kind)]


def _depth(solid: Solid, old: ToClose) -> float:
    box, axis = bounds(solid.shape), axis_of(old.hole)
    return box.hi[axis] - box.lo[axis]


def _on(layer: Solid, solid: list[Solid], old: ToClose) -> bool:
    """Whether plaster or render lies on the masonry; board fixed to it stays board."""
    axis, box = axis_of(old.hole), bounds(layer.shape)
    if "board" in f"{layer.label} {layer.material}".lower():
        return False
    walls = [bounds(s.shape) for s in solid]
    return any(min(abs(box.hi[axis] - w.lo[axis]), abs(w.hi[axis] - box.lo[axis])) < _TOUCHING_IN for w in walls)


def _place(old: ToClose, scene: Scene) -> str:
    x, y, z = (length_text(abs(c), metric=scene.metric) for c in centre_of(old.hole))
    across = {0: f"{y} out from the hood wall, {z} above the floor", 1: f"{x} from the left wall, {z} above the floor",
              2: f"{x} from the left wall, {y} out from the hood wall"}  # fmt: skip
    return f"its middle {across[axis_of(old.hole)]}"
