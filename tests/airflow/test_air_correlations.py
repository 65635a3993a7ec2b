"""Correlations against independent solutions and against each other, over their whole stated range."""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise, product

import numpy as np
import pytest
from airflow.ducts import round_duct
from fluids import fittings as library
from fluids.friction import Colebrook
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq
from scipy.special import lambertw

from routeviz.airflow import fittings
from routeviz.airflow.air import air_at, pressure_ratio, reynolds, velocity_pressure_inwg
from routeviz.airflow.curves import MonotoneCurve, between, root
from routeviz.airflow.friction import friction_factor, loss_per_100_ft_inwg, roughness
from routeviz.airflow.sections import area_in2, friction_equivalent_in, perimeter_in, section_text, velocity_fpm
from routeviz.model.scene import SectionShape, SectionSize

REYNOLDS = [4000.0, *np.geomspace(5e3, 1e8, 23)]
RELATIVE = [0.0, *np.geomspace(1e-7, 0.05, 21)]


def colebrook_by_bisection(re: float, relative: float) -> float:
    """Solve the implicit equation in x = 1/sqrt(f) with Brent's method."""

    def rest(x: float) -> float:
        return x + 2.0 * math.log10(relative / 3.7 + 2.51 * x / re)

    return float(brentq(rest, 1e-3, 1e3, xtol=1e-14, rtol=8.9e-16) ** -2)


def colebrook_by_lambert(re: float, relative: float) -> float:
    """Solve Colebrook exactly with Lambert's W (Keady 1998); it overflows where e/D times Re is large."""
    a, b = 2.51 / re, relative / 3.7
    log = math.log(10) / 2
    w = lambertw(log / a * math.exp(log * b / a)).real
    return float((w / log - b / a) ** -2)


@pytest.mark.parametrize("relative", RELATIVE)
def test_friction_factor_solves_colebrook_over_the_whole_range(relative: float) -> None:
    for re in REYNOLDS:
        ours = friction_factor(float(re), float(relative))
        assert ours == pytest.approx(colebrook_by_bisection(float(re), float(relative)), rel=1e-10)


def test_friction_factor_agrees_with_lambert_and_with_the_library() -> None:
    checked = 0
    for re, relative in product(REYNOLDS, RELATIVE):
        ours = friction_factor(float(re), float(relative))
        assert ours == pytest.approx(Colebrook(float(re), float(relative)), rel=1e-9)
        if relative * re < 1000:
            assert ours == pytest.approx(colebrook_by_lambert(float(re), float(relative)), rel=1e-8)
            checked += 1
    assert checked > 200


def test_friction_factor_is_continuous_from_laminar_to_turbulent() -> None:
    for relative in (0.0, 1e-3, 0.05):
        steps = np.linspace(1500, 4500, 3001)
        values = [friction_factor(float(re), relative) for re in steps]
        assert max(abs(b - a) for a, b in pairwise(values)) < 1e-4
    assert friction_factor(1000.0, 0.01) == 0.064  # 64 / Re, exact


def test_pressure_of_one_duct_always_rises_with_flow() -> None:
    flows = np.geomspace(0.5, 3000, 400)
    losses = [loss_per_100_ft_inwg(float(q), round_duct(6.0), 0.0036) for q in flows]
    assert all(b > a for a, b in pairwise(losses))


@pytest.mark.parametrize(("re", "relative"), [(0.0, 0.0), (-1.0, 0.0), (2e8, 0.0), (1e5, -1e-9), (1e5, 0.06)])
def test_friction_factor_refuses_what_lies_outside_its_limits(re: float, relative: float) -> None:
    with pytest.raises(ValueError, match="outside"):
        friction_factor(re, relative)


def test_explicit_formulas_agree_within_their_stated_limits() -> None:
    """Haaland (1983) and Swamee-Jain (1976), written out here: within 2 % and 3 % of Colebrook in their range."""
    for re, relative in product(np.geomspace(5e3, 1e8, 25), np.geomspace(1e-6, 1e-2, 15)):
        exact = friction_factor(float(re), float(relative))
        haaland = (-1.8 * math.log10((relative / 3.7) ** 1.11 + 6.9 / re)) ** -2
        swamee = 0.25 / math.log10(relative / 3.7 + 5.74 / re**0.9) ** 2
        assert haaland == pytest.approx(exact, rel=0.02)
        assert swamee == pytest.approx(exact, rel=0.035)


def test_altshul_tsal_agrees_at_hood_sizes() -> None:
    """Altshul-Tsal (Tsal 1989): within 2.5 % of Colebrook for 4 to 12 in and 50 to 1200 cfm at 0.0003 ft."""
    for diameter, cfm in product((4, 5, 6, 7, 8, 10, 12), (50, 100, 200, 400, 800, 1200)):
        velocity = velocity_fpm(cfm, round_duct(diameter))
        re, relative = reynolds(diameter, velocity), 0.0036 / diameter
        rough = 0.11 * (relative + 68 / re) ** 0.25
        tsal = rough if rough >= 0.018 else 0.85 * rough + 0.0028
        if 500 <= velocity <= 4500:
            assert tsal == pytest.approx(friction_factor(re, relative), rel=0.025)


def test_old_charts_power_fit_runs_a_little_above() -> None:
    """The published fit 0.109136 Q^1.9 / D^5.02 of the old chart (rougher duct): 2 to 13 % above 0.0003 ft."""
    for diameter, cfm in ((4, 100), (5, 150), (6, 200), (6, 300), (7, 400), (8, 400), (8, 600), (10, 900), (12, 1200)):
        fit = 0.109136 * cfm**1.9 / diameter**5.02
        assert 1.02 < fit / loss_per_100_ft_inwg(cfm, round_duct(diameter), 0.0036) < 1.13


def test_hydraulic_diameter_and_equal_round_duct_agree_for_wall_stacks() -> None:
    """True velocity with 4A/P against Huebscher's equal round duct: within 10 % for sides up to 4.3 to 1."""
    for wide, high in ((10, 3.25), (12, 3.25), (14, 3.25), (10, 6), (12, 12)):
        section = SectionSize(SectionShape.RECT, wide, high)
        equal = round_duct(friction_equivalent_in(section))
        for cfm in (100, 300, 600):
            ours = loss_per_100_ft_inwg(cfm, section, 0.0036)
            assert ours == pytest.approx(loss_per_100_ft_inwg(cfm, equal, 0.0036), rel=0.10)


def test_oval_duct_lies_between_its_limits() -> None:
    """A flat oval of equal sides is the round duct; its area is a rectangle and two half circles."""
    circle = SectionSize(SectionShape.OVAL, 8.0, 8.0)
    assert area_in2(circle) == pytest.approx(area_in2(round_duct(8.0)), rel=1e-12)
    assert perimeter_in(circle) == pytest.approx(math.pi * 8, rel=1e-12)
    assert friction_equivalent_in(circle) == pytest.approx(8.0, rel=0.01)  # Heyt and Diaz at the circle
    flat = SectionSize(SectionShape.OVAL, 10.0, 4.0)
    assert area_in2(flat) == pytest.approx(4 * math.pi + 24, rel=1e-12)
    assert loss_per_100_ft_inwg(300, flat, 0.0036) == pytest.approx(
        loss_per_100_ft_inwg(300, round_duct(friction_equivalent_in(flat)), 0.0036), rel=0.12
    )


def test_smooth_elbows_against_the_librarys_bends() -> None:
    """SMACNA's smooth elbow plus its own friction against Rennels', Crane's and Miller's bends: within the stated range.

    Our range for smooth elbows is 0.7 to 1.5 times the table, because the sources differ that much.
    """
    f = 0.0175
    for ratio in (1.0, 1.5, 2.0):
        ours = fittings.elbow(round_duct(8.0), ratio, 90.0, "smooth")
        own = f * math.pi / 2 * ratio
        for method in ("Rennels", "Crane", "Miller"):
            theirs = library.bend_rounded(Di=0.2032, angle=90.0, fd=f, bend_diameters=ratio, Re=1.5e5, method=method)
            assert ours.low < theirs - own < ours.high, (ratio, method)


def test_mitres_against_the_librarys() -> None:
    """Rennels' mitre: 90 degrees within 5 %, smaller angles within 35 %; Crane's 90 lies in our range."""
    for angle in (30.0, 45.0, 60.0, 90.0):
        ours = fittings.elbow(round_duct(8.0), 0.0, angle, "mitre").usual
        theirs = library.bend_miter(angle=angle, Di=0.2032, Re=1.5e5, roughness=9e-5, method="Rennels")
        assert ours == pytest.approx(theirs, rel=0.05 if angle == 90.0 else 0.35)
    crane = library.bend_miter(angle=90.0, Di=0.2032, Re=1.5e5, roughness=9e-5, method="Crane")
    sharp = fittings.elbow(round_duct(8.0), 0.0, 90.0, "mitre")
    assert sharp.low < crane < sharp.high


def test_enlargements_against_the_librarys_crane_method() -> None:
    for angle, small in product((5.0, 15.0, 30.0, 44.0, 60.0, 180.0), (0.5, 0.7, 0.9)):
        ours = fittings.enlargement(1 / small**2, angle).usual
        theirs = library.diffuser_conical(Di1=small, Di2=1.0, angle=min(angle, 179.0), method="Crane")
        assert ours == pytest.approx(theirs, rel=1e-9)


def test_contractions_against_the_librarys() -> None:
    """Abrupt contraction: SMACNA's column within 10 % of Crane's, and Rennels' within our range, up to 6 to 1."""
    for area_ratio in (2.0, 4.0, 6.0):
        ours = fittings.contraction(area_ratio, 180.0)
        sides = {"Di1": math.sqrt(area_ratio), "Di2": 1.0, "Re": 1e5, "fd": 0.02}
        assert ours.usual == pytest.approx(library.contraction_sharp(**sides, method="Crane"), rel=0.10)
        assert ours.low < library.contraction_sharp(**sides, method="Rennels") < ours.high


def test_air_against_the_gas_law() -> None:
    """p M / (R T) with M 28.965 g/mol at 101 325 Pa: within 0.5 % of the trade's standard air."""
    for temp_f in (-20.0, 32.0, 70.0, 150.0):
        kelvin = (temp_f + 459.67) / 1.8
        kg_m3 = 101_325 * 0.028965 / (8.314462618 * kelvin)
        assert air_at(temp_f).density_lb_ft3 == pytest.approx(kg_m3 * 0.0624279606, rel=0.005)
    assert pressure_ratio(0.0) == 1.0
    assert velocity_pressure_inwg(2000, air_at(70, 5000)) == pytest.approx(
        velocity_pressure_inwg(2000) * pressure_ratio(5000), rel=1e-12
    )


@pytest.mark.parametrize(("temp", "altitude"), [(500.0, 0.0), (-100.0, 0.0), (70.0, 40_000.0), (70.0, -2000.0)])
def test_air_refuses_what_lies_outside_its_limits(temp: float, altitude: float) -> None:
    with pytest.raises(ValueError, match="outside"):
        air_at(temp, altitude)


@pytest.mark.parametrize(
    "points",
    [
        ((0, 0.9), (200, 0.75), (400, 0.35), (480, 0.0)),
        ((0, 0.5), (100, 0.62), (250, 0.6), (300, 0.6), (500, 0.1)),
        ((0, 1.0), (1, 0.2), (300, 0.1), (301, 0.0)),
        ((10, 0.3), (20, 0.1), (40, 0.2), (80, 0.05), (90, 0.04)),
        ((0, 1.0), (600, 0.1)),
    ],
)
def test_monotone_curve_is_scipys_pchip(points: tuple[tuple[float, float], ...]) -> None:
    xs, ys = np.array(points, dtype=float).T
    theirs, ours = PchipInterpolator(xs, ys), MonotoneCurve.through(points)
    for x in np.linspace(xs[0], xs[-1], 501):
        assert ours(float(x)) == pytest.approx(float(theirs(x)), abs=1e-12)
    assert ours(float(xs[0]) - 5) == ys[0]
    assert ours(float(xs[-1]) + 5) == ys[-1]


def test_monotone_curve_refuses_points_that_do_not_rise() -> None:
    with pytest.raises(ValueError, match="rising"):
        MonotoneCurve.through(((0.0, 1.0), (0.0, 2.0)))


@pytest.mark.parametrize(
    ("function", "low", "high"),
    [
        (lambda x: x**3 - 2, 0.0, 5.0),
        (lambda x: math.exp(x) - 1e-6, -30.0, 3.0),
        (lambda x: math.atan(x - 3) * 1e-9, -100.0, 1000.0),
        (lambda x: 1.0 if x > math.pi else -1.0, 0.0, 10.0),
        (lambda x: (x - 1) ** 3, 0.0, 10.0),
        (lambda x: 1 - x, 0.0, 1.0),
    ],
)
def test_root_finder_against_scipys(function: Callable[[float], float], low: float, high: float) -> None:
    calls = 0

    def counted(x: float) -> float:
        nonlocal calls
        calls += 1
        return function(x)

    ours = root(counted, low, high, tolerance=1e-12)
    assert ours == pytest.approx(brentq(function, low, high, xtol=1e-12, maxiter=500), abs=1e-7)
    assert calls <= 130


def test_root_finder_refuses_equal_signs() -> None:
    with pytest.raises(ValueError, match="same sign"):
        root(lambda x: x * x + 1, -1.0, 1.0)


def test_table_lookup_holds_its_ends() -> None:
    assert between(-1.0, [0.0, 1.0], [3.0, 5.0]) == 3.0
    assert between(0.5, [0.0, 1.0], [3.0, 5.0]) == 4.0
    assert between(9.0, [0.0, 1.0], [3.0, 5.0]) == 5.0


def test_unknown_material_is_taken_as_galvanized_steel_and_says_so() -> None:
    assert not roughness("unobtainium").known
    assert roughness("unobtainium").usual_in == roughness("galvanized steel").usual_in
    assert roughness("Flexible duct").usual_in == roughness("flex").usual_in > roughness("PVC").usual_in
    assert roughness("aluminium") == roughness("aluminum")


def test_sections_in_words() -> None:
    assert section_text(round_duct(8.0)) == "8 in round"
    assert section_text(SectionSize(SectionShape.RECT, 10.0, 3.25)) == "3 1/4 × 10 in"
    assert section_text(round_duct(150 / 25.4), metric=True) == "150 mm round"
    assert section_text(SectionSize(SectionShape.OVAL, 220 / 25.4, 90 / 25.4), metric=True) == "90 × 220 mm oval"
