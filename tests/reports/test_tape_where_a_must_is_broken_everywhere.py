"""What is broken wherever the hood hangs does not blot out what the wall gives: it is said once."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from routeviz import reports, scenefile, studies
from routeviz.drawings.primitives import Text
from routeviz.drawings.tape_sheet import stretches, tape_page
from routeviz.model.plan import Plan, broken_everywhere
from routeviz.model.scene import Fan, Scene

JOIST = Path(__file__).parents[2] / "scenes" / "joist_dead_centre.toml"


def rows(fan_cfm: float) -> tuple[Plan, ...]:
    """Places from 50 to 74 in, 2 in apart; an open flue in the house asks for makeup air above 400 cfm (IRC M1503.6)."""
    home: Scene = scenefile.load(JOIST)
    home = replace(
        home,
        hood=replace(home.hood, fan=Fan(fan_cfm)),
        rules=replace(home.rules, open_flue_appliance=True, makeup_air=False),
    )
    return studies.wall_plans(home, [50.0 + 2 * n for n in range(13)], studies.heights(home))[0]


def test_the_route_is_shown_and_makeup_air_told_once() -> None:
    strong, quiet = rows(600.0), rows(400.0)
    assert broken_everywhere(strong) == {"AIR-MAKEUP": "Makeup air"}
    assert broken_everywhere(quiet) == {}
    told, plain = reports.tape_text(strong), reports.tape_text(quiet)
    assert told.count("Makeup air") == 1
    assert "Still to clear, wherever the hood hangs: Makeup air." in told
    strip, other = (next(line for line in text.splitlines() if line.startswith("   route")) for text in (told, plain))
    assert strip == other
    assert "↑" in strip
    assert "▨" in strip  # under joist 4, which is in the duct whatever the fan
    assert "The cooktop goes with the hood." in told


def test_so_does_the_drawing() -> None:
    strong, quiet = rows(600.0), rows(400.0)
    assert {s.kind for s in stretches(strong)} == {"blocked"}
    everywhere = broken_everywhere(strong)
    assert [(s.kind, s.low) for s in stretches(strong, everywhere)] == [(s.kind, s.low) for s in stretches(quiet)]
    words = [item.text for item in tape_page([strong]).items if isinstance(item, Text)]
    assert any("still to clear everywhere: Makeup air" in w for w in words)


def test_where_nothing_leads_out_nothing_is_said_of_everywhere() -> None:
    assert broken_everywhere([]) == {}
    assert broken_everywhere([plan for plan in rows(600.0) if plan.best is None]) == {}
