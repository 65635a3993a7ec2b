"""What may be done to a member: one public question, one answer by kind of member.

The rule's numbers are in ``catalog/members.toml``. Where only an engineer or the maker may decide, that is the
answer; permission is never invented.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from routeviz import catalog
from routeviz.model.finding import FramingPiece, MemberRuling, MemberVerdict
from routeviz.model.scene import MakerLimits, MemberKind
from routeviz.model.solids import Crossing, Frame, Solid, SolidKind
from routeviz.rules.cuts import Cut
from routeviz.rules.openings import ceiling_opening, plate_tie, wall_opening
from routeviz.rules.outcome import EPSILON_IN
from routeviz.rules.profiles import Profile
from routeviz.units import inch_text

__all__ = ["hole_limit_in", "member_code", "member_verdict"]

_ENGINEERED = frozenset({MemberKind.I_JOIST, MemberKind.OPEN_WEB, MemberKind.TRUSS, MemberKind.ENGINEERED,
                         MemberKind.STEEL})  # fmt: skip
_CODES = {
    SolidKind.JOIST: "MBR-JOIST", SolidKind.RAFTER: "MBR-JOIST", SolidKind.RIDGE: "MBR-BEAM",
    SolidKind.STUD: "MBR-STUD", SolidKind.JACK: "MBR-STUD", SolidKind.CRIPPLE: "MBR-STUD",
    SolidKind.PLATE: "MBR-PLATE", SolidKind.SILL: "MBR-PLATE", SolidKind.RIM: "MBR-RIM",
    SolidKind.BEAM: "MBR-BEAM", SolidKind.HEADER: "MBR-BEAM", SolidKind.CHORD: "MBR-ENGINEERED",
    SolidKind.WEB: "MBR-ENGINEERED", SolidKind.FURRING: "MBR-FREE", SolidKind.BLOCKING: "MBR-FREE",
    SolidKind.CABINET: "MBR-FREE", SolidKind.SOFFIT: "MBR-FREE", SolidKind.OBSTACLE: "MBR-FREE",
    SolidKind.MASONRY: "MBR-MASONRY", SolidKind.SLAB: "MBR-MASONRY",
}  # fmt: skip


def member_code(solid: Solid) -> str:
    """Give the code of the rule that judges cuts in this solid; "" for sheets and things that are no members."""
    if solid.kind is SolidKind.EAVE or solid.crossing is Crossing.GHOST:
        return ""
    if solid.member is not None and solid.member.kind in _ENGINEERED:
        return "MBR-ENGINEERED"
    if solid.member is not None and solid.member.kind is MemberKind.FURRING:
        return "MBR-FREE"
    return _CODES.get(solid.kind, "")


def _row(group: str, key: str) -> tuple[float, str]:
    row = catalog.table("members")[group][key]
    return float(row["value"]), str(row["source"])


def hole_limit_in(depth_in: float) -> float:
    """Give the largest hole in a sawn joist or rafter: a third of its depth, with 2 in left at both edges.

    Examples
    --------
    >>> round(hole_limit_in(9.25), 4)
    3.0833
    >>> hole_limit_in(3.5)
    0.0
    """
    share, edge = _row("sawn", "hole_share")[0], _row("sawn", "hole_edge_in")[0]
    return min(depth_in * share, max(0.0, depth_in - 2 * edge))


def _ruling(
    solid: Solid, verdict: MemberVerdict, rule: str, measure: str, allowed: float | None, ours: float | None,
    source: str, *, framing: tuple[FramingPiece, ...] = (), detail: str = "", remedy: str = "", words: str = "",
) -> MemberRuling:  # fmt: skip
    return MemberRuling(solid.id, solid.label, verdict, member_code(solid), rule, measure, allowed, ours, source,
                        words or catalog.source(source).text, framing, detail, remedy)  # fmt: skip


def _fits(allowed: float, ours: float) -> MemberVerdict:
    return MemberVerdict.WITHIN if ours <= allowed + EPSILON_IN else MemberVerdict.NOT_ALLOWED


def _joist(solid: Solid, cut: Cut, frame: Frame | None, _maker: MakerLimits) -> MemberRuling:
    group = "rafter" if solid.kind is SolidKind.RAFTER else "sawn"
    source = _row(group, "hole_share")[1]
    around = ceiling_opening(solid, frame)
    way_out = "Shift the duct into the bay beside it, or frame an opening with headers to its neighbours."
    limit = hole_limit_in(cut.depth_in)
    rule = f"a hole of at most a third of the depth, {inch_text(limit)}, with 2 in left at both edges"
    if cut.severs:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, rule, "hole", limit, cut.size_in, source, framing=around,
                       detail="the duct would take its whole section", remedy=way_out)  # fmt: skip
    if cut.is_notch:
        return _joist_notch(solid, cut, group, around, way_out)
    edge = _row(group, "hole_edge_in")[0]
    if cut.size_in <= limit + EPSILON_IN and cut.edge_in < edge - EPSILON_IN:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, "2 in of wood at both edges of a hole", "wood left at the edge",
                       edge, cut.edge_in, source, framing=around, remedy="Move the hole to the middle of the depth.")  # fmt: skip
    verdict = _fits(limit, cut.size_in)
    bad = verdict is MemberVerdict.NOT_ALLOWED
    return _ruling(solid, verdict, rule, "hole", limit, cut.size_in, source, framing=around if bad else (),
                   remedy=way_out if bad else "")  # fmt: skip


def _joist_notch(solid: Solid, cut: Cut, group: str, around: tuple[FramingPiece, ...], way_out: str) -> MemberRuling:
    share, source = _row(group, "notch_share")
    end_share = _row("sawn", "end_notch_share")[0]
    at_end = cut.from_end_in is not None and cut.from_end_in <= cut.along_in / 2 + EPSILON_IN
    allowed = cut.depth_in * (end_share if at_end else share)
    middle = _row("sawn", "notch_not_in_middle_share")[0]
    place = cut.end_share
    if place is not None and place > middle and not at_end:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, "no notch in the middle third of the span", "notch", 0.0,
                       cut.notch_in, source, framing=around, remedy=way_out)  # fmt: skip
    longest = cut.depth_in * _row("sawn", "notch_length_share")[0]
    if not at_end and cut.along_in > longest + EPSILON_IN:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, "a notch no longer than a third of the depth", "notch length",
                       longest, cut.along_in, source, framing=around, remedy=way_out)  # fmt: skip
    verdict = _fits(allowed, cut.notch_in)
    rule = f"a notch of at most {'a quarter' if at_end else 'a sixth'} of the depth, {inch_text(allowed)}"
    bad = verdict is MemberVerdict.NOT_ALLOWED
    return _ruling(solid, verdict, rule, "notch", allowed, cut.notch_in, source, framing=around if bad else (),
                   remedy=way_out if bad else "")  # fmt: skip


def _stud(solid: Solid, cut: Cut, frame: Frame | None, _maker: MakerLimits) -> MemberRuling:
    member = solid.member
    loaded = member is None or member.bearing or member.exterior
    doubled = member is not None and member.plies >= 2
    key = "bore_doubled_share" if loaded and doubled else "bore_bearing_share" if loaded else "bore_partition_share"
    share, source = _row("stud", key)
    edge = _row("stud", "bore_edge_in")[0]
    limit = min(cut.depth_in * share, cut.depth_in - 2 * edge)
    kind = "doubled bearing stud" if loaded and doubled else "bearing or exterior stud" if loaded else "partition stud"
    rule = f"a bore of at most {share * 100:.0f} of 100 parts of a {kind}'s depth, {inch_text(limit)}, 5/8 in from its edges"
    around = wall_opening(solid, cut, frame)
    way_out = "Shift the hole between the studs, or frame an opening like a small window."
    if cut.severs:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, rule, "bore", limit, cut.size_in, source, framing=around,
                       detail="the duct would take its whole section", remedy=way_out)  # fmt: skip
    if cut.is_notch:
        notch_share, source = _row("stud", "notch_bearing_share" if loaded else "notch_partition_share")
        allowed = cut.depth_in * notch_share
        verdict = _fits(allowed, cut.notch_in)
        bad = verdict is MemberVerdict.NOT_ALLOWED
        return _ruling(solid, verdict, f"a notch of at most {inch_text(allowed)}", "notch", allowed, cut.notch_in,
                       source, framing=around if bad else (), remedy=way_out if bad else "")  # fmt: skip
    if cut.size_in <= limit + EPSILON_IN and cut.edge_in < edge - EPSILON_IN:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, "5/8 in of wood at both edges of a bore",
                       "wood left at the edge", edge, cut.edge_in, source, framing=around,
                       remedy="Move the bore to the middle of the stud.")  # fmt: skip
    verdict = _fits(limit, cut.size_in)
    bad = verdict is MemberVerdict.NOT_ALLOWED
    return _ruling(solid, verdict, rule, "bore", limit, cut.size_in, source, framing=around if bad else (),
                   remedy=way_out if bad else "")  # fmt: skip


def _plate(solid: Solid, cut: Cut, _frame: Frame | None, _maker: MakerLimits) -> MemberRuling:
    member = solid.member
    share, source = _row("plate", "tie_above_share")
    limit = cut.depth_in * share
    taken = cut.depth_in - max(0.0, cut.left_in[0]) - max(0.0, cut.left_in[1]) if cut.left_in else cut.size_in
    if cut.severs and not cut.left_in:
        taken = cut.depth_in
    loaded = member is None or member.bearing or member.exterior
    top = "bottom" not in solid.id and "bottom" not in solid.label and solid.kind is SolidKind.PLATE
    if cut.lengthwise:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, "a plate is crossed, never cut along its length", "cut of the width",
                       limit, taken, source, remedy="Run the duct beside the plate, or cross it square.")  # fmt: skip
    if taken <= limit + EPSILON_IN or not loaded:
        why = "no tie up to half the width" if loaded else "a plate that carries nothing needs no tie"
        return _ruling(solid, MemberVerdict.WITHIN if loaded else MemberVerdict.ALLOWED, why, "cut of the width",
                       limit if loaded else None, taken, source)  # fmt: skip
    if not top:
        return _ruling(solid, MemberVerdict.ALLOWED, "a bottom plate between studs may be cut", "cut of the width", None,
                       taken, "common-practice", detail="fix both ends of the plate to the floor")  # fmt: skip
    return _ruling(
        solid, MemberVerdict.WITHIN, "a top plate cut by more than half its width needs a steel tie across the cut",
        "cut of the width", cut.depth_in, min(taken, cut.depth_in), source, framing=(plate_tie(cut),),
        detail=f"{inch_text(taken)} of {inch_text(cut.depth_in)} is cut, more than half: a tie is needed",
        remedy="Nail a steel tie over the cut plate.",
    )  # fmt: skip


def _rim(solid: Solid, cut: Cut, frame: Frame | None, _maker: MakerLimits) -> MemberRuling:
    edge, source = _row("rim", "between_joists_edge_in")
    limit = max(0.0, cut.depth_in - 2 * edge)
    rule = f"a rim on its wall may be cut between two joists while {inch_text(edge)} stays above and below"
    if cut.severs:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, rule, "hole", limit, cut.size_in, source,
                       framing=ceiling_opening(solid, frame), remedy="Use a smaller or flatter duct at the rim.")  # fmt: skip
    if cut.size_in <= limit + EPSILON_IN and cut.edge_in < edge - EPSILON_IN:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, rule, "wood left at the edge", edge, cut.edge_in, source,
                       remedy="Move the hole to the middle of the rim.")  # fmt: skip
    verdict = _fits(limit, cut.size_in)
    bad = verdict is MemberVerdict.NOT_ALLOWED
    tell = "Use a smaller or flatter duct at the rim." if bad else "Ask the inspector before cutting the rim."
    return _ruling(solid, verdict, rule, "hole", limit, cut.size_in, source, remedy=tell,
                   detail="tolerated between two joists and under no stud; inspectors differ")  # fmt: skip


def _beam(solid: Solid, cut: Cut, _frame: Frame | None, _maker: MakerLimits) -> MemberRuling:
    limit, source = _row("beam", "hole_in")
    joist = hole_limit_in(cut.depth_in)
    return _ruling(
        solid, _fits(limit, cut.size_in) if not cut.severs else MemberVerdict.NOT_ALLOWED,
        f"a beam or header takes a cable hole of {inch_text(limit)} at most; it carries what hangs on it", "hole", limit,
        cut.size_in, source,
        detail=f"even the rule for a single joist would allow no more than {inch_text(joist)}",
        remedy="Leave it whole: go under it, or to a face that is not behind it. An engineer may decide otherwise.",
    )  # fmt: skip


def _engineered(solid: Solid, cut: Cut, _frame: Frame | None, maker: MakerLimits) -> MemberRuling:
    kind = solid.member.kind if solid.member else MemberKind.TRUSS
    source = "irc-r802-7-2" if solid.kind in (SolidKind.CHORD, SolidKind.WEB, SolidKind.RAFTER) else "irc-r502-8-2"
    words = {
        MemberKind.I_JOIST: "an I-joist is bored in its web only, by its maker's chart; its flanges are never cut",
        MemberKind.TRUSS: "a truss is never cut, notched or bored without a registered design",
        MemberKind.OPEN_WEB: "an open-web joist is never cut; a duct may pass between its webs",
        MemberKind.STEEL: "steel framing is cut by its maker's or an engineer's detail only",
    }.get(kind, "engineered timber is cut by its maker's or an engineer's detail only")
    chart = maker.member_hole_in
    if (
        kind in (MemberKind.I_JOIST, MemberKind.ENGINEERED)
        and chart is not None
        and not cut.severs
        and not cut.is_notch
    ):
        return _ruling(solid, _fits(chart, cut.size_in), words, "hole", chart, cut.size_in, "maker",
                       words=maker.document or "maker's chart",
                       detail="the third-of-depth rule is for sawn timber and does not apply",
                       remedy="Keep to the hole that the chart allows here." if cut.size_in > chart else "")  # fmt: skip
    if kind is MemberKind.I_JOIST and (cut.severs or cut.is_notch):
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, words, "hole", chart, cut.size_in, source,
                       detail="the duct would cut a flange", remedy="Shift the duct into the bay beside it.")  # fmt: skip
    return _ruling(solid, MemberVerdict.DECIDED_ELSEWHERE, words, "hole", chart, cut.size_in, source,
                   remedy="Shift the duct past it, or get the maker's or an engineer's written detail.")  # fmt: skip


def _free(solid: Solid, cut: Cut, _frame: Frame | None, _maker: MakerLimits) -> MemberRuling:
    furring = solid.kind is SolidKind.FURRING or (solid.member is not None and solid.member.kind is MemberKind.FURRING)
    if furring:
        rule = "a furring strip carries no load and may be cut, with no header"
        detail = "fix the strip to the wall beyond both cuts first"
        pieces = (
            FramingPiece("masonry anchor", "through the strip into the wall", None, 4, "two beyond each cut"),
            FramingPiece(
                "backing block", "as thick as the strip", None, 2, "behind the board's cut edges and for the hood"
            ),
        )
        return _ruling(solid, MemberVerdict.ALLOWED, rule, "hole", None, cut.size_in, "common-practice", framing=pieces,
                       detail=detail)  # fmt: skip
    if solid.kind is SolidKind.BLOCKING:
        rule, detail = "blocking may be cut out and set again beside the duct", "set new blocking beside the duct"
    elif solid.crossing is Crossing.NEVER:
        return _ruling(solid, MemberVerdict.NOT_ALLOWED, "the scene says that it may not be cut", "hole", None,
                       cut.size_in, "common-practice", remedy="Shift the duct past it.")  # fmt: skip
    else:
        rule, detail = "a panel that carries nothing may be cut", ""
    return _ruling(solid, MemberVerdict.ALLOWED, rule, "hole", None, cut.size_in, "common-practice", detail=detail)


def _masonry(solid: Solid, cut: Cut, _frame: Frame | None, _maker: MakerLimits) -> MemberRuling:
    if solid.kind is SolidKind.SLAB:
        return _ruling(solid, MemberVerdict.DECIDED_ELSEWHERE, "a concrete slab is cored only where an engineer says so",
                       "hole", None, cut.along_in, "common-practice",
                       remedy="Go under it, or have the reinforcement located and the core approved.")  # fmt: skip
    if solid.material == "log":
        return _ruling(solid, MemberVerdict.WITHIN, "a log wall is bored between its fixings; logs settle", "hole", None,
                       cut.along_in, "common-practice", detail="leave room above the sleeve for settling")  # fmt: skip
    limit, source = _row("masonry", "lintel_free_in")
    sleeve = _row("masonry", "sleeve_in")[0]
    wide = cut.along_in
    return _ruling(
        solid, MemberVerdict.WITHIN if wide <= limit + EPSILON_IN else MemberVerdict.DECIDED_ELSEWHERE,
        "no lintel up to about two bricks' width", "width of the hole", limit, wide, source,
        framing=(FramingPiece("sleeve", f"{inch_text(sleeve)} larger than the duct", None, 1, "mortared in"),),
        detail="the hole takes a sleeve; make good round it with cut brick and mortar",
        remedy="" if wide <= limit + EPSILON_IN else "Have a lintel sized, or use a narrower duct.",
    )  # fmt: skip


_Judge = Callable[[Solid, Cut, Frame | None, MakerLimits], MemberRuling]
_JUDGES: dict[str, _Judge] = {
    "MBR-JOIST": _joist, "MBR-STUD": _stud, "MBR-PLATE": _plate, "MBR-RIM": _rim, "MBR-BEAM": _beam,
    "MBR-ENGINEERED": _engineered, "MBR-FREE": _free, "MBR-MASONRY": _masonry,
}  # fmt: skip


def member_verdict(
    solid: Solid, cut: Cut, profile: Profile, *, frame: Frame | None = None, maker: MakerLimits | None = None
) -> MemberRuling | None:
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

    Returns
    -------
    MemberRuling or None
        None when the solid is a sheet or a thing, not a member.
    """
    judge = _JUDGES.get(member_code(solid))
    if judge is None:
        return None
    ruling = judge(solid, cut, frame, maker or MakerLimits())
    if profile.get("member_cuts") is None and ruling.source.startswith("irc-"):
        note = "this place's own framing rule is not known here; the IRC's numbers are shown"
        return replace(ruling, detail=f"{ruling.detail}; {note}" if ruling.detail else note)
    return ruling
