"""Inks, line weights [mm] and sizes of lettering [mm]; the same on every sheet."""

from __future__ import annotations

from typing import Final

INK: Final = "#24272b"
INK2: Final = "#5a554b"
UP: Final = "#12646b"
TIMBER: Final = "#ead0a4"
TIMBER_EDGE: Final = "#7a5220"
STEEL: Final = "#dde3e7"
STEEL_LIGHT: Final = "#eef2f4"
STEEL_DARK: Final = "#c3ccd3"
WALL: Final = "#faf6ee"
BOARD: Final = "#d9cfbf"
SHEATHING: Final = "#c9b48f"
MASONRY: Final = "#e2d3c8"
ROOF: Final = "#8d8781"
GLASS: Final = "#eef4f6"
CABINET: Final = "#f3f1ec"
STONE: Final = "#efeae1"
DARK: Final = "#3a3d40"
BLADE: Final = "#f7ecc6"
BLADE_EDGE: Final = "#a98f45"
HOOK: Final = "#8d9297"
BAR: Final = "#b52d15"
BAR_INK: Final = "#8e1f0c"  # words of what is broken
WAY_WALL: Final = "#4d7ea6"  # one elbow
WAY_OFF: Final = "#d9a441"  # two elbows, always outlined
WAY_OFF_EDGE: Final = "#6b4700"
NO_PLACE: Final = "#8f877a"
WHITE: Final = "#ffffff"

HEAVY: Final = 0.55  # what is built
MEDIUM: Final = 0.35  # outlines and dimension ticks
FINE: Final = 0.2  # dimensions and hidden edges
HAIR: Final = 0.12  # extension lines, hatch, centre lines

HIDDEN_DASH: Final = (1.2, 0.7)
CENTRE_DASH: Final = (4.0, 0.8, 0.8, 0.8)
DUCT_DASH: Final = (1.6, 0.6)

LEAST: Final = 2.5  # 7.09 pt: nothing is smaller
SMALL: Final = 2.6
BODY: Final = 2.9
HEADING: Final = 3.3
TITLE: Final = 4.5
NUMBER: Final = 9.0
