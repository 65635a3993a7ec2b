"""Each kind of mistake is found at its place, and said in the words of the trade."""

from __future__ import annotations

import re

import pytest

from routeviz.errors import Mistake, SceneError
from routeviz.scenefile import loads, starter


def spoil(changes: list[tuple[str, str]], more: str = "") -> str:
    """Replace whole lines of the starter (by how they begin, in order) and add text at its end."""
    text = starter()
    at = 0
    for old, new in changes:
        found = re.compile(rf"^{re.escape(old)}.*$", re.MULTILINE).search(text, at)
        assert found, old
        text = text[: found.start()] + new + text[found.end() :]
        at = found.start()
    return text + more


def mistakes(text: str) -> tuple[Mistake, ...]:
    with pytest.raises(SceneError) as caught:
        loads(text, "kitchen.toml")
    return caught.value.mistakes


CASES: dict[str, tuple[list[tuple[str, str]], str, str]] = {
    # what is wrong: the changed lines, the field that is named, words of the problem
    "hood left of the room": ([("centre = \"64 in\"                    # from the left wall; left", 'centre = "17 in"')],
        "hood.centre", "the hood would reach 1 in into the left wall"),
    "hood into the right wall": ([("[hood]", "[hood]"), ("centre", 'centre = "115 in"')],
        "hood.centre", "the hood would reach 1 in into the right wall"),
    "hood wider than its wall": ([("[kitchen]", "[kitchen]"), ("width", 'width = "35 in"')],
        "hood.width", "wider than the wall, which is 35 in"),
    "hood wider than its wall and than any hood": ([("[kitchen]", "[kitchen]"), ("width", 'width = "108 in"'),
        ("[hood]", "[hood]"), ("width", 'width = "150 in"')], "hood.width", "wider than the wall, which is 108 in"),
    "hood wider than any on a longer wall": ([("[kitchen]", "[kitchen]"), ("width", 'width = "160 in"'),
        ("[hood]", "[hood]"), ("width", 'width = "150 in"')], "hood.width", "must be at most 120 in"),
    "hood wider than any, and its wall shorter than it": ([("[hood]", "[hood]"), ("width", 'width = "150 in"')],
        "hood.width", "must be at most 120 in"),
    "cooktop wider than any": ([("[kitchen]", "[kitchen]"), ("width", 'width = "160 in"'),
        ("[cooktop]", "[cooktop]"), ("width", 'width = "121 in"')], "cooktop.width", "must be at most 120 in"),
    "cooktop outside the kitchen": ([("[cooktop]", "[cooktop]"), ("centre", 'centre = "130 in"')],
        "cooktop.centre", "the cooktop would reach 13 in into the right wall"),
    "opening over the end of its wall": ([("left = \"100 in\"", 'left = "105 in"')],
        "walls.hood.openings.sink-window.width", "reaches to 133 in, but the wall ends at 132 in"),
    "opening over the ceiling": ([("sill", 'sill = "70 in"')],
        "walls.hood.openings.sink-window.height", "reaches up to 106 in, but the wall to 96 in"),
    "window without a sill": ([("sill", "")], "walls.hood.openings.sink-window.sill", "missing"),
    "outlet bigger than the hood": ([("[hood.outlet]", "[hood.outlet]"), ("section", 'section = "38 in round"')],
        "hood.outlet.section", "bigger than the hood"),
    "outlet over the hood's front": ([("out = \"8 1/2 in\"", 'out = "17 in"')],
        "hood.outlet.out", "over the hood's front edge"),
    "outlet in the wall": ([("out = \"8 1/2 in\"", 'out = "3 in"')], "hood.outlet.out", "into the wall"),
    "outlet over the side": ([("[hood.outlet]", "[hood.outlet]"), ("across", 'across = "15 in"')],
        "hood.outlet.across", "over the hood's side"),
    "top outlet without its place": ([("out = \"8 1/2 in\"", "")], "hood.outlet.out", "missing"),
    "rear outlet without its height": ([("place = \"top\"", 'place = "rear"'), ("out = \"8 1/2 in\"", "")],
        "hood.outlet.up", "missing"),
    "canopy higher than the body": ([("canopy", 'canopy = "13 in"')], "hood.canopy", "higher than the whole body"),
    "hood in the ceiling": ([("mount", 'mount = "50 in"')], "hood.mount", "would reach 2 in into the ceiling"),
    "cover shortest over longest": ([("min = \"14 in\"", 'min = "33 in"')], "hood.cover.min", "more than the longest"),
    "cover wider than the hood": ([("[hood.cover]", "[hood.cover]"), ("width", 'width = "37 in"')],
        "hood.cover.width", "wider than the hood"),
    "joists closer than thick": ([("[ceiling.joists]", "[ceiling.joists]"), ("size", 'width = "6 in"\ndepth = "9 in"'),
        ("spacing", 'spacing = "6 in"')], "ceiling.joists.spacing", "not more than one joist is wide (6 in)"),
    "joist spacing of nothing": ([("[ceiling.joists]", "[ceiling.joists]"), ("spacing", 'spacing = "0 in"')],
        "ceiling.joists.spacing", "must be at least 4 in"),
    "joists without a direction": ([("direction = \"out\"", "")], "ceiling.joists.direction", "missing"),
    "joists without a first": ([("[ceiling.joists]", "[ceiling.joists]"), ("first", "")],
        "ceiling.joists.first", "missing"),
    "joists without a size": ([("[ceiling.joists]", "[ceiling.joists]"), ("size", "")],
        "ceiling.joists.size", "missing"),
    "first joist after a whole bay": ([("[ceiling.joists]", "[ceiling.joists]"), ("first", 'first = "20 in"')],
        "ceiling.joists.first", "more than one spacing"),
    "centres out of order": ([("[ceiling.joists]", "[ceiling.joists]"), ("spacing", ""),
        ("first", 'at = ["12 in", "44 in", "28 in"]')], "ceiling.joists.at.3", "not in order"),
    "centres and spacing": ([("[ceiling.joists]", "[ceiling.joists]"), ("first", 'at = ["12 in", "44 in"]')],
        "ceiling.joists.spacing", "given twice"),
    "doubled number too high": ([("[ceiling.joists]", "[ceiling.joists]"), ("first", 'first = "12 in"\ndoubled = [40]')],
        "ceiling.joists.doubled.1", "there are only"),
    "doubled and missing": ([("[ceiling.joists]", "[ceiling.joists]"),
        ("first", 'first = "12 in"\ndoubled = [4]\nmissing = [4]')], "ceiling.joists.missing.1", "doubled and as missing"),
    "unknown space": ([("beyond = \"garage\"", 'beyond = "garaje"')], "walls.left.beyond", "no space of this name"),
    "space behind another wall": ([("behind", 'behind = "right"')], "spaces.garage.behind", "the left wall says"),
    "roof left out": ([("kind = \"attic\"", 'kind = "attic"'), ("[roof]", "[roofs]")], "roofs", "unknown key"),
    "gable without ridge": ([("ridge_at", "")], "roof.ridge_at", "missing"),
    "shed without high side": ([("form = ", 'form = "shed"')], "roof.high_side", "missing"),
    "high side of a gable": ([("soffit_vented", 'high_side = "front"')], "roof.high_side", "only a shed roof"),
    "pitch of an attic roof": ([("pitch", 'pitch = "0/12"')], "roof.pitch", "has a slope"),
    "heel below the plates": ([("soffit_vented", 'heel = "2 in"')], "roof.heel", "down into the room"),
    "too steep": ([("pitch", 'pitch = "70 deg"')], "roof.pitch", "steeper than 60 degrees"),
    "flat but steep": ([("form = ", 'form = "flat"')], "roof.pitch", "too steep for a flat roof"),
    "storey words under an attic": ([("kind = \"attic\"", 'kind = "attic"\nstorey_height = "8 ft"')],
        "above.storey_height", "no storey above"),
    "concrete and joists": ([("rim", 'slab = "8 in"')], "ceiling.joists", "no joists"),
    "slab missing": ([("kind = \"attic\"", 'kind = "slab"')], "ceiling.slab", "missing"),
    "burner over the edge": ([("across = \"7 in\"", 'across = "2 in"')], "cooktop.burners.1.across", "over the cooktop"),
    "fan curve turns back": ([("curve", 'curve = [["200 cfm", "0.5 in wg"], ["100 cfm", "0.7 in wg"]]')],
        "hood.fan.curve.2", "flow does not rise"),
    "fan curve with one point": ([("curve", 'curve = [["200 cfm", "0.5 in wg"]]')], "hood.fan.curve", "no curve"),
    "fan curve with half a pair": ([("curve", 'curve = [["200 cfm"], ["400 cfm", "0 in wg"]]')],
        "hood.fan.curve.1.2", "missing"),
    "fastener beside the hood": ([("across = \"-9 in\"", 'across = "-19 in"')],
        "hood.fasteners.1.across", "beyond the hood's side, 18 in"),
    "no duct": ([("sections", "sections = []")], "duct.sections", "no duct is listed"),
    "duct not in a list": ([("sections", 'sections = "8 in round"')], "duct.sections", "a list is needed"),
    "no way out allowed": ([("wall = true", "wall = false"), ("roof = true", "roof = false")],
        "cap", "neither a wall cap nor a roof cap"),
    "no such face": ([("face", 'face = "back"')], "outdoors.upstairs-window.face", "no such face"),
    "hood limits crossed": ([("hood_min", 'hood_min = "40 in"')], "rules.maker.hood_min", "more than the greatest"),
    "a name used twice": ([("name = \"left-uppers\"", 'name = "sink-window"')],
        "obstacles.sink-window.name", "used twice"),
    "a reserved name": ([("name = \"left-uppers\"", 'name = "outdoors"')], "obstacles.outdoors.name", "meaning of its own"),
    "an impossible name": ([("name = \"left-uppers\"", 'name = "a/b"')], "obstacles.a/b.name", "cannot be a name"),
    "a guessed key that is not there": ([("assumed", 'assumed = ["ceiling.joist.first"]')], "assumed.1", "no such key"),
    "a newer format": ([("format", "format = 2")], "format", "must be at most 1"),
    "word for a number": ([("max_elbows", 'max_elbows = "three"')], "duct.max_elbows", "a whole number is needed"),
    "quotes round true": ([("boxing_allowed", 'boxing_allowed = "yes"')], "duct.boxing_allowed", "true or false"),
    "unknown word": ([("[cooktop]", "[cooktop]"), ("kind", 'kind = "gaz"')], "cooktop.kind", "not one of the known"),
    "unknown lumber": ([("[ceiling.joists]", "[ceiling.joists]"), ("size", 'size = "2x9"')],
        "ceiling.joists.size", "not a known lumber size"),
    "layer without thickness": ([("[ceiling]", "[ceiling]"), ("layers", 'layers = ["gypsum board"]')],
        "ceiling.layers.1", "not a layer"),
    "weight in inches": ([("weight", 'weight = "58 in"')], "hood.weight", "cannot be read as lb"),
    "weight with a decimal comma": ([("weight", 'weight = "22,5 kg"')], "hood.weight", "a comma that parts no thousands"),
    "length with a decimal comma": ([("lot_line", 'lot_line = "1,5 m"')], "walls.hood.lot_line", "a comma inside a number"),
    "pitch with a decimal comma": ([("pitch", 'pitch = "22,5 deg"')], "roof.pitch", "not a roof pitch"),
    "member with a decimal comma": ([("[ceiling.joists]", "[ceiling.joists]"), ("size", 'size = "38,5x184 mm"')],
        "ceiling.joists.size", "not a member size"),
    "duct with a decimal comma": ([("sections", 'sections = ["3,25 x 10 in"]')], "duct.sections.1", "not a duct section"),
    "layer with a decimal comma": ([("[ceiling]", "[ceiling]"), ("layers", 'layers = ["gypsum board 12,5 mm"]')],
        "ceiling.layers.1", "not a layer"),
    "negative size": ([("name = \"left-uppers\"", 'name = "left-uppers"'), ("width", 'width = "-32 in"')],
        "obstacles.left-uppers.width", "must be at least 1/16 in"),
    "negative gap": ([("lot_line", 'lot_line = "-3 ft"')], "walls.hood.lot_line", "must not be negative"),
    "studs of an outdoor wall": ([("[walls.left]", "[walls.left]"), ("studs", "")], "walls.left.studs", "missing"),
    "masonry without thickness": ([("frame", 'frame = "masonry"')], "walls.hood.core", "missing"),
}  # fmt: skip


@pytest.mark.parametrize("case", CASES)
def test_found_at_its_place(case: str) -> None:
    changes, field, words = CASES[case]
    found = [m for m in mistakes(spoil(changes)) if m.field == field]
    assert found, [str(m) for m in mistakes(spoil(changes))]
    assert words in found[0].problem
    assert found[0].remedy


MORE: dict[str, tuple[str, str, str]] = {
    # text added at the end of the starter, the field that is named, words of the problem
    "waiver without a reason": ('[[rules.waivers]]\ncode = "X"\n', "rules.waivers.1.reason", "missing"),
    "waiver with an empty reason": ('[[rules.waivers]]\ncode = "X"\nreason = " "\n', "rules.waivers.1.reason", "empty"),
    "as built without fittings": ("[as_built]\nfittings = []\n", "as_built", "lists no fittings"),
    "elbow without a turn": ('[[as_built.fittings]]\npart = "elbow"\n', "as_built.fittings.1.turn", "missing"),
    "straight without a length": ('[[as_built.fittings]]\npart = "straight"\n', "as_built.fittings.1.length", "missing"),
    "reducer without a section": ('[[as_built.fittings]]\npart = "reducer"\n', "as_built.fittings.1.to_section", "missing"),
    "straight that turns": ('[[as_built.fittings]]\npart = "straight"\nlength = 9\nturn = "up"\n',
        "as_built.fittings.1.turn", "does not turn"),
    "cap in the middle": ('[[as_built.fittings]]\npart = "cap"\n[[as_built.fittings]]\npart = "straight"\nlength = 9\n',
        "as_built.fittings.1.part", "more fittings follow"),
    "one row in single brackets": ('[as_built.fittings]\npart = "cap"\n', "as_built.fittings", "a list is needed here"),
    "text for a table": ("[[as_built.fittings]]\n[[rules.waivers]]\n", "as_built.fittings.1.part", "missing"),
}  # fmt: skip


@pytest.mark.parametrize("case", MORE)
def test_found_in_added_tables(case: str) -> None:
    more, field, words = MORE[case]
    found = [m for m in mistakes(spoil([], more)) if m.field == field]
    assert found, [str(m) for m in mistakes(spoil([], more))]
    assert words in found[0].problem


@pytest.mark.parametrize("case", [name for name in CASES if "comma" in name])
def test_a_comma_is_answered_with_the_number_to_write(case: str) -> None:
    changes, field, _ = CASES[case]
    (found,) = mistakes(spoil(changes))
    assert found.field == field
    assert re.match(r"Write \d+\.\d+ with a point$", found.remedy), found.remedy


def test_one_mistake_gives_one_message() -> None:
    """A value that cannot be read does not set off the checks between fields."""
    for old, new in [
        ('width = "11 ft"', 'width = "eleven feet"'),
        ('centre = "64 in"                    # from the left wall\n'[:16], 'centre = "64 im"'),
        ('place = "top"', 'place = "front"'),
        ('section = "8 in round"', 'section = "8 in"'),
        ('kind = "attic"', 'kind = "loft"'),
        ("frame", 'frame = "straw"'),
        ("form = ", 'form = "dome"'),
    ]:
        assert len(mistakes(spoil([(old, new)]))) == 1, (old, [str(m) for m in mistakes(spoil([(old, new)]))])


def test_missing_tables_are_reported_together() -> None:
    fields = {m.field for m in mistakes("format = 1\nname = 'x'\n")}
    assert fields == {"kitchen", "walls", "ceiling", "above", "cooktop", "hood"}


def test_messages_speak_of_the_trade_not_of_the_program() -> None:
    words = re.compile(r"pydantic|valid|error|type=|input|float|str\b|None|tuple|mapping|nan", re.IGNORECASE)
    for changes, _, _ in CASES.values():
        for mistake in mistakes(spoil(changes)):
            said = f"{mistake.problem} {mistake.remedy}"
            assert not words.search(said), said


@pytest.mark.parametrize(("typed", "meant"), [("widht", "width"), ("center", "centre"), ("Mount", "mount")])
def test_unknown_keys_name_the_nearest_known_one(typed: str, meant: str) -> None:
    text = spoil([("[hood]", f"[hood]\n{typed} = 3")])
    (mistake,) = [m for m in mistakes(text) if m.problem == "unknown key"]
    assert mistake.remedy.startswith(f"Did you mean {meant}?")
    assert mistake.value == "3"


def test_metric_files_are_answered_in_millimetres() -> None:
    text = spoil([("unit", 'unit = "mm"'), ('left = "100 in"', "left = 2700")])
    (mistake,) = mistakes(text)
    # 2700 + 28 x 25.4 = 3411.2; the wall is 11 ft = 3352.8 mm
    assert mistake.problem == "reaches to 3411.2 mm, but the wall ends at 3352.8 mm"


class TestWordsThatOnlyTheCallerKnows:
    TEXT = spoil([("profile", 'profile = "irc-2012"')], '[[rules.waivers]]\ncode = "clr-sid"\nreason = "agreed"\n')

    def test_without_a_list_nothing_is_checked(self) -> None:
        assert loads(self.TEXT).rules.profile == "irc-2012"

    def test_unknown_profile_and_code_are_found_with_the_rest(self) -> None:
        text = self.TEXT.replace('width = "11 ft"', 'width = "wide"')
        with pytest.raises(SceneError) as caught:
            loads(text, profiles=["irc-2021", "england"], codes=["CLR-SIDE", "TRM-OPENING"])
        found = {m.field: m for m in caught.value.mistakes}
        assert set(found) == {"kitchen.width", "rules.profile", "rules.waivers.1.code"}
        assert found["rules.profile"].remedy == "Did you mean irc-2021? Write one of: irc-2021, england"
        assert found["rules.waivers.1.code"].remedy.startswith("Did you mean CLR-SIDE?")
        lines = text.split("\n")
        assert lines[(found["rules.profile"].line or 0) - 1].startswith("profile = ")
        assert lines[(found["rules.waivers.1.code"].line or 0) - 1].startswith("code = ")

    def test_known_words_pass(self) -> None:
        assert loads(self.TEXT, profiles=["irc-2012"], codes=["clr-sid"]).rules.waivers[0].code == "clr-sid"
