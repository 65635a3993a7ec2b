"""The desk of the live page: a refused change leaves everything as it was, and nothing is ever lost."""

from __future__ import annotations

import os
import tomllib
from pathlib import Path

import live_tools
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz.errors import RoutevizError
from routeviz.views.app import DiskState


def test_a_change_is_written_with_comments_kept(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    assert desk.change({"ceiling.joists.first": "15 1/4 in", "ceiling.joists.spacing": "24 in"}) == ()
    assert desk.scene.ceiling.joists.first_in == 15.25
    assert desk.scene.ceiling.joists.spacing_in == 24
    before, after = live_tools.JUNIPER.splitlines(), desk.text.splitlines()
    changed = [(a, b) for a, b in zip(before, after, strict=True) if a != b]
    assert len(changed) == 1, "one line holds the joists"
    assert desk.unsaved
    assert desk.revision == 2


def test_all_mistakes_come_at_once_and_the_scene_stays(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    mistakes = desk.change({"ceiling.joists.first": "fourteen", "kitchen.width": "3 in", "cooktop.kind": "wood"})
    assert {m.field for m in mistakes} == {"ceiling.joists.first", "kitchen.width", "cooktop.kind"}
    assert all(m.problem and m.remedy for m in mistakes)
    assert (desk.text, desk.revision, desk.can_undo, desk.unsaved) == (live_tools.JUNIPER, 1, False, False)


def test_values_that_only_stand_together_are_taken_together(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    marks = ["13 1/4 in", "29 in"]
    assert [m.field for m in desk.change({"ceiling.joists.at": marks})] == [
        "ceiling.joists.first",
        "ceiling.joists.spacing",
    ]
    assert desk.change({"ceiling.joists.at": marks, "ceiling.joists.first": None, "ceiling.joists.spacing": None}) == ()
    assert desk.scene.ceiling.joists.at_in == (13.25, 29.0)


def test_of_several_changes_those_that_stand_are_written_as_one_step(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    held, mistakes = desk.change_each(
        [{"cooktop.width": "banana"}, {"hood.mount": "33 in"}, {"kitchen.ceiling": "9 ft", "kitchen.width": "3 in"}]
    )
    assert held == (0, 2), "values that were said together wait together"
    assert {m.field for m in mistakes} == {"cooktop.width", "kitchen.width"}
    assert desk.text == live_tools.JUNIPER.replace('mount = "30 in"', 'mount = "33 in"')
    assert desk.revision == 2
    desk.undo()
    assert desk.text == live_tools.JUNIPER


def test_what_only_stands_together_is_written_when_the_rest_of_it_comes(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    marks = {"ceiling.joists.at": ["13 1/4 in", "29 in"]}
    assert desk.change_each([marks])[0] == (0,)
    assert desk.text == live_tools.JUNIPER
    held, mistakes = desk.change_each([marks, {"ceiling.joists.first": None}, {"ceiling.joists.spacing": None}])
    assert (held, mistakes) == ((), ())
    assert desk.scene.ceiling.joists.at_in == (13.25, 29.0)


def test_a_change_whose_fault_shows_elsewhere_holds_back_no_other(tmp_path: Path) -> None:
    """Marks beside a spacing: the mistake names the spacing, which is in none of the changes."""
    desk = live_tools.desk(tmp_path)
    held, mistakes = desk.change_each([{"ceiling.joists.at": ["13 1/4 in", "29 in"]}, {"hood.mount": "33 in"}])
    assert held == (0,)
    assert mistakes
    assert desk.scene.hood.mount_in == 33
    assert desk.scene.ceiling.joists.at_in == ()


def test_a_place_that_no_scene_has_is_refused(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    (mistake,) = desk.change({"hood.colour": "green"})
    assert "no such place" in mistake.problem
    assert desk.text == live_tools.JUNIPER


def test_undo_and_redo_go_the_same_way_back_and_forth(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    texts = [desk.text]
    for first in ("15 in", "13 in", "12 1/2 in"):
        desk.change({"ceiling.joists.first": first})
        texts.append(desk.text)
    for text in reversed(texts[:-1]):
        assert desk.undo()
        assert desk.text == text
    assert not desk.undo()
    for text in texts[1:]:
        assert desk.redo()
        assert desk.text == text
    assert not desk.redo()
    desk.undo()
    desk.change({"hood.mount": "28 in"})
    assert not desk.can_redo, "a new step ends what was taken back"
    assert desk.scene.hood.mount_in == 28


@given(st.lists(st.sampled_from(["undo", "redo", "14 in", "15 in", "nonsense", "2 in"]), max_size=14))
@settings(max_examples=25, deadline=None)
def test_revisions_only_rise_and_undo_restores(tmp_path_factory, steps: list[str]) -> None:
    """Against a plain list of texts with a cursor."""
    desk = live_tools.desk(tmp_path_factory.mktemp("desk"))
    texts, at, revision = [desk.text], 0, desk.revision
    for step in steps:
        if step == "undo":
            at = max(0, at - 1)
            desk.undo()
        elif step == "redo":
            at = min(len(texts) - 1, at + 1)
            desk.redo()
        else:
            before = desk.text
            if not desk.change({"ceiling.joists.first": step}) and desk.text != before:
                texts, at = [*texts[: at + 1], desk.text], at + 1
        assert desk.text == texts[at]
        assert (desk.can_undo, desk.can_redo) == (at > 0, at < len(texts) - 1)
        assert desk.revision >= revision
        revision = desk.revision


def test_a_guessed_value_that_is_given_is_measured(tmp_path: Path) -> None:
    guessed = live_tools.JUNIPER.replace(
        "invented = true", 'assumed = ["ceiling.joists.first", "hood.mount", "roof.pitch"]'
    )
    desk = live_tools.desk(tmp_path, guessed)
    assert desk.assumptions()["hood.mount"][1] == "marked as guessed in the scene file"
    desk.change({"hood.mount": "30 in"})  # the very same number, but measured now
    assert "hood.mount" not in desk.assumptions()
    assert tomllib.loads(desk.text)["assumed"] == ["ceiling.joists.first", "roof.pitch"]
    desk.change({"ceiling.joists.first": "15 in", "roof.pitch": "4/12"})
    assert "assumed" not in tomllib.loads(desk.text)


def test_a_default_that_is_given_is_measured(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    assert desk.assumptions()["duct.clearance"] == ("1/4 in", "common practice")
    desk.change({"duct.clearance": "1/4 in"})
    assert "duct.clearance" not in desk.assumptions()


def test_guesses_inside_a_table_go_with_the_table(tmp_path: Path) -> None:
    guessed = live_tools.JUNIPER.replace("invented = true", 'assumed = ["ceiling.joists.first", "hood.mount"]')
    desk = live_tools.desk(tmp_path, guessed)
    assert desk.change({"above.kind": "slab", "ceiling.joists": None, "ceiling.slab": "8 in"}) == ()
    assert tomllib.loads(desk.text)["assumed"] == ["hood.mount"]


def test_a_list_that_is_given_anew_is_measured_in_all_its_places(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path, live_tools.JUNIPER.replace("invented = true", 'assumed = ["hood.mount"]'))
    places = ["14 in", "30 in", "46 in", "62 in"]
    gone = {"ceiling.joists.first": None, "ceiling.joists.spacing": None}
    guessed = {"assumed": ["hood.mount", "ceiling.joists.at.3", "ceiling.joists.at.4"]}
    assert desk.change({"ceiling.joists.at": places, **gone, **guessed}) == ()
    assert desk.assumptions()["ceiling.joists.at.4"] == ("62 in", "marked as guessed in the scene file")
    assert desk.change({"ceiling.joists.at": places[:3]}) == ()
    assert tomllib.loads(desk.text)["assumed"] == ["hood.mount"]


def test_a_thing_in_the_way_is_added_and_taken_away(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    row = {
        "name": "pipe-1",
        "kind": "pipe",
        "left": "40 in",
        "bottom": "80 in",
        "width": "2 in",
        "depth": "2 in",
        "height": "10 in",
    }
    assert desk.add("obstacles", row) == ()
    assert [o.id for o in desk.scene.obstacles] == ["pipe-1"]
    assert desk.add("obstacles", row)[0].problem == "this name is used twice"
    assert desk.change({"obstacles.pipe-1": None}) == ()
    assert desk.scene.obstacles == ()


def test_saving_writes_the_file_and_is_told(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    desk.change({"hood.mount": "28 in"})
    assert desk.save()
    assert desk.path.read_text(encoding="utf-8") == desk.text
    assert (desk.unsaved, desk.disk) == (False, DiskState.SAME)
    assert desk.can_undo, "what was saved can still be taken back"


def test_a_new_scene_has_no_file_until_it_is_saved(tmp_path: Path) -> None:
    desk = live_tools.Desk(live_tools.JUNIPER, tmp_path / "new.toml", live_tools.tools(), on_disk=None)
    assert (desk.disk, desk.unsaved) == (DiskState.NEW, True)
    assert not desk.look()
    assert desk.save()
    assert (desk.disk, desk.unsaved) == (DiskState.SAME, False)


def test_a_file_that_something_else_changed_is_not_written_over(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    desk.change({"hood.mount": "28 in"})
    theirs = live_tools.JUNIPER.replace('width = "12 ft"', 'width = "13 ft"', 1)
    live_tools.write(desk.path, theirs)
    assert desk.look()
    assert not desk.look(), "it is news once"
    assert desk.disk is DiskState.CHANGED
    assert not desk.save()
    assert desk.path.read_text(encoding="utf-8") == theirs
    desk.keep()
    assert desk.save()
    assert desk.path.read_text(encoding="utf-8") == desk.text


def test_what_stands_in_the_file_is_taken_up_and_can_be_undone(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    desk.change({"hood.mount": "28 in"})
    mine = desk.text
    live_tools.write(desk.path, live_tools.JUNIPER.replace('width = "12 ft"', 'width = "13 ft"', 1))
    desk.look()
    assert desk.load() == ()
    assert (desk.scene.kitchen.width_in, desk.unsaved, desk.disk) == (156, False, DiskState.SAME)
    desk.undo()
    assert desk.text == mine


def test_a_changed_file_with_mistakes_leaves_the_desk_alone(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    live_tools.write(desk.path, live_tools.JUNIPER.replace('ceiling = "8 ft"', 'ceiling = "high"'))
    desk.look()
    (mistake,) = desk.load()
    assert mistake.field == "kitchen.ceiling"
    assert desk.text == live_tools.JUNIPER


def test_a_file_that_is_gone_is_told_and_written_anew(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    desk.path.unlink()
    assert desk.look()
    assert desk.disk is DiskState.GONE
    assert desk.load()[0].remedy == "Save to write it anew"
    assert desk.save()
    assert desk.path.exists()


def test_the_same_words_written_by_another_are_no_conflict(tmp_path: Path) -> None:
    desk = live_tools.desk(tmp_path)
    desk.change({"hood.mount": "28 in"})
    live_tools.write(desk.path, desk.text)
    desk.look()
    assert (desk.disk, desk.unsaved) == (DiskState.SAME, False)


def test_a_file_that_cannot_be_written_says_so_and_nothing_is_lost(tmp_path: Path) -> None:
    from routeviz.cli.files import write_text

    folder = tmp_path / "there"
    folder.mkdir()
    desk = live_tools.desk(folder, write=write_text)
    desk.change({"hood.mount": "28 in"})
    desk.path.unlink()
    os.rmdir(folder)
    with pytest.raises(RoutevizError, match="cannot write"):
        desk.save()
    assert desk.unsaved
    assert desk.scene.hood.mount_in == 28
