"""What the scene says stands outdoors, drawn on its face for who looks from there: meters, inlets, other people's windows."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

from routeviz.model.plan import Plan
from routeviz.model.scene import OutdoorKind
from routeviz.model.solids import ExitFace, FaceKind, KeepOut
from routeviz.views.parts import Layer, Piece
from routeviz.views.shapes import Mesh, box

__all__ = ["outdoor_pieces"]

_NO_BODY = (OutdoorKind.LOT_LINE, OutdoorKind.WALKWAY)
_FLUSH = (
    OutdoorKind.OPERABLE_WINDOW, OutdoorKind.FIXED_WINDOW, OutdoorKind.DOOR, OutdoorKind.SOFFIT_VENT,
    OutdoorKind.GRAVITY_INTAKE, OutdoorKind.MECHANICAL_INTAKE,
)  # fmt: skip
_GLAZED = (OutdoorKind.OPERABLE_WINDOW, OutdoorKind.FIXED_WINDOW)
_DEEP_IN = {OutdoorKind.UNIT: 12.0}  # how far a thing stands out is not in the scene; this is only how it is drawn
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


def _body(face: ExitFace, item: KeepOut, deep: float) -> Mesh:
    (a0, b0), (a1, b1) = item.lo, item.hi
    if face.kind is FaceKind.ROOF:
        z, along_x, along_y = face.plane
        tops = [z + along_x * x + along_y * y for x, y in itertools.product((a0, a1), (b0, b1))]
        return box(a0, a1, b0, b1, min(tops) + item.away_in, max(tops) + item.away_in + deep)
    near = face.at_in + face.sign * item.away_in
    n0, n1 = sorted((near, near + face.sign * deep))
    return box(n0, n1, a0, a1, b0, b1) if face.axis == 0 else box(a0, a1, n0, n1, b0, b1)
