"""``routeviz app``: the live page, where every number of a scene can be changed and is planned again at once."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any

from cyclopts import Parameter, validators

from routeviz.cli.files import OutputError, write_text
from routeviz.cli.scenes import load_text

if TYPE_CHECKING:
    from routeviz.model.scene import Scene
    from routeviz.views.app import Desk, Tools

__all__ = ["app"]


def app(
    scene: Path | None = None,
    /,
    *,
    browser: bool = True,
    port: Annotated[int, Parameter(validator=validators.Number(gte=0, lte=65535))] = 0,
) -> int:
    """Open a scene in the browser, change its numbers there and see what follows; nothing leaves this machine.

    Parameters
    ----------
    scene
        Scene file; a name that is not there yet, or none, begins with an empty kitchen and a few questions.
    browser
        Open the browser.
    port
        Port on 127.0.0.1; 0 takes any that is free.
    """
    from routeviz.cli import livework
    from routeviz.views import app as live
    from routeviz.views.app.runner import preload

    desk, questions = _desk(scene)
    preload(*livework.PRELOADED)
    planning = live.Planning(livework.quick, livework.deep)
    try:
        live.serve(desk, planning, questions=questions, opened=lambda at: _opened(at, desk, browser=browser), port=port)
    except OSError as fault:
        raise OutputError(
            f"cannot serve on port {port}: {fault.strerror}. Leave --port out for one that is free"
        ) from None
    except KeyboardInterrupt:
        pass
    finally:
        planning.close()
    _farewell(desk)
    return 0


def _tools() -> Tools:
    from routeviz import rules, scenefile
    from routeviz.views.app import Tools

    return Tools(
        read=lambda text: load_text(text, Path("scene.toml")),
        edit=scenefile.edit,
        plain=scenefile.plain,
        add=scenefile.add_row,
        write=write_text,
        preview=_preview,
        schema=scenefile.json_schema(),
        choices={"rules.profile": rules.profiles()},
    )


def _preview(scene: Scene, marks: str, offset: bool) -> dict[str, Any]:
    from routeviz import studies

    read = studies.read_marks(marks, unit="mm" if scene.metric else "in")
    return studies.joists_as_json(studies.joist_preview(scene, read, offset=offset))


def _desk(scene: Path | None) -> tuple[Desk, bool]:
    """Give the desk with the scene on it, and whether it begins with questions."""
    from routeviz import scenefile
    from routeviz.views.app import Desk

    path = (scene or _free_name()).resolve()
    if not path.exists():
        if not path.parent.is_dir():
            raise OutputError(f"the folder {path.parent} is not there. Make it first, or give another name")
        return Desk(scenefile.blank(), path, _tools(), on_disk=None), True
    from routeviz.cli.scenes import load_scene

    load_scene(path)  # tells every mistake of the file, with its lines, in the terminal
    text = path.read_bytes().decode("utf-8-sig")
    return Desk(text, path, _tools(), on_disk=text), False


def _free_name() -> Path:
    names = (Path("kitchen.toml"), *(Path(f"kitchen_{n}.toml") for n in range(2, 1000)))
    return next(name for name in names if not name.exists())


def _opened(address: str, desk: Desk, *, browser: bool) -> None:
    print(f"{desk.path.name} is open at {address}\nCtrl-C ends it.", file=sys.stderr, flush=True)  # noqa: T201
    if browser:
        import threading
        import webbrowser

        # the browser asks at once and waits for its answer, so it must not be waited for here
        threading.Thread(target=webbrowser.open, args=(address,), daemon=True).start()


def _farewell(desk: Desk) -> None:
    """Keep what was not saved, beside the file, and say so."""
    if not desk.unsaved or not (desk.can_undo or desk.can_redo):
        print("Ended.", file=sys.stderr)  # noqa: T201
        return
    kept = next(p for p in _spare_names(desk.path) if not p.exists())
    write_text(kept, desk.text)
    print(f"Ended. What was not saved is kept in {kept}", file=sys.stderr)  # noqa: T201


def _spare_names(path: Path) -> list[Path]:
    return [path.with_name(f"{path.stem}_unsaved{'' if n == 1 else f'_{n}'}{path.suffix}") for n in range(1, 1000)]
