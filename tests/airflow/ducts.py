"""Routes by hand for the air tests: straights and elbows laid end to end, upwards from the hood."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import samples

from routeviz.model.route import Part, PartKind, Route, Termination
from routeviz.model.scene import Cap, Fan, Outlet, Scene, SectionShape, SectionSize
from routeviz.model.solids import FaceKind, Vec3

UP: Vec3 = (0.0, 0.0, 1.0)
BACK: Vec3 = (0.0, 1.0, 0.0)
RIGHT: Vec3 = (1.0, 0.0, 0.0)

CURVE = ((0.0, 0.9), (200.0, 0.75), (400.0, 0.35), (480.0, 0.0))


def round_duct(diameter: float) -> SectionSize:
    return SectionSize(SectionShape.ROUND, diameter, diameter)


STACK = SectionSize(SectionShape.RECT, 10.0, 3.25)


def _along(at: Vec3, direction: Vec3, length: float) -> Vec3:
    return (at[0] + direction[0] * length, at[1] + direction[1] * length, at[2] + direction[2] * length)


class Duct:
    """Lays parts one after another; `route` closes with a cap."""

    def __init__(self, section: SectionSize, *, material: str = "galvanized steel", wide: Vec3 | None = None) -> None:
        self.section, self.material, self.wide = section, material, wide
        self.first = section
        self.at: Vec3 = (0.0, 0.0, 0.0)
        self.direction: Vec3 = UP
        self.parts: list[Part] = []

    def _add(self, kind: PartKind, length: float, to: Vec3, **more: Any) -> Duct:
        part = Part(
            f"{kind.value}-{len(self.parts) + 1}", kind, self.at, to, self.direction,
            more.pop("turn_to", self.direction), self.section, more.pop("section_out", self.section), length,
            wide=self.wide, material=more.pop("material", self.material), **more,
        )  # fmt: skip
        self.parts.append(part)
        self.at, self.direction, self.section = part.end, part.turn_to, part.section_out
        return self

    def straight(self, feet: float) -> Duct:
        return self._add(PartKind.STRAIGHT, feet * 12, _along(self.at, self.direction, feet * 12))

    def flex(self, feet: float) -> Duct:
        return self._add(PartKind.FLEX, feet * 12, _along(self.at, self.direction, feet * 12), material="flexible duct")

    def elbow(
        self, toward: Vec3 = BACK, angle: float = 90.0, *, ratio: float = 1.0, construction: str = "4-piece"
    ) -> Duct:
        t = math.radians(angle)
        after: Vec3 = tuple(  # type: ignore[assignment]
            d * math.cos(t) + a * math.sin(t) for d, a in zip(self.direction, toward, strict=True)
        )
        radius = ratio * self.section.width_in
        corner = _along(self.at, self.direction, radius * math.tan(t / 2))
        return self._add(
            PartKind.ELBOW, radius * t, _along(corner, after, radius * math.tan(t / 2)), turn_to=after,
            angle_deg=angle, radius_in=radius, corner=corner, note=construction,
        )  # fmt: skip

    def reduce(self, section: SectionSize, length: float = 6.0) -> Duct:
        return self._add(PartKind.TRANSITION, length, _along(self.at, self.direction, length), section_out=section)

    def damper(self) -> Duct:
        return self._add(PartKind.DAMPER, 0.0, self.at)

    def open_end(self) -> Duct:
        return self._add(PartKind.OPEN_END, 0.0, self.at)

    def route(self, kind: FaceKind | None = FaceKind.WALL, *, cap: bool = True) -> Route:
        if cap:
            self._add(PartKind.CAP, 0.0, self.at)
        elbows = [p for p in self.parts if p.kind is PartKind.ELBOW]
        return Route(
            id="A", centreline=None, parts=tuple(self.parts), section=self.first,
            length_in=sum(p.length_in for p in self.parts), elbows=sum(p.angle_deg for p in elbows) / 90,
            straights_between_in=(), boxed_in=0.0, penetrations=(),
            termination=Termination("hood", kind, "outdoors", self.at, self.direction, "wall cap"), near=(),
        )  # fmt: skip


def scene_with(
    fan: Fan | None = None, *, outlet: SectionSize | None = None, cap: Cap | None = None, **changes: Any
) -> Scene:
    """Give the sample scene with a known fan, and another outlet or cap."""
    plain: Scene = samples.scene(**changes)
    hood = replace(plain.hood, fan=fan or Fan(400.0, 0.1, CURVE))
    if outlet is not None:
        hood = replace(hood, outlet=Outlet("top", outlet, 0.0, 8.5))
    return replace(plain, hood=hood, cap=cap or plain.cap)


def label(cfm: float, at: float | None = None) -> Fan:
    """Give a fan of which only its label is known."""
    return Fan(cfm, at)
