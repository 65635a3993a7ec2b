"""Lengths and quantities as people write them."""

from __future__ import annotations

import doctest
from collections.abc import Callable
from fractions import Fraction

import pint
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz import units
from routeviz.errors import LengthError
from routeviz.units import (
    feet_text,
    inch_text,
    length_text,
    mm_text,
    parse_angle,
    parse_length,
    parse_pitch,
    parse_quantity,
)


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("7' 6 1/2\"", 90.5), ("7 ft 6-1/2 in", 90.5), ("7'-6 1/2\"", 90.5), ("7’ 6½”", 90.5), ("16 3/8 in", 16.375),
        ("3/4\"", 0.75), ("3 / 4 in", 0.75), ("6-1/2", 6.5), ("5 ft", 60.0), ("5 feet", 60.0), ("0.5 in", 0.5), (".5", 0.5),
        ("-3/4 in", -0.75), ("12 inches", 12.0), (96, 96.0), (14.5, 14.5), ("1 ft 0 in", 12.0), ("8 ft, 1/2 in", 96.5),
    ],
)  # fmt: skip
def test_spellings(text: str | float, inches: float) -> None:
    assert parse_length(text) == inches


@pytest.mark.parametrize(("text", "mm"), [("610 mm", 610), ("2.4 m", 2400), ("61 cm", 610), ("1,5", None)])
def test_metric_is_exact(text: str, mm: int | None) -> None:
    if mm is None:
        with pytest.raises(LengthError):
            parse_length(text)
    else:
        assert parse_length(text) == float(Fraction(mm * 10, 254))


def test_a_foot_and_an_inch_are_exact() -> None:
    # NIST SP 811, appendix B: 1 ft = 0.3048 m exactly; hence 1 in = 25.4 mm
    assert parse_length("0.3048 m") == 12.0
    assert parse_length("25.4 mm") == 1.0


@pytest.mark.parametrize(
    "text", ["abc", "", "7' 610mm", "12//3 in", "6 feets", "1/0 in", "in", "3 in 4 in", True, "nan", float("nan")]
)
def test_nonsense_is_refused_with_a_remedy(text: str) -> None:
    with pytest.raises(LengthError, match="Write it like"):
        parse_length(text)


@settings(deadline=None)  # a busy machine is no fault
@given(st.integers(0, 100_000), st.sampled_from([1, 2, 4, 8, 16, 32, 64]))
def test_what_is_printed_reads_back(n: int, denominator: int) -> None:
    value = n / denominator
    assert parse_length(inch_text(value, denominator=64)) == value
    assert parse_length(feet_text(value, denominator=64)) == value


@settings(deadline=None)  # a busy machine is no fault
@given(st.integers(0, 20_000))
def test_millimetres_come_back(mm: int) -> None:
    assert mm_text(parse_length(f"{mm} mm")) == f"{mm} mm"
    assert units.ticks(parse_length(f"{mm} mm")) == mm * 320


@settings(deadline=None)  # a busy machine is no fault
@given(st.text(max_size=20))
def test_any_text_reads_or_is_refused(text: str) -> None:
    for read in (parse_length, parse_pitch, parse_angle):
        try:
            assert isinstance(read(text), float)
        except LengthError as fault:
            assert fault.remedy


def test_rounding_only_at_print() -> None:
    assert inch_text(2.96875) == "3 in"  # 2 31/32 rounds half up to a sixteenth
    assert inch_text(2.97) == "3 in"
    assert inch_text(0) == "0 in"
    assert length_text(11.97, long=True) == "1 ft"
    assert length_text(-3.25) == "−3 1/4 in"
    assert length_text(60, metric=True, long=True) == "1.52 m"


@pytest.mark.parametrize(
    ("text", "unit", "value", "tolerance"),
    [
        ("400 cfm", "cfm", 400.0, 0.0),
        # Approved Document F table 1.1 flows with the exact foot: 30, 60, 13 l/s
        ("30 l/s", "cfm", 63.57, 0.005), ("60 l/s", "cfm", 127.13, 0.005), ("13 l/s", "cfm", 27.55, 0.005),
        ("1 cfs", "cfm", None, 0.0), ("0.25 in wg", "in wg", 0.25, 0.0), ("249.08891 Pa", "in wg", 1.0, 1e-9),
        # NIST SP 811: 1 lb = 0.45359237 kg exactly
        ("0.45359237 kg", "lb", 1.0, 1e-12), ("70 degF", "degF", 70.0, 1e-9), ("21 degC", "degF", 69.8, 1e-9),
        ("10 kW", "btu/h", 34121.416, 0.01), ("40,000 btu/h", "btu/h", 40000.0, 0.0), ("720 m3/h", "cfm", 423.776, 0.001),
    ],
)  # fmt: skip
def test_quantities(text: str, unit: str, value: float | None, tolerance: float) -> None:
    if value is None:
        with pytest.raises(LengthError):
            parse_quantity(text, unit=unit)
    else:
        assert parse_quantity(text, unit=unit) == pytest.approx(value, abs=tolerance or 1e-12)


@pytest.mark.parametrize(
    ("text", "unit", "write"),
    [
        ("22,5 kg", "lb", "22.5"), ("10,5 kW", "btu/h", "10.5"), ("188,7 l/s", "cfm", "188.7"), ("0,25 in wg", "in wg", "0.25"),
        ("62,5 Pa", "in wg", "62.5"), ("20,5 degC", "degF", "20.5"), ("22,50 kg", "lb", "22.50"), ("0,250 in wg", "in wg", "0.250"),
        ("40,0000 btu/h", "btu/h", "40.0000"), ("12,34,567 cfm", "cfm", "1234567"), ("1,25", "in wg", "1.25"),
    ],
)  # fmt: skip
def test_a_decimal_comma_is_never_taken_for_thousands(text: str, unit: str, write: str) -> None:
    with pytest.raises(LengthError, match="comma") as caught:
        parse_quantity(text, unit=unit)
    assert caught.value.remedy.startswith(f"Write {write} with")


@pytest.mark.parametrize(
    ("text", "unit", "value"),
    [("40,000 btu/h", "btu/h", 40000.0), ("1,200 cfm", "cfm", 1200.0), ("1,234,567.5", "btu/h", 1234567.5)],
)
def test_a_comma_may_part_thousands(text: str, unit: str, value: float) -> None:
    assert parse_quantity(text, unit=unit) == value


@pytest.mark.parametrize(
    ("read", "text", "write"),
    [
        (parse_length, "1,5 m", "1.5"), (parse_length, "12,5", "12.5"), (parse_length, "8 ft 1,5 in", "1.5"),
        (parse_pitch, "6,5/12", "6.5"), (parse_pitch, "22,5 deg", "22.5"), (parse_angle, "22,5 deg", "22.5"),
    ],
)  # fmt: skip
def test_lengths_and_angles_take_no_comma_and_say_what_to_write(
    read: Callable[[str], float], text: str, write: str
) -> None:
    with pytest.raises(LengthError) as caught:
        read(text)
    assert caught.value.remedy == f"Write {write} with a point"


def test_bare_feet_with_a_comma_are_not_feet_and_inches() -> None:
    with pytest.raises(LengthError, match="comma"):
        parse_length("1,5 in", unit="ft")  # not 1 ft 5 in


def test_quick_factors_agree_with_pint() -> None:
    registry = pint.UnitRegistry(cache_folder=None)
    litres = registry.Quantity(1, "liter/second").to("foot**3/minute").magnitude
    assert parse_quantity("1 l/s", unit="cfm") == pytest.approx(litres, rel=1e-9)
    cubic = registry.Quantity(1, "meter**3/hour").to("foot**3/minute").magnitude
    assert parse_quantity("1 m3/h", unit="cfm") == pytest.approx(cubic, rel=1e-9)


@pytest.mark.parametrize(("text", "rise"), [("6/12", 0.5), ("4 in 12", 4 / 12), ("45 deg", 1.0), ("0/12", 0.0)])
def test_pitches(text: str, rise: float) -> None:
    assert parse_pitch(text) == pytest.approx(rise, abs=1e-12)


@pytest.mark.parametrize("text", ["6", "70 deg", "24/12", "90 deg", "120 deg"])
def test_pitches_out_of_reason(text: str) -> None:
    with pytest.raises(LengthError):
        parse_pitch(text)


def test_doctests() -> None:
    assert doctest.testmod(units).failed == 0
