"""What may be done to a member: one public question, one answer by kind of member.

The rule's numbers are in ``catalog/members.toml``. Where only an engineer or the maker may decide, that is the
answer; permission is never invented.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from routeviz.model.finding import MemberRuling
from routeviz.model.scene import MakerLimits
from routeviz.model.solids import Frame, Solid
from routeviz.rules.cuts import Cut
from routeviz.rules.profiles import Profile
from routeviz.rules.ruling import Asked, member_code
from routeviz.rules.sawn import hole_limit_in, joist_ruling, plate_ruling, rim_ruling, stud_ruling
from routeviz.rules.special import beam_ruling, engineered_ruling, free_ruling, masonry_ruling

__all__ = ["hole_limit_in", "member_code", "member_verdict"]

_Judge = Callable[[Solid, Cut, Asked], MemberRuling]
_JUDGES: dict[str, _Judge] = {
    "MBR-JOIST": joist_ruling, "MBR-STUD": stud_ruling, "MBR-PLATE": plate_ruling, "MBR-RIM": rim_ruling, "MBR-BEAM": beam_ruling,
    "MBR-ENGINEERED": engineered_ruling, "MBR-FREE": free_ruling, "MBR-MASONRY": masonry_ruling,
}  # fmt: skip


def member_verdict(
    solid: Solid, cut: Cut, profile: Profile, *, frame: Frame | None = None, maker: MakerLimits | None = None,
    metric: bool = False, in_a_row: int = 1,
) -> MemberRuling | None:  # fmt: skip
    """Say what may be done to a member.

    Parameters
    ----------
    solid : Solid
        The member.
    cut : Cut
        What the duct would take out of it: from `cut_of` a route's crossing, or made with `bore`, `notch`, `severing`.
    profile : Profile
        The place's rules; where it has no framing rule of its own the IRC's numbers are shown and said to be that.
    frame : Frame
        Gives the neighbours, and with them the lengths of headers and sills.
    maker : MakerLimits
        The maker's chart for engineered members.
    metric : bool
        Whether its words give lengths in millimetres.
    in_a_row : int
        Which one it is, as the duct comes to them, of successive doubled studs that are bored too wide for a single one.

    Returns
    -------
    MemberRuling or None
        None when the solid is a sheet or a thing, not a member.
    """
    judge = _JUDGES.get(member_code(solid))
    if judge is None:
        return None
    found = judge(solid, cut, Asked(frame, maker or MakerLimits(), metric, in_a_row))
    if profile.get("member_cuts") is None and found.source.startswith("irc-"):
        note = "this place's own framing rule is not known here; the IRC's numbers are shown"
        return replace(found, detail=f"{found.detail}; {note}" if found.detail else note)
    return found
