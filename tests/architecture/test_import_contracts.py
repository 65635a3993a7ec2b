"""The map of DEVELOPERS.md holds: layers, doors, and start-up without heavy imports."""

from __future__ import annotations

import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
HEAVY = (
    "vtk",
    "vtkmodules",
    "pyvista",
    "matplotlib",
    "pydantic",
    "pint",
    "trimesh",
    "scipy",
    "networkx",
    "rich.console",
)


def loaded_after(code: str) -> set[str]:
    """Give the modules loaded by a fresh Python that runs `code`."""
    script = f"import sys\n{code}\nprint('\\n'.join(sorted(sys.modules)), file=sys.stderr)"
    done = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True, cwd=ROOT)
    return set(done.stderr.split())


def test_import_contracts_hold() -> None:
    done = subprocess.run(
        [sys.executable, "-c", "import sys; from importlinter.cli import lint_imports; sys.exit(lint_imports())"],
        capture_output=True, text=True, check=False, cwd=ROOT,
    )  # fmt: skip
    assert done.returncode == 0, done.stdout + done.stderr


def test_the_package_alone_loads_nothing_heavy() -> None:
    assert not loaded_after("import routeviz") & set(HEAVY)


def test_units_do_not_load_pint_for_ordinary_text() -> None:
    code = "from routeviz.units import parse_length, parse_quantity; parse_length('7 ft 6 1/2 in'); parse_quantity('400 cfm', unit='cfm')"
    assert "pint" not in loaded_after(code)


def test_planning_as_json_loads_no_3d() -> None:
    code = (
        "import sys, io; sys.stdout = io.StringIO()\n"
        "from routeviz.cli import main; assert main(['plan', 'scenes/juniper_straight_up.toml', '--json', '-']) == 0"
    )
    loaded = loaded_after(code)
    assert "routeviz.pipeline.order" in loaded
    assert not {m for m in loaded if m.split(".")[0] in ("vtk", "vtkmodules", "pyvista", "matplotlib")}


@pytest.mark.parametrize("door", ["pint", "pydantic", "reportlab", "pyvista", "tomlkit"])
def test_third_party_doors(door: str) -> None:
    allowed = {
        "pint": ("units",), "pydantic": ("scenefile",), "tomlkit": ("scenefile",), "reportlab": ("drawings",),
        "pyvista": ("views",),
    }[door]  # fmt: skip
    package = ROOT / "routeviz"
    users = {
        path.relative_to(package).parts[0]
        for path in package.rglob("*.py")
        for line in path.read_text(encoding="utf-8").splitlines()
        if line.strip().startswith((f"import {door}", f"from {door}"))
    }
    assert users <= set(allowed)


def test_top_level_is_the_agreed_one() -> None:
    tracked = subprocess.run(["git", "ls-files"], capture_output=True, text=True, cwd=ROOT, check=False).stdout.split()
    if not tracked:
        pytest.skip("not a git checkout: nothing is tracked")
    top = {name.split("/")[0] for name in tracked}
    assert {n for n in top if not n.startswith(".")} <= {
        "README.md", "DEVELOPERS.md", "pyproject.toml", "routeviz", "scenes", "tests", "assets", "LICENSE",
    }  # fmt: skip


def test_lower_bounds_are_stated() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert len(project["dependencies"]) > 10
    for name in project["dependencies"]:
        assert any(sign in name for sign in (">=", "==")), f"{name} has no lower bound"
