"""What the house needs: headers, plate ties, fireblocking, patches, the cover, makeup air."""

from __future__ import annotations

import math

from routeviz.catalog import table
from routeviz.geometry import bounds
from routeviz.model.finding import Finding, State
from routeviz.model.members import together
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.route import Penetration, Route
from routeviz.model.scene import Scene, SpaceKind, WallSide
from routeviz.model.solids import FaceKind, Frame, Solid, SolidKind
from routeviz.model.takeoff import BuyLine
from routeviz.takeoff.boxing import boxing_lines
from routeviz.takeoff.cover import as_hung, cover_lines, fits_round
from routeviz.takeoff.heavy import stay_lines
from routeviz.takeoff.holes import block_in, main_axis, on_block
from routeviz.takeoff.lumber import lumber_lines, openings, ruled_words
from routeviz.takeoff.masonry import cored, is_log, making_good, mortar_in, of_board, sleeve_in, sleeved_in
from routeviz.takeoff.mending import is_mended
from routeviz.takeoff.oldholes import closing_lines
from routeviz.takeoff.packing import furring_cut, strip_opening_in
from routeviz.takeoff.strips import behind_board, strip_line
from routeviz.takeoff.words import hole_text, own_in, size_text
from routeviz.takeoff.wrapping import wrap_lines
from routeviz.units import flow_text, length_text

__all__ = ["building_lines", "needs_makeup", "patched", "rounded"]


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
    if not (is_mended(route, findings) and fits_round(findings)):  # such a cover hangs already
        lines += cover_lines(scene, findings) + stay_lines(as_hung(scene, findings))
    lines += boxing_lines(route, scene, findings)
    if needs_makeup(scene, findings):
        lines += _makeup(scene, findings)
    return lines


def _sleeves(route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...]) -> list[BuyLine]:
    """A sleeve for each hole through masonry or concrete, less than the hole by the mortar round it."""
    ruled = {f.ruling.solid: f.ruling.verdict for f in findings if f.ruling is not None}
    found: list[BuyLine] = []
    for crossing in cored(route, frame):
        solid = frame.solid(crossing.solid)
        size = hole_text(crossing.shape, sleeve_in(crossing, metric=scene.metric), metric=scene.metric)
        hole = hole_text(crossing.shape, sleeved_in(crossing), metric=scene.metric)
        length = length_text(crossing.through_in, metric=scene.metric)
        named = ruled_words(solid.label, ruled[solid.id]) if solid.id in ruled else solid.label
        filled = "sealant" if is_log(crossing, frame) else "mortar"
        gap = length_text(mortar_in(metric=scene.metric), metric=scene.metric)
        how = f"in a hole of {hole}, at least {gap} of {filled} all round"
        found.append(BuyLine("sleeve", f"{size}, {length} long", 1, "each", f"{named}; {how}", (solid.id,)))
    return found


def _siding(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """A mounting block, and channel round it, where a wall cap sits on siding."""
    if route.termination.kind is FaceKind.ROOF or not route.capped:
        return []
    for crossing in route.penetrations:
        solid = frame.solid(crossing.solid)
        if solid.kind is SolidKind.CLADDING and on_block(solid):
            side = block_in(route, scene)
            thick = length_text(crossing.through_in, metric=scene.metric)
            lines = [BuyLine("mounting block for the cap", f"{size_text(side, side, metric=scene.metric)}, {thick} thick or more", 1, "each",
                             f"{solid.label}; at least as thick as it, flashed at the top", (solid.id,))]  # fmt: skip
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
    lines = []
    if levels:
        note = "at " + " and ".join(f"{length_text(z, metric=scene.metric)} above the floor" for z in levels)
        lines.append(BuyLine(rows["item"], f"hole {size}", len(levels), "ring", note))
    return lines + _board_seals(route, scene, frame)


def _board_seals(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """Sealant round the duct where it passes a wall's board; one for fire separations where a wall is one."""
    rows = table("stock")["fireblock"]
    passed = [p for p in of_board(route, frame) if main_axis(p.direction) != 2]
    if not passed:
        return []
    garages = {space.id for space in scene.spaces if space.kind is SpaceKind.GARAGE}
    parted = any(frame.solid(p.solid).rated or garages & {p.from_space, p.to_space} for p in passed)
    boards = together(_board(frame.solid(p.solid), scene) for p in passed)
    note = f"where it passes {boards}" + ("; a fire separation: one that is listed for it" if parted else "")
    count = math.ceil(len(passed) / int(rows["boards_per_cartridge"]))
    return [BuyLine(rows["seal"], "round the duct in the board", count, "cartridge", note)]


def _patches(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """Board to make good: round the holes, over framed openings, and strips opened to lay duct behind board."""
    margin = own_in(table("stock")["patch"], "margin", metric=scene.metric)
    strips, furring = behind_board(route, scene), furring_cut(route, frame)
    past = strip_opening_in(metric=scene.metric)
    framed = [o for o in openings(route, frame) if o.upright]
    found: list[BuyLine] = []
    for crossing in of_board(route, frame):
        solid = frame.solid(crossing.solid)
        opening = next((o for o in framed if frame.solid(o.member).side is solid.side), None)
        if opening is not None and main_axis(crossing.direction) != 2:
            # from neighbour stud to neighbour stud, from above the header to below the sill
            size = [opening.header_in, crossing.hole_in[1] + 2 * opening.deep_in + 2 * margin]
            note = f"{_board(solid, scene)}, over the framed opening"
        elif furring and solid.side is WallSide.HOOD and solid.space == "kitchen":
            size = [crossing.hole_in[0] + 2 * margin, crossing.hole_in[1] + 2 * past]
            note = f"{_board(solid, scene)}, round the duct and along {together(furring)}"
        elif _under_cover(crossing, scene) or any(strip.covers(crossing) for strip in strips):
            continue
        else:
            size = [s + 2 * margin for s in crossing.hole_in]
            note = f"{_board(solid, scene)}, round the duct"
        words = size_text(size[0], size[1], metric=scene.metric)
        found.append(BuyLine("board patch", words, 1, "each", note, (solid.id,)))
    return found + [strip_line(strip, scene) for strip in strips]


def _board(solid: Solid, scene: Scene) -> str:
    """Name a board with its thickness, and its side where the hood wall has one on both."""
    box = bounds(solid.shape)
    thick = length_text(min(b - a for a, b in zip(box.lo, box.hi, strict=True)), metric=scene.metric)
    far = solid.side is WallSide.HOOD and box.lo[1] > 0.0
    return f"{solid.label}{'' if thick in solid.label else f' {thick}'}{', far side' if far else ''}"


def patched(route: Route, scene: Scene, frame: Frame) -> bool:
    """Whether any board is left to patch when the duct is in."""
    return bool(_patches(route, scene, frame))


def rounded(route: Route, scene: Scene, frame: Frame) -> bool:
    """Whether board is patched round the duct itself, so that its gap can be closed only after."""
    strips = behind_board(route, scene)
    return any(
        not _under_cover(crossing, scene) or any(strip.covers(crossing) for strip in strips)
        for crossing in of_board(route, frame)
    )


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
