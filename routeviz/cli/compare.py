"""``routeviz compare``: ways out side by side."""

from __future__ import annotations

import json
from pathlib import Path

from routeviz.cli.files import AsJson, write_json
from routeviz.cli.scenes import load_scene

__all__ = ["compare"]


def compare(scene: Path, /, *, as_json: AsJson = None) -> int:
    """Plan a scene for each way out and each of its duct sections, and set them side by side.

    Parameters
    ----------
    scene
        Scene file.
    as_json
        Write only the JSON, to this file; - prints it alone on standard output.
    """
    from routeviz import reports, studies

    loaded = load_scene(scene)
    ways = studies.compare(loaded)
    if as_json is not None:
        write_json(as_json, json.dumps(reports.plain(ways), indent=1, ensure_ascii=False))
    else:
        print(f"{loaded.name}\n")  # noqa: T201
        print(reports.compare_text(ways, metric=loaded.metric))  # noqa: T201
    return 0
