"""From the read tables to the records of the model; every value that was taken for granted is written down."""

from __future__ import annotations

import itertools
from dataclasses import replace
from typing import Any

from routeviz.model.scene import (
    Above,
    AboveKind,
    AsBuilt,
    AsBuiltFitting,
    Beam,
    Burner,
    Cap,
    Ceiling,
    Cooktop,
    Cover,
    DuctChoice,
    Electrical,
    Fan,
    Fastener,
    Hood,
    Kitchen,
    Layer,
    MakerLimits,
    MemberLayout,
    Obstacle,
    Opening,
    OutdoorThing,
    Outlet,
    Roof,
    RoofForm,
    RuleChoice,
    RunDirection,
    Scene,
    Service,
    Site,
    Space,
    Tolerances,
    Waiver,
    Wall,
    WallFrame,
    WallSide,
)  # fmt: skip
from routeviz.scenefile.assumptions import Taken
from routeviz.scenefile.document import Document
from routeviz.scenefile.equipment import HoodTable
from routeviz.scenefile.house import LayerTable, LayoutTable, ObstacleTable, RoofTable, SpaceTable, WallTable
from routeviz.units import length_text

__all__ = ["build"]

_BOARD = (Layer("gypsum board", 0.5),)


def build(document: Document, raw: dict[str, Any], file: str) -> Scene:
    """Give the scene of a document that has passed all checks.

    Parameters
    ----------
    document : Document
        The read tables.
    raw : dict
        The same as TOML gave it; rows are called by the names in it.
    file : str
        Name of the file, without its folder.
    """
    taken = Taken(document, raw)
    taken.marked()
    taken.defaults()
    scene = Scene(
        name=document.name,
        about=document.about,
        file=file,
        metric=document.unit in ("mm", "cm", "m"),
        invented=document.invented,
        site=Site(document.site.altitude, document.site.air_temp, document.site.cold_climate, document.site.snow),
        kitchen=Kitchen(document.kitchen.width, document.kitchen.depth, document.kitchen.ceiling),
        walls=_walls(document, taken),
        ceiling=_ceiling(document, taken),
        above=_above(document, taken),
        roof=_roof_over(document, taken),
        spaces=tuple(_space(s, ("spaces", n), document, taken) for n, s in enumerate(document.spaces)),
        obstacles=tuple(_obstacle(o) for o in document.obstacles),
        cooktop=_cooktop(document),
        hood=_hood(document.hood, document, taken),
        duct=_duct(document, taken),
        cap=Cap(
            document.cap.wall, document.cap.roof, document.cap.damper, document.cap.wall_flange,
            document.cap.roof_stub, document.cap.loss_coefficient, document.cap.overlap,
        ),
        outdoors=tuple(
            OutdoorThing(o.name, o.kind, o.face, o.left, o.bottom, o.width, o.height, o.away) for o in document.outdoors
        ),
        rules=_rules(document),
        as_built=_as_built(document),
        tolerances=Tolerances(
            document.tolerances.studs, document.tolerances.joists, document.tolerances.rafters,
            document.tolerances.openings, document.tolerances.other,
        ),
        assumptions=(),
    )  # fmt: skip
    return replace(scene, assumptions=taken.found())


def _layers(tables: tuple[LayerTable, ...]) -> tuple[Layer, ...]:
    return tuple(Layer(layer.material, layer.thickness) for layer in tables)


def _layers_text(layers: tuple[Layer, ...], taken: Taken) -> str:
    return ", ".join(f"{layer.material} {taken.length(layer.thickness_in)}" for layer in layers) or "none"


def _layers_or(
    given: tuple[LayerTable, ...] | None, default: tuple[Layer, ...], where: tuple[str | int, ...], taken: Taken,
    reason: str = "nothing said of its layers",
) -> tuple[Layer, ...]:  # fmt: skip
    if given is not None:
        return _layers(given)
    taken.note(where, _layers_text(default, taken), reason)
    return default


def _sides(width_in: float, depth_in: float, taken: Taken) -> str:
    """Write real sides with the unit once: ``38 x 184 mm``, ``1 1/2 x 7 1/4 in``."""
    first, second = (length_text(side, metric=taken.metric) for side in (width_in, depth_in))
    return f"{first.rpartition(' ')[0]} x {second}"


def _layout(table: LayoutTable, direction: RunDirection, taken: Taken) -> MemberLayout:
    """Give a layout; measured centres replace first and spacing, which then only describe them."""
    size = table.size
    width = table.width if table.width is not None else (size.width_in if size else 0.0)
    depth = table.depth if table.depth is not None else (size.depth_in if size else 0.0)
    at = table.at
    gaps = [b - a for a, b in itertools.pairwise(at)]
    spacing = table.spacing if table.spacing is not None else min(gaps, default=16.0)
    first = at[0] if at else table.first
    text = size.text if size and size.nominal else _sides(width, depth, taken)
    return MemberLayout(
        table.kind, text, width, depth, spacing, 0.0 if first is None else first, table.direction or direction, at,
        table.doubled, table.missing,
    )  # fmt: skip


def _walls(document: Document, taken: Taken) -> tuple[Wall, ...]:
    walls = []
    for side in WallSide:
        table: WallTable | None = getattr(document.walls, side.value)
        if table is None:
            taken.note(("walls", side.value), "a partition to another room", "not described, so no way out there")
            walls.append(_partition(side, taken))
        else:
            walls.append(_wall(table, side, ("walls", side.value), taken))
    return tuple(walls)


def _partition(side: WallSide, taken: Taken) -> Wall:
    studs = LayoutTable.model_validate({"size": "2x4", "spacing": "16 in", "first": "3/4 in"})
    return Wall(
        side, "room", WallFrame.WOOD, _layout(studs, RunDirection.ALONG, taken), 3.5, True, False, _BOARD, _BOARD
    )  # fmt: skip


def _wall(table: WallTable, side: WallSide, where: tuple[str | int, ...], taken: Taken) -> Wall:
    studs = _layout(table.studs, RunDirection.ALONG, taken) if table.studs else None
    core = table.core if table.core is not None else (studs.depth_in if studs else 0.0)
    hollow = table.frame in (WallFrame.WOOD, WallFrame.STEEL)
    board = _BOARD if hollow else ()
    return Wall(
        side=side,
        beyond=table.beyond,
        frame=table.frame,
        studs=studs,
        core_in=core,
        bearing=table.bearing,
        fire_rated=table.fire_rated,
        inside=_layers_or(table.inside, board, (*where, "inside"), taken),
        outside=_layers_or(table.outside, board, (*where, "outside"), taken),
        plates=table.plates if hollow else 0,
        openings=tuple(
            Opening(o.name, o.kind, o.operable, o.left, o.sill or 0.0, o.width, o.height) for o in table.openings
        ),
        services=tuple(
            Service(s.name, s.kind, s.left, s.bottom, s.width, s.height, s.clearance, s.movable) for s in table.services
        ),
        lot_line_in=table.lot_line,
    )


def _ceiling(document: Document, taken: Taken) -> Ceiling:
    table = document.ceiling
    return Ceiling(
        layers=_layers_or(table.layers, () if table.slab else _BOARD, ("ceiling", "layers"), taken),
        joists=_layout(table.joists, RunDirection.OUT, taken) if table.joists else None,
        beams=tuple(
            Beam(b.name, b.kind, b.width, b.depth, b.direction, b.at, b.bottom, b.start, b.end) for b in table.beams
        ),
        blocking_in=table.blocking,
        rim=table.rim and table.joists is not None,
        slab_in=table.slab,
    )


def _above(document: Document, taken: Taken) -> Above:
    table = document.above
    if table.kind is not AboveKind.STOREY:
        return Above(table.kind, table.storey_height or 0.0, _layers(table.floor or ()))
    height = table.storey_height
    if height is None:
        height = 96.0
        taken.note(("above", "storey_height"), taken.length(height), "nothing said; a usual storey")
    floor = _layers_or(table.floor, (Layer("plywood subfloor", 0.75),), ("above", "floor"), taken)
    return Above(table.kind, height, floor)


def _roof_over(document: Document, taken: Taken) -> Roof | None:
    """Give the roof; None without one, and under a flat on concrete, where the file may keep what it said of one."""
    if document.roof is None:
        return None
    if document.above.kind is AboveKind.SLAB:
        taken.left_out(
            ("roof",), "left out", "a flat or floor lies on the concrete, and no duct gets through that to a roof"
        )
        return None
    return _roof(document.roof, document, taken)


def _roof(table: RoofTable, document: Document, taken: Taken) -> Roof:
    ridge = table.ridge
    ridge_at = table.ridge_at
    if table.form is RoofForm.SHED and table.high_side is not None:
        ridge = RunDirection.ALONG if table.high_side in (WallSide.HOOD, WallSide.FRONT) else RunDirection.OUT
        ends = {WallSide.FRONT: document.kitchen.depth, WallSide.RIGHT: document.kitchen.width}
        ridge_at = ends.get(table.high_side, 0.0) if ridge_at is None else ridge_at
    ridge = ridge or RunDirection.ALONG
    square = RunDirection.OUT if ridge is RunDirection.ALONG else RunDirection.ALONG
    return Roof(
        form=table.form,
        pitch=table.pitch or 0.0,
        ridge=ridge,
        ridge_at_in=ridge_at or 0.0,
        overhang_in=table.overhang,
        framing=_layout(table.framing, square, taken) if table.framing else None,
        layers=_layers_or(
            table.layers, (Layer("plywood deck", 0.5), Layer("shingles", 0.375)), ("roof", "layers"), taken
        ),
        high_side=table.high_side,
        soffit_vented=table.soffit_vented,
        heel_in=table.heel,
    )


def _space(table: SpaceTable, where: tuple[str | int, ...], document: Document, taken: Taken) -> Space:
    along = document.kitchen.width if table.behind in (WallSide.HOOD, WallSide.FRONT) else document.kitchen.depth
    width = taken.value_or(table.width, along, (*where, "width"), "as wide as the wall")
    height = taken.value_or(table.height, document.kitchen.ceiling, (*where, "height"), "as high as the kitchen")
    walls = []
    for side in (WallSide.FRONT, WallSide.LEFT, WallSide.RIGHT):
        wall: WallTable | None = getattr(table.walls, side.value)
        if wall is not None:
            walls.append(_wall(wall, side, (*where, "walls", side.value), taken))
    return Space(
        table.name, table.kind, table.behind, table.deep, table.left, width, table.floor, height, tuple(walls),
        table.duct_allowed, table.above,
    )  # fmt: skip


def _obstacle(o: ObstacleTable) -> Obstacle:
    return Obstacle(
        o.name, o.kind, o.left, o.out, o.bottom, o.width, o.depth, o.height, o.clearance, o.combustible, o.protected,
        o.cut_allowed, o.hides_duct, o.diameter, o.ends_at,
    )  # fmt: skip


def _cooktop(document: Document) -> Cooktop:
    table = document.cooktop
    burners = tuple(Burner(b.across, b.from_back, b.diameter, b.heat) for b in table.burners)
    return Cooktop(
        table.kind, table.centre, table.width, table.depth, table.height, table.back, table.heat, burners, table.counter
    )


def _hood(table: HoodTable, document: Document, taken: Taken) -> Hood:
    outlet, cover, fan, electrical = table.outlet, table.cover, table.fan, table.electrical
    centre = taken.value_or(table.centre, document.cooktop.centre, ("hood", "centre"), "over the cooktop")
    return Hood(
        width_in=table.width,
        depth_in=table.depth,
        body_in=table.body,
        canopy_in=table.canopy,
        weight_lb=table.weight,
        centre_in=centre,
        mount_in=table.mount,
        outlet=Outlet(
            outlet.place, outlet.section, outlet.across, outlet.out or 0.0, outlet.up or 0.0, outlet.collar
        ),
        cover=Cover(cover.min, cover.max, cover.width, cover.depth) if cover else None,
        fan=Fan(fan.rated, fan.rated_at, fan.curve, fan.speeds),
        fasteners=tuple(Fastener(f.across, f.up, f.row) for f in table.fasteners),
        electrical=Electrical(
            electrical.across, electrical.up, electrical.volts, electrical.hertz, electrical.amps, electrical.cord,
            electrical.dedicated,
        ) if electrical else None,
    )  # fmt: skip


def _duct(document: Document, taken: Taken) -> DuctChoice:
    table = document.duct
    sections = table.sections
    if sections is None:
        sections = (document.hood.outlet.section,)
        taken.note(("duct", "sections"), taken.section(sections[0]), "as the hood's outlet")
    return DuctChoice(
        sections, table.material, table.elbow_radius, table.elbow_ratio, table.elbow_construction, table.max_elbows,
        table.min_straight, table.first_run, table.last_run, table.clearance, table.stock, table.overlap,
        table.offset_angles, table.offset_max, table.boxing_allowed, table.transition, table.sheet, table.insulation_r,
    )  # fmt: skip


def _rules(document: Document) -> RuleChoice:
    table = document.rules
    m = table.maker
    maker = MakerLimits(
        m.hood_min, m.hood_max, m.cabinet_above, m.side_clearance, m.side_cabinet_up, m.duct_min, m.max_equivalent,
        m.member_hole, m.joist_flange, m.document,
    )  # fmt: skip
    waivers = tuple(Waiver(w.code, w.reason, w.by) for w in table.waivers)
    return RuleChoice(table.profile, maker, waivers, table.open_flue_appliance, table.tight_house, table.makeup_air)


def _as_built(document: Document) -> AsBuilt | None:
    table = document.as_built
    if table is None:
        return None
    fittings = tuple(AsBuiltFitting(f.part, f.length, f.angle, f.turn, f.to_section, f.ends_in) for f in table.fittings)
    return AsBuilt(fittings, table.material, table.note, table.screws_per_joint)
