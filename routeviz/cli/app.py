"""The commands, by import string, so that ``routeviz --help`` stays quick."""

from __future__ import annotations

from cyclopts import App

from routeviz import __version__

__all__ = ["app"]

app = App(
    name="routeviz",
    version=__version__,
    help=(
        "Plan a kitchen hood's exhaust duct before any hole is cut. A plan only: local code, the makers' "
        "instructions and licensed trades decide."
    ),
    help_format="plaintext",
    version_flags=["--version"],
    suppress_keyboard_interrupt=False,  # main says that it stopped
)
_COMMANDS = {
    "new": "Write a commented starter scene to fill in from a tape measure.",
    "app": "Open a scene in the browser: change any number there and see what follows.",
    "plan": "Find the best duct route; print it, write plan.json, a picture and a 3D page.",
    "check": "Judge a scene: its route as built, or the best one found.",
    "tape": "Show what every inch of the hood wall gives, from one search.",
    "compare": "Set the ways out side by side: roof, wall, other sections.",
    "packet": "Write the install packet: drawings, marks, holes, cuts, parts, order of work.",
    "lesson": "Make a lesson into a page to step through; list the lessons that are shipped.",
    "film": "Film a plan: a swing round the room, and the way of the air.",
    "show": "Open a window on the desktop, with sliders for the hood and the joists.",
    "explain": "Say what a rule checks, why, and where it comes from.",
    "schema": "Print the JSON schema of a scene file or of a plan.",
}
_MORE = {  # below the line that the list of commands has
    "check": (
        "A route that exists or is proposed is given in the scene file, fitting by fitting from the hood to the end: "
        "[as_built], and under it one [[as_built.fittings]] for each, with its part (straight, elbow, offset, reducer, "
        "flex, cap or open end), and its length, its angle or the way it turns (up, down, left, right, back, front). "
        "All fields: routeviz schema"
    ),
}
_ELSEWHERE = {"app": "live"}  # this module has the name that the command would have
for _name, _help in _COMMANDS.items():
    app.command(
        f"routeviz.cli.{_ELSEWHERE.get(_name, _name)}:{_name}",
        name=_name,
        help="\n\n".join(filter(None, (_help, _MORE.get(_name)))),
    )
