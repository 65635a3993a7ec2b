"""Colours: told apart in grey and by colour-blind eyes, and legible; the words of the look hold in every sheet."""

from __future__ import annotations

import re
from itertools import combinations

import numpy as np
import pytest

from routeviz.views import palette
from routeviz.views.web.build import HERE

# Machado, Oliveira and Fernandes, "A physiologically-based model for simulation of color vision deficiency", IEEE TVCG
# 15(6), 2009, severity 1.0; remembered, not verified against print
EYES = {
    "full colour": np.eye(3),
    "protan": np.array(
        [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]]
    ),
    "deutan": np.array(
        [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]]
    ),
    "tritan": np.array(
        [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]]
    ),
}


def linear(colour: str) -> np.ndarray:
    share = np.array(palette.rgb(colour)) / 255
    return np.where(share <= 0.04045, share / 12.92, ((share + 0.055) / 1.055) ** 2.4)


def luminance(colour: str, eye: np.ndarray = EYES["full colour"]) -> float:
    """WCAG 2.2 relative luminance, as an eye sees it."""
    return float(np.clip(eye @ linear(colour), 0, 1) @ [0.2126, 0.7152, 0.0722])


def contrast(a: str, b: str, eye: np.ndarray = EYES["full colour"]) -> float:
    """WCAG 2.2 contrast ratio."""
    high, low = sorted((luminance(a, eye), luminance(b, eye)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def sheet(scheme: str) -> dict[str, str]:
    """The custom colours of the page in one scheme."""
    style = (HERE / "src" / "style.css").read_text(encoding="utf-8")
    found: dict[str, str] = {}
    for start in (":root{", ":root[data-theme=dark]{")[: 1 if scheme == "light" else 2]:
        block = style[style.index(start) :]
        found.update(re.findall(r"--(\w+):(#[0-9a-f]{6})\b", block[: block.index("}")]))
    return found


def test_black_on_white_is_21_to_1():
    # WCAG 2.2, definition of contrast ratio: from 1 to 21
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#777777", "#777777") == 1.0


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("eye", list(EYES))
def test_ways_on_the_tape_are_ordered_by_lightness_for_every_eye(scheme, eye):
    colours = sheet(scheme)
    lightness = [luminance(colours[k], EYES[eye]) for k in ("up", "wall", "off")]
    assert lightness == sorted(lightness)
    assert lightness[1] - lightness[0] > 0.02


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_text_and_graphics_have_the_contrast_that_they_need(scheme):
    """WCAG 2.2, 1.4.3 (text, 4.5 to 1) and 1.4.11 (graphics, 3 to 1)."""
    c = sheet(scheme)
    for ink in ("ink", "ink2", "barink", "close", "up"):
        for ground in ("paper", "plaster"):
            assert contrast(c[ink], c[ground]) >= 4.5, (ink, ground)
    assert contrast(c["blink"], c["blade"]) >= 4.5
    for mark in ("up", "wall", "bar", "none"):
        assert contrast(c[mark], c["paper"]) >= 3.0, mark
    assert contrast(c["offline"], c["paper"]) >= 3.0  # ochre is always outlined


@pytest.mark.parametrize("eye", list(EYES))
def test_bars_stay_bars_for_every_eye_and_in_grey(eye):
    assert contrast(palette.MATERIALS["bar red"].colour, palette.MATERIALS["bar white"].colour, EYES[eye]) > 3.0


def test_materials_of_the_house_are_calm():
    """Nothing of the house is as strong as the bars: saturation under that of the barred red."""

    def strength(colour: str) -> float:
        high, low = max(palette.rgb(colour)), min(palette.rgb(colour))
        return (high - low) / max(high, 1)

    bars = strength(palette.MATERIALS["bar red"].colour)
    strong = ("zone", "broth", "gas", "cable", "water")
    calm = {n: f.colour for n, f in palette.MATERIALS.items() if not n.startswith("bar") and n not in strong}
    assert {"joist", "stud", "plaster", "front"} <= set(calm)
    for name, colour in calm.items():
        assert strength(colour) < 0.75 * bars, name


def test_page_and_still_speak_one_palette():
    light = sheet("light")
    pairs = {"ink": palette.INK, "ink2": palette.INK_SOFT, "paper": palette.PAPER, "plaster": palette.PLASTER, "up": palette.TEAL,
             "bar": palette.BAR, "close": palette.CLOSE, "line": palette.LINE, "line2": palette.LINE_STRONG}  # fmt: skip
    assert {k: light[k] for k in pairs} == pairs


def test_words_that_are_not_ours_are_in_no_sheet():
    """People read broken, close, fine and not checked; never these."""
    words = re.compile(r"\b(error|warning|invalid|score|percent)\b", re.IGNORECASE)
    for file in ("page.html", "panels.js", "answers.js", "air.js", "overlay.js", "words.js"):
        text = (HERE / "src" / file).read_text(encoding="utf-8")
        said = re.findall(r"'([^'\n]*)'|`([^`]*)`|>([^<>]+)<", text)
        assert said, file
        assert not [s for parts in said for s in parts if words.search(s)], file


def test_route_colours_differ_pairwise_in_grey():
    colours = sheet("light")
    for a, b in combinations(("up", "wall", "off"), 2):
        assert contrast(colours[a], colours[b]) > 1.35, (a, b)


@pytest.mark.parametrize("eye", list(EYES))
def test_what_a_lesson_points_at_stands_out_from_every_material(eye):
    """A teal line in a pale casing: one of the two has 3 to 1 (WCAG 2.2, 1.4.11) against whatever lies behind it."""
    style = (HERE / "src" / "lesson.css").read_text(encoding="utf-8")
    line, casing = (re.search(rf"#pointing \.{name}\{{stroke:(#[0-9a-f]{{6}})", style) for name in ("pb", "pa"))
    assert line is not None
    assert casing is not None
    for name, finish in palette.MATERIALS.items():
        best = max(contrast(ink[1], finish.colour, EYES[eye]) for ink in (line, casing))
        assert best >= 3.0, (name, best)
    assert contrast(line[1], casing[1], EYES[eye]) >= 4.5
