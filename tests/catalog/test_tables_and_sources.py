"""Every table loads, and every source named in a table exists and says how it was seen."""

from __future__ import annotations

from pathlib import Path

import pytest

from routeviz import catalog
from routeviz.errors import CatalogError
from routeviz.model.source import Seen

FOLDER = Path(catalog.__file__).parent
TABLES = sorted(
    str(p.relative_to(FOLDER).with_suffix("")) for p in FOLDER.rglob("*.toml") if p.parent.name != "sources"
)


@pytest.mark.parametrize("name", TABLES)
def test_table_loads_and_its_sources_exist(name: str) -> None:
    assert catalog.table(name)


def test_every_source_is_complete() -> None:
    assert len(catalog.sources()) > 50
    for source in catalog.sources().values():
        assert source.document
        assert source.seen in Seen
        assert source.text


def test_a_missing_source_is_named() -> None:
    with pytest.raises(CatalogError, match="no source 'nobody'"):
        catalog.source("nobody")


def test_dressed_sizes_follow_ps20() -> None:
    # PS 20, minimum dressed sizes of dry lumber: 2 -> 1-1/2, 4 -> 3-1/2, 6 -> 5-1/2, 8 -> 7-1/4, 10 -> 9-1/4, 12 -> 11-1/4
    dressed = catalog.table("timber")["dressed"]
    assert {k: dressed[k] for k in ("2", "4", "6", "8", "10", "12")} == {
        "2": 1.5, "4": 3.5, "6": 5.5, "8": 7.25, "10": 9.25, "12": 11.25,
    }  # fmt: skip
