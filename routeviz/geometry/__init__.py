"""Shape mathematics that knows no kitchens."""

from routeviz.geometry.measure import (
    arc_distance,
    bounds,
    clip,
    contains,
    nearest_point,
    point_distance,
    segment_distance,
)

__all__ = ["arc_distance", "bounds", "clip", "contains", "nearest_point", "point_distance", "segment_distance"]
