"""In random rooms every way out that is offered, and every way with an offset, passes the checker on the exact solids."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from search.test_search_find import ROOF, WALL, box, house, plan

from routeviz.freespace import carve
from routeviz.model.path import Outcome
from routeviz.model.scene import Scene, SectionShape, SectionSize
from routeviz.model.solids import Crossing, ExitFace, FaceKind, Frame, SolidKind
from routeviz.search import find, verify
from routeviz.search.bends import elbow_with_offset
from routeviz.search.measure import centreline
from routeviz.search.moves import moves
from routeviz.search.solve import above
from routeviz.search.stepped import straight_with_offset, straight_with_two

RIGHT = ExitFace("face-right", "right", FaceKind.WALL, 0, 1, 144.0, (144.0, 0, 0), (-96.0, 12.0), (0.0, 119.0))
SECTIONS = (SectionSize(SectionShape.ROUND, 6.0, 6.0), SectionSize(SectionShape.ROUND, 8.0, 8.0),
            SectionSize(SectionShape.RECT, 10.0, 3.25))  # fmt: skip
eighths = st.integers(0, 400).map(lambda n: n / 8)


@st.composite
def rooms(draw: st.DrawFn) -> tuple[Frame, Scene]:
    """A house with joists, a stud and a post near the hood, in its attic and its wall; any wall or roof may be closed."""
    solids = []
    for n in range(draw(st.integers(0, 2))):
        x, z = 45.0 + draw(eighths), 96.5 + draw(eighths) / 4
        along = draw(st.booleans())
        lo, hi = ((x, -96.0, z), (x + 1.5, 6.0, z + 6)) if along else ((0.0, -x / 2, z), (144.0, 1.5 - x / 2, z + 6))
        solids.append(box(f"joist-{n}", lo, hi, Crossing.NEVER, SolidKind.JOIST))
    if draw(st.booleans()):
        x = 45.0 + draw(eighths)
        solids.append(box("stud", (x, 0.5, 0), (x + 1.5, 6, 96), Crossing.NEVER, SolidKind.STUD))
    if draw(st.booleans()):
        x, y, side = 45.0 + draw(eighths), -draw(eighths), draw(st.integers(2, 9))
        solids.append(box("post", (x, y - side, 97), (x + side, y, 119), Crossing.NEVER, SolidKind.BEAM))
    faces = draw(st.lists(st.sampled_from((ROOF, WALL, RIGHT)), min_size=1, max_size=3, unique=True))
    scene = plan(
        sections=(draw(st.sampled_from(SECTIONS)),),
        offset_angles_deg=draw(st.sampled_from(((45.0,), (30.0,), (45.0, 30.0), (60.0,)))),
        min_straight_in=draw(st.sampled_from((0.0, 4.0, 12.0))),
        elbow_ratio=draw(st.sampled_from((0.75, 1.0, 1.5))), max_elbows=2, offset_max_in=8.0,
    )  # fmt: skip
    cover = scene.hood.cover
    assert cover is not None
    hood = replace(scene.hood, mount_in=float(draw(st.integers(24, 34))),
                   cover=replace(cover, width_in=float(draw(st.sampled_from((12, 16, 24))))),
                   outlet=replace(scene.hood.outlet, section=scene.duct.sections[0]))  # fmt: skip
    return house(*solids, faces=tuple(faces)), replace(scene, hood=hood)


def test_every_way_out_and_every_offset_hold() -> None:
    seen: Counter[str] = Counter()

    @settings(
        max_examples=40,
        deadline=None,
        derandomize=True,
        phases=(Phase.generate,),
        suppress_health_check=list(HealthCheck),
    )
    @given(rooms())
    def hold(room: tuple[Frame, Scene]) -> None:
        frame, scene = room
        space = carve(frame, scene, scene.duct.sections[0])
        found = find(space, explained=False)
        lines = [line for line in (found.best, *found.alternatives) if line is not None]
        seen["others"] += max(len(lines) - 1, 0)
        seen["proven"] += found.outcome is Outcome.PROVEN
        cut, table = above(space, space.start.point[2]), moves(space.section, space.limits)
        if found.outcome is not Outcome.BAD_START:
            for name, stepped in (("one", straight_with_offset(cut, table, priced=False)),
                                  ("two", straight_with_two(cut, table)),
                                  ("beside an elbow", elbow_with_offset(cut, table))):  # fmt: skip
                if stepped is not None:
                    seen[name] += 1
                    lines.append(centreline(cut, table, stepped[1]))
        for line in lines:
            assert verify(line, frame, scene) == (), line
        costs = [(line.boxed_in, line.elbows, line.length_in) for line in lines[: 1 + len(found.alternatives)]]
        assert all(cost[:2] >= costs[0][:2] for cost in costs[1:])

    hold()
    assert min(seen["others"], seen["proven"], seen["one"], seen["two"], seen["beside an elbow"]) >= 3, seen
