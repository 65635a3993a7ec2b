"""What is defined is used: by the program itself, not by tests alone."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

PACKAGE = Path(__file__).resolve().parents[2] / "routeviz"
TREES = {path: ast.parse(path.read_text(encoding="utf-8")) for path in sorted(PACKAGE.rglob("*.py"))}
CALLED_BY_NAME = ("cli",)  # commands are looked up by their modules' names
KEPT = {"loss_per_100_ft_inwg"}  # the number that printed friction charts give, so that ours can be held against them
Def = ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef


def used() -> set[str]:
    """Every name that is read, imported or given as a keyword."""
    found: set[str] = set()
    for tree in TREES.values():
        for node in ast.walk(tree):
            if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Load):
                found.add(node.id)
            elif isinstance(node, ast.Attribute):
                found.add(node.attr)
            elif isinstance(node, ast.ImportFrom):
                found.update(alias.name for alias in node.names)
            elif isinstance(node, ast.keyword) and node.arg:
                found.add(node.arg)
    return found


def taken_up(node: Def) -> bool:
    """Whether a decorator hands it to somebody who calls it: a validator, a handler."""
    kept = ("cache", "dataclass", "property", "classmethod", "staticmethod", "contextmanager")
    return any(not any(word in ast.unparse(d) for word in kept) for d in node.decorator_list)


def defined() -> Iterator[tuple[str, str]]:
    """Every function, class, method and constant with its place."""
    for path, tree in TREES.items():
        if path.relative_to(PACKAGE).parts[0] in CALLED_BY_NAME:
            continue
        inner = [node for cls in ast.walk(tree) if isinstance(cls, ast.ClassDef) for node in cls.body]
        for node in (*tree.body, *(n for n in inner if isinstance(n, ast.FunctionDef | ast.AsyncFunctionDef))):
            if isinstance(node, Def) and not taken_up(node):
                yield node.name, f"{path.relative_to(PACKAGE)}:{node.lineno}"
            elif isinstance(node, ast.Assign | ast.AnnAssign):
                for target in node.targets if isinstance(node, ast.Assign) else (node.target,):
                    if isinstance(target, ast.Name):
                        yield target.id, f"{path.relative_to(PACKAGE)}:{node.lineno}"


def test_every_name_is_used_by_the_program() -> None:
    names = used()
    found = [(name, place) for name, place in defined() if not name.startswith("__")]
    assert len(found) > 1000  # of some two thousand
    assert [f"{place} {name}" for name, place in found if name not in names | KEPT] == []


def test_what_is_kept_for_the_tests_is_there() -> None:
    assert {name for name, _ in defined()} >= KEPT
    assert not KEPT & used()
