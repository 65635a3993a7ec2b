"""The docstrings of the air stage are held to their word: examples run, references are sources of the catalogue."""

from __future__ import annotations

import ast
import doctest
import importlib
import inspect
import pkgutil
import re
from types import FunctionType, ModuleType

import pytest

import routeviz.airflow
from routeviz.catalog import source

MODULES = [
    importlib.import_module(f"routeviz.airflow.{found.name}")
    for found in pkgutil.iter_modules(routeviz.airflow.__path__)
]
PUBLIC = [
    (module, getattr(module, name))
    for module in MODULES
    for name in getattr(module, "__all__", ())
    if callable(getattr(module, name)) and getattr(getattr(module, name), "__module__", "") == module.__name__
]


@pytest.mark.parametrize("module", MODULES, ids=lambda m: m.__name__.rsplit(".", 1)[-1])
def test_examples_in_docstrings_run(module: ModuleType) -> None:
    assert doctest.testmod(module).failed == 0


@pytest.mark.parametrize(("module", "thing"), PUBLIC, ids=lambda x: getattr(x, "__name__", ""))
def test_references_are_sources_and_parameters_are_real(module: ModuleType, thing: FunctionType) -> None:
    text = inspect.getdoc(inspect.unwrap(thing)) or ""
    assert text, thing
    references = re.search(r"References\n-+\n((?:.+\n?)+)", text)
    for source_id in re.findall(r"[a-z0-9-]+", references[1] if references else ""):
        assert source(source_id).document
    described = re.search(r"Parameters\n-+\n((?:.*\n?)+?)(?:\n\w+\n-+|\Z)", text)
    names = re.findall(r"^(\w+) : ", described[1], re.MULTILINE) if described else []
    real = inspect.signature(inspect.unwrap(thing)).parameters
    assert set(names) <= set(real), (module, names)


def test_only_the_checked_friction_function_of_the_library_is_used() -> None:
    """Of fluids nothing but Clamond is imported; its other correlations and fittings are not checked here."""
    used = set()
    for module in MODULES:
        for node in ast.walk(ast.parse(inspect.getsource(module))):
            if isinstance(node, ast.ImportFrom) and (node.module or "").startswith("fluids"):
                used |= {f"{node.module}.{alias.name}" for alias in node.names}
            elif isinstance(node, ast.Import):
                used |= {alias.name for alias in node.names if alias.name.startswith("fluids")}
    assert used == {"fluids.friction.Clamond"}
