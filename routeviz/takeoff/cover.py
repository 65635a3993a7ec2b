"""The chimney cover: what is bought of it, whether the duct lets it be set, and how."""

from __future__ import annotations

from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.overhead import ceiling_at_in, ceiling_over_hood_in
from routeviz.model.scene import Scene
from routeviz.model.takeoff import BuyLine, Sheet, Step
from routeviz.units import length_text

__all__ = ["as_hung", "cover_gap_in", "cover_lines", "cover_steps", "fits_round"]

_ROOM_IN_COVER = "FIT-COVER-DUCT"


def fits_round(findings: tuple[Finding, ...]) -> bool:
    """Whether the cover can be set whole round the duct, as its finding says."""
    return not any(f.code == _ROOM_IN_COVER and f.margin is not None and f.margin < 0 for f in findings)


def as_hung(scene: Scene, findings: tuple[Finding, ...]) -> Scene:
    """Give the scene as the hood is hung: without a cover where none can be set, so that nothing counts on it."""
    return scene if fits_round(findings) else replace(scene, hood=replace(scene.hood, cover=None))


def cover_gap_in(scene: Scene) -> float | None:
    """Give the height the chimney cover must fill [in], up to a sloped ceiling too; None without cover or height."""
    bottom = scene.hood_bottom_in
    if scene.hood.cover is None or bottom is None:
        return None
    return ceiling_over_hood_in(scene) - bottom - scene.hood.body_in


def cover_lines(scene: Scene, findings: tuple[Finding, ...]) -> list[BuyLine]:
    """Give the cover as it is bought: as supplied, cut, extended, or only if its maker lets its side be cut out."""
    gap, cover = cover_gap_in(scene), scene.hood.cover
    if gap is None or cover is None:
        return []

    def text(length_in: float) -> str:
        return length_text(length_in, metric=scene.metric)

    half, top = cover.width_in / 2, ceiling_over_hood_in(scene)
    sides = [ceiling_at_in(scene, scene.hood.centre_in + s * half) - top for s in (-1, 1)]
    slope = ""
    if any(abs(s) > 1 / 64 for s in sides):
        left, right = (text(gap + s) for s in sides)
        slope = f"; in its middle: the top is cut to the slope, {left} long on the left and {right} on the right"
    if not fits_round(findings):
        item = "chimney cover, only if its maker lets its side be cut out"
        return [BuyLine(item, text(gap), 1, "each", "the duct passes through its side; else leave it out")]
    if gap < cover.min_in - 1e-9:
        note = f"shortest {text(cover.min_in)}: cut {text(cover.min_in - gap)} off the upper section's hidden end"
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
        return [
            Step(
                "cover",
                f"Set the cover to {high} and fix it to its bracket.",
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
