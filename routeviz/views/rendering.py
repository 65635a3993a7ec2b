"""A stage in front of an off-screen camera; the only module here that loads VTK."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Self

import numpy as np
import numpy.typing as npt
import pyvista as pv
import trimesh
from vtkmodules.util.numpy_support import vtk_to_numpy
from vtkmodules.vtkCommonCore import vtkLogger, vtkObject
from vtkmodules.vtkRenderingCore import vtkWindowToImageFilter

from routeviz.views.palette import MATERIALS, TEAL, Finish
from routeviz.views.parts import Layer, Piece
from routeviz.views.shapes import Mesh
from routeviz.views.stage import Stage
from routeviz.views.viewpoints import Camera

__all__ = ["Shot", "Studio", "furnish", "light_up", "shoot"]

# nothing that the library says of its drivers is for the person who asked for a picture
vtkObject.GlobalWarningDisplayOff()
vtkLogger.SetStderrVerbosity(vtkLogger.VERBOSITY_OFF)

Pixels = npt.NDArray[np.uint8]

# position, what it shines at, strength, colour; few, because software drawing pays for each of them at every pixel
_FROM_ROOM = (
    ((230, -250, 240), (70, -20, 70), 0.52, "#fff4e4"), ((-90, -220, 110), (80, -10, 80), 0.40, "#eef3ff"),
    ((110, -190, 10), (72, -10, 110), 0.30, "#ffffff"),
)  # fmt: skip
_CREASE_DEG = 28.0


@dataclass(frozen=True)
class Shot:
    """A drawn picture [h, w, 3] and, for each pixel, how far off the surface seen there is [in]; inf for the ground."""

    pixels: Pixels
    depth: npt.NDArray[np.float64]


def _wrap(meshes: Sequence[Mesh]) -> pv.PolyData:
    """Join meshes into one surface, so that a picture needs few draw calls."""
    offsets = np.cumsum([0, *(len(m.vertices) for m in meshes)])
    points = np.vstack([np.asarray(m.vertices, float) for m in meshes])
    faces = np.vstack([np.asarray(m.faces) + o for m, o in zip(meshes, offsets, strict=False)])
    return pv.PolyData(points, np.c_[np.full(len(faces), 3), faces].ravel())


@dataclass(frozen=True)
class _Light:
    """How a surface answers light."""

    ambient: float
    diffuse: float
    specular: float = 0.0
    power: float = 1.0


_FLAT, _GLASSY = _Light(0.85, 0.25), _Light(0.9, 0.1)
_METAL, _MATT = _Light(0.40, 0.58, 0.6, 18), _Light(0.45, 0.56, 0.03)


Lamp = tuple[tuple[float, float, float], tuple[float, float, float], float, str]


def _lights(camera: Camera) -> tuple[Lamp, ...]:
    """Give the lamps: fixed ones for who stands in the room, a sun over the left shoulder for who stands outdoors."""
    if camera.eye[1] <= 0:
        return _FROM_ROOM
    eye, target = np.array(camera.eye), np.array(camera.target)
    right = np.cross(target - eye, [0, 0, 1.0])
    right /= np.linalg.norm(right)
    reach = float(np.linalg.norm(target - eye))
    sun = eye - right * reach * 0.7 + np.array([0, 0, reach * 0.9])
    sky = eye + right * reach + np.array([0, 0, reach * 0.3])
    return (
        ((sun[0], sun[1], sun[2]), camera.target, 0.62, "#fff4e4"),
        ((sky[0], sky[1], sky[2]), camera.target, 0.36, "#eef3ff"),
    )


def _light(finish: Finish) -> _Light:
    if finish.opacity < 0.3:
        return _GLASSY
    return _METAL if finish.metal else _MATT


def _polylines(lines: Sequence[npt.NDArray[np.float64]]) -> pv.PolyData:
    cells, points, at = [], [], 0
    for line in lines:
        cells += [len(line), *range(at, at + len(line))]
        points.append(np.asarray(line, float))
        at += len(line)
    made = pv.PolyData()
    made.points = np.vstack(points)
    made.lines = np.array(cells)
    return made


def _draw_lines(plotter: pv.Plotter, lines: pv.PolyData, colour: str, scale: int) -> None:
    actor = plotter.add_mesh(lines, color=colour, line_width=1.1 * scale, lighting=False, reset_camera=False)
    actor.mapper.SetResolveCoincidentTopologyToPolygonOffset()
    actor.mapper.SetRelativeCoincidentTopologyLineOffsetParameters(-0.6, -1)


def _add(plotter: pv.Plotter, pieces: Sequence[Piece], scale: int, *, ghosted: bool) -> None:
    """Draw pieces of one material and shading."""
    first = pieces[0]
    finish = MATERIALS[first.material]
    surface = _wrap([p.mesh for p in pieces])
    bars = first.material.startswith("bar ")
    light = _FLAT if bars else _light(finish)
    plotter.add_mesh(
        surface, color=finish.colour, opacity=0.16 if ghosted else finish.opacity, smooth_shading=first.smooth,
        split_sharp_edges=first.smooth, feature_angle=35.0, reset_camera=False, ambient=light.ambient,
        diffuse=light.diffuse, specular=light.specular, specular_power=light.power,
    )  # fmt: skip
    edge = TEAL if first.layer is Layer.ZONES else finish.edge
    if finish.edges and not ghosted and not (first.smooth and not finish.metal):
        edges = surface.extract_feature_edges(
            feature_angle=60.0 if first.smooth else _CREASE_DEG, boundary_edges=False, manifold_edges=False,
            non_manifold_edges=False,
        )  # fmt: skip
        if edges.n_points:
            _draw_lines(plotter, edges, edge, scale)
    lines = [line for p in pieces for line in p.lines]
    if lines:
        _draw_lines(plotter, _polylines(lines), edge, scale)


def _batches(
    stage: Stage, without: frozenset[Layer], glassy: frozenset[Layer]
) -> dict[tuple[object, ...], list[Piece]]:
    found: dict[tuple[object, ...], list[Piece]] = {}
    for piece in stage.pieces:
        if piece.layer not in without:
            key = (piece.material, piece.smooth, piece.layer in glassy, piece.layer is Layer.ZONES)
            found.setdefault(key, []).append(piece)
    return found


def _depths(stage: Stage, camera: Camera) -> tuple[float, float]:
    """Give the nearest and farthest depth worth drawing [in]; a near plane close to the subject keeps lines crisp."""
    corners = np.vstack([trimesh.bounds.corners(p.mesh.bounds) for p in stage.pieces])
    eye = np.array(camera.eye)
    ahead = np.array(camera.target) - eye
    distance = float(np.linalg.norm(ahead))
    depth = (corners - eye) @ (ahead / distance)
    return max(0.12 * distance, float(depth.min()) - 2), max(float(depth.max()) + 2, distance)


def _far(plotter: pv.Plotter) -> npt.NDArray[np.float64]:
    """Read how far off each pixel's surface is [in] from the depth buffer of what was just drawn."""
    reader = vtkWindowToImageFilter()
    reader.SetInput(plotter.render_window)
    reader.ReadFrontBufferOff()
    reader.ShouldRerenderOff()
    reader.SetInputBufferTypeToZBuffer()
    reader.Update()
    image = reader.GetOutput()
    width, height, _ = image.GetDimensions()
    share = vtk_to_numpy(image.GetPointData().GetScalars()).reshape(height, width)[::-1].astype(float)
    near, far = plotter.camera.clipping_range
    depth: npt.NDArray[np.float64] = np.where(share >= 1.0, np.inf, near * far / (far - share * (far - near)))
    return depth


def furnish(
    plotter: pv.Plotter, stage: Stage, *, scale: int = 1, without: frozenset[Layer] = frozenset(),
    glassy: frozenset[Layer] = frozenset(),
) -> None:  # fmt: skip
    """Put a stage's pieces into a plotter; `glassy` layers are drawn as glass."""
    for key, pieces in _batches(stage, without, glassy).items():
        _add(plotter, pieces, scale, ghosted=bool(key[2]))


def light_up(plotter: pv.Plotter, camera: Camera) -> None:
    """Set the lamps for who stands at a camera."""
    plotter.renderer.remove_all_lights()
    for position, focus, intensity, colour in _lights(camera):
        plotter.add_light(
            pv.Light(position=position, focal_point=focus, intensity=intensity, color=colour, light_type="scene light")
        )


class Studio:
    """A stage set up once before an off-screen camera; close it, or use it in a ``with`` statement.

    Parameters
    ----------
    size : tuple of int
        Width and height of the finished picture; it is drawn `scale` times larger.
    occlusion : bool
        Soft shade in corners. It differs a little from run to run, so pictures that are compared go without.
    xray : bool
        Draw board, outer skin and cabinets as glass, so that the framing shows.
    without : frozenset of Layer
        Layers to leave away.
    """

    def __init__(
        self, stage: Stage, size: tuple[int, int], *, scale: int = 2, occlusion: bool = True, xray: bool = False,
        without: frozenset[Layer] = frozenset(),
    ) -> None:  # fmt: skip
        self.stage, self._shown = stage, False
        self._plotter = pv.Plotter(off_screen=True, window_size=[size[0] * scale, size[1] * scale], lighting="none")
        pv.Plotter.set_background(self._plotter, "#ece4d6", top="#f8f4ec")
        glassy = frozenset({Layer.BOARD, Layer.SKIN, Layer.KITCHEN, Layer.ROOF} if xray else ())
        furnish(self._plotter, stage, scale=scale, without=without, glassy=glassy)
        self._plotter.renderer.disable_anti_aliasing()
        window = self._plotter.render_window
        if window is not None:
            window.SetMultiSamples(0)
        if occlusion:
            self._plotter.renderer.enable_ssao(radius=9, bias=0.3, kernel_size=32, blur=True)

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def close(self) -> None:
        """Give the window back."""
        self._plotter.close()

    def dots(self, places: npt.NDArray[np.float64], radius: float) -> None:
        """Put dots of a radius [in] into the stage in place of those before; places of shape (n, 3) [in]."""
        ball = trimesh.creation.icosphere(subdivisions=2, radius=radius)
        balls = [ball.copy().apply_translation(place) for place in places]
        self._plotter.add_mesh(
            _wrap(balls), name="dots", color=TEAL, lighting=False, reset_camera=False, render=False
        )  # fmt: skip

    def shoot(self, camera: Camera) -> Shot:
        """Draw the stage from one place."""
        light_up(self._plotter, camera)
        self._plotter.camera_position = [camera.eye, camera.target, camera.up]
        self._plotter.camera.view_angle = camera.angle_deg
        self._plotter.camera.clipping_range = _depths(self.stage, camera)
        if self._shown:
            self._plotter.render()  # the first picture is drawn by asking for it, later ones are not
        self._shown = True
        pixels = np.asarray(pv.Plotter.screenshot(self._plotter, return_img=True))[..., :3]
        return Shot(pixels, _far(self._plotter))


def shoot(
    stage: Stage, camera: Camera, size: tuple[int, int], *, scale: int = 2, occlusion: bool = True, xray: bool = False,
    without: frozenset[Layer] = frozenset(),
) -> Shot:  # fmt: skip
    """Draw one picture of a stage; the parameters are those of `Studio`."""
    with Studio(stage, size, scale=scale, occlusion=occlusion, xray=xray, without=without) as studio:
        return studio.shoot(camera)
