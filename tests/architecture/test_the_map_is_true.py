"""What DEVELOPERS.md and headers say of the program is so: libraries, verbs, names of files, the form of data."""

from __future__ import annotations

import ast
import importlib
import pkgutil
import re
import sys
import tomllib
from pathlib import Path

import view_plans

from routeviz.rules import book
from routeviz.views import wallmap

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "routeviz"
SOLD_AS = {"PIL": "pillow", "vtkmodules": "vtk", "pydantic_core": "pydantic"}  # a library's name where it is installed
ROW = re.compile(r"^\| (`[^|]+) \|[^|]*\|[^|]*\| ([^|]*)\|$", re.MULTILINE)


def said() -> dict[str, set[str]]:
    """Give each folder or file of the map with the libraries in its last column."""
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    return {name.rstrip("/"): libraries for name, libraries in rows(text)}


def rows(text: str) -> list[tuple[str, set[str]]]:
    return [
        (name, {re.sub(r"\s*\(.*", "", w).strip() for w in last.split(",")} - {""})
        for names, last in ROW.findall(text)
        for name in [", ".join(re.findall(r"`([^`]+)`", names))]
    ]


def imported(path: Path) -> set[str]:
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.level == 0 and node.module:
            found.add(node.module)
    tops = {name.partition(".")[0] for name in found} - set(sys.stdlib_module_names) - {"routeviz", "__future__"}
    return {SOLD_AS.get(name, name.replace("_", "-")) for name in tops}


def folders() -> dict[str, set[str]]:
    """Give the same map from the imports; a folder of its own row does not count for the one above it."""
    found: dict[str, set[str]] = {}
    own = [key.split(", ") for key in said()]
    for path in sorted(PACKAGE.rglob("*.py")):
        where = path.relative_to(PACKAGE).as_posix()
        inside = [
            (len(name), row) for row in own for name in row if where == name or where.startswith(name.rstrip("/") + "/")
        ]
        key = ", ".join(max(inside)[1]).rstrip("/") if inside else where
        found.setdefault(key, set()).update(imported(path))
    return found


def test_the_column_of_libraries_is_what_is_imported() -> None:
    found, stated = folders(), said()
    assert len(stated) > 15
    assert set(found) - set(stated) == {"__init__.py", "__main__.py"}
    for folder, libraries in stated.items():
        assert libraries == found[folder], folder


def test_every_library_is_one_that_the_project_asks_for() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    asked = {
        re.split(r"[>=<]", name)[0] for name in (*project["dependencies"], *project["optional-dependencies"]["motion"])
    }
    used = set().union(*said().values())
    assert len(used) > 15
    assert used - {"vtk"} == asked  # pyvista brings vtk


def test_every_verb_has_its_folder() -> None:
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    stages, outputs = re.findall(r"\*\*(\w+(?:,\s+\w+)+)\*\*", text)[:2]
    verbs = re.split(r",\s+", f"{stages}, {outputs}")
    assert len(verbs) > 8
    told = {verb.lower() for verb in re.findall(r"\| ([A-Z]+) \|", text)} | {"study"}  # many plans
    assert set(verbs) == told


def test_a_rule_s_file_is_named_as_its_code() -> None:
    names = [module.name for module in pkgutil.iter_modules(book.__path__)]
    assert len(names) > 40
    codes = {name: importlib.import_module(f"routeviz.rules.book.{name}").RULE.code for name in names}
    assert {name: code.lower().replace("-", "_") for name, code in codes.items()} == {name: name for name in names}


def test_the_map_s_header_names_what_it_carries() -> None:
    header = wallmap.__doc__ or ""
    data = wallmap.as_json(view_plans.wall_map(), cooktop_height_in=36.0)
    assert set(re.findall(r"^    ([a-z]+) +\S", header.partition("(`as_json`)")[2], re.MULTILINE)) == set(data)
    keys = re.search(r"their numbers: \{([^}]*)\}", header)
    assert keys is not None
    assert data["rules"]
    for row in data["rules"]:
        assert set(re.split(r",\s+", keys[1])) == set(row)


ARRAYS = re.compile(r"\b(Ints|Bools|Costs|Small|Corners|Array|NDArray|ndarray)\b")
SHAPE_OR_UNIT = re.compile(
    r"\bshape\b|\[ticks|\bticks\b|\[in\]|\bflat\b|\bindex|\bindices\b|\bper\b|\bWhether\b|\bTell\b"
)


def test_what_gives_arrays_says_their_shape_or_unit() -> None:
    found = {
        f"{path.relative_to(PACKAGE)}:{node.lineno} {node.name}": ast.get_docstring(node) or ""
        for path in sorted(PACKAGE.rglob("*.py"))
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_")
        if node.returns is not None and ARRAYS.search(ast.unparse(node.returns))
    }
    assert len(found) > 40
    assert [name for name, words in found.items() if not SHAPE_OR_UNIT.search(words)] == []
