"""Duct in cold places is wrapped: the area by hand, and the step before the duct is covered."""

from __future__ import annotations

import math
from dataclasses import replace

import handmade
import pytest
import samples

from routeviz.model.route import Route
from routeviz.model.scene import Scene, SectionShape, SectionSize
from routeviz.model.solids import Box, Frame, Passage, Zone
from routeviz.model.takeoff import TakeOff
from routeviz.takeoff import count
from routeviz.takeoff.wrapping import perimeter_in, wrap_of

ATTIC = Zone("attic", "attic", Passage.HIDDEN, Box((0.0, -132.0, 96.625), (144.0, 0.0, 140.0)), "attic")


def home(*, cold: bool = False, r: float | None = None, metric: bool = False) -> Scene:
    plain = samples.scene(metric=metric)
    return replace(plain, site=replace(plain.site, cold_climate=cold), duct=replace(plain.duct, insulation_r=r))


def framed(*zones: Zone) -> Frame:
    return replace(handmade.frame(), zones=zones)


def counted(scene: Scene, frame: Frame, route: Route | None = None) -> TakeOff:
    return count(route or handmade.up_route(), scene, frame, handmade.findings())


def wraps(found: TakeOff) -> list[tuple[float, str, str]]:
    return [(b.count, b.unit, b.size) for b in found.buy if b.item.startswith("duct wrap")]


# 8 in round from the attic's floor at 96 5/8 in to 115 in: 18 3/8 in, within the inch that the run is followed by.
# R-8 is some 3 in thick (common practice): pi (8 + 6) 18.375 = 808 in2 = 5.6 sq ft.
def test_wrap_in_a_cold_attic_is_bought_by_its_area_and_has_its_step() -> None:
    found = counted(home(cold=True), framed(ATTIC))
    wrap = wrap_of(handmade.up_route(), home(cold=True), framed(ATTIC))
    assert wrap is not None
    assert wrap.length_in == pytest.approx(18.375, abs=1.0)
    assert wrap.area_in2 == pytest.approx(math.pi * 14.0 * wrap.length_in)
    assert wraps(found) == [(6, "sq ft", "R-8, about 3 in thick")]
    assert [b.count for b in found.buy if "vapour-barrier jacket's seams" in b.item] == [1]
    steps = {s.id: s for s in found.steps}
    assert "jacket outwards" in steps["wrap"].text
    order = [s.id for s in found.steps]
    assert order.index("run") < order.index("wrap") < order.index("inspect")


def test_a_scene_that_gives_the_insulation_buys_it_and_wraps_it() -> None:
    found = counted(home(cold=True, r=4.0), framed(ATTIC))  # 1 1/2 in thick: pi (8 + 3) 18.375 / 144 = 4.4 sq ft
    assert wraps(found) == [(5, "sq ft", "R-4, about 1 1/2 in thick")]
    assert [s.id for s in found.steps if s.id == "wrap"] == ["wrap"]
    assert wraps(counted(home(r=8.0), framed(ATTIC))) == [(6, "sq ft", "R-8, about 3 in thick")]


@pytest.mark.parametrize("space", ["garage", "porch", "crawl"])
def test_every_cold_place_counts_and_a_room_does_not(space: str) -> None:
    assert wraps(counted(home(cold=True), framed(replace(ATTIC, space=space))))
    assert not wraps(counted(home(cold=True), framed(replace(ATTIC, space="room"))))


def test_where_nothing_is_cold_nothing_is_wrapped() -> None:
    for scene, frame in ((home(), framed(ATTIC)), (home(cold=True), framed())):
        found = counted(scene, frame)
        assert not wraps(found)
        assert "wrap" not in [s.id for s in found.steps]


def test_a_metric_home_buys_square_metres() -> None:
    ((area, unit, size),) = wraps(counted(home(cold=True, metric=True), framed(ATTIC)))
    assert (area, unit) == (0.6, "m²")  # 808 in2 = 0.52 m2, sold by tenths
    assert size == "R-8, about 76 mm thick"


@pytest.mark.parametrize(
    ("section", "out", "way"),
    [
        (SectionSize(SectionShape.ROUND, 8.0, 8.0), 3.0, math.pi * 14.0),
        (SectionSize(SectionShape.RECT, 10.0, 3.25), 3.0, 2 * 13.25 + 2 * math.pi * 3.0),
        (SectionSize(SectionShape.OVAL, 10.0, 4.0), 0.0, 2 * 6.0 + math.pi * 4.0),
    ],
)
def test_the_way_round_a_wrapped_duct(section: SectionSize, out: float, way: float) -> None:
    assert perimeter_in(section, out) == pytest.approx(way)
