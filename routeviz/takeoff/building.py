"""What the house needs: headers, plate ties, fireblocking, patches, the cover, makeup air."""

from __future__ import annotations

from routeviz.catalog import table
from routeviz.model.finding import Finding, State
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.route import Part, PartKind, Penetration, Route
from routeviz.model.scene import AboveKind, Scene, WallSide
from routeviz.model.solids import FaceKind, Frame, SolidKind
from routeviz.model.takeoff import BuyLine
from routeviz.takeoff.boxing import boxing_lines
from routeviz.takeoff.cover import as_hung, cover_lines
from routeviz.takeoff.heavy import stay_lines
from routeviz.takeoff.holes import block_in, main_axis, on_block
from routeviz.takeoff.lumber import lumber_lines, openings
from routeviz.takeoff.masonry import cored, is_log, making_good, of_board, sleeved_in
from routeviz.takeoff.oldholes import closing_lines
from routeviz.takeoff.words import hole_text, size_text
from routeviz.takeoff.wrapping import wrap_lines
from routeviz.units import flow_text, length_text

__all__ = ["behind_board", "building_lines", "needs_makeup", "patched"]

_SIDE_OPEN_IN = 24.0  # duct this far above the ceiling is reached from above


def building_lines(route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...]) -> list[BuyLine]:
    """Give everything that is not duct: ties, fireblocking, wrap, patches, cover work, makeup air."""
    lines = lumber_lines(route, scene, frame, findings)
    lines += _sleeves(route, scene, frame, findings)
    lines += _siding(route, scene, frame)
    lines += _fireblocks(route, scene, frame)
    lines += wrap_lines(route, scene, frame)
    lines += _patches(route, as_hung(scene, findings), frame)
    lines += making_good(route, scene, frame)
    lines += closing_lines(route, scene, frame)
    lines += cover_lines(scene, findings) + stay_lines(as_hung(scene, findings)) + boxing_lines(route, scene, findings)
    if needs_makeup(scene, findings):
        lines += _makeup(scene, findings)
    return lines


def _sleeves(route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...]) -> list[BuyLine]:
    """A sleeve for each hole through masonry or concrete, in the sizes of the hole."""
    ruled = {f.ruling.solid: f.ruling.verdict.value for f in findings if f.ruling is not None}
    found: list[BuyLine] = []
    for crossing in cored(route, frame):
        solid = frame.solid(crossing.solid)
        size = hole_text(crossing.shape, sleeved_in(crossing), metric=scene.metric)
        length = length_text(crossing.through_in, metric=scene.metric)
        named = f"{solid.label}: {ruled[solid.id]}" if solid.id in ruled else solid.label
        how = "sealed in" if is_log(crossing, frame) else "mortared in"
        found.append(
            BuyLine("sleeve", f"{size}, {length} long", 1, "each", f"{named}; {how}, made good round it", (solid.id,))
        )
    return found


def _siding(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """A mounting block, and channel round it, where a wall cap sits on siding."""
    if route.termination.kind is FaceKind.ROOF or not route.capped:
        return []
    for crossing in route.penetrations:
        solid = frame.solid(crossing.solid)
        if solid.kind is SolidKind.CLADDING and on_block(solid):
            side = block_in(route, scene)
            lines = [BuyLine("mounting block for the cap", size_text(side, side, metric=scene.metric), 1, "each",
                             f"{solid.label}; flashed at the top", (solid.id,))]  # fmt: skip
            kind = "J-channel" if "vinyl" in solid.label.lower() + solid.material.lower() else "trim channel"
            around = length_text(4 * side, metric=scene.metric)
            return [*lines, BuyLine(f"{kind} round the block", around, 1, "each", "siding slides into it", (solid.id,))]
    return []


def _fireblocks(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """One ring at each ceiling and floor level that the duct passes: board or subfloor crossed on the way up."""
    rows = table("stock")["fireblock"]
    levels: list[float] = []
    size = ""
    for crossing in route.penetrations:
        kind = frame.solid(crossing.solid).kind
        if kind not in (SolidKind.BOARD, SolidKind.SUBFLOOR, SolidKind.SLAB) or main_axis(crossing.direction) != 2:
            continue
        if all(abs(crossing.centre[2] - z) > 3.0 for z in levels):
            levels.append(crossing.centre[2])
        size = hole_text(crossing.shape, crossing.hole_in, metric=scene.metric)
    if not levels:
        return []
    note = "at " + " and ".join(f"{length_text(z, metric=scene.metric)} above the floor" for z in levels)
    return [BuyLine(rows["item"], f"hole {size}", len(levels), "ring", note)]


def _patches(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """Board to make good: round the holes, over framed openings, and strips opened to lay duct behind board."""
    margin = float(table("stock")["patch"]["margin_in"])
    framed = [o for o in openings(route, frame) if o.upright]
    found: list[BuyLine] = []
    for crossing in of_board(route, frame):
        solid = frame.solid(crossing.solid)
        opening = next((o for o in framed if frame.solid(o.member).side is solid.side), None)
        if opening is not None and main_axis(crossing.direction) != 2:
            # from neighbour stud to neighbour stud, from above the header to below the sill
            size = [opening.header_in, crossing.hole_in[1] + 2 * opening.deep_in + 2 * margin]
            note = f"{solid.label}, over the framed opening"
        elif _under_cover(crossing, scene):
            continue
        else:
            size = [s + 2 * margin for s in crossing.hole_in]
            note = f"{solid.label}, round the duct"
        words = size_text(size[0], size[1], metric=scene.metric)
        found.append(BuyLine("board patch", words, 1, "each", note, (solid.id,)))
    found += [_strip(p.id, p.length_in, scene, where) for p, where in behind_board(route, scene)]
    return found


def patched(route: Route, scene: Scene, frame: Frame) -> bool:
    """Whether any board is left to patch when the duct is in."""
    return bool(_patches(route, scene, frame))


def _under_cover(crossing: Penetration, scene: Scene) -> bool:
    """Whether the hood's cover hides the hole."""
    cover, hood = scene.hood.cover, scene.hood
    if cover is None or main_axis(crossing.direction) == 0:
        return False
    x, y, z = crossing.centre
    if abs(x - hood.centre_in) + crossing.level_in[0] / 2 > cover.width_in / 2:
        return False
    if main_axis(crossing.direction) == 2:
        return -y + crossing.level_in[1] / 2 <= cover.depth_in and abs(z - ceiling_at_in(scene, x)) < 3.0
    bottom, face = scene.hood_bottom_in, scene.wall(WallSide.HOOD).thickness_in / 2
    return bottom is not None and bottom <= z <= ceiling_at_in(scene, x) and y < face  # not on the wall's far side


def behind_board(route: Route, scene: Scene) -> list[tuple[Part, str]]:
    """Give the straights that lie behind wallboard or above a ceiling that is reached from below only."""
    deep = scene.wall(WallSide.HOOD).thickness_in
    found: list[tuple[Part, str]] = []
    for part in route.parts:
        if part.kind is not PartKind.STRAIGHT:
            continue
        middle = [(a + b) / 2 for a, b in zip(part.start, part.end, strict=True)]
        ceiling = ceiling_at_in(scene, middle[0])
        flat = abs(part.direction[2]) < 0.1
        in_wall = 0.0 < middle[1] < deep and abs(part.direction[1]) < 0.1
        if in_wall and middle[2] < ceiling:
            found.append((part, "wallboard, in front of the duct"))
        elif (
            flat
            and ceiling < middle[2] < ceiling + _SIDE_OPEN_IN
            and middle[1] < 0.0
            and scene.above.kind is AboveKind.STOREY
        ):
            found.append((part, "ceiling board, under the duct"))
    return found


def _strip(part: str, length_in: float, scene: Scene, where: str) -> BuyLine:
    spacing = 16.0
    members = scene.ceiling.joists if where.startswith("ceiling") else scene.wall(WallSide.HOOD).studs
    if members is not None:
        spacing = members.spacing_in
    return BuyLine(
        "board to open and patch", size_text(spacing, length_in, metric=scene.metric), 1, "strip",
        f"{where}, from member to member", (part,),
    )  # fmt: skip


def needs_makeup(scene: Scene, findings: tuple[Finding, ...]) -> bool:
    """Whether makeup air must be bought: asked for by a finding, planned by the scene, else by the flow alone.

    A scene that plans makeup air satisfies the rule, and still has to buy it.
    """
    above = _makeup_cfm(scene, findings) > float(table("stock")["makeup"]["over_cfm"])
    if scene.rules.makeup_air:
        return above
    said = [f for f in findings if f.code == "AIR-MAKEUP"]
    if said:
        return any(f.state in (State.BROKEN, State.CLOSE) for f in said)
    return above


def _makeup_cfm(scene: Scene, findings: tuple[Finding, ...]) -> float:
    """Give the flow that the makeup air is judged by: the greatest that a finding names, else the label's."""
    said = [f.measured for f in findings if f.code == "AIR-MAKEUP" and f.measured is not None]
    return max(scene.hood.fan.rated_cfm, *said) if said else scene.hood.fan.rated_cfm


def _makeup(scene: Scene, findings: tuple[Finding, ...]) -> list[BuyLine]:
    flow = flow_text(_makeup_cfm(scene, findings), metric=scene.metric)
    away = "3 m" if scene.metric else "10 ft"
    return [
        BuyLine("makeup-air damper, opens when the hood runs", flow, 1, "each", "size by its maker's table"),
        BuyLine("makeup-air inlet hood with screen", flow, 1, "each", f"{away} from the cap, clear of flues"),
        BuyLine("interlock for the makeup-air damper", "current or pressure switch", 1, "each"),
    ]
