"""Where a duct begins and where it may leave: the hood's collar and the legal part of every outer face."""

from __future__ import annotations

import math
from collections.abc import Sequence

from routeviz.errors import RoutevizError
from routeviz.freespace.barriers import down, up
from routeviz.freespace.overlooked import overlooked
from routeviz.model.freespace import Exit, KeepClear, Start
from routeviz.model.scene import Scene, SectionSize
from routeviz.model.solids import ExitFace, FaceKind, KeepOut
from routeviz.units import MM_PER_IN, TICKS_PER_IN, ticks

__all__ = ["StartError", "collar", "exits", "reach_x"]


class StartError(RoutevizError):
    """The hood has no place yet, so no duct can begin."""


def _keep_clear(keep: KeepOut, half_in: float, flange_in: float) -> KeepClear | None:
    """Give where the opening's centre may not be; a thing that stands off the face counts at its true distance."""
    apart = keep.distance_in > keep.away_in
    if keep.away_in > 0 and not apart:
        return None
    reach = half_in + math.sqrt(keep.distance_in**2 - keep.away_in**2) if apart else 0.0
    body = 0.0 if keep.away_in > 0 else flange_in
    above = None if keep.above_in is None else up(keep.hi[1] + half_in + keep.above_in)
    lo, hi = (down(keep.lo[0]), down(keep.lo[1])), (up(keep.hi[0]), up(keep.hi[1]))
    return KeepClear(keep.id, keep.label, lo, hi, up(reach), up(body), above)


def exits(faces: tuple[ExitFace, ...], scene: Scene, section: SectionSize) -> tuple[Exit, ...]:
    """Give the legal part of each outer face for the centre of a duct.

    A wall cap's flange must lie on the face; a roof duct must lie inside the roof's usable part. The opening counts
    as a circle over the section's larger side.
    """
    half = max(section.width_in, section.height_in) / 2
    flange = (scene.cap.wall_flange_in or 2 * half + 4.0) / 2
    found = []
    for face in faces:
        roof = face.kind is FaceKind.ROOF
        if not (scene.cap.roof if roof else scene.cap.wall):
            continue
        inset = half if roof else flange
        lo = (up(face.lo[0] + inset), up(face.lo[1] + inset))
        hi = (down(face.hi[0] - inset), down(face.hi[1] - inset))
        if lo[0] > hi[0] or lo[1] > hi[1]:
            continue
        stub = scene.cap.roof_stub_in if roof else 0.0
        height, *slopes = face.plane if roof else (face.at_in, 0.0, 0.0)
        plane = ((height + stub) * TICKS_PER_IN, slopes[0], slopes[1])
        clear = [_keep_clear(k, half, inset) for k in face.keep_outs if k.heights_in is None]
        for keep in face.keep_outs:
            if keep.heights_in is not None:
                clear += overlooked(keep, face, half, stub, lo, hi, ticks(-scene.hood.outlet.out_in))
        near = tuple(c for c in clear if c is not None and _reaches(c, lo, hi))
        found.append(Exit(face.id, face.label, face.kind, face.axis, face.sign, plane, lo, hi, near))
    return tuple(found)


def _reaches(keep: KeepClear, lo: tuple[int, int], hi: tuple[int, int]) -> bool:
    """Whether what is kept clear takes any of the places that a face offers."""
    far = max(keep.reach, keep.flange)
    return all(keep.lo[k] - far < hi[k] + 1 and keep.hi[k] + far > lo[k] - 1 for k in (0, 1))


def reach_x(scene: Scene, places_in: Sequence[tuple[float, float]]) -> tuple[tuple[int, int], ...]:
    """Give the places of the collar that go with closed intervals of hood centres [ticks]."""
    across = scene.hood.outlet.across_in
    return tuple((up(low + across), down(high + across)) for low, high in places_in)


def collar(
    scene: Scene, half_in: float, cover_top_in: float, heights_in: tuple[float, float] | None = None,
    places_in: Sequence[tuple[float, float]] | None = None,
) -> Start:  # fmt: skip
    """Give where the duct begins.

    The cover counts as hiding the riser whether or not the riser fits into it: that is a rule of its own.

    Raises
    ------
    StartError
        If the hood has no mounting height.
    """
    hood, outlet = scene.hood, scene.hood.outlet
    if scene.hood_bottom_in is None:
        raise StartError("The hood has no mounting height yet. Give `mount` in the scene, or let the plan choose it")
    x = hood.centre_in + outlet.across_in
    side = hood.width_in / 2
    free = reach_x(scene, places_in if places_in is not None else [(side, scene.kitchen.width_in - side)])
    rear = outlet.place == "rear"
    z = scene.hood_bottom_in + (outlet.up_in if rear else hood.body_in + outlet.collar_in)
    reach_z, step = None, ticks(1 / MM_PER_IN if scene.metric else 1 / 16)  # as in texts of lengths
    if heights_in is not None and heights_in[0] <= heights_in[1]:
        low, high = (ticks(z - (hood.mount_in or 0.0) + h) for h in heights_in)
        reach_z = (low, high)
    if rear:
        return Start((ticks(x), 0, ticks(z)), 1, 1, wide_axes=(0,), reach_x=free, reach_z=reach_z, step_z=step)
    left, right, out, back = hood.cover_slack_in(half_in)
    slack = (down(left), down(right), down(out), down(back))
    return Start(
        (ticks(x), ticks(-outlet.out_in), ticks(z)), 2, 1, hood.cover is not None, ticks(cover_top_in),
        slack, (0,) if outlet.section.width_in > outlet.section.height_in else (0, 1), free, reach_z, step,
    )  # fmt: skip
