"""The whole-wall map: shape, order, and what of it a page carries."""

from __future__ import annotations

import json

import pytest
import view_plans

from routeviz.model.finding import Verdict
from routeviz.views.wallmap import MapCell, WallMap, as_json, cell_of, line_json

BLANK = MapCell(Verdict.NO_PLACE, reason="no room")


def test_a_map_has_one_cell_for_every_place_at_every_height():
    with pytest.raises(ValueError, match="one cell"):
        WallMap((1.0, 2.0), (24.0,), ((BLANK,),))
    with pytest.raises(ValueError, match="must rise"):
        WallMap((2.0, 1.0), (24.0,), ((BLANK, BLANK),))
    with pytest.raises(ValueError, match="must rise"):
        WallMap((), (24.0,), ((),))


def test_reach_is_where_the_hood_can_hang():
    assert view_plans.wall_map().reach_in == (39.0, 94.0)
    assert WallMap((1.0,), (24.0,), ((BLANK,),)).reach_in is None


def test_a_plan_becomes_a_cell():
    plan = view_plans.plan()
    cell = cell_of(plan)
    assert (cell.verdict, cell.elbows, cell.air_cfm) == (Verdict.WORKS, 0.0, 371.0)
    assert cell.words == "Straight up between joists 4 and 5, out through the roof"
    assert len(cell.findings) == 2
    blocked = cell_of(view_plans.blocked())
    assert blocked.line is None
    assert blocked.why is not None
    assert blocked.why.blockers[0].id == "joist-4"


def test_lines_are_kept_relative_to_the_hood():
    at = view_plans.scene()
    line = view_plans._line(at, 58.0, 66.0, "back")
    data = line_json(line, hood_x=58.0, hood_z=66.0)
    assert data["p"] == [[0, -8.5, 11], [0, -8.5, 87], [0, 7.188, 87]]
    assert data["b"] == [[8, 90]]
    assert data["f"] == "face-hood"
    assert data["s"] == ["round", 8, 8]


def test_equal_rows_are_carried_once():
    at = view_plans.scene()
    data = as_json(view_plans.wall_map(at), cooktop_height_in=36.0)
    assert len(data["cells"]) == len(data["h"]) == 5
    assert all(len(row) == len(data["x"]) == 145 for row in data["cells"])
    # straight up is the same line at every place and height, for the roof falls square to the wall
    straight = [row for row in data["lines"] if not row["b"]]
    assert len(straight) == 1
    assert len(data["words"]) < 12
    cell = data["cells"][data["h"].index(30.0)][70]
    assert data["verdicts"][cell[0]] == "Works"
    assert data["words"][cell[1]].startswith("Straight up between joists 4 and 5")
    assert cell[6] == 371
    assert json.loads(json.dumps(data, allow_nan=False)) == data


def test_a_findings_numbers_stay_with_the_place():
    data = as_json(view_plans.wall_map(), cooktop_height_in=36.0)
    row = data["cells"][data["h"].index(22.0)][70]
    found = {data["rules"][f[0]]["code"]: f for f in row[8]}
    rule, state, measured, limit, margin, *place = found["HOOD-HEIGHT"]
    assert (state, measured, limit, margin, place) == (0, 22, 24, -2, [70, -20, 58])
    assert data["rules"][rule]["title"] == "Canopy above the cooktop"
