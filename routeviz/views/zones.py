"""The stretch of outer wall that a cap must keep off: as a film on the wall, and as a card that names it."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

import shapely
import shapely.ops
from shapely.geometry.base import BaseGeometry

from routeviz.model.finding import Finding
from routeviz.model.plan import Plan
from routeviz.model.solids import ExitFace, FaceKind, KeepOut, Vec3
from routeviz.units import quantity_text
from routeviz.views.parts import Group, Layer, Note, Piece
from routeviz.views.shapes import Slab

__all__ = ["zone_notes", "zone_pieces"]

# over the skin, whose lap lines lie 0.04 in over it: whatever stands out from the wall would cover the cap by parallax
_OVER_IN, _THICK_IN = 0.06, 0.06
_REACH_IN = 46.0  # so far beside the cap the picture outside reaches
_INSET_IN = 4.0  # a leader ends so far within the zone's edge


@dataclass(frozen=True)
class _Zone:
    """What of a face is closed to caps, by one finding."""

    item: KeepOut
    face: ExitFace
    limit_in: float
    outline: BaseGeometry  # on the face: along it and up [in]

    def at(self, u: float, z: float, over_in: float) -> Vec3:
        """Give a point of the house from one of the outline."""
        level = self.face.at_in + self.face.sign * over_in
        return (level, u, z) if self.face.axis == 0 else (u, level, z)


def _zone(finding: Finding, item: KeepOut, face: ExitFace) -> _Zone | None:
    if finding.limit is None or finding.unit != "in" or not item.away_in < finding.limit <= 130:
        return None
    outline: BaseGeometry = shapely.box(*item.lo, *item.hi) if item.lo != item.hi else shapely.Point(item.lo)
    reach = math.sqrt(max(finding.limit**2 - item.away_in**2, 0.0))
    grown: BaseGeometry = outline.buffer(reach, quad_segs=12)
    grown = grown.intersection(shapely.box(face.lo[0], 0.0, face.hi[0], face.hi[1]))
    return None if grown.is_empty else _Zone(item, face, finding.limit, grown)


def _zones(plan: Plan) -> Iterator[_Zone]:
    """Give what the cap's face keeps closed, as far as a finding states the distance."""
    best = plan.best
    if best is None or best.route.termination.kind not in (FaceKind.WALL, FaceKind.GABLE):
        return
    face = next((f for f in plan.frame.faces if f.id == best.route.termination.face), None)
    if face is None:
        return
    seen: set[str] = set()
    for finding in plan.all_findings:
        for item in face.keep_outs:
            if item.id in finding.where and item.id not in seen and item.kind not in ("edge", "eave", "lot line"):
                zone = _zone(finding, item, face)
                if zone is not None:
                    seen.add(item.id)
                    yield zone


def zone_pieces(plan: Plan) -> list[Piece]:
    """Give the zones as films on the outer wall."""
    found = []
    for zone in _zones(plan):
        start, end = sorted(zone.face.at_in + zone.face.sign * d for d in (_OVER_IN, _OVER_IN + _THICK_IN))
        mesh = Slab(zone.face.axis, start, end, zone.outline).mesh()
        label = f"kept clear round the {zone.item.label}"
        found.append(Piece(f"zone-{zone.item.id}", label, Layer.ZONES, "zone", mesh, Group.ROUTE))
    return found


def zone_notes(plan: Plan) -> tuple[Note, ...]:
    """Name each zone where the picture outside shows it: a little within its edge, from the cap's height up and down."""
    best = plan.best
    if best is None:
        return ()
    found = []
    for zone in _zones(plan):
        x, y, z = best.route.termination.point
        cap = y if zone.face.axis == 0 else x
        inner = zone.outline.buffer(-_INSET_IN)
        anchors = []
        for dz in (-16.0, 16.0, -24.0, 22.0, 0.0):  # off the cap's own height, where its card's leader runs
            level = shapely.LineString([(cap - _REACH_IN, z + dz), (cap + _REACH_IN, z + dz)]).intersection(inner)
            if not level.is_empty:
                near = shapely.ops.nearest_points(level, shapely.Point(cap, z + dz))[0]
                anchors.append(zone.at(float(near.x), float(near.y), _OVER_IN + _THICK_IN))
        if anchors:
            limit = quantity_text(zone.limit_in, "in", metric=plan.scene.metric)
            found.append(
                Note(f"No cap within {limit}", f"of the {zone.item.label}", tuple(anchors), frozenset({"outside"}))
            )
    return tuple(found)
