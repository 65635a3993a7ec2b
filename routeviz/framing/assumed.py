"""What framing had to take for granted: members that the scene does not describe but the house must have."""

from __future__ import annotations

from routeviz.framing.levels import eave_line
from routeviz.framing.openings import header_depth_in
from routeviz.framing.place import house
from routeviz.framing.roof import truss_webs
from routeviz.framing.roofshape import is_cathedral, roof_shape
from routeviz.framing.upper import infill_places
from routeviz.model.scene import AboveKind, Assumption, MemberKind, RoofForm, Scene
from routeviz.units import length_text

__all__ = ["assumptions"]

_WEBS = (  # by how many are laid: the king post is the first
    "no webs in the trusses", "a king post in each truss", "a king post and one diagonal in each truss",
    "a king post and two diagonals in each truss",
)  # fmt: skip


def assumptions(scene: Scene) -> tuple[Assumption, ...]:
    """Give what `frame` takes for granted about a scene, in the order of the house from the walls up.

    Each names the scene field, what was taken and why, and so what to look at before anything is cut.
    """
    return (*_openings(scene), *_storey(scene), *_roof(scene))


def _openings(scene: Scene) -> list[Assumption]:
    found = []
    for wall in scene.walls:
        for opening in wall.openings if wall.studs is not None and wall.studs.kind is not MemberKind.FURRING else ():
            depth = length_text(header_depth_in(opening.width_in), metric=scene.metric)
            found.append(
                Assumption(f"walls.{wall.side}.openings.{opening.id}", f"header {depth} deep, one jack and one king stud a side",
                           "usual framing of an opening of that width; nobody measured it")
            )  # fmt: skip
    return found


def _storey(scene: Scene) -> list[Assumption]:
    if scene.above.kind is not AboveKind.STOREY:
        return []
    studs = any(
        w.beyond == "outdoors" and w.studs is not None and w.studs.kind is not MemberKind.FURRING for w in scene.walls
    )
    found = []
    if studs:
        found.append(
            Assumption("above", "studs upstairs stand over the studs below", "outer walls are usually stacked")
        )
    if scene.roof is not None:
        found.append(
            Assumption("above", "no joists in the ceiling upstairs",
                       "the scene does not describe them; look there before a duct goes through it")
        )  # fmt: skip
    return found


def _roof(scene: Scene) -> list[Assumption]:
    built = house(scene)
    line = eave_line(built)
    shape = roof_shape(built, line)
    if shape is None or scene.roof is None:
        return []
    found = []
    framing = scene.roof.framing
    if framing is not None and scene.roof.heel_in is None and not is_cathedral(built):
        rests = "the joists" if line.base > line.plate else "the wall plates"
        what = "rafters"
        if framing.kind is MemberKind.TRUSS:
            rests, what = "the bottom chords", "top chords"
        found.append(
            Assumption("roof.heel", length_text(line.heel, metric=scene.metric), f"the {what} taken to stand on {rests} at "
                       "the studs' outer face, and the roof's height over the ceiling with them; seated lower on the "
                       "plates they bring it down: measure it before the last piece of duct is cut")
        )  # fmt: skip
    if framing is not None and framing.kind is MemberKind.TRUSS:
        found.append(
            Assumption("roof.framing", _WEBS[min(len(truss_webs(built, shape)), 3)],
                       "the scene does not say how the webs run; look before a duct passes between them")
        )  # fmt: skip
    rises = {round(abs(s.b), 9) for s in shape.slopes}
    if scene.roof.form is RoofForm.GABLE and (
        len(rises) > 1 or scene.roof.pitch not in {abs(s.b) for s in shape.slopes}
    ):
        pitches = " and ".join(f"{12 * rise:.1f} in 12" for rise in sorted(rises, reverse=True))
        found.append(
            Assumption("roof.ridge_at", f"slopes of {pitches}", "with the stated pitch on both sides the ridge would not "
                       "meet both walls at plate height")
        )  # fmt: skip
    rising = is_cathedral(built) or infill_places(built, shape)
    if rising and abs(shape.slopes[0].b) > 0:
        found.append(
            Assumption(
                "roof", "studs in the gable ends stand over the studs below", "usual framing; nobody measured them"
            )
        )
    return found
