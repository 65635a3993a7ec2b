"""What is measured for the hood while it does not hang yet: floor, cooktop, ceiling, and the cover on its bench.

A finding compares numbers of the hood as it will hang. A tape reads the room as it is, so each is turned into what can be
read before: the mounting line stays where the plan has it, so many inches above the floor.
"""

from __future__ import annotations

from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.overhead import cover_room_in
from routeviz.model.scene import Scene
from routeviz.model.takeoff import MeasureFirst
from routeviz.takeoff.words import size_text
from routeviz.units import length_text

__all__ = ["before_it_hangs", "one_row_each"]

_LEVEL_IN = 1 / 64


def before_it_hangs(finding: Finding, item: MeasureFirst, scene: Scene) -> MeasureFirst:
    """Give the line of a finding as a tape can read it before the hood hangs; others stay as they are."""
    bottom = scene.hood_bottom_in
    if bottom is None or finding.measured is None or finding.limit is None:
        return item
    if finding.code.startswith("HGT-CANOPY"):
        limit = bottom - finding.limit  # a higher cooktop comes nearer to the canopy
        way = "more than" if finding.relation == "at least" else "less than"
        return _line(item, "Cooktop above the floor", bottom - finding.measured, way, limit, scene)
    if finding.code == "FIT-COVER":
        top = bottom + scene.hood.body_in
        way = "less than" if finding.relation == "at least" else "more than"
        return _line(item, f"Ceiling above the floor{_side(finding.measured, scene)}", finding.measured + top, way,
                     finding.limit + top, scene)  # fmt: skip
    if finding.code == "FIT-COVER-DUCT":
        return _cover(finding, item, scene)
    return item


def _line(item: MeasureFirst, what: str, value_in: float, way: str, limit_in: float, scene: Scene) -> MeasureFirst:
    value, limit = (length_text(v, metric=scene.metric) for v in (value_in, limit_in))
    return replace(item, what=what, assumed=value, changes_at=f"{way} {limit}")


def _side(measured_in: float, scene: Scene) -> str:
    """Say at which side of the cover the ceiling is read, where it slopes."""
    both = cover_room_in(scene)
    if both is None or both[1] - both[0] <= _LEVEL_IN:
        return " over the hood"
    high = abs(measured_in - both[1]) <= abs(measured_in - both[0])
    return f" at the cover's {'high' if high else 'low'} side"


def _cover(finding: Finding, item: MeasureFirst, scene: Scene) -> MeasureFirst:
    """Ask for the cover's inside; its depth or its width decides, whichever comes nearer to the duct."""
    cover, at = scene.hood.cover, finding.place
    if cover is None or at is None or finding.margin is None:
        return item
    aside, out = cover.width_in / 2 - abs(at[0] - scene.hood.centre_in), cover.depth_in + at[1]
    less = ("deep", cover.depth_in - finding.margin) if out <= aside else ("wide", cover.width_in - 2 * finding.margin)
    size = size_text(cover.width_in, cover.depth_in, metric=scene.metric)
    limit = length_text(less[1], metric=scene.metric)
    return replace(item, what="Chimney cover's inside, unpacked: width and depth", assumed=size,
                   changes_at=f"less than {limit} {less[0]}")  # fmt: skip


def one_row_each(items: list[MeasureFirst]) -> list[MeasureFirst]:
    """Join lines that ask for one number with a limit on each side."""
    found: dict[tuple[str, str], MeasureFirst] = {}
    for item in items:
        key = item.what, item.assumed
        if key in found:
            first, second = sorted((found[key], item), key=lambda m: m.slack_in)
            item = replace(first, changes_at=f"{first.changes_at} or {second.changes_at}",
                           ids=tuple(dict.fromkeys((*first.ids, *second.ids))))  # fmt: skip
        found[key] = item
    return list(found.values())
