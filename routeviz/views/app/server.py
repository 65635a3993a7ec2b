"""The page over HTTP, for this machine and this person alone.

The address holds a secret, so that no other program or web site can guess it; requests that come under another host's
name, or that a page of another origin sends, are refused.
"""

from __future__ import annotations

import asyncio
import base64
import contextlib
import hmac
import html
import secrets
import socket
import threading
import time
from collections.abc import AsyncIterator, Awaitable, Callable
from typing import Any

from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.requests import Request
from starlette.responses import HTMLResponse, JSONResponse, PlainTextResponse, Response
from starlette.routing import Route

from routeviz.errors import LengthError, Mistake, RoutevizError
from routeviz.views import gltf, page
from routeviz.views.app.desk import Desk
from routeviz.views.app.pictures import stage_of
from routeviz.views.app.planning import Planning
from routeviz.views.parts import Group

__all__ = ["application", "serve"]

_WAITING = """<!doctype html><html lang="en"><meta charset="utf-8">{0}
<meta name="viewport" content="width=device-width"><title>{1}</title>
<style>body{{font:17px/1.5 system-ui,sans-serif;max-width:38em;margin:12vh auto;padding:0 1.2em;color-scheme:light dark}}h1{{font-size:1.3em}}</style>
<h1>{2}</h1><p>{3}</p><p>{4}</p></html>
"""
_LARGEST_REQUEST = 1_000_000
_LONGEST_WAIT_S = 25.0
_LOOK_AT_FILE_S = 1.0
_LOOK_UP_S = 0.25  # how soon a page that waits hears that the program ends
_Handler = Callable[["_Site", Request], Awaitable[Response]]


class _Site:
    """The desk and the planning behind one address."""

    def __init__(
        self,
        desk: Desk,
        planning: Planning,
        secret: str,
        hosts: frozenset[str],
        *,
        questions: bool,
        ending: Callable[[], bool],
    ) -> None:
        self.desk, self.planning, self.secret, self.hosts = desk, planning, secret, hosts
        self.questions, self.ending = questions, ending
        self.lock = threading.RLock()
        self._model: tuple[int, bytes] = (0, b"")
        self._woken = asyncio.Event()

    def listen(self) -> None:
        """Pass on, to whoever waits in this loop, what the planning's threads tell."""
        loop = asyncio.get_running_loop()
        self.planning.shown.told = lambda: loop.call_soon_threadsafe(self._wake)

    def _wake(self) -> None:
        self._woken.set()
        self._woken = asyncio.Event()

    async def wait(self, after: int, seconds: float) -> None:
        """Wait until there is news, or the program ends, or the time is over."""
        until = time.monotonic() + seconds
        while self.planning.shown.news <= after and not self.ending() and time.monotonic() < until:
            with contextlib.suppress(TimeoutError):
                await asyncio.wait_for(self._woken.wait(), min(_LOOK_UP_S, max(0.0, until - time.monotonic())))

    def touch(self) -> None:
        """Wake everybody who waits for news."""
        with self.planning.shown.seen:
            self.planning.shown.tell()

    def plan_now(self) -> None:
        """Plan what is on the desk."""
        self.planning.ask(self.desk.revision, self.desk.scene)
        self.touch()

    def model(self) -> tuple[int, bytes]:
        """Give the number of the plan that is shown and all its pieces."""
        plan, change = self.planning.shown.plan, self.planning.shown.change
        if plan is None or change is None:
            return 0, b""
        if self._model[0] != change.number:
            whole = change.model if change.base == 0 else gltf.export(stage_of(plan), without={Group.ROUTE})
            self._model = (change.number, whole)
        return self._model

    def data(self) -> dict[str, Any] | None:
        """Give the page's data block for the plan that is shown."""
        shown = self.planning.shown
        with shown.seen:
            if shown.change is None:
                return None
            data = dict(shown.change.data)
            data["fixes"], data["map"] = shown.fixes or [], shown.wall
            data["live"] = {
                "number": shown.change.number,
                "whole": shown.change.whole,
                "schema": self.desk.tools.schema,
                "choices": self.desk.tools.choices,
                "questions": self.questions,
            }
            return data


def _mistake(mistake: Mistake) -> dict[str, Any]:
    return {"field": mistake.field, "value": mistake.value, "problem": mistake.problem, "remedy": mistake.remedy,
            "line": mistake.line}  # fmt: skip


def _state(site: _Site) -> dict[str, Any]:
    """Give what every open page must agree on."""
    desk = site.desk
    return {
        "revision": desk.revision, "file": desk.path.name, "raw": desk.tools.plain(desk.text), "text": desk.text,
        "assumed": desk.assumptions(), "undo": desk.can_undo, "redo": desk.can_redo, "unsaved": desk.unsaved,
        "disk": desk.disk.value,
    }  # fmt: skip


def _news(site: _Site, have: int, whole: bool, wall: bool) -> dict[str, Any]:
    """Give what a page that shows plan `have` (all of it or its answer, with or without its wall) does not know yet."""
    shown = site.planning.shown
    with site.lock, shown.seen:
        found: dict[str, Any] = {
            "news": shown.news, "state": _state(site), "doing": shown.doing, "part": shown.part, "stopped": shown.stopped,
            "trouble": shown.trouble,
        }  # fmt: skip
        change = shown.change
        if change is None:
            return found
        found["number"] = change.number
        if change.number > have:
            data = site.data()
            model = base64.b64encode(change.model).decode() if change.base in (0, have) else None
            found["plan"] = {"data": data, "base": change.base, "model": model}
        elif change.whole and not whole:
            found["rest"] = site.data()
        elif not wall and (shown.fixes is not None or shown.wall is not None):
            found["more"] = {"fixes": shown.fixes or [], "map": shown.wall}
    return found


def application(
    desk: Desk,
    planning: Planning,
    *,
    secret: str,
    hosts: frozenset[str],
    questions: bool = False,
    ending: Callable[[], bool] = lambda: False,
) -> Starlette:
    """Give the application.

    Parameters
    ----------
    desk : Desk
        The scene that is worked on.
    planning : Planning
        What plans it.
    secret : str
        The part of the address that nobody can guess.
    hosts : frozenset of str
        The values of the Host header that are answered.
    questions : bool
        Whether the page begins with its questions, because nothing is known yet.
    ending : callable
        Whether the program is about to end; pages that wait are told so.
    """
    site = _Site(desk, planning, secret, hosts, questions=questions, ending=ending)
    planning.ask(desk.revision, desk.scene)

    @contextlib.asynccontextmanager
    async def alive(_: Starlette) -> AsyncIterator[None]:
        site.listen()
        watching = asyncio.create_task(_watch(site))
        try:
            yield
        finally:
            watching.cancel()
            planning.shown.told = lambda: None
            planning.close()

    # browsers ask for it by themselves, and would note its absence as a fault of the page
    routes = [
        Route("/favicon.ico", _no_icon, methods=["GET"]),
        Route("/{secret}/", _guarded(site, _page), methods=["GET"]),
    ]
    for name, answer in _READERS.items():
        routes.append(Route(f"/{{secret}}/{name}", _guarded(site, answer), methods=["GET"]))
    for name, answer in _WRITERS.items():
        routes.append(Route(f"/{{secret}}/{name}", _guarded(site, answer), methods=["POST"]))
    app = Starlette(routes=routes, lifespan=alive, exception_handlers={404: _nothing, 405: _nothing})
    app.router.redirect_slashes = False  # an address that is nearly right is told no more than a wrong one
    return app


async def _no_icon(_: Request) -> Response:
    return Response(status_code=204)


async def _nothing(_: Request, __: Exception) -> Response:
    return PlainTextResponse("There is nothing here.\n", status_code=404)


def _guarded(site: _Site, answer: _Handler) -> Callable[[Request], Awaitable[Response]]:
    """Refuse who does not know the secret, or comes under another name or from another page."""

    async def endpoint(request: Request) -> Response:
        known = hmac.compare_digest(request.path_params["secret"].encode(), site.secret.encode())
        host, origin = request.headers.get("host", ""), request.headers.get("origin")
        if host not in site.hosts or not known or (origin is not None and origin.removeprefix("http://") != host):
            return PlainTextResponse("This address is not for you.\n", status_code=403)
        if int(request.headers.get("content-length") or 0) > _LARGEST_REQUEST:
            return PlainTextResponse("That is far too much for a scene.\n", status_code=413)
        found = await answer(site, request)
        found.headers["Cache-Control"] = "no-store"
        found.headers["X-Content-Type-Options"] = "nosniff"
        found.headers["Referrer-Policy"] = "no-referrer"
        found.headers["Cross-Origin-Resource-Policy"] = "same-origin"
        return found

    return endpoint


async def _watch(site: _Site) -> None:
    """Look at the file again and again."""
    while True:
        await asyncio.sleep(_LOOK_AT_FILE_S)
        with site.lock:
            changed = site.desk.look()
        if changed:
            site.touch()


async def _page(site: _Site, _: Request) -> Response:
    """Give the whole page, with the plan that is shown; the first request waits for the first plan."""
    for _turn in range(400):
        if site.planning.shown.change is not None or site.ending() or site.planning.shown.trouble:
            break
        await asyncio.sleep(0.05)
    return await run_in_threadpool(_whole_page, site)


def _whole_page(site: _Site) -> Response:
    plan = site.planning.shown.plan
    data = site.data()
    if plan is None or data is None:
        return _waiting_page(site.desk.path.name, site.planning.shown.trouble)
    number, model = site.model()
    if number != data["live"]["number"]:  # a newer plan came in between
        return _whole_page(site)
    return HTMLResponse(page.fill(plan, data, model, live=True))


def _waiting_page(name: str, trouble: str) -> Response:
    """Say in the browser what there is instead of a first plan; while one is being made it looks again by itself."""
    again = "" if trouble else '<meta http-equiv="refresh" content="2">'
    words = (
        ("Not planned", trouble, f"Stop the program in its terminal (Ctrl+C), mend {name} and start it again.")
        if trouble
        else ("Planning", "The first plan is on its way.", "This page looks again by itself.")
    )
    return HTMLResponse(_WAITING.format(again, *map(html.escape, (name, *words))), status_code=503)


async def _tell_news(site: _Site, request: Request) -> Response:
    query = request.query_params
    after, have = _count(query.get("after")), _count(query.get("have"))
    seconds = min(_LONGEST_WAIT_S, float(_count(query.get("wait"))))
    await site.wait(after, seconds)
    if site.ending():
        return JSONResponse({"ending": True})
    known = query.get("whole") == "1", query.get("wall") == "1"
    return JSONResponse(await run_in_threadpool(_news, site, have, *known))


def _count(text: str | None) -> int:
    return int(text) if text and text.isascii() and text.isdigit() and len(text) < 12 else 0


async def _tell_model(site: _Site, _: Request) -> Response:
    number, model = await run_in_threadpool(site.model)
    return Response(model, media_type="model/gltf-binary", headers={"X-Plan": str(number)})


async def _body(request: Request) -> dict[str, Any]:
    if request.headers.get("content-type", "").split(";")[0] != "application/json":
        return {}
    try:
        found = await request.json()
    except ValueError:
        return {}
    return found if isinstance(found, dict) else {}


def _done(site: _Site, mistakes: tuple[Mistake, ...] = ()) -> Response:
    """Say how a change went, and plan what is on the desk now. A refusal is an ordinary answer, not a failure."""
    if mistakes:
        return JSONResponse({"mistakes": [_mistake(m) for m in mistakes], "state": _state(site)})
    site.plan_now()
    return JSONResponse({"state": _state(site)})


async def _change(site: _Site, request: Request) -> Response:
    body = await _body(request)
    changes = body.get("changes")
    if isinstance(changes, list) and all(isinstance(group, dict) for group in changes):
        return await run_in_threadpool(_change_each, site, [{str(k): v for k, v in g.items()} for g in changes])
    if not isinstance(changes, dict):
        return PlainTextResponse("Send changes by their places.\n", status_code=400)

    def work() -> Response:
        with site.lock:
            return _done(site, site.desk.change({str(k): v for k, v in changes.items()}))

    return await run_in_threadpool(work)


def _change_each(site: _Site, groups: list[dict[str, Any]]) -> Response:
    """Take every group of values that stands; say which do not, and why."""
    with site.lock:
        before = site.desk.revision
        held, mistakes = site.desk.change_each(groups)
        if site.desk.revision != before:
            site.plan_now()
        return JSONResponse({"held": held, "mistakes": [_mistake(m) for m in mistakes], "state": _state(site)})


async def _add(site: _Site, request: Request) -> Response:
    body = await _body(request)
    place, row = body.get("place"), body.get("row")
    if not isinstance(place, str) or not isinstance(row, dict):
        return PlainTextResponse("Send a place and a row.\n", status_code=400)

    def work() -> Response:
        with site.lock:
            return _done(site, site.desk.add(place, row))

    return await run_in_threadpool(work)


def _simple(act: Callable[[_Site], tuple[Mistake, ...]]) -> _Handler:
    async def answer(site: _Site, _: Request) -> Response:
        def work() -> Response:
            with site.lock:
                return _done(site, act(site))

        return await run_in_threadpool(work)

    return answer


def _undo(site: _Site) -> tuple[Mistake, ...]:
    site.desk.undo()
    return ()


def _redo(site: _Site) -> tuple[Mistake, ...]:
    site.desk.redo()
    return ()


def _load(site: _Site) -> tuple[Mistake, ...]:
    return site.desk.load()


def _keep(site: _Site) -> tuple[Mistake, ...]:
    site.desk.keep()
    return ()


def _stop(site: _Site) -> tuple[Mistake, ...]:
    site.planning.stop()
    return ()


def _go_on(site: _Site) -> tuple[Mistake, ...]:
    site.planning.go_on()
    return ()


async def _save(site: _Site, request: Request) -> Response:
    body = await _body(request)

    def work() -> Response:
        with site.lock:
            try:
                saved = site.desk.save(over=body.get("over") is True)
            except RoutevizError as fault:
                return JSONResponse({"saved": False, "trouble": str(fault), "state": _state(site)})
            site.touch()
            return JSONResponse({"saved": saved, "state": _state(site)})

    return await run_in_threadpool(work)


async def _preview(site: _Site, request: Request) -> Response:
    body = await _body(request)
    marks = body.get("marks")
    if not isinstance(marks, str) or len(marks) > 2000:
        return PlainTextResponse("Send the marks as they were read off.\n", status_code=400)

    def work() -> Response:
        with site.lock:
            scene = site.desk.scene
        try:
            return JSONResponse(site.desk.tools.preview(scene, marks, body.get("offset") is True))
        except LengthError as fault:
            return JSONResponse({"trouble": f"{fault.problem}. {fault.remedy}"})
        except RoutevizError as fault:
            return JSONResponse({"trouble": str(fault)})

    return await run_in_threadpool(work)


_READERS: dict[str, _Handler] = {"news": _tell_news, "model": _tell_model}
_WRITERS: dict[str, _Handler] = {
    "change": _change, "add": _add, "undo": _simple(_undo), "redo": _simple(_redo), "load": _simple(_load),
    "keep": _simple(_keep), "stop": _simple(_stop), "goon": _simple(_go_on), "save": _save, "preview": _preview,
}  # fmt: skip


def serve(desk: Desk, planning: Planning, *, questions: bool, opened: Callable[[str], None], port: int = 0) -> None:
    """Serve the page on 127.0.0.1 until Ctrl-C.

    Parameters
    ----------
    desk, planning : Desk, Planning
        The scene and what plans it.
    questions : bool
        Whether the page begins with its questions.
    opened : callable
        Told the address, once it is answered.
    port : int
        The port; 0 for any that is free.
    """
    import uvicorn

    with socket.socket(socket.AF_INET, socket.SOCK_STREAM) as listening:
        listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listening.bind(("127.0.0.1", port))
        listening.listen(64)
        port = listening.getsockname()[1]
        secret = secrets.token_urlsafe(24)
        hosts = frozenset({f"127.0.0.1:{port}", f"localhost:{port}"})
        server: list[uvicorn.Server] = []
        app = application(
            desk, planning, secret=secret, hosts=hosts, questions=questions, ending=lambda: bool(server[0].should_exit)
        )
        server.append(
            uvicorn.Server(
                uvicorn.Config(
                    app,
                    log_level="critical",
                    access_log=False,
                    ws="none",
                    server_header=False,
                    timeout_graceful_shutdown=2,
                )
            )
        )
        opened(f"http://127.0.0.1:{port}/{secret}/")
        server[0].run(sockets=[listening])
