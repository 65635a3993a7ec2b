"""The starter scene, and the JSON schema of scene files."""

from __future__ import annotations

import json
from importlib import resources
from typing import Any

from routeviz.scenefile.document import FORMAT, Document

__all__ = ["blank", "json_schema", "starter"]


def starter() -> str:
    """Give a commented scene of an invented kitchen, as text of a TOML file, to be edited from a tape measure."""
    return resources.files("routeviz.scenefile").joinpath("starter.toml").read_text(encoding="utf-8")


def blank() -> str:
    """Give an empty kitchen as text of a TOML file: a scene that plans, in which every number is marked as guessed."""
    return resources.files("routeviz.scenefile").joinpath("blank.toml").read_text(encoding="utf-8")


def json_schema() -> dict[str, Any]:
    """Give the JSON schema of scene files (draft 2020-12), with a description of every key.

    Editors that know TOML and JSON schema complete and check keys with it. Lengths are text with a unit or bare
    numbers; what a text must look like is checked when the scene is read.
    """
    schema = Document.model_json_schema()
    schema["$schema"] = "https://json-schema.org/draft/2020-12/schema"
    schema["title"] = f"routeviz scene, format {FORMAT}"
    plain: dict[str, Any] = json.loads(json.dumps(schema))
    _tidy(plain)
    layer = plain["$defs"]["LayerTable"]
    plain["$defs"]["LayerTable"] = {"description": layer["description"], "anyOf": [{"type": "string"}, layer]}
    return plain


def _tidy(node: Any) -> None:
    """Take out what only pydantic means: reasons of assumptions, titles of keys, null (TOML has none)."""
    if isinstance(node, dict):
        node.pop("assume", None)
        if "default" in node and node["default"] is None:
            del node["default"]
        choices = node.get("anyOf")
        if isinstance(choices, list):
            kept = [choice for choice in choices if choice != {"type": "null"}]
            node["anyOf"] = kept
            if len(kept) == 1:
                del node["anyOf"]
                node.update(kept[0])
        for key in node.get("properties", {}).values():
            key.pop("title", None)
        for value in node.values():
            _tidy(value)
    elif isinstance(node, list):
        for value in node:
            _tidy(value)
