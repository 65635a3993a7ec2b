"""Labels: inside the picture, off each other, leaders uncrossed in each column."""

from __future__ import annotations

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routeviz.views.lettering import Placed, Tag, arrange, crossing, overlap

WIDTH, TOP, BOTTOM, MARGIN, GAP = 1600.0, 130.0, 950.0, 22.0, 10.0
anchors = st.one_of(st.none(), st.tuples(st.floats(200, 1400), st.floats(TOP, BOTTOM)))
tag_lists = st.lists(st.tuples(st.floats(80, 260), st.floats(40, 78), anchors), max_size=16).map(
    lambda rows: [Tag(k, *row) for k, row in enumerate(rows)]
)


def place(tags: list[Tag]) -> list[Placed]:
    return arrange(tags, width=WIDTH, top=TOP, bottom=BOTTOM, margin=MARGIN, gap=GAP)


@given(tag_lists)
def test_labels_never_overlap_and_never_leave_the_picture(tags):
    placed = place(tags)
    for p in placed:
        assert p.x >= MARGIN - 1e-6
        assert p.x + p.tag.width <= WIDTH - MARGIN + 1e-6
        assert p.y >= TOP - 1e-6
        assert p.y + p.tag.height <= BOTTOM + 1e-6
    for a, b in combinations(placed, 2):
        assert not overlap(a, b)


@given(tag_lists)
def test_what_fits_is_placed(tags):
    placed = place(tags)
    assert len({p.tag.key for p in placed}) == len(placed)
    if sum(t.height + GAP for t in tags) <= BOTTOM - TOP:
        assert len(placed) == len(tags)


def test_a_single_label_stands_level_with_its_anchor():
    (only,) = place([Tag(0, 200.0, 50.0, (400.0, 500.0))])
    assert not only.right
    assert only.y == pytest.approx(475.0)
    assert only.leader == ((222.0, 500.0), (400.0, 500.0))


def test_crowded_anchors_share_the_room_round_their_middle():
    placed = place([Tag(k, 200.0, 50.0, (400.0, 500.0)) for k in range(3)])
    assert sorted(p.y for p in placed) == pytest.approx([415.0, 475.0, 535.0])


def test_leaders_of_a_column_are_uncrossed():
    tags = [Tag(0, 200, 50, (700.0, 520.0)), Tag(1, 200, 50, (330.0, 525.0)), Tag(2, 200, 50, (560.0, 515.0))]
    placed = place(tags)
    assert len(placed) == 3
    assert not any(crossing(a, b) for a, b in combinations(placed, 2))


def test_anchors_near_the_middle_fill_the_emptier_side():
    tags = [Tag(0, 200, 50, (300.0, 300.0)), Tag(1, 200, 50, (310.0, 420.0)), Tag(2, 200, 50, (790.0, 500.0))]
    assert [p.right for p in place(tags)] == [False, False, True]
