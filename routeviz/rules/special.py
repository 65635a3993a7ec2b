"""Members that other rules hold for: beams, engineered members, what carries nothing, masonry and concrete."""

from __future__ import annotations

from routeviz.model.finding import FramingPiece, MemberRuling, MemberVerdict
from routeviz.model.scene import MemberKind
from routeviz.model.solids import Crossing, Solid, SolidKind
from routeviz.rules.cuts import Cut
from routeviz.rules.outcome import EPSILON_IN
from routeviz.rules.ruling import Asked, edge_is_tighter, fits, row, ruling
from routeviz.rules.sawn import hole_limit_in

__all__ = ["beam_ruling", "engineered_ruling", "free_ruling", "masonry_ruling"]


def beam_ruling(solid: Solid, cut: Cut, asked: Asked) -> MemberRuling:
    """Judge a cut in a beam, ridge or header."""
    limit, source = row("beam", "hole_in")
    joist = hole_limit_in(cut.depth_in)
    return ruling(
        solid, fits(limit, cut.size_in) if not cut.severs else MemberVerdict.NOT_ALLOWED,
        f"a beam or header takes a cable hole of {asked.most(limit)} at most; it carries what hangs on it", "hole", limit,
        cut.size_in, source,
        detail=f"even the rule for a single joist would allow no more than {asked.length(joist)}",
        remedy="Leave it whole: go under it, or to a face that is not behind it. An engineer may decide otherwise.",
    )  # fmt: skip


def engineered_ruling(solid: Solid, cut: Cut, asked: Asked) -> MemberRuling:
    """Judge a cut in an engineered member: only its maker or an engineer can allow it."""
    kind = solid.member.kind if solid.member else MemberKind.TRUSS
    source = "irc-r802-7-2" if solid.kind in (SolidKind.CHORD, SolidKind.WEB, SolidKind.RAFTER) else "irc-r502-8-2"
    words = {
        MemberKind.I_JOIST: "an I-joist is bored in its web only, by its maker's chart; its flanges are never cut",
        MemberKind.TRUSS: "a truss is never cut, notched or bored without a registered design",
        MemberKind.OPEN_WEB: "an open-web joist is never cut; a duct may pass between its webs",
        MemberKind.STEEL: "steel framing is cut by its maker's or an engineer's detail only",
    }.get(kind, "engineered timber is cut by its maker's or an engineer's detail only")
    chart = asked.maker.member_hole_in if kind is MemberKind.I_JOIST and solid.kind is SolidKind.JOIST else None
    if kind is MemberKind.I_JOIST and (cut.severs or cut.is_notch):
        return ruling(solid, MemberVerdict.NOT_ALLOWED, words, "hole", chart, cut.size_in, source,
                       detail="the duct would cut a flange", remedy="Shift the duct into the bay beside it.")  # fmt: skip
    if kind is MemberKind.I_JOIST:
        in_web = _web_ruling(solid, cut, asked, words, chart, source)
        if in_web is not None:
            return in_web
    carries = solid.kind in (SolidKind.BEAM, SolidKind.HEADER)
    joist = asked.length(hole_limit_in(cut.depth_in))
    note = f"even the rule for a sawn joist of its depth would allow no more than {joist}" if carries else ""
    return ruling(solid, MemberVerdict.DECIDED_ELSEWHERE, words, "hole", chart, cut.size_in, source, detail=note,
                   remedy="Shift the duct past it, or get the maker's or an engineer's written detail.")  # fmt: skip


def _web_ruling(
    solid: Solid, cut: Cut, asked: Asked, words: str, chart: float | None, source: str
) -> MemberRuling | None:
    """Judge a web hole by the flanges that it must leave whole, then by the maker's chart; None where there is none."""
    assumed, practice = row("i_joist", "flange_in")
    given, cited = asked.maker.joist_flange_in, asked.maker.document or "maker's chart"
    flange = assumed if given is None else given
    taken = "is taken to be" if given is None else "is, by its maker,"
    depth = f"its flange {taken} {asked.length(flange)} deep{', common practice' if given is None else ''}"
    if cut.edge_in < flange - EPSILON_IN:
        return ruling(solid, MemberVerdict.NOT_ALLOWED, words, "wood left at the edge", flange, cut.edge_in, source,
                       detail=f"the hole would cut a flange; {depth}",
                       remedy="Move the hole to the middle of the web, where the maker's chart allows one so large.")  # fmt: skip
    if chart is None:
        return None
    if edge_is_tighter(cut, flange, chart):
        return ruling(solid, MemberVerdict.WITHIN, words, "wood left at the edge", flange, cut.edge_in,
                       practice if given is None else "maker", words="" if given is None else cited,
                       detail=f"the hole stays in the web and within the chart; {depth}")  # fmt: skip
    return ruling(solid, fits(chart, cut.size_in), words, "hole", chart, cut.size_in, "maker", words=cited,
                   detail="the third-of-depth rule is for sawn timber and does not apply",
                   remedy="Keep to the hole that the chart allows here." if cut.size_in > chart else "")  # fmt: skip


def free_ruling(solid: Solid, cut: Cut, asked: Asked) -> MemberRuling:
    """Judge a cut in what carries nothing."""
    furring = solid.kind is SolidKind.FURRING or (solid.member is not None and solid.member.kind is MemberKind.FURRING)
    if furring:
        rule = "a furring strip carries no load and may be cut, with no header"
        detail = "fix the strip to the wall beyond both cuts first"
        pieces = (
            FramingPiece("masonry anchor", "through the strip into the wall", None, 4, "two beyond each cut"),
            FramingPiece("backing block", "as thick as the strip", None, 2, "behind the board's cut edges"),
        )
        return ruling(solid, MemberVerdict.ALLOWED, rule, "hole", None, cut.size_in, "common-practice", framing=pieces,
                       detail=detail)  # fmt: skip
    if solid.kind is SolidKind.BLOCKING:
        rule, detail = "blocking may be cut out and set again beside the duct", "set new blocking beside the duct"
    elif solid.crossing is Crossing.NEVER:
        return ruling(solid, MemberVerdict.NOT_ALLOWED, "the scene says that it may not be cut", "hole", None,
                       cut.size_in, "common-practice", remedy="Shift the duct past it.")  # fmt: skip
    else:
        rule, detail = "a panel that carries nothing may be cut", ""
    return ruling(solid, MemberVerdict.ALLOWED, rule, "hole", None, cut.size_in, "common-practice", detail=detail)


def masonry_ruling(solid: Solid, cut: Cut, asked: Asked) -> MemberRuling:
    """Judge a hole in masonry, log or concrete."""
    if solid.kind is SolidKind.SLAB:
        return ruling(solid, MemberVerdict.DECIDED_ELSEWHERE, "a concrete slab is cored only where an engineer says so",
                       "hole", None, cut.along_in, "common-practice",
                       remedy="Go under it, or have the reinforcement located and the core approved.")  # fmt: skip
    if solid.material == "log":
        return ruling(solid, MemberVerdict.WITHIN, "a log wall is bored between its fixings; logs settle", "hole", None,
                       cut.along_in, "common-practice", detail="leave room above the sleeve for settling")  # fmt: skip
    limit, source = row("masonry", "lintel_free_in", metric=asked.metric)
    sleeve = row("masonry", "sleeve_in")[0]
    wide = cut.along_in
    return ruling(
        solid, MemberVerdict.WITHIN if wide <= limit + EPSILON_IN else MemberVerdict.DECIDED_ELSEWHERE,
        "no lintel up to about two bricks' width", "width of the hole", limit, wide, source,
        framing=(FramingPiece("sleeve", f"in a hole {asked.length(sleeve)} larger than the duct", None, 1, "mortared in"),),
        detail="the hole takes a sleeve and the mortar round it",
        remedy="" if wide <= limit + EPSILON_IN else "Have a lintel sized, or use a narrower duct.",
    )  # fmt: skip
