"""One HTML file with the whole plan in it: the tape, the 3D picture, the findings. It asks nothing of the network.

`write` takes a plan and, when there is one, the whole-wall map (`routeviz.views.wallmap`), with which the hood can be
moved along the tape and up and down with no server. The file carries its own policy that forbids every outside request
and every script but its own.
"""

from __future__ import annotations

import base64
import hashlib
import html
import json
import os
from collections.abc import Sequence
from importlib.resources import files
from pathlib import Path
from typing import Any

from routeviz.model.plan import Plan
from routeviz.model.study import Fix
from routeviz.views import gltf
from routeviz.views.pagedata import page_data
from routeviz.views.parts import Group
from routeviz.views.stage import build
from routeviz.views.wallmap import MapCell, WallMap, cell_of

__all__ = ["MapCell", "WallMap", "cell_of", "compose", "fill", "write"]

_FONTS = {
    "rv-say": ("source-serif-4-latin-600-normal.woff", 600),
    "rv-num": ("archivo-narrow-latin-700-normal.woff", 700),
}


_STYLES = ("style.css", "app.css", "lesson.css")


def _asset(*parts: str) -> bytes:
    return files("routeviz.views").joinpath(*parts).read_bytes()


def _data_block(data: dict[str, Any]) -> str:
    """Write data so that nothing in it can end the block it stands in or start another."""
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"), allow_nan=False)
    for char in "<>&\u2028\u2029":
        text = text.replace(char, f"\\u{ord(char):04x}")
    return text


def _faces() -> str:
    rules = []
    for family, (name, weight) in _FONTS.items():
        data = base64.b64encode(_asset("fonts_ofl", name)).decode()
        rules.append(f"@font-face{{font-family:{family};font-weight:{weight};src:url(data:font/woff;base64,{data})}}")
    return "".join(rules)


def _script() -> str:
    return _asset("web", "bundle.js").decode().replace("</script", "<\\/script").replace("<!--", "<\\!--")


def compose(plan: Plan, *, fixes: Sequence[Fix] = (), wall_map: WallMap | None = None) -> str:
    """Give the page as text.

    Parameters
    ----------
    plan : Plan
        The plan to show.
    fixes : sequence of Fix
        Changes that were planned again, offered beside what is broken.
    wall_map : WallMap, optional
        Answers for other places and heights of the hood; without it the hood stays where it was planned.
    """
    reach = None if wall_map is None else wall_map.reach_in
    stage = build(plan, reach=reach, bars=False)
    return fill(plan, page_data(stage, fixes=fixes, wall_map=wall_map), gltf.export(stage, without={Group.ROUTE}))


def fill(plan: Plan, data: dict[str, Any], model: bytes, *, live: bool = False, title: str = "") -> str:
    """Put a plan's data block and its model into the page.

    Parameters
    ----------
    plan : Plan
        The plan; the page's title and what is said without a script come from it.
    data : dict
        The data block, as `page_data` gives it.
    model : bytes
        The GLB of everything but the route.
    live : bool
        Whether the page may talk to the server that it came from, and to that one alone.
    title : str
        The page's title; made of the scene's name when left out.
    """
    script = _script()
    digest = base64.b64encode(hashlib.sha256(script.encode()).digest()).decode()
    policy = f"default-src 'none'; script-src 'sha256-{digest}'; style-src 'unsafe-inline'; img-src data: blob:; font-src data:"
    if live:
        policy += "; connect-src 'self'"
    parts = {
        "@TITLE@": html.escape(
            (title or f"{plan.scene.name}: duct plan") + (" (invented)" if plan.scene.invented else "")
        ),
        "@POLICY@": policy,
        "@ANSWER@": html.escape(f"{plan.verdict.value}. {plan.answer} {plan.second}"),
        "@STYLE@": _faces() + "".join(_asset("web", "src", name).decode() for name in _STYLES),
        "@DATA@": _data_block(data),
        "@MODEL@": base64.b64encode(model).decode(),
        "@SCRIPT@": script,
    }
    pieces = _asset("web", "src", "page.html").decode().split("@")
    # a page is read once from left to right, so nothing that was filled in is filled again
    return "".join(parts.get(f"@{piece}@", piece) for piece in pieces)


def write(plan: Plan, path: Path | str, *, fixes: Sequence[Fix] = (), wall_map: WallMap | None = None) -> Path:
    """Write the page of a plan.

    Parameters
    ----------
    plan : Plan
        The plan to show.
    path : Path or str
        Where to write; a file that is there is replaced once the page is whole.
    fixes : sequence of Fix
        Changes that were planned again, offered beside what is broken.
    wall_map : WallMap, optional
        Answers for other places and heights of the hood.

    Returns
    -------
    Path
        The written file.
    """
    target = Path(path)
    partial = target.with_name(f".{target.name}.{os.getpid()}.part")
    try:
        partial.write_text(compose(plan, fixes=fixes, wall_map=wall_map), encoding="utf-8")
        os.replace(partial, target)
    finally:
        partial.unlink(missing_ok=True)
    return target
