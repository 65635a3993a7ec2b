"""Where a wall ends outdoors: at a corner on which a tape hooks, or nowhere, since the house goes on."""

from __future__ import annotations

from pathlib import Path

from routeviz.framing import frame
from routeviz.model.solids import ExitFace, WallEnd
from routeviz.scenefile import edit, load, loads

SCENES = Path(__file__).parents[2] / "scenes"
SIDING = ["OSB sheathing 7/16 in", "wood lap siding 3/4 in"]


def _faces(name: str, changes: dict[str, object] | None = None) -> dict[str, ExitFace]:
    path = SCENES / f"{name}.toml"
    scene = loads(edit(path.read_text(), changes)) if changes else load(path)
    return {f.id: f for f in frame(scene).faces}


def test_between_rooms_there_is_no_corner_outdoors() -> None:
    ends = _faces("out_the_back")["face-hood"].ends
    assert ends == (
        WallEnd("inner face of the left wall", 0.0, hooks=False),
        WallEnd("inner face of the right wall", 132.0, hooks=False),
    )


def test_a_corner_stands_on_the_next_walls_finished_outer_face() -> None:
    """Left wall 1/2 + 3 1/2 + 7/16 + 3/4 = 5 3/16 in; wall behind 1/2 + 5 1/2 + 7/16 + 3/4 = 7 3/16 in."""
    faces = _faces("out_the_back", {"walls.left.beyond": "outdoors", "walls.left.outside": SIDING})
    low, high = faces["face-hood"].ends
    assert low == WallEnd("corner with the left wall", -5.1875, hooks=True)
    assert not high.hooks
    low, high = faces["face-left"].ends  # along y: the front wall's end, then the wall behind's
    assert low == WallEnd("inner face of the front wall", -120.0, hooks=False)
    assert high == WallEnd("corner with the wall behind", 7.1875, hooks=True)


def test_a_garage_of_which_only_the_far_wall_is_known_has_no_corner() -> None:
    assert _faces("garage_beyond")["face-garage-front"].ends == (
        WallEnd("inner side of the garage", 0.0, hooks=False),
        WallEnd("inner side of the garage", 132.0, hooks=False),
    )
