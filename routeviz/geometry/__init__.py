"""Shape mathematics that knows no kitchens."""

from routeviz.geometry.ducts import Elbow, Gap, Piece, Straight, gap, meets, piece_bounds
from routeviz.geometry.measure import (
    arc_distance,
    bounds,
    clip,
    contains,
    nearest_point,
    plane_axes,
    point_distance,
    segment_distance,
)
from routeviz.geometry.meshes import mesh
from routeviz.geometry.shapes import boxes_overlap, convex_parts, stair_boxes

__all__ = [
    "Elbow",
    "Gap",
    "Piece",
    "Straight",
    "arc_distance",
    "bounds",
    "boxes_overlap",
    "clip",
    "contains",
    "convex_parts",
    "gap",
    "meets",
    "mesh",
    "nearest_point",
    "piece_bounds",
    "plane_axes",
    "point_distance",
    "segment_distance",
    "stair_boxes",
]
