"""The starter scene explains every key; the JSON schema describes the same file."""

from __future__ import annotations

import dataclasses
import json
import re
import tomllib
import typing
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from pydantic import BaseModel

import routeviz.model.scene as nouns
from routeviz.scenefile import edit, json_schema, load, loads, starter
from routeviz.scenefile.document import Document


def all_on() -> str:
    """The starter with every ``#key =`` and ``#[table]`` switched on."""
    return re.sub(r"(?m)^#(?=\w+ = |\[)", "", starter())


def _keys(table: type[BaseModel]) -> Iterator[tuple[str, str]]:
    for key, info in table.model_fields.items():
        yield table.__name__, key
        for part in _tables(info.annotation):
            yield from _keys(part)


def _tables(annotation: Any) -> Iterator[type[BaseModel]]:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        yield annotation
    for part in typing.get_args(annotation):
        yield from _tables(part)


def test_starter_loads_and_is_invented() -> None:
    scene = loads(starter(), "starter.toml")
    assert scene.invented
    assert scene.kitchen.width_in == 132.0  # 11 ft
    assert scene.hood.cover is not None
    gap = scene.kitchen.ceiling_in - (scene.cooktop.height_in + (scene.hood.mount_in or 0) + scene.hood.body_in)
    assert scene.hood.cover.min_in <= gap <= scene.hood.cover.max_in


def test_starter_loads_with_every_key_switched_on() -> None:
    scene = loads(all_on())
    assert scene.as_built is not None
    assert [f.part for f in scene.as_built.fittings] == ["straight", "elbow", "reducer", "cap"]
    assert scene.ceiling.beams[0].depth_in == 9.25
    assert scene.rules.waivers[0].reason


def test_starter_explains_every_key() -> None:
    keys = set(_keys(Document))
    assert len(keys) > 150
    unsaid = [(t, k) for t, k in keys if not re.search(rf"\b{k}\b", starter()) and (t, k) not in {("LayerTable", k)}]
    assert unsaid == []


def test_starter_marks_its_guesses() -> None:
    scene = loads(starter())
    marked = {a.field: a for a in scene.assumptions if "marked as guessed" in a.reason}
    assert set(marked) == {"ceiling.joists.first", "roof.framing.first"}
    assert marked["ceiling.joists.first"].value == "8 in"


def _records() -> list[type]:
    return [t for t in vars(nouns).values() if dataclasses.is_dataclass(t) and isinstance(t, type)]


def test_every_noun_of_the_scene_can_be_said() -> None:
    """Whatever the model can hold, some key of the file fills it: no field keeps one value in both files."""
    concrete = {"cap.roof": False, "assumed": [], "ceiling.joists": None, "ceiling.slab": "8 in", "above.kind": "slab"}
    scenes = [loads(all_on()), loads(SECOND_WORLD, "second.toml"), loads(edit(starter(), concrete))]
    seen: dict[tuple[str, str], set[str]] = {}

    def walk(value: Any) -> None:
        if dataclasses.is_dataclass(value) and not isinstance(value, type):
            for field in dataclasses.fields(value):
                inner = getattr(value, field.name)
                seen.setdefault((type(value).__name__, field.name), set()).add(repr(inner))
                walk(inner)
        elif isinstance(value, tuple):
            for inner in value:
                walk(inner)

    for scene in scenes:
        walk(scene)
    fields = {(t.__name__, f.name) for t in _records() for f in dataclasses.fields(t)}
    constant = {key for key in fields if len(seen.get(key, ())) < 2}
    assert constant == set()


SECOND_WORLD = """
format = 1
name = "Every other value"
about = "differs from the starter in every field"
unit = "cm"
[site]
altitude = 1600
air_temp = "30 degC"
cold_climate = true
[kitchen]
width = 400
depth = 350
ceiling = 260
[walls.hood]
beyond = "workshop"
frame = "masonry"
core = 20
bearing = false
fire_rated = true
inside = ["plaster 1.5"]
outside = []
openings = [{ name = "hatch", kind = "door", operable = false, left = 10, width = 80, height = 200 }]
services = [
  { name = "pipe", kind = "gas", left = 100, bottom = 20, width = 3, height = 50, clearance = 2, movable = true },
]
[walls.right]
beyond = "outdoors"
frame = "steel"
studs = { kind = "steel", size = "4 x 10 cm", spacing = 60, first = 2, doubled = [2], missing = [3] }
outside = ["board 1.2"]
plates = 2
lot_line = 100
[ceiling]
layers = []
rim = false
blocking = [120]
beams = [
  { name = "b", kind = "steel", width = 10, depth = 20, direction = "out", at = 90, bottom = 250, start = 2, end = 9 },
]
[ceiling.joists]
kind = "i-joist"
width = 6
depth = 24
at = [20, 61, 99]
direction = "along"
doubled = [1]
missing = [3]
[above]
kind = "storey"
storey_height = 250
floor = ["chipboard 2.2"]
[roof]
form = "shed"
pitch = "10 deg"
ridge = "out"
ridge_at = 420
overhang = 30
framing = { kind = "truss", size = "5 x 15 cm", spacing = 60, first = 10 }
layers = ["boards 2.4", "sheet metal 0.1"]
high_side = "right"
soffit_vented = false
[[spaces]]
name = "workshop"
kind = "room"
behind = "hood"
deep = 300
left = 20
width = 200
floor = 10
height = 230
walls.left = { beyond = "outdoors", frame = "concrete", core = 15 }
above = "storey"
[[obstacles]]
name = "old"
kind = "existing duct"
left = 100
out = 10
bottom = 200
width = 15
depth = 15
height = 60
clearance = 2
combustible = false
protected = true
cut_allowed = true
hides_duct = true
diameter = 15
ends_at = "attic"
[cooktop]
kind = "induction"
centre = 200
width = 60
depth = 52
height = 91
back = 5
heat = "7.2 kW"
counter = 90
burners = [{ across = 15, from_back = 15, diameter = 18, heat = "2 kW" }]
[hood]
width = 90
depth = 48
body = 30
canopy = 6
weight = "25 kg"
centre = 201
outlet = { place = "rear", section = "60 x 200 mm oval", across = 5, up = 20, collar = 5 }
cover = { min = 30, max = 60, width = 30, depth = 28 }
fan = { rated = "600 m3/h", speeds = [1.0, 0.5] }
fasteners = [{ across = 10, up = 25, row = "lower" }]
electrical = { across = 3, up = 28, volts = 230, hertz = 50, amps = 16, cord = true, dedicated = false }
[duct]
sections = ["125 mm round", { shape = "rectangular", width = 22, height = 9 }]
material = "stainless steel"
elbow_radius = 15
elbow_ratio = 1.5
elbow_construction = "smooth"
max_elbows = 2
min_straight = 50
first_run = 20
last_run = 10
clearance = 1
stock = 100
overlap = 3
offset_angles = [15]
offset_max = 40
boxing_allowed = false
transition = 10
sheet = "0.6 mm"
insulation_r = 4
[cap]
wall = false
damper = false
wall_flange = 20
roof_stub = 30
loss_coefficient = 1.5
overlap = 8
[[outdoors]]
name = "intake"
kind = "mechanical air intake"
face = "workshop/left"
left = 30
bottom = 150
width = 40
height = 40
away = 10
[rules]
profile = "somewhere"
open_flue_appliance = true
tight_house = true
makeup_air = false
[rules.maker]
hood_min = 65
hood_max = 85
cabinet_above = 80
side_clearance = 10
side_cabinet_up = 50
duct_min = 12
max_equivalent = 6
member_hole = 4
joist_flange = 1
document = "maker"
[[rules.waivers]]
code = "OTHER"
reason = "another reason"
by = "somebody"
[as_built]
material = "aluminium"
note = "seen from the attic"
screws_per_joint = 0
fittings = [
  { part = "offset", angle = 30, turn = "left", length = 30 },
  { part = "open end", ends_in = "attic" },
]
[tolerances]
studs = 1
joists = 2
rafters = 3
openings = 4
other = 5
"""


def test_schema_is_plain_json_with_a_description_for_every_key() -> None:
    schema = json_schema()
    assert json.loads(json.dumps(schema)) == schema
    for name, table in schema["$defs"].items():
        for part in (table, *table.get("anyOf", ())):
            for key, value in part.get("properties", {}).items():
                assert value.get("description"), (name, key)
    text = json.dumps(schema)
    assert '"null"' not in text  # TOML has none
    assert '"assume"' not in text


def _check(value: Any, schema: dict[str, Any], root: dict[str, Any], place: str) -> list[str]:
    """A small check of the words of JSON schema used here, written from draft 2020-12."""
    if "$ref" in schema:
        return _check(value, root["$defs"][schema["$ref"].rsplit("/", 1)[1]], root, place)
    if "anyOf" in schema:
        results = [_check(value, choice, root, place) for choice in schema["anyOf"]]
        return [] if any(not r for r in results) else min(results, key=len)
    kinds = schema.get("type", [])
    names = {dict: "object", list: "array", str: "string", bool: "boolean", int: "integer", float: "number"}
    said = names[type(value)]
    allowed = [kinds] if isinstance(kinds, str) else kinds
    if said not in allowed and not (said == "integer" and "number" in allowed):
        return [f"{place}: {said}, not {kinds}"]
    faults = [] if value in schema.get("enum", [value]) else [f"{place}: {value!r}"]
    if isinstance(value, dict):
        properties = schema["properties"]
        faults += [f"{place}.{k} unknown" for k in value if k not in properties]
        faults += [f"{place}.{k} missing" for k in schema.get("required", ()) if k not in value]
        for key in value.keys() & properties.keys():
            faults += _check(value[key], properties[key], root, f"{place}.{key}")
    if isinstance(value, list) and "items" in schema:
        for n, row in enumerate(value):
            faults += _check(row, schema["items"], root, f"{place}[{n}]")
    return faults


@pytest.mark.parametrize("text", [starter(), all_on(), SECOND_WORLD], ids=["starter", "all on", "second"])
def test_good_files_pass_the_schema(text: str) -> None:
    schema = json_schema()
    assert _check(tomllib.loads(text), schema, schema, "") == []


def test_the_schema_refuses_what_reading_refuses() -> None:
    schema = json_schema()
    data = tomllib.loads(starter())
    data["hood"]["widht"] = data["hood"].pop("width")
    data["cooktop"]["kind"] = "coal"
    faults = _check(data, schema, schema, "")
    assert sorted(faults) == [".cooktop.kind: 'coal'", ".hood.widht unknown", ".hood.width missing"]


def test_what_a_wall_does_not_have_is_no_assumption() -> None:
    home = Path(__file__).parents[2] / "scenes"
    concrete = {a.field: a.value for a in load(home / "metric_concrete_ceiling.toml").assumptions}
    assert not [field for field in concrete if field.endswith(".plates")]
    assert concrete["site.air_temp"] == "21 degC"
    framed = {a.field: a.value for a in load(home / "joist_dead_centre.toml").assumptions}
    assert framed["site.air_temp"] == "70 degF"
