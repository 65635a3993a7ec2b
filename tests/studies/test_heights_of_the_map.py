"""The heights that a map of the wall answers for."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz import rules, studies


def test_heights_stay_in_the_legal_window_and_pass_through_the_scenes_own() -> None:
    scene = samples.scene()
    scene = replace(scene, hood=replace(scene.hood, mount_in=27.5))
    window = rules.mounting_window(scene, rules.profile(scene.rules.profile))
    found = studies.heights(scene, step_in=2.0)
    assert 27.5 in found
    assert all(window.low_in - 1e-9 <= h <= window.high_in + 1e-9 for h in found)
    assert all(abs(b - a - 2.0) < 1e-9 for a, b in zip(found[1:-1], found[2:-1], strict=False))
    assert found[0] == pytest.approx(max(window.low_in, 15.5), abs=0.5)  # both ends can be reached
    assert found[-1] == pytest.approx(min(window.high_in, 39.5), abs=0.5)


def test_a_hood_outside_the_window_is_still_on_its_own_map() -> None:
    scene = samples.scene()
    low = replace(scene, hood=replace(scene.hood, mount_in=12.0))
    assert studies.heights(low, step_in=6.0)[0] == 12.0
    assert studies.heights(low) == (12.0,)
