"""The first half of the work: what is settled, marked and opened before any duct is laid."""

from __future__ import annotations

from routeviz.catalog import table
from routeviz.model.finding import Finding, State, inside_sentence, musts_named
from routeviz.model.members import together
from routeviz.model.route import Route
from routeviz.model.scene import CooktopKind, Scene, WallFrame, WallSide
from routeviz.model.solids import FaceKind, Frame, SolidKind
from routeviz.model.takeoff import Hole, Mark, MeasureFirst, Sheet, Step
from routeviz.takeoff.cautions import outside_caution
from routeviz.takeoff.fall import LOWER
from routeviz.takeoff.lumber import cut_members, openings
from routeviz.takeoff.masonry import core_step, cored, is_log, lies_on, mortar_in, of_board, pilot_text, sleeve_in
from routeviz.takeoff.packing import furring_cut, strip_opening_in
from routeviz.takeoff.strips import behind_board
from routeviz.takeoff.words import hole_text, own_in
from routeviz.units import length_text

__all__ = ["before_steps", "marking_steps", "opening_up_steps"]

_MOST_SHOWN = 3


def before_steps(findings: tuple[Finding, ...], measure: tuple[MeasureFirst, ...], scene: Scene) -> list[Step]:
    """Give what comes before any mark: settle, measure, switch off, protect."""
    broken = [f for f in findings if f.state is State.BROKEN and not f.waived]
    steps = []
    if broken:
        musts = musts_named(broken)
        text, hold = f"Settle what is broken first: {musts}.", "Nothing is cut before this is settled."
        if not musts:
            more = len(broken) - _MOST_SHOWN
            names = "; ".join(dict.fromkeys(inside_sentence(f.title) for f in broken[:_MOST_SHOWN]))
            names += f"; and {more} more" if more > 0 else ""
            text, hold = (
                f"Decide about what is broken, all of it advice: {names}.",
                "You know what it costs and want it so.",
            )
        steps.append(Step("settle", text, (), hold, "", Sheet.FINDINGS))
    first = "; ".join(inside_sentence(m.what) for m in measure[:_MOST_SHOWN]) or "the wall, the ceiling and the cooktop"
    steps.append(
        Step("measure", f"Measure and write down: {first}. The whole list is on its sheet.", ("settle",),
             "Every number within its limit; otherwise stop and plan again.", "", Sheet.MEASURE)
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


def _framed(scene: Scene) -> bool:
    """Whether the hood wall has studs."""
    return scene.wall(WallSide.HOOD).frame in (WallFrame.WOOD, WallFrame.STEEL)


def marking_steps(scene: Scene, marks: tuple[Mark, ...]) -> list[Step]:
    """Give the marking of the wall."""
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


def opening_up_steps(route: Route, scene: Scene, frame: Frame, holes: tuple[Hole, ...]) -> list[Step]:
    """Give the opening of the house, from a small look inside to the hole outside and its sleeve."""
    if not holes:
        return []
    kinds = {frame.solid(h.solid).kind for h in holes}
    lowered = holes[-1].note.endswith(LOWER)
    lower = " The run falls: its centre lies lower than drawn, as the hole schedule says." if lowered else ""
    core = cored(route, frame)
    steps = [_look(route, scene, frame)]
    cut = openings(route, frame)
    if cut:
        names, verb = together(o.label for o in cut), "is" if len(cut) == 1 else "are"
        steps.append(
            Step("frame", f"Frame the opening and hold the load before {names} {verb} cut.", ("look",),
                 "The finding for this member allows the cut, or an engineer has signed it.",
                 "Shore the ceiling before a bearing member is cut.", Sheet.FINDINGS)
        )  # fmt: skip
    steps += _strips(route, scene, frame)
    with_core = {p.solid for p in route.penetrations if p in core or lies_on(p, route, frame) is not None}
    if furring_cut(route, frame):  # its step opens the face before it and cuts it
        with_core |= {p.solid for p in route.penetrations if frame.solid(p.solid).kind is SolidKind.FURRING}
        with_core |= {p.solid for p in of_board(route, frame) if frame.solid(p.solid).space == "kitchen"}
    if any(p.solid not in with_core for p in route.penetrations):
        steps.append(
            Step("inside", "Cut the holes inside, layer by layer, to the hole schedule.", ("look", "frame", "open", "strip"), "",
                 "Eye and breathing protection; keep hands off blind cavities.", Sheet.HOLES)
        )  # fmt: skip
    if SolidKind.PLATE in kinds:
        steps.append(Step("ties", "Cut the plates and nail the ties across them.", ("inside",), "Every tie is on before the "
                          "duct covers it.", "", Sheet.PARTS))  # fmt: skip
    roof = route.termination.kind is FaceKind.ROOF
    through = core[-1] if core and holes[-1].group == _group(core[-1].solid, holes) else None
    inner = [p for p in core if p is not through]
    steps += [
        core_step(p, f"core-{n}", ("look", "strip", "inside", "ties"), route, scene, frame)
        for n, p in enumerate(inner, start=1)
    ]
    waits = ("look", "strip", "inside", "ties", *(f"core-{n}" for n in range(1, len(inner) + 1)))
    if through is not None and route.termination.kind is not None:
        steps.append(core_step(through, "outside", waits, route, scene, frame))
    elif route.termination.kind is not None:
        where = "roof" if roof else "wall"
        plumb = ", plumb, along the duct and not square to the slope" if route.penetrations[-1].sloped else ""
        steps.append(
            Step("outside", f"Drill the centre through the {where} from inside, then cut from outside round it{plumb}.{lower}",
                 waits, f"The drill came out where the outside drawing shows it{', less the fall' if lowered else ''}.", outside_caution(route), Sheet.OUTSIDE)
        )  # fmt: skip
    if core:
        gap = length_text(mortar_in(metric=scene.metric), metric=scene.metric)
        size = hole_text(core[0].shape, sleeve_in(core[0], metric=scene.metric), metric=scene.metric)
        how = (
            f"seal what is left round it, at least {gap}"
            if all(is_log(p, frame) for p in core)
            else f"fill what is left all round it, at least {gap}, with mortar"
        )
        steps.append(Step("sleeve", f"Set the sleeve, {size}, in the middle of its hole and {how}.", (*waits, "outside"),
                          "The sleeve falls a little to outdoors, and the duct slides through it.", "", Sheet.HOLES))  # fmt: skip
    return steps


def _group(solid: str, holes: tuple[Hole, ...]) -> int:
    return next(h.group for h in holes if h.solid == solid)


def _look(route: Route, scene: Scene, frame: Frame) -> Step:
    """Give the first, small opening: through board a window to look in by, through masonry a pilot to the other face."""
    boards, core = of_board(route, frame), cored(route, frame)
    looks, cautions, holds = [], [], [_nothing_within(route, frame)]
    if boards:
        opening = length_text(own_in(table("stock")["patch"], "inspection", metric=scene.metric), metric=scene.metric)
        looks.append(f"Cut a small opening of {opening} at each hole's centre in the board and look and feel inside with a light "
                     "and a mirror.")  # fmt: skip
        cautions.append("Shallow cut only: set the blade to the board's thickness.")
        holds.append("members stand where the drawing has them")
    if core:
        named = together(frame.solid(p.solid).label for p in core)
        looks.append(f"Drill a pilot hole of {pilot_text(scene)} right through the {named} at the hole's centre: it finds the "
                     "other face and tells the thickness. Watch the dust and the drill: hollows, iron, a joint.")  # fmt: skip
        cautions.append("Nobody behind the wall. Dust of masonry holds silica: suction at the drill, a fitted mask."
                        if not all(is_log(p, frame) for p in core) else "Nobody behind the wall.")  # fmt: skip
        holds.append("the pilot came out where the drawing shows it, and the wall is as thick as planned")
    if not looks:
        looks.append(
            "Drill a small hole at each hole's centre and watch the dust and the drill: hollows, iron, a joint."
        )
    return Step(
        "look", " ".join(looks), ("marks", "power", "protect"), f"{'; '.join(holds)}.", " ".join(cautions), Sheet.HOLES
    )


def _nothing_within(route: Route, frame: Frame) -> str:
    """Say what must not lie within the hole; what is cut by design does."""
    cut = [*cut_members(route, frame), *furring_cut(route, frame)]
    cut = [name if name[-1].isdigit() else f"the {name}" for name in cut]
    but = f" but {together(cut)}, which the plan cuts" if cut else ""
    return f"No wire, pipe or gas within the full hole, and no member{but}"


def _strips(route: Route, scene: Scene, frame: Frame) -> list[Step]:
    """Open what the duct is laid behind, and hold a furring strip before it is cut."""
    steps = []
    laid = behind_board(route, scene)
    if laid:
        strips = " and of the ".join(f"{s.where}, {s.from_to(scene)}" for s in laid)
        steps.append(
            Step("open", f"Open a strip of the {strips}, from member to member.",
                 ("look",), "No wire, pipe or gas crosses the strip.",
                 "Shallow cuts only: set the blade to the board's thickness.", Sheet.PARTS)
        )  # fmt: skip
    furring = furring_cut(route, frame)
    if furring:
        one = "it" if len(furring) == 1 else "them"
        past = length_text(strip_opening_in(metric=scene.metric), metric=scene.metric)
        steps.append(
            Step("strip", f"Open the wall's face to the full hole, and {past} past it above and below along {together(furring)}. "
                 f"Fix {together(furring)} to the wall beyond both cuts, then cut {one} and let the backing blocks in.", ("look",),
                 "The strip's ends sit tight on the wall.", "Old plaster falls in sheets: cut it gently.", Sheet.PARTS)
        )  # fmt: skip
    return steps
