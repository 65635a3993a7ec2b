"""Two offsets on one run are named in the order in which the duct meets them."""

from __future__ import annotations

from search.test_search_find import ROOF, house

from routeviz.model.path import Bend, Centreline
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.routing.words import in_words


def test_two_offsets_are_named_in_order() -> None:
    points = ((70.0, -8.5, 78.0), (70.0, -8.5, 80.0), (75.0, -8.5, 85.0), (75.0, -8.5, 90.0), (75.0, -14.5, 96.0),
              (75.0, -14.5, 128.0))  # fmt: skip
    bends = tuple(Bend(p, 45.0, 8.0, 8.0, offset_id=1 + n // 2) for n, p in enumerate(points[1:-1]))
    size = SectionSize(SectionShape.ROUND, 8.0, 8.0)
    line = Centreline(points, bends, size, (None,) * 5, "roof", 2.0, 60.0, 0.0, ())
    frame = house(faces=(ROOF,))
    assert in_words(line, frame, ROOF) == "Up with offsets right, then forward, out through the roof"
