"""The chimney cover: what is bought of it, whether the duct lets it be set, and how."""

from __future__ import annotations

from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.overhead import ceiling_at_in, cover_room_in
from routeviz.model.scene import Scene
from routeviz.model.takeoff import BuyLine, Sheet, Step
from routeviz.takeoff.heavy import stays
from routeviz.units import length_text

__all__ = ["as_hung", "cover_gap_in", "cover_lines", "cover_steps", "fits_round", "slope_cut"]

_LEVEL_IN = 1 / 64
_ROOM_IN_COVER = "FIT-COVER-DUCT"


def fits_round(findings: tuple[Finding, ...]) -> bool:
    """Whether the cover can be set whole round the duct, as its finding says."""
    return not any(f.code == _ROOM_IN_COVER and f.margin is not None and f.margin < 0 for f in findings)


def as_hung(scene: Scene, findings: tuple[Finding, ...]) -> Scene:
    """Give the scene as the hood is hung: without a cover where none can be set, so that nothing counts on it."""
    return scene if fits_round(findings) else replace(scene, hood=replace(scene.hood, cover=None))


def cover_gap_in(scene: Scene) -> float | None:
    """Give the height the chimney cover must fill [in], to its high side under a slope; None without cover or height."""
    both = cover_room_in(scene)
    return None if both is None else both[1]


def slope_cut(scene: Scene) -> str:
    """Say how long each side of the cover is where its top is cut to the ceiling; "" under a level one."""
    cover, bottom = scene.hood.cover, scene.hood_bottom_in
    both = cover_room_in(scene)
    if cover is None or bottom is None or both is None or both[1] - both[0] <= _LEVEL_IN:
        return ""
    x, half, top = scene.hood.centre_in, cover.width_in / 2, bottom + scene.hood.body_in
    left, right, middle = (ceiling_at_in(scene, x + at) - top for at in (-half, half, 0.0))
    wall, front = middle, ceiling_at_in(scene, x, cover.depth_in) - top
    sides = (
        [(wall, "at the wall"), (front, "in front")]
        if abs(front - wall) > _LEVEL_IN
        else [(left, "on the left"), (right, "on the right")]
    )
    said = " and ".join(f"{length_text(long, metric=scene.metric)} {where}" for long, where in sides)
    if both[1] > max(long for long, _ in sides) + _LEVEL_IN:  # a ridge over the cover
        said += f", {length_text(both[1], metric=scene.metric)} under the ridge"
    return said


def cover_lines(scene: Scene, findings: tuple[Finding, ...]) -> list[BuyLine]:
    """Give the cover as it is bought: as supplied, cut, extended, or only if its maker lets its side be cut out."""
    both, cover = cover_room_in(scene), scene.hood.cover
    if both is None or cover is None:
        return []
    low, gap = both

    def text(length_in: float) -> str:
        return length_text(length_in, metric=scene.metric)

    sides = slope_cut(scene)
    slope = f"; its top is cut to the slope: {sides}" if sides else ""
    if not fits_round(findings):
        item = "chimney cover, only if its maker lets its side be cut out"
        return [BuyLine(item, text(gap), 1, "each", "the duct passes through its side; else leave it out")]
    if low < cover.min_in - 1e-9:
        note = f"shortest {text(cover.min_in)}: cut {text(cover.min_in - low)} off the upper section's hidden end"
        return [BuyLine("chimney cover, cut", text(gap), 1, "each", f"{note}, as its maker allows{slope}")]
    if gap > cover.max_in + 1e-9:
        note = f"longest {text(cover.max_in)}: extension for {text(gap - cover.max_in)} more"
        return [BuyLine("chimney cover extension", text(gap), 1, "each", f"{note}{slope}")]
    how = "pull out to this height" if slope else "pull out to this height, no cut"
    return [BuyLine("chimney cover, as supplied", text(gap), 1, "each", f"{how}{slope}")]


def cover_steps(scene: Scene, findings: tuple[Finding, ...]) -> list[Step]:
    """Give the setting of the cover, or what to ask before it is bought."""
    gap = cover_gap_in(scene)
    if gap is None:
        return []
    high = length_text(gap, metric=scene.metric)
    if fits_round(findings):
        sides = slope_cut(scene)
        cut = f"Cut the cover's top to the slope, {sides}; s" if sides else "S"
        count = stays(scene)
        stayed = (
            f" and to {'its stay' if count == 1 else 'its stays'} on the way up, each into framing or blocking"
            if count
            else ""
        )
        return [
            Step(
                "cover",
                f"{cut}et the cover to {high} and fix it to its bracket{stayed}.",
                ("connect", "bracket"),
                "",
                "",
                Sheet.PARTS,
            )
        ]
    text = ("Leave the cover off: the duct passes through its side. Ask its maker whether that side may be cut out; if not, box in "
            f"the {high} above the hood as well.")  # fmt: skip
    return [
        Step(
            "cover", text, ("connect",), "The maker has answered before the cover is bought or cut.", "", Sheet.FINDINGS
        )
    ]
