"""What the scene says stands outdoors, drawn on its face for who looks from there: meters, inlets, other people's windows."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

import shapely

from routeviz.geometry import bounds
from routeviz.model.plan import Plan
from routeviz.model.scene import OutdoorKind, WallSide
from routeviz.model.solids import ExitFace, FaceKind, KeepOut, Solid, SolidKind
from routeviz.views.house import laps, sheet_material
from routeviz.views.parts import Layer, Piece
from routeviz.views.shapes import Mesh, Slab, box, rough_outline

__all__ = ["next_room_pieces", "outdoor_pieces"]

_SKINS = (SolidKind.CLADDING, SolidKind.MASONRY)
_NO_BODY = (OutdoorKind.LOT_LINE, OutdoorKind.WALKWAY)
_FLUSH = (
    OutdoorKind.OPERABLE_WINDOW, OutdoorKind.FIXED_WINDOW, OutdoorKind.DOOR, OutdoorKind.SOFFIT_VENT,
    OutdoorKind.GRAVITY_INTAKE, OutdoorKind.MECHANICAL_INTAKE,
)  # fmt: skip
_GLAZED = (OutdoorKind.OPERABLE_WINDOW, OutdoorKind.FIXED_WINDOW)
_DEEP_IN = {OutdoorKind.UNIT: 12.0}  # how far a thing stands out is not in the scene; this is only how it is drawn
_NEXT_ROOM_IN = 72.0  # so much of the wall is drawn past the kitchen, where a room goes on there
_USUAL_DEEP_IN, _FLUSH_DEEP_IN = 5.0, 1.0


def outdoor_pieces(plan: Plan) -> Iterator[Piece]:
    """Give a body for each thing outdoors that has one, as wide and high as the scene says."""
    kinds = {t.id: t.kind for t in plan.scene.outdoors if t.kind not in _NO_BODY}
    drawn: set[str] = set()
    for face in plan.frame.faces:
        for item in face.keep_outs:
            kind = kinds.get(item.id)
            if kind is None or item.id in drawn or min(b - a for a, b in zip(item.lo, item.hi, strict=True)) < 0.01:
                continue
            drawn.add(item.id)
            deep = _FLUSH_DEEP_IN if kind in _FLUSH else _DEEP_IN.get(kind, _USUAL_DEEP_IN)
            yield Piece(f"outdoors-{item.id}", item.label, Layer.OUTER, "glass" if kind in _GLAZED else "steel",
                        _body(face, item, deep), solid=item.id)  # fmt: skip


def next_room_pieces(plan: Plan) -> Iterator[Piece]:
    """Draw the outer skin on past the kitchen where another room lies beside it: the house has no corner there.

    How far that room reaches is not in the scene, so the skin ends in a torn edge.
    """
    skins = [s for s in plan.frame.solids if s.side is WallSide.HOOD and s.space == "kitchen" and s.kind in _SKINS]
    if not skins or plan.scene.wall(WallSide.HOOD).beyond != "outdoors":
        return
    outer = max(bounds(s.shape).hi[1] for s in skins)
    layer = [s for s in skins if abs(bounds(s.shape).hi[1] - outer) < 1e-6]
    for side in (WallSide.LEFT, WallSide.RIGHT):
        if plan.scene.wall(side).beyond == "room":
            yield _skin_beyond(side, layer)


def _skin_beyond(side: WallSide, layer: list[Solid]) -> Piece:
    first, reach = layer[0], [bounds(s.shape) for s in layer]
    low, high = min(b.lo[2] for b in reach), max(b.hi[2] for b in reach)
    edge = min(b.lo[0] for b in reach) if side is WallSide.LEFT else max(b.hi[0] for b in reach)
    a, b = (edge - _NEXT_ROOM_IN, edge) if side is WallSide.LEFT else (edge, edge + _NEXT_ROOM_IN)
    torn = rough_outline(a, b, low - 4.0, high + 4.0, open_top=False)
    inner = (edge - 12.0, edge) if side is WallSide.LEFT else (edge, edge + 12.0)
    outline = torn.union(shapely.box(inner[0], low, inner[1], high))  # torn only at its far end
    within = (a - 2.0, b) if side is WallSide.LEFT else (a, b + 2.0)
    outline = outline.intersection(shapely.box(within[0], low, within[1], high))
    slab = Slab(1, reach[0].lo[1], reach[0].hi[1], outline)
    siding = first.kind is SolidKind.CLADDING and "siding" in first.material
    return Piece(f"skin-past-{side.value}", f"{first.label}, past the kitchen", Layer.OUTER, sheet_material(first), slab.mesh(),
                 lines=laps(slab, first.side) if siding else ())  # fmt: skip


def _body(face: ExitFace, item: KeepOut, deep: float) -> Mesh:
    (a0, b0), (a1, b1) = item.lo, item.hi
    if face.kind is FaceKind.ROOF:
        z, along_x, along_y = face.plane
        tops = [z + along_x * x + along_y * y for x, y in itertools.product((a0, a1), (b0, b1))]
        return box(a0, a1, b0, b1, min(tops) + item.away_in, max(tops) + item.away_in + deep)
    near = face.at_in + face.sign * item.away_in
    n0, n1 = sorted((near, near + face.sign * deep))
    return box(n0, n1, a0, a1, b0, b1) if face.axis == 0 else box(a0, a1, n0, n1, b0, b1)
