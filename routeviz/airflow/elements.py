"""A route as the air meets it: elements without places, so that equal ducts are equal values."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import pairwise

from routeviz.airflow.air import COLDEST_F, HIGHEST_FT, HOTTEST_F, LOWEST_FT, Air, air_at
from routeviz.airflow.fittings import CONSTRUCTIONS
from routeviz.model.path import Centreline
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Fan, Scene, SectionShape, SectionSize
from routeviz.model.solids import FaceKind, Vec3

__all__ = [
    "Element",
    "Setting",
    "elements_along",
    "elements_of",
    "insert_transition",
    "main_section",
    "round_section",
    "setting_of",
]

_AXES: tuple[Vec3, Vec3, Vec3] = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))


@dataclass(frozen=True, slots=True)
class Element:
    """One part of a duct without its place.

    `ratio` is the centre-line radius over `plane_in`, the side in the plane of the bend. `spacing_in` is the
    distance between this elbow's corner and the one before (inf for the first), `crossed` how far their planes
    differ (0 one plane, 1 square). `run_in_in` is the duct between the collar and the first elbow's corner.
    """

    kind: PartKind
    section: SectionSize
    section_out: SectionSize
    length_in: float
    material: str
    angle_deg: float = 0.0
    ratio: float = 0.0
    plane_in: float = 0.0
    construction: str = ""
    spacing_in: float = math.inf
    crossed: float = 0.0
    run_in_in: float = math.inf
    roof: bool = False
    with_damper: bool = True


@dataclass(frozen=True, slots=True)
class Setting:
    """What of a scene the air depends on, besides the duct itself."""

    outlet: SectionSize
    fan: Fan
    air: Air
    cap_c: float | None
    transition_in: float
    sections: tuple[SectionSize, ...]  # what else the person would take
    metric: bool
    notes: tuple[str, ...] = ()


def setting_of(scene: Scene) -> Setting:
    """Gather a scene's setting; a site outside what the air laws hold for is taken at their limit and noted."""
    temp, altitude = scene.site.air_temp_f, scene.site.altitude_ft
    near_temp, near_altitude = min(max(temp, COLDEST_F), HOTTEST_F), min(max(altitude, LOWEST_FT), HIGHEST_FT)
    notes = []
    if near_temp != temp:
        notes.append(f"air at {temp:g} degF was taken at {near_temp:g} degF, the limit of the air laws used")
    if near_altitude != altitude:
        notes.append(f"altitude {altitude:g} ft was taken as {near_altitude:g} ft, the limit of the air laws used")
    return Setting(
        outlet=scene.hood.outlet.section,
        fan=scene.hood.fan,
        air=air_at(near_temp, near_altitude),
        cap_c=scene.cap.loss_coefficient,
        transition_in=scene.duct.transition_in,
        sections=scene.duct.sections,
        metric=scene.metric,
        notes=tuple(notes),
    )


def _cross(a: Vec3, b: Vec3) -> Vec3:
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def _dot(a: Vec3, b: Vec3) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def _plane_in(part: Part) -> float:
    """Give the side of the section that lies in the plane of an elbow's bend."""
    section = part.section
    if section.is_round or part.wide is None:
        return section.width_in
    normal = _cross(part.direction, part.turn_to)
    size = math.sqrt(_dot(normal, normal))
    flat = size > 0 and abs(_dot(part.wide, normal)) / size > math.sqrt(0.5)  # the wide side is square to the bend
    return section.height_in if flat else section.width_in


def _crossed(before: Part, after: Part) -> float:
    first, second = _cross(before.direction, before.turn_to), _cross(after.direction, after.turn_to)
    size = math.sqrt(_dot(first, first) * _dot(second, second))
    return 1.0 - min(1.0, abs(_dot(first, second)) / size) if size > 0 else 0.0


def _take_off(part: Part) -> float:
    return part.radius_in * math.tan(math.radians(min(part.angle_deg, 170.0)) / 2)


def _element(part: Part, scene: Scene, roof: bool) -> Element:
    material = part.material or scene.duct.material
    soft = part.kind is PartKind.STRAIGHT and "flex" in material.lower()
    kind = PartKind.FLEX if soft else part.kind
    plain = Element(kind, part.section, part.section_out, part.length_in, material)
    if part.kind is PartKind.CAP:
        return replace(plain, roof=roof, with_damper=scene.cap.damper)
    if part.kind is PartKind.TRANSITION or part.angle_deg <= 0.0:
        return plain
    plane = _plane_in(part)
    construction = part.note if part.note in CONSTRUCTIONS else scene.duct.elbow_construction
    if part.kind is PartKind.FLEX:
        construction = "3-piece"  # a bend of flexible duct is no smoother than the roughest elbow
    radius = part.radius_in if part.kind is PartKind.ELBOW or part.radius_in > 0 else plane
    ratio = 0.0 if construction == "mitre" else radius / plane
    return replace(plain, angle_deg=min(part.angle_deg, 180.0), ratio=ratio, plane_in=plane, construction=construction)


def elements_of(route: Route, scene: Scene) -> tuple[Element, ...]:
    """Give a route's elements, one for each part and in its order."""
    return _elements(route.parts, scene, roof=route.termination.kind is FaceKind.ROOF)


def elements_along(line: Centreline, scene: Scene, *, roof: bool) -> tuple[Element, ...]:
    """Give the elements that a centre line will have as a route: a transition at the outlet, straights, elbows, a cap.

    Parameters
    ----------
    line : Centreline
        From the hood's collar to an exit face.
    roof : bool
        Whether that face is a roof.
    """
    section, material = line.section, scene.duct.material
    parts: list[Part] = []
    spent = scene.transition_in(section)  # of the straight in hand, by the transition or the elbow before
    if spent > 0.0:
        up = (0.0, 0.0, 1.0)
        parts.append(Part("transition", PartKind.TRANSITION, line.points[0], line.points[0], up, up,
                          scene.hood.outlet.section, section, spent, material=material))  # fmt: skip
    runs = list(pairwise(line.points))
    directions = [_direction(a, b) for a, b in runs]
    for number, (start, end) in enumerate(runs):
        bend = line.bends[number] if number < len(line.bends) else None
        cut = bend.radius_in * math.tan(math.radians(bend.angle_deg) / 2) if bend else 0.0
        axis = line.wide_axis[number] if line.wide_axis else None
        wide = None if axis is None else _AXES[axis]
        along, length = directions[number], math.dist(start, end) - spent - cut
        if length > 1e-6:
            parts.append(Part("", PartKind.STRAIGHT, start, end, along, along, section, section, length,
                              wide=wide, material=material))  # fmt: skip
        if bend:
            parts.append(Part("", PartKind.ELBOW, end, end, along, directions[number + 1], section, section,
                              bend.radius_in * math.radians(bend.angle_deg), bend.angle_deg, bend.radius_in,
                              wide=wide, material=material, note=scene.duct.elbow_construction))  # fmt: skip
        spent = cut
    last, end_at = directions[-1], line.points[-1]
    parts.append(Part("cap", PartKind.CAP, end_at, end_at, last, last, section, section, 0.0))
    return _elements(tuple(parts), scene, roof=roof)


def _direction(start: Vec3, end: Vec3) -> Vec3:
    size = math.dist(start, end)
    return ((end[0] - start[0]) / size, (end[1] - start[1]) / size, (end[2] - start[2]) / size)


def _elements(parts: tuple[Part, ...], scene: Scene, *, roof: bool) -> tuple[Element, ...]:
    found: list[Element] = []
    before: Part | None = None
    run, gap = 0.0, 0.0  # duct since the collar, since the last elbow
    for part in parts:
        element = _element(part, scene, roof)
        if element.angle_deg > 0.0:
            cut = _take_off(part)
            if before is None:
                element = replace(element, run_in_in=run + cut)
            else:
                spacing = gap + _take_off(before) + cut
                element = replace(element, spacing_in=spacing, crossed=_crossed(before, part))
            before, gap = part, 0.0
        else:
            gap += part.length_in
            run += part.length_in
        found.append(element)
    return tuple(found)


def main_section(elements: tuple[Element, ...], otherwise: SectionSize) -> SectionSize:
    """Give the section that most of the duct has by length; `otherwise` when it has no length."""
    lengths: dict[SectionSize, float] = {}
    for element in elements:
        if element.section == element.section_out:
            lengths[element.section] = lengths.get(element.section, 0.0) + element.length_in
    longest = max(lengths.values(), default=0.0)
    return next((s for s, length in lengths.items() if length == longest), otherwise) if longest > 0 else otherwise


def insert_transition(elements: tuple[Element, ...], outlet: SectionSize, length_in: float) -> tuple[Element, ...]:
    """Put a transition before the first element when it does not take the hood's outlet as it is."""
    if not elements or elements[0].section == outlet:
        return elements
    first = elements[0]
    return (
        Element(PartKind.TRANSITION, outlet, first.section, length_in, first.material),
        *elements,
    )


def round_section(diameter_in: float) -> SectionSize:
    """Give a round section."""
    return SectionSize(SectionShape.ROUND, diameter_in, diameter_in)
