"""What was mistyped on the command line, in one plain line with its remedy."""

from __future__ import annotations

from typing import Literal, get_args, get_origin

from cyclopts import CoercionError, CycloptsError, MissingArgumentError, RepeatArgumentError, UnusedCliTokensError
from cyclopts.exceptions import UnknownCommandError, UnknownOptionError, ValidationError

__all__ = ["usage_words"]

_WANTED = {int: "a whole number", float: "a number", bool: "yes or no"}


def usage_words(fault: CycloptsError) -> str:
    """Say what was mistyped and where help stands.

    Parameters
    ----------
    fault : CycloptsError
        What the reading of the command line found.
    """
    command = " ".join(("routeviz", *(fault.command_chain or ())))
    return f"{command}: {_problem(fault)} See: {command} --help"


def _problem(fault: CycloptsError) -> str:
    if isinstance(fault, UnknownOptionError | UnknownCommandError):
        fault.verbose = False
        return str(fault)  # names it and the nearest known one
    if isinstance(fault, UnusedCliTokensError):
        left = ", ".join(repr(token) for token in fault.unused_tokens or ())
        return f"{left} is more than this command takes."
    if isinstance(fault, MissingArgumentError):
        name = fault.keyword or (fault.argument.name if fault.argument else "an argument")
        return f"{name} is missing its value." if name.startswith("-") else f"{name} is missing."
    if isinstance(fault, RepeatArgumentError):
        return f"{fault.token.keyword or 'an argument'} is given more than once."
    if isinstance(fault, CoercionError) and fault.token is not None:
        name = fault.token.keyword or (fault.argument.name if fault.argument else "the argument")
        return f"{name} cannot be {fault.token.value!r}; it takes {_wanted(fault)}."
    if isinstance(fault, ValidationError) and fault.argument is not None:
        limit = fault.exception_message.rstrip(".").lower().replace(">=", "at least")
        return f"{fault.argument.name} cannot be {fault.argument.value!r}: it {limit}."
    return "this cannot be read as a command."


def _wanted(fault: CoercionError) -> str:
    kind = fault.target_type
    if get_origin(kind) is Literal:
        return " or ".join(str(choice) for choice in get_args(kind))
    return _WANTED.get(kind, "another kind of value") if isinstance(kind, type) else "another kind of value"
