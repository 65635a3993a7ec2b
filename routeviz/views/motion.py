"""Moving pictures: walking round the room, and following the air from the hood to the cap."""

from __future__ import annotations

import math
import os
from collections.abc import Iterator
from dataclasses import replace
from importlib.util import find_spec
from pathlib import Path

import numpy as np
import numpy.typing as npt
from PIL import Image

from routeviz.errors import MissingPartError
from routeviz.model.plan import Plan
from routeviz.model.route import PartKind
from routeviz.model.solids import Vec3
from routeviz.views import gl
from routeviz.views.parts import Layer
from routeviz.views.stage import Stage
from routeviz.views.viewpoints import Camera, Viewport, camera

__all__ = [
    "air_dots",
    "air_path",
    "flight_cameras",
    "follow_air",
    "require_parts",
    "turn_cameras",
    "turntable",
    "write_film",
]

Array = npt.NDArray[np.float64]
_STEP_IN = 1.5
_STILL = 0.08  # of a flight it stands still at each end
_AHEAD_IN = 10.0  # so far along the duct the camera looks
_LEVEL = 0.5  # a duct that ends less steeply than this ends in a wall
_DOTS_IN, _DOT_STEP = 5.0, 0.2  # how far apart the air's dots are, and how much of that they move from frame to frame
_BLOWN_IN = 14.0  # so far beyond the end the air is shown


def _vec(v: Array) -> Vec3:
    return float(v[0]), float(v[1]), float(v[2])


def turn_cameras(stage: Stage, frames: int, *, aspect: float, swing_deg: float = 70.0) -> list[Camera]:
    """Give cameras that swing from one side of the room to the other and back, at an even, soft pace."""
    rest = camera(stage.plan, stage.cut, "room", aspect=aspect, port=Viewport(0.04, 0.04, 0.96, 0.96))
    target = np.array(rest.target)
    off = np.array(rest.eye) - target
    away = float(np.hypot(off[0], off[1]))
    found = []
    for k in range(frames):
        turn = math.radians(swing_deg / 2) * math.sin(2 * math.pi * k / frames)
        eye = target + np.array([away * math.sin(turn), -away * math.cos(turn), off[2]])
        found.append(Camera(_vec(eye), rest.target, rest.angle_deg))
    return found


def air_path(plan: Plan) -> Array:
    """Give the centre line of the best route as closely spaced points, arcs included; shape (n, 3) [in].

    Raises
    ------
    ValueError
        If the plan has no route.
    """
    if plan.best is None:
        raise ValueError("a plan without a route has no air to follow")
    points: list[Array] = []
    for part in plan.best.route.parts:
        if part.length_in < 1e-6:
            continue
        a, d, t = np.array(part.start), np.array(part.direction), np.array(part.turn_to)
        count = max(1, math.ceil(part.length_in / _STEP_IN))
        if part.kind is PartKind.ELBOW:
            axis = np.cross(d, t) / np.linalg.norm(np.cross(d, t))
            inwards = np.cross(axis, d)
            for k in range(count):
                turn = math.radians(part.angle_deg) * k / count
                points.append(a + inwards * part.radius_in * (1 - math.cos(turn)) + d * part.radius_in * math.sin(turn))
        else:
            points += [a + (np.array(part.end) - a) * k / count for k in range(count)]
    return np.vstack([*points, np.array(plan.best.route.parts[-1].end)])


def _soft(share: float) -> float:
    """Begin and end gently, and stand a moment at both ends."""
    t = min(1.0, max(0.0, (share - _STILL) / (1 - 2 * _STILL)))
    return t * t * (3 - 2 * t)


def flight_cameras(plan: Plan, frames: int) -> list[Camera]:
    """Give cameras that move with the air: beside the duct, from before the hood to before the cap, outdoors where that is.

    They swing round the duct by the side on which there is more room; through a wall behind they go with it.
    """
    path = air_path(plan)
    far = np.linalg.norm(np.diff(path, axis=0, prepend=path[:1]), axis=1).cumsum()
    lean = -1.0 if plan.scene.hood.centre_in <= plan.scene.kitchen.width_in / 2 + 12 else 1.0
    reach = 34 + plan.scene.duct.sections[0].width_in
    first = np.array([-lean * 0.55, -1.0])
    last = first
    end = plan.best.route.termination if plan.best is not None else None
    if end is not None and end.kind is not None and abs(end.direction[2]) < _LEVEL:
        out = np.array(end.direction[:2])
        last = out + (np.array([-lean * 0.6, 0.0]) if out[1] > abs(out[0]) else np.array([0.0, -0.6]))
    # a duct that stays under the ceiling is looked at from under it too, for joists would stand before it
    ceiling = plan.scene.kitchen.ceiling_in
    highest = ceiling - 4.0 if path[:, 2].max() < ceiling else math.inf
    turn0, turn1 = (math.atan2(v[1], v[0]) for v in (first, last))
    swing = (turn1 - turn0 + math.pi) % (2 * math.pi) - math.pi
    found = []
    for k in range(frames):
        soft = _soft(k / max(1, frames - 1))
        here, ahead = (np.array([np.interp(at, far, path[:, a]) for a in range(3)])
                       for at in (soft * far[-1], min(far[-1], soft * far[-1] + _AHEAD_IN)))  # fmt: skip
        rounding = min(reach, float(far[-1]))  # it goes round where the duct leaves, not before
        past = max(0.0, 1 + (soft - 1) * float(far[-1]) / rounding) if rounding > 0 else soft
        turn = turn0 + swing * past
        eye = here + reach * np.array([1.14 * math.cos(turn), 1.14 * math.sin(turn), 0.35 - 0.15 * soft])
        eye[2] = min(eye[2], highest)
        found.append(Camera(_vec(eye), _vec(here * 0.4 + ahead * 0.6), 52.0))
    return found


def air_dots(plan: Plan, phase: float) -> Array:
    """Give dots along the centre line and a little past its end, `phase` of their spacing farther on; shape (n, 3) [in]."""
    path = air_path(plan)
    blown = (
        path[-1] + np.array(plan.best.route.termination.direction) * _BLOWN_IN if plan.best is not None else path[-1]
    )
    path = np.vstack([path, blown])
    far = np.linalg.norm(np.diff(path, axis=0, prepend=path[:1]), axis=1).cumsum()
    at = np.arange(phase % 1.0, far[-1] / _DOTS_IN, 1.0) * _DOTS_IN
    dots: Array = np.column_stack([np.interp(at, far, path[:, a]) for a in range(3)])
    return dots


def _seen_through(stage: Stage) -> Stage:
    """Give the stage with its sheet metal as glass, so that the air in it is seen."""
    pieces = (
        replace(p, material="clear duct") if p.layer is Layer.DUCT and p.material == "duct" and not p.name.startswith("cap-") else p
        for p in stage.pieces
    )  # fmt: skip
    return replace(stage, pieces=tuple(pieces))


def _frames(
    stage: Stage, cameras: list[Camera], size: tuple[int, int], *, without: frozenset[Layer], air: bool = False
) -> Iterator[Image.Image]:
    from routeviz.views.rendering import Studio

    shown = _seen_through(stage) if air else stage
    with Studio(shown, size, scale=2, occlusion=False, xray=air, without=without) as studio:
        for k, view in enumerate(cameras):
            if air:
                studio.dots(air_dots(stage.plan, k * _DOT_STEP), stage.plan.scene.duct.sections[0].height_in / 7)
            yield Image.fromarray(studio.shoot(view).pixels).resize(size, Image.Resampling.LANCZOS)


def _write_gif(frames: Iterator[Image.Image], path: Path, per_second: int) -> None:
    first, *rest = (f.quantize(128, method=Image.Quantize.MEDIANCUT, dither=Image.Dither.NONE) for f in frames)
    first.save(
        path, format="GIF", save_all=True, append_images=rest, duration=round(1000 / per_second), loop=0, optimize=True
    )


def require_parts(form: str) -> None:
    """See to it that films of a form, gif or mp4, can be made here.

    Raises
    ------
    MissingPartError
        If there is no OpenGL driver, or the part that MP4 needs is not installed.
    """
    if form == "mp4" and find_spec("imageio_ffmpeg") is None:
        raise MissingPartError(
            "MP4 needs the extra part 'motion': pip install 'routeviz[motion]'. GIF works without it."
        )
    gl.require()


def _write_mp4(frames: Iterator[Image.Image], path: Path, size: tuple[int, int], per_second: int) -> None:
    require_parts("mp4")
    import imageio_ffmpeg

    writer = imageio_ffmpeg.write_frames(
        str(path), size, fps=per_second, codec="libx264", quality=7, macro_block_size=2
    )
    writer.send(None)
    try:
        for frame in frames:
            writer.send(np.ascontiguousarray(frame))
    finally:
        writer.close()


def _film(
    stage: Stage,
    cameras: list[Camera],
    path: Path | str,
    size: tuple[int, int],
    per_second: int,
    without: frozenset[Layer],
    *,
    air: bool = False,
) -> Path:
    size = (size[0] // 2 * 2, size[1] // 2 * 2)
    _known(Path(path))
    gl.require()
    return write_film(_frames(stage, cameras, size, without=without, air=air), path, size, per_second)


def _known(target: Path) -> None:
    if target.suffix.lower() not in (".gif", ".mp4"):
        raise ValueError(f"{target.name}: a moving picture is a .gif or an .mp4 file")


def write_film(frames: Iterator[Image.Image], path: Path | str, size: tuple[int, int], per_second: int) -> Path:
    """Write frames as a GIF or MP4 file, whole or not at all; the ending of its name says which.

    Raises
    ------
    MissingPartError
        If MP4 is asked for and its part is not installed.
    ValueError
        If the file is neither .gif nor .mp4.
    """
    target = Path(path)
    _known(target)
    suffix = target.suffix.lower()
    partial = target.with_name(f".{target.stem}.{os.getpid()}.part{suffix}")
    try:
        if suffix == ".gif":
            _write_gif(frames, partial, per_second)
        else:
            _write_mp4(frames, partial, size, per_second)
        os.replace(partial, target)
    finally:
        partial.unlink(missing_ok=True)
    return target


def turntable(
    stage: Stage, path: Path | str, *, size: tuple[int, int] = (800, 500), frames: int = 60, per_second: int = 15
) -> Path:
    """Film a swing round the room into a GIF or MP4 file.

    Raises
    ------
    MissingPartError
        If there is no OpenGL driver, or MP4 is asked for and its part is not installed.
    ValueError
        If the file is neither .gif nor .mp4.
    """
    cameras = turn_cameras(stage, frames, aspect=size[0] / size[1])
    return _film(stage, cameras, path, size, per_second, frozenset({Layer.OUTER}))


def follow_air(
    stage: Stage, path: Path | str, *, size: tuple[int, int] = (800, 500), frames: int = 75, per_second: int = 15
) -> Path:
    """Film the way of the air, from the hood to the cap, into a GIF or MP4 file; walls and duct are seen through.

    Raises
    ------
    MissingPartError
        If there is no OpenGL driver, or MP4 is asked for and its part is not installed.
    ValueError
        If the file is neither .gif nor .mp4, or the plan has no route.
    """
    return _film(
        stage, flight_cameras(stage.plan, frames), path, size, per_second,
        frozenset({Layer.COVER, Layer.OUTER, Layer.ZONES}), air=True,
    )  # fmt: skip
