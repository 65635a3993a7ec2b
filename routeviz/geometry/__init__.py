"""Shape mathematics that knows no kitchens."""

from routeviz.geometry.ducts import Elbow, Gap, Piece, Straight, gap, meets, piece_bounds
from routeviz.geometry.meshes import mesh
from routeviz.geometry.segments import clip, clips
from routeviz.geometry.shapes import bounds, boxes_overlap, contains, convex_parts, nearest, stair_boxes

__all__ = [
    "Elbow", "Gap", "Piece", "Straight", "bounds", "boxes_overlap", "clip", "clips", "contains", "convex_parts", "gap",
    "meets", "mesh", "nearest", "piece_bounds", "stair_boxes",
]  # fmt: skip
