"""The second half of the work: the duct, what closes the house again, the hood, the test."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.model.finding import Finding
from routeviz.model.route import PartKind, Route
from routeviz.model.scene import CooktopKind, Scene
from routeviz.model.solids import FaceKind, Frame, SolidKind
from routeviz.model.takeoff import Mark, Sheet, Step
from routeviz.takeoff.backing import backing_words, needs_backing
from routeviz.takeoff.boxing import box_steps
from routeviz.takeoff.building import needs_makeup, patched, rounded
from routeviz.takeoff.cautions import outside_caution
from routeviz.takeoff.cover import as_hung, cover_steps
from routeviz.takeoff.hangers import hanger_places, hangers
from routeviz.takeoff.heavy import is_heavy, weight_text
from routeviz.takeoff.holes import main_axis, on_block
from routeviz.takeoff.joining import from_behind, joint_words, of_step
from routeviz.takeoff.lumber import cut_members
from routeviz.takeoff.marks import bracket_words
from routeviz.takeoff.masonry import plastered
from routeviz.takeoff.oldholes import FACE, old_hole_steps
from routeviz.takeoff.packing import opened_plaster, pack_steps
from routeviz.takeoff.wrapping import wrap_steps
from routeviz.units import drill_text, length_text

__all__ = ["closing_steps", "duct_steps", "end_steps", "hood_steps"]


def duct_steps(route: Route, scene: Scene, frame: Frame, fall: str = "") -> list[Step]:
    """Give the laying of the duct, from cutting to the cap; `fall` is what its level run falls by, in words."""
    elbows = ", set the elbows to their angles" if any(p.kind is PartKind.ELBOW for p in route.parts) else ""
    slope = f" Let the level run fall towards the cap, {fall} over its length." if fall else ""
    steps = [
        Step("cut-duct", f"Cut the straights to the cut list{elbows} and lay the run out dry on the floor.",
             ("outside", "inside", "sleeve", "rise"), "Laid out, it is as long as the route; what goes over a collar or into the cap comes on top.",
             "Cut sheet metal is sharp: gloves.", Sheet.CUTS),
        Step("run", f"Put the duct in from the hood's end outwards, crimped ends pointing with the air.{slope}",
             ("cut-duct", "ties", "frame"), "Clear of every member by the drawn distance; slope, if any, to outdoors.",
             "", Sheet.SECTION),
    ]  # fmt: skip
    straps = hangers(route)
    if straps:
        one = "a strap" if len(straps) == 1 else "straps"
        places = hanger_places(route, straps, metric=scene.metric)
        steps.append(
            Step("hang", f"Hang it with {one} {places}.", ("run",), "No strap crushes the duct.", "", Sheet.PARTS)
        )
    inner = of_step(route, scene, frame, "run")
    if inner:
        waits = [where for where in ("hood", "cap") if of_step(route, scene, frame, where)]
        later = (
            "",
            f"; the joint at the {waits[0]} comes later" if waits else "",
            "; the joints at hood and cap come later",
        )
        many, them = ("joint", "it") if len(inner) == 1 else ("joints", "them")
        steps.append(
            Step("seal", f"Screw the run's own {many}, {joint_words(inner)}, then seal {them}{later[len(waits)]}.",
                 ("run", "hang"), "Screws do not reach further in than they must.", "", Sheet.PARTS)
        )  # fmt: skip
    return steps + _cap_steps(route, scene, frame)


def _cap_steps(route: Route, scene: Scene, frame: Frame) -> list[Step]:
    """Give the setting of the cap with its own joint, after an old hole beside it is closed."""
    if not route.capped:
        return []
    made = of_step(route, scene, frame, "cap")
    joint = f"{_capital(joint_words(made))} through its collar into the duct, sealed" if made else ""
    if route.termination.kind is FaceKind.ROOF:
        how = "Set flashing and cap: upper edge under the covering, lower edge over it."
        how += f" {joint}." if joint else ""
    else:
        how = (
            f"Set the cap over the duct's end. {joint}, from behind or past the open flap. "
            if joint
            else "Set the cap. "
        )
        how += "Then seal its flange at the top and the sides."
        if any(on_block(frame.solid(p.solid)) for p in route.penetrations):
            how = f"Set the mounting block into the siding with its channel, flashed at the top. {how}"
    closed = tuple(s.id for s in old_hole_steps(route, scene, frame))
    return [Step("cap", how, ("run", "hang", "seal", *(n for n in closed if not n.endswith(FACE))),
                 "The damper swings free by hand and falls shut; no screen in the way, no screw in its path.",
                 outside_caution(route), Sheet.OUTSIDE)]  # fmt: skip


def _capital(words: str) -> str:
    return f"{words[:1].upper()}{words[1:]}"


def closing_steps(
    route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...], marks: tuple[Mark, ...]
) -> list[Step]:
    """Give what is closed and looked at before the boards are: fireblocking, wrap, makeup air, supply, inspection."""
    steps: list[Step] = []
    hung = as_hung(scene, findings)
    sheets = (SolidKind.BOARD, SolidKind.SUBFLOOR, SolidKind.SLAB)
    passed = [p for p in route.penetrations if frame.solid(p.solid).kind in sheets and not plastered(p, route, frame)]
    if passed:
        level = [main_axis(p.direction) == 2 for p in passed]
        where = ["at ceiling and floor level with fireblocking"] if any(level) else []
        where += [] if all(level) else ["where it passes a wall's board with fireblocking sealant"]
        # where board round the duct is patched or an old hole beside it closed, the gap has its edge only then
        holes = tuple(s.id for s in old_hole_steps(route, scene, frame))
        late = ("patch",) if opened_plaster(route, scene, frame, marks) or rounded(route, hung, frame) else ()
        steps.append(Step("fireblock", f"Close the gaps round the duct {', and '.join(where)}.",
                          ("run", "seal", *holes, *late), "", "", Sheet.PARTS))  # fmt: skip
    steps += wrap_steps(route, scene, frame)
    if needs_makeup(scene, findings):
        steps.append(Step("makeup", "Fit the makeup-air damper and its interlock.", ("power",), "", "Its wiring is the "
                          "electrician's work.", Sheet.PARTS))  # fmt: skip
    steps.append(
        Step("wire", "Bring the hood's supply to its entry point.", ("marks", "power", "look", "backing", "pack"), "",
             "By a licensed electrician where the law asks for one.", Sheet.MARKING)
    )  # fmt: skip
    closed_holes = old_hole_steps(route, scene, frame)
    steps += closed_holes
    seen = "the duct, the cut members and the wire" if cut_members(route, frame) else "the duct and the wire"
    steps.append(
        Step("inspect", f"Have {seen} inspected before they are covered.",
             ("run", "hang", "seal", "cap", *(() if _late(steps) else ("fireblock",)), "wrap", "ties", "wire", "frame", "makeup", "backing", "pack",
              *(s.id for s in closed_holes)),
             "Signed off, or not asked for where you live. Take photographs.", "", Sheet.FINDINGS)
    )  # fmt: skip
    opened = needs_backing(scene, marks) or any(m.gap_in > 0 for m in marks) or patched(route, hung, frame)
    closed = ["Patch the boards."] if opened else []
    if opened_plaster(route, scene, frame, marks):
        closed = ["Make good the plaster that was opened: board on the blocks and strips, then a finishing coat."]
    if any(plastered(p, route, frame) and frame.solid(p.solid).kind is SolidKind.BOARD for p in route.penetrations):
        closed.append("Make good the plaster round the duct: a finishing coat over the mortar.")
    if closed:
        steps.append(Step("patch", " ".join(closed), ("inspect",), "", "", Sheet.PARTS))
    return steps


def _late(steps: Sequence[Step]) -> bool:
    """Whether the gaps round the duct are closed after the boards are patched."""
    return any(s.id == "fireblock" and "patch" in s.after for s in steps)


def hood_steps(
    route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...], marks: tuple[Mark, ...]
) -> list[Step]:
    """Give the hanging of the hood and its cover."""
    upper = [m for m in marks if m.row == "upper"]
    lower = [m for m in marks if m.row == "lower"]
    bracket = [m for m in marks if m.row == "bracket"]
    steps: list[Step] = []
    steps += pack_steps(scene, marks)
    backed = needs_backing(scene, marks)
    if backed:
        steps.append(
            Step("backing", backing_words(scene, frame, marks), ("marks", "power", "protect", "look", "heavy"), _proof(scene), "Shallow cut only: set the blade to the board's thickness.",
                 Sheet.MARKING)
        )  # fmt: skip
    if upper:
        proud = length_text(upper[0].stand_off_in, metric=scene.metric)
        anchors = "set anchors where a mark says so, " if any(not (m.wood or m.backed) for m in upper) else ""
        text = f"Drill the pilots, {_drills((*upper, *lower), scene)}; {anchors}drive the upper screws and leave them {proud} proud."
        if is_heavy(scene):
            text += f" The maker's fixing for {weight_text(scene)} goes before these sizes."
        steps.append(Step("screws", text, ("patch", "inspect", "backing", "pack", "marks", "heavy"), "Pull on each screw before it carries anything.",
                          "", Sheet.MARKING))  # fmt: skip
    if bracket:
        steps.append(
            Step(
                "bracket",
                f"Fix the cover's bracket through its own holes, its {bracket_words(scene)}; pilots {_drills(bracket, scene)}.",
                ("patch", "inspect", "marks"),
                "",
                "",
                Sheet.MARKING,
            )
        )
    after = "; drive the lower screws tight" if lower else ""
    rear = from_behind(route)
    into = "back into the duct, its collar with a bead of sealant," if rear else "so that its collar enters the duct,"
    lifted, hands = "Two people lift", "Two people."
    if is_heavy(scene):
        lifted, hands = "With a material lift, or more than two people, raise", "Too heavy for two people."
    steps.append(
        Step("lift", f"{lifted} the hood ({weight_text(scene)}) {into} onto its screws, level it, and tighten{after}.",
             ("screws", "patch", "inspect", "wire", "run", "seal", "cap", "fireblock"), "It cannot slide off when pulled forward.",
             f"{hands} Nobody stands on the cooktop.", Sheet.MARKING)
    )  # fmt: skip
    made = of_step(route, scene, frame, "hood")
    joint = f"{_capital(joint_words(made))} through the duct into the hood's collar, then seal the joint." if made else (
        "Seal the duct's joint at the hood.")  # fmt: skip
    held = "If the hood has a damper of its own, it opens and shuts by hand, and no screw touches it."
    if rear:
        joint = "Look in from the hood and through the cap: the collar sits in the duct all round, and what damper it has swings."
        held = "No gap is seen round the collar; if there is one, take the hood down and try again."
    steps.append(Step("connect", joint, ("lift", "run", "seal"), held, "", Sheet.SECTION))
    return [*steps, *cover_steps(scene, findings), *box_steps(route, scene, findings)]


def _proof(scene: Scene) -> str:
    """Say what shows that the backing holds: a person's weight, which proves nothing for a hood that weighs more."""
    if is_heavy(scene):
        return f"It is fixed as the maker asks for {weight_text(scene)}; a person's own weight is no proof of that."
    return "The backing carries your own weight."


def _drills(marks: Sequence[Mark], scene: Scene) -> str:
    """Give the drills for some marks, the smaller first: ``3/16 in`` or ``3/16 in and 7/16 in as marked``."""
    sizes = [drill_text(size, metric=scene.metric) for size in sorted({m.pilot_in for m in marks})]
    return sizes[0] if len(sizes) == 1 else f"{' and '.join(sizes)} as marked"


def _gas_again(scene: Scene) -> list[Step]:
    """Give the opening of the gas valve that was closed before the work; nothing where the cooktop burns no gas."""
    if scene.cooktop.kind is not CooktopKind.GAS:
        return []
    return [
        Step("gas", "Open the gas valve, brush leak-test fluid on each joint that was touched, and relight the pilots.",
             ("power", "connect", "cover", "box", "cap", "patch"), "No bubble grows at any joint, and every burner lights.",
             "Gas joints are the work of a licensed trade where the law asks for one. A smell of gas: close the valve, "
             "no flame and no switch, air the room.")
    ]  # fmt: skip


def end_steps(route: Route, scene: Scene, findings: tuple[Finding, ...]) -> list[Step]:
    """Give the test of the whole."""
    spill = ""
    if scene.rules.open_flue_appliance or scene.rules.open_flue_appliance is None:
        spill = " With any open-flue appliance burning, doors and windows shut: check that its flue does not spill."
    capped = route.capped
    damper = "the cap's damper" if capped else "the damper at the duct's end"
    text = f"Power on. Run every speed: {damper} opens fully and shuts after.{spill}"
    if needs_makeup(scene, findings):
        text += " The makeup-air damper opens with the hood."
    return [
        *_gas_again(scene),
        Step("test", text, ("connect", "cover", "box", "cap", "makeup", "patch", "gas"), "Air leaves outdoors and nowhere else.",
             "A spilling flue means carbon monoxide: switch off and call the trade.", Sheet.AIR)
    ]  # fmt: skip
