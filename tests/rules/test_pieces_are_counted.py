"""Pieces of a framed opening are counted as a person counts them."""

from __future__ import annotations

import pytest

from routeviz.model.finding import FramingPiece


@pytest.mark.parametrize(
    ("name", "count", "said"),
    [
        ("sill", 1, "1 sill"),
        ("header", 2, "2 headers"),
        ("cripple above", 2, "2 cripples above"),
        ("joist hanger", 4, "4 joist hangers"),
        ("framing anchor or 2x2 ledger", 2, "2 framing anchors or 2x2 ledgers"),
    ],
)
def test_one_and_many(name: str, count: int, said: str) -> None:
    assert FramingPiece(name, "2x4", None, count).counted == said
