"""The table of field cases is true: each named test is there, and no test of a case is left out of the table."""

from __future__ import annotations

import ast
from functools import cache
from pathlib import Path

import pytest
from cases.field_cases import FIELD_CASES, GEOMETRY, PEOPLE, RULE, FieldCase

TESTS = Path(__file__).parents[1]


@cache
def functions(file: str) -> frozenset[str]:
    """Give the names of the tests in a file."""
    tree = ast.parse((TESTS / file).read_text(encoding="utf-8"))
    return frozenset(n.name for n in tree.body if isinstance(n, ast.FunctionDef) and n.name.startswith("test_"))


@pytest.mark.parametrize("case", FIELD_CASES, ids=lambda case: case.id)
def test_a_case_is_answered_by_tests_that_exist_or_says_why_not(case: FieldCase) -> None:
    assert case.basis
    assert set(case.basis) <= {RULE, GEOMETRY, PEOPLE}
    assert bool(case.tests) is not bool(case.not_covered)
    for named in case.tests:
        file, _, function = named.partition("::")
        assert function in functions(file), named


def test_at_least_40_of_the_cases_are_answered() -> None:
    assert [case.id for case in FIELD_CASES] == [f"F{n:02d}" for n in range(1, 52)]
    assert sum(1 for case in FIELD_CASES if case.tests) >= 40


def test_every_test_of_a_case_stands_in_the_table() -> None:
    named = {test for case in FIELD_CASES for test in case.tests}
    files = [file.name for file in sorted((TESTS / "cases").glob("test_*.py")) if file.name != Path(__file__).name]
    assert len(files) >= 5
    for name in files:
        assert functions(f"cases/{name}")
        assert {f"cases/{name}::{f}" for f in functions(f"cases/{name}")} <= named
