"""Each member may be off by what the scene says of its group, whoever asks: the rule on what may not be cut too."""

from __future__ import annotations

from dataclasses import replace

import pytest
import rulebench as bench

from routeviz import rules
from routeviz.model.finding import Finding, State
from routeviz.model.scene import Tolerances
from routeviz.model.solids import SolidKind
from routeviz.rules.bench import joist, kitchen, look, near, straight_up

GIVEN = Tolerances(studs_in=1.0, joists_in=2.0, rafters_in=3.0, openings_in=4.0, other_in=5.0)
OFF = {  # as a framer groups what stands in a wall, lies in a ceiling and carries a roof
    1: "stud plate jack header sill cripple",
    2: "joist rim blocking beam",
    3: "rafter ridge chord web",
    4: "glazing door",
    5: "cabinet soffit obstacle masonry slab",
}
KINDS = [(SolidKind[name.upper()], "", off) for off, names in OFF.items() for name in names.split()]
LISTED = [  # the same member may be listed with one group or another
    (SolidKind.CHORD, "roof.framing", 3),
    (SolidKind.CHORD, "ceiling.joists", 2),
    (SolidKind.FURRING, "ceiling.joists", 2),
    (SolidKind.FURRING, "walls.hood.studs", 1),
]


def clash(kind: SolidKind, origin: str, gap_in: float) -> Finding:
    thing = replace(joist(4, 66.0), id="thing", label="thing", kind=kind, origin=origin)
    context = look(
        replace(kitchen(), tolerances=GIVEN), solids=(thing,), route=straight_up(near=(near(thing, gap_in),))
    )
    return bench.one_of(rules.check(context), "MBR-CLASH")


@pytest.mark.parametrize(("kind", "origin", "off"), KINDS + LISTED)
def test_a_member_within_its_own_tolerance_is_measured_first(kind: SolidKind, origin: str, off: int) -> None:
    found = clash(kind, origin, off - 1 / 16)
    assert found.state is State.CLOSE
    assert found.detail == f"its place may be off by {off} in"
    assert clash(kind, origin, off + 1 / 16).state is State.FINE
