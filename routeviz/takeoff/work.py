"""The order of work: steps, what must come before them, and where to stop and look."""

from __future__ import annotations

from collections.abc import Iterable

from routeviz.model.finding import Finding, State
from routeviz.model.route import PartKind, Route
from routeviz.model.scene import AboveKind, CooktopKind, Scene, WallFrame, WallSide
from routeviz.model.solids import FaceKind, Frame, SolidKind
from routeviz.model.takeoff import Hole, Mark, MeasureFirst, Sheet, Step
from routeviz.takeoff.backing import needs_backing
from routeviz.takeoff.building import behind_board, cover_gap_in, needs_makeup, patched
from routeviz.takeoff.hangers import hangers
from routeviz.takeoff.holes import main_axis, needs_sleeve, on_block
from routeviz.takeoff.lumber import openings
from routeviz.takeoff.mending import mending_steps
from routeviz.units import length_text

__all__ = ["in_order", "order_of_work"]

_MOST_SHOWN = 3


def order_of_work(
    route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...],
    holes: tuple[Hole, ...], marks: tuple[Mark, ...], measure: tuple[MeasureFirst, ...],
) -> tuple[Step, ...]:  # fmt: skip
    """Give the steps in an order that respects what each of them needs; ties keep the usual order of the trade."""
    if route.as_built and any(
        f.state is State.BROKEN and f.must and not f.waived and not f.code.startswith("MBR-") for f in findings
    ):  # a member to cut has steps of its own
        return in_order([*_before(findings, measure, scene), *mending_steps(findings), *_end(route, scene, findings)])
    steps = [
        *_before(findings, measure, scene),
        *_marking(scene, marks),
        *_opening_up(route, scene, frame, holes),
        *_duct(route, scene, frame),
        *_closing(route, scene, frame, findings, marks),
        *_hood(route, scene, marks),
        *_end(route, scene, findings),
    ]
    return in_order(steps)


def in_order(steps: Iterable[Step]) -> tuple[Step, ...]:
    """Sort steps so that each comes after the ones it names; steps that are not there are dropped from `after`.

    Raises
    ------
    ValueError
        If two steps wait for each other, or an id stands twice.
    """
    import networkx as nx

    listed = list(steps)
    place = {step.id: n for n, step in enumerate(listed)}
    if len(place) != len(listed):
        raise ValueError("a step's id stands twice")
    graph: nx.DiGraph[str] = nx.DiGraph()
    graph.add_nodes_from(place)
    graph.add_edges_from((before, step.id) for step in listed for before in step.after if before in place)
    try:
        order = list(nx.lexicographical_topological_sort(graph, key=lambda step_id: place[step_id]))
    except nx.NetworkXUnfeasible as fault:
        raise ValueError("two steps wait for each other") from fault
    return tuple(_kept(listed[place[step_id]], place) for step_id in order)


def _kept(step: Step, known: dict[str, int]) -> Step:
    after = tuple(a for a in step.after if a in known)
    return Step(step.id, step.text, after, step.hold, step.caution, step.drawing)


def _before(findings: tuple[Finding, ...], measure: tuple[MeasureFirst, ...], scene: Scene) -> list[Step]:
    broken = [f for f in findings if f.state is State.BROKEN and not f.waived]
    steps = []
    if broken:
        more = len(broken) - _MOST_SHOWN
        names = "; ".join(dict.fromkeys(_inside_a_sentence(f.title) for f in broken[:_MOST_SHOWN]))
        names += f"; and {more} more" if more > 0 else ""
        steps.append(Step("settle", f"Settle what is broken first: {names}.", (), "Nothing is cut before this is settled.",
                          "", Sheet.FINDINGS))  # fmt: skip
    first = (
        "; ".join(_inside_a_sentence(m.what) for m in measure[:_MOST_SHOWN]) or "the wall, the ceiling and the cooktop"
    )
    steps.append(
        Step("measure", f"Measure and write down: {first}. The whole list is on its sheet.", ("settle",),
             "Any number past its limit: stop and plan again.", "", Sheet.MEASURE)
    )  # fmt: skip
    gas = " Close the gas valve of the cooktop." if scene.cooktop.kind is CooktopKind.GAS else ""
    steps.append(
        Step("power", f"Switch off the circuits in this wall and ceiling, lock them, and test that they are dead.{gas}",
             ("measure",), "The tester reads dead at the hood's wire and at every box in the wall.",
             "Wires, pipes and gas may run where the scene shows nothing.")
    )  # fmt: skip
    steps.append(
        Step("protect", "Cover the cooktop and the floor; mask the doorway.", ("measure",), "",
             "A house from before 1980 may hold asbestos or lead paint: have a sample tested before dust is made.")
    )  # fmt: skip
    return steps


def _inside_a_sentence(words: str) -> str:
    return f"{words[:1].lower()}{words[1:]}"


def _framed(scene: Scene) -> bool:
    """Whether the hood wall has studs."""
    return scene.wall(WallSide.HOOD).frame in (WallFrame.WOOD, WallFrame.STEEL)


def _marking(scene: Scene, marks: tuple[Mark, ...]) -> list[Step]:
    centre = length_text(scene.hood.centre_in, metric=scene.metric)
    bottom = scene.hood_bottom_in
    if bottom is None:
        return [
            Step(
                "marks", f"Draw the plumb centre line {centre} from the left wall.", ("measure",), "", "", Sheet.MARKING
            )
        ]
    line = length_text(bottom, metric=scene.metric)
    text = f"Draw the plumb centre line {centre} from the left wall and the level mounting line {line} above the floor"
    if marks:
        text += "; mark the screws from both lines"
    hold = "Both diagonals of the hood's outline are equal"
    hold += "; find each stud again with a magnet or a fine nail." if _framed(scene) else "; no screw meets a joint."
    return [Step("marks", f"{text}.", ("measure",), hold, "", Sheet.MARKING)]


def _opening_up(route: Route, scene: Scene, frame: Frame, holes: tuple[Hole, ...]) -> list[Step]:
    if not holes:
        return []
    inspection = "2 in" if not scene.metric else "50 mm"
    kinds = {frame.solid(h.solid).kind for h in holes}
    if (
        not _framed(scene)
        and SolidKind.FURRING not in kinds
        and all(main_axis(p.direction) == 1 for p in route.penetrations)
    ):
        look = "Drill a small hole at each hole's centre and watch the dust and the drill: hollows, iron, a joint."
    else:
        look = (f"Cut a small opening of {inspection} at each hole's centre in the board and look and feel inside with a light "
                "and a mirror.")  # fmt: skip
    steps = [
        Step("look", look, ("marks", "power", "protect"),
             "No wire, pipe, gas or member within the full circle; members stand where the drawing has them.",
             "Shallow cut only: set the blade to the board's thickness.", Sheet.HOLES)
    ]  # fmt: skip
    cut = openings(route, frame)
    if cut:
        names = ", ".join(o.label for o in cut)
        steps.append(
            Step("frame", f"Frame the opening and hold the load before {names} is cut.", ("look",),
                 "The finding for this member allows the cut, or an engineer has signed it.",
                 "Shore the ceiling before a bearing member is cut.", Sheet.FINDINGS)
        )  # fmt: skip
    steps += _strips(route, scene, frame)
    steps.append(
        Step("inside", "Cut the holes inside, layer by layer, to the hole schedule.", ("look", "frame", "open", "strip"), "",
             "Eye and breathing protection; keep hands off blind cavities.", Sheet.HOLES)
    )  # fmt: skip
    if SolidKind.PLATE in kinds:
        steps.append(Step("ties", "Cut the plates and nail the ties across them.", ("inside",), "Every tie is on before the "
                          "duct covers it.", "", Sheet.PARTS))  # fmt: skip
    roof = route.termination.kind is FaceKind.ROOF
    if route.termination.kind is not None:
        where = "roof" if roof else "wall"
        caution = "Ladder tied, fall protection on, nobody below; not in wind or wet." if roof else "Ladder tied off."
        steps.append(
            Step("outside", f"Drill the centre through the {where} from inside, then cut from outside round it.",
                 ("inside", "ties"), "The drill came out where the outside drawing shows it.", caution, Sheet.OUTSIDE)
        )  # fmt: skip
    if any(needs_sleeve(kind) for kind in kinds):
        steps.append(Step("sleeve", "Set the sleeve and make good round it with mortar.", ("inside", "outside"),
                          "The sleeve falls a little to outdoors, and the duct slides through it.", "", Sheet.HOLES))  # fmt: skip
    return steps


def _strips(route: Route, scene: Scene, frame: Frame) -> list[Step]:
    """Open what the duct is laid behind, and hold a furring strip before it is cut."""
    steps = []
    laid = list(dict.fromkeys(where for _, where in behind_board(route, scene)))
    if laid:
        steps.append(
            Step("open", f"Open a strip of the {' and of the '.join(laid)}, from member to member, as the parts list says.",
                 ("look",), "No wire, pipe or gas crosses the strip.",
                 "Shallow cuts only: set the blade to the board's thickness.", Sheet.PARTS)
        )  # fmt: skip
    furring = [s.label for p in route.penetrations if (s := frame.solid(p.solid)).kind is SolidKind.FURRING]
    if furring:
        steps.append(
            Step("strip", f"Fix {' and '.join(dict.fromkeys(furring))} to the wall beyond both cuts, then cut it and let the "
                 "backing blocks in.", ("look",), "The strip's ends sit tight on the wall.",
                 "Old plaster falls in sheets: cut it gently.", Sheet.PARTS)
        )  # fmt: skip
    return steps


def _duct(route: Route, scene: Scene, frame: Frame) -> list[Step]:
    has_cap = any(p.kind is PartKind.CAP for p in route.parts)
    elbows = ", set the elbows to their angles" if any(p.kind is PartKind.ELBOW for p in route.parts) else ""
    steps = [
        Step("cut-duct", f"Cut the straights to the cut list{elbows} and lay the run out dry on the floor.",
             ("outside", "inside", "sleeve"), "The laid-out length agrees with the route's length.",
             "Cut sheet metal is sharp: gloves.", Sheet.PARTS),
        Step("run", "Put the duct in from the hood's end outwards, crimped ends pointing with the air.",
             ("cut-duct", "ties", "frame"), "Clear of every member by the drawn distance; slope, if any, to outdoors.",
             "", Sheet.SECTION),
    ]  # fmt: skip
    if hangers(route):
        steps.append(Step("hang", "Hang it: straps as counted, none crushing the duct.", ("run",), "", "", Sheet.PARTS))
    steps.append(
        Step("seal", "At least three screws in each joint, then seal it; the joint at the hood waits for the hood.",
             ("run", "hang"), "Screws do not reach further in than they must.", "", Sheet.PARTS)
    )  # fmt: skip
    if has_cap:
        roof = route.termination.kind is FaceKind.ROOF
        how = "Set flashing and cap: upper edge under the covering, lower edge over it." if roof else (
            "Set the cap and seal its flange at the top and the sides.")  # fmt: skip
        if not roof and any(on_block(frame.solid(p.solid)) for p in route.penetrations):
            how = f"Set the mounting block into the siding with its channel, flashed at the top. {how}"
        steps.append(Step("cap", how, ("seal",), "The damper swings free by hand and falls shut; no screen in the way.",
                          "Ladder tied off.", Sheet.OUTSIDE))  # fmt: skip
    del scene
    return steps


def _closing(
    route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...], marks: tuple[Mark, ...]
) -> list[Step]:
    steps: list[Step] = []
    sheets = (SolidKind.BOARD, SolidKind.SUBFLOOR, SolidKind.SLAB)
    passed = [p for p in route.penetrations if frame.solid(p.solid).kind in sheets]
    if passed:
        level = any(main_axis(p.direction) == 2 for p in passed)
        where = "at ceiling and floor level with fireblocking" if level else "where it passes a wall's board"
        steps.append(Step("fireblock", f"Close the gaps round the duct {where}.",
                          ("seal",), "", "", Sheet.PARTS))  # fmt: skip
    if scene.site.cold_climate and scene.above.kind is AboveKind.ATTIC:
        steps.append(
            Step("wrap", "Wrap the duct above the ceiling, jacket taped tight.", ("seal",), "", "", Sheet.PARTS)
        )
    if needs_makeup(scene, findings):
        steps.append(Step("makeup", "Fit the makeup-air damper and its interlock.", ("power",), "", "Its wiring is the "
                          "electrician's work.", Sheet.FINDINGS))  # fmt: skip
    steps.append(
        Step("wire", "Bring the hood's supply to its entry point.", ("marks", "power", "look"), "",
             "By a licensed electrician where the law asks for one.", Sheet.HOOD_WALL)
    )  # fmt: skip
    steps.append(
        Step("inspect", "Have the duct, the cut members and the wire inspected before they are covered.",
             ("seal", "cap", "fireblock", "wrap", "ties", "wire", "frame", "makeup", "backing"),
             "Signed off, or not asked for where you live. Take photographs.", "", Sheet.FINDINGS)
    )  # fmt: skip
    if needs_backing(scene, marks) or patched(route, scene, frame):
        steps.append(Step("patch", "Patch the boards.", ("inspect",), "", "", Sheet.PARTS))
    return steps


def _hood(route: Route, scene: Scene, marks: tuple[Mark, ...]) -> list[Step]:
    upper = [m for m in marks if m.row == "upper"]
    lower = [m for m in marks if m.row == "lower"]
    bracket = [m for m in marks if m.row == "bracket"]
    steps: list[Step] = []
    backed = needs_backing(scene, marks)
    if backed:
        steps.append(
            Step("backing", "Open the board between the studs behind the open-square marks, let the backing in flush with the "
                 "studs' faces and fix it to both.", ("marks", "power", "protect", "look"),
                 "The backing carries your own weight.", "Shallow cut only: set the blade to the board's thickness.",
                 Sheet.MARKING)
        )  # fmt: skip
    if upper:
        proud = length_text(upper[0].stand_off_in, metric=scene.metric)
        anchors = "set anchors where a mark says so, " if not backed else ""
        text = f"Drill the pilots, {anchors}drive the upper screws and leave them {proud} proud."
        steps.append(Step("screws", text, ("patch", "inspect", "backing", "marks"), "Pull on each screw before it carries anything.",
                          "", Sheet.MARKING))  # fmt: skip
    if bracket:
        steps.append(
            Step(
                "bracket",
                "Fix the cover's bracket under the ceiling.",
                ("patch", "inspect", "marks"),
                "",
                "",
                Sheet.MARKING,
            )
        )
    pounds = f"{scene.hood.weight_lb:.0f} lb" if not scene.metric else f"{scene.hood.weight_lb * 0.45359237:.0f} kg"
    after = "; drive the lower screws tight" if lower else ""
    rear = abs(route.parts[0].direction[1]) > 0.5
    into = "back into the duct, its collar with a bead of sealant," if rear else "so that its collar enters the duct,"
    steps.append(
        Step("lift", f"Two people lift the hood ({pounds}) {into} onto its screws, level it, and tighten{after}.",
             ("screws", "patch", "inspect", "wire", "seal"), "It cannot slide off when pulled forward.",
             "Two people. Nobody stands on the cooktop.", Sheet.MARKING)
    )  # fmt: skip
    joint = "Three screws through the duct into the hood's collar, then seal the joint."
    held = "The hood's own damper opens and shuts by hand; no screw touches it."
    if rear:
        joint = (
            "Look in from the hood and through the cap: the collar sits in the duct all round, and its damper swings."
        )
        held = "No gap is seen round the collar; if there is one, take the hood down and try again."
    steps.append(Step("connect", joint, ("lift", "seal"), held, "", Sheet.SECTION))
    gap = cover_gap_in(scene)
    if gap is not None:
        text = f"Set the cover to {length_text(gap, metric=scene.metric)} and fix it to its bracket."
        steps.append(Step("cover", text, ("connect", "bracket"), "", "", Sheet.PARTS))
    return steps


def _end(route: Route, scene: Scene, findings: tuple[Finding, ...]) -> list[Step]:
    spill = ""
    if scene.rules.open_flue_appliance or scene.rules.open_flue_appliance is None:
        spill = " With any open-flue appliance burning, doors and windows shut: check that its flue does not spill."
    capped = any(p.kind is PartKind.CAP for p in route.parts)
    damper = "the cap's damper" if capped else "the damper at the duct's end"
    text = f"Power on. Run every speed: {damper} opens fully and shuts after.{spill}"
    if needs_makeup(scene, findings):
        text += " The makeup-air damper opens with the hood."
    return [
        Step("test", text, ("connect", "cover", "cap", "makeup", "patch"), "Air leaves outdoors and nowhere else.",
             "A spilling flue means carbon monoxide: switch off and call the trade.", Sheet.AIR)
    ]  # fmt: skip
