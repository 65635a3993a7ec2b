"""Colours and finishes of everything in the picture, by material name."""

from __future__ import annotations

from dataclasses import dataclass

__all__ = [
    "BAR",
    "BAR_INK",
    "CLOSE",
    "INK",
    "INK_SOFT",
    "LINE",
    "LINE_STRONG",
    "MATERIALS",
    "PAPER",
    "PLASTER",
    "TEAL",
    "Finish",
    "rgb",
]

INK = "#24272b"
INK_SOFT = "#5a554b"
PAPER = "#fcf9f3"
PLASTER = "#f4eee4"
LINE = "#d9cfbf"
LINE_STRONG = "#b9ad99"
TEAL = "#12646b"
BAR = "#b52d15"
BAR_INK = "#8e1f0c"
CLOSE = "#7a4a00"


@dataclass(frozen=True, slots=True)
class Finish:
    """How one material looks: its colour, the colour of its edges and of a cut through it."""

    colour: str
    edge: str = "#6a5f50"
    cut: str = "#6b6257"
    metal: bool = False
    opacity: float = 1.0
    edges: bool = True


_TIMBER_EDGE, _TIMBER_CUT = "#7a5a30", "#9a6d37"


def _timber(colour: str) -> Finish:
    return Finish(colour, _TIMBER_EDGE, _TIMBER_CUT)


MATERIALS: dict[str, Finish] = {
    "plaster": Finish("#f4efe6"),
    "clear board": Finish("#f4efe6", opacity=0.3),
    "cut wall": Finish("#6b6257", "#4d463d", "#6b6257"),
    "sheathing": Finish("#dccdb0"),
    "cladding": Finish("#dcd8cf"),
    "masonry": Finish("#c9b3a2", "#7c6657", "#8d7364"),
    "concrete": Finish("#cfccc5", "#77736c", "#8b8780"),
    "stud": _timber("#ddb982"),
    "joist": _timber("#cf9f60"),
    "rafter": _timber("#d6ab70"),
    "beam": _timber("#c08a4c"),
    "steel member": Finish("#aab1b8", "#5c646c", "#7d858d"),
    "furring": _timber("#e3c797"),
    "subfloor": Finish("#d6bf98", _TIMBER_EDGE, _TIMBER_CUT),
    "covering a": Finish("#77736f", "#4d4a48"),
    "covering b": Finish("#7f7b77", "#4d4a48"),
    "trim": Finish("#fbf8f2"),
    "glass": Finish("#cfe2ea", opacity=0.55),
    "floor a": Finish("#cdae86", edges=False),
    "floor b": Finish("#c6a57c", edges=False),
    "plinth": Finish("#4a4640"),
    "carcass": Finish("#cdc6b9", cut="#8d8577"),
    "front": Finish("#bdb4a4", cut="#8d8577"),
    "pull": Finish("#5c5f62"),
    "stone": Finish("#efeae1"),
    "steel": Finish("#c2cad1", "#59646e", metal=True),
    "dark": Finish("#2b2d30", "#17181a"),
    "ring": Finish("#8d9194", edges=False),
    "broth": Finish("#b9722c", edges=False),
    "duct": Finish("#aab8c3", "#566472", "#7f8e9a", metal=True),
    "clear duct": Finish("#aab8c3", "#566472", opacity=0.35),
    "old duct": Finish("#b9b4aa", "#6a655b", "#8f8a80", metal=True),
    "cable": Finish("#3b5d8f", "#24395a"),
    "gas": Finish("#c39a2c", "#6b5310", metal=True),
    "water": Finish("#a8724e", "#5e3a22", metal=True),
    "service": Finish("#9a9d98", "#5b5e5a"),
    "zone": Finish("#12646b", "#12646b", opacity=0.12),
    "bar red": Finish("#c2331b", "#8e1f0c", "#8e1f0c"),
    "bar white": Finish("#ffffff", "#8e1f0c", "#8e1f0c"),
}


def rgb(colour: str) -> tuple[int, int, int]:
    """Give a ``#rrggbb`` colour as three numbers from 0 to 255."""
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)
