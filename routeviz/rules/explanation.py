"""Explain a rule: what it checks, why, where it comes from, and its two examples judged on the spot."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from routeviz import catalog
from routeviz.folding import fold
from routeviz.model.finding import Finding, State
from routeviz.model.source import Source
from routeviz.model.spoken import spoken
from routeviz.rules.profiles import Limit, common, profile, profiles
from routeviz.rules.registry import FAMILIES, Rule, all_rules, rule
from routeviz.units import inch_text, limit_text, quantity_text, spare_text, told

__all__ = ["Explanation", "LimitRow", "codes", "explain"]

_WIDTH = 80
_NOT_ASKED = "not asked for"


@dataclass(frozen=True, slots=True)
class LimitRow:
    """One limit as one profile states it; `said` is "" where it holds or does not and has no number."""

    key: str
    profile: str
    said: str
    must: bool
    source_text: str
    seen: str
    note: str


@dataclass(frozen=True, slots=True)
class Explanation:
    """Everything about one rule. `text` is the whole of it for a terminal."""

    code: str
    title: str
    family: str
    checks: str
    why: str
    limits: tuple[LimitRow, ...]
    sources: tuple[str, ...]
    applies: str
    blind: str
    passing: str
    passing_findings: tuple[Finding, ...]
    failing: str
    failing_findings: tuple[Finding, ...]
    text: str


def codes() -> tuple[str, ...]:
    """Give the codes of all rules, by family."""
    return tuple(r.code for r in all_rules())


def _rows(one: Rule) -> Iterator[LimitRow]:
    for key in one.limits:
        told_once = False
        for name in profiles():
            limit = profile(name).get(key)
            if limit is None:
                ask = profile(name).asked(key)
                if ask:
                    yield LimitRow(key, name, "not known", True, ask, "", "")
                continue
            everywhere = limit == common().get(key)  # a place that sets nothing of its own
            if everywhere and told_once:
                continue
            told_once |= everywhere
            source = catalog.source(limit.source)
            note = told(limit.note, metric=profile(name).metric and not everywhere)
            yield LimitRow(key, "where nothing else is said" if everywhere else name, _limit_words(limit), limit.must,
                           source.text, source.seen.value, note)  # fmt: skip


def _limit_words(limit: Limit) -> str:
    """Write a limit in its document's own unit, inches with their fraction; "" for one that has no number."""
    if isinstance(limit.value, tuple):
        return ", ".join(limit.value)
    if isinstance(limit.value, bool):
        return "" if limit.value else _NOT_ASKED
    if limit.unit == "in per ft":
        return quantity_text(limit.number, limit.unit)
    return _inches(limit.number) if limit.said.endswith(" in") else limit.said


def _inches(value: float) -> str:
    """Write inches as a tape has them; sheet metal, which is thinner than its marks, in decimals."""
    return inch_text(value, denominator=64) if (value * 64).is_integer() else f"{_number(value)} in"


def _number(value: float | None) -> str:
    return "" if value is None else f"{value:.3f}".rstrip("0").rstrip(".")


def _told(finding: Finding) -> str:
    unit, said = finding.unit, []
    if finding.measured is not None:
        said.append(quantity_text(finding.measured, unit))
    if finding.limit is not None:
        said.append(limit_text(finding.limit, finding.relation, unit, measured=finding.measured is not None))
    if finding.margin is not None:
        said.append(f"spare {spare_text(finding.margin, unit)}")
    return f"{finding.state.value}: {finding.title}{': ' if said else ''}{', '.join(said)}"


def _paragraph(head: str, body: str) -> str:
    return f"{head}\n{_filled(f'  {body}', hang=0)}"


def _filled(line: str, *, hang: int = 2) -> str:
    """Fold a line to the terminal's width; what follows stands so much further in than its beginning."""
    indent = " " * (len(line) - len(line.lstrip()))
    return "\n".join(fold(line.strip(), _WIDTH, first=indent, rest=indent + " " * hang))


def _example(words: str, findings: tuple[Finding, ...], quiet: str) -> str:
    told = [_told(f) for f in findings] or [quiet]
    return "\n".join([_filled(f"  {words}"), *(_filled(f"    {line}") for line in told)])


def _limit_lines(rows: tuple[LimitRow, ...]) -> list[str]:
    """Write the limits by name, with the places that share one in one line."""
    lines = []
    for key in dict.fromkeys(row.key for row in rows):
        lines.append(f"  {key.replace('_', ' ')}")
        shared: dict[tuple[str, ...], list[str]] = {}
        said: tuple[str, ...]
        for row in (r for r in rows if r.key == key):
            if row.said == "not known":
                said = ("not known to routeviz; it says what to ask",)
            else:
                seen = f" [{row.seen}]" if row.seen and row.seen not in row.source_text else ""
                said = (f"{_asked(row)}; {row.source_text}{seen}", row.note)
            shared.setdefault(said, []).append(row.profile)
        for said, places in shared.items():
            text = f"{', '.join(places)}: {': '.join(w for w in said if w)}"
            lines.append(f"    {text}")
    return lines


def _asked(row: LimitRow) -> str:
    """Write a limit with its force."""
    force = "must" if row.must else "should"
    if row.said == _NOT_ASKED:
        return row.said
    return f"{row.said} ({force})" if row.said else f"{force} hold"


def _cited(source: Source) -> str:
    """Write a source with how it is known."""
    return source.text if source.seen.value in source.text else f"{source.text} [{source.seen.value}]"


def _table_lines(groups: tuple[str, ...]) -> list[str]:
    """Write the numbers of the member table that a rule uses, each with its source."""
    lines = []
    for group in groups:
        for key, row in catalog.table("members")[group].items():
            source = catalog.source(row["source"])
            words = [_table_value(k, v) for k, v in row.items() if k not in ("source", "value")]
            said = _table_value(key, row["value"]) if "value" in row else f"{spoken(key)}: {', '.join(words)}"
            lines.append(f"  {spoken(group)}, {said}; {_cited(source)}")
    return lines


def _table_value(key: str, value: float | str) -> str:
    """Write one number of the member table after its name: "flange: 1 1/2 in", "hole: 1/3 of the depth"."""
    if isinstance(value, str):
        return f"{spoken(key)} {value}"
    if key.endswith("_in"):
        return f"{spoken(key.removesuffix('_in'))}: {_inches(float(value))}"
    if key.endswith("_share"):
        share = Fraction(value).limit_denominator(6)
        plain = str(share) if abs(share - value) < 1e-9 and value < 1 else _number(float(value))
        return f"{spoken(key.removesuffix('_share'))}: {plain} of the depth"
    return f"{spoken(key)}: {_number(float(value))}"


def _text(one: Rule, rows: tuple[LimitRow, ...], sources: tuple[str, ...], good: tuple[Finding, ...],
          bad: tuple[Finding, ...]) -> str:  # fmt: skip
    limits = _limit_lines(rows) + _table_lines(one.tables)
    limits += [f"  {words}" for words in sources if not any(words in line for line in limits)]
    parts = [
        _filled(f"{one.code}  {one.title}  ({FAMILIES[one.family]})"),
        _paragraph("What it checks", one.checks),
        _paragraph("Why", one.why),
        "Limits and sources\n" + "\n".join(_filled(line) for line in limits),
        _paragraph("Applies when", one.applies),
        _paragraph("Does not see", one.blind),
        "Passes\n" + _example(one.passing_words, good, "nothing to find"),
        "Does not pass\n" + _example(one.failing_words, bad, "nothing to find"),
    ]
    return "\n\n".join(p for p in parts if p)


def explain(code: str) -> Explanation:
    """Explain the rule with this code.

    Raises
    ------
    RoutevizError
        If no rule has it; the message has the nearest code.
    """
    one = rule(code)
    rows = tuple(_rows(one))
    sources = tuple(_cited(catalog.source(s)) for s in one.sources)
    good = tuple(f for f in one.judged(one.passing()) if f.state is not State.DOES_NOT_APPLY)
    bad = tuple(f for f in one.judged(one.failing()) if f.state in (State.BROKEN, State.NOT_CHECKED, one.fails_as))
    return Explanation(
        one.code, one.title, FAMILIES[one.family], one.checks, one.why, rows, sources, one.applies, one.blind,
        one.passing_words, good, one.failing_words, bad, _text(one, rows, sources, good, bad),
    )  # fmt: skip
