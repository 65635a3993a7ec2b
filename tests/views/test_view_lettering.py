"""Labels: inside the picture, off each other, leaders uncrossed in each column."""

from __future__ import annotations

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routeviz.views.lettering import Placed, Tag, arrange, crossing, keep_off, overlap, touched

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


def test_a_leader_moves_off_a_number_and_its_label_stays_clear_of_the_next():
    """A level leader at 400 runs through a number at 392 to 412; the label below it leaves no room that way."""
    label, below = Tag(0, 100, 50, (500.0, 400.0)), Tag(1, 100, 50, (300.0, 465.0))
    placed = [Placed(label, 20, 375, False), Placed(below, 20, 440, False)]
    number = (300.0, 392.0, 330.0, 412.0)
    assert touched(placed[0], [number]) == 1
    moved = keep_off(placed, [number], top=100, bottom=900, gap=10)
    assert touched(moved[0], [number]) == 0
    assert moved[0].y + 50 + 10 <= moved[1].y
    assert moved[1] == placed[1]
    # over x = 294 to 336 it runs from (120, start) to (500, 400) at least 6 px above the number
    start = moved[0].y + 25
    assert start + (400 - start) * (336 - 120) / (500 - 120) <= 392 - 6


def test_a_leader_may_run_beside_the_figure_at_its_own_end():
    """The figure stands 3 px over the end of the leader, which does not run through it."""
    placed = Placed(Tag(0, 100, 50, (500.0, 400.0)), 20, 375, False)
    assert touched(placed, [(480.0, 376.0, 520.0, 397.0)]) == 0
    assert touched(placed, [(300.0, 376.0, 340.0, 397.0)]) == 1


def test_labels_near_the_middle_change_sides_where_their_leaders_would_cross():
    """Four anchors near the middle: shared out by room alone, a leader from the left crosses one from the right."""
    spots = [(785.0, 460.0), (745.0, 460.0), (755.0, 420.0), (795.0, 440.0)]
    tags = [Tag(k, 200, 60, spot) for k, spot in enumerate(spots)]
    placed = arrange(tags, width=1640, top=134, bottom=1084, margin=22, gap=10)
    assert [p.tag.key for p in placed] == [0, 1, 2, 3]
    assert not any(crossing(a, b) for a, b in combinations(placed, 2))
