"""Every kind of ceiling under every kind of roof that a file may say is framed, and concrete has no bays and no roof."""

from __future__ import annotations

import itertools
from importlib.resources import files

import pytest

from routeviz.framing import assumptions, frame
from routeviz.model.scene import AboveKind
from routeviz.model.solids import Passage, SolidKind
from routeviz.scenefile import edit, loads

BLANK = edit(
    (files("routeviz.scenefile") / "blank.toml").read_text(encoding="utf-8"),
    {"assumed": None, "roof": None, "ceiling.joists": None},
)
RAFTERS = {"size": "2x6", "spacing": "16 in", "first": "14 in"}
TRUSSES = {"kind": "truss", "size": "2x4", "spacing": "24 in", "first": "8 in"}
CEILINGS = {
    "concrete": {"ceiling.slab": "8 in"},
    "plastered concrete": {"ceiling.slab": "8 in", "ceiling.layers": ["gypsum plaster 3/8 in"]},
    "joists out": {"ceiling.joists": {"size": "2x8", "spacing": "16 in", "first": "14 in", "direction": "out"}},
    "joists along": {"ceiling.joists": {"size": "2x8", "spacing": "16 in", "first": "14 in", "direction": "along"}},
    "no board": {
        "ceiling.layers": [],
        "ceiling.joists": {"size": "2x8", "spacing": "16 in", "first": "14 in", "direction": "out"},
    },
    "chords": {"ceiling.joists": {**TRUSSES, "direction": "out"}},
    "nothing of its own": {},
    "nothing at all": {"ceiling.layers": []},
}
ROOFS = {
    "no roof": {},
    "gable": {"form": "gable", "pitch": "4/12", "ridge": "along", "ridge_at": "11 ft", "overhang": "16 in", "framing": RAFTERS},
    "gable of trusses": {
        "form": "gable", "pitch": "6/12", "ridge": "along", "ridge_at": "5 ft", "overhang": "16 in", "framing": TRUSSES
    },
    "gable out": {"form": "gable", "pitch": "12/12", "ridge": "out", "ridge_at": "5 ft", "overhang": "0 in", "framing": RAFTERS},
    "shed": {"form": "shed", "pitch": "3/12", "high_side": "hood", "overhang": "12 in", "framing": RAFTERS},
    "flat": {"form": "flat", "overhang": "12 in"},
    "flat on trusses": {"form": "flat", "overhang": "12 in", "framing": TRUSSES},
}  # fmt: skip


def may_be(above: str, ceiling: str, roof: str) -> bool:
    """What a scene file may say together."""
    if above == "slab":
        return ceiling in ("concrete", "plastered concrete")
    if "concrete" in ceiling or (roof == "no roof" and above != "storey"):
        return False
    return "nothing" not in ceiling or (above == "roof" and roof not in ("no roof", "flat"))


def home(above: str, ceiling: str, roof: str) -> str:
    changes = {"above.kind": above, **CEILINGS[ceiling]}
    return edit(BLANK, {**changes, **({"roof": ROOFS[roof]} if ROOFS[roof] else {})})


@pytest.mark.parametrize("above", AboveKind)
def test_every_ceiling_is_framed_under_every_roof(above):
    framed = 0
    for ceiling, roof in itertools.product(CEILINGS, ROOFS):
        if not may_be(above, ceiling, roof):
            continue
        scene = loads(home(above, ceiling, roof))
        house = frame(scene)
        assumptions(scene)
        framed += 1
        bays = [z for z in house.zones if z.bay.startswith(("joist bay", "truss bay"))]
        hung = scene.ceiling.joists is not None or "trusses" in roof
        assert bool(bays) == (hung and above != "slab"), (ceiling, roof)
    assert framed == {"attic": 24, "storey": 28, "roof": 34, "slab": 14}[above]


def test_under_concrete_a_roof_is_told_of_but_not_laid():
    scene = loads(home("slab", "concrete", "gable"))
    house = frame(scene)
    assert not [s for s in house.solids if s.kind in (SolidKind.RAFTER, SolidKind.DECK, SolidKind.RIDGE)]
    assert {z.passage for z in house.zones if z.id in ("slab", "above")} == {Passage.CLOSED}
    told = {a.field: a for a in scene.assumptions}
    assert told["roof"].value == "left out"
    assert not [field for field in told if field.startswith("roof.")]
    assert "roof" not in {a.field for a in loads(home("slab", "concrete", "no roof")).assumptions}
