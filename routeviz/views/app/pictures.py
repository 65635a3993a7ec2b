"""What a page needs to show a plan in place of the one before: its data, and the pieces that look different now."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from routeviz.model.plan import Plan
from routeviz.views import gltf
from routeviz.views.pagedata import page_data
from routeviz.views.parts import Group, Piece
from routeviz.views.stage import Stage, build

__all__ = ["Change", "Pictures", "stage_of"]


@dataclass(frozen=True)
class Change:
    """How a page comes to show a plan.

    `model` is a GLB of the pieces that are new or look different from those of plan number `base`; with a base of 0 it
    is of all pieces. `data` is the page's data block without fixes and map. `whole` says that nothing more will be said
    of the plan; before that, other ways out, reasons and parts are still to come, and look the same.
    """

    number: int
    base: int
    data: dict[str, Any]
    model: bytes
    whole: bool = True


def stage_of(plan: Plan) -> Stage:
    """Give a plan's stage cut open for every place that the hood may come to, as the live page wants it."""
    half, width = plan.scene.hood.width_in / 2, plan.scene.kitchen.width_in
    reach = (half, width - half) if width > 2 * half else None
    return build(plan, reach=reach, bars=False)


def _print_of(piece: Piece) -> bytes:
    """Give a digest of how a piece looks."""
    seen = hashlib.blake2b(f"{piece.material}/{piece.smooth}".encode(), digest_size=16)
    for array in (piece.mesh.vertices, piece.mesh.faces):
        seen.update(np.ascontiguousarray(array).tobytes())
    return seen.digest()


class Pictures:
    """Makes changes from plan to plan, and remembers how every piece looked the last time."""

    def __init__(self) -> None:
        self._number = 0
        self._looks: dict[str, bytes] = {}

    def change(self, number: int, plan: Plan, *, whole: bool = True) -> Change:
        """Give what leads from the last plan to this one.

        Parameters
        ----------
        number : int
            The plan's own number, greater than 0 and than the last one's.
        plan : Plan
            The plan.
        whole : bool
            Whether all of it has been worked out.
        """
        stage = stage_of(plan)
        looks = {p.name: _print_of(p) for p in stage.pieces if p.group is not Group.ROUTE}
        new = tuple(p for p in stage.pieces if p.group is not Group.ROUTE and self._looks.get(p.name) != looks[p.name])
        model = gltf.export(replace(stage, pieces=new)) if new else b""
        base, self._number, self._looks = self._number, number, looks
        return Change(number, base, page_data(stage), model, whole)
