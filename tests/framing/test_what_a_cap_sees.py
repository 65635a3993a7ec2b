"""What a cap must keep away from is told in space: round corners, from a wall further out, and from the roof."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
import samples
from cases.homes import framed, only_roof, with_wall

from routeviz.freespace.ends import exits
from routeviz.model.freespace import Exit, Ints
from routeviz.model.scene import (
    Layer,
    Opening,
    OpeningKind,
    OutdoorKind,
    OutdoorThing,
    RoofForm,
    RunDirection,
    Scene,
    Space,
    SpaceKind,
    Wall,
    WallFrame,
    WallSide,
)
from routeviz.model.solids import ExitFace, Frame, KeepOut
from routeviz.units import TICKS_PER_IN

OUTER = 7.1875  # of the hood wall: board 1/2, studs 5 1/2, sheathing 7/16, siding 3/4
RIGHT = 144.0 + OUTER
SIDING = (Layer("wood lap siding", 0.75),)
BARS_ITS_OWN_FACE = (OutdoorKind.OTHER, OutdoorKind.WALKWAY)
THIN = 3.5 + 0.75  # a porch wall: studs and siding


def face(frame: Frame, face_id: str) -> ExitFace:
    return next(f for f in frame.faces if f.id == face_id)


def kept(frame: Frame, face_id: str, thing: str) -> KeepOut:
    (only,) = (k for k in face(frame, face_id).keep_outs if k.id == thing)
    return only


def ids(frame: Frame, face_id: str) -> set[str]:
    return {k.id for k in face(frame, face_id).keep_outs}


def window(left_in: float, sill_in: float, width_in: float = 24.0, height_in: float = 30.0) -> Opening:
    return Opening("window", OpeningKind.WINDOW, True, left_in, sill_in, width_in, height_in)


def porch(left_in: float = 40.0, width_in: float = 96.0, name: str = "porch") -> Space:
    walls = tuple(
        Wall(side, "outdoors", WallFrame.WOOD, samples.studs("2x4", depth=3.5), 3.5, True, False, (), SIDING)
        for side in (WallSide.LEFT, WallSide.RIGHT, WallSide.FRONT)
    )
    return Space(name, SpaceKind.PORCH, WallSide.HOOD, 72.0, left_in, width_in, -14.0, 108.0, walls, True)


def behind_porch(*windows: Opening, **changes: object) -> Scene:
    home = with_wall(samples.scene(), WallSide.HOOD, beyond="porch", openings=windows, lot_line_in=None)
    return replace(home, **{"spaces": (porch(),), **changes})


# --- round a corner ---


@pytest.mark.parametrize(
    "kind", [k for k in OutdoorKind if k not in BARS_ITS_OWN_FACE and k is not OutdoorKind.LOT_LINE]
)
def test_everything_listed_is_seen_round_the_corner(kind: OutdoorKind) -> None:
    """6 in round the corner at the hood wall's finished face: 7 3/16 more to its outer face."""
    frame = framed(samples.scene(outdoors=(OutdoorThing("thing", kind, "right", 6.0, 66.0, 10.0, 12.0, 2.0),)))
    keep = kept(frame, "face-hood", "thing")
    assert (keep.lo, keep.hi) == ((RIGHT + 2.0, 66.0), (RIGHT + 2.0, 78.0))  # 2 in off the right wall
    assert keep.away_in == 6.0 + OUTER
    assert keep.label.endswith("round the corner")
    assert kept(frame, "gable-right", "thing").away_in == 2.0


@pytest.mark.parametrize("kind", BARS_ITS_OWN_FACE)
def test_what_only_bars_its_own_face_is_not(kind: OutdoorKind) -> None:
    frame = framed(samples.scene(outdoors=(OutdoorThing("thing", kind, "right", 6.0, 66.0, 10.0, 12.0),)))
    assert {f.id for f in frame.faces if "thing" in ids(frame, f.id)} == {"face-right", "gable-right"}


def test_a_vented_soffit_is_seen_from_the_wall_round_the_corner_and_not_from_the_roof_over_it() -> None:
    roof = replace(samples.scene().roof, soffit_vented=True)
    frame = framed(samples.scene(roof=roof))
    keep = kept(frame, "gable-right", "soffit-vent-hood")
    assert (keep.lo[0], keep.hi[0], keep.away_in) == (OUTER, OUTER, 0.0)  # it runs to the corner
    assert not any("soffit-vent-hood" in ids(frame, f.id) for f in frame.faces if f.id.startswith("roof"))


def test_a_thing_on_the_roof_is_seen_from_the_wall_under_it() -> None:
    """20 to 30 in out from the finished hood wall: 27 3/16 from its outer face, at the height of the shingles there."""
    skylight = OutdoorThing("skylight", OutdoorKind.OPERABLE_WINDOW, "roof", 50.0, 20.0, 16.0, 10.0)
    keep = kept(framed(samples.scene(outdoors=(skylight,))), "face-hood", "skylight")
    assert (keep.lo[0], keep.hi[0], keep.away_in) == (50.0, 66.0, 20.0 + OUTER)
    over = 103.875 + 6.375 * math.hypot(1.0, 0.25)  # rafters' underside at y = 6, and what lies on it
    assert (keep.lo[1], keep.hi[1]) == (pytest.approx(over + 26.0 / 4), pytest.approx(over + 36.0 / 4))
    assert keep.label == "operable window skylight in the roof"


# --- walls of spaces beyond ---


def test_the_kitchens_window_is_seen_from_the_side_of_the_porch() -> None:
    frame = framed(behind_porch(window(8.0, 56.0)))
    keep = kept(frame, "face-porch-left", "hood-window")
    assert face(frame, "face-porch-left").at_in == 40.0 - THIN
    assert (keep.lo, keep.hi) == ((OUTER, 56.0), (OUTER, 86.0))
    assert (keep.away_in, keep.distance_in) == (40.0 - THIN - 32.0, 36.0)
    assert kept(frame, "face-porch-front", "hood-window").away_in == 72.0 + THIN  # from further out, over its depth
    assert kept(frame, "face-porch-front", "hood-window").label == "window in the wall behind"
    assert "hood-window" not in ids(frame, "face-porch-right")  # the porch itself lies between


def test_a_window_into_the_porch_is_none_to_the_outdoors_and_one_beside_it_is_as_far_as_it_goes() -> None:
    assert "hood-window" not in ids(framed(behind_porch(window(60.0, 40.0))), "face-porch-left")
    half = kept(framed(behind_porch(window(20.0, 40.0, 40.0))), "face-porch-front", "hood-window")
    assert (half.lo[0], half.hi[0]) == (20.0, 40.0 - THIN)


def test_a_porch_wall_has_its_corners_and_its_top() -> None:
    frame = framed(behind_porch())
    side = {k.label: k for k in face(frame, "face-porch-left").keep_outs}
    assert side["corner with the wall behind"].lo[0] == OUTER
    assert side["corner with the porch's far wall"].lo[0] == pytest.approx(OUTER + 72.0 + 3.5)
    assert side["top edge of the wall"].lo[1] == 108.0 - 14.0
    far = {k.label for k in face(frame, "face-porch-front").keep_outs}
    assert {"corner with the porch's left wall", "corner with the porch's right wall"} <= far


def test_the_kitchens_lot_line_is_seen_from_the_porch() -> None:
    home = with_wall(behind_porch(), WallSide.RIGHT, lot_line_in=30.0)
    frame = framed(home)
    assert kept(frame, "face-porch-front", "lot-line-right").lo[0] == RIGHT + 30.0
    beside = kept(frame, "face-porch-right", "lot-line-right")
    assert beside.away_in == RIGHT + 30.0 - (136.0 + THIN)
    assert "lot-line-right" not in ids(frame, "face-porch-left")


def test_two_porches_face_each_other_over_what_lies_between() -> None:
    home = behind_porch(spaces=(porch(0.0, 50.0, "wash-house"), porch(90.0, 40.0)))
    glazed = tuple(replace(w, openings=(window(20.0, 60.0),)) for w in home.spaces[0].walls)
    frame = framed(replace(home, spaces=(replace(home.spaces[0], walls=glazed), home.spaces[1])))
    assert kept(frame, "face-porch-left", "wash-house-right-window").away_in == 40.0 - 2 * THIN
    assert "wash-house-left-window" not in ids(frame, "face-porch-right")  # with its back to it


# --- roofs ---


def test_a_lot_line_is_a_level_distance_from_a_cap_on_the_roof() -> None:
    home = with_wall(samples.scene(), WallSide.HOOD, lot_line_in=6.0)
    keep = kept(framed(home), "roof-back", "lot-line-hood")
    assert (keep.lo[1], keep.hi[1], keep.away_in, keep.heights_in) == (OUTER + 6.0, OUTER + 6.0, 0.0, None)
    (leave,) = (e for e in exits(framed(home).faces, only_roof(home), samples.ROUND_8) if e.face == "roof-back")
    edge = OUTER + 6.0 - 36.0 - 4.0  # half the opening
    assert allows(leave, 70.0, edge)
    assert not allows(leave, 70.0, edge + 0.001)


def ticks(*lengths_in: float) -> list[Ints]:
    return [np.array([round(v * TICKS_PER_IN)], np.int64) for v in lengths_in]


def allows(leave: Exit, x: float, y: float) -> bool:
    return bool(leave.allows(*ticks(x, y))[0])


def overlooking(ridge: RunDirection, pitch: float, top_in: float, left_in: float = 60.0) -> Scene:
    """A roof with no overhang over a wall with one window, 24 in wide, up to `top_in`."""
    middle = 66.0 if ridge is RunDirection.ALONG else 73.0  # of the walls' cores: both eaves lie at one height
    roof = replace(samples.scene().roof, ridge=ridge, pitch=pitch, overhang_in=0.0, ridge_at_in=middle)
    home = with_wall(samples.scene(roof=roof), WallSide.HOOD, openings=(window(left_in, 60.0, 24.0, top_in - 60.0),))
    return replace(only_roof(home), cap=replace(home.cap, wall=False, roof_stub_in=4.0))


@pytest.mark.parametrize(("pitch", "top"), [(0.25, 92.0), (1.0, 101.0)])
def test_straight_up_the_room_beside_a_window_under_the_eave_is_exact(pitch: float, top: float) -> None:
    home = overlooking(RunDirection.ALONG, pitch, top)
    z = 103.875 + pitch * (6.0 + 8.5) + 6.375 * math.hypot(1.0, pitch) + 4.0
    flat = 4.0 + math.sqrt(36.0**2 - (z - top) ** 2)  # from the opening's centre, level
    beside = math.sqrt(flat**2 - (8.5 + OUTER) ** 2)
    (leave,) = (e for e in exits(framed(home).faces, home, samples.ROUND_8) if e.face == "roof-back")
    for way, edge in ((-1.0, 60.0 - beside), (1.0, 84.0 + beside)):
        assert allows(leave, edge + way * 0.001, -8.5)
        assert not allows(leave, edge - way * 0.001, -8.5)


@pytest.mark.parametrize("ridge", list(RunDirection))
@pytest.mark.parametrize("pitch", [0.0, 0.25, 1.0])
def test_on_a_slope_no_place_too_near_is_free_and_none_is_barred_far_off(ridge: RunDirection, pitch: float) -> None:
    """Every 3 in of the roof: the distance in space decides, but for the depth of a band and what it rises."""
    home = overlooking(ridge, pitch, 95.0, 4.0)
    if pitch == 0.0:
        home = replace(home, roof=replace(home.roof, form=RoofForm.FLAT))
    frame = framed(home)
    barred = 0
    for leave in exits(frame.faces, home, samples.ROUND_8):
        a, b, c = face(frame, leave.face).plane
        for x in range(-4, 152, 3):
            for y in range(-100, 8, 3):
                inside = all(lo <= p[0] <= hi for p, lo, hi in zip(ticks(x, y), leave.lo, leave.hi, strict=True))
                z = a + b * x + c * y + 4.0
                level = math.hypot(max(4.0 - x, x - 28.0, 0.0), OUTER - y)
                gap = math.hypot(max(level - 4.0, 0.0), max(z - 95.0, 0.0))
                if inside and gap < 36.0:
                    barred += 1
                    assert not allows(leave, x, y), (leave.face, x, y)
                elif inside and gap > 36.0 + 4.0 * math.hypot(1.0, pitch):
                    assert allows(leave, x, y), (leave.face, x, y, gap)
    assert barred > 5
