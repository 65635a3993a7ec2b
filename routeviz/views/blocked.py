"""What is shown when there is no way out: the duct that was wanted, what it meets, and where a shift would put it."""

from __future__ import annotations

import numpy as np

from routeviz.geometry import bounds
from routeviz.model.plan import Plan
from routeviz.model.scene import SectionSize
from routeviz.model.solids import Vec3
from routeviz.views.ducts import SHEET_IN, ring
from routeviz.views.furnishing import hood_bottom
from routeviz.views.parts import Group, Layer, Piece
from routeviz.views.shapes import Mesh, Slab, barred, loft, slab_of

__all__ = ["wanted_line", "wanted_pieces"]


def wanted_line(plan: Plan) -> tuple[Vec3, Vec3]:
    """Give the straight run that the outlet points along: from the hood to past what it meets [in]."""
    scene = plan.scene
    hood, outlet = scene.hood, scene.hood.outlet
    x = hood.centre_in + outlet.across_in
    if outlet.place == "rear":
        z = hood_bottom(plan) + outlet.up_in
        return (x, 0.0, z), (x, scene.walls[0].thickness_in + 3, z)
    told = plan.paths.told_first
    if (
        told is not None and told.elbows and told.told[0].kind != "solid"
    ):  # it would turn under the ceiling: no run is drawn that nobody wants
        return (x, -outlet.out_in, hood_bottom(plan) + hood.body_in), (
            x,
            -outlet.out_in,
            scene.kitchen.ceiling_in - 1.0,
        )
    meets = [s for w in plan.paths.why_not[:1] for b in w.blockers if (s := plan.frame._index.get(b.id)) is not None]
    top = max([scene.kitchen.ceiling_in + 10, *(bounds(s.shape).hi[2] + 4 for s in meets)])
    top = min(top, scene.kitchen.ceiling_in + 30)
    return (x, -outlet.out_in, hood_bottom(plan) + hood.body_in), (x, -outlet.out_in, top)


def _sleeve(start: Vec3, end: Vec3, section: SectionSize, grow: float) -> Mesh:
    a, b = np.array(start), np.array(end)
    direction = (b - a) / np.linalg.norm(b - a)
    wide = np.array([1.0, 0, 0])
    outer = [ring(p, direction, wide, section, grow=grow) for p in (a, b)]
    inner = [ring(p, direction, wide, section, grow=-SHEET_IN) for p in (a, b)]
    return loft(outer, inner)


def _moved(point: Vec3, by: float) -> Vec3:
    return point[0] + by, point[1], point[2]


def _met(slab: Slab, start: Vec3, section: SectionSize, axis: int) -> tuple[float, float] | None:
    """Give from where to where a straight run meets a member; None when it passes beside it."""
    half = max(section.width_in, section.height_in) / 2
    for across in (a for a in range(3) if a != axis):
        kept = slab.clip(across, start[across] - half, start[across] + half)
        if kept is None:
            return None
        slab = kept
    low, high = slab.mesh().bounds[:, axis]
    return float(low), float(high)


def wanted_pieces(plan: Plan) -> list[Piece]:
    """Give the wanted duct, barred where it meets a blocker, and the ghost of the duct after the least shift."""
    section = plan.scene.duct.sections[0]
    start, end = wanted_line(plan)
    smooth = section.is_round
    pieces = [Piece("wanted-duct", "duct that was wanted", Layer.DUCT, "duct", _sleeve(start, end, section, 0.0),
                    Group.ROUTE, smooth=smooth)]  # fmt: skip
    why = plan.paths.why_not[0] if plan.paths.why_not else None
    if why is None:
        return pieces
    axis = 1 if plan.scene.hood.outlet.place == "rear" else 2
    for k, blocker in enumerate(why.blockers, 1):
        solid = plan.frame._index.get(blocker.id)
        if solid is None:
            continue
        met = _met(slab_of(solid.shape), start, section, axis)
        if met is None:
            continue
        low, high = max(met[0], start[axis]), min(met[1], end[axis])
        if high - low < 0.3 or high - low > 40:
            continue
        a, b = list(start), list(end)
        a[axis], b[axis] = low, high
        red, white = barred(_sleeve((a[0], a[1], a[2]), (b[0], b[1], b[2]), section, 0.14))
        pieces.append(Piece(f"meets-{k}-bars", f"meets {blocker.label}", Layer.DUCT, "bar red", red, Group.ROUTE))
        pieces.append(Piece(f"meets-{k}-gaps", f"meets {blocker.label}", Layer.DUCT, "bar white", white, Group.ROUTE))
    if why.shift_in is not None and why.verified:
        ends = (_moved(start, why.shift_in), _moved(end, why.shift_in))
        direction = np.eye(3)[axis]
        ghost = loft([ring(np.array(p), direction, np.array([1.0, 0, 0]), section) for p in ends])
        pieces.append(
            Piece("shifted-duct", "duct after the shift", Layer.ZONES, "zone", ghost, Group.ROUTE, smooth=smooth)
        )
    return pieces
