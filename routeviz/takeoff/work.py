"""The order of work: steps, what must come before them, and where to stop and look."""

from __future__ import annotations

from collections.abc import Iterable

from routeviz.model.finding import Finding, State
from routeviz.model.route import PartKind, Route
from routeviz.model.scene import AboveKind, CooktopKind, Scene
from routeviz.model.solids import FaceKind, Frame, SolidKind
from routeviz.model.takeoff import Hole, Mark, MeasureFirst, Sheet, Step
from routeviz.takeoff.building import cover_gap_in, needs_makeup
from routeviz.takeoff.hangers import hangers
from routeviz.takeoff.holes import main_axis
from routeviz.takeoff.lumber import openings
from routeviz.takeoff.marks import marks_in_wood
from routeviz.units import length_text

__all__ = ["in_order", "order_of_work"]

_MOST_SHOWN = 3


def order_of_work(
    route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...],
    holes: tuple[Hole, ...], marks: tuple[Mark, ...], measure: tuple[MeasureFirst, ...],
) -> tuple[Step, ...]:  # fmt: skip
    """Give the steps in an order that respects what each of them needs; ties keep the usual order of the trade."""
    steps = [
        *_before(findings, measure, scene),
        *_marking(scene, marks),
        *_opening_up(route, scene, frame, holes),
        *_duct(route, scene, frame),
        *_closing(route, scene, frame, findings),
        *_hood(scene, marks),
        *_end(scene, findings),
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
        names = "; ".join(f.title for f in broken[:_MOST_SHOWN])
        steps.append(Step("settle", f"Settle what is broken first: {names}.", (), "Nothing is cut before this is settled.",
                          "", Sheet.FINDINGS))  # fmt: skip
    first = "; ".join(m.what for m in measure[:_MOST_SHOWN]) or "the wall, the ceiling and the cooktop"
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
    hold = "Both diagonals of the hood's outline are equal; find each stud again with a magnet or a fine nail."
    return [Step("marks", f"{text}.", ("measure",), hold, "", Sheet.MARKING)]


def _opening_up(route: Route, scene: Scene, frame: Frame, holes: tuple[Hole, ...]) -> list[Step]:
    if not holes:
        return []
    inspection = "2 in" if not scene.metric else "50 mm"
    kinds = {frame.solid(h.solid).kind for h in holes}
    steps = [
        Step("look", f"Cut a small opening of {inspection} at each hole's centre in the board and look and feel inside "
             "with a light and a mirror.", ("marks", "power", "protect"),
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
    steps.append(
        Step("inside", "Cut the holes inside, layer by layer, to the hole schedule.", ("look", "frame"), "", "Eye and "
             "breathing protection; keep hands off blind cavities.", Sheet.HOLES)
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
    return steps


def _duct(route: Route, scene: Scene, frame: Frame) -> list[Step]:
    has_cap = any(p.kind is PartKind.CAP for p in route.parts)
    steps = [
        Step("cut-duct", "Cut the straights to the cut list, set the elbows to their angles, and lay the run out dry on the "
             "floor.", ("outside", "inside"), "The laid-out length agrees with the route's length.",
             "Cut sheet metal is sharp: gloves.", Sheet.PARTS),
        Step("run", "Put the duct in from the hood upwards and outwards, crimped ends pointing with the air.",
             ("cut-duct", "ties", "frame"), "Clear of every member by the drawn distance; slope, if any, to outdoors.",
             "", Sheet.SECTION),
    ]  # fmt: skip
    if hangers(route):
        steps.append(Step("hang", "Hang it: straps as counted, none crushing the duct.", ("run",), "", "", Sheet.PARTS))
    steps.append(
        Step("seal", "At least three screws in each joint, then seal every joint.", ("run", "hang"),
             "Screws do not reach further in than they must.", "", Sheet.PARTS)
    )  # fmt: skip
    if has_cap:
        roof = route.termination.kind is FaceKind.ROOF
        how = "Set flashing and cap: upper edge under the covering, lower edge over it." if roof else (
            "Set the cap and seal its flange at the top and the sides.")  # fmt: skip
        steps.append(Step("cap", how, ("seal",), "The damper swings free by hand and falls shut; no screen in the way.",
                          "Ladder tied off.", Sheet.OUTSIDE))  # fmt: skip
    del frame, scene
    return steps


def _closing(route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...]) -> list[Step]:
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
             ("seal", "cap", "fireblock", "wrap", "ties", "wire", "frame", "makeup"),
             "Signed off, or not asked for where you live. Take photographs.", "", Sheet.FINDINGS)
    )  # fmt: skip
    steps.append(Step("patch", "Patch the boards.", ("inspect",), "", "", Sheet.PARTS))
    return steps


def _hood(scene: Scene, marks: tuple[Mark, ...]) -> list[Step]:
    upper = [m for m in marks if m.row == "upper"]
    lower = [m for m in marks if m.row == "lower"]
    bracket = [m for m in marks if m.row == "bracket"]
    steps: list[Step] = []
    if marks and marks_in_wood(marks) < 2 and not any("wall" in m.holds for m in marks):
        steps.append(
            Step("backing", "Let a 2x board into the wall behind the upper screws and fix it to the studs each side.",
                 ("look", "power"), "The board carries your own weight.", "", Sheet.MARKING)
        )  # fmt: skip
    if upper:
        proud = length_text(upper[0].stand_off_in, metric=scene.metric)
        text = (
            f"Drill the pilots, set anchors where a mark says so, drive the upper screws and leave them {proud} proud."
        )
        steps.append(Step("screws", text, ("patch", "backing", "marks"), "Pull on each screw before it carries anything.",
                          "", Sheet.MARKING))  # fmt: skip
    if bracket:
        steps.append(
            Step("bracket", "Fix the cover's bracket under the ceiling.", ("patch", "marks"), "", "", Sheet.MARKING)
        )
    pounds = f"{scene.hood.weight_lb:.0f} lb" if not scene.metric else f"{scene.hood.weight_lb * 0.45359237:.0f} kg"
    after = "; drive the lower screws tight" if lower else ""
    steps.append(
        Step("lift", f"Two people lift the hood ({pounds}) onto its screws, level it, and tighten{after}.",
             ("screws", "patch", "wire"), "It cannot slide off when pulled forward.",
             "Two people. Nobody stands on the cooktop.", Sheet.MARKING)
    )  # fmt: skip
    steps.append(
        Step("connect", "Slide the duct over the hood's collar, three screws, seal.", ("lift", "seal"),
             "The hood's own damper opens and shuts by hand; no screw touches it.", "", Sheet.SECTION)
    )  # fmt: skip
    gap = cover_gap_in(scene)
    if gap is not None:
        text = f"Set the cover to {length_text(gap, metric=scene.metric)} and fix it to its bracket."
        steps.append(Step("cover", text, ("connect", "bracket"), "", "", Sheet.PARTS))
    return steps


def _end(scene: Scene, findings: tuple[Finding, ...]) -> list[Step]:
    spill = ""
    if scene.rules.open_flue_appliance or scene.rules.open_flue_appliance is None:
        spill = " With any open-flue appliance burning, doors and windows shut: check that its flue does not spill."
    text = f"Power on. Run every speed: the cap's damper opens fully and shuts after.{spill}"
    if needs_makeup(scene, findings):
        text += " The makeup-air damper opens with the hood."
    return [
        Step("test", text, ("connect", "cover", "cap", "makeup"), "Air leaves the cap and nowhere else.",
             "A spilling flue means carbon monoxide: switch off and call the trade.", Sheet.AIR)
    ]  # fmt: skip
