"""The scene on the desk: its text, what was done to it, and the file that it belongs to.

Nothing is ever lost here: a refused change leaves the text as it was, loading what stands on the disk can be undone,
and a file that somebody else changed is not written over unless the person says so.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path
from typing import Any

from routeviz.errors import LengthError, Mistake, RoutevizError, SceneError
from routeviz.model.scene import Scene

__all__ = ["Desk", "DiskState", "Tools"]

_MOST_STEPS = 500  # of undoing


class DiskState(StrEnum):
    """How the file stands to what was last read from it or written to it."""

    SAME = "same"
    CHANGED = "changed"
    GONE = "gone"
    NEW = "new"  # there was none yet


@dataclass(frozen=True)
class Tools:
    """What the desk is given to work with; the views know no stages of their own.

    ``read`` turns the text of a scene file into a scene or raises SceneError, ``edit`` writes changed values into a
    text, ``plain`` gives a text's plain data, ``add`` adds a row to a list of tables, ``write`` writes a file whole or
    not at all, ``preview`` tells what joist marks would mean for a scene (with True also the offset, which takes seconds), and ``schema`` describes scene files, and ``choices`` names what may stand in places whose words the schema leaves open.
    """

    read: Callable[[str], Scene]
    edit: Callable[[str, Mapping[str, object]], str]
    plain: Callable[[str], dict[str, Any]]
    add: Callable[[str, str, Mapping[str, object]], str]
    write: Callable[[Path, str], None]
    preview: Callable[[Scene, str, bool], dict[str, Any]]
    schema: Mapping[str, Any]
    choices: Mapping[str, Sequence[str]]


@dataclass(frozen=True)
class _Made:
    text: str
    scene: Scene


class Desk:
    """One scene being worked on. Every change gives a new revision; the same revision always means the same text."""

    def __init__(self, text: str, path: Path, tools: Tools, *, on_disk: str | None) -> None:
        """Put a scene on the desk.

        Parameters
        ----------
        text : str
            The scene.
        path : Path
            The file to save to.
        tools : Tools
            What to work with.
        on_disk : str or None
            What stands in the file; None when there is no such file yet.

        Raises
        ------
        SceneError
            If the text is no scene.
        """
        self.tools, self.path = tools, path
        self.text, self.scene = text, tools.read(text)
        self.revision = 1
        self.disk = DiskState.SAME if on_disk is not None else DiskState.NEW
        self._kept = on_disk  # as last read or written
        self._seen = on_disk  # as last looked at
        self._past: list[str] = []
        self._future: list[str] = []

    @property
    def unsaved(self) -> bool:
        """Whether the text differs from the file as it was last read or written."""
        return self.text != self._kept

    @property
    def can_undo(self) -> bool:
        """Whether there is a step to take back."""
        return bool(self._past)

    @property
    def can_redo(self) -> bool:
        """Whether there is a step to take again."""
        return bool(self._future)

    def change(self, changes: Mapping[str, object]) -> tuple[Mistake, ...]:
        """Write values into the scene; when any of them cannot stand, none is written and all mistakes are given.

        A value that is given is measured: its place is taken off the list of guessed ones, unless a new list names it.
        """
        return self._try(lambda: self.tools.edit(self.text, self._measured(changes)))

    def change_each(self, groups: Sequence[Mapping[str, object]]) -> tuple[tuple[int, ...], tuple[Mistake, ...]]:
        """Write what stands, and tell what does not: one slip holds back no other value.

        Values of one group stand or fall together; what is written is one step of undoing.

        Parameters
        ----------
        groups : sequence of mappings
            Values by their places, in the order in which they were given; where two do not go together, the later one
            is written.

        Returns
        -------
        tuple
            The numbers of the groups that were not written, and what is wrong with them.
        """
        wrong = self._judged(groups)
        good = list(range(len(groups)))
        while wrong and good:  # first without those that are named, which is nearly always the whole of it
            left = [n for n in good if not _named(groups[n], wrong)]
            if len(left) == len(good):
                good = []
                for n in range(len(groups) - 1, -1, -1):  # then one by one
                    if not self._judged([groups[m] for m in sorted((*good, n))]):
                        good.append(n)
                wrong = ()
            else:
                good, wrong = left, self._judged([groups[n] for n in left])
        if good:
            self.change(_merged([groups[n] for n in sorted(good)]))
        held = tuple(n for n in range(len(groups)) if n not in good)
        return held, self._judged([groups[n] for n in held])

    def _judged(self, groups: Sequence[Mapping[str, object]]) -> tuple[Mistake, ...]:
        """Give what is wrong with groups of values together; nothing is written."""
        found = self._read(lambda: self.tools.edit(self.text, self._measured(_merged(groups)))) if groups else ()
        return found if isinstance(found, tuple) else ()

    def add(self, place: str, row: Mapping[str, object]) -> tuple[Mistake, ...]:
        """Add a row to a list of tables, such as another thing in the way."""
        return self._try(lambda: self.tools.add(self.text, place, row))

    def undo(self) -> bool:
        """Take the last step back; False when there is none."""
        return self._step(self._past, self._future)

    def redo(self) -> bool:
        """Take the last step again that was taken back; False when there is none."""
        return self._step(self._future, self._past)

    def save(self, *, over: bool = False) -> bool:
        """Write the scene to its file; False when the file was changed by somebody else and `over` is not said.

        Raises
        ------
        RoutevizError
            If the file cannot be written.
        """
        self.look()
        if self.disk is DiskState.CHANGED and not over:
            return False
        self.tools.write(self.path, self.text)
        self._kept = self._seen = self.text
        self.disk = DiskState.SAME
        return True

    def look(self) -> bool:
        """Look at the file; True when that is news."""
        now = _contents(self.path)
        before, self._seen = self._seen, now
        state = self.disk
        if now is None:
            state = DiskState.NEW if self._kept is None else DiskState.GONE
        elif now == self._kept:
            state = DiskState.SAME
        elif now == self.text:  # somebody wrote the very same
            self._kept, state = now, DiskState.SAME
        elif now != before or state in (DiskState.GONE, DiskState.NEW):
            state = DiskState.CHANGED
        news = state is not self.disk or (state is DiskState.CHANGED and now != before)
        self.disk = state
        return news

    def load(self) -> tuple[Mistake, ...]:
        """Take up what stands in the file, as a step that can be undone; mistakes leave the desk as it was."""
        found = _contents(self.path)
        if found is None:
            return (
                Mistake(self.path.name, None, "the file", "", "it cannot be read any more", "Save to write it anew"),
            )
        mistakes = self._try(lambda: found)
        if not mistakes:
            self._kept = self._seen = found
            self.disk = DiskState.SAME
        return mistakes

    def keep(self) -> None:
        """Stay with what is on the desk; saving writes over the file that somebody changed."""
        self._kept = self._seen
        self.disk = DiskState.SAME if self._seen is not None else DiskState.NEW

    def assumptions(self) -> dict[str, tuple[str, str]]:
        """Give every value that was not measured, by its place: the value taken and the reason."""
        return {a.field: (a.value, a.reason) for a in self.scene.assumptions}

    def _measured(self, changes: Mapping[str, object]) -> dict[str, object]:
        guessed = self.tools.plain(self.text).get("assumed")
        if not isinstance(guessed, list) or "assumed" in changes:
            return dict(changes)  # who gives the list says himself what is guessed
        gone = tuple(
            f"{place}." for place, value in changes.items() if value is None or isinstance(value, list | tuple)
        )
        left = [place for place in guessed if place not in changes and not (gone and place.startswith(gone))]
        return dict(changes) if left == guessed else {**changes, "assumed": left or None}

    def _read(self, make: Callable[[], str]) -> tuple[Mistake, ...] | _Made | None:
        """Give a text and its scene, or the mistakes in it; None where it is the text that is there."""
        try:
            text = make()
            if text == self.text:
                return None
            return _Made(text, self.tools.read(text))
        except SceneError as fault:
            return fault.mistakes
        except LengthError as fault:
            return (Mistake(self.path.name, None, "", fault.text, fault.problem, fault.remedy),)
        except RoutevizError as fault:
            return (Mistake(self.path.name, None, "", "", str(fault), ""),)

    def _try(self, make: Callable[[], str]) -> tuple[Mistake, ...]:
        found = self._read(make)
        if isinstance(found, tuple):
            return found
        if found is not None:
            self._past = [*self._past[-_MOST_STEPS:], self.text]
            self._future = []
            self._take(found.text, found.scene)
        return ()

    def _step(self, source: list[str], target: list[str]) -> bool:
        if not source:
            return False
        text = source.pop()
        target.append(self.text)
        self._take(text, self.tools.read(text))
        return True

    def _take(self, text: str, scene: Scene) -> None:
        self.text, self.scene = text, scene
        self.revision += 1


def _merged(groups: Sequence[Mapping[str, object]]) -> dict[str, object]:
    return {place: value for group in groups for place, value in group.items()}


def _named(group: Mapping[str, object], mistakes: Sequence[Mistake]) -> bool:
    """Whether a mistake is about a place of the group, or about something within it or around it."""
    within = [(f"{m.field}.", f"{place}.") for m in mistakes for place in group if m.field]
    return any(field.startswith(place) or place.startswith(field) for field, place in within)


def _contents(path: Path) -> str | None:
    try:
        return path.read_bytes().decode("utf-8-sig")
    except (OSError, UnicodeDecodeError):
        return None
